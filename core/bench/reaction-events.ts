import { z } from 'zod';
import { day, lotCodeText, remark } from './event-fields.ts';

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
