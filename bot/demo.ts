import type { RecipeLine } from '../core/recipe.ts';
import type { Book } from './book/keeper.ts';
import { NotRecorded } from './book/trouble.ts';

/** The demo book: recipes of the Fernlea Makers' Circle, an invented village-hall group. */
interface DemoRecipe {
  readonly id: string;
  readonly name: string;
  readonly lines: readonly RecipeLine[];
}

const percent = (ingredient: string, amount: number): RecipeLine => ({
  ingredient,
  amount,
  unit: 'percent',
});
const grams = (ingredient: string, amount: number): RecipeLine => ({
  ingredient,
  amount,
  unit: 'g',
});

export const demoRecipes: readonly DemoRecipe[] = [
  {
    id: 'fernlea-hand-balm',
    name: 'Fernlea hand balm',
    lines: [percent('beeswax', 20), percent('shea-butter', 30), percent('olive-oil', 50)],
  },
  {
    id: 'fernlea-mint-lip-balm',
    name: 'Fernlea mint lip balm',
    lines: [
      grams('beeswax', 20),
      grams('cocoa-butter', 15),
      grams('shea-butter', 15),
      grams('sweet-almond-oil', 49.5),
      grams('peppermint-essential-oil', 0.5),
    ],
  },
];

const circle = "Fernlea Makers' Circle";

/** True for a book that holds the demo recipes as they were put there and nothing else: nobody would miss it. */
export const isOnlyDemo = async (book: Book): Promise<boolean> => {
  const { seq } = book.state;
  if (seq === 0 || seq > demoRecipes.length) return false;
  const entries = await book.entries(1, seq);
  return entries.every(({ who }) => who === circle);
};

/**
 * Puts the demo recipes into a book nobody has written in yet. A store that cannot be written is no reason not to
 * start: the maker is told when there is something of their own to record.
 */
export const seedDemo = async (book: Book, at: number): Promise<void> => {
  if (book.state.seq > 0) return;
  try {
    for (const { id, name, lines } of demoRecipes) {
      await book.record({ kind: 'recipe-saved', recipe: id, name, lines: [...lines] }, { who: circle, at });
    }
  } catch (fault) {
    if (!(fault instanceof NotRecorded)) throw fault;
  }
};
