import type { FattyAcidName, Ingredient } from './data/ingredient.ts';
import { isFat } from './ingredients.ts';
import { fail, ok, type Result } from './result.ts';

/** Percent of all fatty acids, acid by acid. */
export type AcidShares = Readonly<Partial<Record<FattyAcidName, number>>>;

/**
 * Grams of iodine that one percent of each acid takes up per 100 g. AOCS Recommended Practice Cd 1c-85 (read) gives
 * the six plain acids; gamma-linolenic counts as its isomer; ricinoleic is derived from molar masses, one double
 * bond an acid: 253.81 / (triricinolein 933.43 / 3) and 253.81 / 298.46.
 */
const factors = {
  triglyceride: {
    '16:1': 0.95,
    '18:1': 0.86,
    '18:2': 1.732,
    '18:3': 2.616,
    '18:3n6': 2.616,
    '20:1': 0.785,
    '22:1': 0.723,
    ricinoleic: 0.8157,
  },
  'free-acids': {
    '16:1': 0.9976,
    '18:1': 0.8986,
    '18:2': 1.81,
    '18:3': 2.735,
    '18:3n6': 2.735,
    '20:1': 0.8175,
    '22:1': 0.7497,
    ricinoleic: 0.8504,
  },
} as const satisfies Record<string, AcidShares>;
export type IodineBasis = keyof typeof factors;

/**
 * Iodine value (g iodine per 100 g) of a fat, or of its split acids, from the acids' shares in percent. The method
 * itself warns that low values come out low, because it leaves out what is not a fatty acid.
 */
export const iodineValueOfAcids = (shares: AcidShares, basis: IodineBasis): number => {
  let sum = 0;
  for (const [acid, factor] of Object.entries(factors[basis]))
    sum += factor * (shares[acid as FattyAcidName] ?? 0);
  return sum;
};

export type IodineProblem =
  /** Jojoba, lanolin and the waxes are no triglycerides: only a measured value counts. */
  { readonly code: 'not-a-triglyceride' } | { readonly code: 'no-profile' };

/** Calculated iodine value (g iodine per 100 g) of an ingredient from its typical fatty acids, by Cd 1c-85. */
export const calculatedIodineValue = (ingredient: Ingredient): Result<number, IodineProblem> => {
  if (!isFat(ingredient) || !ingredient.triglyceride) return fail({ code: 'not-a-triglyceride' });
  if (!ingredient.fattyAcids) return fail({ code: 'no-profile' });
  const { acids, others } = ingredient.fattyAcids;
  const shares: Partial<Record<FattyAcidName, number>> = {};
  for (const [acid, share] of Object.entries(acids)) shares[acid as FattyAcidName] = share?.typical ?? 0;
  return ok(iodineValueOfAcids(shares, 'triglyceride') + (others?.iodineValue ?? 0));
};
