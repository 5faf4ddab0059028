import { describe, expect, it } from 'vitest';
import { convertAmount } from '../../core/convert.ts';
import { scaleRecipe } from '../../core/scale.ts';
import type { ScaleStep } from '../../core/settings.ts';
import { leastWeighableG, tolerance } from '../../core/weighing.ts';
import { percent, worked } from '../helpers/lines.ts';

/**
 * Smallest weight a scale can tell: USP chapter 41 accepts 2 × s / m ≤ 0.10 % and counts s as at least 0.41 steps, so
 * that the smallest weight is 820 steps (read in balance makers' summaries and a copy of the 2019 chapter). The wider
 * tolerances of 5 % and 2 % are the house's own; the table below is the chapter's formula at those, worked by hand.
 */
const table: readonly {
  readonly stepG: ScaleStep;
  readonly at5: number;
  readonly at2: number;
}[] = [
  { stepG: 1, at5: 16.4, at2: 41 },
  { stepG: 0.1, at5: 1.64, at2: 4.1 },
  { stepG: 0.01, at5: 0.164, at2: 0.41 },
  { stepG: 0.001, at5: 0.0164, at2: 0.041 },
];

/** The same formula at another tolerance: the least weight goes with 1 / tolerance. */
const leastAt = (stepG: ScaleStep, share: number): number =>
  (leastWeighableG(stepG, 'bulk') * tolerance.bulk) / share;

describe('the smallest weight a scale tells (USP <41>, read)', () => {
  it.each(table)('should need $at5 g at 5 % and $at2 g at 2 % on a scale of $stepG g', (row) => {
    expect(leastWeighableG(row.stepG, 'small')).toBe(row.at5);
    expect(leastWeighableG(row.stepG, 'bulk')).toBe(row.at2);
  });

  it('should take 5 % for scents and 2 % for waxes and oils (house choice)', () => {
    expect(tolerance).toEqual({ small: 0.05, bulk: 0.02 });
  });

  it('should come to the 820 steps of the chapter at 0.10 %', () => {
    expect(leastAt(0.01, 0.001)).toBeCloseTo(8.2, 9);
    expect(leastAt(1, 0.001)).toBeCloseTo(820, 6);
  });

  it('should find 8 g of beeswax too little at 1 % on a 0.1 g scale, which needs 8.2 g', () => {
    expect(leastAt(0.1, 0.01)).toBeCloseTo(8.2, 9);
    expect(leastAt(0.1, 0.01)).toBeGreaterThan(8);
  });
});

const mint = [
  percent('beeswax', 25),
  percent('high-oleic-sunflower-oil', 74.5),
  percent('peppermint-essential-oil', 0.5),
];

const tooSmallOn = (stepG: ScaleStep): readonly { ingredient: string; leastG: number }[] =>
  worked(
    scaleRecipe({
      lines: mint,
      target: { kind: 'mass', grams: 100 },
      lossPercent: 3,
      stepG,
      region: 'eu',
    }),
  ).tooSmall;

describe('half a gram of scent', () => {
  it('should be too little on a 0.1 g scale, which needs 1.64 g', () => {
    expect(tooSmallOn(0.1)).toEqual([
      {
        ingredient: 'peppermint-essential-oil',
        wantedG: 0.5,
        leastG: 1.64,
        raised: false,
      },
    ]);
  });

  it('should be enough on a 0.01 g scale, which needs 0.164 g', () => {
    expect(tooSmallOn(0.01)).toEqual([]);
  });
});

/** Three studies of bottle inserts average 0.033 g a drop; 20 to 40 drops to the ml were seen (read second-hand). */
describe('30 drops of an essential oil in grams', () => {
  const told = worked(
    convertAmount({
      value: 30,
      from: 'drop',
      to: 'g',
      ingredient: 'peppermint-essential-oil',
      region: 'eu',
    }),
  );

  it('should be about 1.0 g', () => {
    expect(Math.abs(told.value - 1)).toBeLessThanOrEqual(0.1);
  });

  it('should range from 0.68 to 1.35 g, for an oil of 0.9 g/ml', () => {
    expect(told.low).toBeCloseTo(0.68, 1);
    expect(told.high).toBeCloseTo(1.35, 1);
    expect(told.value).toBeGreaterThan(told.low ?? Number.POSITIVE_INFINITY);
    expect(told.value).toBeLessThan(told.high ?? 0);
  });
});
