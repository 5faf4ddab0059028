import { describe, expect, it } from 'vitest';
import type { Book } from '../../bot/book/keeper.ts';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { openStore } from '../../bot/book/store.ts';
import { freshFolder, runChild, type Said } from '../helpers/book.ts';
import { linesBeforeKill } from '../helpers/kill-when.ts';

/** The nightly run sets 100; each round takes about half a second. */
const rounds = Number(process.env.KILL_ROUNDS ?? 12);

interface Saved {
  readonly seq: number;
  readonly name: string;
  readonly lines: number;
}

const savedIn = (said: readonly Said[]): Saved[] =>
  said.flatMap(({ saved, name = '', lines = 0 }) =>
    saved === undefined ? [] : [{ seq: saved, name, lines }],
  );

/**
 * Saves recipes in a process of its own and kills it at a random moment, sometimes while it is still starting. Gives
 * back what was acknowledged.
 */
const saveAndKill = async (folder: string, round: number): Promise<Saved[]> => {
  const child = runChild('save', folder);
  for (let left = linesBeforeKill(round, rounds); left > 0; left--) await child.next();
  await new Promise((resolve) => setTimeout(resolve, Math.random() * 250));
  child.process.kill('SIGKILL');
  const { said, signal, errors } = await child.ended;
  expect([signal, errors]).toEqual(['SIGKILL', '']);
  return savedIn(said);
};

const whole = async (book: Book): Promise<void> => {
  const seqs = Array.from({ length: book.state.seq }, (_, at) => at + 1);
  for (const seq of seqs) expect((await book.entry(seq))?.seq).toBe(seq);
  expect(await book.entry(book.state.seq + 1)).toBeUndefined();
  const versions = Object.values(book.state.recipes).flatMap((recipe) => recipe.versions);
  expect(versions.sort((a, b) => a - b)).toEqual(seqs);
};

describe('killed while recipes are being saved', () => {
  const title = `should lose no acknowledged save over ${rounds} rounds`;
  it(title, { timeout: 60_000 + rounds * 20_000 }, async () => {
    const folder = await freshFolder();
    let acknowledged = 0;
    let before = 0;
    for (let round = 0; round < rounds; round++) {
      const saves = await saveAndKill(folder, round);
      const keeper = openKeeper(await openStore(folder));
      const book = await keeper.open('local');
      for (const { seq, name, lines } of saves) {
        const event = { kind: 'recipe-saved', name, lines: { length: lines } };
        expect(await book.entry(seq)).toMatchObject({ seq, event });
      }
      acknowledged += saves.length;
      // Everything acknowledged, in one row, and at most one more: written, but killed before it could say so.
      const last = before + saves.length;
      expect(saves.map(({ seq }) => seq)).toEqual(saves.map((_, at) => before + at + 1));
      expect([last, last + 1]).toContain(book.state.seq);
      before = book.state.seq;
      await keeper.close();
    }
    expect(acknowledged).toBeGreaterThan(rounds);
    const keeper = openKeeper(await openStore(folder));
    await whole(await keeper.open('local'));
    await keeper.close();
    console.log(`${rounds} kills, ${acknowledged} acknowledged saves, ${before} on disk`);
  });
});
