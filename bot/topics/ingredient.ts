import { z } from 'zod';
import { aspects, claimIngredient } from '../readers/ingredient-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerIngredient } from '../words/ingredient.ts';

const request = z.strictObject({
  ingredient: z.string().min(1).max(60),
  about: z.enum(aspects).optional(),
});
export type IngredientWish = z.output<typeof request>;

const spoken = ({ ingredient, about }: SlashValues): string =>
  about === undefined || about === 'vegan'
    ? `what is ${ingredient}`
    : `${String(about).replace('-', ' ')} of ${ingredient}`;

export const ingredient = topic({
  name: 'ingredient',
  summary: 'Density, melting range, iodine value, shelf life, allergens and label name of an ingredient.',
  request,
  examples: [
    { say: 'what is candelilla wax', means: { ingredient: 'candelilla-wax' } },
    {
      say: 'density of castor oil',
      means: { ingredient: 'castor-oil', about: 'density' },
    },
    {
      say: 'is lanolin vegan?',
      means: { ingredient: 'lanolin', about: 'vegan' },
    },
  ],
  slash: {
    options: z.object({
      ingredient: z.string().min(1).max(80).describe('Common name, label name or another name'),
      about: z.enum(aspects).optional().describe('What you want to know first'),
    }),
    complete: { ingredient: 'ingredient' },
    say: spoken,
  },
  read: claimIngredient,
  answer: answerIngredient,
});
