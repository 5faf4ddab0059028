import { understand } from '../../bot/understand.ts';
import type { BenchEvent } from '../../core/bench/events.ts';
import { afterBenchEvent } from '../../core/bench/fold.ts';
import { emptyBench } from '../../core/bench/state.ts';
import { type BookState, emptyBook } from '../../core/book.ts';
import type { Settings } from '../../core/settings.ts';
import { now } from './house.ts';

/** A message as it is read in a book with these bench events. */
export const readingOf = (
  text: string,
  events: readonly BenchEvent[] = [],
  settings: Partial<Settings> = {},
  at = now,
) => {
  const bench = events.reduce((all, event, index) => afterBenchEvent(all, event, index + 1), emptyBench);
  const state: BookState = { ...emptyBook, settings: { ...emptyBook.settings, ...settings }, bench };
  return understand(text, state, state.settings, undefined, at);
};

export const lotOf = (lot: string, ingredient = 'beeswax', grams = 500): BenchEvent => ({
  kind: 'lot-bought',
  lot,
  ingredient,
  grams,
  on: '2026-11-01',
});

export const batchOf = (lot: string, name = 'Fernlea hand balm'): BenchEvent => ({
  kind: 'batch-poured',
  lot,
  name,
  lines: [{ ingredient: 'beeswax', grams: 10, draws: [] }],
  count: 24,
  container: 'tin',
  madeOn: '2026-11-20',
  bestBefore: '2027-11-20',
  because: { kind: 'said' },
  weighedG: 10,
});
