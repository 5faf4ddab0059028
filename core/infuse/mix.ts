import type { Herb } from '../data/ingredient.ts';
import type { ScaleStep } from '../settings.ts';
import { shareOut } from '../share.ts';
import { gramsOfSteps, stepsNearest } from '../steps.ts';
import { type Uptake, type UsualRatio, uptakeFor, usualRatio, type Ways, waysFor } from './uptake.ts';
import type { Yields } from './yields.ts';

/** Something of a mixture with its share by weight; the shares need not sum to anything. */
export interface Part<T> {
  readonly of: T;
  readonly parts: number;
}

/** Herbs steeped together, one or several; none at all stands for a herb nobody named. */
export type HerbMix = readonly Part<Herb>[];

const tidy = (value: number): number => Number(value.toFixed(4));

/** Mean by weight of a figure over the herbs. */
const mean = (mix: HerbMix, figure: (herb: Herb) => number): number => {
  const all = mix.reduce((sum, { parts }) => sum + parts, 0);
  return tidy(mix.reduce((sum, { of, parts }) => sum + figure(of) * parts, 0) / all);
};

/** What the herbs together keep of the oil, grams to the gram; only as much the group's own as its least weighed herb is. */
export const mixUptake = (mix: HerbMix, yields: Yields | undefined): Uptake => {
  if (mix.length < 2) return uptakeFor(mix[0]?.of, yields);
  const own = (herb: Herb): Uptake => uptakeFor(herb, yields);
  return {
    value: mean(mix, (herb) => own(herb).value),
    low: mean(mix, (herb) => own(herb).low),
    high: mean(mix, (herb) => own(herb).high),
    weighings: Math.min(...mix.map(({ of }) => own(of).weighings)),
  };
};

/** What suits every herb of the mixture; where no range does, the widest. */
const overlap = (ranges: readonly (readonly [number, number])[]): readonly [number, number] => {
  const from = Math.max(...ranges.map(([low]) => low));
  const to = Math.min(...ranges.map(([, high]) => high));
  if (from <= to) return [from, to];
  return [Math.min(...ranges.map(([low]) => low)), Math.max(...ranges.map(([, high]) => high))];
};

/** Parts of oil to one part of all the herbs together. */
export const mixRatio = (mix: HerbMix): UsualRatio => {
  if (mix.length < 2) return usualRatio(mix[0]?.of);
  const all = mix.map(({ of }) => usualRatio(of));
  const [low, high] = overlap(all.map((each) => [each.low, each.high]));
  return { low, high, middle: Math.round((low + high) / 2) };
};

/** The gentlest heat and the longest time that any of the herbs asks for. */
export const mixWays = (mix: HerbMix): Ways => {
  if (mix.length < 2) return waysFor(mix[0]?.of);
  const all = mix.map(({ of }) => waysFor(of));
  const longest = (of: (ways: Ways) => readonly [number, number]): readonly [number, number] => [
    Math.max(...all.map((ways) => of(ways)[0])),
    Math.max(...all.map((ways) => of(ways)[1])),
  ];
  return {
    hours: longest(({ hours }) => hours),
    bathC: overlap(all.map(({ bathC }) => bathC)),
    coldWeeks: longest(({ coldWeeks }) => coldWeeks),
  };
};

/** A total shared over the parts in whole steps of the scale, so that they sum to it; nothing where it has too few steps. */
export const partGrams = (
  parts: readonly Part<unknown>[],
  totalG: number,
  stepG: ScaleStep,
): readonly number[] | undefined => {
  if (parts.length === 1) return [totalG];
  const shares = shareOut(
    parts.map((part) => part.parts),
    stepsNearest(totalG, stepG),
  );
  return shares.ok ? shares.value.steps.map((steps) => gramsOfSteps(steps, stepG)) : undefined;
};
