import { join } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { journalOf } from '../../bot/book/journal.ts';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { openStore } from '../../bot/book/store.ts';
import type { BookEvent } from '../../core/book.ts';
import { inFolder } from './books.ts';
import { type Found, type Row, time } from './report.ts';

const batches = 10_000;
const by = { who: 'member-1', at: Date.UTC(2026, 10, 25, 9) };

const poured = (at: number): BookEvent => ({
  kind: 'batch-poured',
  lot: `26K${at}`,
  recipe: { id: 'fernlea-hand-balm', version: 3 },
  name: 'Fernlea hand balm',
  lines: ['beeswax', 'shea-butter', 'olive-oil'].map((ingredient) => ({
    ingredient,
    grams: 103.1,
    draws: [{ lot: `L${at % 40}`, grams: 103.1 }],
  })),
  count: 24,
  container: 'tin',
  size: { amount: 15, unit: 'ml' },
  madeOn: '2026-05-12',
  bestBefore: '2027-05-12',
  because: { kind: 'house', months: 12, why: 'usual' },
  weighedG: 309.3,
});

/** A snapshot of a book with 10,000 batches: how long anybody else is held up by it, and by reading it. */
export const snapshot = (): Promise<Found> =>
  inFolder(async (folder) => {
    const store = await openStore(join(folder, 'store'));
    const keeper = openKeeper(store);
    const book = await keeper.open('hall');
    for (let at = 0; at < batches; at += 90)
      await book.record(
        Array.from({ length: 90 }, (_, each) => poured(at + each)),
        by,
      );
    const journal = journalOf(store, 'hall');
    const delay = monitorEventLoopDelay({ resolution: 1 });
    const rows: Row[] = [];
    const measured = async (measure: string, work: () => Promise<unknown>): Promise<void> => {
      await new Promise((resolve) => setTimeout(resolve, 50));
      delay.reset();
      delay.enable();
      const start = performance.now();
      await work();
      const tookMs = performance.now() - start;
      delay.disable();
      const heldMs = delay.max / 1e6;
      const aim = { text: `none held up over 50 ms, longest ${time(heldMs)}`, met: heldMs < 50 };
      rows.push({ measure, median: time(tookMs), aim });
    };
    await measured(`snapshot of ${batches.toLocaleString('en')} batches`, async () => {
      for (const step of journal.snapshotSteps(book.state)) await step();
    });
    await keeper.close();
    const again = await openStore(join(folder, 'store'));
    await measured(`opening a book of ${batches.toLocaleString('en')} batches`, () =>
      journalOf(again, 'hall').load(),
    );
    await again.close();
    return { rows };
  });
