import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ChainRequest, chainOf } from '../../../core/infuse/chain.ts';
import type { RecipeLine } from '../../../core/recipe.ts';
import { scaleSteps } from '../../../core/settings.ts';

const percent = (ingredient: string, amount: number): RecipeLine => ({ ingredient, amount, unit: 'percent' });
const balm = [percent('beeswax', 20), percent('shea-butter', 30), percent('olive-oil', 50)];
const scale: ChainRequest['scale'] = {
  lines: balm,
  target: { kind: 'containers', count: 24, fill: { grams: 15 } },
  lossPercent: 3,
  stepG: 0.1,
  region: 'eu',
};
const problemOf = (request: ChainRequest) => {
  const chain = chainOf(request);
  return chain.ok ? undefined : chain.problem.code;
};

describe('the chain from herb to tins', () => {
  // By hand: 24 × 15 g is 360 g, / 0.97 is 371.2 g to the step; half of it is 185.6 g of oil to come out. At 1:8 and
  // 1.35 g kept to the gram that takes 185.6 / 6.65 = 27.9 g of herb, which keeps 37.7 g: 223.3 g of oil go in.
  it('should reckon back from the tins to the oil and the herb', () => {
    const chain = chainOf({ scale, herb: 'calendula', ratio: 8 });
    expect(chain).toMatchObject({
      value: {
        line: { ingredient: 'olive-oil', grams: 185.6 },
        infusion: { herbG: 27.9, uptakeG: 37.7, oilInG: 223.3, oilOutG: 185.6 },
        scaled: { totalG: 371.2 },
      },
    });
  });

  it('should mark the infused line, and only that, in the recipe it weighs out', () => {
    const chain = chainOf({ scale, herb: 'calendula', ratio: 8 });
    expect(chain.ok && chain.value.lines.map((line) => line.infusedWith)).toEqual([
      undefined,
      undefined,
      'calendula',
    ]);
  });

  it('should take the line that says it is infused, with its herb', () => {
    const lines = [
      percent('beeswax', 20),
      percent('olive-oil', 60),
      { ...percent('sunflower-oil', 20), infusedWith: 'plantain' },
    ];
    const chain = chainOf({ scale: { ...scale, lines } });
    expect(chain).toMatchObject({
      value: { line: { ingredient: 'sunflower-oil' }, herb: { id: 'plantain' } },
    });
  });

  it('should say when the largest of several oils was taken', () => {
    const lines = [percent('beeswax', 20), percent('olive-oil', 50), percent('sunflower-oil', 30)];
    const chain = chainOf({ scale: { ...scale, lines }, herb: 'calendula' });
    expect(chain).toMatchObject({ value: { line: { ingredient: 'olive-oil' }, oilChosen: true } });
  });

  it('should name what is missing', () => {
    expect(problemOf({ scale })).toBe('no-herb');
    expect(problemOf({ scale, herb: 'calendula', oil: 'jojoba-oil' })).toBe('not-in-recipe');
    const solid = [percent('beeswax', 20), percent('shea-butter', 80)];
    expect(problemOf({ scale: { ...scale, lines: solid }, herb: 'calendula' })).toBe('no-oil-line');
    expect(problemOf({ scale: { ...scale, lines: [percent('olive-oil', 50)] }, herb: 'calendula' })).toBe(
      'percent-sum',
    );
  });

  it('should balance to the step for any recipe, target, ratio and scale', () => {
    const request = fc.record({
      wax: fc.integer({ min: 5, max: 40 }),
      oil: fc.integer({ min: 20, max: 55 }),
      count: fc.integer({ min: 1, max: 200 }),
      fill: fc.double({ min: 2, max: 120, noNaN: true }),
      lossPercent: fc.double({ min: 0, max: 20, noNaN: true }),
      ratio: fc.double({ min: 2, max: 20, noNaN: true }),
      stepG: fc.constantFrom(...scaleSteps),
      herb: fc.constantFrom('calendula', 'plantain', 'turmeric', 'comfrey'),
    });
    let reckoned = 0;
    fc.assert(
      fc.property(request, ({ wax, oil, count, fill, lossPercent, ratio, stepG, herb }) => {
        const lines = [
          percent('beeswax', wax),
          percent('olive-oil', oil),
          percent('shea-butter', 100 - wax - oil),
        ];
        const target = { kind: 'containers', count, fill: { grams: fill } } as const;
        const chain = chainOf({ scale: { lines, target, lossPercent, stepG, region: 'eu' }, herb, ratio });
        if (!chain.ok) return;
        reckoned += 1;
        const { scaled, infusion, line } = chain.value;
        const others = scaled.lines
          .filter((each) => each !== line)
          .reduce((sum, each) => sum + each.grams, 0);
        // Grams in (oil set aside, all other lines) = grams in the tins + kept by the herb + left in the jug.
        const gramsIn = infusion.oilInG + others;
        const gramsOut = scaled.netG + scaled.allowanceG + infusion.uptakeG;
        expect(Math.abs(gramsIn - gramsOut)).toBeLessThan(stepG * 1e-3 + 1e-6);
        expect(infusion.oilOutG).toBeCloseTo(line.grams, 9);
      }),
    );
    expect(reckoned).toBeGreaterThan(50);
  });
});
