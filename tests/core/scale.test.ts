import { describe, expect, it } from 'vitest';
import { mostBatchG } from '../../core/target.ts';
import { grams, percent, rest, strained } from '../helpers/lines.ts';
import { gramsOf, handBalm, scaled, scaleProblem } from '../helpers/scaling.ts';

describe('a target in containers', () => {
  it('should weigh out net / (1 - loss), rounded up to the step', () => {
    const table = scaled(handBalm, { kind: 'containers', count: 24, fill: { grams: 15 } });
    expect(table).toMatchObject({
      containers: 24,
      fillGEach: 15,
      netG: 360,
      totalG: 371.2,
      allowanceG: 11.2,
      lossPercent: 3,
      stepG: 0.1,
    });
  });

  it('should not round up a weigh-out that falls on a step already', () => {
    // 9.7 × 100 / 0.97 is 1000 g.
    const target = { kind: 'containers', count: 100, fill: { grams: 9.7 } } as const;
    expect(scaled(handBalm, target).totalG).toBe(1000);
    expect(scaled(handBalm, target, { stepG: 0.001 }).totalG).toBe(1000);
  });

  it('should fill millilitres by the density of the set blend', () => {
    const table = scaled([percent('beeswax', 100)], { kind: 'containers', count: 10, fill: { ml: 15 } });
    expect(table).toMatchObject({ densityGMl: 0.958, fillGEach: 14.37, netG: 143.7 });
  });
});

describe('a target in mass, volume, multiples or one ingredient', () => {
  it('should be the weigh-out itself, and leave the net', () => {
    expect(scaled(handBalm, { kind: 'mass', grams: 500 })).toMatchObject({
      totalG: 500,
      netG: 485,
      allowanceG: 15,
    });
  });

  it('should tell whole containers only, when it is told what one holds', () => {
    // 485 g net are 32.3 tins of 15 g.
    const table = scaled(handBalm, { kind: 'mass', grams: 500, fill: { grams: 15 } });
    expect(table).toMatchObject({ containers: 32, fillGEach: 15 });
    expect(scaled(handBalm, { kind: 'mass', grams: 500 })).not.toHaveProperty('containers');
    expect(scaled(handBalm, { kind: 'mass', grams: 10, fill: { grams: 15 } }).containers).toBe(0);
  });

  it('should take a volume by the density of the set blend', () => {
    expect(scaled([percent('beeswax', 100)], { kind: 'volume', ml: 500 }).totalG).toBe(479);
  });

  it('should multiply a batch in grams, percent beside grams, or with a total to reach', () => {
    const target = { kind: 'multiple', factor: 1.5 } as const;
    expect(gramsOf(scaled([grams('beeswax', 20), grams('olive-oil', 80)], target))).toEqual([30, 120]);
    expect(gramsOf(scaled([percent('beeswax', 20), grams('olive-oil', 80)], target))).toEqual([30, 120]);
    expect(gramsOf(scaled([grams('beeswax', 20), rest('olive-oil', 100)], target))).toEqual([30, 120]);
    expect(gramsOf(scaled([percent('beeswax', 20), rest('olive-oil', 100)], target))).toEqual([30, 120]);
  });

  it('should be limited by what there is of one ingredient, and never ask for more', () => {
    // 80.05 g of 30 % is 266.83 g, rounded down to 266.8 g; shea butter comes to 80.04 g.
    const table = scaled(handBalm, { kind: 'limit', ingredient: 'shea-butter', grams: 80.05 });
    expect(table.totalG).toBe(266.8);
    expect(gramsOf(table)).toEqual([53.4, 80, 133.4]);
  });

  it('should be limited by a herb that is strained out', () => {
    const lines = [...handBalm, percent('calendula', 10, strained)];
    const table = scaled(lines, { kind: 'limit', ingredient: 'calendula', grams: 40 });
    expect(table).toMatchObject({ totalG: 400, strained: [{ ingredient: 'calendula', grams: 40 }] });
  });

  const used = (table: ReturnType<typeof scaled>, ingredient: string): number =>
    [...table.lines, ...table.strained]
      .filter((each) => each.ingredient === ingredient)
      .reduce((sum, each) => sum + each.grams, 0);

  it.each([
    {
      say: 'plain and infused',
      lines: [
        percent('olive-oil', 40),
        percent('olive-oil', 40, { infusedWith: 'calendula' }),
        percent('beeswax', 20),
      ],
      ingredient: 'olive-oil',
    },
    {
      say: 'strained on two lines',
      lines: [...handBalm, percent('calendula', 5, strained), percent('calendula', 5, strained)],
      ingredient: 'calendula',
    },
    {
      say: 'in the tin and strained',
      lines: [
        percent('beeswax', 20),
        percent('olive-oil', 79),
        percent('calendula', 1),
        percent('calendula', 10, strained),
      ],
      ingredient: 'calendula',
    },
  ])('should not use more than there is of an ingredient that is $say', ({ lines, ingredient }) => {
    const table = scaled(lines, { kind: 'limit', ingredient, grams: 20 });
    expect(used(table, ingredient)).toBeGreaterThan(19);
    expect(used(table, ingredient)).toBeLessThanOrEqual(20.1);
  });
});

describe('what cannot be scaled', () => {
  it('should need a batch to multiply', () => {
    expect(scaleProblem(handBalm, { kind: 'multiple', factor: 2 })).toEqual({ code: 'no-batch-size' });
  });

  it('should need the limiting ingredient in the recipe', () => {
    expect(scaleProblem(handBalm, { kind: 'limit', ingredient: 'lanolin', grams: 10 })).toEqual({
      code: 'not-in-recipe',
      ingredient: 'lanolin',
    });
  });

  it('should need a step for each line', () => {
    expect(scaleProblem(handBalm, { kind: 'mass', grams: 2 }, { stepG: 1 })).toEqual({
      code: 'batch-too-small',
      totalG: 2,
      lines: 3,
      stepG: 1,
    });
    expect(gramsOf(scaled(handBalm, { kind: 'mass', grams: 3 }, { stepG: 1 }))).toEqual([1, 1, 1]);
    expect(scaleProblem(handBalm, { kind: 'mass', grams: 0 }).code).toBe('batch-too-small');
  });

  it('should stop at a tonne', () => {
    expect(scaled(handBalm, { kind: 'mass', grams: mostBatchG }).totalG).toBe(1_000_000);
    expect(scaleProblem(handBalm, { kind: 'mass', grams: 1_000_001 })).toEqual({
      code: 'batch-too-big',
      totalG: 1_000_001,
      mostG: mostBatchG,
    });
  });

  it('should stop at a count or loss that takes the weigh-out out of all bounds', () => {
    const tins = { kind: 'containers', count: 1e300, fill: { grams: 1e300 } } as const;
    expect(scaleProblem(handBalm, tins).code).toBe('batch-too-big');
    expect(scaleProblem(handBalm, { ...tins, count: 1, fill: { grams: 1 } }, { lossPercent: 100 }).code).toBe(
      'batch-too-big',
    );
  });

  it('should pass on what is wrong with the recipe', () => {
    expect(scaleProblem([], { kind: 'mass', grams: 100 })).toEqual({ code: 'no-lines' });
    expect(scaleProblem([percent('beeswax', 90)], { kind: 'mass', grams: 100 }).code).toBe('percent-sum');
  });
});
