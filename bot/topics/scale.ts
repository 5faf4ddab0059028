import { z } from 'zod';
import type { BookState } from '../../core/book.ts';
import { maxLines, recipeLine, recipeName } from '../../core/recipe.ts';
import { recipeNames } from '../readers/recipe-names.ts';
import { claimScale, scaleExample } from '../readers/scale-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerScale } from '../words/scale.ts';

const positive = (most: number, what: string) =>
  z
    .number({ error: what })
    .gt(0, `${what} has to be more than zero.`)
    .max(most, `${what} is more than this can be meant for (${most} at most).`);

const size = z.strictObject({
  amount: positive(10_000, 'What one container holds'),
  unit: z.enum(['g', 'ml']),
});

const request = z.strictObject({
  recipe: recipeName.optional(),
  lines: z.array(recipeLine).max(maxLines, `A recipe has at most ${maxLines} lines.`).optional(),
  count: z
    .int('The number of containers has to be whole.')
    .min(1, 'Give at least one container, for example "24 tins of 15 ml".')
    .max(
      100_000,
      'More than 100,000 containers is no small batch. Try a smaller number, for example "24 tins of 15 ml".',
    )
    .optional(),
  size: size.optional(),
  totalG: positive(1_000_000, 'The total in grams').optional(),
  totalMl: positive(1_000_000, 'The total in millilitres').optional(),
  factor: positive(10_000, 'The multiple').optional(),
  limit: z
    .strictObject({
      ingredient: z.string().max(60),
      grams: positive(1_000_000, 'The amount you have'),
    })
    .optional(),
  lossPercent: z
    .number()
    .min(0, 'The loss cannot be below zero.')
    .max(50, 'A loss of more than 50 % is more waste than balm. Try "loss 5 %".')
    .optional(),
  stepG: z.union([z.literal(1), z.literal(0.1), z.literal(0.01), z.literal(0.001)]).optional(),
  /** Ounces beside the grams in this answer, whatever the group's units are. */
  units: z.enum(['g', 'oz']).optional(),
});
export type ScaleWish = z.output<typeof request>;

const spoken = (values: SlashValues): string => {
  const { recipe, tins, size: each, total, with: limit, loss, step } = values;
  const parts = [`scale ${recipe}`];
  if (tins !== undefined) parts.push(`to ${tins} tins${each === undefined ? '' : ` of ${each}`}`);
  else if (total !== undefined) parts.push(/^\d/.test(String(total)) ? `to ${total}` : String(total));
  if (limit !== undefined) parts.push(`with my ${limit}`);
  if (loss !== undefined) parts.push(`loss ${loss} %`);
  if (step !== undefined) parts.push(`to the nearest ${step} g`);
  return parts.join(' ');
};

/** Only what one reading is possible of: a whole number or one with a point, and the two units that need no table. */
const amountSaid = /^(\d{1,5}(?:\.\d{1,3})?) ?(g|ml)$/;

const plainSize = (said: string): ScaleWish['size'] => {
  const [, amount, unit] = amountSaid.exec(said) ?? [];
  return amount === undefined || Number(amount) === 0
    ? undefined
    : { amount: Number(amount), unit: unit === 'g' ? 'g' : 'ml' };
};

/** A saved recipe by its whole name, for so many containers of a plain size. */
const plain = (values: SlashValues, state: BookState): ScaleWish | undefined => {
  const { recipe, tins, size: each, total, with: limit, loss, step } = values;
  if (typeof recipe !== 'string' || typeof tins !== 'number' || typeof each !== 'string') return undefined;
  if (total !== undefined || limit !== undefined || loss !== undefined || step !== undefined)
    return undefined;
  // Where decimals are written with a comma, a point may have been meant otherwise, and the reader says how it took it.
  if (state.settings.decimal === 'comma' && each.includes('.')) return undefined;
  const saved = recipeNames(state).exact(recipe);
  const fill = plainSize(each);
  return saved && fill ? { recipe: saved.name, count: tins, size: fill } : undefined;
};

export const scale = topic({
  name: 'scale',
  summary: 'Turn a recipe into a gram table for your tins, a total, or what one ingredient allows.',
  request,
  examples: [
    {
      say: scaleExample,
      means: { count: 24, size: { amount: 15, unit: 'ml' } },
    },
    {
      say: 'scale Fernlea hand balm to 24 tins of 15 ml',
      means: {
        recipe: 'Fernlea hand balm',
        count: 24,
        size: { amount: 15, unit: 'ml' },
      },
      demo: 'Fernlea hand balm',
    },
    {
      say: 'Fernlea hand balm to 500 g, no loss',
      means: { totalG: 500, lossPercent: 0 },
      demo: 'Fernlea hand balm',
    },
    {
      say: 'double Fernlea mint lip balm',
      means: { factor: 2 },
      demo: 'Fernlea mint lip balm',
    },
    {
      say: 'scale 20% beeswax, 30% shea butter, olive oil to 100 with my 80 g of beeswax',
      means: { limit: { ingredient: 'beeswax', grams: 80 } },
    },
  ],
  slash: {
    options: z.object({
      recipe: z
        .string()
        .max(1000)
        .describe('A saved recipe, or one written out: 20 g beeswax, 80 g olive oil'),
      tins: z.int().min(1).max(100_000).optional().describe('How many containers'),
      size: z.string().max(30).optional().describe('What each holds, for example 15 ml or 12 g'),
      total: z.string().max(30).optional().describe('Or a total or multiple, for example 500 g, double, x 3'),
      with: z
        .string()
        .max(60)
        .optional()
        .describe('Or what you have of one ingredient, for example 80 g of beeswax'),
      loss: z.number().min(0).max(50).optional().describe('Loss allowance in percent'),
      step: z.enum(['1', '0.1', '0.01', '0.001']).optional().describe('What your scale reads, in grams'),
    }),
    complete: { recipe: 'recipe' },
    say: spoken,
    plain,
  },
  read: claimScale,
  answer: answerScale,
});
