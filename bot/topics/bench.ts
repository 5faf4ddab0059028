import { z } from 'zod';
import { regions } from '../../core/settings.ts';
import { claimBench } from '../readers/bench-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerBench } from '../words/bench.ts';

const percent = z.number().gt(0, 'A strength is more than 0 %.').max(100, 'A strength is at most 100 %.');
const ml = z
  .number()
  .gt(0, 'How much has to be more than zero, for example "500 ml".')
  .max(100_000, 'That is more than a bench needs. Try "500 ml of 70 % alcohol from 96 %".');
const gram = z
  .number()
  .gt(0, 'A weight is more than 0 g, for example "is a 15 g tin that holds 13.5 g ok".')
  .max(25_000, 'A pack is at most 25 kg, for example "tolerance for 15 g tins".');

const request = z.strictObject({
  /** Percent by volume and millilitres. */
  alcohol: z
    .strictObject({
      fromPercent: percent.optional(),
      toPercent: percent.optional(),
      makeMl: ml.optional(),
      haveMl: ml.optional(),
    })
    .optional(),
  fill: z
    .strictObject({
      declaredG: gram,
      weighed: z.array(gram).max(200, 'At most 200 weights at once.').optional(),
      region: z.enum(regions).optional(),
    })
    .optional(),
  advice: z.string().max(30).optional(),
});
export type BenchWish = z.output<typeof request>;

export const bench = topic({
  name: 'bench',
  summary: 'Clean and safe at the bench: disinfecting, alcohol, how full a tin must be, fire and burns.',
  request,
  examples: [
    { say: 'dilute 96 % ethanol to 70 %', means: { alcohol: { fromPercent: 96, toPercent: 70 } } },
    { say: 'is a 15 g tin that holds 13.5 g ok', means: { fill: { declaredG: 15, weighed: [13.5] } } },
    { say: 'how do I disinfect my tins', means: { advice: 'disinfect' } },
    { say: 'wax is on fire', means: { advice: 'wax-fire' } },
  ],
  slash: {
    options: z.object({
      ask: z
        .string()
        .min(2)
        .max(300)
        .describe('For example: dilute 96 % ethanol to 70 %, or how do I disinfect my tins'),
    }),
    say: ({ ask }: SlashValues): string => String(ask),
  },
  read: claimBench,
  answer: answerBench,
});
