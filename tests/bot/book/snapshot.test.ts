import { describe, expect, it } from 'vitest';
import { memoryStore } from '../../../bot/book/keeper-memory.ts';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { restOf, snapshotHead, snapshotPage, snapshotPages, stateFrom } from '../../../bot/book/snapshot.ts';
import type { Change } from '../../../bot/book/store.ts';
import { type BookEvent, emptyBook } from '../../../core/book.ts';
import { by, saved } from '../../helpers/book.ts';

const bought = (at: number): BookEvent => ({
  kind: 'lot-bought',
  lot: `K${at}`,
  ingredient: 'beeswax',
  grams: 500,
  on: '2026-11-25',
});

const noted: BookEvent = {
  kind: 'price-noted',
  thing: 'beeswax',
  price: '14.50',
  currency: 'EUR',
  pack: { amount: 500, unit: 'g' },
};

/** A state with every kind of list, made by the book itself. */
const filled = async () => {
  const book = await openKeeper(memoryStore()).open('local');
  await book.record([...Array.from({ length: 400 }, (_, at) => bought(at)), noted, saved('r', 'Balm')], by);
  return book.state;
};

describe('a state in pages', () => {
  it('should be the same when it is put together again, by way of JSON', async () => {
    const state = await filled();
    const pages = [...snapshotPages(state)];
    const head = {
      v: 2 as const,
      group: 'local',
      slot: 'a' as const,
      pages: pages.length,
      rest: restOf(state),
    };
    const read = JSON.parse(JSON.stringify({ head, pages }));
    const again = stateFrom(
      snapshotHead.parse(read.head),
      read.pages.map((page: unknown) => snapshotPage.parse(page)),
    );
    expect(again).toEqual(state);
    expect(again?.bench?.lots.size).toBe(400);
    expect(pages.length).toBeGreaterThan(3);
    for (const { rows } of pages) expect(rows.length).toBeLessThanOrEqual(150);
  });

  it('should be nothing when it does not fit', () => {
    const head = {
      v: 2 as const,
      group: 'local',
      slot: 'a' as const,
      pages: 1,
      rest: restOf({ ...emptyBook, seq: 1 }),
    };
    expect(stateFrom(head, [{ part: 'recipes', rows: [['r', { id: 'other' }]] }])).toBeUndefined();
    expect(stateFrom({ ...head, rest: { ...head.rest, more: 1 } }, [])).toBeUndefined();
  });
});

describe('a snapshot of a large book', () => {
  // Each write is slow here, and there are many pages: a save that comes meanwhile must not wait for all of them.
  it('should let entries through between its pages', async () => {
    const store = memoryStore();
    const order: string[] = [];
    const writeAll = async (changes: readonly Change[]): Promise<void> => {
      await new Promise((resolve) => setTimeout(resolve, 1));
      order.push(changes.some(({ key }) => key.includes('/s/')) ? 'page' : 'other');
      return store.writeAll(changes);
    };
    const book = await openKeeper({ ...store, writeAll }).open('local');
    await book.record(
      Array.from({ length: 900 }, (_, at) => bought(at)),
      by,
    );
    order.length = 0;
    for (let at = 0; at < 3; at++) await book.record(saved('r', `Balm ${at}`), by);
    expect(order.filter((each) => each === 'page').length).toBeGreaterThan(0);
    expect(order.filter((each) => each === 'page').length).toBeLessThan(6);
    expect(book.state.seq).toBe(903);
  });
});
