import type { Place } from '../understand.ts';
import type { Item } from './item.ts';
import { isAmount } from './stock-amount.ts';

/** One purchase's stretch of the message. */
export interface Piece extends Place {
  readonly items: readonly Item[];
}

export const isThing = ({ letter }: Item): boolean => letter === 'i';

/** Where one purchase ends and the next begins: at line breaks, or before each further name with its amount. */
export const piecesOf = (text: string, items: readonly Item[]): readonly Piece[] => {
  const names = items.filter(isThing);
  const starts = names.map((name, at) => {
    const before = names[at - 1];
    if (!before) return 0;
    const line = text.lastIndexOf('\n', name.from);
    if (line >= before.to) return line;
    const semicolon = text.lastIndexOf(';', name.from);
    if (semicolon >= before.to) return semicolon;
    // "500 g beeswax …, 1 kg shea": the amount right before a name is that name's own.
    const close = items
      .filter((item) => isAmount(item) && item.to <= name.from && item.from >= before.to)
      .at(-1);
    const first = items.find((item) => isAmount(item) || isThing(item));
    const amountsFirst = first !== undefined && isAmount(first);
    const own = amountsFirst ? close : undefined;
    return own ? timesStart(items, own) : name.from;
  });
  return starts.map((from, at) => {
    const to = starts[at + 1] ?? text.length;
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
  /^(?:bag|pack|packet|bottle|jar|tub|tin|block|sack|box|can|drum|jug)s?$/.test(word);

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
