import { type BenchReading, readBench } from '../readers/bench-reading.ts';
import { asksOrPlans } from '../readers/bench-text.ts';
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
  /\b(?:strain|(?<!\b(?:cold|own|home|freshly|hand)[- ])press|infus|steep|decant|filter|squeez|macerat)\w*\b(?! (?:oil|virgin|olive|sunflower))|\bready to\b/i;

const ahead =
  /\b(?:order\w*|want\w*|wish\w*|would|need\w*|should|will|shall|plan\w*|hop(?:e|ing)|may|might|maybe|perhaps|think|if|unless|undo|mistake|wrong)\b/i;
const denies = /n['’]t\b|\b(?:not|no|none|never|nothing)\b/i;
/** Somebody's own, or on its way. */
const notOurs =
  /\b(?:not|isn't|aren't|wasn't|never) (?:ours|mine|for (?:us|me))\b|\bbelongs? to\b|\bon (?:its|the) way\b|\b(?:arriv|com)ing (?:on|next|in)\b/i;

const packBefore =
  /\b(?:\d{1,2}|two|three|four|five|six|eight|ten|twelve|a dozen)\s*(?:[x×*]|(?:bags?|packs?|packets?|bottles?|tubs?|jars?|blocks?|bars?|tins?|cans?|boxes|sacks?|pouches|lots)(?: of)?)\s*(?:of )?$/i;
const packAfter =
  /^[ -]?(?:sized? )?(?:bags?|packs?|packets?|bottles?|tubs?|jars?|blocks?|bars?|tins?|cans?|box(?:es)?|sacks?|pouch(?:es)?|drums?|jugs?|canisters?)\b/i;
const weighed =
  /\b(?:weigh\w*|scales?|really|actually|net|holds?|in fact|comes? to|came to|which is|that is|that's|i\.e|making)\b[^\d_]{0,24}$/i;

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
  const all = infusedJoined(rest.items).filter(({ letter }) => letter === 'i');
  const plain = all.some(({ generic }) => !generic) ? all.filter(({ generic }) => !generic) : all;
  return plain.filter(
    ({ ingredients }, at) => at === 0 || ingredients?.join() !== plain[at - 1]?.ingredients?.join(),
  );
};

/** "Calendula infused olive oil" is one thing. */
const infusedJoined = (items: readonly Item[]): readonly Item[] =>
  items.flatMap((item, at) => {
    const [by, herb] = [items[at - 1], items[at - 2]];
    if (item.letter === 'i' && by?.letter === 'H' && herb?.letter === 'i')
      return [{ ...item, from: herb.from, word: `${herb.word} oil` }];
    return items[at + 1]?.letter === 'H' && items[at + 2]?.letter === 'i' ? [] : [item];
  });

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

/** The one amount of each purchase, where a pack's size is told beside what it weighs. */
const amountsOfEach = (
  all: readonly Item[],
  names: readonly Item[],
  codes: readonly Said[],
  text: string,
): readonly Item[] => {
  const codeFirst = (codes[0]?.from ?? 0) < Math.min(names[0]?.from ?? 0, all[0]?.from ?? 0);
  const bounds = codes.map((code, at) =>
    codeFirst
      ? { from: code.from, to: codes[at + 1]?.from ?? text.length }
      : { from: codes[at - 1]?.to ?? 0, to: at === codes.length - 1 ? text.length : code.to },
  );
  return bounds.flatMap(({ from, to }) => {
    const own = all.filter((item) => item.from >= from && item.to <= to);
    return own.length > 1 ? weighedOf(own, text) : own;
  });
};

const columnsIn = (bench: BenchReading): Columns | undefined => {
  const { rest } = bench;
  const [names, codes] = [namesIn(rest), codesIn(bench)];
  if (names.length === 0 || names.length !== codes.length || names.length > mostPurchases) return undefined;
  const all = rest.items.filter((item) => isAmount(item) && item.value !== undefined);
  const found = all.length === names.length ? all : amountsOfEach(all, names, codes, rest.text);
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
      `${columns.amounts[at]?.text} ${name.word} lot ${columns.codes[at]?.text}`,
      ...(own ? [`best before ${own.future}`] : []),
      ...(price ? [`${price.text}${eachOf.exec(rest.text.slice(price.to))?.[0] ?? ''}`] : []),
    ].join(', ');
  });
  return `bought ${on ? `on ${on} ` : ''}${lines.join('\n')}`;
};

/** "The shea didn't come with the rest, …": a clause without an amount, a code or a date may say anything but what is still to come. */
const withoutAsides = ({ rest, lots, days }: BenchReading): string => {
  const stops = [...rest.text.matchAll(/[,.;!](?=\s)|\b(?:so|but)\b/gi)].map(({ index }) => index);
  const things = [...lots, ...days, ...rest.items.filter(isAmount)];
  const clauses = [...stops, rest.text.length].map((to, at) => ({ from: stops[at - 1] ?? 0, to }));
  const kept = clauses.filter((clause) => {
    const said = rest.text.slice(clause.from, clause.to);
    const isBare = !things.some(({ from, to }) => from < clause.to && to > clause.from);
    return !isBare || ahead.test(said) || (asksOrPlans(said) && !denies.test(said));
  });
  return kept.map(({ from, to }) => rest.text.slice(from, to)).join('');
};

const isTold = (bench: BenchReading): boolean => {
  const { rest, lots, days, today, trouble } = bench;
  const text = withoutAsides(bench);
  return (
    !trouble &&
    lots.every(({ kind, cued }) => kind === 'new' && cued) &&
    days.some(({ role, past }) => role === 'best-before' || past > today) &&
    !rest.items.some(({ letter, upTo }) => letter === 'R' || upTo !== undefined) &&
    !/[?]/.test(text) &&
    !madeHere.test(text) &&
    !goneElse.test(text) &&
    !isElsewhere(text, false) &&
    !notOurs.test(rest.text)
  );
};

const marker = /(?<=^|[\s:;,.])\(?(\d{1,2})[.)]\s+(?=[\p{L}\d])/gu;

/** "1. … 2. … 3. …": numbers that only count what is listed. */
const withoutMarkers = (reading: Reading): Reading => {
  const found = [...reading.text.matchAll(marker)].filter(([, number], at) => Number(number) === at + 1);
  if (found.length < 2) return reading;
  let place = 0;
  const text = reading.text.replace(marker, (all, number) => {
    if (Number(number) !== place + 1) return all;
    place += 1;
    return place === 1 ? '' : '; ';
  });
  return readAgain(text, reading);
};

/**
 * Purchases told in any words: as many new codes as ingredients and amounts, and a best before among them. What is asked,
 * planned, hoped for or somebody else's is none.
 */
export const purchasesIn: (reading: Reading) => readonly Told[] = oncePerReading(
  (message): readonly Told[] => {
    if (!/\d/.test(message.text)) return [];
    const reading = withoutMarkers(withoutClock(message));
    const bench = readBench(reading);
    const columns = isTold(bench) ? columnsIn(bench) : undefined;
    const plain = columns && plainOf(bench, columns);
    if (plain === undefined) return [];
    return [{ plain, reading: readAgain(plain, reading), besides: [], verb: 'bought', slots: [] }];
  },
);
