import { type Claim, type Reading, refuse } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { howIn } from './batch-gone-verbs.ts';
import { howManyTins } from './batch-words.ts';
import type { BenchReading } from './bench-reading.ts';
import { asksOrPlans } from './bench-text.ts';

const likeToKeep =
  /^(\W*(?:(?:and|also|then|ok|so|please|hi|hello)\W+)*)(?:i|we)(?:'d| would) (?:also )?like to (?=(?:keep|hold|put|set)\b[^.;!?]{0,60}\b(?:samples?|back|aside|by)\b)/i;
/** "I would like to keep 2 of 26-KIVO back as samples": said politely, and done by saying it. */
export const politelyKept = (reading: Reading): Reading | undefined =>
  likeToKeep.test(reading.text) && !reading.text.includes('?')
    ? readAgain(reading.text.replace(likeToKeep, '$1please '), reading)
    : undefined;

/** "Threw out 30 g of 26-KIVO". */
export const byWeight = ({ rest, lots }: BenchReading): Claim | undefined => {
  const [lot, second] = lots;
  if (!lot || second || lot.kind !== 'batch' || asksOrPlans(rest.text)) return undefined;
  const isWeighed = rest.items.some(
    ({ letter, to }) =>
      /[gv]/.test(letter) &&
      /^ (?:of|from|out of) (?:the |our |batch )*$/i.test(rest.text.slice(to, lot.from)),
  );
  const counted = rest.items.some(({ letter }) => /[cnRi%]/.test(letter));
  return isWeighed && !counted && howIn(rest.text, false) !== undefined
    ? refuse(howManyTins(lot.code), 3.3)
    : undefined;
};
