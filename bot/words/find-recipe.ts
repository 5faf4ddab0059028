import type { SavedRecipe } from '../../core/book.ts';
import type { Trouble } from '../answer.ts';
import type { Book } from '../book/keeper.ts';
import { recipeNames } from '../readers/recipe-names.ts';

/** The saved recipe of this name in this group's book, or a trouble with the nearest names. */
export const findRecipe = (name: string, book: Book): SavedRecipe | Trouble => {
  const names = recipeNames(book.state);
  const exact = names.exact(name);
  if (exact) return exact;
  const near = names.near(name).slice(0, 3);
  const hint =
    near.length > 0
      ? `Did you mean ${near.map((recipe) => `"${recipe.name}"`).join(' or ')}?`
      : 'Ask "list recipes" to see what is saved.';
  return {
    code: 'unknown-recipe',
    text: `There is no recipe called "${name}" in this book. ${hint}`,
  };
};
