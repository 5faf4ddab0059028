import { takePourFigures } from '../readers/batch-figures.ts';
import { type BenchReading, readBench } from '../readers/bench-reading.ts';
import { asksOrPlans } from '../readers/bench-text.ts';
import { countsOthers, countsPeople, isGroupNumber, isPerPerson } from '../readers/group-number.ts';
import type { Item } from '../readers/item.ts';
import { letters } from '../readers/lexicon.ts';
import type { Reading } from '../reading.ts';

const mostTokens = 110;
const mostPours = 6;

/** One pour of several: what, how many, in what, how much in each; and the stretch of the message it stands in. */
interface Pour {
  readonly name?: Item;
  readonly count?: Item;
  readonly holder?: Item;
  readonly size?: Item;
}

const kinds: Readonly<Record<string, keyof Pour>> = {
  [letters.recipe]: 'name',
  [letters.number]: 'count',
  [letters.container]: 'holder',
  g: 'size',
  v: 'size',
};

const cue = /\b(?:pour(?:ed|s|ing)?|made|filled|cast|did|produced|finished)\b/i;
/** Tins that went, or stayed, are told with something else. */
const otherwise =
  /\b(?:sold|gave|given|kept|keep|binned|threw|thrown|returned|back|dropped|broke|bought|opened|cost|costs|label|labels)\b/i;

/** "1) 12 tins": the place in a list. */
const isListMark = ({ from, to }: Item, text: string): boolean =>
  /(?:^|[\n:;,.]\s{0,3})$/.test(text.slice(Math.max(0, from - 4), from)) &&
  /^[.)](?:\s|$)/.test(text.slice(to, to + 2));
/** "Poured two lots today". */
const countsPours = ({ to }: Item, text: string): boolean =>
  /^ (?:different |new |more |small |full )?(?:lots?|batch(?:es)?|pours?|kinds?|sorts?|things|recipes|products|runs?|rounds?)\b/i.test(
    text.slice(to, to + 22),
  );

/** "40 g a jar": one of them, and no number. */
const isEach = ({ word }: Item, before: Item | undefined): boolean =>
  /^(?:an?|one|1)$/.test(word) && /^[gv]$/.test(before?.letter ?? '');

const kindOf = (item: Item, at: number, { items, text }: Reading): keyof Pour | undefined => {
  const kind = kinds[item.letter];
  const isNone =
    isListMark(item, text) ||
    countsPours(item, text) ||
    countsOthers(items, at) ||
    countsPeople(item, text) ||
    isGroupNumber(item, text) ||
    isEach(item, items[at - 1]) ||
    item.fraction;
  return kind === 'count' && isNone ? undefined : kind;
};

/** Things that a pour in a list is not told with. */
const isOther = ({ letter, upTo }: Item): boolean => /^[i%dtrp]$/.test(letter) || upTo !== undefined;

/** Each thing begins a new pour where the one before has such a thing already. */
const poursIn = (rest: Reading): readonly Pour[] | undefined => {
  if (rest.items.some((item) => isOther(item) || isPerPerson(item, rest.text))) return undefined;
  const found: Partial<Record<keyof Pour, Item>>[] = [];
  for (const [at, item] of rest.items.entries()) {
    const kind = kindOf(item, at, rest);
    if (!kind) continue;
    const last = found.at(-1);
    if (!last || last[kind]) found.push({ [kind]: item });
    else last[kind] = item;
  }
  return found.every((pour) => Object.keys(pour).length > 1) ? found : undefined;
};

const startOf = (pour: Pour): number => Math.min(...Object.values(pour).map(({ from }: Item) => from));

/** What stands after the beginning of one and before that of the next. */
const within = <T extends { readonly from: number }>(
  all: readonly T[],
  pours: readonly Pour[],
  at: number,
) => {
  const from = at === 0 ? 0 : startOf(pours[at] as Pour);
  const next = pours[at + 1];
  const to = next ? startOf(next) : Number.POSITIVE_INFINITY;
  return all.filter((each) => each.from >= from && each.from < to);
};

/** One day for all of them, or one for each; undefined where it cannot be told. */
const daysOf = ({ days }: BenchReading, pours: readonly Pour[]): readonly string[] | undefined => {
  if (days.some(({ role }) => role !== 'on')) return undefined;
  const [day] = days;
  if (days.length < 2) return pours.map(() => (day ? ` on ${day.past}` : ''));
  return days.length === pours.length ? days.map(({ past }) => ` on ${past}`) : undefined;
};

const lotsOf = ({ lots }: BenchReading, pours: readonly Pour[]): readonly string[] | undefined => {
  const own = pours.map((_, at) => within(lots, pours, at).map(({ code }) => code));
  const isTold = lots.length === 0 || own.every((codes) => codes.length > 0) || allNames(pours) < 2;
  if (!isTold || lots.some(({ kind }) => kind !== 'lot')) return undefined;
  const all = allNames(pours) < 2 ? pours.map(() => lots.map(({ code }) => code)) : own;
  return all.map((codes) => (codes.length === 0 ? '' : ` with lots ${codes.join(', ')}`));
};

const allNames = (pours: readonly Pour[]): number => pours.filter(({ name }) => name !== undefined).length;

/** What one of them leaves out is as with another: one name for all, or a size said once. */
const completed = (pours: readonly Pour[]): readonly Pour[] | undefined => {
  const names = pours.flatMap(({ name }) => name ?? []);
  const sizes = pours.flatMap(({ size }) => size ?? []);
  const holder = pours.find((pour) => pour.holder)?.holder;
  const all = pours.map(
    (pour): Pour => ({
      ...(holder ? { holder } : {}),
      ...(names.length === 1 && names[0] ? { name: names[0] } : {}),
      ...(sizes.length === 1 && sizes[0] ? { size: sizes[0] } : {}),
      ...pour,
    }),
  );
  return all.every(({ name, count, size }) => name && count?.value !== undefined && size) ? all : undefined;
};

/** "Poured today: 12 tins of 20 g of A and 8 jars of 30 g of B": each as a message of its own. */
export const poursListed = (reading: Reading): readonly string[] => {
  const { text, tokens } = reading;
  if (tokens.length > mostTokens || otherwise.test(text) || /\?|\bnotes?\s*:/i.test(text)) return [];
  const bench = readBench(reading);
  if (takePourFigures(bench.rest).items.length > 0) return [];
  const { days, today } = bench;
  const isPast = days.length > 0 && days.every(({ past }) => past < today);
  if (!cue.test(text) && !isPast) return [];
  const found = poursIn(bench.rest);
  if (!found || found.length < 2 || found.length > mostPours || bench.trouble || asksOrPlans(bench.rest.text))
    return [];
  const pours = completed(found);
  const on = pours && daysOf(bench, pours);
  const lots = pours && lotsOf(bench, found);
  if (!pours || !on || !lots) return [];
  const said = (item: Item | undefined): string => (item ? bench.rest.text.slice(item.from, item.to) : '');
  return pours.map(
    ({ name, count, holder, size }, at) =>
      `poured ${count?.value} ${holder ? `${said(holder)} of` : 'x'} ${said(size)} of ${name?.recipe}${lots[at]}${on[at]}`,
  );
};
