/** Grams to the milligram, the finest step any scale here reads: sums are done in whole milligrams, so nothing drifts. */
const perGram = 1000;

const milligrams = (grams: number): number => Math.round(grams * perGram);

/** The same grams at whole milligrams. */
export const exactG = (grams: number): number => milligrams(grams) / perGram;

export const plusG = (a: number, b: number): number => (milligrams(a) + milligrams(b)) / perGram;

export const minusG = (a: number, b: number): number => (milligrams(a) - milligrams(b)) / perGram;

export const sumG = (all: readonly number[]): number =>
  all.reduce((sum, grams) => sum + milligrams(grams), 0) / perGram;
