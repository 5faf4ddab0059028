import { type BookState, benchOf } from '../book.ts';
import { same } from '../same.ts';
import type { PartName, PartPut } from './part.ts';
import { benchMaps } from './put-bench.ts';

/** One thing before and after some entries; undefined where there was none. */
export interface PartChange {
  readonly part: PartName;
  readonly id: string;
  readonly before: unknown;
  readonly after: unknown;
}

interface Lookup {
  get(id: string): unknown;
  keys(): Iterable<string>;
}

const inRecord = (record: Readonly<Record<string, unknown>> | undefined): Lookup => ({
  get: (id) => (record && Object.hasOwn(record, id) ? record[id] : undefined),
  keys: () => Object.keys(record ?? {}),
});

const alone = (value: unknown): Lookup => ({
  get: (id) => (id === '' ? value : undefined),
  keys: () => (value === undefined ? [] : ['']),
});

/** Each part as the state holds it, to tell at a glance whether anything in it changed. */
const held: { readonly [P in PartName]: (state: BookState) => unknown } = {
  recipe: ({ recipes }) => recipes,
  settings: ({ settings }) => settings,
  price: ({ prices }) => prices,
  labour: ({ labour }) => labour,
  yield: ({ yields }) => yields,
  lot: (state) => benchOf(state).lots,
  batch: (state) => benchOf(state).batches,
  reaction: (state) => benchOf(state).reactions,
  low: (state) => benchOf(state).low,
  answer: (state) => benchOf(state).answers,
  reminder: (state) => benchOf(state).reminder,
};

export const partNames = Object.keys(held) as readonly PartName[];

const lookup = (state: BookState, part: PartName): Lookup => {
  const value = held[part](state);
  if (part === 'settings' || part === 'labour' || part === 'reminder') return alone(value);
  if (Object.hasOwn(benchMaps, part)) return value as Lookup;
  return inRecord(value as Record<string, unknown> | undefined);
};

/** What stands under one id; undefined when nothing does. */
export const partValue = (state: BookState, part: PartName, id: string): unknown =>
  lookup(state, part).get(id);

export const idsOf = (state: BookState, part: PartName): readonly string[] => [...lookup(state, part).keys()];

const changesIn = (part: PartName, from: BookState, to: BookState): PartChange[] => {
  if (held[part](from) === held[part](to)) return [];
  const [older, newer] = [lookup(from, part), lookup(to, part)];
  const found: PartChange[] = [];
  const look = (id: string): void => {
    const [before, after] = [older.get(id), newer.get(id)];
    if (before !== after && !same(before, after)) found.push({ part, id, before, after });
  };
  for (const id of newer.keys()) look(id);
  for (const id of older.keys()) if (newer.get(id) === undefined) look(id);
  return found;
};

/** What differs between two states of one book; quick where they share what did not change. */
export const changesBetween = (from: BookState, to: BookState): readonly PartChange[] =>
  partNames.flatMap((part) => changesIn(part, from, to));

/** The change as an event takes it. Values were checked when they were first written, and are again when this is. */
export const putOf = (part: PartName, id: string, value: unknown): PartPut =>
  ({ part, id, value: value ?? null }) as PartPut;
