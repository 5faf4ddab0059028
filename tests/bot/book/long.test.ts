import { describe, expect, it } from 'vitest';
import { settleAll } from '../../../bot/book/journal-long.ts';
import { memoryStore } from '../../../bot/book/keeper-memory.ts';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { indexPrefix, keysOf } from '../../../bot/book/names.ts';
import type { Change, Store } from '../../../bot/book/store.ts';
import { NotRecorded } from '../../../bot/book/trouble.ts';
import { emptyBook } from '../../../core/book.ts';
import { by, saved } from '../../helpers/book.ts';

const many = (count: number) => Array.from({ length: count }, (_, at) => saved(`r${at}`, `Balm ${at}`, 1));

/** A store that stops working after `writes` more writes, as if the process had been killed there. */
const stopping = (store: Store) => {
  const control = { writes: Number.POSITIVE_INFINITY };
  const writeAll = async (changes: readonly Change[]): Promise<void> => {
    control.writes -= 1;
    if (control.writes < 0) throw new NotRecorded('disk-full');
    return store.writeAll(changes);
  };
  return { store: { ...store, writeAll }, control };
};

const keysIn = async (store: Store): Promise<string[]> => {
  const keys: string[] = [];
  for await (const [key] of store.scan('')) keys.push(key);
  return keys;
};

describe('several events of one request', () => {
  it.each([1, 2, 99, 100, 101, 350])('should all be recorded: %i', async (count) => {
    const map = new Map<string, string>();
    const book = await openKeeper(memoryStore(map)).open('local');
    const entries = await book.record(many(count), by);
    expect(entries.map(({ seq }) => seq)).toEqual(Array.from({ length: count }, (_, at) => at + 1));
    const again = await openKeeper(memoryStore(map)).open('local');
    expect(again.state).toEqual(book.state);
    expect(Object.keys(again.state.recipes)).toHaveLength(count);
    expect(map.has(keysOf('local').mark)).toBe(false);
  });

  it('should come to nothing when there are none', async () => {
    const book = await openKeeper(memoryStore()).open('local');
    expect(await book.record([], by)).toEqual([]);
    expect(book.state).toEqual(emptyBook);
  });

  it('should not be recorded at all when one of them does not fit', async () => {
    const book = await openKeeper(memoryStore()).open('local');
    await expect(book.record([saved('r', 'Balm'), saved('Not An Id', 'Balm')], by)).rejects.toThrow();
    expect(book.state).toEqual(emptyBook);
  });

  // 350 events are four writes. Wherever it stops, the book is the old one: at once, for the next writing, and for
  // another process.
  it.each([0, 1, 2, 3])('should leave no trace when writing stops after %i writes', async (writes) => {
    const map = new Map<string, string>();
    const { store, control } = stopping(memoryStore(map));
    const book = await openKeeper(store).open('local');
    await book.record(saved('old', 'Old'), by);
    const before = book.state;
    control.writes = writes;
    await expect(book.record(many(350), by)).rejects.toMatchObject({ reason: 'disk-full' });
    expect(book.state).toBe(before);
    const elsewhere = await openKeeper(memoryStore(new Map(map))).open('local');
    expect(elsewhere.state).toEqual(before);
    control.writes = Number.POSITIVE_INFINITY;
    expect((await book.record(saved('new', 'New'), by)).seq).toBe(2);
    expect(await keysIn(store)).toEqual([keysOf('local').entry(1), keysOf('local').entry(2)]);
  });
});

describe('a whole history in place of a demo', () => {
  const filled = async () => {
    const map = new Map<string, string>();
    const { store, control } = stopping(memoryStore(map));
    const book = await openKeeper(store).open('local');
    for (const name of ['one', 'two']) await book.record(saved(name, name), by);
    const at = new Date(by.at).toISOString();
    const past = many(350).map((event, index) => ({ seq: index + 1, at, who: 'me', event }));
    const adopt = () => book.change(() => ({ ok: true, value: { events: [], past, value: undefined } }), by);
    return { map, store, control, book, adopt };
  };

  it('should stand instead of it', async () => {
    const { map, book, adopt } = await filled();
    await adopt();
    expect(Object.keys(book.state.recipes)).toHaveLength(350);
    expect((await openKeeper(memoryStore(map)).open('local')).state).toEqual(book.state);
  });

  // 350 entries are four writes; after the last one it stands.
  it.each([0, 1, 2, 3])(
    'should leave the demo as it was when writing stops after %i writes',
    async (writes) => {
      const { map, control, book, adopt } = await filled();
      const [before, keys] = [book.state, new Map(map)];
      control.writes = writes;
      await expect(adopt()).rejects.toMatchObject({ reason: 'disk-full' });
      expect(book.state).toBe(before);
      const killed = new Map(map);
      expect((await openKeeper(memoryStore(killed)).open('local')).state).toEqual(before);
      expect(killed).toEqual(keys);
      control.writes = Number.POSITIVE_INFINITY;
      await adopt();
      expect((await openKeeper(memoryStore(map)).open('local')).state).toEqual(book.state);
    },
  );
});

describe('keys alongside the entries', () => {
  const counting = (store: Store) =>
    openKeeper(store, {
      alongside: ({ group, after }) => [
        { key: keysOf(group).index('waiting'), value: { group, seq: after.seq } },
      ],
    });

  it('should be written with them, or not at all', async () => {
    const { store, control } = stopping(memoryStore());
    const book = await counting(store).open('local');
    await book.record(saved('r', 'Balm'), by);
    await book.record(many(150), by);
    const rows = async () => {
      const values: unknown[] = [];
      for await (const [, value] of store.scan(indexPrefix('waiting'))) values.push(value);
      return values;
    };
    expect(await rows()).toEqual([{ group: 'local', seq: 151 }]);
    for (const writes of [0, 1]) {
      control.writes = writes;
      await expect(book.record(many(150), by)).rejects.toThrow(NotRecorded);
      expect(await rows()).toEqual([{ group: 'local', seq: 151 }]);
    }
  });
});

describe('forgetting', () => {
  const filled = async () => {
    const map = new Map<string, string>();
    const { store, control } = stopping(memoryStore(map));
    const keeper = openKeeper(store, {
      alongside: ({ group, after }) => [{ key: keysOf(group).index('waiting'), value: after.seq }],
    });
    const other = await keeper.open('local2');
    await other.record(saved('theirs', 'Theirs'), by);
    const book = await keeper.open('local');
    for (let at = 0; at < 6; at++) await book.record(many(90), by);
    // The snapshot that is due by now is written behind the entries.
    while (!map.has(keysOf('local').snapshot)) await new Promise((resolve) => setTimeout(resolve, 1));
    return {
      map,
      store,
      control,
      keeper,
      book,
      others: [keysOf('local2').entry(1), keysOf('local2').index('waiting')],
    };
  };

  it('should leave nothing of the group, and everything of the others', async () => {
    const { book, store, others } = await filled();
    expect((await keysIn(store)).some((key) => key.includes('/s'))).toBe(true);
    expect(await book.forget()).toBe('gone');
    expect(book.state).toEqual(emptyBook);
    expect(await keysIn(store)).toEqual(others);
  });

  it('should leave a book that can be written to again', async () => {
    const { book } = await filled();
    await book.forget();
    expect((await book.record(saved('r', 'Balm'), by)).seq).toBe(1);
    expect(Object.keys(book.state.recipes)).toEqual(['r']);
  });

  it('should change nothing when it cannot begin', async () => {
    const { book, control, store } = await filled();
    const [before, keys] = [book.state, await keysIn(store)];
    control.writes = 0;
    await expect(book.forget()).rejects.toMatchObject({ reason: 'disk-full' });
    expect(book.state).toBe(before);
    expect(await keysIn(store)).toEqual(keys);
  });

  it.each([1, 2, 4])('should be finished later when it stops after %i writes', async (writes) => {
    for (const finish of ['writing', 'opening', 'start'] as const) {
      const { book, control, map, others } = await filled();
      control.writes = writes;
      expect(await book.forget()).toBe('begun');
      expect(book.state).toEqual(emptyBook);
      control.writes = Number.POSITIVE_INFINITY;
      if (finish === 'writing') {
        expect((await book.record(saved('r', 'Balm'), by)).seq).toBe(1);
        await book.forget();
      }
      const again = memoryStore(map);
      if (finish === 'opening') expect((await openKeeper(again).open('local')).state).toEqual(emptyBook);
      if (finish === 'start') await settleAll(again);
      expect(await keysIn(again)).toEqual(others);
    }
  });
});
