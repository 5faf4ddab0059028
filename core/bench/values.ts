import { z } from 'zod';
import { batchLooked, batchNoted, batchPoured, tinsBack, tinsGone } from './batch-events.ts';
import { dateLimit, day, draw, lotCodeText, mostBenchG } from './event-fields.ts';
import { lotBought, oilInfused } from './lot-events.ts';
import { reactionFollowed, reactionNoted } from './reaction-events.ts';
import { reminderSet } from './reminder-events.ts';
import type { Batch, DueAnswer, Lot, Reaction, Reminder } from './state.ts';

// What stands at the bench as schemas, for values that are put back or come out of a file.

const grams = z
  .number()
  .nonnegative()
  .max(mostBenchG * 1000);
const list = <T extends z.ZodType>(of: T) => z.array(of).max(10_000);
const { ingredient, supplier, price } = lotBought.shape;

export const lotValue = z.strictObject({
  lot: lotCodeText,
  ingredient,
  herbs: oilInfused.shape.herbs.optional(),
  gotG: grams,
  leftG: grams,
  on: day,
  bestBefore: day.optional(),
  supplier,
  price,
  opened: day.optional(),
  draws: z.array(draw).max(100).optional(),
  because: dateLimit.optional(),
  by: oilInfused.shape.by,
  notes: list(z.string().max(500)),
});

const about = { kind: true, lot: true } as const;

export const batchValue = batchPoured.omit({ kind: true, note: true, pictures: true }).extend({
  notes: list(batchNoted.omit(about)),
  gone: list(tinsGone.omit(about)),
  back: list(tinsBack.omit(about)),
  looks: list(batchLooked.omit(about)),
  corrected: list(z.string().max(500)),
  seq: z.int().min(0),
});

export const reactionValue = reactionNoted.omit({ kind: true }).extend({
  followed: list(reactionFollowed.omit({ kind: true, id: true, contact: true })),
  closed: z.boolean(),
});

export const dueAnswerValue = z.strictObject({
  answer: z.enum(['done', 'used-up', 'again']),
  until: day.optional(),
  bestBefore: day.optional(),
});

export const reminderValue = reminderSet.omit({ kind: true }).extend({
  failedDay: day.optional(),
  begun: z.strictObject({ day, nonce: z.string().min(1).max(25), at: z.iso.datetime() }).optional(),
  toldOwner: z.boolean().optional(),
});

/** Does not compile while a schema lacks a field of its type, or has one too many. */
type SameFields<A, B> = [keyof A, keyof B] extends [keyof B, keyof A] ? true : never;
const complete: readonly true[] = [
  true satisfies SameFields<Lot, z.output<typeof lotValue>>,
  true satisfies SameFields<Batch, z.output<typeof batchValue>>,
  true satisfies SameFields<Reaction, z.output<typeof reactionValue>>,
  true satisfies SameFields<DueAnswer, z.output<typeof dueAnswerValue>>,
  true satisfies SameFields<Reminder, z.output<typeof reminderValue>>,
];
export const valueSchemas = complete.length;
