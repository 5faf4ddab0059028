import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Last, type Reading } from '../reading.ts';
import { isAnew, putsRight } from './batch-anew.ts';
import { type BenchReading, readBench } from './bench-reading.ts';
import { asksOrPlans, nameAfter } from './bench-text.ts';
import type { Item } from './item.ts';
import { gramsRead, isAmount } from './stock-amount.ts';

/** Longest message that puts right what was just told, in tokens. */
const mostTokens = 24;
/** It says so itself, and no topic can be surer of it. */
const weight = 3.6;

const took = 'I took that in place of what you told me before.';

type Request = Readonly<Record<string, unknown>>;

const partsOf = ({ parts }: Request): readonly Request[] =>
  Array.isArray(parts) ? (parts as readonly Request[]) : [];

/** "No, to the library": a place by itself, and nothing else after it. */
const toPlace = /\b(?:(?:to|at|from)\s+(?=\p{L})|for\s+(?=(?:the|our|my)\s+\p{L}))/iu;
/** "It was the library, not the school". */
const wasPlace = /\b(?:it|that|they) (?:was|were|went) (?:to |at )?(?=(?:the|our|my) \p{L})/iu;
/** "No, the honey shop got 5", "wait no, Mia gets 5". */
const gotPlace =
  /^\W*(?:(?:no|nope|sorry|oops|whoops|wait|pardon|actually|oh)\b\W*)+((?:the|our|my) (?:[\p{L}'’-]+ ){0,3}?[\p{L}'’-]+|(?!(?:it|that|this|they|we|i|he|she|you|there|who|what|the|our|my|a|an|of|only|just)\b)[\p{L}'’-]+) (?:gets|got|took|had|has|bought|received)(?= \S+\W*$)/iu;
const notThat = /,?\s*(?:and )?not (?:to |at |from |of )?[^,.;!?\d]{2,40}$/i;
const aboutCount = /\b(?:tins?|jars?|pots?|sticks?|tubes?|count|number|of them)\b/i;

/** The message, where it puts right what was told before and tells of nothing else. */
const putRight = (reading: Reading): BenchReading | undefined => {
  if (
    reading.tokens.length > mostTokens ||
    /\?|^\W*correct\b/i.test(reading.text) ||
    !putsRight.test(reading.text)
  )
    return undefined;
  return asksOrPlans(reading.text) ? undefined : readBench(reading);
};

const dayIn = ({ days }: BenchReading): string | undefined => days.find(({ role }) => role === 'on')?.past;

const numbersIn = ({ rest }: BenchReading): readonly Item[] =>
  rest.items.filter(({ letter }) => letter === 'n');

/** Where it went in truth, and whether the rest of the message is only about that. */
const placeIn = (bench: BenchReading): { readonly to?: string; readonly rest: string } => {
  const text = bench.rest.text.replace(notThat, '');
  const subject = gotPlace.exec(text);
  if (subject?.[1]) return { to: subject[1], rest: text.slice(subject[0].length) };
  const found = nameAfter(text, toPlace) ?? nameAfter(text, wasPlace);
  if (!found || /_|\b(?:tins?|jars?|pots?|sticks?|tubes?|batch|lot|day)\b/i.test(found.name))
    return { rest: text };
  const { from, to } = found.place;
  return { to: found.name, rest: text.slice(0, from) + text.slice(to) };
};

const onlyAnew = ({ rest }: BenchReading, left: string): boolean =>
  rest.items.every((item) => isAnew(item) || !left.includes(rest.text.slice(item.from, item.to)));

/** What is told anew of tins that went: so many, to a place, on a day, of another batch. */
interface GoneAnew {
  readonly count?: number | undefined;
  readonly to?: string | undefined;
  readonly on?: string | undefined;
  readonly lot?: string | undefined;
}

/** The other batch it was of; null where the code said is none. */
const otherLot = ({ bench }: Reading, { lots }: BenchReading, was: string): string | undefined | null => {
  const [code, second] = lots;
  if (code === undefined) return undefined;
  if (second || !bench.batches.has(lotKey(code.code))) return null;
  return lotKey(code.code) === lotKey(was) ? undefined : code.code;
};

const isCount = (count: number | undefined): boolean =>
  count === undefined || (Number.isInteger(count) && count > 0);

const goneAnew = (reading: Reading, bench: BenchReading, was: string): GoneAnew | undefined => {
  const [number, second] = numbersIn(bench);
  const { to, rest } = placeIn(bench);
  const lot = otherLot(reading, bench, was);
  const isOther = bench.rest.items.some(
    ({ letter, from, to: end }) =>
      /[gvi%tR]/.test(letter) && (to === undefined || !to.includes(bench.rest.text.slice(from, end))),
  );
  if (second || lot === null || isOther || !onlyAnew(bench, rest) || !isCount(number?.value))
    return undefined;
  const anew = defined({ count: number?.value, to, on: dayIn(bench), lot });
  return Object.keys(anew).length > 0 ? anew : undefined;
};

/** "No, it was 4", "sorry, to the library", "that was yesterday": after tins went, or came back. */
const afterGone = (reading: Reading, last: Request): Claim | undefined => {
  const [part, second] = partsOf(last);
  const bench = part && !second ? putRight(reading) : undefined;
  const was = String(last.lot);
  const anew = bench && goneAnew(reading, bench, was);
  if (!part || !anew) return undefined;
  const { count, to, on, lot } = anew;
  const { all: _all, ...same } = part;
  const now = { ...(count === undefined ? part : { ...same, count }), ...defined({ to }) };
  const changed = lot === undefined ? { instead: true } : { lot, instead: was };
  return claim({ ...last, parts: [now], ...changed, ...defined({ on }) }, weight, [took]);
};

const amountIn = (bench: BenchReading, ingredient: string, reading: Reading): number | undefined => {
  const amounts = bench.rest.items.filter(isAmount);
  const numbers = numbersIn(bench);
  const [amount] = amounts;
  if (amounts.length === 1 && numbers.length === 0 && amount)
    return gramsRead(amount, ingredient, reading.settings.region).grams;
  return amounts.length === 0 && numbers.length === 1 ? numbers[0]?.value : undefined;
};

/** What an amount is put right to, where nothing else is told; a day alone is one too. */
const amountAnew = (
  reading: Reading,
  ingredient: string,
): { readonly grams?: number; readonly on?: string } | undefined => {
  const bench = putRight(reading);
  if (!bench || bench.lots.length > 0 || aboutCount.test(reading.text)) return undefined;
  if (!bench.rest.items.every((item) => isAnew(item))) return undefined;
  const grams = amountIn(bench, ingredient, reading);
  const on = dayIn(bench);
  return (grams ?? on) === undefined ? undefined : defined({ grams, on });
};

/** "No, it was 40 g": after something was used or thrown away. */
const afterTaken = (reading: Reading, last: Request): Claim | undefined => {
  const anew = last.takes === undefined && amountAnew(reading, String(last.ingredient ?? ''));
  if (!anew) return undefined;
  const { all: _all, ...same } = last;
  return claim({ ...(anew.grams === undefined ? last : same), ...anew, instead: true }, weight, [took]);
};

const packAnew = (purchase: Request, grams: number): Request => {
  const pack = purchase.pack as { amount: number; unit: string } | undefined;
  return pack?.unit === 'g' && pack.amount === purchase.grams ? { pack: { ...pack, amount: grams } } : {};
};

/** "No, make that lot K3": another code, and nothing else. */
const lotAnew = (reading: Reading): { readonly lot: string } | undefined => {
  const bench = putRight(reading);
  const [code, second] = bench?.lots ?? [];
  if (!bench || !code || second || reading.bench.lots.has(lotKey(code.code)) || code.kind === 'batch')
    return undefined;
  const isOnly =
    bench.days.length === 0 && bench.rest.items.every((item) => isAnew(item) && !/[ngv]/.test(item.letter));
  return isOnly ? { lot: code.code } : undefined;
};

/** "No, 400 g", "make that lot K3": after one thing was bought. */
const afterBought = (reading: Reading, last: Request): Claim | undefined => {
  const [only, second] = Array.isArray(last.purchases) ? (last.purchases as readonly Request[]) : [];
  if (!only || second || typeof only.lot !== 'string') return undefined;
  const renamed = lotAnew(reading);
  if (renamed)
    return claim({ ...last, purchases: [{ ...only, ...renamed }], instead: only.lot }, weight, [took]);
  const anew = amountAnew(reading, String(only.ingredient));
  if (!anew) return undefined;
  const packed = anew.grams === undefined ? {} : packAnew(only, anew.grams);
  return claim({ ...last, purchases: [{ ...only, ...anew, ...packed }], instead: true }, weight, [took]);
};

/** "No, 300": after a weighing or a mark, which are simply told anew. */
const afterCount = (reading: Reading, last: Request): Claim | undefined => {
  if (typeof last.grams !== 'number') return undefined;
  const anew = amountAnew(reading, String(last.ingredient ?? ''));
  return anew?.grams === undefined ? undefined : claim({ ...last, grams: anew.grams }, weight);
};

const onlyCode =
  /^\W*(?:(?:no|sorry|oops|wait|nope|ah|oh|i (?:meant?)|meant?|it (?:was|is|should be)|of|lot|batch|make (?:it|that)|actually|rather|the)\b\W*)*_+(?:\W*(?:please|i (?:meant?)|of course|sorry|not _+))*\W*$/i;

/** "Sorry, 26-KIVO": after a code that the book does not have, the same with the code that was meant. */
const codeAnew = (reading: Reading, { request, done }: Last): Claim | undefined => {
  const { lot } = request;
  if (done || typeof lot !== 'string' || reading.tokens.length > mostTokens || /\?/.test(reading.text))
    return undefined;
  const has = (code: string): boolean =>
    reading.bench.batches.has(lotKey(code)) || reading.bench.lots.has(lotKey(code));
  const { lots, rest } = readBench(reading);
  const [code, second] = lots;
  if (has(lot) || !code || !has(code.code) || (second && lotKey(second.code) !== lotKey(lot)))
    return undefined;
  return onlyCode.test(rest.text) ? claim({ ...request, lot: code.code }, weight, [took]) : undefined;
};

/** What is put right of tins that went or came back, right after it was told. */
export const claimGoneInstead = (reading: Reading): Claim | undefined => {
  const { last } = reading;
  if (last?.topic !== 'batch') return undefined;
  const meant = codeAnew(reading, last);
  if (meant) return meant;
  if (!last.done || !/^(?:gone|back)$/.test(String(last.request.action))) return undefined;
  return typeof last.request.lot === 'string' ? afterGone(reading, last.request) : undefined;
};

/** What is put right of a lot that was bought, used, weighed or marked, right after it was told. */
export const claimStockInstead = (reading: Reading): Claim | undefined => {
  const { last } = reading;
  if (last?.topic !== 'stock') return undefined;
  const meant = codeAnew(reading, last);
  if (meant || !last.done) return meant;
  const { request } = last;
  if (request.action === 'taken') return afterTaken(reading, request);
  if (request.action === 'bought') return afterBought(reading, request);
  return request.action === 'counted' || request.action === 'low' ? afterCount(reading, request) : undefined;
};
