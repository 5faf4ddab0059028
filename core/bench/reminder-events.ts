import { z } from 'zod';
import { day } from './event-fields.ts';

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
