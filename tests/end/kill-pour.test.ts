import { describe, expect, it } from 'vitest';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { openStore } from '../../bot/book/store.ts';
import { lotKey } from '../../core/bench/codes.ts';
import { benchOf } from '../../core/book.ts';
import { balances } from '../helpers/balances.ts';
import { freshFolder, runChild, type Said } from '../helpers/book.ts';
import { linesBeforeKill } from '../helpers/kill-when.ts';

/** The nightly run sets 200. */
const rounds = Number(process.env.KILL_ROUNDS ?? 12);

const pourAndKill = async (folder: string, round: number): Promise<readonly Said[]> => {
  const child = runChild('brew', folder);
  // The first line says that it has started; sometimes it is killed while it reads its first message.
  for (let left = 2 * linesBeforeKill(round, rounds) - (Math.random() < 0.1 ? 1 : 0); left > 0; left--)
    await child.next();
  await new Promise((resolve) => setTimeout(resolve, Math.random() * 500));
  child.process.kill('SIGKILL');
  const { said, signal, errors } = await child.ended;
  expect([signal, errors]).toEqual(['SIGKILL', '']);
  return said.filter(({ saved }) => saved !== undefined);
};

describe('killed while batches are poured', () => {
  const title = `should lose no acknowledged pour and apply none by half over ${rounds} rounds`;
  it(title, { timeout: 60_000 + rounds * 20_000 }, async () => {
    const folder = await freshFolder();
    let acknowledged = 0;
    let before = 0;
    for (let round = 0; round < rounds; round++) {
      const said = await pourAndKill(folder, round);
      const keeper = openKeeper(await openStore(folder));
      const { state } = await keeper.open('local');
      const bench = benchOf(state);
      for (const { name = '', lines } of said)
        expect((lines === 0 ? bench.lots : bench.batches).has(lotKey(name)), name).toBe(true);
      // A pour is one event; a purchase without a price too. At most one more than was told.
      expect([0, 1]).toContain(state.seq - (said.at(-1)?.saved ?? before));
      balances(bench);
      acknowledged += said.length;
      before = state.seq;
      await keeper.close();
    }
    expect(acknowledged).toBeGreaterThan(rounds / 2);
    console.log(`${rounds} kills, ${acknowledged} acknowledged pours and purchases, ${before} on disk`);
  });
});
