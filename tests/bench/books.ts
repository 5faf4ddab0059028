import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { journalOf } from '../../bot/book/journal.ts';
import { openStore, type Store } from '../../bot/book/store.ts';
import { afterEntries, type BookEntry, type BookState, emptyBook } from '../../core/book.ts';

// Books for the bench, written as the program writes them: one entry, one write, a snapshot now and then. Only the
// waiting is left out, or writing 100,000 entries would take longer than everything that is measured.

const noon = Date.UTC(2026, 0, 5, 12);
const ingredients = ['beeswax', 'shea-butter', 'olive-oil', 'cocoa-butter', 'peppermint-essential-oil'];

/** Entry `seq` of a group that edits `recipes` recipes in turn. */
export const entryAt = (group: string, seq: number, recipes: number): BookEntry => ({
  v: 1,
  group,
  seq,
  at: new Date(noon + seq * 60_000).toISOString(),
  who: `member-${seq % 7}`,
  event: {
    kind: 'recipe-saved',
    recipe: `balm-${seq % recipes}`,
    name: `Hall balm ${seq % recipes}`,
    lines: ingredients.map((ingredient, at) => ({ ingredient, amount: 10 + at + (seq % 20), unit: 'g' })),
  },
});

const blockSize = 2000;

/** Writes `events` entries, and the snapshot after entry number `snapshotAt`. */
export const writeBook = async (
  store: Store,
  group: string,
  {
    events,
    recipes,
    snapshotAt,
  }: { readonly events: number; readonly recipes: number; readonly snapshotAt: number },
): Promise<void> => {
  const journal = journalOf(store, group);
  let state: BookState = emptyBook;
  for (let first = 1; first <= events; first += blockSize) {
    const last = Math.min(events, first + blockSize - 1);
    const entries = Array.from({ length: last - first + 1 }, (_, at) => entryAt(group, first + at, recipes));
    await journal.append(entries);
    state = afterEntries(
      state,
      entries.filter(({ seq }) => seq <= snapshotAt),
    );
  }
  for (const step of journal.snapshotSteps(state)) await step();
};

/** Gives `work` a folder of its own, and takes it away again. */
export const inFolder = async <T>(work: (folder: string) => Promise<T>): Promise<T> => {
  const folder = await mkdtemp(join(tmpdir(), 'pipkin-bench-'));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
};

/** A fresh store in `folder` for as long as `work` takes. */
export const withStore = async <T>(folder: string, work: (store: Store) => Promise<T>): Promise<T> => {
  const store = await openStore(join(folder, 'store'));
  try {
    return await work(store);
  } finally {
    await store.close();
  }
};
