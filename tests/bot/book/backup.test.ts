import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { everyIndex } from '../../../bot/alongside.ts';
import { backUp } from '../../../bot/book/backup.ts';
import { memoryStore } from '../../../bot/book/keeper-memory.ts';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { indexPrefix } from '../../../bot/book/names.ts';
import { isHalfRestored, restore } from '../../../bot/book/restore.ts';
import { openStore, type Store } from '../../../bot/book/store.ts';
import type { BookEvent } from '../../../core/book.ts';
import { bookFile } from '../../../core/exchange/file.ts';
import { by, freshFolder, saved } from '../../helpers/book.ts';
import { groundwork, oneOfEach } from '../../helpers/one-of-each.ts';

const noon = Date.UTC(2026, 10, 25, 12);
const dayMs = 86_400_000;
const groups = ['local', 'guild:900000000000000100', 'dm:7', 'a/e/1', '蜜蝋'];

const events: readonly BookEvent[] = [
  saved('fernlea-hand-balm', 'Fernlea hand balm'),
  ...groundwork,
  ...Object.values(oneOfEach),
  oneOfEach['reminder-set'],
];

/** A store with a book for each group; the first is written in one go that takes several writes. */
const filled = async (store: Store) => {
  const keeper = openKeeper(store);
  const [first = '', ...more] = groups;
  const many = Array.from({ length: 260 }, (_, at) => saved(`r${at}`, `Hall balm ${at}`));
  await (await keeper.open(first)).record([...events, ...many], by);
  for (const group of more) await (await keeper.open(group)).record(events, by);
  return keeper;
};

const exportsOf = async (store: Store) => {
  const keeper = openKeeper(store);
  const files = groups.map(async (group) => {
    const book = await keeper.open(group);
    return bookFile(await book.entries(1, book.state.seq));
  });
  return Promise.all(files);
};

const plan = (folder: string) => ({ folder, keep: 3, hour: 3 });

const backedUp = async () => {
  const folder = await freshFolder();
  const store = memoryStore();
  await filled(store);
  const done = await backUp(store, plan(folder), noon);
  if (!done) throw new Error('no backup');
  return { folder, store, done };
};

describe('the daily backup', () => {
  it('should give back every export as it was, from one kind of store into another', async () => {
    const { store, done } = await backedUp();
    const fresh = await openStore(join(await freshFolder(), 'new'));
    expect(await restore(fresh, done.path, everyIndex())).toEqual({
      groups: groups.length,
      entries: done.entries,
    });
    expect(await exportsOf(fresh)).toEqual(await exportsOf(store));
    // Reminders go on: what the sweep needs to know is there without a book being opened.
    const waiting: unknown[] = [];
    for await (const [, value] of fresh.scan(indexPrefix('waiting'))) waiting.push(value);
    expect(waiting).toHaveLength(groups.length);
    await fresh.close();
  });

  it('should be written once a day, not before its hour, and the oldest go', async () => {
    const { folder, store } = await backedUp();
    expect(await backUp(store, plan(folder), noon + 1000)).toBeUndefined();
    expect(await backUp(store, plan(folder), noon + dayMs - 10 * 3_600_000)).toBeUndefined();
    await writeFile(join(folder, 'pipkin-2026-11-24.backup.gz.new'), 'half');
    for (let day = 1; day <= 4; day += 1)
      expect(await backUp(store, plan(folder), noon + day * dayMs)).toBeDefined();
    expect((await readdir(folder)).sort()).toEqual([
      'pipkin-2026-11-27.backup.gz',
      'pipkin-2026-11-28.backup.gz',
      'pipkin-2026-11-29.backup.gz',
    ]);
  });

  it('should hold whole changes only while others write', async () => {
    const folder = await freshFolder();
    const store = await openStore(join(await freshFolder(), 'store'));
    const keeper = await filled(store);
    const book = await keeper.open('local');
    let writing = true;
    const writer = (async () => {
      while (writing) await book.record([saved('x', 'X'), saved('y', 'Y'), saved('z', 'Z')], by);
    })();
    const done = await backUp(store, plan(folder), noon).finally(() => {
      writing = false;
    });
    await writer;
    const fresh = memoryStore();
    await restore(fresh, done?.path ?? '', everyIndex());
    const back = await openKeeper(fresh).open('local');
    const last = await back.entries(back.state.seq - 2, back.state.seq);
    const { first } = last[1] ?? {};
    expect(first === undefined || last.every((entry) => (entry.first ?? entry.seq) === first)).toBe(true);
    await keeper.close();
  });

  it('should leave no file, and the old ones alone, where it cannot be finished', async () => {
    const { folder, store } = await backedUp();
    const broken: Store = { ...store, scan: () => failing() };
    await expect(backUp(broken, plan(folder), noon + dayMs)).rejects.toThrow('no such disk');
    expect(await readdir(folder)).toEqual(['pipkin-2026-11-25.backup.gz']);
  });
});

// biome-ignore lint/correctness/useYield: it fails before there is anything to yield
async function* failing(): AsyncGenerator<[string, unknown]> {
  throw new Error('no such disk');
}

describe('restoring', () => {
  it('should leave a store with something in it alone', async () => {
    const { done, store } = await backedUp();
    const before = await exportsOf(store);
    await expect(restore(store, done.path, everyIndex())).rejects.toThrow('has something in it');
    expect(await exportsOf(store)).toEqual(before);
  });

  it('should refuse a file that is not whole, wherever it was cut, before it writes anything', async () => {
    const { done } = await backedUp();
    const bytes = await readFile(done.path);
    for (const share of [0, 0.01, 0.5, 0.9, 0.999]) {
      const map = new Map<string, string>();
      await writeFile(done.path, bytes.subarray(0, Math.floor(bytes.length * share)));
      await expect(restore(memoryStore(map), done.path, everyIndex())).rejects.toThrow(
        /not whole|no backup file/,
      );
      expect(map.size).toBe(0);
    }
  });

  it('should refuse a file with a changed letter, a line less, or another file', async () => {
    const { done } = await backedUp();
    const text = gunzipSync(await readFile(done.path)).toString('utf8');
    const lines = text.split('\n');
    const spoilt = [
      text.replace('Fernlea hand balm', 'Fernlea hand bald'),
      lines.toSpliced(2, 1).join('\n'),
      `${text}{}\n`,
      text.replace('"v":1', '"v":9'),
      '{"kind":"pipkin-book","v":1,"entries":[]}',
      '',
    ];
    for (const each of spoilt) {
      await writeFile(done.path, gzipSync(each));
      const map = new Map<string, string>();
      await expect(restore(memoryStore(map), done.path, everyIndex())).rejects.toThrow(
        /not whole|no backup|no entry|has a hole/,
      );
      expect(map.size).toBe(0);
    }
    await writeFile(done.path, text);
    await expect(restore(memoryStore(), done.path, everyIndex())).rejects.toThrow('cannot be unpacked');
    await rm(done.path);
    await expect(restore(memoryStore(), done.path, everyIndex())).rejects.toMatchObject({ code: 'ENOENT' });
  });

  it('should be known as cut off, and begin anew', async () => {
    const { done, store } = await backedUp();
    const map = new Map<string, string>();
    const fresh = memoryStore(map);
    let writes = 0;
    const failingStore: Store = {
      ...fresh,
      writeAll: (changes) => {
        writes += 1;
        return writes > 4 ? Promise.reject(new Error('cut off')) : fresh.writeAll(changes);
      },
    };
    await expect(restore(failingStore, done.path, everyIndex())).rejects.toThrow();
    expect(await isHalfRestored(fresh)).toBe(true);
    await restore(fresh, done.path, everyIndex());
    expect(await isHalfRestored(fresh)).toBe(false);
    expect(await exportsOf(fresh)).toEqual(await exportsOf(store));
  });
});
