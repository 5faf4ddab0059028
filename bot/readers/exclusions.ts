import { groupOf } from './design-words.ts';
import type { Item } from './item.ts';
import { letters } from './lexicon.ts';
import { wordSet } from './word-list.ts';

/** After a name: "nuts excluded", "beeswax omitted". */
const after = wordSet('excluded omitted removed banned forbidden');
/** Before "out": "shea butter left out", "palm taken out". */
const leftOut = wordSet('left taken kept leave keep take ruled cut');
/** Before a name: "omit beeswax", "sans shea". */
const before = wordSet(
  'omit omitting sans boycott boycotts boycotting refuse refuses refusing detest detests',
);
const outBefore = wordSet('rule ruling leave leaving keep keeping take taking cut cutting');
const stand = wordSet('stand bear have tolerate');
const cannot = wordSet("can't cant cannot doesn't doesnt mustn't mustnt");

const inwards = wordSet('use using put add adding in instead');

/** A message of this many items is a pasted text, and long lists of steps say "removed" of the pot. */
const mostItems = 60;

const isThing = (item: Item | undefined): item is Item =>
  item !== undefined && (item.letter === letters.ingredient || groupOf(item.word) !== undefined);

const word = (item: Item | undefined): string => item?.word ?? '';

/** "Take the almond out and put jojoba in": a swap, and no leaving out. */
const bringsIn = (items: readonly Item[], from: number): boolean =>
  items.slice(from).some((item) => inwards.has(item.word));

/** How many items after the thing at `at` say that it is left out: "excluded", "left out", "keep … out". */
const saidAfter = (items: readonly Item[], at: number): number => {
  const [next, second] = [items[at + 1], items[at + 2]];
  if (after.has(word(next))) return 1;
  if (leftOut.has(word(next)) && word(second) === 'out') return 2;
  return word(next) === 'out' && outBefore.has(word(items[at - 1])) && !bringsIn(items, at + 2) ? 1 : 0;
};

/** How many items before the thing at `at` say so: "rule out", "omit", "can't stand". */
const saidBefore = (items: readonly Item[], at: number): number => {
  const [last, second] = [items[at - 1], items[at - 2]];
  if (before.has(word(last))) return 1;
  const isPair =
    (word(last) === 'out' && outBefore.has(word(second)) && !bringsIn(items, at + 1)) ||
    (stand.has(word(last)) && cannot.has(word(second)));
  return isPair ? 2 : 0;
};

/** "Shea and cocoa butter left out": the first thing of those joined by "and" or "or". */
const firstJoined = (items: readonly Item[], at: number): number => {
  let first = at;
  while (/^(?:and|or|&)$/.test(word(items[first - 1])) && isThing(items[first - 2])) first -= 2;
  return first;
};

interface LeftOut {
  readonly first: number;
  readonly from: number;
  readonly to: number;
}

/** The thing at `at`, if it is said to be left out: where what is left out begins, and which items say so. */
const leftOutAt = (items: readonly Item[], at: number): LeftOut | undefined => {
  if (!isThing(items[at])) return undefined;
  const following = saidAfter(items, at);
  const isAround = following === 1 && word(items[at + 1]) === 'out';
  const leading = isAround ? 1 : saidBefore(items, at);
  if (following + leading === 0) return undefined;
  const first = leading === 0 ? firstJoined(items, at) : at;
  return { first, from: at - leading, to: at + following };
};

/** "… so leave that out": of what was said to be left out already. */
const isLeaving = (items: readonly Item[], at: number): boolean =>
  /^(?:leave|leaving|keep)$/.test(word(items[at])) &&
  word(items[at + 1]) === 'out' &&
  !isThing(items[at - 1]);

/**
 * The items with every way of leaving something out said as "without": "nuts excluded", "rule out beeswax", "keep the
 * shea out". A promise to leave something out is kept by all topics, so that all have to see it.
 */
export const withExclusions = (items: readonly Item[]): readonly Item[] => {
  if (items.length > mostItems || !items.some(isThing)) return items;
  const all = items.flatMap((_, at) => leftOutAt(items, at) ?? []);
  if (all.length === 0) return items;
  const says = (at: number): boolean =>
    !isThing(items[at]) && all.some(({ from, to }) => at >= from && at <= to);
  const begins = (at: number): boolean =>
    all.some(({ first, from }) => first === at && items[from - 1]?.letter !== letters.none);
  return items.flatMap((item, at) => {
    if (says(at)) return [];
    if (isLeaving(items, at) || isLeaving(items, at - 1)) return [];
    return begins(at)
      ? [{ letter: letters.none, word: 'without', from: item.from, to: item.from }, item]
      : [item];
  });
};
