import { describe, expect, it, onTestFinished } from 'vitest';
import { memoryStore } from '../../../bot/book/keeper-memory.ts';
import { openStore, type Store } from '../../../bot/book/store.ts';
import { maxChanges } from '../../../bot/book/store-over.ts';
import { freshFolder } from '../../helpers/book.ts';
import { usePostgres } from '../../helpers/use-postgres.ts';

const pg = usePostgres();

const stores: Record<string, () => Promise<Store>> = {
  memory: async () => memoryStore(),
  lmdb: async () => openStore(await freshFolder()),
  PostgreSQL: async () => openStore(await pg.server.database()),
};

const contentOf = async (store: Store, prefix = ''): Promise<(readonly [string, unknown])[]> => {
  const content: (readonly [string, unknown])[] = [];
  for await (const pair of store.scan(prefix)) content.push(pair);
  return content;
};

describe.each(Object.entries(stores))('a store in %s', (_name, open) => {
  const make = async (): Promise<Store> => {
    const store = await open();
    onTestFinished(() => store.close());
    return store;
  };

  it('should write and delete in one call, readable by key', async () => {
    const store = await make();
    await store.writeAll([
      { key: 'a', value: 'wax' },
      { key: 'b', value: { grams: 1 } },
    ]);
    await store.writeAll([
      { key: 'a', value: undefined },
      { key: 'c', value: [1, 2] },
    ]);
    expect(await store.keyv.getMany(['a', 'b', 'c'])).toEqual([undefined, { grams: 1 }, [1, 2]]);
  });

  it('should read by scan what single writes wrote, and the other way round', async () => {
    const store = await make();
    await store.keyv.set('a', { is: 'single' });
    await store.writeAll([{ key: 'b', value: { is: 'many' } }]);
    expect(await contentOf(store)).toEqual([
      ['a', { is: 'single' }],
      ['b', { is: 'many' }],
    ]);
    expect(await store.keyv.get('b')).toEqual({ is: 'many' });
  });

  it('should scan a prefix in the order of bytes, and nothing beside it', async () => {
    const store = await make();
    const keys = ['p', 'p/', 'p/Z', 'p/a', 'p/a/1', 'p/ä', 'p/🌼', 'p/\uFFFD', 'p0', 'q'];
    await store.writeAll([...keys].reverse().map((key) => ({ key, value: key })));
    const wanted = keys
      .filter((key) => key.startsWith('p/'))
      .sort((a, b) => Buffer.compare(Buffer.from(a), Buffer.from(b)));
    expect((await contentOf(store, 'p/')).map(([key]) => key)).toEqual(wanted);
    expect(await contentOf(store, 'r')).toEqual([]);
  });

  it('should scan more than one piece, and take writing meanwhile', async () => {
    const store = await make();
    const keys = Array.from({ length: 950 }, (_, at) => `k/${String(at).padStart(4, '0')}`);
    for (let at = 0; at < keys.length; at += maxChanges)
      await store.writeAll(keys.slice(at, at + maxChanges).map((key) => ({ key, value: 1 })));
    const seen: string[] = [];
    for await (const [key] of store.scan('k/')) {
      seen.push(key);
      if (seen.length % 100 === 0) await store.writeAll([{ key: `a/${seen.length}`, value: 1 }]);
    }
    expect(seen).toEqual(keys);
  });

  it('should refuse more changes than one write takes, and write none of them', async () => {
    const store = await make();
    const many = Array.from({ length: maxChanges + 1 }, (_, at) => ({ key: `k${at}`, value: at }));
    await expect(store.writeAll(many)).rejects.toThrow(RangeError);
    expect(await contentOf(store)).toEqual([]);
  });
});

describe.each(Object.entries(stores).slice(1))('a store in %s', (_name, open) => {
  it('should write none when one of the changes is refused', async () => {
    const store = await open();
    onTestFinished(() => store.close());
    await store.writeAll([{ key: 'a', value: 1 }]);
    const bad = [
      { key: 'a', value: 2 },
      { key: 'x'.repeat(4000), value: 1 },
    ];
    await expect(store.writeAll(bad)).rejects.toThrow();
    expect(await contentOf(store)).toEqual([['a', 1]]);
  });
});
