import { describe, expect, it } from 'vitest';
import type { RecipeLine } from '../../core/recipe.ts';
import { type RecipeProblem, resolveRecipe } from '../../core/resolve.ts';
import { grams, line, parts, percent, problemOf, rest, strained, worked } from '../helpers/lines.ts';

const problem = (...lines: readonly RecipeLine[]): RecipeProblem => problemOf(resolveRecipe(lines, 'eu'));

describe('recipes that do not work out', () => {
  it.each([
    { lines: [], code: 'no-lines' },
    { lines: [grams('calendula', 10, strained)], code: 'no-lines' },
    { lines: [percent('beeswax', 0), percent('olive-oil', 100)], code: 'zero-line' },
    { lines: [grams('olive-oil', 100), grams('calendula', 0, strained)], code: 'zero-line' },
    { lines: [percent('beeswax', 20), percent('olive-oil', 79)], code: 'percent-sum' },
    { lines: [percent('beeswax', 20), percent('olive-oil', 81)], code: 'percent-sum' },
    { lines: [percent('beeswax', 100), grams('olive-oil', 10)], code: 'percent-sum' },
    { lines: [percent('beeswax', 100), parts('olive-oil', 1)], code: 'percent-sum' },
    { lines: [rest('beeswax'), rest('olive-oil')], code: 'two-rests' },
    { lines: [grams('beeswax', 10), rest('olive-oil')], code: 'rest-without-total' },
    {
      lines: [grams('beeswax', 10), percent('shea-butter', 10), rest('olive-oil', 100)],
      code: 'rest-without-total',
    },
    { lines: [parts('beeswax', 1), rest('olive-oil')], code: 'rest-without-total' },
    { lines: [percent('beeswax', 100), rest('olive-oil')], code: 'nothing-left-for-rest' },
    { lines: [grams('beeswax', 100), rest('olive-oil', 100)], code: 'nothing-left-for-rest' },
    { lines: [parts('beeswax', 1), grams('olive-oil', 10)], code: 'parts-beside-amounts' },
    { lines: [parts('beeswax', 1), line('olive-oil', 10, 'drop')], code: 'parts-beside-amounts' },
    { lines: [percent('olive-oil', 100), grams('calendula', 10, strained)], code: 'parts-beside-amounts' },
    { lines: [percent('olive-oil', 100), parts('calendula', 1, strained)], code: 'parts-beside-amounts' },
    { lines: [line('moon-dust', 1, 'tsp'), grams('olive-oil', 10)], code: 'unknown-ingredient' },
    { lines: [line('mica', 1, 'tsp'), grams('olive-oil', 10)], code: 'no-density' },
  ])('should be $code: $lines', ({ lines, code }) => {
    expect(problem(...lines).code).toBe(code);
  });

  it('should carry the facts that the answer needs', () => {
    expect(problem(percent('beeswax', 20), percent('olive-oil', 70))).toEqual({
      code: 'percent-sum',
      sum: 90,
    });
    expect(problem(line('mica', 5, 'drop'))).toEqual({
      code: 'no-density',
      ingredient: 'mica',
      unit: 'drop',
    });
    expect(problem(grams('beeswax', 0))).toEqual({ code: 'zero-line', ingredient: 'beeswax' });
  });
});

/** In floating point 0.1 + 64.1 + 35.8 is 99.99999999999999; for a maker it is 100, and nothing is left. */
describe('percentages that are 100 but for floating-point noise', () => {
  const full = [percent('beeswax', 0.1), percent('shea-butter', 64.1), percent('castor-oil', 35.8)];
  const fullG = [grams('beeswax', 0.1), grams('shea-butter', 64.1), grams('castor-oil', 35.8)];

  it.each([
    { say: 'the rest', lines: [...full, rest('olive-oil')], code: 'nothing-left-for-rest' },
    { say: 'the rest of 100 g', lines: [...fullG, rest('olive-oil', 100)], code: 'nothing-left-for-rest' },
    { say: 'a part', lines: [...full, parts('olive-oil', 1)], code: 'percent-sum' },
    { say: 'grams', lines: [...full, grams('olive-oil', 50)], code: 'percent-sum' },
  ])('should leave nothing for $say', ({ lines, code }) => {
    expect(problem(...lines).code).toBe(code);
  });

  it('should be let off half a percent all the same', () => {
    // 33.5 + 66 is 99.5; 0.1 + 64.1 + 35.3 is 99.49999999999999. Both are half a percent short.
    const plain = [percent('beeswax', 33.5), percent('olive-oil', 66)];
    const noisy = [percent('beeswax', 0.1), percent('shea-butter', 64.1), percent('castor-oil', 35.3)];
    expect(worked(resolveRecipe(plain, 'eu')).percentSum).toBe(99.5);
    expect(worked(resolveRecipe(noisy, 'eu')).percentSum).toBeCloseTo(99.5, 10);
  });
});
