import { z } from 'zod';
import { day } from '../../core/bench/event-fields.ts';
import { maxLines, recipeLine, recipeName } from '../../core/recipe.ts';
import { claimExpiry } from '../readers/expiry-claim.ts';
import { namedByWord } from '../readers/named-by-word.ts';
import { ofSpokenLot } from '../readers/of-spoken-lot.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerExpiry } from '../words/expiry.ts';

const example = '"remind us daily at 9 in Lisbon, 30 days ahead"';

const request = z.strictObject({
  action: z.enum(['due', 'keeps', 'answer', 'set', 'show', 'stop']),
  /** A stretch by the calendar, reckoned from the group's own day; or days from and until. */
  period: z
    .string()
    .regex(
      /^(?:overdue|(?:this|next)-(?:week|month|year)|weekend|today|tomorrow|soon|all|(?:days|months)-\d{1,4})$/,
      'Ask for a stretch of time, for example "what expires this month".',
    )
    .optional(),
  from: day.optional(),
  until: day.optional(),
  lots: z.array(z.string().min(1).max(40)).max(10, 'Name at most ten lots at once.').optional(),
  /** Everything that is due now. */
  all: z.boolean().optional(),
  kind: z.enum(['lot', 'batch']).optional(),
  ingredient: z.string().max(60).optional(),
  recipe: recipeName.optional(),
  /** A written-out recipe, where it is asked how long one keeps. */
  lines: z.array(recipeLine).max(maxLines, `A recipe has at most ${maxLines} lines.`).optional(),
  answer: z.enum(['done', 'used-up', 'again']).optional(),
  hour: z.int().min(0, `Say an hour, as in ${example}.`).max(23, `Say an hour, as in ${example}.`).optional(),
  minute: z.int().min(0).max(59, `Say an hour, as in ${example}.`).optional(),
  zone: z.string().max(60).optional(),
  leadDays: z
    .array(z.int().min(0).max(3650, 'Lead days go up to 3650.'))
    .min(1)
    .max(10, 'At most ten lead days.')
    .optional(),
});
export type ExpiryWish = z.output<typeof request>;

const spoken = ({ when, remind, stop, done, used_up, again, keeps }: SlashValues): string => {
  if (keeps !== undefined) return `how long does ${keeps} keep`;
  if (stop === true) return 'stop reminders';
  if (remind !== undefined) return `remind us ${remind}`;
  if (done !== undefined) return `done with lot ${done}`;
  if (used_up !== undefined) return `lot ${used_up} is used up`;
  if (again !== undefined) return `ask about lot ${again} again in a week`;
  return when === undefined ? 'what is due' : `what expires ${when}`;
};

export const expiry = topic({
  name: 'expiry',
  summary: 'What goes out of date and when, and a daily reminder of it at your hour.',
  request,
  examples: [
    { say: 'what expires this month', means: { action: 'due', period: 'this-month' } },
    { say: 'what is out of date', means: { action: 'due', period: 'overdue' } },
    {
      say: 'how long does Fernlea hand balm keep',
      means: { action: 'keeps', recipe: 'Fernlea hand balm' },
    },
    { say: 'what expires in the next 60 days', means: { action: 'due', period: 'days-60' } },
    {
      say: 'remind us daily at 9 in Lisbon, 30 days ahead',
      means: { action: 'set', hour: 9, minute: 0, zone: 'Europe/Lisbon', leadDays: [30] },
      changes: true,
    },
    { say: 'when do you remind us', means: { action: 'show' } },
    { say: 'stop reminders', means: { action: 'stop' }, changes: true },
  ],
  slash: {
    options: z.object({
      when: z
        .string()
        .max(60)
        .optional()
        .describe('For example this month, in the next 60 days, before 12 June'),
      keeps: z.string().max(80).optional().describe('A recipe: how long would a tin of it keep'),
      remind: z.string().max(80).optional().describe('For example daily at 9 in Lisbon, 30 days ahead'),
      stop: z.boolean().optional().describe('Stop the daily reminder'),
      done: z.string().max(40).optional().describe('A lot or batch that is dealt with'),
      used_up: z.string().max(40).optional().describe('A lot or batch that is used up'),
      again: z.string().max(40).optional().describe('A lot or batch to be asked about again in a week'),
    }),
    complete: { keeps: 'recipe', done: 'lot-or-batch', used_up: 'lot-or-batch', again: 'lot-or-batch' },
    say: spoken,
  },
  writes: ({ action }) => action === 'answer',
  manages: ({ action }) => action === 'set' || action === 'stop',
  read: ofSpokenLot(namedByWord(claimExpiry)),
  answer: answerExpiry,
});
