import { tinsLeft } from '../../core/bench/state.ts';
import type { Claim, Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { claimGone } from './batch-gone.ts';
import { readBenchText } from './bench-text.ts';
import { lotsIn } from './lots.ts';

/** Longest message that leaves out of what, in tokens. */
const mostTokens = 16;

/** The batch that tins can only have come from: the one in the book that has any left. */
const onlyBatch = ({ bench }: Reading): string | undefined => {
  let found: string | undefined;
  for (const batch of bench.batches.values()) {
    if (tinsLeft(batch) === 0) continue;
    if (found !== undefined) return undefined;
    found = batch.lot;
  }
  return found;
};

const gone =
  /^\W*(?:(?:i|we|just|also|and|then|today|ok)\W+)*(?:gave|sold|donated|handed out) \d{1,3}(?: (?:tins?|jars?|pots?|tubes?|sticks?))?(?= (?:to|at)\b)/i;

/** "Gave 4 to my flatmates", where one batch has tins left. */
export const claimOfOnly = (reading: Reading): Claim | undefined => {
  if (reading.tokens.length > mostTokens || lotsIn(reading).length > 0 || !gone.test(reading.text))
    return undefined;
  if (reading.items.some(({ letter }) => /[giRv%]/.test(letter))) return undefined;
  const lot = onlyBatch(reading);
  if (lot === undefined) return undefined;
  const again = readAgain(
    reading.text.replace(gone, (said) => `${said} of ${lot}`),
    reading,
  );
  const made = claimGone(again, readBenchText(again).bench);
  return made?.kind === 'request'
    ? { ...made, weight: 2.7, assumed: [...made.assumed, `I took ${lot}, the only batch with tins left.`] }
    : undefined;
};
