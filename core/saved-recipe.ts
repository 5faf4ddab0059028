import { z } from 'zod';
import { recipeLines, recipeName } from './recipe.ts';

/** A recipe's id within its book, made by the bot. Looked up with Object.hasOwn: "constructor" is a fair id too. */
export const recipeId = z.string().regex(/^[a-z0-9][a-z0-9-]{0,79}$/);

/**
 * A saved recipe as it stands now. `versions` holds the sequence number of the event that wrote each version, so
 * that an old version is read back from the journal instead of being carried along in memory.
 */
export const savedRecipe = z.strictObject({
  id: recipeId,
  name: recipeName,
  lines: recipeLines,
  versions: z.array(z.int()).min(1),
});
export type SavedRecipe = z.output<typeof savedRecipe>;
