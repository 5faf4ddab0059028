import { type Claim, claim, oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { asksOrPlans } from './bench-text.ts';
import { lotsIn } from './lots.ts';
import { claimPouredBesides } from './poured-besides.ts';
import { claimShort } from './short-told.ts';

/** Longest message that does the same with something else, in tokens. */
const mostTokens = 16;

type Request = Readonly<Record<string, unknown>>;

const verbs: Readonly<Record<string, string>> = {
  sold: 'sold',
  given: 'gave',
  wasted: 'threw away',
  used: 'used',
  kept: 'kept back',
};

interface Done {
  readonly verb: string;
  /** Where to and when, which hold for the next as well. */
  readonly after: string;
  readonly lot?: string;
}

const placeOf = ({ parts }: Request): string => {
  const [only, second] = Array.isArray(parts) ? (parts as readonly Request[]) : [];
  return second === undefined && typeof only?.to === 'string' ? ` to ${only.to}` : '';
};

const verbOf = (topic: string, { action, how }: Request): string | undefined => {
  if (topic === 'stock' && action === 'opened') return 'opened';
  const taken = (topic === 'stock' && action === 'taken') || (topic === 'batch' && action === 'gone');
  return taken ? verbs[String(how)] : undefined;
};

/** What was done just before, in a word. */
const doneBefore = ({ last }: Reading): Done | undefined => {
  const verb = last && verbOf(last.topic, last.request);
  if (!last || verb === undefined) return undefined;
  const { on, lot } = last.request;
  const after = placeOf(last.request) + (typeof on === 'string' ? ` on ${on}` : '');
  return { verb, after, ...(typeof lot === 'string' ? { lot } : {}) };
};

const opening = /^\W*(?:(?:oh|ah|ok|and|also|plus|then|sorry|yes)\b\W*)+/i;
/** "And T4", "T4 too", "another 15 g", "4 more": nothing but a code, an amount, and a word that adds. */
const adds = /^\W*(?:oh |ah |ok )?(?:and|also|plus|another)\b|\b(?:too|as well|also|more|another)\W*$/i;
const smallWords =
  /^(?:oh|ah|ok|and|also|plus|then|too|as|well|more|another|of|from|the|a|an|lot|batch|g|grams?|gram|kg|ml|tins?|jars?|pots?|tubes?|sticks?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|yes|sorry|please)$/i;

const isOnlyThat = (reading: Reading): boolean => {
  const codes = lotsIn(reading);
  return reading.tokens.every(
    (token) =>
      token.kind !== 'word' ||
      smallWords.test(token.word) ||
      codes.some(({ from, to }) => token.from >= from && token.to <= to),
  );
};

const oneMore = /^\W*(?:(?:and|oh|ok)\W+)*(?:one more|another one)\W*$/i;

const isCounted = (reading: Reading): boolean => {
  const codes = lotsIn(reading);
  return reading.items.some(
    ({ letter, from, to }) =>
      /[ngv]/.test(letter) && !codes.some((code) => from >= code.from && to <= code.to),
  );
};

/** Of which batch or lot it is; undefined where that cannot be told. */
const ofWhat = (reading: Reading, { verb, lot }: Done): string | undefined => {
  const codes = lotsIn(reading);
  const counted = oneMore.test(reading.text) || isCounted(reading);
  if (codes.length > 1 || (verb !== 'opened' && !counted)) return undefined;
  if (verb === 'opened' && (counted || codes.length === 0)) return undefined;
  return codes.length > 0 ? '' : lot && ` of ${lot}`;
};

const meantAgain = oncePerReading((reading): Reading | undefined => {
  const { text, tokens } = reading;
  const before = tokens.length > mostTokens ? undefined : doneBefore(reading);
  if (!before || !adds.test(text) || asksOrPlans(text) || !isOnlyThat(reading)) return undefined;
  const of = ofWhat(reading, before);
  if (of === undefined) return undefined;
  const said = text.replace(opening, '').replace(/\W*(?:too|as well|also|please)?\W*$/i, '');
  return readAgain(`${before.verb} ${said}${of}${before.after}`, reading);
});

const sameSaid =
  /^\W*(?:(?:and|then|please|ok|now|oh|once more|also)\b\W*)*(?:(?:(?:i|we) )?(?:did |made |poured )?(?:exactly |just )?the (?:very )?same(?: (?:thing|one|pour|batch))?(?: (?:again|once more|one more time|another time))|same(?: thing)? again|(?:and )?(?:once|one time) more,? the same|(?:and )?(?:the )?same (?:pour|batch) again|ditto|repeat that)(?: (?:today|please|thanks|now|for (?:me|us)))*\W*$/i;

/** "The same again": another pour, another gift of what was told just before. */
const repeated = ({ last, text }: Reading, topic: string): Claim | undefined => {
  if (last?.topic !== topic || text.includes('?') || !sameSaid.test(text)) return undefined;
  const { action } = last.request;
  if (topic === 'batch' && action === 'pour') {
    const { lot: _own, note: _note, pictures: _pictures, ...pour } = last.request;
    return pour.count === undefined
      ? undefined
      : claim({ ...pour, again: true }, 3.2, ['I took it as the same pour again.']);
  }
  const isGone = action === (topic === 'batch' ? 'gone' : 'taken');
  return isGone ? claim({ ...last.request, again: true }, 3.2, ['I took it as the same again.']) : undefined;
};

/** A topic that also knows what goes on with what was done: "and T4 too" after an opening, "4 more" after a sale. */
export const sameAgain =
  (topic: 'batch' | 'stock', read: (reading: Reading) => Claim | undefined) =>
  (reading: Reading): Claim | undefined => {
    const same =
      repeated(reading, topic) ??
      claimShort(reading, read) ??
      (topic === 'batch' ? claimPouredBesides(reading, read) : undefined);
    if (same) return same;
    const again = meantAgain(reading);
    const made = again && read(again);
    if (made?.kind !== 'request' || made.request.action !== reading.last?.request.action)
      return read(reading);
    return {
      ...made,
      weight: Math.max(made.weight, 3.1),
      assumed: [...made.assumed, `I took it as "${again?.text ?? ''}".`],
    };
  };
