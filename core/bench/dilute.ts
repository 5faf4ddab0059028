import { fail, ok, type Result } from '../result.ts';

/** Alcohol thinned with water; percent by volume and millilitres throughout. */
export interface DiluteRequest {
  readonly fromPercent: number;
  readonly toPercent: number;
  /** How much of the weaker one is wanted; or how much of the stronger one there is. */
  readonly makeMl?: number;
  readonly haveMl?: number;
}

export type DiluteProblem =
  | { readonly code: 'not-a-strength' }
  /** Water makes nothing stronger. */
  | { readonly code: 'not-weaker'; readonly fromPercent: number; readonly toPercent: number };

export interface Dilution {
  /** Millilitres of the strong alcohol, to be filled up with water to `madeUpToMl`; never "plus so much water". */
  readonly spiritMl: number;
  readonly madeUpToMl: number;
}

/** Reckoned for this much where no amount is said, millilitres. */
const usualMl = 1000;

const rounded = (ml: number): number => Number(ml.toFixed(ml < 100 ? 1 : 0));

/**
 * Volume of strong alcohol that, filled up with water, gives the wanted strength: `made × to / from`. Alcohol and
 * water shrink when mixed, so the water is not reckoned: it is filled up to the mark. 96 % to 70 %: 729 ml made up to 1000 ml.
 */
export const dilute = (request: DiluteRequest): Result<Dilution, DiluteProblem> => {
  const { fromPercent, toPercent, makeMl, haveMl } = request;
  const isStrength = (percent: number): boolean => percent > 0 && percent <= 100;
  if (!isStrength(fromPercent) || !isStrength(toPercent)) return fail({ code: 'not-a-strength' });
  if (toPercent >= fromPercent) return fail({ code: 'not-weaker', fromPercent, toPercent });
  const made = makeMl ?? (haveMl === undefined ? usualMl : (haveMl * fromPercent) / toPercent);
  const spirit = haveMl !== undefined && makeMl === undefined ? haveMl : (made * toPercent) / fromPercent;
  return ok({ spiritMl: rounded(spirit), madeUpToMl: rounded(made) });
};
