import { z } from 'zod';
import { recipeName } from '../recipe.ts';
import {
  celsius,
  count,
  dateLimit,
  day,
  draw,
  grams,
  ingredientId,
  lotCodeText,
  remark,
  someGrams,
  who,
} from './event-fields.ts';

/** One ingredient of a pour: what was weighed out, the lots it came from, and what no lot covered. */
export const pouredLine = z.strictObject({
  ingredient: ingredientId,
  infusedWith: z.string().max(60).optional(),
  /** Weighed and strained out again. */
  strained: z.boolean().optional(),
  percent: z.number().min(0).max(100).optional(),
  grams: someGrams,
  draws: z.array(draw).max(100),
  shortG: grams.optional(),
});
export type PouredLine = z.output<typeof pouredLine>;

const batchFields = {
  /** The saved recipe and the number of the event that wrote its version. */
  recipe: z.strictObject({ id: z.string().max(80), version: z.int().min(1) }).optional(),
  name: recipeName,
  lines: z.array(pouredLine).min(1).max(60),
  count,
  container: z.string().trim().min(1).max(30),
  size: z.strictObject({ amount: someGrams, unit: z.enum(['g', 'ml']) }).optional(),
  madeOn: day,
  bestBefore: day,
  because: dateLimit,
  /** True when a date in it had to be reckoned from a usual shelf life. */
  rough: z.boolean().optional(),
  by: who.optional(),
  bathC: celsius.optional(),
  pourC: celsius.optional(),
  /** What was weighed out, and what ended up in the containers when that was weighed too. */
  weighedG: someGrams,
  filledG: grams.optional(),
  /** Lots the maker named that the book does not know: nothing could be drawn from them. */
  unknownLots: z.array(lotCodeText).max(60).optional(),
};

/** A pour with the lots it drew: one event, so that there is no batch without its draw-down. */
export const batchPoured = z.strictObject({
  kind: z.literal('batch-poured'),
  lot: lotCodeText,
  ...batchFields,
  note: remark.optional(),
  pictures: z.array(z.url().max(500)).max(10).optional(),
});

/** A correction: the fields that change, and why. New lines replace the old ones with all they drew. */
export const batchCorrected = z.strictObject({
  kind: z.literal('batch-corrected'),
  lot: lotCodeText,
  changes: z.strictObject(batchFields).partial(),
  why: remark,
});

export const batchNoted = z.strictObject({
  kind: z.literal('batch-noted'),
  lot: lotCodeText,
  on: day,
  text: remark.optional(),
  picture: z.url().max(500).optional(),
});

/** Where containers went. `kept` is the retention sample. */
export const tinsGone = z.strictObject({
  kind: z.literal('tins-gone'),
  lot: lotCodeText,
  count,
  how: z.enum(['given', 'sold', 'used', 'wasted', 'kept']),
  to: z.string().trim().min(1).max(100).optional(),
  on: day,
});
/** Containers that came back, after a recall for one. */
export const tinsBack = z.strictObject({
  kind: z.literal('tins-back'),
  lot: lotCodeText,
  count,
  from: z.string().trim().min(1).max(100).optional(),
  on: day,
});
/** A look at a batch some days after it was poured. */
export const batchLooked = z.strictObject({
  kind: z.literal('batch-looked'),
  lot: lotCodeText,
  on: day,
  fine: z.boolean(),
  text: remark.optional(),
});
