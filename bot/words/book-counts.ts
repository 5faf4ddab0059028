import { type BookState, benchOf } from '../../core/book.ts';
import type { Block } from '../answer.ts';

/** How much stands in a book, by what it is. */
export interface BookCounts {
  readonly recipes: number;
  readonly lots: number;
  readonly batches: number;
  readonly reactions: number;
  readonly prices: number;
}

export const bookCounts = (state: BookState): BookCounts => {
  const { lots, batches, reactions } = benchOf(state);
  return {
    recipes: Object.keys(state.recipes).length,
    lots: lots.size,
    batches: batches.size,
    reactions: reactions.size,
    prices: Object.keys(state.prices ?? {}).length,
  };
};

export const countsTable = (counts: BookCounts): Block => ({
  kind: 'table',
  columns: [
    { title: 'in it', align: 'left' },
    { title: '', align: 'right' },
  ],
  rows: Object.entries(counts)
    .filter(([, count]) => count > 0)
    .map(([what, count]) => [what, String(count)]),
});
