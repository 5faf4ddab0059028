import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { checkLmdbFile } from '../../../bot/book/lmdb-check.ts';
import { openStore } from '../../../bot/book/store.ts';
import { ok } from '../../../core/result.ts';
import { by, freshFolder, saved } from '../../helpers/book.ts';

// The file itself is searched, as anybody could who gets hold of the disk.
describe('what was written again without something', () => {
  it('should not be found in entries, snapshots or the file', async () => {
    const folder = await freshFolder();
    const file = join(folder, 'data.mdb');
    const keeper = openKeeper(await openStore(folder));
    const book = await keeper.open('guild:17');
    const first = await book.record(saved('secret', 'Moonstone'), by);
    for (let at = 0; at < 6; at++)
      await book.record(
        Array.from({ length: 90 }, (_, each) => saved(`r${each}`, `Balm ${at}`, 2)),
        by,
      );
    expect((await readFile(file)).includes('Moonstone')).toBe(true);
    const rewritten = { ...first, event: saved('secret', 'Taken out') };
    const gone = { kind: 'recipe-deleted', recipe: 'secret' } as const;
    await book.change(() => ok({ events: [gone], rewritten: [rewritten], value: undefined }), by);
    expect((await readFile(file)).includes('Moonstone')).toBe(false);
    const { state } = book;
    await keeper.close();
    expect((await readFile(file)).includes('Moonstone')).toBe(false);
    const again = openKeeper(await openStore(folder));
    expect((await again.open('guild:17')).state).toEqual(state);
    await again.close();
  });
});

describe('what was forgotten in a folder', () => {
  it('should not be found anywhere in its file, while the others’ books stand', async () => {
    const folder = await freshFolder();
    const file = join(folder, 'data.mdb');
    const keeper = openKeeper(await openStore(folder));
    const [ours, theirs] = await Promise.all([keeper.open('guild:17'), keeper.open('guild:18')]);
    for (let at = 0; at < 700; at++) {
      // Long and short values, and enough of them for a snapshot.
      const lines = at % 50 === 0 ? 55 : 2;
      await ours.record(saved(`s${at % 90}`, `Moonstone secret ${at}`, lines), by);
      if (at % 7 === 0) await theirs.record(saved(`r${at % 20}`, `Hall balm ${at}`, lines), by);
    }
    const before = theirs.state;
    expect((await readFile(file)).includes('Moonstone')).toBe(true);
    expect(await ours.forget()).toBe('gone');
    expect((await readFile(file)).includes('Moonstone')).toBe(false);
    // And it goes on working, in the same process and after a restart.
    await theirs.record(saved('after', 'Hall balm after'), by);
    expect((await ours.record(saved('new', 'New'), by)).seq).toBe(1);
    await keeper.close();
    checkLmdbFile(file);
    const again = openKeeper(await openStore(folder));
    const stands = (await again.open('guild:18')).state;
    expect(stands.seq).toBe(before.seq + 1);
    for (const [id, recipe] of Object.entries(before.recipes)) expect(stands.recipes[id]).toEqual(recipe);
    expect((await again.open('guild:17')).state.seq).toBe(1);
    await again.close();
    expect((await readFile(file)).includes('Moonstone')).toBe(false);
  });
});
