import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { openStore } from '../../bot/book/store.ts';
import { demoRecipes } from '../../bot/demo.ts';
import { freshFolder } from '../helpers/book.ts';
import { linesBeforeKill } from '../helpers/kill-when.ts';
import { runProcess, startProcess, until } from '../helpers/run-process.ts';

// The compiled command, killed while it saves. A save is acknowledged when its line has been printed: from then on the
// recipe must be there, whatever happens. More rounds on demand, by KILL_ROUNDS.
const rounds = Number(process.env.KILL_ROUNDS ?? 6);
const ask = '.build/bot/ask.js';

interface Saved {
  readonly name: string;
  readonly version: number;
  readonly waxG: number;
}

/** Seven recipes in turn, each time with another amount of wax, so that no two versions are alike. */
const requests = (round: number): string =>
  Array.from({ length: 3000 }, (_, at) => {
    const waxG = 1 + round * 3000 + at;
    return `save recipe Hall balm ${at % 7}: ${waxG} g beeswax, 80 g olive oil\n`;
  }).join('');

/** What was acknowledged: a line cut short by the kill is no acknowledgement. */
const savedIn = (out: string): Saved[] =>
  out
    .split('\n')
    .slice(0, -1)
    .map((line) => {
      const { figures } = JSON.parse(line);
      const { name, version, lines } = figures.recipe;
      return { name, version, waxG: lines[0].amount };
    });

const saveAndKill = async (store: string, round: number): Promise<Saved[]> => {
  const { child, done, out } = startProcess(ask, ['--jsonl', '--store', store]);
  child.stdin.write(requests(round));
  const lines = linesBeforeKill(round, rounds);
  await until(() => out().split('\n').length > lines, 'its answers', 60_000);
  await sleep(Math.random() * 250);
  child.kill('SIGKILL');
  const ended = await done;
  expect([ended.signal, ended.err]).toEqual(['SIGKILL', '']);
  return savedIn(ended.out);
};

describe('the one-shot command, killed while recipes are being saved', () => {
  const title = `should lose no save it has printed over ${rounds} rounds`;
  it(title, { timeout: 60_000 + rounds * 20_000 }, async () => {
    const store = await freshFolder();
    // A first run that ends in peace, so that the demo recipes are in the book and only saves are counted below.
    const first = await runProcess(ask, ['--json', '--store', store, 'list recipes']);
    expect(first.code).toBe(0);
    let before = demoRecipes.length;
    let acknowledged = 0;
    for (let round = 0; round < rounds; round++) {
      const saves = await saveAndKill(store, round);
      const keeper = openKeeper(await openStore(store));
      const book = await keeper.open('local');
      for (const { name, version, waxG } of saves) {
        const recipe = Object.values(book.state.recipes).find((one) => one.name === name);
        const entry = await book.entry(recipe?.versions[version - 1] ?? 0);
        expect(entry?.event).toMatchObject({
          name,
          lines: [{ ingredient: 'beeswax', amount: waxG, unit: 'g' }, {}],
        });
      }
      // At most one more than was printed: written, and killed before it could say so.
      expect([0, 1]).toContain(book.state.seq - before - saves.length);
      acknowledged += saves.length;
      before = book.state.seq;
      await keeper.close();
    }
    expect(acknowledged).toBeGreaterThan(rounds);
    const listed = await runProcess(ask, ['--json', '--store', store, 'list recipes']);
    expect(listed.code).toBe(0);
    expect(JSON.parse(listed.out).text).toContain('Hall balm 6');
    console.log(`${rounds} kills, ${acknowledged} acknowledged saves, ${before} on disk`);
  });
});
