/**
 * Finds the longest known name that starts at a given word. Names are looked up by their first word first, so most
 * words of a message cost one look-up.
 */
export interface NameIndex<T> {
  find(keys: readonly string[], at: number): Found<T> | undefined;
}

export interface Found<T> {
  readonly value: T;
  readonly words: number;
}

interface FirstWord<T> {
  most: number;
  readonly byKey: Map<string, T>;
}

/** @param names pairs of a key (word keys joined by single spaces) and what carries that name; the first one wins. */
export const wordIndex = <T>(names: Iterable<readonly [string, T]>): NameIndex<T> => {
  const byFirst = new Map<string, FirstWord<T>>();
  for (const [key, value] of names) {
    const words = key.split(' ');
    const first = byFirst.get(words[0] ?? '') ?? {
      most: 0,
      byKey: new Map<string, T>(),
    };
    first.most = Math.max(first.most, words.length);
    if (!first.byKey.has(key)) first.byKey.set(key, value);
    byFirst.set(words[0] ?? '', first);
  }
  return { find: (keys, at) => longest(byFirst.get(keys[at] ?? ''), keys, at) };
};

const longest = <T>(
  first: FirstWord<T> | undefined,
  keys: readonly string[],
  at: number,
): Found<T> | undefined => {
  if (!first) return undefined;
  let best: Found<T> | undefined;
  let key = '';
  const most = Math.min(first.most, keys.length - at);
  for (let words = 1; words <= most; words += 1) {
    key = words === 1 ? (keys[at] ?? '') : `${key} ${keys[at + words - 1]}`;
    const value = first.byKey.get(key);
    if (value !== undefined) best = { value, words };
  }
  return best;
};
