import { z } from 'zod';
import { maxLines, recipeLine, recipeName } from '../../core/recipe.ts';
import { regions } from '../../core/settings.ts';
import { claimCheck } from '../readers/check-claim.ts';
import { isHeadedList } from '../readers/check-lines.ts';
import { readPointed } from '../readers/pointed-name.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerCheck } from '../words/check.ts';

const percent = z.number().min(0).max(100, 'A share is at most 100 %.');

const request = z.strictObject({
  recipe: recipeName.optional(),
  lines: z.array(recipeLine).max(maxLines, `A recipe has at most ${maxLines} lines.`).optional(),
  ingredient: z.string().max(60).optional(),
  /** The herb of an infused oil that is asked about by itself. */
  herb: z.string().max(60).optional(),
  fresh: z.boolean().optional(),
  /** Watched plants that an oil of the recipe is infused with. */
  infused: z.array(z.string().max(60)).max(5).optional(),
  /** Grams of the whole, for drops or grams of a scent. */
  batchG: z.number().positive().max(100_000, 'That batch is more than I am made for.').optional(),
  /** A supplier's figures: percent of the scent. */
  analyses: z
    .array(z.strictObject({ ingredient: z.string().max(60), name: z.string().max(80), percent }))
    .max(100)
    .optional(),
  region: z.enum(regions).optional(),
  on: z.iso.date('Write the day as 2027-01-02.').optional(),
  wearer: z.enum(['anyone', 'children', 'babies', 'pregnant']).optional(),
  use: z.enum(['leave-on', 'rinse-off']).optional(),
  /** The change that clears the findings is made, and saved where the recipe is a saved one. */
  apply: z.boolean().optional(),
  doubtful: z.array(z.string().max(40)).max(5).optional(),
  /** Names that mean several things; the lines have the first of them, and each is judged. */
  unclear: z
    .array(z.strictObject({ said: z.string().max(80), ids: z.array(z.string().max(60)).min(2).max(6) }))
    .max(6)
    .optional(),
});
export type CheckWish = z.output<typeof request>;

const spoken = ({ of, region }: SlashValues): string =>
  region === undefined ? `check ${of}` : `check ${of} region ${region}`;

export const check = topic({
  name: 'check',
  summary: 'Limits, allergens to name, light, water and plants: a full look at a lip balm.',
  request,
  examples: [
    {
      say: 'check Fernlea mint lip balm',
      means: { recipe: 'Fernlea mint lip balm' },
      demo: 'Fernlea mint lip balm',
    },
    {
      say: 'is 2% peppermint oil ok in a lip balm',
      means: { lines: [{ ingredient: 'peppermint-essential-oil', amount: 2, unit: 'percent' }] },
    },
    {
      say: 'check 20 g beeswax, 79 g olive oil, 1 g lemongrass oil',
      means: {
        lines: [
          { ingredient: 'beeswax', amount: 20, unit: 'g' },
          { ingredient: 'olive-oil', amount: 79, unit: 'g' },
          { ingredient: 'lemongrass-essential-oil', amount: 1, unit: 'g' },
        ],
      },
    },
    { say: 'is comfrey safe on lips?', means: { ingredient: 'comfrey' } },
  ],
  slash: {
    options: z.object({
      of: z.string().max(1000).describe('A recipe, one written out, or a share: 2% peppermint oil'),
      region: z.enum(regions).optional().describe('Whose rules, if not your group’s'),
    }),
    complete: { of: 'recipe-or-ingredient' },
    say: spoken,
  },
  writes: (wish) => wish.apply === true && wish.recipe !== undefined,
  // What is written out under a heading is looked at, not the saved recipe that the heading may sound like.
  read: (reading) =>
    (isHeadedList(reading.items) ? claimCheck(reading) : undefined) ?? readPointed(claimCheck)(reading),
  answer: answerCheck,
});
