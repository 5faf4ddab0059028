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

/** Keys that belong together. */
export interface Members<K extends string = string> extends Iterable<K> {
  readonly size: number;
}

/** Members under a name: under an ISO day, or under a lot's key. Immutable. */
export type Groups<K extends string = string> = Immutable<string, Members<K>>;

export const noGroups = <K extends string>(): Groups<K> => Immutable();

/** Groups are made with plain sets, which is many times faster; one that changes becomes an immutable one. */
const changing = <K extends string>(members: Members<K> | undefined): ImmutableSet<K> =>
  ImmutableSet.isSet(members) ? (members as ImmutableSet<K>) : ImmutableSet(members ?? []);

export const withMember = <K extends string>(groups: Groups<K>, name: string, key: K): Groups<K> =>
  groups.set(name, changing(groups.get(name)).add(key));

export const withoutMember = <K extends string>(groups: Groups<K>, name: string, key: K): Groups<K> => {
  const members = groups.get(name);
  if (members === undefined) return groups;
  const left = changing(members).delete(key);
  return left.isEmpty() ? groups.delete(name) : groups.set(name, left);
};

/** Many at once. */
export const groupsOf = <K extends string>(pairs: Iterable<readonly [string, K]>): Groups<K> => {
  const found = new Map<string, Set<K>>();
  for (const [name, key] of pairs) {
    const keys = found.get(name);
    if (keys) keys.add(key);
    else found.set(name, new Set([key]));
  }
  return Immutable(found);
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
