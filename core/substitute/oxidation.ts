import type { FattyAcidName, Ingredient } from '../data/ingredient.ts';
import { isFat } from '../ingredients.ts';

/** Typical fatty acids in percent of all, for fats whose acids are known. */
export const typicalAcids = (ingredient: Ingredient): ReadonlyMap<FattyAcidName, number> | undefined => {
  if (!isFat(ingredient) || !ingredient.fattyAcids) return undefined;
  const entries = Object.entries(ingredient.fattyAcids.acids) as [FattyAcidName, { typical?: number }][];
  return new Map(entries.map(([acid, { typical = 0 }]) => [acid, typical]));
};

/**
 * How fast acids take up oxygen, oleic acid being 1: oleic to linoleic to linolenic 1 : 10.3 : 21.6, the weights of
 * the Cox value (from memory). Acids with one double bond count as oleic. May rank and warn, never block.
 */
const rates: Partial<Record<FattyAcidName, number>> = {
  '16:1': 1,
  '18:1': 1,
  '20:1': 1,
  '22:1': 1,
  ricinoleic: 1,
  '18:2': 10.3,
  '18:3': 21.6,
  '18:3n6': 21.6,
};

/** Oxidisability of one fat (Cox value): about 0.1 for coconut, 1 to 2 for olive, 7 for sunflower, 13 for flaxseed. */
export const oxidisabilityOf = (ingredient: Ingredient): number | undefined => {
  const acids = typicalAcids(ingredient);
  if (!acids) return undefined;
  let sum = 0;
  for (const [acid, percent] of acids) sum += ((rates[acid] ?? 0) * percent) / 100;
  return sum;
};
