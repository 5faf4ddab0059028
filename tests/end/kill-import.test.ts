import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { memoryKeeper } from '../../bot/book/keeper-memory.ts';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { openStore } from '../../bot/book/store.ts';
import type { BookEvent } from '../../core/book.ts';
import { bookFile } from '../../core/exchange/file.ts';
import { by, freshFolder, saved } from '../helpers/book.ts';
import { runProcess, startProcess } from '../helpers/run-process.ts';

/** Half of them into each kind of book. */
const rounds = Math.ceil(Number(process.env.KILL_ROUNDS ?? 6) / 2);
const ask = '.build/bot/ask.js';
const entries = 3000;

const eventAt = (at: number): BookEvent => {
  if (at % 3 > 0) return saved(`r${at % 900}`, `Hall balm ${at % 900}`);
  const lot = `K${at}`;
  return { kind: 'lot-bought', lot, ingredient: 'beeswax', grams: 100 + at, on: '2026-11-01' };
};

const bigFile = async (folder: string): Promise<string> => {
  const book = await memoryKeeper().open('any');
  await book.record(
    Array.from({ length: entries }, (_, at) => eventAt(at)),
    by,
  );
  const path = join(folder, 'big.json');
  await writeFile(path, bookFile(await book.entries(1, entries)));
  return path;
};

/** Everything in the book as one file, read from the disk as the next start would. */
const bookIn = async (store: string): Promise<string> => {
  const keeper = openKeeper(await openStore(store));
  const book = await keeper.open('local');
  const file = bookFile(await book.entries(1, book.state.seq));
  await keeper.close();
  return file;
};

/** The words that begin a book, and what it takes to take the file into it: all is said to a fresh process. */
const takeIn = async (store: string, path: string, own: string | undefined) => {
  if (own) await runProcess(ask, ['--json', '--store', store, own]);
  const shown = await runProcess(ask, ['--json', '--store', store, `import "${path}"`]);
  const { confirm } = JSON.parse(shown.out).figures;
  const before = await bookIn(store);
  return {
    before,
    ...startProcess(ask, ['--json', '--store', store, `confirm import "${path}" ${confirm}`]),
  };
};

const partsIn = (file: string): number => file.split('\n').length;

describe.each([
  ['the demo', undefined],
  ['a book with something of its own', 'bought 500 g cocoa butter lot C1, best before 2028-02'],
])('an import into %s, killed on its way', (_what, own) => {
  const title = `should leave all of the file or the book as it was over ${rounds} rounds`;
  it(title, { timeout: 60_000 + rounds * 20_000 }, async () => {
    const folder = await freshFolder();
    const path = await bigFile(folder);
    const whole = await takeIn(join(folder, 'whole'), path, own);
    const started = Date.now();
    await whole.done;
    const takesMs = Date.now() - started;
    const all = await bookIn(join(folder, 'whole'));
    expect(partsIn(all)).toBeGreaterThan(partsIn(whole.before) + 10);
    let [done, undone] = [0, 0];
    for (let round = 0; round < rounds; round += 1) {
      const store = join(folder, `store-${round}`);
      const taking = await takeIn(store, path, own);
      // Writing comes last; before that the file is read and checked.
      await sleep(takesMs * (0.5 + 0.6 * Math.random()));
      taking.child.kill('SIGKILL');
      await taking.done;
      const found = await bookIn(store);
      if (found === taking.before) undone += 1;
      // The same but for when and in which order it was written down here.
      else if (partsIn(found) === partsIn(all)) done += 1;
      else expect(found).toBe(taking.before);
    }
    expect(done + undone).toBe(rounds);
    console.log(`${rounds} kills, an import takes ${takesMs} ms: ${done} whole, ${undone} as it was`);
  });
});
