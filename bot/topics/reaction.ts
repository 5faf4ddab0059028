import { z } from 'zod';
import { day, lotCodeText } from '../../core/bench/event-fields.ts';
import { recipeName } from '../../core/recipe.ts';
import { claimReaction } from '../readers/reaction-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerReaction } from '../words/reaction.ts';

const told = z
  .string()
  .trim()
  .min(1)
  .max(500, 'Tell it in at most 500 characters; a second note can follow.');

const request = z.strictObject({
  action: z.enum(['note', 'follow', 'show', 'list']),
  id: z
    .string()
    .regex(/^R\d{1,6}$/)
    .optional(),
  lot: lotCodeText.optional(),
  /** All batches of one recipe. */
  recipe: recipeName.optional(),
  /** The day it happened, ISO. */
  on: day.optional(),
  /** What happened, in the words of whoever told it. */
  signs: told.optional(),
  use: told.optional(),
  /** Null takes a contact away. */
  contact: z.string().trim().min(1).max(200).nullable().optional(),
  serious: z.boolean().optional(),
  closed: z.boolean().optional(),
});
export type ReactionWish = z.output<typeof request>;

const spoken = ({ lot, what, contact }: SlashValues): string => {
  if (what === undefined) return lot === undefined ? 'list reactions' : `reactions for ${lot}`;
  const after = lot === undefined ? '' : ` after ${lot}`;
  return `report: ${what}${after}${contact === undefined ? '' : `; contact: ${contact}`}`;
};

export const reaction = topic({
  name: 'reaction',
  summary: 'Write down that somebody reacted to a balm, what to do now, and whom to tell.',
  request,
  examples: [
    { say: 'list reactions', means: { action: 'list' } },
    {
      say: 'report: rash after 26-BAFO',
      means: { action: 'note', lot: '26-BAFO', signs: 'rash' },
      changes: true,
      bench: true,
    },
    { say: 'reactions for 26-BAFO', means: { action: 'list', lot: '26-BAFO' }, bench: true },
  ],
  slash: {
    options: z.object({
      lot: z.string().max(40).optional().describe('The batch on the tin'),
      what: z.string().max(500).optional().describe('What happened, in their words'),
      contact: z.string().max(200).optional().describe('How to reach them, only if they want that'),
    }),
    complete: { lot: 'batch' },
    say: spoken,
  },
  writes: ({ action }) => action === 'note' || action === 'follow',
  read: claimReaction,
  answer: answerReaction,
});
