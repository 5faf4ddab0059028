import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BlendLine, blendOf } from '../../../core/melt/blend.ts';
import type { ExchangedLine } from '../../../core/melt/exchange.ts';
import { replacing } from '../../../core/melt/exchange.ts';
import { structureAt } from '../../../core/melt/firmness.ts';
import { lastToMelt } from '../../../core/melt/freezing.ts';
import { percentForBoth, sliding } from '../../../core/melt/slide.ts';
import { swap } from '../../../core/melt/swap.ts';
import { swapGramForGram } from '../../../core/melt/swap-gram-for-gram.ts';
import type { Swapped } from '../../../core/melt/swapped.ts';
import { linesOf, type Recipe, worked } from './blends.ts';

const swapped = (recipe: Recipe, from: string, to: string, celsius = 25): Swapped =>
  worked(swap(linesOf(recipe), from, to, { celsius }));

const salve = { beeswax: 20, 'sunflower-oil': 80 };
const stick = { beeswax: 20, 'cocoa-butter': 15, 'shea-butter': 15, 'sunflower-oil': 50 };
const cocoaStick = { beeswax: 20, 'cocoa-butter': 30, 'sunflower-oil': 50 };
const coconutStick = { beeswax: 20, 'coconut-oil': 40, 'sunflower-oil': 40 };

interface SwapRow {
  readonly recipe: Recipe;
  readonly to: string;
  readonly percent: number;
  readonly range: readonly [number, number];
  readonly at37: number;
  readonly clearC: number;
  readonly softC: number;
  readonly both: number;
  readonly bothFirmness: number;
  readonly bothClearC: number;
}

const row = (
  recipe: Recipe,
  to: string,
  percent: number,
  range: readonly [number, number],
  [at37, clearC, softC]: readonly [number, number, number],
  [both, bothFirmness, bothClearC]: readonly [number, number, number],
): SwapRow => ({ recipe, to, percent, range, at37, clearC, softC, both, bothFirmness, bothClearC });

/** All of 20 % beeswax swapped at 25 °C: a prototype's output, which checks the implementation and not nature. */
const beeswaxRows: readonly SwapRow[] = [
  row(salve, 'candelilla-wax', 12.61, [9.5, 16.1], [72.8, 52.3, 48.0], [12.86, 95.8, 52.5]),
  row(salve, 'carnauba-wax', 16.2, [8.8, 32.4], [90.7, 74.5, 72.3], [14.34, 72.2, 73.8]),
  row(salve, 'rice-bran-wax', 14.47, [9.7, 28.9], [91.2, 66.6, 64.4], [13.38, 78.8, 66.1]),
  row(salve, 'sunflower-wax', 8.69, [6.2, 12.4], [90.5, 63.4, 61.1], [8.21, 82.2, 63.1]),
  row(stick, 'candelilla-wax', 12.73, [9.6, 16.3], [74.1, 52.3, 45.2], [13.02, 122.6, 52.5]),
  row(stick, 'carnauba-wax', 16.31, [8.9, 32.3], [92.0, 74.5, 72.1], [14.0, 89.4, 73.6]),
  row(stick, 'rice-bran-wax', 14.57, [9.7, 28.9], [92.4, 66.6, 64.1], [13.22, 98.7, 66.0]),
  row(stick, 'sunflower-wax', 8.78, [6.3, 12.5], [92.4, 63.4, 58.1], [8.18, 103.6, 63.0]),
];

const expectNear = (value: number | undefined, expected: number, tolerance: number): void => {
  expect(Math.abs((value ?? Number.NaN) - expected)).toBeLessThanOrEqual(tolerance);
};

describe('swapping beeswax at equal firmness (a prototype, no measurement)', () => {
  it.each(beeswaxRows)('should need $percent % of $to', (expected) => {
    const made = swapped(expected.recipe, 'beeswax', expected.to);
    expectNear(made.percent, expected.percent, 0.02);
    expectNear(made.range[0], expected.range[0], 0.06);
    expectNear(made.range[1], expected.range[1], 0.06);
    expectNear(made.after.firmness, made.before.firmness, 1e-6);
    expectNear(made.after.firmnessAt37, expected.at37, 0.1);
    expectNear(made.after.fullyMeltedC, expected.clearC, 0.06);
    expectNear(made.after.softensC, expected.softC, 0.06);
    expectNear(made.withFullMelt?.percent, expected.both, 0.02);
    expectNear(made.withFullMelt?.after.firmness, expected.bothFirmness, 0.2);
    expectNear(made.withFullMelt?.after.fullyMeltedC, expected.bothClearC, 0.06);
    expect(made.notes).toContain('make-a-trial-tin');
  });
});

describe('swapping butters (a prototype, no measurement)', () => {
  it.each([
    { celsius: 20, percent: 47.46, firmness: 172.1 },
    { celsius: 22, percent: 40.33, firmness: 153.9 },
    { celsius: 25, percent: 29.1, firmness: 123.5 },
  ])('should need $percent % of shea for 30 % of cocoa butter at $celsius °C', (expected) => {
    const made = swapped(cocoaStick, 'cocoa-butter', 'shea-butter', expected.celsius);
    expectNear(made.percent, expected.percent, 0.02);
    expectNear(made.after.firmness, expected.firmness, 0.06);
  });

  it.each([
    { celsius: 20, added: 1.55 },
    { celsius: 22, added: 0.19 },
    { celsius: 25, added: 0.27 },
    { celsius: 30, added: 0.56 },
  ])('should add $added % beeswax for fractionated coconut at $celsius °C', ({ celsius, added }) => {
    const made = swapGramForGram(linesOf(coconutStick), 'coconut-oil', 'fractionated-coconut-oil', {
      celsius,
      firmWith: 'beeswax',
    });
    expect(made.ok).toBe(true);
    if (!made.ok) return;
    expectNear(made.value.addedPercent, added, 0.01);
    expectNear(made.value.after.firmness, made.value.before.firmness, 1e-6);
    expect(made.value.lines[1]).toEqual({ ingredient: 'fractionated-coconut-oil', percent: 40 });
  });

  it.each([
    { celsius: 20, added: 2.4 },
    { celsius: 22, added: 1.4 },
  ])(
    'should add $added % beeswax to shea for cocoa butter, one to one at $celsius °C',
    ({ celsius, added }) => {
      const made = swapGramForGram(linesOf(cocoaStick), 'cocoa-butter', 'shea-butter', {
        celsius,
        firmWith: 'beeswax',
      });
      expectNear(made.ok ? made.value.addedPercent : undefined, added, 0.06);
    },
  );
});

const sum = (lines: readonly ExchangedLine[]): number => lines.reduce((all, { percent }) => all + percent, 0);

const asLines = (lines: readonly ExchangedLine[]): readonly BlendLine[] =>
  lines.map(({ ingredient, percent }) => ({ ingredient, weight: percent }));

const percentOf = (lines: readonly ExchangedLine[], id: string): number =>
  lines.filter(({ ingredient }) => ingredient === id).reduce((all, { percent }) => all + percent, 0);

const waxes = ['beeswax', 'candelilla-wax', 'carnauba-wax', 'rice-bran-wax', 'sunflower-wax'] as const;

const recipe = fc.record({
  wax: fc.constantFrom(...waxes),
  other: fc.constantFrom(...waxes),
  waxPercent: fc.double({ min: 5, max: 25, noNaN: true }),
  butter: fc.constantFrom('cocoa-butter', 'shea-butter', 'coconut-oil', 'mango-butter'),
  butterPercent: fc.double({ min: 0.1, max: 30, noNaN: true }),
  powderPercent: fc.double({ min: 0.1, max: 5, noNaN: true }),
  celsius: fc.integer({ min: 15, max: 30 }),
});

describe('any swap', () => {
  it('should come back to the original when it is swapped back, and keep 100 % all the way', () => {
    fc.assert(
      fc.property(recipe, ({ wax, other, waxPercent, butter, butterPercent, powderPercent, celsius }) => {
        const oil = 100 - waxPercent - butterPercent - powderPercent;
        const lines = linesOf({
          [wax]: waxPercent,
          [butter]: butterPercent,
          mica: powderPercent,
          'olive-oil': oil * 0.7,
          'jojoba-oil': oil * 0.3,
        });
        const there = swap(lines, wax, other, { celsius });
        if (!there.ok) {
          expect(there.problem.code).toBe('not-enough-oil');
          return;
        }
        expectNear(sum(there.value.lines), 100, 1e-9);
        expectNear(percentOf(there.value.lines, 'mica'), powderPercent, 1e-9);
        const back = swap(asLines(there.value.lines), other, wax, { celsius });
        expect(back.ok).toBe(true);
        if (!back.ok) return;
        expectNear(sum(back.value.lines), 100, 1e-9);
        for (const { ingredient, weight } of lines)
          expectNear(percentOf(back.value.lines, ingredient), weight, 0.01);
      }),
    );
  });

  it('should find no better compromise of firmness and full melt by trying every tenth of a percent', () => {
    fc.assert(
      fc.property(recipe, ({ wax, other, waxPercent, butter, butterPercent, celsius }) => {
        const lines = linesOf({
          [wax]: waxPercent,
          [butter]: butterPercent,
          'olive-oil': 100 - waxPercent - butterPercent,
        });
        const exchange = worked(replacing(lines, wax, other));
        const blendAt = sliding(exchange);
        const before = blendOf(lines);
        const freezing = worked(before).freezing.aged;
        const wanted = {
          structure: structureAt(freezing, celsius),
          clearC: lastToMelt(freezing)?.celsius ?? Number.NaN,
        };
        const cost = (p: number): number => {
          const firm = Math.log((structureAt(blendAt(p), celsius) / wanted.structure) ** 2) / 0.2;
          const clear = ((lastToMelt(blendAt(p))?.celsius ?? Number.NaN) - wanted.clearC) / 3;
          return firm ** 2 + clear ** 2;
        };
        const found = percentForBoth(blendAt, exchange.most, celsius, wanted) ?? Number.NaN;
        expect(found).toBeLessThanOrEqual(exchange.most);
        for (let p = 0.1; p <= exchange.most; p += 0.1)
          expect(cost(found)).toBeLessThanOrEqual(cost(p) + 1e-6);
      }),
      { numRuns: 30 },
    );
  });

  it('should change nothing when an ingredient is swapped for itself', () => {
    const made = swapped(stick, 'beeswax', 'beeswax');
    expectNear(made.percent, 20, 1e-6);
    expect(made.lines.map(({ ingredient }) => ingredient)).toEqual(Object.keys(stick));
    expect(made.notes).toEqual([]);
  });
});

describe('where lines go', () => {
  it('should put the new ingredient in the place of the old and say which line each one was', () => {
    const made = swapped({ beeswax: 20, 'shea-butter': 20, 'olive-oil': 60 }, 'shea-butter', 'cocoa-butter');
    expect(made.lines.map(({ ingredient, line }) => [ingredient, line])).toEqual([
      ['beeswax', 0],
      ['cocoa-butter', undefined],
      ['olive-oil', 2],
    ]);
  });

  it('should join an ingredient that is already there', () => {
    const both = { beeswax: 15, 'candelilla-wax': 3, 'olive-oil': 82 };
    const made = swapped(both, 'beeswax', 'candelilla-wax');
    expect(made.lines.map(({ ingredient, line }) => [ingredient, line])).toEqual([
      ['candelilla-wax', 1],
      ['olive-oil', 2],
    ]);
    expectNear(made.lines[0]?.percent, 3 + made.percent, 1e-9);
  });

  it('should share what is left over among the vegetable oils and leave the others alone', () => {
    const oils = { beeswax: 20, 'olive-oil': 30, 'sunflower-oil': 30, 'castor-oil': 20 };
    const made = swapped(oils, 'beeswax', 'candelilla-wax');
    expect(percentOf(made.lines, 'castor-oil')).toBe(20);
    expectNear(percentOf(made.lines, 'olive-oil'), percentOf(made.lines, 'sunflower-oil'), 1e-9);
  });
});

describe('swaps that cannot work', () => {
  const problem = (recipe: Recipe, from: string, to: string, celsius = 25): unknown => {
    const made = swap(linesOf(recipe), from, to, { celsius });
    return made.ok ? undefined : made.problem;
  };

  it('should refuse a liquid for a wax', () => {
    expect(problem(salve, 'beeswax', 'jojoba-oil')).toEqual({
      code: 'liquid-cannot-carry',
      ingredient: 'jojoba-oil',
      celsius: 25,
    });
    expect(problem(coconutStick, 'beeswax', 'coconut-oil', 30)).toMatchObject({
      code: 'liquid-cannot-carry',
    });
  });

  it('should refuse a wax for an oil', () => {
    expect(problem(salve, 'sunflower-oil', 'beeswax')).toEqual({
      code: 'wax-cannot-be-oil',
      ingredient: 'beeswax',
    });
  });

  it('should say when there is not oil enough, with the firmest that can be had', () => {
    const made = problem({ beeswax: 30, 'olive-oil': 30, 'cocoa-butter': 40 }, 'beeswax', 'shea-butter');
    expect(made).toMatchObject({ code: 'not-enough-oil', mostPercent: 60 });
  });

  it('should say when no liquid oil is there to give way', () => {
    expect(problem({ beeswax: 30, 'shea-butter': 70 }, 'beeswax', 'candelilla-wax')).toEqual({
      code: 'no-liquid-oil',
    });
  });

  it('should name what is not there, not known, without figures, or no part of the melt', () => {
    expect(problem(salve, 'carnauba-wax', 'beeswax')).toMatchObject({ code: 'not-in-recipe' });
    expect(problem(salve, 'beeswax', 'moon-wax')).toMatchObject({ code: 'unknown-ingredient' });
    expect(problem(salve, 'beeswax', 'berry-wax')).toEqual({
      code: 'no-melting-data',
      ingredients: ['berry-wax'],
    });
    expect(problem(salve, 'beeswax', 'mica')).toEqual({ code: 'does-not-melt-in', ingredient: 'mica' });
    expect(problem(salve, 'beeswax', 'candelilla-wax', Number.NaN)).toMatchObject({
      code: 'bad-temperature',
    });
  });

  it('should put none in where the rest is firm enough already', () => {
    // At 30 °C coconut oil is a solvent: without it more wax crystals stay.
    const warm = { beeswax: 20, 'coconut-oil': 20, 'olive-oil': 60 };
    const made = swapped(warm, 'coconut-oil', 'shea-butter', 30);
    expect(made.percent).toBe(0);
    expect(made.notes).toContain('already-firm');
    expect(percentOf(made.lines, 'olive-oil')).toBe(80);
  });

  it('should swap two liquids gram for gram', () => {
    const made = swapped(stick, 'sunflower-oil', 'castor-oil');
    expect(percentOf(made.lines, 'castor-oil')).toBe(50);
    expect(made.ratioByWeight).toBe(1);
  });
});
