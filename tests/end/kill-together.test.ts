import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { openStore } from '../../bot/book/store.ts';
import { freshFolder, runChild } from '../helpers/book.ts';
import { linesBeforeKill } from '../helpers/kill-when.ts';
import { usePostgres } from '../helpers/use-postgres.ts';

const pg = usePostgres();

/** The nightly run sets 100; each round takes about half a second. */
const rounds = Number(process.env.KILL_ROUNDS ?? 6);

const stores: Record<string, () => Promise<string>> = {
  lmdb: freshFolder,
  PostgreSQL: () => pg.server.database(),
};

/** Records many events at a time in a process of its own, which is killed at a random moment; the number of the last entry acknowledged. */
const pourAndKill = async (url: string, round: number): Promise<number> => {
  const child = runChild('pour', url);
  const first = await child.next();
  for (let left = linesBeforeKill(round, rounds) - 1; left > 0; left--) await child.next();
  await sleep(Math.random() * 300);
  child.process.kill('SIGKILL');
  const { said, signal, errors } = await child.ended;
  expect([signal, errors]).toEqual(['SIGKILL', '']);
  return said.at(-1)?.saved ?? first?.start ?? 0;
};

/** Every entry is there, and every pour whole: "1 of 3", "2 of 3", "3 of 3". */
const checkPours = async (url: string, from: number): Promise<number> => {
  const keeper = openKeeper(await openStore(url, { waitMs: 10_000 }));
  const book = await keeper.open('local');
  let expected = 1;
  for (let seq = from + 1; seq <= book.state.seq; seq++) {
    const event = (await book.entry(seq))?.event;
    const name = event?.kind === 'recipe-saved' ? event.name : '';
    const [, at, size] = /^(\d+) of (\d+)$/.exec(name) ?? [];
    expect([seq, Number(at)]).toEqual([seq, expected]);
    expected = at === size ? 1 : expected + 1;
  }
  expect(expected).toBe(1);
  const last = book.state.seq;
  await keeper.close();
  return last;
};

// A request of 230 events is three writes, so many kills fall between them.
describe.each(Object.entries(stores))('killed while pouring into %s', (_name, make) => {
  const title = `should keep every acknowledged pour, and no half of one, over ${rounds} rounds`;
  it(title, { timeout: 30_000 + rounds * 20_000 }, async () => {
    const url = await make();
    let before = 0;
    for (let round = 0; round < rounds; round++) {
      const acknowledged = await pourAndKill(url, round);
      const stands = await checkPours(url, before);
      expect(stands).toBeGreaterThanOrEqual(acknowledged);
      // At most one more pour than was acknowledged.
      expect(stands - acknowledged).toBeLessThanOrEqual(230);
      before = stands;
    }
    expect(before).toBeGreaterThan(rounds);
  });
});

describe('a database that crashes while a process saves into it', () => {
  it('should have everything acknowledged when it is back, and the process should go on', {
    timeout: 150_000,
  }, async () => {
    const url = await pg.server.database();
    const child = runChild('save', url);
    for (let crash = 0; crash < 2; crash++) {
      for (let at = 0; at < 15; at++) await child.next();
      await pg.server.crash();
      await pg.server.start();
    }
    for (let at = 0; at < 15; at++) expect((await child.next())?.saved).toBeGreaterThan(0);
    child.process.kill('SIGKILL');
    const { said } = await child.ended;
    const saves = said.flatMap(({ saved, name }) => (saved === undefined ? [] : [{ saved, name }]));
    expect(saves.map(({ saved }) => saved)).toEqual(saves.map((_, at) => at + 1));
    const keeper = openKeeper(await openStore(url, { waitMs: 10_000 }));
    const book = await keeper.open('local');
    for (const { saved, name } of saves) expect((await book.entry(saved))?.event).toMatchObject({ name });
    expect([0, 1]).toContain(book.state.seq - saves.length);
    await keeper.close();
  });
});
