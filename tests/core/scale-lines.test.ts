import { describe, expect, it } from 'vitest';
import { grams, line, parts, percent, strained } from '../helpers/lines.ts';
import { gramsOf, scaled } from '../helpers/scaling.ts';

describe('the lines of the table', () => {
  it('should tell percent by weight of what goes into the containers', () => {
    const lines = [parts('beeswax', 1), parts('olive-oil', 2), parts('calendula', 1, strained)];
    const table = scaled(lines, { kind: 'mass', grams: 300 });
    expect(table.lines.map((each) => each.percent)).toEqual([33.3333, 66.6667]);
    expect(gramsOf(table)).toEqual([100, 200]);
    expect(table.strained).toEqual([{ ingredient: 'calendula', grams: 100 }]);
  });

  it('should tell drops for aroma only: 30 to the ml, through its density', () => {
    // 5 g / 0.906 g/ml × 30 = 165.6 drops.
    const lines = [percent('beeswax', 20), percent('olive-oil', 79), percent('peppermint-essential-oil', 1)];
    expect(scaled(lines, { kind: 'mass', grams: 500 }).lines.map((each) => each.drops)).toEqual([
      undefined,
      undefined,
      166,
    ]);
  });

  it('should not tell drops for aroma without a density, and never none at all for a line that has a weight', () => {
    const lines = [
      percent('olive-oil', 98.99),
      percent('menthol-crystals', 1),
      percent('peppermint-essential-oil', 0.01),
    ];
    const [, menthol, mint] = scaled(lines, { kind: 'mass', grams: 100 }, { stepG: 0.01 }).lines;
    expect(menthol).not.toHaveProperty('drops');
    expect(mint?.grams).toBe(0.01);
    expect(mint?.drops).not.toBe(0);
  });

  it('should keep what an oil is infused with, and what is fresh', () => {
    const lines = [
      percent('olive-oil', 99, { infusedWith: 'calendula' }),
      percent('mallow', 1, { fresh: true }),
    ];
    expect(scaled(lines, { kind: 'mass', grams: 100 }).lines).toMatchObject([
      { ingredient: 'olive-oil', infusedWith: 'calendula' },
      { ingredient: 'mallow', fresh: true },
    ]);
  });

  it('should name lines whose density nobody knows', () => {
    const lines = [percent('olive-oil', 99), percent('mica', 1)];
    expect(scaled(lines, { kind: 'mass', grams: 100 })).toMatchObject({
      densityGMl: 0.912,
      densityUnknown: ['mica'],
    });
  });

  it('should report a line that the scale cannot tell, with what it needs', () => {
    const lines = [percent('beeswax', 3), percent('olive-oil', 96), percent('vitamin-e', 1)];
    expect(scaled(lines, { kind: 'mass', grams: 100 }).tooSmall).toEqual([
      { ingredient: 'beeswax', wantedG: 3, leastG: 4.1, raised: false },
      { ingredient: 'vitamin-e', wantedG: 1, leastG: 1.64, raised: false },
    ]);
    expect(scaled(lines, { kind: 'mass', grams: 164 }).tooSmall).toEqual([]);
  });

  it('should never round a line to nothing, and say which it raised', () => {
    const lines = [percent('olive-oil', 99.99), percent('vitamin-e', 0.01)];
    const table = scaled(lines, { kind: 'mass', grams: 100 });
    expect(gramsOf(table)).toEqual([99.9, 0.1]);
    expect(table.tooSmall).toMatchObject([{ ingredient: 'vitamin-e', raised: true }]);
  });

  it('should never round a line to nothing that was written beside tonnes', () => {
    const lines = [line('olive-oil', 10_000, 'kg'), line('vitamin-e', 0.4, 'mg')];
    expect(gramsOf(scaled(lines, { kind: 'mass', grams: 100 }))).toEqual([99.9, 0.1]);
  });

  it('should weigh a strained herb of less than a step as one step', () => {
    const lines = [grams('olive-oil', 1000), grams('calendula', 0.1, strained)];
    expect(scaled(lines, { kind: 'mass', grams: 100 }).strained).toEqual([
      { ingredient: 'calendula', grams: 0.1 },
    ]);
  });
});
