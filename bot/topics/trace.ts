import { z } from 'zod';
import { lotCodeText } from '../../core/bench/event-fields.ts';
import { ofSpokenLot } from '../readers/of-spoken-lot.ts';
import { claimTrace } from '../readers/trace-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerTrace } from '../words/trace.ts';

const request = z.strictObject({
  /** A lot on the shelf or a batch; without one, all that is out of the house. */
  lot: lotCodeText.optional(),
  /** One place that containers went to, by the name in the book. */
  to: z.string().min(1).max(100).optional(),
  /** The recall sheet is wanted too. */
  sheet: z.boolean().optional(),
});
export type TraceWish = z.output<typeof request>;

const spoken = ({ lot, sheet }: SlashValues): string =>
  lot === undefined
    ? 'what is out of the house'
    : sheet === true
      ? `recall sheet for ${lot}`
      : `trace ${lot}`;

export const trace = topic({
  name: 'trace',
  summary: 'Which batches hold a lot, where the tins went, what a batch was made from; the recall sheet.',
  request,
  examples: [
    { say: 'what is out of the house', means: {} },
    { say: 'which batches used lot K12', means: { lot: 'K12' }, bench: true },
    { say: 'where did 26-BAFO go', means: { lot: '26-BAFO' }, bench: true },
    { say: 'recall sheet for lot K12', means: { lot: 'K12', sheet: true }, bench: true },
  ],
  slash: {
    options: z.object({
      lot: z.string().max(40).optional().describe('A lot on the shelf, or a batch; none: all that is out'),
      sheet: z.boolean().optional().describe('Make the recall sheet, to print'),
    }),
    complete: { lot: 'lot-or-batch' },
    say: spoken,
  },
  read: ofSpokenLot(claimTrace),
  answer: answerTrace,
});
