import { createHash } from 'node:crypto';
import { copyFile, mkdir, readdir, readFile, rm, truncate, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { checkLmdbFile } from '../../../bot/book/lmdb-check.ts';
import { BrokenFile } from '../../../bot/book/lmdb-file.ts';
import { openStore } from '../../../bot/book/store.ts';
import { by, freshFolder, runChild, saved } from '../../helpers/book.ts';

const pageBytes = 4096;

// A store with short and long values, deleted ones (so that there are free pages) and a tree of several levels.
const makeStore = async (folder: string): Promise<void> => {
  const store = await openStore(folder);
  const keeper = openKeeper(store);
  for (let at = 0; at < 40; at++) await store.keyv.set(`waste-${at}`, 'w'.repeat(at * 700));
  const books = await Promise.all(['local', 'Fernlea group', 'c'].map((group) => keeper.open(group)));
  const all = books.flatMap((book) =>
    Array.from({ length: 120 }, (_, at) => book.record(saved(`r${at % 30}`, `B ${at}`, 1 + (at % 60)), by)),
  );
  await Promise.all(all);
  for (let at = 0; at < 40; at++) await store.keyv.delete(`waste-${at}`);
  await keeper.close();
};

const contentOf = async (folder: string): Promise<string> => {
  const store = await openStore(folder);
  const content: unknown[] = [];
  for await (const entry of store.keyv.iterator?.(undefined) ?? []) content.push(entry);
  await store.close();
  return JSON.stringify(content);
};

const hashOf = async (path: string): Promise<string> =>
  createHash('sha256')
    .update(await readFile(path))
    .digest('hex');

const withStore = async (): Promise<{
  folder: string;
  data: string;
  bytes: Buffer;
}> => {
  const folder = await freshFolder();
  await makeStore(folder);
  const data = join(folder, 'data.mdb');
  return { folder, data, bytes: await readFile(data) };
};

/** Opens the store in a process of its own, in case that ends with a signal, and expects a clear refusal. */
const expectRefusal = async (folder: string): Promise<void> => {
  const data = join(folder, 'data.mdb');
  const before = await hashOf(data).catch(() => 'none');
  const ended = await runChild('read', folder).ended;
  expect(ended).toMatchObject({
    signal: null,
    exit: 3,
    said: [{ problem: 'damaged' }],
  });
  expect(ended.said[0]?.message).toContain(`The store "${folder}" is damaged`);
  expect(ended.said[0]?.message).toContain('backup');
  expect(await hashOf(data).catch(() => 'none')).toBe(before);
};

describe('a damaged store', () => {
  it.each([0.05, 0.5, 0.95])('should be refused when cut to %d of its length', async (share) => {
    const { folder, data, bytes } = await withStore();
    await truncate(data, Math.floor(bytes.length * share));
    await expectRefusal(folder);
  });

  it('should be refused when its last page is torn', async () => {
    const { folder, data, bytes } = await withStore();
    await truncate(data, bytes.length - pageBytes / 2);
    await expectRefusal(folder);
  });

  it('should be refused when its data file is empty or gone', async () => {
    const { folder, data } = await withStore();
    await truncate(data, 0);
    await expectRefusal(folder);
    await rm(data);
    await expectRefusal(folder);
    expect(await readdir(folder)).not.toContain('data.mdb');
  });

  it('should be refused when its data file is something else', async () => {
    const { folder, data } = await withStore();
    await writeFile(data, 'not a store at all\n'.repeat(2000));
    await expectRefusal(folder);
  });

  it('should be refused when a page is torn, half of it being zeros', async () => {
    const { folder, data, bytes } = await withStore();
    const at = bytes.indexOf('herb-0');
    const torn = Buffer.from(bytes);
    torn.fill(0, at - (at % pageBytes) + pageBytes / 2, at - (at % pageBytes) + pageBytes);
    await writeFile(data, torn);
    await expectRefusal(folder);
  });

  it('should be refused when one letter of a recipe has changed', async () => {
    const { folder, data, bytes } = await withStore();
    const store = await openStore(folder);
    const value = (await store.keyv.get<{ event: { name: string } }>('g/local/e/000000000120'))?.event.name;
    await store.close();
    const flipped = Buffer.from(await readFile(data));
    let at = flipped.indexOf(`"seq":120,`);
    // Every copy of that entry, also those on pages that are free by now.
    for (; at !== -1; at = flipped.indexOf(`"seq":120,`, at + 1)) flipped[at + 7] = '3'.charCodeAt(0);
    expect([value, bytes.length]).toEqual(['B 119', flipped.length]);
    await writeFile(data, flipped);
    await expectRefusal(folder);
  });

  it('should be refused when the mark beside it has changed', async () => {
    const { folder } = await withStore();
    await writeFile(join(folder, 'store.json'), '{"kind":"pipkin-store","v":2}');
    await expect(openStore(folder)).rejects.toMatchObject({ code: 'damaged' });
  });

  it('should open again with the backup copy in its place', async () => {
    const { folder, data } = await withStore();
    const backup = await freshFolder();
    for (const name of ['data.mdb', 'store.json']) await copyFile(join(folder, name), join(backup, name));
    const content = await contentOf(folder);
    await truncate(data, 9000);
    await expectRefusal(folder);
    expect(await contentOf(backup)).toBe(content);
  });
});

describe('flipped bits', () => {
  let good: { folder: string; data: string; bytes: Buffer };
  let content: string;
  let scratch: string;

  beforeAll(async () => {
    const { mkdtemp } = await import('node:fs/promises');
    const { tmpdir } = await import('node:os');
    const folder = await mkdtemp(join(tmpdir(), 'book-'));
    await makeStore(folder);
    content = await contentOf(folder);
    const data = join(folder, 'data.mdb');
    good = { folder, data, bytes: await readFile(data) };
    scratch = join(folder, 'copy.mdb');
    return () => rm(folder, { recursive: true, force: true });
  });

  const flip = async (at: number, bit: number): Promise<Buffer> => {
    const bytes = Buffer.from(good.bytes);
    bytes.writeUInt8(bytes.readUInt8(at) ^ (1 << bit), at);
    await writeFile(scratch, bytes);
    return bytes;
  };

  const isSeen = (): boolean => {
    try {
      checkLmdbFile(scratch);
      return false;
    } catch (fault) {
      expect(fault).toBeInstanceOf(BrokenFile);
      return true;
    }
  };

  // A flip in unused space changes nothing; everywhere else it is found before the database library sees the file.
  it('should be seen, or change nothing that can be read', async () => {
    let seen = 0;
    const unseen: Buffer[] = [];
    for (let at = 17; at < good.bytes.length; at += Math.floor(good.bytes.length / 300)) {
      const bytes = await flip(at, at % 8);
      if (isSeen()) seen += 1;
      else unseen.push(bytes);
    }
    expect(seen).toBeGreaterThan(60);
    expect(unseen.length).toBeGreaterThan(0);
    for (const bytes of unseen.slice(0, 12)) {
      const folder = join(good.folder, 'again');
      await mkdir(folder);
      await writeFile(join(folder, 'data.mdb'), bytes);
      expect(await contentOf(folder)).toBe(content);
      await rm(folder, { recursive: true });
    }
  });

  it('should be seen in every field of the header in use that says where the book is', async () => {
    const newer = good.bytes.readUInt32LE(152) > good.bytes.readUInt32LE(pageBytes + 152) ? 0 : pageBytes;
    // Magic, version, page size, both trees and transaction; see MDB_meta in the library's mdb.c.
    const fields = [24, 28, 48, 54, 56, 64, 80, 88, 102, 104, 112, 120, 128, 136, 152];
    for (const field of fields) {
      for (const bit of [0, 3, 7]) {
        await flip(newer + field, bit);
        expect([field, bit, isSeen()]).toEqual([field, bit, true]);
      }
    }
  });

  it('should not be seen where there are none', async () => {
    await writeFile(scratch, good.bytes);
    expect(isSeen()).toBe(false);
  });
});
