import type { Item } from './item.ts';

/** One container as a question names it: "a 15 ml tin", "one tin", "each tin". */
interface One {
  readonly from: number;
  readonly to: number;
  readonly size?: Item;
  readonly container: Item;
}

const isOne = ({ letter, word }: Item): boolean =>
  (letter === 'n' && /^(?:an?|one|single)$/.test(word)) || letter === 'e';

const oneAt = (items: readonly Item[], at: number): One | undefined => {
  const first = items[at];
  if (!first || !isOne(first)) return undefined;
  const next = items[at + 1];
  const size = next && /[gv]/.test(next.letter) ? next : undefined;
  const container = items[size ? at + 2 : at + 1];
  if (container?.letter !== 'c') return undefined;
  return { from: at, to: at + (size ? 3 : 2), container, ...(size ? { size } : {}) };
};

/**
 * "How much would a tin cost if I made 100 tins", "one 15 ml tin … if I make two dozen", "a tin … if I make 24 of 15 ml": the
 * one is one of those, and what was said of it holds for them. Gives the items with the many alone.
 */
export const withManyAlone = (items: readonly Item[]): readonly Item[] => {
  const one = items.map((_item, at) => oneAt(items, at)).find((found) => found !== undefined);
  if (!one) return items;
  const rest = [...items.slice(0, one.from), ...items.slice(one.to)];
  const many = rest.findIndex((item) => item.letter === 'n' && !isOne(item) && (item.value ?? 0) > 1);
  if (many < 0) return items;
  const then = rest
    .map(({ letter }) => letter)
    .slice(many + 1)
    .join('');
  const named = /^[gv]?c/.test(then);
  const hasSize = /^(?:c?o?)[gv]/.test(then);
  const added = [...(one.size && !hasSize ? [one.size] : []), ...(named ? [] : [one.container])];
  return [...rest.slice(0, many + 1), ...added, ...rest.slice(many + 1)];
};
