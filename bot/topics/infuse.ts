import { z } from 'zod';
import { maxLines, recipeLine, recipeName } from '../../core/recipe.ts';
import { claimInfuse } from '../readers/infuse-claim.ts';
import { readPointed } from '../readers/pointed-name.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerInfuse } from '../words/infuse.ts';

const most = 1_000_000;
const positive = (what: string) =>
  z
    .number({ error: what })
    .gt(0, `${what} has to be more than zero. For example "infuse 40 g dried calendula in sunflower oil".`)
    .max(
      most,
      `${what} is more than this can be meant for. For example "infuse 40 g dried calendula in sunflower oil".`,
    );

const amount = z.strictObject({ amount: positive('The amount of oil'), unit: z.enum(['g', 'ml']) });
export type OilAmount = z.output<typeof amount>;

/** A recipe to make with the infused oil, and how much of it. */
const batch = z.strictObject({
  recipe: recipeName.optional(),
  lines: z.array(recipeLine).max(maxLines, `A recipe has at most ${maxLines} lines.`).optional(),
  count: z
    .int('The number of containers has to be whole.')
    .min(1, 'Give at least one container, for example "24 tins of 15 ml".')
    .max(100_000, 'More than 100,000 containers is no small batch. Try "24 tins of 15 ml".')
    .optional(),
  size: z
    .strictObject({ amount: positive('What one container holds'), unit: z.enum(['g', 'ml']) })
    .optional(),
  totalG: positive('The total in grams').optional(),
  totalMl: positive('The total in millilitres').optional(),
  factor: positive('The multiple').optional(),
  limit: z
    .strictObject({ ingredient: z.string().max(60), grams: positive('The amount you have') })
    .optional(),
  lossPercent: z.number().min(0, 'The loss cannot be below zero.').max(50, 'Try "loss 5 %".').optional(),
  stepG: z.union([z.literal(1), z.literal(0.1), z.literal(0.01), z.literal(0.001)]).optional(),
});

const request = z.strictObject({
  herb: z.string().max(60).optional(),
  oil: z.string().max(60).optional(),
  /** Several herbs or oils together, by weight; the amounts below are then of all of them. */
  herbs: z
    .array(z.strictObject({ herb: z.string().max(60), parts: positive('The share of a herb') }))
    .min(2)
    .max(8, 'At most eight herbs at once.')
    .optional(),
  oils: z
    .array(z.strictObject({ oil: z.string().max(60), parts: positive('The share of an oil') }))
    .min(2)
    .max(8, 'At most eight oils at once.')
    .optional(),
  herbG: positive('The herb in grams').optional(),
  oilIn: amount.optional(),
  /** Oil wanted after straining. */
  oilOut: amount.optional(),
  ratio: z
    .number()
    .gt(0, 'The ratio has to be more than zero, for example "1:8".')
    .max(1000, 'That much oil to the herb is hardly an infusion. Try "1:8".')
    .optional(),
  /** The oil that was weighed after straining: recorded as the group's own figure for the herb. */
  got: amount.optional(),
  /** The group's own yields: listed, or those of a herb forgotten. */
  yields: z.enum(['list', 'forget']).optional(),
  fresh: z.boolean().optional(),
  way: z.enum(['cold', 'melt']).optional(),
  batch: batch.optional(),
  /** Ounces beside the grams in this answer, whatever the group's units are. */
  units: z.enum(['g', 'oz']).optional(),
});
export type InfuseWish = z.output<typeof request>;

const spoken = ({
  herb,
  in: oil,
  herb_weight,
  oil_weight,
  yield: wanted,
  ratio,
  got,
}: SlashValues): string => {
  const named = `${herb ?? 'herb'}`;
  if (got !== undefined)
    return `I got ${got} out of ${herb_weight ?? ''} ${named} in ${oil_weight ?? ''} ${oil ?? 'oil'}`;
  const parts = [
    `infuse ${herb_weight ?? ''} ${named} in ${oil_weight ?? ''} ${oil ?? 'oil'}`,
    ratio === undefined ? '' : `at ${ratio}`,
    wanted === undefined ? '' : `to end up with ${wanted}`,
  ];
  return parts.filter(Boolean).join(' ').replace(/ {2,}/g, ' ');
};

export const infuse = topic({
  name: 'infuse',
  summary: 'Steep a dried herb in oil: how much of each, what stays in the herb, time and heat.',
  request,
  examples: [
    {
      say: 'infuse 40 g dried calendula in sunflower oil',
      means: { herb: 'calendula', herbG: 40, oil: 'sunflower-oil' },
    },
    {
      say: 'how much oil for 300 g infused oil at 1:8',
      means: { oilOut: { amount: 300, unit: 'g' }, ratio: 8 },
    },
    {
      say: 'how much calendula for 500 ml olive oil 1:10',
      means: { herb: 'calendula', oil: 'olive-oil', oilIn: { amount: 500, unit: 'ml' }, ratio: 10 },
    },
    {
      say: '24 tins of 15 ml of Fernlea hand balm, oil infused 1:8 with calendula',
      means: { herb: 'calendula', ratio: 8, batch: { recipe: 'Fernlea hand balm', count: 24 } },
      demo: 'Fernlea hand balm',
    },
    {
      say: 'infuse 30 g calendula and 10 g chamomile in half olive, half sunflower oil',
      means: {
        herbG: 40,
        herbs: [{ herb: 'calendula' }, { herb: 'chamomile' }],
        oils: [{ oil: 'olive-oil' }, {}],
      },
    },
    {
      say: 'I got 260 g out of 40 g calendula in 320 g sunflower oil',
      means: { herb: 'calendula', herbG: 40, got: { amount: 260, unit: 'g' } },
    },
  ],
  slash: {
    options: z.object({
      herb: z.string().max(60).describe('The dried herb'),
      in: z.string().max(60).optional().describe('The oil'),
      herb_weight: z.string().max(30).optional().describe('How much herb, for example 40 g'),
      oil_weight: z.string().max(30).optional().describe('Or how much oil, for example 320 g or 500 ml'),
      yield: z.string().max(30).optional().describe('Or how much strained oil you want, for example 300 g'),
      ratio: z.string().max(20).optional().describe('Herb to oil by weight, for example 1:8'),
      got: z.string().max(30).optional().describe('What you weighed after straining, to be remembered'),
    }),
    complete: { herb: 'ingredient', in: 'ingredient' },
    say: spoken,
  },
  writes: (wish) => wish.got !== undefined || wish.yields === 'forget',
  read: readPointed(claimInfuse),
  answer: answerInfuse,
});
