import { z } from 'zod';
import { maxLines, recipeLine, recipeName } from '../../core/recipe.ts';
import { claimSubstitute } from '../readers/substitute-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerSubstitute } from '../words/substitute.ts';

const id = z.string().min(1).max(60);

/** Changes that can follow one another in a conversation; a recipe has no more lines. */
const mostSwaps = 20;

/** How much of what goes out: a share of it, percent of the recipe, or grams of its batch. */
const part = z.strictObject({
  amount: z
    .number()
    .gt(0, 'How much of it? Try "swap half the beeswax for candelilla in Fernlea hand balm".'),
  unit: z.enum(['share', 'percent', 'g']),
});

const request = z.strictObject({
  recipe: recipeName.optional(),
  lines: z.array(recipeLine).max(maxLines, `A recipe has at most ${maxLines} lines.`).optional(),
  /** What can stand in for this? */
  replaces: id.optional(),
  from: id.optional(),
  to: id.optional(),
  part: part.optional(),
  /** Not held to the firmness: as many grams in as out. */
  gramForGram: z.boolean().optional(),
  /** Swaps of the same conversation that come first. */
  earlier: z
    .array(z.strictObject({ from: id, to: id, part: part.optional(), gramForGram: z.boolean().optional() }))
    .max(mostSwaps, 'That is a long chain of swaps. Save the recipe as it is now and go on from there.')
    .optional(),
  /** Kinds ("nuts", "animal", "palm" …) or ingredient ids. */
  without: z.array(id).max(30, 'Name at most 30 things to leave out.').optional(),
  /** Cheapest first, at the group's prices; without anything to replace: the one swap that saves most. */
  by: z.enum(['price']).optional(),
  /** Only what is on the shelf. */
  stocked: z.boolean().optional(),
  /** The chart in light on dark. */
  dark: z.boolean().optional(),
  /** The scores of candidates taken apart; `about` names one of them. */
  scores: z.boolean().optional(),
  about: id.optional(),
  /** How much of the result to weigh out, as the scale topic takes it; checked there. */
  make: z.record(z.string(), z.unknown()).optional(),
});
export type SubstituteWish = z.output<typeof request>;

const made = ({ tins, size }: SlashValues): string =>
  tins === undefined ? '' : ` and make ${tins} tins${size === undefined ? '' : ` of ${size}`}`;

const spoken = (values: SlashValues): string => {
  const { recipe, out, into, without } = values;
  const place = recipe === undefined ? '' : ` in ${recipe}`;
  const no = without === undefined ? '' : ` without ${without}`;
  if (out !== undefined && into !== undefined) return `swap ${out} for ${into}${place}${no}${made(values)}`;
  if (out !== undefined) return `what can replace ${out}${place}${no}`;
  return `${without === undefined ? 'swap in' : `without ${without}:`} ${recipe ?? ''}${made(values)}`;
};

export const substitute = topic({
  name: 'substitute',
  summary: 'What can replace an ingredient, swaps that keep the set, and nut-free or vegan versions.',
  request,
  examples: [
    { say: 'what can I use instead of beeswax', means: { replaces: 'beeswax' } },
    {
      say: 'swap beeswax for candelilla in 20% beeswax, 80% olive oil',
      means: { from: 'beeswax', to: 'candelilla-wax' },
    },
    {
      say: 'swap beeswax for candelilla in Fernlea hand balm and make 30 tins of 15 ml',
      means: {
        recipe: 'Fernlea hand balm',
        from: 'beeswax',
        to: 'candelilla-wax',
        make: { count: 30, size: { amount: 15, unit: 'ml' } },
      },
      demo: 'Fernlea hand balm',
    },
    {
      say: 'what can replace almond oil in Fernlea mint lip balm',
      means: { recipe: 'Fernlea mint lip balm', replaces: 'sweet-almond-oil' },
      demo: 'Fernlea mint lip balm',
    },
    {
      say: 'nut-free Fernlea mint lip balm',
      means: { recipe: 'Fernlea mint lip balm', without: ['nuts'] },
      demo: 'Fernlea mint lip balm',
    },
    {
      say: 'make Fernlea hand balm vegan',
      means: { recipe: 'Fernlea hand balm', without: ['animal'] },
      demo: 'Fernlea hand balm',
    },
  ],
  slash: {
    options: z.object({
      recipe: z
        .string()
        .max(1000)
        .optional()
        .describe('A saved recipe, or one written out: 20 g beeswax, 80 g olive oil'),
      out: z.string().max(80).optional().describe('What goes out; alone it asks what can replace it'),
      into: z.string().max(80).optional().describe('What comes in'),
      without: z
        .enum(['nuts', 'animal products', 'palm', 'coconut', 'scent', 'soy'])
        .optional()
        .describe('Or do without'),
      tins: z.int().min(1).max(100_000).optional().describe('Weigh out the result for so many tins'),
      size: z.string().max(30).optional().describe('What each holds, for example 15 ml or 12 g'),
    }),
    complete: { recipe: 'recipe', out: 'ingredient', into: 'ingredient' },
    say: spoken,
  },
  read: claimSubstitute,
  answer: answerSubstitute,
});
