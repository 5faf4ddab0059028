import { describe, expect, it } from 'vitest';
import { lotsIn } from '../../../bot/readers/lots.ts';
import { batchOf, lotOf, readingOf } from '../../helpers/reading.ts';

const book = [
  lotOf('K12'),
  lotOf('G7', 'grapeseed-oil'),
  lotOf('4411-B', 'shea-butter'),
  lotOf('12G', 'olive-oil'),
  lotOf('900', 'olive-oil'),
  batchOf('26-KIVO'),
  batchOf('26-ROSE'),
  batchOf('26-SUMA'),
  batchOf('27-SUMA'),
];

const codes = (text: string, events = book) => lotsIn(readingOf(text, events)).map(({ code }) => code);

describe('lot codes the book knows', () => {
  it.each([
    ['which batches used lot K12', ['K12']],
    ['k12 is really 230 g', ['K12']],
    ['K 12 is really 230 g', ['K12']],
    ['lot K-12 is empty', ['K12']],
    ['threw away 50 g of K12, rancid', ['K12']],
    ['batch 26-KIVO', ['26-KIVO']],
    ['26 kivo is used up', ['26-KIVO']],
    ['26kivo looks fine', ['26-KIVO']],
    ['kivo looks fine', ['26-KIVO']],
    ['gave 6 tins of KIVO to the spring fair', ['26-KIVO']],
    ['poured 24 tins of Fernlea hand balm with lots K12, G7 and 4411-b', ['K12', 'G7', '4411-B']],
    ['lots K12 & G7', ['K12', 'G7']],
    ['lot 12G', ['12G']],
    ['where did lot 900 go', ['900']],
    ['opened lot no. 4411 B today', ['4411-B']],
    ['opened lot # 4411-B', ['4411-B']],
    ['rash after batch ROSE', ['26-ROSE']],
  ])('should be found in %j', (text, expected) => {
    expect(codes(text)).toEqual(expected);
  });

  it.each([
    '12 g beeswax',
    'bought 900 g olive oil',
    'rose water',
    'a lot of beeswax',
    'add 7 g shea',
    'scale Fernlea hand balm to 12 tins of 900 ml',
    'batch of 12',
    'list batches',
    'K 12 g',
  ])('should not be read into %j', (text) => {
    expect(codes(text)).toEqual([]);
  });

  it('should be asked back about where two years have the word', () => {
    const [said] = lotsIn(readingOf('suma looks fine', book));
    expect(said).toMatchObject({ others: ['27-SUMA', '26-SUMA'] });
    expect(codes('26 suma looks fine')).toEqual(['26-SUMA']);
  });

  it('should give the place of the whole phrase', () => {
    const text = 'bought 500 g beeswax lot no. K12, 14.50';
    const [said] = lotsIn(readingOf(text, book));
    expect(text.slice(said?.from, said?.to)).toBe('lot no. K12');
    expect(said).toMatchObject({ kind: 'lot', cued: true });
  });
});

describe('lot codes that are new', () => {
  it.each([
    ['bought 500 g beeswax lot K12, best before 2027-03, 14.50', ['K12']],
    ['500 g beeswax, lot G7 14.50', ['G7']],
    ['beeswax lot K 12 500 g', ['K 12']],
    ['beeswax 500 g lot K 12', ['K 12']],
    ['shea butter 1 kg batch no. 4411-B', ['4411-B']],
    ['shea butter lot: L/2024/07, 1 kg', ['L/2024/07']],
    ['with lots A, B', ['A', 'B']],
    ['lot "north shelf 3" 500 g beeswax', ['north shelf 3']],
    ['batch 26-ZOZO', ['26-ZOZO']],
    ['26-zozo is used up', ['26-ZOZO']],
    ['olive oil lot O1 and calendula lot C2', ['O1', 'C2']],
  ])('should be found in %j', (text, expected) => {
    expect(lotsIn(readingOf(text)).map(({ code, kind }) => [code, kind])).toEqual(
      expected.map((code) => [code, 'new']),
    );
  });

  it.each([
    'a lot of beeswax',
    'lots of tins',
    'batch 2 of Fernlea hand balm',
    'lot 500 g',
    'lot 14.50',
    'the lot is empty',
    'batch list',
    '7 g beeswax',
    'K12',
  ])('should not be read into %j', (text) => {
    expect(lotsIn(readingOf(text))).toEqual([]);
  });
});
