import type { IngredientKind } from '../data/ingredient.ts';
import type { MakeUpId } from '../data/melt/make-ups.ts';
import {
  freezingLossMlPerG,
  growthPerK,
  type LiquidDensityId,
  liquidDensities,
} from '../data/melt/volumes.ts';
import { fail, ok, type Result } from '../result.ts';
import type { Blend, BlendPart } from './blend.ts';
import { setsAtRoom } from './firmness.ts';
import { pourAboveC } from './pour.ts';
import { solidsAt } from './solve.ts';
import { atCelsius, fullyMeltedC, roomC, type TemperatureProblem } from './temperatures.ts';

/** Melt densities by make-up, for what is solid at 20 °C or has no density in the library. */
const densityByMakeUp: Readonly<Partial<Record<MakeUpId, LiquidDensityId>>> = {
  'coconut-oil': 'lauric',
  'palm-kernel-oil': 'lauric',
  'babassu-oil': 'lauric',
  'murumuru-butter': 'lauric',
  'coconut-oil-fractionated': 'fractionated-coconut',
  'castor-oil': 'castor',
  'vitamin-e': 'tocopherol',
  beeswax: 'beeswax',
  'candelilla-wax': 'candelilla',
  'carnauba-wax': 'carnauba',
  'rice-bran-wax': 'long-ester-wax',
  'sunflower-wax': 'long-ester-wax',
  'stearic-acid': 'stearic-acid',
  'cetyl-alcohol': 'cetyl-alcohol',
  lanolin: 'lanolin',
};

const liquidKinds: readonly IngredientKind[] = ['liquid-oil', 'essential-oil', 'resinoid', 'flavour'];

/** A density of the library is that of the liquid where the ingredient is liquid at 20 °C. */
const libraryDensity = ({ ingredient, by }: BlendPart): number | undefined =>
  liquidKinds.includes(ingredient.kind) || by === 'stand-in' ? ingredient.densityGMl?.value : undefined;

const fatDefault = ({ ingredient }: BlendPart): LiquidDensityId =>
  ingredient.kind === 'butter' || ingredient.kind === 'animal-fat' ? 'c18-butter' : 'vegetable-oil';

/** Density of the melt in g/ml, as if it were liquid at 20 °C. */
const liquidDensity = (part: BlendPart): number =>
  libraryDensity(part) ?? liquidDensities[densityByMakeUp[part.like as MakeUpId] ?? fatDefault(part)].value;

const volumeAt = (blend: Blend, celsius: number): number => {
  const asLiquidAt20 = blend.parts.reduce((sum, part) => sum + part.share / liquidDensity(part), 0);
  const { waxSolid, fatSolid } = solidsAt(blend.freezing.aged, celsius);
  return (
    (1 + growthPerK.value * (celsius - roomC)) * asLiquidAt20 -
    freezingLossMlPerG.wax.value * waxSolid -
    freezingLossMlPerG.fat.value * fatSolid
  );
};

/**
 * Volume in ml of one gram at a temperature in °C: liquid volumes that grow with temperature, less what freezing takes
 * (0.13 ml/g of wax, 0.09 ml/g of fat; S-DENS, memory). Good to 1.5 %; coconut comes out 3 % too dense. What is left
 * out of the melt counts as being as dense as the rest; trapped air is not in it.
 */
export const volumeMlPerG = (blend: Blend, celsius: number): Result<number, TemperatureProblem> =>
  atCelsius(celsius, (at) => volumeAt(blend, at));

export type PourProblem =
  | { readonly code: 'bad-fill'; readonly amount: number }
  | { readonly code: 'does-not-set' };

/** What one container holds: the volume up to its fill line, or the weight of set balm that is to be in it. */
export type ContainerFill = { readonly ml: number } | { readonly grams: number };

/** Grams for one container, filled hot to the line and topped up after setting. */
export interface FirstPour {
  readonly pourC: number;
  /** Volume up to the fill line, in ml. */
  readonly fillMl: number;
  /** Hot liquid to the fill line. */
  readonly firstPourG: number;
  /** What brings the set balm back up to the line: first pour and top-up together fill it at 20 °C. */
  readonly topUpG: number;
  /** Volume of the dent that setting leaves, in ml at 20 °C. */
  readonly dentMl: number;
  /** Percent of the hot volume that is lost between pouring and 20 °C. */
  readonly shrinkPercent: number;
}

const pourTemperatureC = (blend: Blend): number | undefined => {
  const clearC = fullyMeltedC(blend);
  return clearC === undefined || !setsAtRoom(blend) ? undefined : clearC + pourAboveC.typical;
};

const usable = (amount: number): boolean => amount > 0 && Number.isFinite(amount);

/** First pour and top-up for one container. A blend that does not set is just filled. */
export const firstPour = (blend: Blend, fill: ContainerFill): Result<FirstPour, PourProblem> => {
  const amount = 'ml' in fill ? fill.ml : fill.grams;
  if (!usable(amount)) return fail({ code: 'bad-fill', amount });
  const pourC = pourTemperatureC(blend);
  if (pourC === undefined) return fail({ code: 'does-not-set' });
  const hot = volumeAt(blend, pourC);
  const set = volumeAt(blend, roomC);
  const fillMl = 'ml' in fill ? fill.ml : fill.grams * set;
  const firstPourG = fillMl / hot;
  return ok({
    pourC,
    fillMl,
    firstPourG,
    topUpG: fillMl / set - firstPourG,
    dentMl: fillMl - firstPourG * set,
    shrinkPercent: 100 * (1 - set / hot),
  });
};

/** A jug is filled to two thirds at most (safety rule of the trade, no source). */
const fullestJug = 2 / 3;

/** Volume in ml of a batch at its pour temperature (at 20 °C if it does not set), and of the least jug for it. */
export const jugFor = (
  blend: Blend,
  grams: number,
): Result<{ readonly hotMl: number; readonly leastJugMl: number }, PourProblem> => {
  if (!usable(grams)) return fail({ code: 'bad-fill', amount: grams });
  const hotMl = grams * volumeAt(blend, pourTemperatureC(blend) ?? roomC);
  return ok({ hotMl, leastJugMl: hotMl / fullestJug });
};
