import type { BookEvent } from '../../core/book.ts';

/** A small recipe saved under a name. */
export const recipeSaved = (recipe: string, name: string): BookEvent => ({
  kind: 'recipe-saved',
  recipe,
  name,
  lines: [
    { ingredient: 'beeswax', amount: 20, unit: 'g' },
    { ingredient: 'olive-oil', amount: 80, unit: 'g' },
  ],
});
