import type { Item } from './item.ts';

const givingWay =
  /\b(?:instead of|rather than|in place of|not|no|isn't|without|replacing|replace)\s+(?:the\s+|any\s+|my\s+|our\s+)?$/i;

/** Names a follow-up puts aside for another: "jojoba instead of olive", "not sunflower, I only have olive oil". */
export const namesReplaced = (items: readonly Item[], text: string): readonly Item[] => {
  const names = items.filter(({ letter }) => letter === 'i');
  if (names.length < 2) return [];
  const gone = names.filter(({ from }) => givingWay.test(text.slice(Math.max(0, from - 24), from)));
  return gone.length < names.length ? gone : [];
};
