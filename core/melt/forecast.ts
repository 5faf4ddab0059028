import { ok, type Result } from '../result.ts';
import { type Blend, type BlendLine, type BlendProblem, blendOf, type LeftOut } from './blend.ts';
import { componentIndex } from './composition.ts';
import { bandOf, type FirmnessBand, type Holding, holdingOf, indexAt, setsAtRoom } from './firmness.ts';
import { type HeatPlan, heatPlan } from './heat.ts';
import { type MeltingStep, meltingOrder } from './order.ts';
import { type Roughness, roughnessOf } from './rough.ts';
import { solidsAt } from './solve.ts';
import { fullyMeltedC, roomC, softensC } from './temperatures.ts';
import type { TakenBy } from './treatment.ts';
import { type Uncertainty, uncertaintyOf } from './uncertainty.ts';

/** Things worth telling with a forecast; the bot writes the sentences. */
export type MeltWarning =
  | 'does-not-set'
  | 'liquid-on-a-warm-day'
  | 'melts-in-a-pocket'
  | 'softer-at-first'
  | 'may-grain'
  /** Laboratories and makers disagree about carnauba. */
  | 'carnauba-evidence-conflicts'
  /** Pairs of waxes may be softer or several times harder than the sum. */
  | 'several-waxes'
  | 'rough-estimate';

export interface Taken {
  readonly ingredient: string;
  readonly by: Exclude<TakenBy, 'own'>;
  readonly like: string;
}

export interface MeltForecast {
  readonly blend: Blend;
  /** °C; missing for a balm that is liquid at 20 °C. */
  readonly softensC?: number;
  /** °C; missing when nothing in it ever freezes. */
  readonly fullyMeltedC?: number;
  /** `[celsius, percent]` at 20, 25, 30, 35, 40 °C, aged and fresh. */
  readonly solidPercent: readonly (readonly [number, number])[];
  readonly solidPercentFresh: readonly (readonly [number, number])[];
  readonly firmness: FirmnessFigures;
  readonly order: readonly MeltingStep[];
  readonly heat?: HeatPlan;
  readonly survives: {
    readonly pocket: Holding;
    /** A parked car reaches 50 °C and far more: no balm survives it, the firmest only go soft. */
    readonly parkedCar: 'soft' | 'slumps';
  };
  /** Seed butters that may turn grainy. */
  readonly mayGrain: readonly string[];
  readonly uncertainty: Uncertainty;
  readonly leftOut: readonly LeftOut[];
  /** Ingredients that were not taken by their own figures. */
  readonly takenAs: readonly Taken[];
  readonly rough: Roughness;
  readonly warnings: readonly MeltWarning[];
}

/** Firmness indices (100: 20 % beeswax in oil at 20 °C) by temperature in °C; aged unless said otherwise. */
export interface FirmnessFigures {
  readonly at20: number;
  readonly at25: number;
  readonly at37: number;
  readonly freshAt20: number;
  readonly band: FirmnessBand;
  /** Percent by which a fresh balm is softer at 20 °C. */
  readonly softerAtFirstPercent: number;
}

const shownC = [20, 25, 30, 35, 40] as const;
const bandC = 25;
const pocketC = 37;
const parkedCarC = 50;

/** House thresholds: firmness below which a pocket is warned about, and loss that counts as softer at first. */
const pocketWarningIndex = 60;
const softerAtFirstPercent = 20;
/** A seed butter of this share of the recipe may be felt as grains. */
const grainSharePercent = 5;

const firmnessFigures = (blend: Blend): FirmnessFigures => {
  const at20 = indexAt(blend, roomC);
  const at25 = indexAt(blend, bandC);
  const freshAt20 = indexAt(blend, roomC, 'fresh');
  const warm = bandOf(at25);
  const sets = setsAtRoom(blend);
  const setBand = warm === 'does-not-set' ? 'ointment' : warm;
  return {
    at20,
    at25,
    at37: indexAt(blend, pocketC),
    freshAt20,
    band: sets ? setBand : 'does-not-set',
    softerAtFirstPercent: at20 > 0 ? 100 * (1 - freshAt20 / at20) : 0,
  };
};

/** Crystals that change their form after setting: what makes cocoa butter and shea grainy. */
const changing = [componentIndex('pop'), componentIndex('pos'), componentIndex('sos')];
const changingShare = 0.25;

const grainy = (blend: Blend): readonly string[] =>
  blend.parts
    .filter(({ share, composition }) => {
      const own = composition.shares.filter(({ index }) => changing.includes(index));
      return (
        100 * share >= grainSharePercent &&
        own.reduce((sum, component) => sum + component.share, 0) >= changingShare
      );
    })
    .map(({ ingredient }) => ingredient.id);

const warningsOf = (
  blend: Blend,
  index: FirmnessFigures,
  grain: readonly string[],
  rough: Roughness,
): readonly MeltWarning[] => {
  const sets = index.band !== 'does-not-set';
  const waxes = new Set(
    blend.parts.filter(({ ingredient }) => ingredient.kind === 'wax').map(({ like }) => like),
  );
  const found: readonly (readonly [MeltWarning, boolean])[] = [
    ['does-not-set', !sets],
    ['liquid-on-a-warm-day', sets && bandOf(index.at25) === 'does-not-set'],
    ['melts-in-a-pocket', sets && index.at37 < pocketWarningIndex],
    ['softer-at-first', index.softerAtFirstPercent > softerAtFirstPercent],
    ['may-grain', grain.length > 0],
    ['carnauba-evidence-conflicts', waxes.has('carnauba-wax')],
    ['several-waxes', waxes.size > 1],
    ['rough-estimate', rough.because.length > 0],
  ];
  return found.filter(([, applies]) => applies).map(([code]) => code);
};

const shown = (blend: Blend, state: 'aged' | 'fresh'): readonly (readonly [number, number])[] =>
  shownC.map((celsius) => [celsius, 100 * solidsAt(blend.freezing[state], celsius).solid] as const);

/** Ingredients that were not taken by their own figures. */
export const takenIn = (blend: Blend): readonly Taken[] =>
  blend.parts.flatMap(({ ingredient, by, like }) =>
    by === 'own' ? [] : [{ ingredient: ingredient.id, by, like }],
  );

/** Everything heat does to a prepared blend. Figures are unrounded; show whole degrees and solids to the nearest 5 %. */
export const forecastOf = (blend: Blend): MeltForecast => {
  const soft = softensC(blend);
  const clear = fullyMeltedC(blend);
  const heat = heatPlan(blend);
  const index = firmnessFigures(blend);
  const mayGrain = grainy(blend);
  const rough = roughnessOf(blend);
  return {
    blend,
    ...(soft === undefined ? {} : { softensC: soft }),
    ...(clear === undefined ? {} : { fullyMeltedC: clear }),
    solidPercent: shown(blend, 'aged'),
    solidPercentFresh: shown(blend, 'fresh'),
    firmness: index,
    order: meltingOrder(blend),
    ...(heat === undefined ? {} : { heat }),
    survives: {
      pocket: holdingOf(index.at37),
      parkedCar: holdingOf(indexAt(blend, parkedCarC)) === 'slumps' ? 'slumps' : 'soft',
    },
    mayGrain,
    uncertainty: uncertaintyOf(blend, bandC),
    leftOut: blend.leftOut,
    takenAs: takenIn(blend),
    rough,
    warnings: warningsOf(blend, index, mayGrain, rough),
  };
};

/** The same for recipe lines, weights in any one unit. Problems are those of {@link blendOf}. */
export const forecast = (lines: readonly BlendLine[]): Result<MeltForecast, BlendProblem> => {
  const blend = blendOf(lines);
  return blend.ok ? ok(forecastOf(blend.value)) : blend;
};
