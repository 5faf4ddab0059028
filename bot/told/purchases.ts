import { type BenchReading, readBench } from '../readers/bench-reading.ts';
import type { Item } from '../readers/item.ts';
import { isAmount } from '../readers/stock-amount.ts';
import { bareCode, goneElse, isElsewhere } from '../readers/stock-bought-cues.ts';
import { oncePerReading, type Reading } from '../reading.ts';
import { type Place, readAgain } from '../understand.ts';
import { moneyIn, withoutClock } from './stretches.ts';
import type { Told } from './told.ts';

// A new code with an ingredient, an amount and a best before came in, whatever is said around them.

/** More than this in one message is a list, and belongs on lines of its own. */
const mostPurchases = 12;

interface Said extends Place {
  readonly text: string;
}

interface Columns {
  readonly names: readonly Item[];
  readonly amounts: readonly Said[];
  readonly codes: readonly Said[];
}

const madeHere =
  /\b(?:strain|press|infus|steep|decant|filter|squeez|macerat)\w*\b(?! (?:oil|virgin|olive|sunflower))|\bready to\b/i;

/** Somebody's own, or on its way. */
const notOurs =
  /\b(?:not|isn't|aren't|wasn't|never) (?:ours|mine|for (?:us|me))\b|\bbelongs? to\b|\bon (?:its|the) way\b|\b(?:arriv|com)ing (?:on|next|in)\b/i;

const packBefore =
  /\b(?:\d{1,2}|two|three|four|five|six|eight|ten|twelve|a dozen)\s*(?:[x×*]|(?:bags?|packs?|packets?|bottles?|tubs?|jars?|blocks?|bars?|tins?|cans?|boxes|sacks?|pouches|lots)(?: of)?)\s*(?:of )?$/i;
const packAfter =
  /^[ -]?(?:sized? )?(?:bags?|packs?|packets?|bottles?|tubs?|jars?|blocks?|bars?|tins?|cans?|box(?:es)?|sacks?|pouch(?:es)?|drums?|jugs?|canisters?)\b/i;
const weighed =
  /\b(?:weigh\w*|scales?|really|actually|net|holds?|in fact|comes? to|came to|that is|that's|which is)\b[^\d_]{0,24}$/i;

const amountSaid = ({ from, to }: Item, text: string): Said => {
  const pack = packBefore.exec(text.slice(Math.max(0, from - 24), from));
  const start = from - (pack?.[0].length ?? 0);
  return { from: start, to, text: text.slice(start, to) };
};

/** "A litre bottle, but it weighs 900 g": of two amounts before the next name or code, what was weighed. */
const weighedOf = (amounts: readonly Item[], text: string): readonly Item[] => {
  const isWeighed = ({ from }: Item): boolean => weighed.test(text.slice(Math.max(0, from - 40), from));
  const isPack = ({ to }: Item): boolean => packAfter.test(text.slice(to, to + 12));
  const told = amounts.filter((item) => isWeighed(item) && !isPack(item));
  if (told.length > 0) return told;
  const loose = amounts.filter((item) => !isPack(item));
  return loose.length > 0 ? loose : amounts;
};

/** What a name means is what it is called; "oil" beside "olive oil" is none, and what is named twice in a row is one. */
const namesIn = (rest: Reading): readonly Item[] => {
  const all = rest.items.filter(({ letter }) => letter === 'i');
  const plain = all.some(({ generic }) => !generic) ? all.filter(({ generic }) => !generic) : all;
  return plain.filter(
    ({ ingredients }, at) => at === 0 || ingredients?.join() !== plain[at - 1]?.ingredients?.join(),
  );
};

const bareCodes = ({ rest, days }: BenchReading): readonly Said[] => {
  const all = new RegExp(bareCode.source, 'gu');
  if (!days.some(({ role }) => role === 'best-before')) return [];
  return [...rest.text.matchAll(all)]
    .map((match) => ({ text: match[0], from: match.index, to: match.index + match[0].length }))
    .filter(
      ({ from, to }) =>
        !rest.items.some((item) => /[gvi]/.test(item.letter) && item.from < to && item.to > from),
    );
};

const codesIn = (bench: BenchReading): readonly Said[] =>
  bench.lots.length > 0
    ? bench.lots.map(({ code, from, to }) => ({ text: code, from, to }))
    : bareCodes(bench);

/** Where each purchase begins: at the first of its name, its amount and its code. */
const startsOf = ({ names, amounts, codes }: Columns): readonly number[] =>
  names.map(({ from }, at) => Math.min(from, amounts[at]?.from ?? from, codes[at]?.from ?? from));

const columnsIn = (bench: BenchReading): Columns | undefined => {
  const { rest } = bench;
  const [names, codes] = [namesIn(rest), codesIn(bench)];
  if (names.length === 0 || names.length !== codes.length || names.length > mostPurchases) return undefined;
  const all = rest.items.filter((item) => isAmount(item) && item.value !== undefined);
  const found = all.length === names.length ? all : names.length === 1 ? weighedOf(all, rest.text) : [];
  if (found.length !== names.length) return undefined;
  return { names, codes, amounts: found.map((item) => amountSaid(item, rest.text)) };
};

/** The last of the places that begins before a thing is whose it is. */
const ownerOf = ({ from }: Place, starts: readonly number[]): number =>
  Math.max(
    0,
    starts.findLastIndex((start) => start <= from),
  );

const eachOf = /^ ?(?:each|apiece|(?:a|per) (?:kilo|kg|bottle|bag|pack|tub|litre|100 g))\b/i;

const plainOf = (bench: BenchReading, columns: Columns): string | undefined => {
  const { rest, days, today } = bench;
  const starts = startsOf(columns);
  if (starts.some((start, at) => at > 0 && start <= (starts[at - 1] ?? 0))) return undefined;
  const best = days.filter(({ role, past }) => role === 'best-before' || past > today);
  const on = days.find((day) => !best.includes(day) && day.past <= today)?.past;
  const inOrder = best.length === starts.length;
  const paid = moneyIn(rest.text);
  const lines = columns.names.map((name, at) => {
    const own = inOrder ? best[at] : best.find((day) => ownerOf(day, starts) === at);
    const price = paid.find((each) => ownerOf(each, starts) === at);
    return [
      `${columns.amounts[at]?.text} ${rest.text.slice(name.from, name.to)} lot ${columns.codes[at]?.text}`,
      ...(own ? [`best before ${own.future}`] : []),
      ...(price ? [`${price.text}${eachOf.exec(rest.text.slice(price.to))?.[0] ?? ''}`] : []),
    ].join(', ');
  });
  return `bought ${on ? `on ${on} ` : ''}${lines.join('\n')}`;
};

const isTold = (bench: BenchReading): boolean => {
  const { rest, lots, days, today, trouble } = bench;
  const { text } = rest;
  return (
    !trouble &&
    lots.every(({ kind, cued }) => kind === 'new' && cued) &&
    days.some(({ role, past }) => role === 'best-before' || past > today) &&
    !rest.items.some(({ letter, upTo }) => letter === 'R' || upTo !== undefined) &&
    !/[?]/.test(text) &&
    !madeHere.test(text) &&
    !goneElse.test(text) &&
    !isElsewhere(text, false) &&
    !notOurs.test(text)
  );
};

/**
 * Purchases told in any words: as many new codes as ingredients and amounts, and a best before among them. What is asked,
 * planned, hoped for or somebody else's is none.
 */
export const purchasesIn: (reading: Reading) => readonly Told[] = oncePerReading(
  (message): readonly Told[] => {
    if (!/\d/.test(message.text)) return [];
    const reading = withoutClock(message);
    const bench = readBench(reading);
    const columns = isTold(bench) ? columnsIn(bench) : undefined;
    const plain = columns && plainOf(bench, columns);
    if (plain === undefined) return [];
    return [{ plain, reading: readAgain(plain, reading), besides: [], verb: 'bought', slots: [] }];
  },
);
