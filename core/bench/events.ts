import { z } from 'zod';
import { decimal } from '../cost/prices.ts';
import { recipeName } from '../recipe.ts';

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
const ingredientId = z.string().min(1).max(60);
const grams = z.number().nonnegative().max(mostBenchG);
const someGrams = z.number().positive().max(mostBenchG);
const celsius = z.number().min(-50).max(300);
const remark = z.string().trim().min(1).max(500);
const who = z.string().trim().min(1).max(80);
const count = z.int().min(1).max(mostContainers);

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

/** Somebody's skin or lips reacted. Told in the words of whoever told it; contact only if it was given. */
export const reactionNoted = z.strictObject({
  kind: z.literal('reaction-noted'),
  id: z.string().regex(/^R\d{1,6}$/),
  lot: lotCodeText.optional(),
  on: day,
  /** The day the group heard of it: deadlines count from here. */
  heardOn: day,
  signs: remark,
  use: remark.optional(),
  contact: z.string().trim().min(1).max(200).optional(),
  /** As answered by whoever told it; the bot never judges. */
  serious: z.boolean().optional(),
});
/** What became of a reaction. */
export const reactionFollowed = z.strictObject({
  kind: z.literal('reaction-followed'),
  id: z.string().regex(/^R\d{1,6}$/),
  on: day,
  /** The batch, when it was found out later. */
  lot: lotCodeText.optional(),
  /** Null takes the contact away again. */
  contact: z.string().trim().min(1).max(200).nullable().optional(),
  text: remark.optional(),
  serious: z.boolean().optional(),
  closed: z.boolean().optional(),
});

/** `lot:` or `batch:` and a `lotKey`; a code of forty characters may be longer as a key. */
const itemKey = z.string().min(1).max(1000);

export const reminderSet = z.strictObject({
  kind: z.literal('reminder-set'),
  hour: z.int().min(0).max(23),
  minute: z.int().min(0).max(59),
  zone: z.string().min(1).max(60),
  /** Days before a date on which it counts as new, the largest first: from that one on it is told. */
  leadDays: z.array(z.int().min(0).max(3650)).min(1).max(10),
  channel: z.string().min(1).max(200),
  /** The first local day of a reminder that was not there before. A changed one keeps its own, so that no day is lost. */
  from: day.optional(),
});
export const reminderStopped = z.strictObject({ kind: z.literal('reminder-stopped') });
/** Written before a daily message goes out: a crash before `reminder-sent` is seen, and the same nonce used again. */
export const reminderBegun = z.strictObject({
  kind: z.literal('reminder-begun'),
  day,
  nonce: z.string().min(1).max(25),
  at: z.iso.datetime(),
});
export const reminderSent = z.strictObject({
  kind: z.literal('reminder-sent'),
  day,
  /** Keys of what it told: `lot:K12`, `batch:26KIVO`. */
  items: z.array(itemKey).max(1000),
});
/** The daily message could not be sent; the group's owner is told once. */
export const reminderFailed = z.strictObject({
  kind: z.literal('reminder-failed'),
  day,
  why: z.enum(['no-channel', 'no-permission', 'other']),
  told: z.boolean(),
});
/** An answer to something that is due, as long as its date stays `bestBefore`. `again` puts it off until a day. */
export const dueAnswered = z.strictObject({
  kind: z.literal('due-answered'),
  item: itemKey,
  answer: z.enum(['done', 'used-up', 'again']),
  until: day.optional(),
  bestBefore: day.optional(),
});

export const benchEvents = [
  lotBought,
  oilInfused,
  lotOpened,
  lotDated,
  lotNoted,
  lotCounted,
  stockTaken,
  lowMarkSet,
  batchPoured,
  batchCorrected,
  batchNoted,
  tinsGone,
  tinsBack,
  batchLooked,
  reactionNoted,
  reactionFollowed,
  reminderSet,
  reminderStopped,
  reminderBegun,
  reminderSent,
  reminderFailed,
  dueAnswered,
] as const;

export const benchEvent = z.discriminatedUnion('kind', benchEvents);
export type BenchEvent = z.output<typeof benchEvent>;
export type BenchEventOf<K extends BenchEvent['kind']> = Extract<BenchEvent, { readonly kind: K }>;
