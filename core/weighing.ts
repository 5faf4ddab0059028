import type { ScaleStep } from './settings.ts';

/**
 * Spread of one weighing as a share of the scale's step: USP <41> counts the standard deviation as at least 0.41 steps
 * (read in balance makers' summaries and a copy of the 2019 chapter).
 */
const spreadInSteps = 0.41;

/** Largest error a line may have, as a share: scents and antioxidants 5 %, waxes and oils 2 % (house choice). */
export const tolerance = { small: 0.05, bulk: 0.02 } as const;
export type ToleranceKind = keyof typeof tolerance;

/** Smallest weight in grams that a scale of step `stepG` tells to within the tolerance: 2 × 0.41 × step / tolerance. */
export const leastWeighableG = (stepG: ScaleStep, kind: ToleranceKind): number =>
  Number(((2 * spreadInSteps * stepG) / tolerance[kind]).toPrecision(12));
