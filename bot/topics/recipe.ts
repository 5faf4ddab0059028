import { z } from 'zod';
import { maxLines, maxNameLength, recipeLine, recipeName } from '../../core/recipe.ts';
import { recipeForm } from '../forms/recipe-form.ts';
import { claimRecipe, saveExample } from '../readers/recipe-claim.ts';
import { type SlashValues, topic } from '../topic.ts';
import { answerRecipe } from '../words/recipe.ts';

export const recipeActions = ['save', 'show', 'list', 'rename', 'delete', 'versions', 'restore'] as const;

const name = recipeName.max(
  maxNameLength,
  `A recipe's name has at most ${maxNameLength} characters. Choose a shorter one.`,
);

const request = z.strictObject({
  action: z.enum(recipeActions),
  name: name.optional(),
  newName: name.optional(),
  version: z.int('Versions are whole numbers.').min(1, 'Versions count from 1.').optional(),
  lines: z.array(recipeLine).max(maxLines, `A recipe has at most ${maxLines} lines.`).optional(),
  /** True for "update": the recipe has to be there already. */
  existing: z.boolean().optional(),
  /** How many versions of it the member had seen: a save that started from fewer is told so. */
  seen: z.int().min(0).optional(),
});
export type RecipeWish = z.output<typeof request>;

const spoken = ({ do: action, name: said, lines, to, version }: SlashValues): string => {
  if (action === 'list') return 'list recipes';
  if (action === 'save') return `save recipe ${said ?? ''}: ${lines ?? ''}`;
  if (action === 'rename') return `rename recipe ${said ?? ''} to ${to ?? ''}`;
  if (action === 'versions') return `versions of recipe ${said ?? ''}`;
  const which = version === undefined ? '' : `version ${version} of `;
  return `${action} ${which}recipe ${said ?? ''}`;
};

export const recipe = topic({
  name: 'recipe',
  summary: 'Save, show, list, rename or delete recipes; every edit keeps the old version readable.',
  request,
  examples: [
    { say: saveExample, means: { action: 'save', name: 'Winter balm' }, changes: true },
    { say: 'list recipes', means: { action: 'list' } },
    {
      say: 'show Fernlea hand balm',
      means: { action: 'show', name: 'Fernlea hand balm' },
      demo: 'Fernlea hand balm',
    },
    {
      say: 'rename Fernlea hand balm to Fernlea winter hands',
      means: {
        action: 'rename',
        name: 'Fernlea hand balm',
        newName: 'Fernlea winter hands',
      },
      demo: 'Fernlea hand balm',
      changes: true,
    },
    {
      say: 'versions of Fernlea mint lip balm',
      means: { action: 'versions', name: 'Fernlea mint lip balm' },
      demo: 'Fernlea mint lip balm',
    },
  ],
  slash: {
    options: z.object({
      do: z.enum(recipeActions).describe('What to do'),
      name: z.string().max(maxNameLength).optional().describe('The recipe'),
      lines: z
        .string()
        .max(1500)
        .optional()
        .describe('For save: 20 g beeswax, 30 g shea butter, 50 g olive oil'),
      to: z.string().max(maxNameLength).optional().describe('For rename: the new name'),
      version: z.int().min(1).optional().describe('For show and restore: which version'),
    }),
    complete: { name: 'recipe' },
    form: recipeForm,
    say: spoken,
  },
  writes: (wish) => wish.action !== 'show' && wish.action !== 'list' && wish.action !== 'versions',
  read: claimRecipe,
  answer: answerRecipe,
});
