import type { Trouble } from '../answer.ts';
import { askWhich } from './ask-back.ts';
import type { Item } from './item.ts';

/** "… with sunflower oil instead of olive oil": one line of the recipe bought otherwise, gram for gram. */
export interface SwapRead {
  readonly swap?: { readonly from: string; readonly to: string };
  readonly items: readonly Item[];
  readonly trouble?: Trouble;
}

const verbs = /^(?:swap|swapping|swapped|replace|replacing|replaced|substitute|switch|exchange)$/;

const idOf = (item: Item): string | undefined => {
  const [id, ...more] = item.ingredients ?? [];
  return more.length > 0 || item.because ? undefined : id;
};

const pairOf = (from: Item, to: Item, used: readonly Item[]): SwapRead => {
  const fromId = idOf(from);
  const toId = idOf(to);
  if (fromId === undefined) return { items: used, trouble: askWhich(from) };
  if (toId === undefined) return { items: used, trouble: askWhich(to) };
  return { items: used, swap: { from: fromId, to: toId } };
};

const lastName = (items: readonly Item[], before: number): Item | undefined =>
  items.slice(0, before).findLast((item) => item.letter === 'i');

const firstName = (items: readonly Item[], after: number): Item | undefined =>
  items.slice(after + 1, after + 4).find((item) => item.letter === 'i');

/** The swap a message speaks of, with the items that say so; nothing when it speaks of none. */
export const readCostSwap = (items: readonly Item[]): SwapRead => {
  const instead = items.findIndex((item) => /^(?:instead|than)$/.test(item.word));
  const to = lastName(items, instead);
  const from = firstName(items, instead);
  if (instead >= 0 && to && from) {
    const used = items.slice(items.indexOf(to), items.indexOf(from) + 1);
    return pairOf(from, to, used);
  }
  const verb = items.findIndex((item) => verbs.test(item.word));
  const [old, fresh] = items.slice(verb + 1).filter((item) => item.letter === 'i');
  if (verb < 0 || !old || !fresh) return { items: [] };
  return pairOf(old, fresh, items.slice(verb, items.indexOf(fresh) + 1));
};
