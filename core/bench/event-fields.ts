import { z } from 'zod';

/** Heaviest lot or batch, in grams: a tonne is no small bench. */
export const mostBenchG = 1_000_000;
/** Most containers of one batch. */
export const mostContainers = 100_000;

export const day = z.iso.date();
/** A lot's code as it is written: the supplier's own, or one of the house. It needs a letter or a digit to be found by. */
export const lotCodeText = z
  .string()
  .trim()
  .min(1)
  .max(40)
  .regex(/[\p{L}\p{N}]/u);
export const ingredientId = z.string().min(1).max(60);
export const grams = z.number().nonnegative().max(mostBenchG);
export const someGrams = z.number().positive().max(mostBenchG);
export const celsius = z.number().min(-50).max(300);
export const remark = z.string().trim().min(1).max(500);
export const who = z.string().trim().min(1).max(80);
export const count = z.int().min(1).max(mostContainers);

/** What was taken from one lot. */
export const draw = z.strictObject({ lot: lotCodeText, grams: someGrams });
export type Draw = z.output<typeof draw>;

/** Why a best-before date is what it is; see `bestBeforeOf`. */
export const dateLimit = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('lot'), lot: lotCodeText, ingredient: ingredientId }),
  z.strictObject({
    kind: z.literal('undated-lot'),
    lot: lotCodeText,
    ingredient: ingredientId,
    months: z.number(),
  }),
  z.strictObject({ kind: z.literal('ingredient'), ingredient: ingredientId, months: z.number() }),
  z.strictObject({
    kind: z.literal('house'),
    months: z.number(),
    why: z.enum(['usual', 'own', 'fresh', 'honey', 'home-dried', 'fragile-oil']),
  }),
  z.strictObject({ kind: z.literal('said') }),
]);
export type DateLimit = z.output<typeof dateLimit>;
