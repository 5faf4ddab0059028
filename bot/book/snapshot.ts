import { z } from 'zod';
import { benchFromKept, keptBench } from '../../core/bench/keep.ts';
import type { BookState, SavedRecipe } from '../../core/book.ts';
import { labourSchema, pricesSchema } from '../../core/cost/prices.ts';
import { yieldsSchema } from '../../core/infuse/yields.ts';
import { forgettingSchema } from '../../core/parts/part.ts';
import { settingsSchema } from '../../core/settings.ts';

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

/**
 * A book's state as it was written beside its entries, so that opening does not start from the first entry. What
 * was written passed the full schemas entry by entry and carries a checksum; parsing 5,000 recipes line by line
 * again took 50 to 90 ms of the 100 ms that opening may take, so recipes are only looked at for their shape.
 *
 * A snapshot can always be made again from the entries. One that does not fit is passed over, so raise `v` when
 * the fold in core/book.ts changes what it makes of the same entries.
 */
export const bookSnapshot = z.strictObject({
  v: z.literal(1),
  group: z.string(),
  state: z.strictObject({
    v: z.literal(1),
    seq: z.int().min(1),
    settings: settingsSchema,
    recipes: z.custom<BookState['recipes']>(isRecipes),
    prices: pricesSchema.optional(),
    labour: labourSchema.optional(),
    yields: yieldsSchema.optional(),
    bench: keptBenchSchema.optional(),
    forgetting: forgettingSchema.optional(),
  }),
});
export type BookSnapshot = z.output<typeof bookSnapshot>;

/** The state as it is written into a snapshot. */
export const keptState = ({ bench, ...state }: BookState) =>
  bench ? { ...state, bench: keptBench(bench) } : state;
