import { Map as Immutable, Set as ImmutableSet } from 'immutable';
import type { Bench } from './state.ts';

/**
 * Something that is looked up in a bench: reckoned from the whole of it when it is first asked for, and from then on kept
 * up event by event, so that a question about one day or one lot does not cost by all there is. It is no part of the
 * bench, only remembered beside it for as long as that bench is there.
 */
export class Lookup<T extends object> {
  readonly #known = new WeakMap<Bench, T>();
  readonly #empty: T;
  readonly #build: (bench: Bench) => T;
  readonly #move: (value: T, before: Bench, after: Bench, key: string) => T;

  constructor(
    empty: T,
    build: (bench: Bench) => T,
    /** The value after what has this `lotKey` became another. */
    move: (value: T, before: Bench, after: Bench, key: string) => T,
  ) {
    this.#empty = empty;
    this.#build = build;
    this.#move = move;
  }

  of(bench: Bench): T {
    // Nothing is remembered of an empty bench: every book begins with the same one, and would be followed from it on.
    if (bench.lots.size === 0 && bench.batches.size === 0) return this.#empty;
    const known = this.#known.get(bench);
    if (known !== undefined) return known;
    const value = this.#build(bench);
    this.#known.set(bench, value);
    return value;
  }

  /** Keeps up what is known of `before`. `keys` are all the lots and batches that may differ in `after`. */
  follow(before: Bench, after: Bench, keys: () => readonly string[]): void {
    const known = this.#known.get(before);
    if (known === undefined || this.#known.has(after)) return;
    this.#known.set(
      after,
      keys().reduce<T>((value, key) => this.#move(value, before, after, key), known),
    );
  }
}

/** Keys put together under a name: under an ISO day, or under a lot's key. Immutable. */
export type Groups<K extends string = string> = Immutable<string, ImmutableSet<K>>;

export const noGroups = <K extends string>(): Groups<K> => Immutable();

export const withMember = <K extends string>(groups: Groups<K>, name: string, key: K): Groups<K> =>
  groups.set(name, (groups.get(name) ?? ImmutableSet<K>()).add(key));

export const withoutMember = <K extends string>(groups: Groups<K>, name: string, key: K): Groups<K> => {
  const left = groups.get(name)?.delete(key);
  if (left === undefined) return groups;
  return left.isEmpty() ? groups.delete(name) : groups.set(name, left);
};

/** Many at once, which is faster than one after the other. */
export const groupsOf = <K extends string>(pairs: Iterable<readonly [string, K]>): Groups<K> => {
  const found = new Map<string, K[]>();
  for (const [name, key] of pairs) {
    const keys = found.get(name);
    if (keys) keys.push(key);
    else found.set(name, [key]);
  }
  return Immutable([...found].map(([name, keys]) => [name, ImmutableSet(keys)]));
};

/** A stretch of days, both ends counted. */
export interface Days {
  readonly from?: string | undefined;
  readonly until?: string | undefined;
}

/** The days of a stretch that have keys, in order. Costs by the days of the calendar, not by the keys. */
export const daysIn = (days: Groups, { from = '', until = '~' }: Days): string[] => {
  const found: string[] = [];
  for (const day of days.keys()) if (day >= from && day <= until) found.push(day);
  return found.sort();
};

/** How many keys there are in a stretch. */
export const countIn = (days: Groups, { from = '', until = '~' }: Days): number => {
  let count = 0;
  for (const [day, keys] of days) if (day >= from && day <= until) count += keys.size;
  return count;
};
