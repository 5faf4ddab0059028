import type { ScaleStep } from './settings.ts';

/** Steps to the gram: dividing by a whole number gives the nearest decimal (3712 / 10 is 371.2; 3712 × 0.1 is not). */
const perGram: Readonly<Record<ScaleStep, number>> = {
  1: 1,
  0.1: 10,
  0.01: 100,
  0.001: 1000,
};

/** Decimals that one step of the scale shows: 0, 1, 2 or 3. */
export const stepDecimals = (stepG: ScaleStep): number => Math.round(Math.log10(perGram[stepG]));

export const gramsOfSteps = (steps: number, stepG: ScaleStep): number => steps / perGram[stepG];

/** Slack for floating-point noise, in steps: a total of 371.2 must not become 371.3 for a stray 1e-13. */
const slack = 1e-6;

/** Fewest whole steps that hold at least `grams`. */
export const stepsAtLeast = (grams: number, stepG: ScaleStep): number =>
  Math.max(0, Math.ceil(grams * perGram[stepG] - slack));

/** Most whole steps that `grams` suffice for. */
export const stepsAtMost = (grams: number, stepG: ScaleStep): number =>
  Math.floor(grams * perGram[stepG] + slack);

/** Whole steps nearest to `grams`. */
export const stepsNearest = (grams: number, stepG: ScaleStep): number => Math.round(grams * perGram[stepG]);
