import { Keyv, type KeyvStoreAdapter } from 'keyv';
import { describe, expect, it, onTestFinished } from 'vitest';
import { LmdbAdapter, maxKeyBytes } from '../../../bot/book/lmdb-adapter.ts';
import { openStore } from '../../../bot/book/store.ts';
import { NotRecorded } from '../../../bot/book/trouble.ts';
import { freshFolder } from '../../helpers/book.ts';
import { usePostgres } from '../../helpers/use-postgres.ts';

const pg = usePostgres();

const explain = (cause: unknown) => new NotRecorded('failed', { cause });

const lmdb = async (folder?: string): Promise<LmdbAdapter> => {
  const adapter = new LmdbAdapter(folder ?? (await freshFolder()), {
    readOnly: false,
    explain,
  });
  onTestFinished(() => adapter.disconnect());
  return adapter;
};

const postgres = async (): Promise<KeyvStoreAdapter> => {
  const store = await openStore(await pg.server.database());
  onTestFinished(() => store.close());
  return store.keyv.store;
};

const stores: Record<string, () => Promise<KeyvStoreAdapter | Map<string, string>>> = {
  'a plain Map': async () => new Map<string, string>(),
  'the lmdb adapter': () => lmdb(),
  'the PostgreSQL adapter': postgres,
};

const entriesOf = async (keyv: Keyv): Promise<[string, unknown][]> => {
  const entries: [string, unknown][] = [];
  for await (const [key, value] of keyv.iterator?.(undefined) ?? []) entries.push([key, value]);
  return entries.sort(([a], [b]) => (a < b ? -1 : 1));
};

describe.each(Object.entries(stores))('keyv over %s', (_name, makeStore) => {
  const make = async (options: { namespace?: string } = {}): Promise<Keyv> =>
    new Keyv({ store: await makeStore(), throwOnErrors: true, ...options });

  it('should give back what was set, and undefined for what was not', async () => {
    const keyv = await make();
    expect(await keyv.set('balm', { grams: 12.5 })).toBe(true);
    expect(await keyv.get('balm')).toEqual({ grams: 12.5 });
    expect(await keyv.get('salve')).toBeUndefined();
  });

  it('should replace a value', async () => {
    const keyv = await make();
    await keyv.set('balm', 'first');
    await keyv.set('balm', 'second');
    expect(await keyv.get('balm')).toBe('second');
  });

  it('should say whether there was something to delete', async () => {
    const keyv = await make();
    await keyv.set('balm', 1);
    expect(await keyv.delete('balm')).toBe(true);
    expect(await keyv.delete('balm')).toBe(false);
    expect(await keyv.get('balm')).toBeUndefined();
  });

  it('should read many in the order asked for, with holes', async () => {
    const keyv = await make();
    await keyv.set('a', 1);
    await keyv.set('c', 3);
    expect(await keyv.getMany(['c', 'b', 'a'])).toEqual([3, undefined, 1]);
    expect(await keyv.getMany([])).toEqual([]);
  });

  it('should write and delete many', async () => {
    const keyv = await make();
    await keyv.setMany([
      { key: 'a', value: 1 },
      { key: 'b', value: 2 },
    ]);
    expect(await keyv.getMany(['a', 'b'])).toEqual([1, 2]);
    expect(await keyv.delete(['a', 'b'])).toBe(true);
    expect(await keyv.getMany(['a', 'b'])).toEqual([undefined, undefined]);
  });

  it('should know what it has', async () => {
    const keyv = await make();
    await keyv.set('a', 1);
    expect(await keyv.has('a')).toBe(true);
    expect(await keyv.has('b')).toBe(false);
    expect(await keyv.has(['a', 'b'])).toEqual([true, false]);
  });

  it('should keep any text in values and keys', async () => {
    const keyv = await make();
    const texts = [
      'Ringelblume ä',
      'calèndula',
      '金盞花',
      '🌼🫙',
      'a\u0000b',
      '\uFEFFbom',
      ':colon',
      '"quoted"\n\t',
      'x',
    ];
    // No key of ours has a zero character, and PostgreSQL's text cannot hold one.
    const keyOf = (text: string): string => `key ${text.replace('\0', '')}/..\\%`;
    for (const text of texts) await keyv.set(keyOf(text), text);
    for (const text of texts) expect(await keyv.get(keyOf(text))).toBe(text);
  });

  it('should keep a value of 1 MB', async () => {
    const keyv = await make();
    const large = 'ä'.repeat(512 * 1024);
    await keyv.set('large', large);
    expect(await keyv.get('large')).toBe(large);
  });

  it('should walk through all entries', async () => {
    const keyv = await make();
    await keyv.set('b', 2);
    await keyv.set('a', 1);
    expect(await entriesOf(keyv)).toEqual([
      ['a', 1],
      ['b', 2],
    ]);
  });

  it('should be empty after clear', async () => {
    const keyv = await make();
    await keyv.set('a', 1);
    await keyv.clear();
    expect(await entriesOf(keyv)).toEqual([]);
  });

  it('should keep namespaces apart', async () => {
    const store = await makeStore();
    const herbs = new Keyv({ store, namespace: 'herbs', throwOnErrors: true });
    const waxes = new Keyv({ store, namespace: 'waxes', throwOnErrors: true });
    await herbs.set('a', 'calendula');
    await waxes.set('a', 'beeswax');
    expect([await herbs.get('a'), await waxes.get('a')]).toEqual(['calendula', 'beeswax']);
    await herbs.delete('a');
    expect([await herbs.get('a'), await waxes.get('a')]).toEqual([undefined, 'beeswax']);
  });

  it('should take many writes at once', async () => {
    const keyv = await make();
    const numbers = Array.from({ length: 500 }, (_, at) => at);
    await Promise.all(numbers.map((at) => keyv.set(`k${at}`, at)));
    expect(await keyv.getMany(numbers.map((at) => `k${at}`))).toEqual(numbers);
  });
});

describe('the PostgreSQL adapter', () => {
  it('should refuse keys it could not keep apart', async () => {
    const adapter = await postgres();
    for (const key of ['', 'ä'.repeat(maxKeyBytes / 2 + 1), 'half \ud83c', 'zero \0'])
      await expect(adapter.set(key, 'x')).rejects.toThrow(RangeError);
    await adapter.set('k'.repeat(maxKeyBytes), 'longest');
    expect(await adapter.get('k'.repeat(maxKeyBytes))).toBe('longest');
  });
});

describe('the lmdb adapter', () => {
  it('should clear and walk through one namespace only', async () => {
    const adapter = await lmdb();
    const herbs = new Keyv({
      store: adapter,
      namespace: 'herbs',
      throwOnErrors: true,
    });
    const waxes = new Keyv({
      store: adapter,
      namespace: 'waxes',
      throwOnErrors: true,
    });
    await herbs.set('a', 'calendula');
    await waxes.set('a', 'beeswax');
    adapter.namespace = 'herbs';
    expect(await entriesOf(herbs)).toEqual([['a', 'calendula']]);
    await herbs.clear();
    expect([await herbs.get('a'), await waxes.get('a')]).toEqual([undefined, 'beeswax']);
  });

  it('should refuse keys it could not keep apart', async () => {
    const adapter = await lmdb();
    await expect(adapter.set('', 'x')).rejects.toThrow(RangeError);
    await expect(adapter.set('ä'.repeat(maxKeyBytes / 2 + 1), 'x')).rejects.toThrow(RangeError);
    await expect(adapter.set('half \ud83c', 'x')).rejects.toThrow(RangeError);
    await adapter.set('k'.repeat(maxKeyBytes), 'longest');
    expect(await adapter.get('k'.repeat(maxKeyBytes))).toBe('longest');
  });

  it('should find everything again after it was closed', async () => {
    const folder = await freshFolder();
    const first = await lmdb(folder);
    await first.set('a', 'calendula');
    await first.disconnect();
    const second = await lmdb(folder);
    expect(await second.get('a')).toBe('calendula');
  });

  it('should write what is still waiting when it is closed', async () => {
    const folder = await freshFolder();
    const first = await lmdb(folder);
    const waiting = first.set('a', 'calendula');
    await first.disconnect();
    await waiting;
    expect(await (await lmdb(folder)).get('a')).toBe('calendula');
  });

  it('should refuse to write or read after it was closed', async () => {
    const adapter = await lmdb();
    await adapter.disconnect();
    await expect(adapter.set('a', 'x')).rejects.toThrow(NotRecorded);
    await expect(adapter.get('a')).rejects.toThrow('closed');
  });

  it('should work in a folder whose name looks like a file', async () => {
    const folder = `${await freshFolder()}/store.v2`;
    await (await lmdb(folder)).set('a', 'calendula');
    const { readdir } = await import('node:fs/promises');
    expect(await readdir(folder)).toContain('data.mdb');
  });
});
