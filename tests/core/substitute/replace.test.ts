import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resolveRecipe } from '../../../core/resolve.ts';
import { compare } from '../../../core/substitute/compare.ts';
import { linesOfMix, type Mix, mixOf } from '../../../core/substitute/mix.ts';
import { replace } from '../../../core/substitute/replace.ts';
import type { Replaced } from '../../../core/substitute/replaced.ts';
import { worked } from '../melt/blends.ts';
import { anyMix, isForecast, mix, percentIn, sumOf } from './mixes.ts';

const replaced = (before: Mix, from: string, to: string): Replaced => worked(replace(before, from, to));

const problemOf = (before: Mix, from: string, to: string): string => {
  const made = replace(before, from, to);
  return made.ok ? 'none' : made.problem.code;
};

const salve = mix({ beeswax: 20, 'olive-oil': 80 });
const balm = mix({ beeswax: 20, 'shea-butter': 30, 'olive-oil': 50 });

describe('a swap of waxes (figures of a prototype of the model: they check the code, not nature)', () => {
  it.each([
    { to: 'candelilla-wax', percent: 12.61, range: [9.5, 16.1] },
    { to: 'carnauba-wax', percent: 16.2, range: [8.8, 32.4] },
    { to: 'rice-bran-wax', percent: 14.47, range: [9.7, 28.9] },
    { to: 'sunflower-wax', percent: 8.69, range: [6.2, 12.4] },
  ])('should need about $percent % $to for 20 % beeswax', ({ to, percent, range }) => {
    const made = replaced(salve, 'beeswax', to);
    expect(Math.abs(made.percent - percent)).toBeLessThan(0.3);
    expect(Math.abs((made.range?.[0] ?? 0) - (range[0] ?? 0))).toBeLessThan(0.1);
    expect(Math.abs((made.range?.[1] ?? 0) - (range[1] ?? 0))).toBeLessThan(0.1);
    expect(percentIn(made.mix, 'olive-oil')).toBeCloseTo(100 - made.percent, 9);
    expect(made.notes).toContain('make-a-trial-tin');
  });
});

const waxes = ['beeswax', 'candelilla-wax', 'carnauba-wax', 'rice-bran-wax', 'sunflower-wax'] as const;

describe('any replacement', () => {
  it('should keep 100 %, bring the one in and take the other out', () => {
    let made = 0;
    const ids = anyMix.chain((before) =>
      fc.record({
        before: fc.constant(before),
        from: fc.constantFrom(...before.portions.map(({ ingredient }) => ingredient)),
        to: fc.constantFrom(...waxes, 'mango-butter', 'coconut-oil', 'jojoba-oil', 'lavender-essential-oil'),
      }),
    );
    fc.assert(
      fc.property(ids, ({ before, from, to }) => {
        const result = replace(before, from, to);
        if (!result.ok) return;
        made += 1;
        expect(sumOf(result.value.mix)).toBeCloseTo(100, 6);
        expect(percentIn(result.value.mix, from)).toBe(0);
        const own = percentIn(before, to);
        expect(percentIn(result.value.mix, to)).toBeCloseTo(own + result.value.percent, 6);
      }),
      { numRuns: 300, seed: 11 },
    );
    expect(made).toBeGreaterThan(80);
  });

  it('should come back to the original within 0.3 % of each wax', () => {
    let there = 0;
    const recipe = fc.record({
      wax: fc.double({ min: 5, max: 25, noNaN: true }),
      butter: fc.double({ min: 1, max: 30, noNaN: true }),
      from: fc.constantFrom(...waxes),
      to: fc.constantFrom(...waxes),
    });
    fc.assert(
      fc.property(recipe, ({ wax, butter, from, to }) => {
        fc.pre(from !== to);
        const before = mix({ [from]: wax, 'shea-butter': butter, 'olive-oil': 100 - wax - butter });
        const out = replace(before, from, to);
        if (!out.ok || out.value.percent === 0) return;
        there += 1;
        const back = replaced(out.value.mix, to, from);
        for (const { ingredient, percent } of before.portions)
          expect(Math.abs(percentIn(back.mix, ingredient) - percent)).toBeLessThan(0.3);
      }),
      { numRuns: 100, seed: 5 },
    );
    expect(there).toBeGreaterThan(50);
  });

  it('should hold the firmness, with and without oil', () => {
    for (const before of [balm, mix({ beeswax: 33, 'coconut-oil': 33, 'shea-butter': 34 })]) {
      const made = replaced(before, 'beeswax', 'candelilla-wax');
      expect(Math.abs(compare(before, made.mix).firmnessPercent ?? 9)).toBeLessThan(0.01);
    }
  });

  it('should let the butters give way in proportion where there is no oil', () => {
    const made = replaced(
      mix({ beeswax: 30, 'coconut-oil': 20, 'shea-butter': 50 }),
      'beeswax',
      'sunflower-wax',
    );
    expect(made.way).toBe('butters-give-way');
    expect(percentIn(made.mix, 'shea-butter') / percentIn(made.mix, 'coconut-oil')).toBeCloseTo(2.5, 9);
  });

  it('should change oils and scents gram for gram, herbs and all', () => {
    const before: Mix = {
      portions: [
        { ingredient: 'beeswax', percent: 20 },
        { ingredient: 'sweet-almond-oil', percent: 50, infusedWith: 'calendula' },
        { ingredient: 'sweet-almond-oil', percent: 29 },
        { ingredient: 'peppermint-essential-oil', percent: 1 },
      ],
      strained: [{ ingredient: 'calendula', perGram: 0.05 }],
    };
    const oil = replaced(before, 'sweet-almond-oil', 'jojoba-oil');
    expect(oil.mix.portions).toEqual([
      { ingredient: 'beeswax', percent: 20 },
      { ingredient: 'jojoba-oil', percent: 50, infusedWith: 'calendula' },
      { ingredient: 'jojoba-oil', percent: 29 },
      { ingredient: 'peppermint-essential-oil', percent: 1 },
    ]);
    const scent = replaced(before, 'peppermint-essential-oil', 'spearmint-essential-oil');
    expect(percentIn(scent.mix, 'spearmint-essential-oil')).toBe(1);
    const herb = replaced(before, 'calendula', 'chamomile');
    expect(herb.mix.strained).toEqual([{ ingredient: 'chamomile', perGram: 0.05 }]);
    expect(herb.mix.portions[1]?.infusedWith).toBe('chamomile');
  });

  it('should work for oils where something else has no melting figures', () => {
    const before = mix({ 'soy-wax': 30, 'sweet-almond-oil': 70 });
    expect(isForecast(before)).toBe(false);
    const made = replaced(before, 'sweet-almond-oil', 'olive-oil');
    expect(percentIn(made.mix, 'olive-oil')).toBe(70);
    expect(compare(before, made.mix).firmnessPercent).toBeUndefined();
  });

  it('should join a line that is there already', () => {
    const made = replaced(
      mix({ beeswax: 15, 'candelilla-wax': 3, 'olive-oil': 82 }),
      'beeswax',
      'candelilla-wax',
    );
    expect(made.mix.portions.filter(({ ingredient }) => ingredient === 'candelilla-wax')).toHaveLength(1);
    expect(percentIn(made.mix, 'candelilla-wax')).toBeCloseTo(3 + made.percent, 9);
  });

  it('should firm a liquid that stands in for a butter with the wax of the recipe', () => {
    const made = replaced(balm, 'shea-butter', 'olive-oil');
    expect(made).toMatchObject({ way: 'gram-for-gram-firmed', firmedWith: 'beeswax' });
    expect(made.addedPercent).toBeGreaterThan(0);
    expect(Math.abs(compare(balm, made.mix).firmnessPercent ?? 9)).toBeLessThan(0.01);
  });

  it('should change a butter gram for gram that is nearly liquid where firmness is held', () => {
    const before = mix({ beeswax: 10, 'carnauba-wax': 5, 'coconut-oil': 25, 'grapeseed-oil': 60 });
    const made = replaced(before, 'coconut-oil', 'babassu-oil');
    expect(made).toMatchObject({ way: 'gram-for-gram', percent: 25 });
    const softer = replaced(balm, 'shea-butter', 'coconut-oil');
    expect(softer.percent).toBe(30);
    expect(softer.advice).toMatchObject({ wax: 'beeswax' });
  });

  it.each([
    ['beeswax', 'olive-oil', 'liquid-cannot-carry'],
    ['olive-oil', 'candelilla-wax', 'wax-cannot-be-oil'],
    ['beeswax', 'soy-wax', 'no-melting-data'],
    ['beeswax', 'beeswax', 'same-ingredient'],
    ['carnauba-wax', 'candelilla-wax', 'not-in-recipe'],
    ['beeswax', 'calendula', 'different-jobs'],
    ['beeswax', 'lavender-essential-oil', 'different-jobs'],
    ['beeswax', 'shea-butter', 'not-enough-oil'],
    ['calendula', 'chamomile', 'not-in-recipe'],
    ['beeswax', 'unicorn-wax', 'unknown-ingredient'],
    ['unicorn-wax', 'beeswax', 'unknown-ingredient'],
  ])('should refuse %s for %s with its reason: %s', (from, to, code) => {
    expect(problemOf(balm, from, to)).toBe(code);
  });

  it('should refuse a butter for an oil where no wax can firm it', () => {
    expect(problemOf(mix({ 'shea-butter': 100 }), 'shea-butter', 'olive-oil')).toBe('liquid-cannot-carry');
  });
});

describe('a mix as recipe lines again', () => {
  it('should resolve to the same mix, in percent or in grams', () => {
    fc.assert(
      fc.property(anyMix, fc.boolean(), (before, weighed) => {
        const whole: Mix = weighed ? { ...before, batchG: 250 } : before;
        const again = mixOf(worked(resolveRecipe(linesOfMix(whole), 'eu')));
        for (const [at, { ingredient, percent }] of before.portions.entries()) {
          expect(again.portions[at]?.ingredient).toBe(ingredient);
          expect(again.portions[at]?.percent).toBeCloseTo(percent, 6);
        }
        for (const [at, { perGram }] of before.strained.entries())
          expect(again.strained[at]?.perGram).toBeCloseTo(perGram, 9);
      }),
      { numRuns: 100, seed: 3 },
    );
  });
});
