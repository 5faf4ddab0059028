import { ingredientById } from './ingredients.ts';

export interface BlendDensity {
  readonly densityGMl: number;
  /** Ingredients whose density nobody could tell: they were taken to be as dense as the rest. */
  readonly unknown: readonly string[];
}

/** Density of a liquid vegetable oil at 20 °C (from memory, high confidence), for a blend with no known line at all. */
const ordinaryOilGMl = 0.915;

/**
 * Density of the set blend at 20 °C: volumes of the lines, each at its own 20 °C density, added up. Trapped air and
 * shrinkage are not in it, so a filled tin may hold a few percent less.
 */
export const blendDensity = (
  lines: readonly { readonly ingredient: string; readonly weight: number }[],
): BlendDensity => {
  let grams = 0;
  let ml = 0;
  const unknown: string[] = [];
  for (const { ingredient, weight } of lines) {
    const density = ingredientById(ingredient)?.densityGMl?.value;
    if (density === undefined) {
      unknown.push(ingredient);
      continue;
    }
    grams += weight;
    ml += weight / density;
  }
  return { densityGMl: ml > 0 ? grams / ml : ordinaryOilGMl, unknown };
};
