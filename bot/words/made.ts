import type { Mix } from '../../core/substitute/mix.ts';
import { linesOfMix } from '../../core/substitute/mix.ts';
import type { Made } from '../answer.ts';

const hundredth = (amount: number): number => Number(amount.toFixed(2));
/** Below this a hundredth is too coarse. */
const small = 0.1;

/** Amounts as a maker would write them, to a hundredth; the largest takes up what rounding left over. */
const tidied = (lines: Made['lines']): Made['lines'] => {
  const round = (amount: number): number => (amount < small ? Number(amount.toFixed(4)) : hundredth(amount));
  const rounded = lines.map((line) => ({ ...line, amount: round(line.amount) }));
  const kept = lines.reduce((sum, line, at) => sum + line.amount - (rounded[at]?.amount ?? 0), 0);
  const largest = rounded.reduce(
    (most, line, at) => (!line.strained && line.amount > (rounded[most]?.amount ?? 0) ? at : most),
    0,
  );
  return rounded.map((line, at) =>
    at === largest ? { ...line, amount: Number((line.amount + kept).toFixed(4)) } : line,
  );
};

/** A changed recipe as one to go on from: what "it" means in the next message. */
export const madeOfMix = (name: string, mix: Mix, make: Made['make']): Made => ({
  name,
  lines: tidied(linesOfMix(mix)),
  ...(make && Object.keys(make).length > 0 ? { make } : {}),
});
