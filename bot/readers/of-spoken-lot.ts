import { lotKey } from '../../core/bench/codes.ts';
import type { Bench } from '../../core/bench/state.ts';
import { type Claim, type Last, oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { showWords } from './batch-words.ts';
import { asksOrPlans, nameAfter } from './bench-text.ts';
import type { Item } from './item.ts';
import { isChatter } from './lexicon.ts';
import { lotsIn } from './lots.ts';
import { lotWords } from './stock-words.ts';
import { traceWords } from './trace-words.ts';
import { wordsOf } from './word-list.ts';

/** Longest message that may leave out what it is about, in tokens. */
const mostTokens = 24;
/** What is only understood from the message before is less sure than what has its own words. */
const leftOutWeight = 2.8;

/** "Note: …" says what it is. */
const ownWeight = 3.4;
const isNote = (made: Claim): boolean => made.kind === 'request' && made.request.action === 'note';

const benchTopics: ReadonlySet<string> = new Set(['batch', 'stock', 'trace', 'expiry']);
/** After a look at reactions or at what was written, only a question goes on about the batch: "she is fine again" is of a person. */
const lookedUp: ReadonlySet<string> = new Set(['reaction', 'book']);

type Request = Readonly<Record<string, unknown>>;

const only = (list: unknown): unknown => (Array.isArray(list) && list.length === 1 ? list[0] : undefined);

const codeIn = ({ lot, request }: Last): unknown =>
  lot ??
  request.lot ??
  only(request.lots) ??
  (only(request.purchases) as Request | undefined)?.lot ??
  (request.about as Request | undefined)?.lot;

/** After "how much castor oil is left", the only lot of it. */
const onlyLotOf = (id: unknown, bench: Bench): string | undefined => {
  if (typeof id !== 'string') return undefined;
  const held = [...bench.lots.values()].filter(({ ingredient }) => ingredient === id);
  return held.length === 1 ? held[0]?.lot : undefined;
};

/** Questions that leave out what they are about: "how many are out", "who poured it". */
const questions =
  /\?\s*$|^\W*(?:(?:and|so|but|ok|then|now|please)\b\W*)*(?:who|whom|whose|what|which|where|when|why|how|is|are|was|were|did|has|have|any|anything|from|print|prepare|let me (?:have|see)|give me)\b/i;

/** The batch or lot that was spoken of just before, where it was one. */
export const spokenLot = ({ last, bench, text }: Reading): string | undefined => {
  if (!last) return undefined;
  if (!benchTopics.has(last.topic) && !(lookedUp.has(last.topic) && questions.test(text))) return undefined;
  const code = codeIn(last) ?? onlyLotOf(last.request.ingredient, bench);
  if (typeof code !== 'string') return undefined;
  return bench.batches.has(lotKey(code)) || bench.lots.has(lotKey(code)) ? code : undefined;
};

/** "It", "them", "this batch"; not the people in "gave them 2 tins", nor the day in "it was late". */
const pronoun =
  /(?<!\b(?:gave|give|sold|told|tell|sent|send|handed|because|since|when|while|as|so|if) )\b(?:it|them|they(?! (?:have |had |also |only |just )?(?:sold|gave|took|bought|returned|brought|sent|paid)\b)|these|those|(?:this|that|the) (?:batch|lot|one|pour)|(?<=\b(?:where|who)\b.{0,20})the (?:others|rest|other ones|tins|jars|pots|sticks)(?= (?:go|gone|went|end)\b|\W*$)|(?:the|those|these) (?:tins|jars|pots|sticks|tubes)(?= (?:look|smell|feel|are|have|were)\b))\b(?!(?:'| (?:rained|snowed|rains|is (?:late|cold|hot|raining|sunny)|was (?:late|cold|hot|raining|sunny))))/i;
/** "Poured 12 more of them" is of the recipe. */
const ofRecipe = /\b(?:pour(?:ed|ing)?|made|make|making|filled|cast|scale|recipe|cooked)\b/i;

interface Spoken {
  readonly reading: Reading;
  readonly code: string;
}

/** "Used 1 g of B2", "27-ZORA": a code nobody knows is not the one spoken of. */
const code = /\b[a-z]{1,6}-?\d{1,6}[a-z]?\b|\b\d{2}-[a-z]{3,6}\b/i;

const goal = /\b(?:to|for|at) (?=(?:the|our|my)\b)/i;

/** "And 3 to the honey stall": part of a name, where nothing is weighed. */
const isInName = (item: Item, { text, items }: Reading): boolean => {
  if (item.letter !== 'i' || items.some(({ letter }) => /[gv]/.test(letter))) return false;
  const place = nameAfter(text, goal)?.place;
  return place !== undefined && item.from >= place.from && item.to <= place.to;
};

/** "Which oil went into it": an ingredient may be asked about; one that is told of is another thing than the lot. */
const isOpen = (reading: Reading, named: RegExp = /[Ri%]/): boolean =>
  reading.tokens.length <= mostTokens &&
  lotsIn(reading).length === 0 &&
  !code.test(reading.text) &&
  !reading.items.some((item) => named.test(item.letter) && !isInName(item, reading));

const asked =
  /^\W*(?:(?:and|so|but|ok|then)\b\W*)*(?:which|what|whose|how (?:much|many)|is|are|was|were|did|from)\b|\?\s*$/i;
const isOpenAsked = (reading: Reading): boolean =>
  isOpen(reading) || (asked.test(reading.text) && isOpen(reading, /[R%gvn]/));

/** The message with the code in place of "it". */
const pointing = oncePerReading((reading): Spoken | undefined => {
  const code = spokenLot(reading);
  if (code === undefined || !pronoun.test(reading.text) || !isOpenAsked(reading)) return undefined;
  if (ofRecipe.test(reading.text) && !asksOrPlans(reading.text)) return undefined;
  return { code, reading: readAgain(reading.text.replace(pronoun, code), reading) };
});

/** The message with the code before it. */
const leftOut = oncePerReading((reading): Spoken | undefined => {
  const code = spokenLot(reading);
  if (code === undefined || !isOpen(reading)) return undefined;
  return { code, reading: readAgain(`${code}, ${reading.text}`, reading) };
});

/** The message with the code of what was spoken of in place of "it". */
export const pointedAtSpoken = (reading: Reading): Reading | undefined => pointing(reading)?.reading;

const withAssumed = (made: Claim, code: string, most: number): Claim =>
  made.kind === 'request'
    ? {
        ...made,
        weight: Math.min(made.weight, most),
        assumed: [...made.assumed, `I took ${code}, which we spoke of.`],
      }
    : made;

/** A message about what was spoken of before, and which code that is. */
export interface OfSpoken {
  readonly reading: Reading;
  readonly assumed: string;
}

/** "Where is the", after the kettle was passed over; "which tins should I buy" asks for advice. */
const notOfIt = /\b(?:the|an?|my|our|your)\W*$|\b(?:should|would|could|shall|might) (?:i|we)\b/i;

const mostAsked = 14;

const askingWords = new Set(
  wordsOf(`why date dates early late soon short reason decides sets set again most hers his mine else other long last keep keeps good fine ok poured pour made make
    filled opened bought changed touched entered wrote happened else's turned turn complaints reactions reacted weighs weigh then now so and but ok yet also too just only to in at here there us me you do does did stay stays home rest rests sample samples lots part grams`),
);

/** Nothing is named that the question could be about instead: "who has the key to the hall". */
export const isOnlyAsking = ({ tokens }: Reading): boolean =>
  tokens.every(
    ({ kind, word }) =>
      kind !== 'word' ||
      isChatter(word) ||
      askingWords.has(word) ||
      traceWords.has(word) ||
      showWords.has(word) ||
      lotWords.has(word),
  );

/** A short question as one about the lot or batch spoken of: with its code in place of "it", or before it. */
export const askedOfSpoken = (reading: Reading): readonly OfSpoken[] => {
  if (!questions.test(reading.text) || notOfIt.test(reading.text) || reading.tokens.length > mostAsked)
    return [];
  const found = pointing(reading) ?? (isOnlyAsking(reading) ? leftOut(reading) : undefined);
  return found ? [{ reading: found.reading, assumed: `I took ${found.code}, which we spoke of.` }] : [];
};

/** Asking words that a message without a name has to have, so that "I love it" looks nothing up. */
const asksSomething =
  /\b(?:left|remain\w*|much|many|expires?|best before|good|keeps?|where|who|whom|when|which|what|lots?|recall|trace|notes?|date|history)\b/i;
const looking: ReadonlySet<unknown> = new Set(['show', 'list', 'due', undefined]);

/** After "gave 3 tins" a number put right is of the gift, and after "used 20 g" of what was used: neither is a count. */
const isOfWhatWent = ({ last, text }: Reading, { action }: Request): boolean => {
  const before = last?.request.action;
  if (action === 'correct') return before === 'gone' || before === 'back';
  return action === 'counted' && before === 'taken' && !/\b(?:left|remain\w*|now)\b/i.test(text);
};

const isFit = (made: Claim | undefined, reading: Reading): made is Wish => {
  if (made?.kind !== 'request' || isOfWhatWent(reading, made.request)) return false;
  return !looking.has(made.request.action) || asksSomething.test(reading.text);
};

type Wish = Claim & { readonly kind: 'request' };
type Read = (reading: Reading) => Claim | undefined;

const ofPointed = (read: Read, reading: Reading): Claim | undefined => {
  const pointed = pointing(reading);
  const meant = pointed && read(pointed.reading);
  return pointed && isFit(meant, reading) ? withAssumed(meant, pointed.code, meant.weight) : undefined;
};

const ofLeftOut = (read: Read, reading: Reading): Claim | undefined => {
  const led = leftOut(reading);
  const after = led && read(led.reading);
  if (!led || !isFit(after, reading)) return undefined;
  if (looking.has(after.request.action) && (notOfIt.test(reading.text) || !isOnlyAsking(reading)))
    return undefined;
  return withAssumed(after, led.code, isNote(after) ? ownWeight : leftOutWeight);
};

/**
 * A topic of lots and batches that also knows the one spoken of just before: "opened it today", "two of them broke",
 * "how much is left", "gave 2 to my sister".
 */
export const ofSpokenLot =
  (read: Read): Read =>
  (reading) => {
    const pointed = ofPointed(read, reading);
    if (pointed) return pointed;
    const own = read(reading);
    return own?.kind === 'request' ? own : (ofLeftOut(read, reading) ?? own);
  };
