import { describe, expect, it } from 'vitest';
import { batchMeant } from '../../../bot/readers/batch-meant.ts';
import { readBench } from '../../../bot/readers/bench-reading.ts';
import { findBatch, findEither, findLot } from '../../../bot/words/find-lot.ts';
import { batchOf, lotOf, readingOf } from '../../helpers/reading.ts';

const book = [
  lotOf('K12'),
  batchOf('26-KIVO'),
  batchOf('26-SUMA', 'Mint stick'),
  batchOf('27-SUMA', 'Rain balm'),
];
const reading = (text: string) => readingOf(text, book);
const meant = (text: string) => batchMeant(reading(text), readBench(reading(text)));

describe('which batch', () => {
  it('should be the one that is named, before any lot of the shelf', () => {
    expect(meant('kivo was made with K12').lot).toBe('26-KIVO');
    expect(meant('batch 26 suma').lot).toBe('26-SUMA');
  });

  it('should be asked back about where the word is not enough', () => {
    expect(meant('suma looks fine').trouble?.text).toContain('27-SUMA or 26-SUMA');
  });

  it('should be the last one where that is asked for, and said so', () => {
    expect(meant('note on the last batch')).toMatchObject({
      lot: '27-SUMA',
      assumed: ['I took 27-SUMA, Rain balm of 2026-11-20.'],
    });
  });

  it('should be nothing where none is named', () => {
    expect(meant('poured 24 tins')).toEqual({ assumed: [] });
  });

  it('should come back as it was said where the book does not have it', () => {
    expect(meant('batch 26-ZOZO').lot).toBe('26-ZOZO');
  });
});

describe('a code', () => {
  const { bench } = reading('x');
  it('should be found among lots and batches', () => {
    expect(findBatch('kivo', bench)).toMatchObject({ code: 'not-found' });
    expect(findBatch('26 kivo', bench)).toMatchObject({ lot: '26-KIVO' });
    expect(findLot('k-12', bench)).toMatchObject({ lot: 'K12' });
    expect(findEither('k-12', bench)).toMatchObject({ lot: 'K12' });
  });

  it('should be answered with near ones where it is not there, and with what it is', () => {
    expect(findBatch('26-KIVA', bench)).toMatchObject({
      text: expect.stringContaining('Did you mean 26-KIVO?'),
    });
    expect(findLot('26-KIVO', bench)).toMatchObject({
      text: expect.stringContaining('a batch of Fernlea hand balm'),
    });
    expect(findBatch('K12', bench)).toMatchObject({ text: expect.stringContaining('a lot on the shelf') });
    expect(findEither('ZZZ9', bench)).toMatchObject({ text: expect.stringContaining('list batches') });
  });
});
