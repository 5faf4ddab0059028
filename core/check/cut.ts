import { ingredientById } from '../ingredients.ts';
import type { CheckLine } from './amounts.ts';
import type { Cut } from './finding.ts';

const significant = 3;

/** Rounded down to three digits, so that the rounded share still is within: 0.1467 is 0.146. */
export const roundedDown = (percent: number): number => {
  if (percent <= 0) return 0;
  const digits = significant - 1 - Math.floor(Math.log10(percent));
  const scale = 10 ** Math.min(9, Math.max(0, digits));
  return Number((Math.floor(percent * scale + 1e-6) / scale).toFixed(9));
};

/** The shares of `ingredients` brought down by the same factor. */
export const cutBy = (
  lines: readonly CheckLine[],
  ingredients: readonly string[],
  factor: number,
): readonly Cut[] =>
  [...new Set(ingredients)].map((ingredient) => {
    const now = lines
      .filter((line) => line.ingredient === ingredient)
      .reduce((sum, line) => sum + line.percent, 0);
    return { ingredient, nowPercent: now, mostPercent: roundedDown(now * factor) };
  });

export interface DropCount {
  readonly low: number;
  readonly high: number;
}

/** Grams of a light and a heavy drop: 40 and 20 drops to the millilitre (three studies, read second-hand). */
export const dropGrams = (ingredient: string): { readonly light: number; readonly heavy: number } => {
  const density = ingredientById(ingredient)?.densityGMl?.value ?? 0.9;
  return { light: density / 40, heavy: density / 20 };
};

/** How many drops `grams` are, as a range: droppers differ by a factor of two. */
export const dropsIn = (grams: number, ingredient: string): DropCount => {
  const { light, heavy } = dropGrams(ingredient);
  return { low: Math.max(1, Math.round(grams / heavy)), high: Math.max(1, Math.round(grams / light)) };
};

/** Most drops that stay within `grams` even when they are heavy ones. */
export const mostDrops = (grams: number, ingredient: string): number =>
  Math.floor(grams / dropGrams(ingredient).heavy + 1e-9);
