import { describe, expect, it } from 'vitest';
import { ingredientById } from '../../core/ingredients.ts';
import type { Target } from '../../core/scale.ts';
import { grams, line, percent, strained } from '../helpers/lines.ts';
import { gramsOf, handBalm, scaled } from '../helpers/scaling.ts';

/**
 * Examples worked by hand in the comments. They are arithmetic and show that the sums are done right, not that nature
 * agrees: only the densities come from outside, and each is named with its source.
 */
const tins15g: Target = { kind: 'containers', count: 24, fill: { grams: 15 } };
const tins15ml: Target = { kind: 'containers', count: 24, fill: { ml: 15 } };

describe('20/30/50 to 24 tins of 15 g with 3 % loss', () => {
  // 24 × 15 = 360 g net; 360 / 0.97 = 371.13402 g, rounded up to the step.
  it('should weigh out 371.2 g at 0.1 g', () => {
    // 3712 steps: 742.4, 1113.6 and 1856; one step is left and goes to the .6.
    const table = scaled(handBalm, tins15g);
    expect(table).toMatchObject({
      totalG: 371.2,
      netG: 360,
      allowanceG: 11.2,
      containers: 24,
      fillGEach: 15,
    });
    expect(gramsOf(table)).toEqual([74.2, 111.4, 185.6]);
  });

  it.each([
    // 372 steps: 74.4, 111.6, 186.
    { stepG: 1, totalG: 372, each: [74, 112, 186] },
    // 37114 steps: 7422.8, 11134.2, 18557.
    { stepG: 0.01, totalG: 371.14, each: [74.23, 111.34, 185.57] },
    // 371135 steps: 74227, 111340.5, 185567.5; of two equal halves the earlier line gets the step.
    { stepG: 0.001, totalG: 371.135, each: [74.227, 111.341, 185.567] },
  ] as const)('should weigh out $totalG g at $stepG g', ({ stepG, totalG, each }) => {
    const table = scaled(handBalm, tins15g, { stepG });
    expect(table.totalG).toBe(totalG);
    expect(gramsOf(table)).toEqual(each);
  });

  it('should weigh out 379 g with 5 % loss, and 360 g with none', () => {
    // 360 / 0.95 = 378.947.
    expect(scaled(handBalm, tins15g, { lossPercent: 5 }).totalG).toBe(379);
    expect(scaled(handBalm, tins15g, { lossPercent: 0 })).toMatchObject({
      totalG: 360,
      allowanceG: 0,
    });
  });
});

/** Densities at 20 °C in g/ml that the examples rest on, as the library has them. */
const densities = [
  {
    ingredient: 'beeswax',
    gMl: 0.958,
    source: 'British Pharmaceutical Codex 1911',
    how: 'read',
  },
  {
    ingredient: 'shea-butter',
    gMl: 0.93,
    source: 'CXS 325R-2017 (0.91-0.98)',
    how: 'read',
  },
  { ingredient: 'olive-oil', gMl: 0.912, source: 'CXS 33-1981', how: 'memory' },
  {
    ingredient: 'castor-oil',
    gMl: 0.958,
    source: 'BP 2025, USP35',
    how: 'read',
  },
] as const;

describe('15 ml fills', () => {
  it.each(densities)('should rest on $gMl g/ml for $ingredient ($source, $how)', ({ ingredient, gMl }) => {
    expect(ingredientById(ingredient)?.densityGMl?.value).toBe(gMl);
  });

  it('should be 14.37 g of a wax and an oil of the same density', () => {
    // Both 0.958 g/ml: 15 × 0.958 = 14.37 g, whatever the shares.
    const table = scaled([percent('beeswax', 25), percent('castor-oil', 75)], tins15ml);
    expect(table.densityGMl).toBe(0.958);
    expect(table.fillGEach).toBe(14.37);
  });

  it('should be 13.894 g of 20/30/50', () => {
    // 20/0.958 + 30/0.93 + 50/0.912 = 20.876827 + 32.258065 + 54.824561 = 107.959453 ml for 100 g: 0.926274 g/ml.
    // 15 × 0.926274 = 13.894106 g; × 24 = 333.45853 g; / 0.97 = 343.77168 g, up to 343.8 g.
    // 3438 steps: 687.6, 1031.4, 1719.
    const table = scaled(handBalm, tins15ml);
    expect(table.densityGMl).toBe(0.9263);
    expect(table.fillGEach).toBe(13.8941);
    expect(table.netG).toBeCloseTo(333.4585, 4);
    expect(table.totalG).toBe(343.8);
    expect(gramsOf(table)).toEqual([68.8, 103.1, 171.9]);
  });

  it('should lie between the fills of the lightest and the heaviest published densities', () => {
    // Beeswax 0.958-0.970 and shea 0.91-0.98 (read), olive 0.910-0.916 (memory):
    // 100 / (20.876827 + 32.967033 + 54.945055) = 0.919211; 100 / (20.618557 + 30.612245 + 54.585153) = 0.945037.
    const { fillGEach } = scaled(handBalm, tins15ml);
    expect(fillGEach).toBeGreaterThan(15 * 0.919211);
    expect(fillGEach).toBeLessThan(15 * 0.945037);
  });
});

describe('other targets', () => {
  it('should make 400 g when 80 g of beeswax is all there is', () => {
    // 80 g is 20 % of 400 g; 3 % of that stays in the jug, and 388 g fills 25 tins of 15 g.
    const limit: Target = {
      kind: 'limit',
      ingredient: 'beeswax',
      grams: 80,
      fill: { grams: 15 },
    };
    const table = scaled(handBalm, limit);
    expect(table).toMatchObject({
      totalG: 400,
      netG: 388,
      allowanceG: 12,
      containers: 25,
    });
    expect(gramsOf(table)).toEqual([80, 120, 200]);
  });

  it('should double 20 + 30 + 50 g, with the 12 g of strained herb beside it', () => {
    const lines = [
      grams('beeswax', 20),
      grams('shea-butter', 30),
      grams('olive-oil', 50),
      grams('calendula', 12, strained),
    ];
    const table = scaled(lines, { kind: 'multiple', factor: 2 });
    expect(gramsOf(table)).toEqual([40, 60, 100]);
    expect(table.totalG).toBe(200);
    expect(table.strained).toEqual([{ ingredient: 'calendula', grams: 24 }]);
  });

  it('should weigh out 1 oz and 4 oz as 28.3 and 113.4 g', () => {
    // 5 oz is 141.747616 g, 1417 steps: 283.4 and 1133.6.
    const lines = [line('beeswax', 1, 'oz'), line('olive-oil', 4, 'oz')];
    expect(gramsOf(scaled(lines, { kind: 'multiple', factor: 1 }))).toEqual([28.3, 113.4]);
  });

  it('should weigh 2 US tablespoons of shea butter as 27.5 g, and 2 metric ones as 27.9 g', () => {
    // 2 × 14.78676 ml × 0.93 = 27.50338 g; 2 × 15 ml × 0.93 = 27.9 g.
    const lines = [grams('beeswax', 40), line('shea-butter', 2, 'tbsp')];
    const once: Target = { kind: 'multiple', factor: 1 };
    expect(gramsOf(scaled(lines, once, { region: 'us' }))).toEqual([40, 27.5]);
    expect(gramsOf(scaled(lines, once, { region: 'eu' }))).toEqual([40, 27.9]);
  });

  it('should give one step to 0.05 g of vitamin E in 100 g on a 0.1 g scale, and say so', () => {
    // 1000 steps: 200, 799.5 and 0.5. The odd step goes to the earlier half; vitamin E then takes one of the largest.
    const lines = [percent('beeswax', 20), percent('olive-oil', 79.95), percent('vitamin-e', 0.05)];
    const table = scaled(lines, { kind: 'mass', grams: 100 });
    expect(gramsOf(table)).toEqual([20, 79.9, 0.1]);
    expect(table.tooSmall).toMatchObject([{ ingredient: 'vitamin-e', leastG: 1.64, raised: true }]);
    expect(table.tooSmall[0]?.wantedG).toBeCloseTo(0.05, 12);
  });
});
