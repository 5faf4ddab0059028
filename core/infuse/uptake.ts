import type { Herb } from '../data/ingredient.ts';
import type { WeighedYield, Yields } from './yields.ts';

/** Grams of oil that one gram of dried herb and the cloth keep. */
export interface Uptake {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** How many of the group's own weighings it rests on; 0 for common practice. */
  readonly weighings: number;
}

/** Dried leaves and flowers of the library, 0.8 to 1.8 g/g, for a herb that is not named (common practice). */
const anyHerb = { low: 0.8, high: 1.8 } as const;

/** An own figure is told with at least this share on either side: one weighing is no range (house choice). */
const ownSpread = 0.1;

const tidy = (value: number): number => Number(value.toFixed(4));

const ownUptake = (weighings: readonly WeighedYield[]): Uptake => {
  const herbG = weighings.reduce((sum, each) => sum + each.herbG, 0);
  const keptG = weighings.reduce((sum, each) => sum + each.keptG, 0);
  const each = weighings.map((one) => one.keptG / one.herbG);
  const value = keptG / herbG;
  return {
    value: tidy(value),
    low: tidy(Math.min(...each, value * (1 - ownSpread))),
    high: tidy(Math.max(...each, value * (1 + ownSpread))),
    weighings: weighings.length,
  };
};

/** What a herb keeps: the group's own weighings if there are any, else the middle of the usual range. */
export const uptakeFor = (herb: Herb | undefined, yields: Yields | undefined): Uptake => {
  const own = herb && yields && Object.hasOwn(yields, herb.id) ? yields[herb.id] : undefined;
  if (own && own.length > 0) return ownUptake(own);
  const { low, high } = herb?.infusion?.uptakeGPerG ?? anyHerb;
  return { value: tidy((low + high) / 2), low, high, weighings: 0 };
};

/** Parts of oil to one part of dried herb: the range in use, and the middle of it to start from. */
export interface UsualRatio {
  readonly low: number;
  readonly high: number;
  readonly middle: number;
}

const anyRatio = { low: 5, high: 10 } as const;

export const usualRatio = (herb: Herb | undefined): UsualRatio => {
  const { low, high } = herb?.infusion?.oilParts ?? anyRatio;
  return { low, high, middle: Math.round((low + high) / 2) };
};

/** The warm and the cold way; the usual ones where the herb is not named (common practice). */
export interface Ways {
  readonly hours: readonly [number, number];
  readonly bathC: readonly [number, number];
  readonly coldWeeks: readonly [number, number];
}

const anyWays: Ways = { hours: [2, 6], bathC: [40, 60], coldWeeks: [4, 6] };

export const waysFor = (herb: Herb | undefined): Ways => {
  const figures = herb?.infusion;
  if (!figures) return anyWays;
  const { warmHours, warmC, coldWeeks } = figures;
  return {
    hours: [warmHours.low, warmHours.high],
    bathC: [warmC.low, warmC.high],
    coldWeeks: [coldWeeks.low, coldWeeks.high],
  };
};
