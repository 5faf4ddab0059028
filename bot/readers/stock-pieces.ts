import type { Place } from '../understand.ts';
import type { Item } from './item.ts';
import { isAmount } from './stock-amount.ts';

/** One purchase's stretch of the message. */
export interface Piece extends Place {
  readonly items: readonly Item[];
}

export const isThing = ({ letter }: Item): boolean => letter === 'i';

const idOf = ({ ingredients, word }: Item): string => ingredients?.join() ?? word;

/** "Got two bottles of castor oil: 60 g castor oil …": what is named before a colon and again with its amount. */
const afterHeading = (items: readonly Item[]): readonly Item[] => {
  const colon = items.findIndex(({ letter }) => letter === ':');
  if (colon < 0 || items.slice(0, colon).some(isAmount)) return items;
  const after = items.slice(colon + 1);
  const repeats = items
    .slice(0, colon)
    .filter(isThing)
    .every((name) => after.some((item) => isThing(item) && idOf(item) === idOf(name)));
  return repeats && after.some(isThing) ? after : items;
};

/** "500 g beeswax 300 g" is no two purchases: a comma, an "and", or another name stands between two. */
const isApart = (items: readonly Item[], one: Item, other: Item): boolean => {
  const [from, to] = [items.indexOf(one), items.indexOf(other)];
  const next = items.find((item, at) => at > to && (isThing(item) || isAmount(item)));
  return (
    items.slice(from, to).some(({ letter }) => /[,;.:A\n-]/.test(letter)) ||
    (next !== undefined && isThing(next))
  );
};

interface Growing {
  from: number;
  name?: Item;
  amount?: Item;
}

/** A name begins another purchase when this one has its name, or when names come before their amounts. */
const nameOpens = (now: Growing, item: Item, namesFirst: boolean): boolean => {
  if (now.name === undefined) return namesFirst && now.amount !== undefined;
  return now.amount !== undefined && idOf(now.name) !== idOf(item);
};

const amountOpens = ({ name, amount }: Growing, item: Item, items: readonly Item[]): boolean =>
  amount !== undefined && (name === undefined || isApart(items, amount, item));

const opensNext = (now: Growing, item: Item, items: readonly Item[], namesFirst: boolean): boolean =>
  isAmount(item) ? amountOpens(now, item, items) : nameOpens(now, item, namesFirst);

const startOf = (items: readonly Item[], item: Item): number =>
  isAmount(item) ? timesStart(items, item) : item.from;

/**
 * Where one purchase ends and the next begins: at each further amount or name. "500 g beeswax …, 1 kg shea …",
 * "beeswax 500 g …, shea 1 kg …", and "olive oil: 100 g lot V2, 500 g lot V3", of one name.
 */
export const piecesOf = (text: string, all: readonly Item[]): readonly Piece[] => {
  const items = afterHeading(all);
  const told = items.filter((item) => isAmount(item) || isThing(item));
  const namesFirst = told[0] !== undefined && isThing(told[0]);
  const pieces: Growing[] = [];
  for (const item of told) {
    const now = pieces.at(-1);
    const own = isAmount(item) ? { amount: item } : { name: item };
    if (!now) pieces.push({ from: 0, ...own });
    else if (opensNext(now, item, items, namesFirst)) pieces.push({ from: startOf(items, item), ...own });
    else Object.assign(now, { ...own, ...now });
  }
  return pieces.map(({ from }, at) => {
    const to = pieces[at + 1]?.from ?? text.length;
    return { from, to, items: items.filter((item) => item.from >= from && item.from < to) };
  });
};

/** "2 x 500 g": the number before it belongs to the amount. */
const timesStart = (items: readonly Item[], amount: Item): number => {
  const at = items.indexOf(amount);
  const before = items.slice(Math.max(0, at - 3), at);
  const number = before.findLast(({ letter }) => letter === 'n');
  const between = number ? items.slice(items.indexOf(number) + 1, at) : [];
  return number &&
    between.length > 0 &&
    between.every(({ letter, word }) => /[xoc*]/.test(letter) || isPackWord(word))
    ? number.from
    : amount.from;
};

const isPackWord = (word: string): boolean =>
  /^(?:bag|pack|packet|bottle|jar|tub|tin|block|sack|box|can|drum|jug|bar|cake|slab|piece|tube|pot|tray|carton|case)s?$/.test(
    word,
  );

/** "3 bags of 500 g", "2 x 500 g": how many, and the items that say so. */
export const timesIn = (
  items: readonly Item[],
  amount: Item,
): { readonly times: number; readonly items: readonly Item[] } => {
  const at = items.indexOf(amount);
  const from = items.findIndex((item) => item.from >= timesStart(items, amount));
  const number = items[from];
  if (from >= at || number?.value === undefined) return { times: 1, items: [] };
  return { times: number.value, items: items.slice(from, at) };
};
