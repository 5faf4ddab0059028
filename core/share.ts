import { fail, ok, type Result } from './result.ts';

export type ShareProblem =
  | { readonly code: 'nothing-to-share' }
  /** The total has fewer steps than lines, so some line could not be weighed at all. */
  | {
      readonly code: 'too-few-steps';
      readonly steps: number;
      readonly lines: number;
    };

/** `raised` lists the lines that came out under one step and were given one step all the same. */
export interface Shares {
  readonly steps: readonly number[];
  readonly raised: readonly number[];
}

/** Nine decimals of a gram are far below any scale and keep a tonne inside exact integers. */
const precision = 1e9;
const largestWeight = 9e6;

const exactWeights = (weights: readonly number[]): bigint[] => {
  const scale = Math.max(...weights) > largestWeight ? precision / 1e6 : precision;
  // However small, a weight is something to weigh: it must not round away beside a big one.
  return weights.map((weight) => (weight > 0 ? BigInt(Math.max(1, Math.round(weight * scale))) : 0n));
};

/** Indices by falling remainder; equal remainders keep the order of the lines, so the result never wavers. */
const byRemainder = (remainders: readonly bigint[]): number[] =>
  remainders
    .map((_, index) => index)
    .sort((a, b) => {
      const difference = (remainders[b] ?? 0n) - (remainders[a] ?? 0n);
      return difference === 0n ? a - b : difference > 0n ? 1 : -1;
    });

const largestIndex = (steps: readonly number[]): number => steps.indexOf(Math.max(...steps));

/**
 * Shares out `total` whole steps in proportion to `weights` by largest remainder, so that the shares always sum to the
 * total. A line that has a weight is never rounded to nothing: it gets one step, taken from the largest line.
 * Exact for weights up to nine decimals; weights must be finite.
 */
export const shareOut = (weights: readonly number[], total: number): Result<Shares, ShareProblem> => {
  const exact = exactWeights(weights);
  const sum = exact.reduce((a, b) => a + b, 0n);
  const weighed = exact.filter((weight) => weight > 0n).length;
  if (sum <= 0n) return fail({ code: 'nothing-to-share' });
  if (total < weighed) return fail({ code: 'too-few-steps', steps: total, lines: weighed });
  const products = exact.map((weight) => weight * BigInt(total));
  const steps = products.map((product) => Number(product / sum));
  const missing = total - steps.reduce((a, b) => a + b, 0);
  for (const index of byRemainder(products.map((product) => product % sum)).slice(0, missing)) {
    steps[index] = (steps[index] ?? 0) + 1;
  }
  const raised: number[] = [];
  for (const [index, weight] of exact.entries()) {
    if (weight === 0n || steps[index] !== 0) continue;
    raised.push(index);
    steps[index] = 1;
    const donor = largestIndex(steps);
    steps[donor] = (steps[donor] ?? 0) - 1;
  }
  return ok({ steps, raised });
};
