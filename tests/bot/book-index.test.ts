import { describe, expect, it } from 'vitest';
import type { Book } from '../../bot/book/keeper.ts';
import { memoryKeeper } from '../../bot/book/keeper-memory.ts';
import { pastEntries } from '../../bot/words/book-index.ts';
import type { BookEvent } from '../../core/book.ts';

const saved = (name: string): BookEvent => ({
  kind: 'recipe-saved',
  recipe: 'winter',
  name,
  lines: [{ ingredient: 'beeswax', amount: 100, unit: 'percent' }],
});
const bought = (lot: string): BookEvent => ({
  kind: 'lot-bought',
  lot,
  ingredient: 'beeswax',
  grams: 100,
  on: '2027-01-05',
});
const by = (who: string, at = Date.parse('2027-01-05T10:00:00Z')) => ({ who, at });
const history = { action: 'history' } as const;

/** A book that counts how many entries are read from it. */
const counted = (book: Book) => {
  const count = { entries: 0 };
  const counting = new Proxy(book, {
    get: (target, key) => {
      const value: unknown = Reflect.get(target, key);
      if (key !== 'entries') return typeof value === 'function' ? value.bind(target) : value;
      return async (from: number, to: number) => {
        const found = await target.entries(from, to);
        count.entries += found.length;
        return found;
      };
    },
  });
  return { book: counting, count };
};

const seqsOf = async (wish: Parameters<typeof pastEntries>[0], book: Book): Promise<readonly number[]> =>
  (await pastEntries({ ...wish }, book)).seqs;

describe('the index of what is past', () => {
  it('should read a journal once, and then only what came since', async () => {
    const { book, count } = counted(await memoryKeeper().open('circle'));
    for (let at = 0; at < 300; at += 1) await book.record(bought(`L${at % 100}`), by('hazel'));
    expect(await seqsOf({ ...history, about: { lot: 'L7' } }, book)).toEqual([8, 108, 208]);
    expect(count.entries).toBe(300);
    await book.record(bought('L7'), by('tom'));
    expect(await seqsOf({ ...history, about: { lot: 'l7' } }, book)).toEqual([8, 108, 208, 301]);
    expect(await seqsOf({ ...history, about: { lot: 'L7' }, member: 'Tom' }, book)).toEqual([301]);
    expect(count.entries).toBe(301);
  });

  it('should note each entry once when two ask at the same time', async () => {
    const { book, count } = counted(await memoryKeeper().open('circle'));
    for (const lot of ['A1', 'A2']) await book.record(bought(lot), by('hazel'));
    const asked = { ...history, kind: 'purchase' } as const;
    expect(await Promise.all([seqsOf(asked, book), seqsOf(asked, book)])).toEqual([
      [1, 2],
      [1, 2],
    ]);
    expect(count.entries).toBe(2);
  });

  it('should know a recipe by what it was called before and after a renaming', async () => {
    const book = await memoryKeeper().open('circle');
    await book.record(saved('Winter balm'), by('hazel'));
    await book.record({ kind: 'recipe-renamed', recipe: 'winter', name: 'Frost balm' }, by('hazel'));
    await book.record(saved('Frost balm'), by('hazel'));
    expect(await seqsOf({ ...history, about: { recipe: 'winter balm' } }, book)).toEqual([1, 2]);
    expect(await seqsOf({ ...history, about: { recipe: 'Frost balm' } }, book)).toEqual([2, 3]);
    expect((await pastEntries(history, book)).namesAt(2).recipe('winter')).toBe('Winter balm');
  });

  it('should leave nothing out that a local day may hold', async () => {
    const book = await memoryKeeper().open('circle');
    for (const day of ['2027-01-01T00:30:00Z', '2027-01-05T23:59:00Z', '2027-02-20T10:00:00Z'])
      await book.record(bought('A1'), by('hazel', Date.parse(day)));
    expect(await seqsOf({ ...history, from: '2026-12-31', to: '2026-12-31' }, book)).toEqual([1]);
    expect(await seqsOf({ ...history, from: '2027-01-06', to: '2027-01-06' }, book)).toEqual([2]);
  });

  it('should begin anew after everything was forgotten', async () => {
    const book = await memoryKeeper().open('circle');
    for (const lot of ['A1', 'A2', 'A3']) await book.record(bought(lot), by('hazel'));
    expect(await seqsOf(history, book)).toEqual([1, 2, 3]);
    await book.forget();
    await book.record(bought('B1'), by('tom'));
    expect(await seqsOf({ ...history, about: { lot: 'A1' } }, book)).toEqual([]);
    expect(await seqsOf({ ...history, about: { lot: 'B1' } }, book)).toEqual([1]);
  });
});
