import { describe, expect, it } from 'vitest';
import { snapshotEvery } from '../../../bot/book/keeper-book.ts';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { keysOf } from '../../../bot/book/names.ts';
import { openStore } from '../../../bot/book/store.ts';
import { by, freshFolder, saved } from '../../helpers/book.ts';

describe('a keeper on disk', () => {
  it('should find the same book after closing and opening, with a snapshot in between', async () => {
    const folder = await freshFolder();
    const keeper = openKeeper(await openStore(folder));
    const book = await keeper.open('local');
    const many = Array.from({ length: snapshotEvery + 20 }, (_, at) =>
      book.record(saved(`r${at % 9}`, `B ${at}`), by),
    );
    await Promise.all(many);
    await keeper.close();
    const store = await openStore(`lmdb:${folder}`);
    expect(await store.keyv.has(keysOf('local').snapshot)).toBe(true);
    const again = openKeeper(store);
    expect((await again.open('local')).state).toEqual(book.state);
    await again.close();
  });

  it('should write everything asked for before it closes', async () => {
    const folder = await freshFolder();
    const keeper = openKeeper(await openStore(folder));
    const book = await keeper.open('local');
    const waiting = Array.from({ length: 30 }, (_, at) => book.record(saved(`r${at}`, `B ${at}`), by));
    await keeper.close();
    await Promise.all(waiting);
    const again = openKeeper(await openStore(folder));
    expect((await again.open('local')).state.seq).toBe(30);
    await again.close();
    await expect(book.record(saved('r', 'Too late'), by)).rejects.toMatchObject({ code: 'not-recorded' });
  });
});
