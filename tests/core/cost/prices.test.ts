import { describe, expect, it } from 'vitest';
import { wholeSnapshot } from '../../../bot/book/snapshot.ts';
import {
  afterEntries,
  type BookEntry,
  type BookEvent,
  bookEntry,
  bookState,
  emptyBook,
} from '../../../core/book.ts';
import { containerThing } from '../../../core/cost/prices.ts';

const entries = (events: readonly BookEvent[]): BookEntry[] =>
  events.map((event, at) => ({
    v: 1,
    group: 'local',
    seq: at + 1,
    at: `2026-11-${String(at + 10)}T09:00:00.000Z`,
    who: 'me',
    event,
  }));

const noted = (price: string, thing = 'shea-butter'): BookEvent => ({
  kind: 'price-noted',
  thing,
  price,
  currency: 'EUR',
  pack: { amount: 1000, unit: 'g' },
});
const labour: BookEvent = { kind: 'labour-set', ratePerHour: '15', currency: 'EUR', hours: 2 };

describe('prices in the book', () => {
  it('should keep the last one with its day, as typed, and the one before', () => {
    const { prices } = afterEntries(emptyBook, entries([noted('18'), noted('17.90')]));
    const pack = { amount: 1000, unit: 'g' };
    expect(prices).toEqual({
      'shea-butter': {
        price: '17.90',
        currency: 'EUR',
        pack,
        at: '2026-11-11',
        before: [{ price: '18', currency: 'EUR', pack, at: expect.any(String) }],
      },
    });
  });

  it('should go when removed, and leave an older state as it was', () => {
    const before = afterEntries(emptyBook, entries([noted('18'), noted('9', 'olive-oil')]));
    const gone: BookEntry = {
      ...(entries([{ kind: 'price-removed', thing: 'shea-butter' }])[0] as BookEntry),
      seq: 3,
    };
    const after = afterEntries(before, [gone]);
    expect(Object.keys(after.prices ?? {})).toEqual(['olive-oil']);
    expect(Object.keys(before.prices ?? {})).toEqual(['shea-butter', 'olive-oil']);
  });

  it('should not be in a book where none was ever noted', () => {
    const state = afterEntries(
      emptyBook,
      entries([{ kind: 'settings-changed', settings: { region: 'uk' } }]),
    );
    expect(Object.keys(state).toSorted()).toEqual(['recipes', 'seq', 'settings', 'v']);
  });

  it('should pass the schemas of entry, book and snapshot', () => {
    const all = entries([
      noted('18'),
      labour,
      { kind: 'yield-noted', herb: 'calendula', herbG: 40, oilInG: 320, oilOutG: 260 },
    ]);
    for (const entry of all) expect(bookEntry.parse(JSON.parse(JSON.stringify(entry)))).toEqual(entry);
    const state = afterEntries(emptyBook, all);
    expect(bookState.parse(state)).toEqual(state);
    expect(state.labour).toEqual({ ratePerHour: '15', currency: 'EUR', hours: 2 });
    const snapshot = { v: 1, group: 'local', state: JSON.parse(JSON.stringify(state)) };
    expect(wholeSnapshot.parse(snapshot).state).toEqual(state);
  });

  it('should not take a price that is no plain decimal', () => {
    for (const price of ['', '-1', '1e3', '1,50', '1.1234567', 'NaN', '1.']) {
      expect(bookEntry.safeParse(entries([noted(price)])[0]).success).toBe(false);
    }
  });

  it('should tell containers apart by what they hold', () => {
    expect([containerThing('tin'), containerThing('tin', { amount: 15, unit: 'ml' })]).toEqual([
      'tin',
      'tin-15-ml',
    ]);
  });
});
