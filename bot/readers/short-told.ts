import { lotKey } from '../../core/bench/codes.ts';
import type { Claim, Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { type How, howIn } from './batch-gone-verbs.ts';
import { asksOrPlans } from './bench-text.ts';
import { lotsIn } from './lots.ts';
import { spokenLot } from './of-spoken-lot.ts';

const count = '(\\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|twelve)';
const holder = '(?: (?:tins?|jars?|pots?|tubes?|sticks?))?';
const lead = '^\\W*(?:(?:and|then|also|so|ok|please|oh)\\W+)*';
const gone =
  '(?: (?:returned|dented|broken|spoiled|bad|last|tins?|jars?|pots?|tubes?|sticks?|ones|of them))*';

/** "5 back". */
const back = new RegExp(
  `${lead}${count}${holder}(?: (?:came|come|are|is|were|was))? back(?: again)?\\W*$`,
  'i',
);
/** "Chuck those 2, they're no good". */
const binned = new RegExp(
  `${lead}(?:chuck|bin|toss|destroy|dump|throw (?:out|away)|dispose of|get rid of)(?: out| away)? (?:those|these|the|them)?(?: last| other)? ?${count}${gone}(?:,[^?]{0,40})?\\W*$`,
  'i',
);
/** "Dispose of all that is left of K12". */
const allOf =
  /^\W*(?:(?:and|then|so|ok|please)\W+)*(?:chuck|bin|toss|destroy|dump|throw (?:out|away)|dispose of|get rid of) (?:all|everything|the rest|whatever)(?: (?:that|which|what))?(?: (?:is|'s))?(?: still)?(?: left)?(?: of| from)? (?=\S+\W*$)/i;

/** Longest message in a few words, in tokens. */
const mostTokens = 16;

const them =
  /^\W*(?:(?:and|but|so|sadly|ok|oh|then)\W+)*(?:that one|this one|it|they|these|those(?: (?:ones|tins|jars|pots|sticks|tubes))?|both(?: of (?:them|those))?|all of (?:them|those)|the (?:returned|same) (?:ones?|tins?|jars?|pots?|sticks?|tubes?))\b/i;
const thrownOut =
  /^\W*(?:(?:and|so|ok|oh|then|i|we|have|had to|'ve|just)\W+)*(?:chucked|binned|bin|threw|thrown|tossed|scrapped|discarded|got rid of)\b(?: (?:out|away))? (?:that|this|it|them|those|these)\b/i;
const onlyPointed: Readonly<Partial<Record<How, string>>> = {
  wasted: 'threw away',
  kept: 'kept back',
  used: 'used',
};

/** "That one went in the bin as well", after one came back; "they came back", after some went. */
const thoseOf = ({ text, last, items }: Reading, code: string): string | undefined => {
  const parts = last?.request.parts as readonly { to?: string; count?: number }[] | undefined;
  const [part, second] = parts ?? [];
  const counts = items.some(({ letter, word }) => letter === 'n' && word !== 'one');
  if (!last?.done || !part?.count || second || counts || !(them.test(text) || thrownOut.test(text)))
    return undefined;
  const how = howIn(text, false);
  const { action } = last.request;
  if (action === 'back' && how !== undefined && how in onlyPointed)
    return `${onlyPointed[how]} ${part.count} of ${code}`;
  const from = part.to === undefined ? '' : ` from ${part.to}`;
  return action === 'gone' && how === 'back' ? `${part.count} of ${code} came back${from}` : undefined;
};

const toldInFull = (reading: Reading): string | undefined => {
  const { text, last } = reading;
  if (lotsIn(reading).length > 0) {
    const all = allOf.exec(text);
    return all ? `threw away all of ${text.slice(all[0].length)}` : undefined;
  }
  const code = spokenLot(reading);
  if (code === undefined || !reading.bench.batches.has(lotKey(code))) return undefined;
  const returned = back.exec(text)?.[1];
  const [part] = Array.isArray(last?.request.parts) ? (last.request.parts as readonly { to?: string }[]) : [];
  const from = part?.to === undefined ? '' : ` from ${part.to}`;
  if (returned) return `${returned} of ${code} came back${from}`;
  const lost = binned.exec(text)?.[1];
  return lost ? `threw away ${lost} of ${code}` : thoseOf(reading, code);
};

/** What is told in so few words that only what was said before makes it whole. */
export const claimShort = (
  reading: Reading,
  read: (reading: Reading) => Claim | undefined,
): Claim | undefined => {
  if (reading.tokens.length > mostTokens || reading.text.includes('?') || asksOrPlans(reading.text))
    return undefined;
  const told = toldInFull(reading);
  const made = told === undefined ? undefined : read(readAgain(told, reading));
  return made?.kind === 'request'
    ? { ...made, weight: 3.3, assumed: [...made.assumed, `I took it as "${told}".`] }
    : undefined;
};
