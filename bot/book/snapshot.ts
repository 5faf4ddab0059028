import { z } from 'zod';
import { benchFromKept, keptBench } from '../../core/bench/keep.ts';
import { emptyBench } from '../../core/bench/state.ts';
import { type BookState, emptyBook, type SavedRecipe } from '../../core/book.ts';
import { labourSchema, pricesSchema } from '../../core/cost/prices.ts';
import { yieldsSchema } from '../../core/infuse/yields.ts';
import { forgettingSchema } from '../../core/parts/part.ts';
import { settingsSchema } from '../../core/settings.ts';

// A book's state is written beside its entries, so that opening does not start from the first entry. A snapshot can
// always be made again from the entries; one that does not fit is passed over, so raise the version when the fold in
// core/book.ts changes what it makes of the same entries.
//
// What was written passed the full schemas entry by entry and carries a checksum; parsing 5,000 recipes line by line
// again took 50 to 90 ms of the 100 ms that opening may take, so rows are only looked at for their shape.

const isRecipe = (id: string, recipe: Partial<SavedRecipe> | null): boolean =>
  recipe?.id === id &&
  typeof recipe.name === 'string' &&
  Array.isArray(recipe.lines) &&
  Array.isArray(recipe.versions);

const isRecipes = (value: unknown): boolean =>
  typeof value === 'object' &&
  value !== null &&
  Object.entries(value).every(([id, recipe]) => isRecipe(id, recipe));

const keptBenchSchema = z
  .custom<object>((value) => typeof value === 'object' && value !== null)
  .transform((value, context) => {
    const bench = benchFromKept(value);
    if (bench === undefined) context.addIssue('no bench');
    return bench ?? z.NEVER;
  });

const stateSchema = z.strictObject({
  v: z.literal(1),
  seq: z.int().min(1),
  settings: settingsSchema,
  recipes: z.custom<BookState['recipes']>(isRecipes),
  prices: pricesSchema.optional(),
  labour: labourSchema.optional(),
  yields: yieldsSchema.optional(),
  bench: keptBenchSchema.optional(),
  forgetting: forgettingSchema.optional(),
});

/** A whole state under one key, as it was written at first. Still read. */
export const wholeSnapshot = z.strictObject({ v: z.literal(1), group: z.string(), state: stateSchema });

export type Slot = 'a' | 'b';

/** The first key of a snapshot in pages: everything but the rows of the long lists, which are on `pages` pages. */
export const snapshotHead = z.strictObject({
  v: z.literal(2),
  group: z.string(),
  slot: z.enum(['a', 'b']),
  pages: z.int().min(0),
  rest: z.record(z.string(), z.unknown()),
});
export type SnapshotHead = z.output<typeof snapshotHead>;

// Long lists, and where their rows stand in the state. A further one is one more line here, in `rest` and in `lists`.
const parts = ['recipes', 'lots', 'batches', 'reactions', 'low', 'answers'] as const;
type Part = (typeof parts)[number];

const row = z.tuple([z.string(), z.unknown()]);
export const snapshotPage = z.strictObject({ part: z.enum(parts), rows: z.array(row) });
export type SnapshotPage = z.output<typeof snapshotPage>;

/** About 100 kB of text with batches: a millisecond or two to write out, a few to flush. */
const rowsOnPage = 150;

const rowsOf = (state: BookState, part: Part): Iterable<[string, unknown]> =>
  part === 'recipes' ? Object.entries(state.recipes) : (state.bench ?? emptyBench)[part];

/** How many rows there are: what a snapshot costs goes by it. */
export const rowsIn = (state: BookState): number => {
  const { lots, batches, reactions, low, answers } = state.bench ?? emptyBench;
  const inBench = lots.size + batches.size + reactions.size + low.size + answers.size;
  return Object.keys(state.recipes).length + inBench;
};

/** The pages of a state, each made only when it is asked for. */
export function* snapshotPages(state: BookState): Generator<SnapshotPage> {
  for (const part of parts) {
    let rows: [string, unknown][] = [];
    for (const each of rowsOf(state, part)) {
      rows.push(each);
      if (rows.length < rowsOnPage) continue;
      yield { part, rows };
      rows = [];
    }
    if (rows.length > 0) yield { part, rows };
  }
}

/** What is not on the pages. */
export const restOf = ({ recipes: _recipes, bench, ...rest }: BookState): Record<string, unknown> => {
  if (!bench) return rest;
  const {
    lots: _lots,
    batches: _b,
    reactions: _r,
    low: _low,
    answers: _a,
    ...kept
  } = keptBench({
    ...emptyBench,
    made: bench.made,
    ...(bench.reminder ? { reminder: bench.reminder } : {}),
  });
  return { ...rest, bench: kept };
};

/** The state again, or undefined when head and pages do not make one of this version. */
export const stateFrom = (head: SnapshotHead, pages: readonly SnapshotPage[]): BookState | undefined => {
  const lists = new Map<Part, [string, unknown][]>(parts.map((part) => [part, []]));
  for (const { part, rows } of pages) for (const each of rows) lists.get(part)?.push(each);
  const { recipes, ...maps } = Object.fromEntries(lists) as Record<Part, [string, unknown][]>;
  const { bench, ...rest } = head.rest;
  const whole = {
    ...emptyBook,
    ...rest,
    recipes: Object.fromEntries(recipes),
    ...(bench ? { bench: { ...bench, ...maps } } : {}),
  };
  const state = stateSchema.safeParse(whole);
  return state.success ? state.data : undefined;
};
