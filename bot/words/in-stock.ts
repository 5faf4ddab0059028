import { localDay } from '../../core/bench/days.ts';
import { inStockG } from '../../core/bench/draw.ts';
import { benchOf } from '../../core/book.ts';
import type { Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';

/** Grams in stock today by ingredient, lots past their date left out; empty when nothing is recorded. */
export const stockOf = ({ book, at }: Tools): ReadonlyMap<string, number> => {
  const bench = benchOf(book.state);
  return inStockG(bench, localDay(at, bench.reminder?.zone ?? 'UTC'));
};

export const noStock: Trouble = {
  code: 'missing',
  text: 'No stock is recorded yet, so I cannot tell what you have. Note it first, for example "bought 500 g beeswax lot K12, best before 2027-03", or leave the stock out of the question.',
};
