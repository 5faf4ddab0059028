import { z } from 'zod';
import { batchValue, dueAnswerValue, lotValue, reactionValue, reminderValue } from '../bench/values.ts';
import { keptPrice, labourSchema, pricedThing } from '../cost/prices.ts';
import { weighedYield } from '../infuse/yields.ts';
import { recipeId, savedRecipe } from '../saved-recipe.ts';
import { settingsSchema } from '../settings.ts';

/** One thing in the book by its part and id, as it is to stand; null takes it away. */
const put = <P extends string, I extends z.ZodType, V extends z.ZodType>(part: P, id: I, value: V) =>
  z.strictObject({ part: z.literal(part), id, value: value.nullable() });

/** Of some parts there is only one. */
const only = z.literal('');
const key = z.string().min(1).max(60);

export const partPut = z.discriminatedUnion('part', [
  put('recipe', recipeId, savedRecipe),
  put('settings', only, settingsSchema),
  put('price', pricedThing, keptPrice),
  put('labour', only, labourSchema),
  put('yield', key, z.array(weighedYield).max(100)),
  put('lot', key, lotValue),
  put('batch', key, batchValue),
  put('reaction', key, reactionValue),
  put('low', key, z.number().positive()),
  put('answer', z.string().min(1).max(1000), dueAnswerValue),
  put('reminder', only, reminderValue),
]);
export type PartPut = z.output<typeof partPut>;
export type PartName = PartPut['part'];

/** Most things in one event; more make a further event of the same request. */
export const mostPuts = 100;

/**
 * Things as they are to stand, whatever led there: how a change is undone, and how a file is merged into a book that
 * has something in it already. `of` is the number of the first entry that was undone.
 */
export const partsPut = z.strictObject({
  kind: z.literal('parts-put'),
  because: z.discriminatedUnion('why', [
    z.strictObject({ why: z.literal('undo'), of: z.int().min(1) }),
    z.strictObject({ why: z.literal('import') }),
  ]),
  puts: z.array(partPut).min(1).max(mostPuts),
});
export type PartsPut = z.output<typeof partsPut>;

/** The contact of somebody who reacted is gone; the entries that held it were written again without it. */
export const contactForgotten = z.strictObject({
  kind: z.literal('contact-forgotten'),
  id: z.string().regex(/^R\d{1,6}$/),
});

/** Somebody who manages the group asked that all of it be forgotten once `due` has come. */
export const forgettingAsked = z.strictObject({
  kind: z.literal('forgetting-asked'),
  due: z.iso.datetime(),
});
export const forgettingStopped = z.strictObject({ kind: z.literal('forgetting-stopped') });

export const bookEvents = [partsPut, contactForgotten, forgettingAsked, forgettingStopped] as const;

export const forgettingSchema = z.strictObject({
  due: z.iso.datetime(),
  who: z.string(),
  name: z.string().optional(),
});
export type Forgetting = z.output<typeof forgettingSchema>;
