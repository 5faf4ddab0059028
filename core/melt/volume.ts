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
import { fullyMeltedC, roomC } from './temperatures.ts';

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

/**
 * Volume in ml of one gram at `celsius` (above −200): liquid volumes that grow with temperature, less what freezing
 * takes (0.13 ml/g of wax, 0.09 ml/g of fat; S-DENS, memory). Good to 1.5 %; coconut comes out 3 % too dense. What is
 * left out of the melt counts as being as dense as the rest; trapped air is not in it.
 */
export const volumeMlPerG = (blend: Blend, celsius: number): number => {
  const asLiquidAt20 = blend.parts.reduce((sum, part) => sum + part.share / liquidDensity(part), 0);
  const { waxSolid, fatSolid } = solidsAt(blend.freezing.aged, celsius);
  return (
    (1 + growthPerK.value * (celsius - roomC)) * asLiquidAt20 -
    freezingLossMlPerG.wax.value * waxSolid -
    freezingLossMlPerG.fat.value * fatSolid
  );
};

export type PourProblem =
  | { readonly code: 'bad-fill'; readonly ml: number }
  | { readonly code: 'does-not-set' };

/** Grams for one container, filled hot to the line and topped up after setting. */
export interface FirstPour {
  readonly pourC: number;
  /** Hot liquid to the fill line. */
  readonly firstPourG: number;
  /** What brings the set balm back up to the line: first pour and top-up together fill it at 20 °C. */
  readonly topUpG: number;
  /** Volume of the dent that setting leaves, in ml at 20 °C. */
  readonly dentMl: number;
  /** Percent of the hot volume that is lost between pouring and 20 °C. */
  readonly shrinkPercent: number;
}

/** First pour and top-up for a container of `fillMl` ml. A blend that does not set is just filled. */
export const firstPour = (blend: Blend, fillMl: number): Result<FirstPour, PourProblem> => {
  if (!(fillMl > 0) || !Number.isFinite(fillMl)) return fail({ code: 'bad-fill', ml: fillMl });
  const clearC = fullyMeltedC(blend);
  if (clearC === undefined || !setsAtRoom(blend)) return fail({ code: 'does-not-set' });
  const pourC = clearC + pourAboveC.typical;
  const hot = volumeMlPerG(blend, pourC);
  const set = volumeMlPerG(blend, roomC);
  const firstPourG = fillMl / hot;
  return ok({
    pourC,
    firstPourG,
    topUpG: fillMl / set - firstPourG,
    dentMl: fillMl - firstPourG * set,
    shrinkPercent: 100 * (1 - set / hot),
  });
};
