import { z } from 'zod';
import { decimal, packSchema, pricedThing } from '../../core/cost/prices.ts';
import { maxLines, recipeLine, recipeName } from '../../core/recipe.ts';
import { claimMoney } from '../readers/cost-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerCost } from '../words/cost.ts';

const positive = (what: string) =>
  z
    .number({ error: what })
    .gt(0, `${what} has to be more than zero. For example "cost of Fernlea hand balm for 24 tins of 15 ml".`)
    .max(
      1_000_000,
      `${what} is more than this can be meant for. For example "cost of Fernlea hand balm for 24 tins of 15 ml".`,
    );

const fill = z.strictObject({ amount: positive('What one container holds'), unit: z.enum(['g', 'ml']) });

const batch = z.strictObject({
  recipe: recipeName.optional(),
  lines: z.array(recipeLine).max(maxLines, `A recipe has at most ${maxLines} lines.`).optional(),
  count: z
    .int('The number of containers has to be whole.')
    .min(1, 'Give at least one container, for example "24 tins of 15 ml".')
    .max(100_000, 'More than 100,000 containers is no small batch. Try "24 tins of 15 ml".')
    .optional(),
  size: fill.optional(),
  totalG: positive('The total in grams').optional(),
  totalMl: positive('The total in millilitres').optional(),
  factor: positive('The multiple').optional(),
  limit: z
    .strictObject({ ingredient: z.string().max(60), grams: positive('The amount you have') })
    .optional(),
  lossPercent: z.number().min(0, 'The loss cannot be below zero.').max(50, 'Try "loss 5 %".').optional(),
  stepG: z.union([z.literal(1), z.literal(0.1), z.literal(0.01), z.literal(0.001)]).optional(),
});

const price = z.strictObject({
  thing: pricedThing,
  price: decimal,
  pack: packSchema,
  vat: z.enum(['incl', 'excl']).optional(),
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/)
    .optional(),
  /** The day the price is of, if not today. */
  on: z.iso.date('Write the day as 2026-03-02.').optional(),
});

const hours = z
  .number()
  .gt(0, 'Hours have to be more than zero, for example "2 hours".')
  .max(1000, 'That is more than a batch can take. Try "2 hours".');

const request = z.strictObject({
  action: z.enum(['price', 'prices', 'history', 'missing', 'remove', 'labour', 'cost']),
  prices: z.array(price).max(60, 'At most 60 prices at once.').optional(),
  thing: pricedThing.optional(),
  when: z
    .strictObject({
      day: z.iso.date().optional(),
      month: z.int().min(1).max(12).optional(),
      year: z.int().min(2000).max(2099).optional(),
    })
    .optional(),
  /** The hourly rate; null counts no labour. */
  rate: decimal.nullable().optional(),
  hours: hours.optional(),
  batch: batch.optional(),
  /** The container's word: tin, jar, pot. */
  container: z.string().max(30).optional(),
  /** One container is asked about: labour for a batch is not put on it. */
  one: z.boolean().optional(),
  /** The same batch with one ingredient bought instead of another, gram for gram. */
  swap: z.strictObject({ from: z.string().max(60), to: z.string().max(60) }).optional(),
  /** Prices that are only supposed: the batch is reckoned with them, and nothing is noted. */
  suppose: z.array(price).max(20).optional(),
  /** Ounces beside the grams in this answer, whatever the group's units are. */
  units: z.enum(['g', 'oz']).optional(),
  sellAt: decimal.optional(),
  marginPercent: z
    .number()
    .min(0, 'A margin is at least 0 %. Try "what price for a margin of 40 %".')
    .lt(100, 'A margin is always under 100 % of the price. Try "what price for a margin of 40 %".')
    .optional(),
});
export type CostWish = z.output<typeof request>;

const spoken = ({ recipe, tins, size, total, price: said, labour, sell }: SlashValues): string => {
  if (said !== undefined) return String(said);
  if (labour !== undefined) return `labour ${labour}`;
  if (recipe === undefined) return sell === undefined ? 'prices' : `sell at ${sell}: what margin`;
  const much = tins === undefined ? `${total ?? ''}` : `${tins} tins of ${size ?? '15 ml'}`;
  const selling = sell === undefined ? '' : `, sell at ${sell}: what margin`;
  return `cost of ${recipe} for ${much}${selling}`;
};

export const cost = topic({
  name: 'cost',
  summary: 'Prices, what a batch and a tin cost, labour, and what margin a price leaves.',
  request,
  examples: [
    {
      say: 'shea costs 18 per kg',
      means: {
        action: 'price',
        prices: [{ thing: 'shea-butter', price: '18', pack: { amount: 1000, unit: 'g' } }],
      },
    },
    {
      say: 'beeswax 500 g 14.50, tins are 0.35 each',
      means: {
        action: 'price',
        prices: [
          { thing: 'beeswax', price: '14.5', pack: { amount: 500, unit: 'g' } },
          { thing: 'tin', price: '0.35', pack: { amount: 1, unit: 'each' } },
        ],
      },
    },
    {
      say: 'cost of Fernlea hand balm for 24 tins of 15 ml',
      means: { action: 'cost', batch: { recipe: 'Fernlea hand balm', count: 24 }, container: 'tin' },
      demo: 'Fernlea hand balm',
    },
    { say: 'labour 15 an hour, 2 hours', means: { action: 'labour', rate: '15', hours: 2 } },
    {
      say: 'sell Fernlea hand balm at 6.50, 24 tins of 15 ml: what margin',
      means: { action: 'cost', sellAt: '6.5', batch: { recipe: 'Fernlea hand balm', count: 24 } },
      demo: 'Fernlea hand balm',
    },
    {
      say: 'what did shea cost in March',
      means: { action: 'history', thing: 'shea-butter', when: { month: 3 } },
    },
    { say: 'prices', means: { action: 'prices' } },
  ],
  slash: {
    options: z.object({
      recipe: z.string().max(1000).optional().describe('A saved recipe, or one written out'),
      tins: z.int().min(1).max(100_000).optional().describe('How many tins'),
      size: z.string().max(30).optional().describe('What each holds, for example 15 ml'),
      total: z.string().max(30).optional().describe('Or a total, for example 500 g'),
      price: z.string().max(300).optional().describe('A price to note: shea 18 per kg, tins 0.35 each'),
      labour: z.string().max(60).optional().describe('For example 15 an hour, 2 hours'),
      sell: z.string().max(20).optional().describe('A selling price: what margin does it leave?'),
    }),
    complete: { recipe: 'recipe' },
    say: spoken,
  },
  writes: ({ action }) => action === 'price' || action === 'remove' || action === 'labour',
  read: claimMoney,
  answer: answerCost,
});
