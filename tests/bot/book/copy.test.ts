import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkWhole, copyStore } from '../../../bot/book/copy.ts';
import { memoryStore } from '../../../bot/book/keeper-memory.ts';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { keysOf } from '../../../bot/book/names.ts';
import { type Change, openStore, type Store } from '../../../bot/book/store.ts';
import { openHouse } from '../../../bot/house.ts';
import { logTo } from '../../../bot/log.ts';
import { by, freshFolder, saved } from '../../helpers/book.ts';
import { runProcess } from '../../helpers/run-process.ts';
import { usePostgres } from '../../helpers/use-postgres.ts';

const pg = usePostgres();
const groups = ['guild:900000000000000100', 'dm:7', 'local', 'Fernlea / hall'];

/** Books with snapshots, index keys and odd names. */
const fill = async (store: Store): Promise<void> => {
  const keeper = openKeeper(store, {
    alongside: ({ group, after }) => [{ key: keysOf(group).index('waiting'), value: after.seq }],
  });
  for (const [at, group] of groups.entries()) {
    const book = await keeper.open(group);
    for (let round = 0; round < 6; round++)
      await book.record(
        Array.from({ length: 90 + at }, (_, each) => saved(`r${each}`, `Bälm ${round}`, 1 + (each % 4))),
        by,
      );
  }
  // Waits for the snapshots that follow the entries.
  await keeper.close();
};

const contentOf = async (store: Store): Promise<unknown[]> => {
  const content: unknown[] = [];
  for await (const pair of store.scan('')) content.push(pair);
  return content;
};

const ask = (...args: string[]) => runProcess('.build/bot/store-copy.js', args);

describe('copying a store', () => {
  it('should bring every book to PostgreSQL and back, by the command, with the same digest', {
    timeout: 60_000,
  }, async () => {
    const [first, second, database] = [await freshFolder(), await freshFolder(), await pg.server.database()];
    await fill(await openStore(first));
    const source = await openStore(first);
    const content = await contentOf(source);
    await source.close();
    const there = await ask(first, database);
    expect([there.code, there.err]).toEqual([0, '']);
    expect(there.out).toContain(`Copied ${groups.length} books, ${content.length} entries`);
    expect(there.out).not.toContain('Beeswax-4');
    const back = await ask(database, second);
    expect([back.code, back.err]).toEqual([0, '']);
    const digest = /^Digest ([0-9a-f]{64})$/m;
    expect(digest.exec(back.out)?.[1]).toBe(digest.exec(there.out)?.[1]);
    const copy = await openStore(second);
    expect(await contentOf(copy)).toEqual(content);
    expect((await openKeeper(copy).open('Fernlea / hall')).state.seq).toBe(6 * 93);
    await copy.close();
  });

  it('should refuse a target that holds anything, and leave it alone', async () => {
    const [from, to] = [memoryStore(), memoryStore()];
    await fill(from);
    await (await openKeeper(to).open('theirs')).record(saved('r', 'Theirs'), by);
    const before = await contentOf(to);
    await expect(copyStore(from, to)).rejects.toMatchObject({ code: 'not-a-store' });
    expect(await contentOf(to)).toEqual(before);
  });

  it('should leave nothing that can be opened when it stops on the way, and start anew', async () => {
    const from = memoryStore();
    await fill(from);
    const folder = join(await freshFolder(), 'target');
    const to = await openStore(folder);
    let writes = 4;
    const stops = async (changes: readonly Change[]): Promise<void> => {
      writes -= 1;
      if (writes < 0) throw new Error('stopped here');
      return to.writeAll(changes);
    };
    await expect(copyStore(from, { ...to, writeAll: stops })).rejects.toThrow('stopped here');
    await expect(checkWhole(to)).rejects.toMatchObject({ code: 'unfinished' });
    await to.close();
    const log = logTo(() => {}, 'silent', Date.now);
    await expect(openHouse(folder, log, 'silent')).rejects.toThrow(/unfinished copy.*store:copy/s);
    const again = await openStore(folder);
    await copyStore(from, again);
    expect(await contentOf(again)).toEqual(await contentOf(from));
    await again.close();
    await (await openHouse(folder, log, 'silent')).close();
  });

  it('should notice a copy that is not the same, and not let it be used', async () => {
    const [from, to] = [memoryStore(), memoryStore()];
    await fill(from);
    const forgetful = (changes: readonly Change[]): Promise<void> =>
      to.writeAll(changes.filter(({ key }) => key !== keysOf('local').entry(7)));
    await expect(copyStore(from, { ...to, writeAll: forgetful })).rejects.toThrow(/1 books differ/);
    await expect(checkWhole(to)).rejects.toMatchObject({ code: 'unfinished' });
  });

  it('should say how it is used, and refuse a source that is not there', async () => {
    const folder = await freshFolder();
    for (const args of [[], [folder], [folder, folder], ['a', 'b', 'c']]) {
      const { code, err } = await ask(...args);
      expect([code, err]).toEqual([2, expect.stringContaining('npm run store:copy data/book')]);
    }
    const { code, err } = await ask(join(folder, 'nowhere'), join(folder, 'target'));
    expect([code, err]).toEqual([1, expect.stringContaining('There is no store at')]);
  });

  it('should refuse a store that is in use', async () => {
    const folder = await freshFolder();
    await mkdir(join(folder, 'a'));
    const store = await openStore(join(folder, 'a'));
    await (await openKeeper(store).open('local')).record(saved('r', 'Balm'), by);
    const { code, err } = await ask(join(folder, 'a'), join(folder, 'b'));
    expect([code, err]).toEqual([1, expect.stringContaining('is in use')]);
    await store.close();
  });
});
