import { describe, expect, it } from 'vitest';
import { planWorkshop } from '../../../core/workshop/workshop.ts';
import { percent, problemOf } from '../../helpers/lines.ts';
import { planned, stick, tins, twelve } from './plans.ts';

describe('a workshop for twelve, worked by hand', () => {
  // 15 ml at 0.9262 g/ml are 13.89 g, two of them 27.79 g; 27.79 / 0.97 = 28.65, to the step 28.7 g.
  it('should give each person a kit that sums to its total', () => {
    const [recipe] = planned().recipes;
    expect(recipe?.kit.lines.map(({ grams }) => grams)).toEqual([5.7, 8.6, 14.4]);
    expect(recipe?.kit.weighedG).toBe(28.7);
    expect(recipe?.kit.together).toEqual([]);
  });

  it('should set aside twelve kits and at least a tenth more of each line', () => {
    const { lines, kitsG, spareG, totalG } = planned();
    expect(lines.map((line) => line.kitsG)).toEqual([68.4, 103.2, 172.8]);
    expect(lines.map((line) => line.spareG)).toEqual([6.9, 10.4, 17.3]);
    expect([kitsG, spareG, totalG]).toEqual([344.4, 34.6, 379]);
  });

  it('should count containers with the spare ones rounded up', () => {
    expect(planned()).toMatchObject({ containers: 24, spareContainers: 3 });
  });

  it('should set nothing aside beyond the kits without spare', () => {
    expect(planned({ sparePercent: 0 })).toMatchObject({ spareG: 0, spareContainers: 0, totalG: 344.4 });
  });
});

describe('jugs and baths', () => {
  it('should hold everything two thirds full at most, in the fewest jugs', () => {
    // 379 g at about 1.17 ml/g are about 443 ml; two thirds of 500 ml are 333 ml: two jugs, six people each.
    const [recipe] = planned().recipes;
    expect(recipe?.jugs).toMatchObject({ jugMl: 500, jugs: 2, people: [6, 6], jugsPerPerson: 1 });
  });

  it('should melt in rounds where there are fewer hot plates than jugs', () => {
    const { baths, timeline } = planned({ jugMl: 100, hotPlates: 3 });
    expect(baths).toEqual({ jugs: 7, atOnce: 3, rounds: 3 });
    const starts = timeline.filter(({ step }) => step === 'melt').map(({ atMin }) => atMin);
    expect(starts).toHaveLength(3);
    expect(starts).toEqual(starts.toSorted((a, b) => a - b));
  });

  it('should spread one big kit over several jugs', () => {
    const { recipes } = planned({ makings: [{ ...tins, each: 20 }], jugMl: 250, people: 2 });
    // 20 tins are 286.6 g, about 325 ml hot: two jugs of 167 ml each, and a fifth for the spare of both.
    expect(recipes[0]?.jugs).toMatchObject({ jugs: 5, jugsPerPerson: 2, people: [1, 1] });
  });

  it('should take a bigger jug by itself before it splits a kit', () => {
    const { recipes } = planned({ makings: [{ ...tins, each: 24 }], people: 2 });
    expect(recipes[0]?.jugs).toMatchObject({ jugMl: 1000, jugs: 2, jugsPerPerson: 1 });
  });
});

describe('scents', () => {
  it('should be weighed for everybody together, never raised to a step in each kit', () => {
    const { recipes, lines } = planned({ makings: [stick] });
    const kit = recipes[0]?.kit;
    expect(kit?.lines.map(({ ingredient }) => ingredient)).not.toContain('peppermint-essential-oil');
    // 5 g / 0.97 = 5.155, to the step 5.2 g; half a percent of it is 0.026 g each, 0.312 g for twelve.
    expect(kit?.together).toMatchObject([{ ingredient: 'peppermint-essential-oil', percent: 0.5 }]);
    expect(kit?.together[0]?.gramsEach).toBeCloseTo(0.026, 9);
    const scent = lines.find(({ together }) => together);
    expect(scent).toMatchObject({ perPersonG: 0, kitsG: 0.3, spareG: 0, grams: 0.3 });
    expect(recipes[0]?.tooSmallTogether).toHaveLength(1);
  });

  it('should stay in the kit where the scale tells them', () => {
    const { recipes } = planned({ makings: [{ ...stick, fill: { grams: 60 }, each: 4 }], stepG: 0.01 });
    expect(recipes[0]?.kit.together).toEqual([]);
  });
});

describe('several recipes', () => {
  it('should keep kits apart and set aside one line an ingredient', () => {
    const plan = planned({ makings: [tins, stick] });
    expect(plan.recipes).toHaveLength(2);
    const wax = plan.lines.filter(({ ingredient }) => ingredient === 'beeswax');
    expect(wax).toHaveLength(1);
    const each = plan.recipes.map(({ lines }) => lines.find(({ ingredient }) => ingredient === 'beeswax'));
    expect(wax[0]?.grams).toBeCloseTo((each[0]?.grams ?? 0) + (each[1]?.grams ?? 0), 9);
    expect(plan.containers).toBe(36);
  });
});

describe('infused oil', () => {
  const infused = {
    ...tins,
    lines: [
      percent('beeswax', 20),
      percent('shea-butter', 30),
      { ...percent('olive-oil', 50), infusedWith: 'calendula' },
    ],
  };

  it('should be started two days before, with the oil that stays in the herb on top', () => {
    const plan = planned({ makings: [infused] });
    const [ahead] = plan.steeped.ahead;
    expect(ahead?.infusion.oilOutG).toBe(190.1);
    expect(ahead?.infusion.oilInG).toBeCloseTo(190.1 + (ahead?.infusion.uptakeG ?? 0), 9);
    expect(plan.timeline.find(({ step }) => step === 'infuse')?.atMin).toBe(-2880);
    const bought = Object.fromEntries(plan.shopping.map((each) => [each.ingredient, each.needG]));
    expect(bought['olive-oil']).toBe(ahead?.infusion.oilInSureG);
    expect(bought.calendula).toBe(ahead?.infusion.herbG);
  });

  it('should not be in the plan of a recipe without any', () => {
    expect(planned().timeline.map(({ step }) => step)).not.toContain('infuse');
  });

  it('should take the herb from a strained line, and not count its oil twice beside a plain line', () => {
    const lines = [
      percent('beeswax', 20),
      percent('olive-oil', 40),
      { ...percent('olive-oil', 40), infusedWith: 'calendula' },
    ];
    const plan = planned({ makings: [{ ...tins, lines }] });
    const oil = plan.shopping.find(({ ingredient }) => ingredient === 'olive-oil');
    const oils = plan.lines.filter(({ ingredient }) => ingredient === 'olive-oil');
    const extra = plan.steeped.ahead.reduce(
      (sum, { infusion }) => sum + infusion.oilInSureG - infusion.oilOutG,
      0,
    );
    expect(plan.steeped.ahead).toHaveLength(1);
    expect(oil?.needG).toBeCloseTo(oils.reduce((sum, { grams }) => sum + grams, 0) + extra, 6);
  });
});

describe('shopping', () => {
  const prices = {
    beeswax: { price: '14.5', currency: 'EUR', pack: { amount: 50, unit: 'g' as const }, at: '2026-11-25' },
    'olive-oil': {
      price: '9.8',
      currency: 'EUR',
      pack: { amount: 1000, unit: 'ml' as const },
      at: '2026-11-25',
    },
  };

  it('should round up to packs where they are known and to grams where not', () => {
    const { shopping } = planned({ prices });
    // 75.3 g of beeswax are two packs of 50 g; a litre of olive oil weighs 912 g; 113.6 g of shea are bought as 114 g.
    expect(shopping).toMatchObject([
      { ingredient: 'beeswax', needG: 75.3, gramsToBuy: 100, packs: 2 },
      { ingredient: 'shea-butter', needG: 113.6, gramsToBuy: 114 },
      { ingredient: 'olive-oil', needG: 190.1, packs: 1 },
    ]);
  });

  it('should take off what is in stock, and never buy less than nothing', () => {
    const { shopping } = planned({ prices, stockG: { beeswax: 30, 'olive-oil': 5000, constructor: 9 } });
    expect(shopping).toMatchObject([
      { ingredient: 'beeswax', stockG: 30, gramsToBuy: 50 },
      { ingredient: 'shea-butter', stockG: 0, gramsToBuy: 114 },
      { ingredient: 'olive-oil', stockG: 5000, gramsToBuy: 0, packs: 0 },
    ]);
  });
});

describe('what is no workshop', () => {
  it.each([
    ['no-makings', { makings: [] }],
    ['bad-count', { people: 0 }],
    ['bad-count', { people: 2.5 }],
    ['bad-count', { hotPlates: 0 }],
    ['bad-count', { jugMl: Number.NaN }],
    ['bad-count', { makings: [{ ...tins, each: 0 }] }],
    ['bad-spare', { sparePercent: -1 }],
    ['bad-spare', { sparePercent: 101 }],
    ['batch-too-big', { people: 100_000 }],
    ['batch-too-small', { makings: [{ ...tins, fill: { grams: 0.01 } }] }],
    ['percent-sum', { makings: [{ ...tins, lines: [percent('beeswax', 20)] }] }],
  ])('should name the problem %s', (code, change) => {
    expect(problemOf(planWorkshop({ ...twelve, ...change })).code).toBe(code);
  });
});
