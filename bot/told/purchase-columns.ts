import { ingredientById } from '../../core/ingredients.ts';
import type { BenchReading } from '../readers/bench-reading.ts';
import type { Item } from '../readers/item.ts';
import { isAmount } from '../readers/stock-amount.ts';
import { bareCode } from '../readers/stock-bought-cues.ts';
import type { Reading } from '../reading.ts';
import type { Place } from '../understand.ts';

// What a purchase has: a name, an amount, and mostly a code, each in its column.

/** More than this in one message is a list, and belongs on lines of its own. */
const mostPurchases = 12;

interface Said extends Place {
  readonly text: string;
}

export interface Columns {
  readonly names: readonly Item[];
  readonly amounts: readonly Said[];
  /** None where the house is to make them. */
  readonly codes: readonly Said[];
}

const packBefore =
  /\b(?:\d{1,2}|two|three|four|five|six|eight|ten|twelve|a dozen)\s*(?:[x×*]|(?:bags?|packs?|packets?|bottles?|tubs?|jars?|blocks?|bars?|tins?|cans?|boxes|sacks?|pouches|lots)(?: of)?)\s*(?:of )?$/i;
const packAfter =
  /^[ -]?(?:sized? )?(?:bags?|packs?|packets?|bottles?|tubs?|jars?|blocks?|bars?|tins?|cans?|box(?:es)?|sacks?|pouch(?:es)?|drums?|jugs?|canisters?)\b/i;
const weighed =
  /\b(?:weigh\w*|scales?|really|actually|net|holds?|in fact|comes? to|came to|which is|that is|that's|i\.e|making)\b[^\d_]{0,24}$/i;

/** "2 bottles of grapeseed oil (lot GS8, 500 g each)". */
const eachAfter =
  /^ ?(?:(?:in )?each|apiece|in every (?:one|bottle|bag)|per (?:bottle|bag|pack|tub|jar|tin|can|block))\b/i;
const packsBefore =
  /\b(\d{1,2}|two|three|four|five|six|eight|ten|twelve) (?:[a-z]+ )?(?:bags|packs|packets|bottles|tubs|jars|blocks|bars|tins|cans|boxes|sacks|pouches|bricks|canisters)\b[^\d;.]{0,60}$/i;

const amountSaid = ({ from, to }: Item, text: string): Said => {
  const many = eachAfter.test(text.slice(to))
    ? packsBefore.exec(text.slice(Math.max(0, from - 80), from))
    : null;
  if (many) return { from, to, text: `${many[1]} x ${text.slice(from, to)}` };
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

/** "Two blocks of beeswax: lot E3 100 g, lot E4 200 g": one name for all of them. */
const isNamedOnce = ([first, second]: readonly Item[]): boolean => first !== undefined && first === second;

/** Where each purchase begins: at the first of its name, its amount and its code. */
export const startsOf = ({ names, amounts, codes }: Columns): readonly number[] =>
  names.map((name, at) => {
    const own = [amounts[at]?.from, codes[at]?.from, isNamedOnce(names) ? undefined : name.from];
    return Math.min(...own.flatMap((from) => from ?? []));
  });

/** The one amount of each purchase, where a pack's size is told beside what it weighs. */
const amountsOfEach = (
  all: readonly Item[],
  names: readonly Item[],
  codes: readonly Said[],
  text: string,
): readonly Item[] => {
  const firstOwn = isNamedOnce(names)
    ? (all[0]?.from ?? 0)
    : Math.min(names[0]?.from ?? 0, all[0]?.from ?? 0);
  const codeFirst = (codes[0]?.from ?? 0) < firstOwn;
  const bounds = codes.map((code, at) =>
    codeFirst
      ? { from: code.from, to: codes[at + 1]?.from ?? text.length }
      : { from: codes[at - 1]?.to ?? 0, to: at === codes.length - 1 ? text.length : code.to },
  );
  return bounds.flatMap(({ from, to }) => {
    const own = all.filter((item) => item.from >= from && item.to <= to);
    return own.length > 1 ? onlyOnce(weighedOf(own, text)) : own;
  });
};

/** "A second bottle of the same oil": what was bought just before. */
const sameThing =
  /\b(?:the )?same (?:oil|butter|wax|herb|thing|stuff|kind|sort|sort of (?:oil|wax|butter))\b|\b(?:another|a second|a further|one more) (?:[a-z]+ )?(?:bag|bottle|tub|jar|tin|can|block|pack|packet|box)(?: of (?:it|that|them))?\b/i;
const kindWords = { oil: 'liquid-oil', butter: 'butter', wax: 'wax', herb: 'herb' } as const;
const isKindSaid = (said: string, kind: string | undefined): boolean =>
  Object.entries(kindWords).every(
    ([word, each]) => !new RegExp(`\\b${word}\\b`, 'i').test(said) || each === kind,
  );
const boughtBefore = ({ last }: Reading, said: string): string | undefined => {
  const before = last?.topic === 'stock' ? last.request.purchases : undefined;
  const [only, ...more] = Array.isArray(before) ? (before as { ingredient?: string; herb?: string }[]) : [];
  const known = only?.herb === undefined ? ingredientById(only?.ingredient ?? '') : undefined;
  const isOne = more.every(({ ingredient }) => ingredient === known?.id);
  return isOne && isKindSaid(said, known?.kind) ? known?.name : undefined;
};

const namedBefore = (rest: Reading): readonly Item[] => {
  const said = sameThing.exec(rest.text);
  const name = said ? boughtBefore(rest, rest.text) : undefined;
  if (!said || name === undefined) return [];
  const place = { from: said.index, to: said.index + said[0].length };
  return [{ letter: 'i', word: name.replace(/ \([^)]*\)$/, ''), ...place }];
};

const isBeside = ({ from, to }: Item, amounts: readonly Item[], text: string): boolean =>
  amounts.some((amount) =>
    amount.to <= from
      ? /^\W*(?:(?:of|the|our|some)\W+)*(?:[a-z]+ )?$/i.test(text.slice(amount.to, from))
      : /^\W*(?:(?:is|it's|-)\W+)?$/i.test(text.slice(to, amount.from)),
  );

/** "The honey shed gave 640 g of beeswax": of more names than codes, those with an amount beside them. */
const namesFor = (codes: readonly Said[], amounts: readonly Item[], rest: Reading): readonly Item[] => {
  const names = namesIn(rest);
  const own = names.filter(({ generic }) => !generic);
  const before = own.length > 0 ? [] : namedBefore(rest);
  const all = [own, before, names].find((each) => each.length > 0) ?? [];
  const [only, ...more] = all;
  if (only && more.length === 0 && codes.length > 1) return codes.map(() => only);
  const wanted = codes.length || amounts.length;
  return all.length > wanted ? all.filter((item) => isBeside(item, amounts, rest.text)) : all;
};

/** "1 litre weighs 920 g, so put 920 g": said twice. */
const onlyOnce = (own: readonly Item[]): readonly Item[] =>
  own.filter(({ value, letter }, at) => at === 0 || value !== own[0]?.value || letter !== own[0]?.letter);

/** Names, amounts and codes, one of each for every purchase, or no codes at all. */
export const columnsIn = (bench: BenchReading): Columns | undefined => {
  const { rest } = bench;
  const all = rest.items.filter((item) => isAmount(item) && item.value !== undefined);
  const codes = codesIn(bench);
  const names = namesFor(codes, all, rest);
  const isCoded = codes.length > 0;
  if (names.length === 0 || (isCoded && names.length !== codes.length) || names.length > mostPurchases)
    return undefined;
  const found = all.length === names.length || !isCoded ? all : amountsOfEach(all, names, codes, rest.text);
  if (found.length !== names.length) return undefined;
  return { names, codes, amounts: found.map((item) => amountSaid(item, rest.text)) };
};
