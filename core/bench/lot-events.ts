import { z } from 'zod';
import { decimal } from '../cost/prices.ts';
import {
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

/** A purchase. The same lot bought again adds to what is left of it. */
export const lotBought = z.strictObject({
  kind: z.literal('lot-bought'),
  lot: lotCodeText,
  ingredient: ingredientId,
  /** Herbs steeped in it, for an oil bought infused. */
  herbs: z.array(ingredientId).min(1).max(10).optional(),
  grams: someGrams,
  on: day,
  bestBefore: day.optional(),
  supplier: z.string().trim().max(100).optional(),
  /** The price of the whole purchase, with its currency, as typed. */
  price: z.strictObject({ amount: decimal, currency: z.string().regex(/^[A-Z]{3}$/) }).optional(),
  note: remark.optional(),
});

/** An oil infused in the house is a lot of its own, drawn from the lots of its oil and herb. */
export const oilInfused = z.strictObject({
  kind: z.literal('oil-infused'),
  lot: lotCodeText,
  ingredient: ingredientId,
  herbs: z.array(ingredientId).min(1).max(10),
  grams: someGrams,
  on: day,
  bestBefore: day,
  because: dateLimit,
  draws: z.array(draw).max(100),
  short: z.array(z.strictObject({ ingredient: ingredientId, grams: someGrams })).max(20),
  by: who.optional(),
  note: remark.optional(),
});

export const lotOpened = z.strictObject({ kind: z.literal('lot-opened'), lot: lotCodeText, on: day });
/** A best-before date put right, or taken away. */
export const lotDated = z.strictObject({
  kind: z.literal('lot-dated'),
  lot: lotCodeText,
  bestBefore: day.nullable(),
  why: remark.optional(),
});
/** What a lot cost in all, told after it was bought, or put right. */
export const lotPriced = z.strictObject({
  kind: z.literal('lot-priced'),
  lot: lotCodeText,
  price: z.strictObject({ amount: decimal, currency: z.string().regex(/^[A-Z]{3}$/) }),
});
export const lotNoted = z.strictObject({
  kind: z.literal('lot-noted'),
  lot: lotCodeText,
  on: day,
  text: remark,
});
/** What was really there when somebody weighed it. */
export const lotCounted = z.strictObject({
  kind: z.literal('lot-counted'),
  lot: lotCodeText,
  leftG: grams,
  on: day,
  why: remark.optional(),
});
/** Taken out of stock otherwise than by a pour. */
export const stockTaken = z.strictObject({
  kind: z.literal('stock-taken'),
  draws: z.array(draw).min(1).max(100),
  how: z.enum(['used', 'wasted']),
  on: day,
  why: remark.optional(),
});
/** Below this much the group wants to be told; null forgets the mark. */
export const lowMarkSet = z.strictObject({
  kind: z.literal('low-mark-set'),
  ingredient: ingredientId,
  grams: someGrams.nullable(),
});
