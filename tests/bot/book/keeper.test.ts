import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { snapshotEvery } from '../../../bot/book/keeper-book.ts';
import { memoryKeeper, memoryStore } from '../../../bot/book/keeper-memory.ts';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { keysOf } from '../../../bot/book/names.ts';
import type { Change } from '../../../bot/book/store.ts';
import { NotRecorded } from '../../../bot/book/trouble.ts';
import { emptyBook } from '../../../core/book.ts';
import { fail, ok } from '../../../core/result.ts';
import { by, saved } from '../../helpers/book.ts';

/** A memory store whose writes fail while `fault` is set, and whose calls are counted. */
const shaky = () => {
  const store = memoryStore();
  const control = {
    fault: undefined as Error | undefined,
    failOnly: '',
    reads: 0,
    writing: 0,
    mostWriting: 0,
  };
  const { keyv } = store;
  const getMany = keyv.getMany.bind(keyv);
  const writeAll = async (changes: readonly Change[]): Promise<void> => {
    control.writing += 1;
    control.mostWriting = Math.max(control.mostWriting, control.writing);
    await new Promise((resolve) => setTimeout(resolve, 1));
    control.writing -= 1;
    if (control.fault && changes.some(({ key }) => key.includes(control.failOnly))) throw control.fault;
    return store.writeAll(changes);
  };
  keyv.getMany = ((keys: string[]) => {
    control.reads += 1;
    return getMany(keys);
  }) as typeof keyv.getMany;
  return { store: { ...store, writeAll }, control };
};

const collectGarbage = async (): Promise<void> => {
  setFlagsFromString('--expose-gc');
  const collect: () => void = runInNewContext('gc');
  await new Promise((resolve) => setImmediate(resolve));
  collect();
  await new Promise((resolve) => setImmediate(resolve));
};

describe('recording', () => {
  it('should start with an empty book', async () => {
    const book = await memoryKeeper().open('local');
    expect([book.group, book.state]).toEqual(['local', emptyBook]);
  });

  it('should give the entry back and show it in the state', async () => {
    const book = await memoryKeeper().open('local');
    const entry = await book.record(saved('r1', 'Fernlea balm'), by);
    expect(entry).toMatchObject({
      v: 1,
      group: 'local',
      seq: 1,
      at: '2026-11-25T09:00:00.000Z',
      who: 'me',
    });
    expect(book.state.recipes.r1).toMatchObject({
      name: 'Fernlea balm',
      versions: [1],
    });
    expect(await book.entry(1)).toEqual(entry);
  });

  it('should keep old versions readable', async () => {
    const book = await memoryKeeper().open('local');
    await book.record(saved('r1', 'Fernlea balm', 2), by);
    await book.record(saved('r1', 'Fernlea balm', 5), by);
    expect(book.state.recipes.r1?.versions).toEqual([1, 2]);
    expect(await book.entry(1)).toMatchObject({ event: { lines: [{}, {}] } });
  });

  it('should number entries one by one however many are recorded at once', async () => {
    const { store, control } = shaky();
    const keeper = openKeeper(store);
    const book = await keeper.open('local');
    const entries = await Promise.all(
      Array.from({ length: 60 }, (_, at) => book.record(saved(`r${at}`, `B ${at}`), by)),
    );
    expect(entries.map(({ seq }) => seq)).toEqual(Array.from({ length: 60 }, (_, at) => at + 1));
    expect(Object.keys(book.state.recipes)).toHaveLength(60);
    expect(control.mostWriting).toBe(1);
  });

  it('should write for several groups at the same time', async () => {
    const { store, control } = shaky();
    const keeper = openKeeper(store);
    const books = await Promise.all(['a', 'b', 'c'].map((group) => keeper.open(group)));
    await Promise.all(books.map((book) => book.record(saved('r', 'Balm'), by)));
    expect(control.mostWriting).toBe(3);
  });

  it('should leave no trace of an event that could not be written, and go on after it', async () => {
    const { store, control } = shaky();
    const book = await openKeeper(store).open('local');
    await book.record(saved('r1', 'Balm'), by);
    const before = book.state;
    control.fault = new NotRecorded('disk-full');
    await expect(book.record(saved('r2', 'Salve'), by)).rejects.toMatchObject({
      code: 'not-recorded',
      reason: 'disk-full',
    });
    expect(book.state).toBe(before);
    control.fault = new Error('anything else');
    await expect(book.record(saved('r2', 'Salve'), by)).rejects.toMatchObject({
      code: 'not-recorded',
      reason: 'failed',
    });
    control.fault = undefined;
    expect((await book.record(saved('r2', 'Salve'), by)).seq).toBe(2);
  });

  it('should not be troubled by a snapshot that cannot be written', async () => {
    const { store, control } = shaky();
    const keeper = openKeeper(store);
    const book = await keeper.open('local');
    control.fault = new NotRecorded('disk-full');
    control.failOnly = '/s';
    const records = Array.from({ length: snapshotEvery + 1 }, () => book.record(saved('r', 'Balm', 1), by));
    expect((await Promise.all(records)).at(-1)?.seq).toBe(snapshotEvery + 1);
    expect(await store.keyv.get(keysOf('local').snapshot)).toBeUndefined();
    const again = await openKeeper(store).open('local');
    expect(again.state).toEqual(book.state);
  });

  it('should refuse an event that does not fit, before anything is written', async () => {
    const book = await memoryKeeper().open('local');
    await expect(book.record(saved('Not An Id', 'Balm'), by)).rejects.toThrow();
    await expect(book.record(saved('r', ''), by)).rejects.toThrow();
    expect(book.state).toBe(emptyBook);
    expect((await book.record(saved('r', 'Balm'), by)).seq).toBe(1);
  });

  it('should not be changed by what the caller does to the event afterwards', async () => {
    const book = await memoryKeeper().open('local');
    const event = saved('r', 'Balm', 1);
    await book.record(event, by);
    if (event.kind === 'recipe-saved') event.lines[0] = { ingredient: 'sand', amount: 1, unit: 'kg' };
    expect(book.state.recipes.r?.lines[0]?.ingredient).toBe('herb-0');
  });

  it('should say that a store that can only be read records nothing', async () => {
    const book = await openKeeper(memoryStore(new Map(), true)).open('local');
    await expect(book.record(saved('r', 'Balm'), by)).rejects.toMatchObject({
      reason: 'read-only',
    });
  });
});

describe('opening', () => {
  it('should read a book once for all who ask at the same time', async () => {
    const { store, control } = shaky();
    const keeper = openKeeper(store);
    const books = await Promise.all(Array.from({ length: 20 }, () => keeper.open('local')));
    expect(new Set(books).size).toBe(1);
    expect(control.reads).toBe(1);
  });

  it('should try again after an opening that failed', async () => {
    const { store } = shaky();
    const keeper = openKeeper(store);
    await store.keyv.set(keysOf('local').entry(1), { v: 1 });
    await expect(keeper.open('local')).rejects.toMatchObject({
      code: 'damaged',
    });
    await store.keyv.delete(keysOf('local').entry(1));
    expect((await keeper.open('local')).state.seq).toBe(0);
  });

  it('should refuse names it cannot use', async () => {
    await expect(memoryKeeper().open('')).rejects.toMatchObject({
      code: 'bad-group',
    });
    await expect(memoryKeeper().open('x'.repeat(201))).rejects.toMatchObject({
      code: 'bad-group',
    });
  });

  it('should never have two books of one group, even when the first was put away', async () => {
    const keeper = memoryKeeper({ maxOpen: 2 });
    const held = await keeper.open('a');
    const late = held.record(saved('r0', 'Late'), by);
    for (const group of ['b', 'c', 'd', 'e']) await keeper.open(group);
    const again = await keeper.open('a');
    expect(again).toBe(held);
    const both = await Promise.all([
      late,
      held.record(saved('r1', 'One'), by),
      again.record(saved('r2', 'Two'), by),
    ]);
    expect(both.map(({ seq }) => seq)).toEqual([1, 2, 3]);
  });

  it('should read a book anew once nobody holds it', async () => {
    const { store, control } = shaky();
    const keeper = openKeeper(store, { maxOpen: 3 });
    for (let at = 0; at < 300; at++) await (await keeper.open(`g${at}`)).record(saved('r', `Balm ${at}`), by);
    const reads = control.reads;
    await collectGarbage();
    for (let at = 0; at < 300; at++)
      expect((await keeper.open(`g${at}`)).state.recipes.r?.name).toBe(`Balm ${at}`);
    // All but the three that were kept, and a few that the engine may not have let go of.
    expect(control.reads - reads).toBeGreaterThan(280);
  });

  it('should put away what nobody asked for in a long time', async () => {
    let now = 0;
    const { store } = shaky();
    const keeper = openKeeper(store, { idleMs: 1000, clock: () => now });
    const held = await keeper.open('a');
    await keeper.open('b');
    now = 800;
    await keeper.open('b');
    now = 1500;
    await keeper.open('c');
    expect(keeper.books()).toBe(2);
    // Somebody still holds it: there is no second one.
    expect(await keeper.open('a')).toBe(held);
    expect(keeper.books()).toBe(3);
    now = 9000;
    await keeper.open('d');
    expect(keeper.books()).toBe(1);
  });

  it('should refuse to open after close', async () => {
    const keeper = memoryKeeper();
    await keeper.close();
    await expect(keeper.open('a')).rejects.toMatchObject({ code: 'closed' });
    await keeper.close();
  });
});

describe('a change decided in its turn', () => {
  it('should see what was written before it, however many ask at the same moment', async () => {
    const keeper = memoryKeeper();
    const book = await keeper.open('g');
    const take = () =>
      book.change((state) => {
        const left = state.bench?.lots.get('A')?.leftG ?? 0;
        if (left < 10) return fail({ code: 'none-left', left });
        const draws = [{ lot: 'A', grams: 10 }];
        return ok({
          events: [{ kind: 'stock-taken' as const, draws, how: 'used' as const, on: '2026-11-25' }],
          value: left,
        });
      }, by);
    await book.record(
      { kind: 'lot-bought', lot: 'A', ingredient: 'beeswax', grams: 95, on: '2026-11-25' },
      by,
    );
    const results = await Promise.all(Array.from({ length: 50 }, take));
    expect(results.filter(({ ok: done }) => done)).toHaveLength(9);
    expect(results.at(-1)).toEqual({ ok: false, problem: { code: 'none-left', left: 5 } });
    expect(book.state.bench?.lots.get('A')?.leftG).toBe(5);
    expect(book.state.seq).toBe(10);
  });

  it('should record nothing for no events, and hand back what was decided', async () => {
    const book = await memoryKeeper().open('g');
    const nothing = await book.change(() => ok({ events: [], value: 'as it was' }), by);
    expect(nothing).toMatchObject({ ok: true, value: { value: 'as it was', entries: [] } });
    expect(book.state.seq).toBe(0);
  });
});
