import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { settleAll } from '../../bot/book/journal-long.ts';
import { memoryKeeper } from '../../bot/book/keeper-memory.ts';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { openStore } from '../../bot/book/store.ts';
import { bookFile } from '../../core/exchange/file.ts';
import { by, freshFolder, saved } from '../helpers/book.ts';
import { runProcess, startProcess } from '../helpers/run-process.ts';

const rounds = Number(process.env.KILL_ROUNDS ?? 6);
const ask = '.build/bot/ask.js';
const entries = 3000;

const bigFile = async (folder: string): Promise<string> => {
  const book = await memoryKeeper().open('any');
  await book.record(
    Array.from({ length: entries }, (_, at) => saved(`r${at % 900}`, `Hall balm ${at % 900}`)),
    by,
  );
  const path = join(folder, 'big.json');
  await writeFile(path, bookFile(await book.entries(1, entries)));
  return path;
};

/** Shows the file in a fresh store, and starts to take it in. */
const takeIn = async (store: string, path: string) => {
  const shown = await runProcess(ask, ['--json', '--store', store, `import "${path}"`]);
  const { confirm } = JSON.parse(shown.out).figures;
  return startProcess(ask, ['--json', '--store', store, `confirm import "${path}" ${confirm}`]);
};

const entriesIn = async (store: string): Promise<number> => {
  const opened = await openStore(store);
  await settleAll(opened);
  const keeper = openKeeper(opened);
  const { state } = await keeper.open('local');
  await keeper.close();
  return state.seq;
};

describe('an import killed on its way', () => {
  const title = `should leave all of the file or nothing of it over ${rounds} rounds`;
  it(title, { timeout: 60_000 + rounds * 20_000 }, async () => {
    const folder = await freshFolder();
    const path = await bigFile(folder);
    const whole = await takeIn(join(folder, 'whole'), path);
    const started = Date.now();
    await whole.done;
    const takesMs = Date.now() - started;
    expect(await entriesIn(join(folder, 'whole'))).toBe(entries);
    const seen: number[] = [];
    for (let round = 0; round < rounds; round += 1) {
      const store = join(folder, `store-${round}`);
      const { child, done } = await takeIn(store, path);
      // Writing comes last; before that the file is read and checked.
      await sleep(takesMs * (0.5 + 0.6 * Math.random()));
      child.kill('SIGKILL');
      await done;
      const found = await entriesIn(store);
      seen.push(found);
      // Nothing of it: the two demo recipes, or not even those.
      expect([0, 2, entries]).toContain(found);
    }
    console.log(`${rounds} kills, an import takes ${takesMs} ms, entries found: ${seen.join(', ')}`);
  });
});
