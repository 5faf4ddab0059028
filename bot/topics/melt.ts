import { z } from 'zod';
import { maxLines, recipeLine, recipeName } from '../../core/recipe.ts';
import { claimMelt } from '../readers/melt-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerMelt } from '../words/melt.ts';

const request = z.strictObject({
  recipe: recipeName.optional(),
  lines: z.array(recipeLine).max(maxLines, `A recipe has at most ${maxLines} lines.`).optional(),
  ingredient: z.string().max(60).optional(),
  /** Ingredients to set beside that one. */
  others: z.array(z.string().max(60)).max(8).optional(),
  survivesC: z
    .number()
    .min(-50, 'That is too cold for a forecast.')
    .max(200, 'That is too hot for a forecast.')
    .optional(),
  ask: z.enum(['heat']).optional(),
  /** The picture in light on dark. */
  dark: z.boolean().optional(),
});
export type MeltWish = z.output<typeof request>;

const spoken = ({ of, survives }: SlashValues): string =>
  survives === undefined ? `when does ${of} melt` : `will ${of} survive ${survives} C`;

export const melt = topic({
  name: 'melt',
  summary: 'When a balm softens and melts, what it survives, and the heat plan for the pot.',
  request,
  examples: [
    { say: 'melting point of beeswax', means: { ingredient: 'beeswax' } },
    {
      say: 'which melts first, cocoa butter or shea butter',
      means: { ingredient: 'cocoa-butter', others: ['shea-butter'] },
    },
    {
      say: 'when does 20% beeswax, 30% shea butter, 50% olive oil melt',
      means: {
        lines: [
          { ingredient: 'beeswax', amount: 20, unit: 'percent' },
          { ingredient: 'shea-butter', amount: 30, unit: 'percent' },
          { ingredient: 'olive-oil', amount: 50, unit: 'percent' },
        ],
      },
    },
    {
      say: 'will Fernlea hand balm survive 35 C',
      means: { recipe: 'Fernlea hand balm', survivesC: 35 },
      demo: 'Fernlea hand balm',
    },
    { say: 'heat plan for Fernlea mint lip balm', means: { ask: 'heat' }, demo: 'Fernlea mint lip balm' },
  ],
  slash: {
    options: z.object({
      of: z.string().max(1000).describe('A recipe, one written out, or an ingredient'),
      survives: z.number().min(-50).max(200).optional().describe('Will it survive this many °C?'),
    }),
    complete: { of: 'recipe-or-ingredient' },
    say: spoken,
  },
  read: claimMelt,
  answer: answerMelt,
});
