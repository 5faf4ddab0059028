import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading } from '../reading.ts';
import { isAnew } from './batch-anew.ts';
import { type BenchReading, readBench } from './bench-reading.ts';
import { nameAfter } from './bench-text.ts';
import { withoutDenied } from './denied.ts';
import { codeAnew, dayIn, insteadWeight, numbersIn, putRight, type Request, tookInstead } from './instead.ts';
import { gramsRead, isAmount, nameRead } from './stock-amount.ts';
import { amountPutRight } from './stock-amount-anew.ts';
import { priceTold } from './stock-price.ts';

const aboutCount = /\b(?:tins?|jars?|pots?|sticks?|tubes?|count|number|of them)\b/i;

const amountIn = (bench: BenchReading, ingredient: string, reading: Reading): number | undefined => {
  const amounts = bench.rest.items.filter(isAmount);
  const numbers = numbersIn(bench);
  const [amount] = amounts;
  if (amounts.length === 1 && numbers.length === 0 && amount)
    return gramsRead(amount, ingredient, reading.settings.region).grams;
  // "The olive oil was 8.99" is what it cost.
  const isMoney = /(?<![\d.,])\d{1,4}[.,]\d\d(?![\d.,])/.test(bench.rest.text);
  return amounts.length === 0 && numbers.length === 1 && !isMoney ? numbers[0]?.value : undefined;
};

/** "No, I threw away 60 g", "I used 50": the verb says nothing new. */
const sameVerb =
  /^(?:threw|thrown|away|binned|used|took|spilled|spilt|lost|weighed|weighs|bought|opened|cost|costs|paid|price|weight)$/;

const onlyAnew = (bench: BenchReading): boolean =>
  bench.rest.items.every((item) => isAnew(item) || sameVerb.test(item.word));

/** What an amount is put right to, where nothing else is told; a day alone is one too. */
const amountAnew = (
  reading: Reading,
  ingredient: string,
): { readonly grams?: number; readonly on?: string } | undefined => {
  const bench = putRight(reading);
  if (!bench || bench.lots.length > 0 || aboutCount.test(reading.text) || !onlyAnew(bench)) return undefined;
  const grams = amountIn(bench, ingredient, reading);
  const on = dayIn(bench);
  return (grams ?? on) === undefined ? undefined : defined({ grams, on });
};

/** The other lot it was of, known to the book, with its amount or without. */
const otherLot = (
  reading: Reading,
  was: unknown,
): { readonly lot: string; readonly grams?: number } | undefined => {
  const bench = putRight(reading);
  const [code, second] = bench?.lots ?? [];
  if (!bench || !code || second || code.kind !== 'lot' || lotKey(code.code) === lotKey(String(was)))
    return undefined;
  if (bench.days.length > 0 || !onlyAnew(bench)) return undefined;
  const known = reading.bench.lots.get(lotKey(code.code))?.ingredient ?? '';
  const told = [...numbersIn(bench), ...bench.rest.items.filter(isAmount)].length;
  const grams = amountIn(bench, known, reading);
  return told > 0 && grams === undefined ? undefined : { lot: code.code, ...defined({ grams }) };
};

/** The one amount of a message that puts something right, whatever words stand around it. */
const loosely = (
  reading: Reading,
  last: Request,
): { readonly grams?: number; readonly on?: string } | undefined => {
  const grams = amountPutRight(reading, withIngredient(reading, last));
  return grams === undefined ? undefined : { grams };
};
const withIngredient = ({ bench }: Reading, last: Request): Request => {
  const lot = typeof last.lot === 'string' ? bench.lots.get(lotKey(last.lot)) : undefined;
  return lot ? { ...last, ingredient: lot.ingredient } : last;
};

const ways = { used: /\bused\b/i, wasted: /\b(?:binned|threw|thrown|wasted|spilled|spilt|lost)\b/i } as const;

/** "Sorry, binned it, not used": the same, and another way. */
const otherWay = (reading: Reading, how: unknown): 'used' | 'wasted' | undefined => {
  const bench = putRight(reading);
  if (!bench || bench.lots.length + bench.days.length > 0 || !onlyAnew(bench)) return undefined;
  if (bench.rest.items.some(({ letter }) => /[ngv]/.test(letter))) return undefined;
  const other = how === 'used' ? 'wasted' : 'used';
  return ways[other].test(bench.rest.text) ? other : undefined;
};

/** "No, it was 40 g", "I meant K13": after something was used or thrown away. */
const afterTaken = (reading: Reading, last: Request): Claim | undefined => {
  if (last.takes !== undefined) return undefined;
  const { all: _all, ...same } = last;
  const other = otherLot(reading, last.lot);
  if (other && typeof last.lot === 'string')
    return claim(
      { ...(other.grams === undefined ? last : same), ...other, instead: last.lot },
      insteadWeight,
      [tookInstead],
    );
  const how = otherWay(reading, last.how);
  if (how) return claim({ ...last, how, instead: true }, insteadWeight, [tookInstead]);
  const anew = amountAnew(reading, String(last.ingredient ?? '')) ?? loosely(reading, last);
  if (!anew) return undefined;
  return claim({ ...(anew.grams === undefined ? last : same), ...anew, instead: true }, insteadWeight, [
    tookInstead,
  ]);
};

const packAnew = (purchase: Request, grams: number): Request => {
  const pack = purchase.pack as { amount: number; unit: string } | undefined;
  return pack?.unit === 'g' && pack.amount === purchase.grams ? { pack: { ...pack, amount: grams } } : {};
};

const saysLot = /^\W*(?:the |its |and the )?lot\b/i;

/** "No, make that lot K3": another code, and nothing else. */
const lotAnew = (reading: Reading): { readonly lot: string } | undefined => {
  const bench = saysLot.test(reading.text) ? readBench(reading) : putRight(reading);
  const [code, second] = bench?.lots ?? [];
  if (!bench || !code || second || reading.bench.lots.has(lotKey(code.code)) || code.kind === 'batch')
    return undefined;
  const isOnly =
    bench.days.length === 0 && bench.rest.items.every((item) => isAnew(item) && !/[ngv]/.test(item.letter));
  return isOnly ? { lot: code.code } : undefined;
};

/** "Sorry, shea butter": another ingredient, and nothing else. */
const ingredientAnew = (reading: Reading): Request | undefined => {
  if (/\b(?:there(?:'s| is| are| was)|also|another|as well|second)\b/i.test(reading.text)) return undefined;
  const bench = putRight(reading);
  const [name, second] = bench?.rest.items.filter(({ letter }) => letter === 'i') ?? [];
  if (!bench || !name || second || bench.lots.length > 0 || bench.days.length > 0) return undefined;
  const others = bench.rest.items.filter((item) => item !== name);
  if (!others.every((item) => isAnew(item) || item.word === 'of')) return undefined;
  const { id, herb, trouble } = nameRead(name);
  if (trouble || id === undefined) return undefined;
  const grams = amountIn(bench, id, reading);
  const told = others.some(({ letter }) => /[ngv]/.test(letter));
  return told && grams === undefined ? undefined : { ingredient: id, ...defined({ herb, grams }) };
};

/** "No, 2029-06": a day ahead of one that was bought is its best before. */
const dateAnew = (reading: Reading): Request | undefined => {
  const bench = putRight(reading);
  const [day, second] = bench?.days ?? [];
  if (!bench || !day || second || bench.lots.length > 0 || !onlyAnew(bench)) return undefined;
  if (bench.rest.items.some(({ letter }) => /[ngv]/.test(letter))) return undefined;
  return day.past > bench.today ? { bestBefore: day.future } : undefined;
};

const paidSaid = /\b(?:it|that|they) (?:was|cost|costs)\b|\b(?:paid|cost|price|for it)\b/i;

/** "It cost 12.50", right after it was bought without a price. */
const priceAnew = (reading: Reading, only: Request): Request | undefined => {
  const { items, text } = reading;
  if (!paidSaid.test(text) || items.some(({ letter }) => /[Rcgvi%]/.test(letter))) return undefined;
  const pack = (only.pack ?? { amount: only.grams, unit: 'g' }) as { amount: number; unit: 'g' | 'ml' };
  const {
    price,
    currency,
    trouble,
    items: used,
  } = priceTold({ from: 0, to: text.length, items }, [], reading, pack);
  const others = items.filter((item) => !used.includes(item));
  if (trouble || price === undefined || !others.every((item) => isAnew(item) || sameVerb.test(item.word)))
    return undefined;
  return { price, pack, ...defined({ currency }) };
};

const fromWhom =
  /^\W*(?:(?:it|that|they|all|was|were|is|came|bought|got|sorry|no|oh)\W+)*from\s+(?=\p{Lu}|(?:the|our|my) )/iu;

/** "From Mill Lane Bees", "it was from the co-op". */
const supplierAnew = ({ text }: Reading): Request | undefined => {
  const found = /\d/.test(text) ? undefined : nameAfter(text, fromWhom);
  return found && /^\W*$/.test(text.slice(found.place.to).replace(/\b(?:by the way|actually|too)\b/gi, ''))
    ? { supplier: found.name.replace(/^the /i, '') }
    : undefined;
};

const boughtAgain =
  /^\W*(?:(?:i|we|it|that|was|were|all|and)\W+)*(?:bought|got|came|arrived) (?:(?:it|that|them) )?_+\W*$/i;

/** "Bought yesterday", after a purchase without its day. */
const boughtOn = (reading: Reading): Request | undefined => {
  const bench = readBench(reading);
  return bench.lots.length === 0 && bench.days.length === 1 && boughtAgain.test(bench.rest.text)
    ? defined({ on: dayIn(bench) })
    : undefined;
};

/** "No, 400 g", "make that lot K3", "sorry, shea butter": after one thing was bought. */
const afterBought = (reading: Reading, last: Request): Claim | undefined => {
  const [only, second] = Array.isArray(last.purchases) ? (last.purchases as readonly Request[]) : [];
  if (!only || second || typeof only.lot !== 'string') return undefined;
  const renamed = lotAnew(reading);
  if (renamed)
    return claim({ ...last, purchases: [{ ...only, ...renamed }], instead: only.lot }, insteadWeight, [
      tookInstead,
    ]);
  const other =
    dateAnew(reading) ??
    ingredientAnew(reading) ??
    priceAnew(reading, only) ??
    amountAnew(reading, String(only.ingredient)) ??
    loosely(reading, only) ??
    boughtOn(reading) ??
    supplierAnew(reading);
  if (!other || Object.keys(other).length === 0) return undefined;
  const packed = typeof other.grams === 'number' ? packAnew(only, other.grams) : {};
  return claim({ ...last, purchases: [{ ...only, ...packed, ...other }], instead: true }, insteadWeight, [
    tookInstead,
  ]);
};

/** "No, 300", "sorry, that was K13": after a weighing, an opening or a mark. */
const afterCount = (reading: Reading, last: Request): Claim | undefined => {
  const other = typeof last.lot === 'string' ? otherLot(reading, last.lot) : undefined;
  if (other && (other.grams === undefined || last.action === 'counted'))
    return claim({ ...last, ...other, instead: last.lot }, insteadWeight, [tookInstead]);
  if (typeof last.grams !== 'number') return undefined;
  const anew = amountAnew(reading, String(last.ingredient ?? '')) ?? loosely(reading, last);
  return anew?.grams === undefined ? undefined : claim({ ...last, grams: anew.grams }, insteadWeight);
};

/** What is put right of a lot that was bought, used, weighed, opened or marked, right after it was told. */
export const claimStockInstead = (reading: Reading): Claim | undefined => {
  const { last } = reading;
  if (last?.topic !== 'stock') return undefined;
  const meant = codeAnew(reading, last);
  if (meant || !last.done) return meant;
  const { request } = last;
  const { reading: said } = withoutDenied(reading);
  if (request.action === 'taken') return afterTaken(said, request);
  if (request.action === 'bought') return afterBought(said, request);
  return /^(?:counted|opened|low)$/.test(String(request.action)) ? afterCount(said, request) : undefined;
};
