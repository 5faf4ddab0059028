import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chain, type ChainPart, type ChainRequest, chainOf } from '../../../core/infuse/chain.ts';
import { partGrams } from '../../../core/infuse/mix.ts';
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
const one = (herb: string) => [{ of: herb, parts: 1 }];
const problemOf = (request: ChainRequest) => {
  const chain = chainOf(request);
  return chain.ok ? undefined : chain.problem.code;
};

const sum = (grams: readonly number[]): number => grams.reduce((all, each) => all + each, 0);

const twoOils = (wax: number, oil: number, marked: boolean): readonly RecipeLine[] => [
  percent('beeswax', wax),
  { ...percent('olive-oil', oil), ...(marked ? { infusedWith: 'yarrow' } : {}) },
  { ...percent('sunflower-oil', 100 - wax - oil), ...(marked ? { infusedWith: 'plantain' } : {}) },
];

interface Filling {
  readonly count: number;
  readonly fill: number;
  readonly lossPercent: number;
  readonly stepG: ChainRequest['scale']['stepG'];
}

const scaleFor = (
  lines: readonly RecipeLine[],
  { count, fill, lossPercent, stepG }: Filling,
): ChainRequest['scale'] => ({
  lines,
  target: { kind: 'containers', count, fill: { grams: fill } },
  lossPercent,
  stepG,
  region: 'eu',
});

/** Everything that is weighed out but the herbs: plain lines, and the oil set aside for each infused one. */
const gramsIn = ({ weighed, parts }: Chain): number => {
  const infused = parts.map(({ line }) => line);
  const plain = weighed.lines.filter((line) => !infused.includes(line)).map(({ grams }) => grams);
  const aside = parts.flatMap(({ line, infusion }) => (line ? [infusion.oilInG] : []));
  return sum(plain) + sum(aside);
};

/** The herbs' shares sum to the herb, and what comes out is what the line needs. */
const checkPart = ({ line, infusion, herbs }: ChainPart, stepG: Filling['stepG']): void => {
  const shares = partGrams(herbs, infusion.herbG, stepG);
  if (shares) expect(sum(shares)).toBeCloseTo(infusion.herbG, 9);
  if (line) expect(infusion.oilOutG).toBeCloseTo(line.grams, 9);
};

interface Asked extends Filling {
  readonly wax: number;
  readonly oil: number;
  readonly marked: boolean;
  readonly melt: boolean;
  readonly ratio: number;
  readonly herbs: NonNullable<ChainRequest['herbs']>;
}

/** Reckons a chain and checks its balance; false where it cannot be made at all. */
const balances = ({ wax, oil, marked, melt, herbs, ratio, ...filling }: Asked): boolean => {
  const said = marked && !melt ? {} : { herbs };
  const way = melt ? { way: 'melt' as const } : {};
  const chain = chainOf({ scale: scaleFor(twoOils(wax, oil, marked), filling), ratio, ...said, ...way });
  if (!chain.ok) return false;
  const { netG, allowanceG, parts } = chain.value;
  const kept = sum(parts.map(({ infusion }) => infusion.uptakeG));
  // Grams in (oil set aside, all other lines) = grams in the tins + kept by the herbs + left in the jug.
  const open = Math.abs(gramsIn(chain.value) - (netG + allowanceG + kept));
  expect(open).toBeLessThan(filling.stepG * 1e-3 + 1e-4);
  for (const part of parts) checkPart(part, filling.stepG);
  return true;
};

describe('the chain from herb to tins', () => {
  // By hand: 24 × 15 g is 360 g, / 0.97 is 371.2 g to the step; half of it is 185.6 g of oil to come out. At 1:8 and
  // 1.35 g kept to the gram that takes 185.6 / 6.65 = 27.9 g of herb, which keeps 37.7 g: 223.3 g of oil go in.
  it('should reckon back from the tins to the oil and the herb', () => {
    const chain = chainOf({ scale, herbs: one('calendula'), ratio: 8 });
    expect(chain).toMatchObject({
      value: {
        parts: [
          {
            line: { ingredient: 'olive-oil', grams: 185.6 },
            infusion: { herbG: 27.9, uptakeG: 37.7, oilInG: 223.3, oilOutG: 185.6 },
          },
        ],
        scaled: { totalG: 371.2 },
      },
    });
  });

  it('should mark the infused line, and only that, in the recipe it weighs out', () => {
    const chain = chainOf({ scale, herbs: one('calendula'), ratio: 8 });
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
      value: { parts: [{ line: { ingredient: 'sunflower-oil' }, herbs: [{ of: { id: 'plantain' } }] }] },
    });
  });

  it('should say when the largest of several oils was taken', () => {
    const lines = [percent('beeswax', 20), percent('olive-oil', 50), percent('sunflower-oil', 30)];
    const chain = chainOf({ scale: { ...scale, lines }, herbs: one('calendula') });
    expect(chain).toMatchObject({
      value: { parts: [{ line: { ingredient: 'olive-oil' } }], oilChosen: true },
    });
  });

  it('should name what is missing', () => {
    expect(problemOf({ scale })).toBe('no-herb');
    expect(problemOf({ scale, herbs: one('calendula'), oil: 'jojoba-oil' })).toBe('not-in-recipe');
    const solid = [percent('beeswax', 20), percent('shea-butter', 80)];
    expect(problemOf({ scale: { ...scale, lines: solid }, herbs: one('calendula') })).toBe('no-oil-line');
    expect(
      problemOf({ scale: { ...scale, lines: [percent('olive-oil', 50)] }, herbs: one('calendula') }),
    ).toBe('percent-sum');
  });

  it('should infuse every line that names its herb', () => {
    const lines = [
      percent('beeswax', 20),
      { ...percent('olive-oil', 50), infusedWith: 'calendula' },
      { ...percent('sunflower-oil', 30), infusedWith: 'plantain' },
    ];
    const chain = chainOf({ scale: { ...scale, lines }, ratio: 8 });
    if (!chain.ok) throw new Error(chain.problem.code);
    expect(chain.value.parts.map(({ line, herbs }) => [line?.ingredient, herbs[0]?.of.id])).toEqual([
      ['olive-oil', 'calendula'],
      ['sunflower-oil', 'plantain'],
    ]);
    expect(chain.value.oilChosen).toBe(false);
  });

  it('should take the herb a recipe strains out, with its weight', () => {
    const lines = [
      { ingredient: 'beeswax', amount: 20, unit: 'g' as const },
      { ingredient: 'olive-oil', amount: 80, unit: 'g' as const },
      { ingredient: 'calendula', amount: 10, unit: 'g' as const, strained: true },
    ];
    const target = { kind: 'mass', grams: 300 } as const;
    const chain = chainOf({ scale: { ...scale, lines, target } });
    // By hand: three times 10 g of herb keep 1.35 g to the gram, 40.5 g; 240 g of oil have to come out.
    expect(chain).toMatchObject({
      value: { parts: [{ infusion: { herbG: 30, uptakeG: 40.5, oilInG: 280.5, oilOutG: 240 } }] },
    });
    expect(chain.ok && chain.value.lines.map(({ ingredient }) => ingredient)).toEqual([
      'beeswax',
      'olive-oil',
    ]);
  });

  // By hand: 371.2 g has to come through the cloth; 10 g of calendula keep 13.5 g of the whole melt, so 384.7 g go in.
  it('should melt as much more as the herb drinks when it goes straight into the mass', () => {
    const chain = chainOf({ scale, herbs: one('calendula'), herbG: 10, way: 'melt' });
    expect(chain).toMatchObject({
      value: {
        weighed: { totalG: 384.7 },
        parts: [{ infusion: { uptakeG: 13.5, oilOutG: 371.2 } }],
        netG: 360,
      },
    });
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
      herbs: fc.array(
        fc.record({
          of: fc.constantFrom('calendula', 'plantain', 'turmeric', 'comfrey'),
          parts: fc.integer({ min: 1, max: 50 }),
        }),
        { minLength: 1, maxLength: 3 },
      ),
      marked: fc.boolean(),
      melt: fc.boolean(),
    });
    let reckoned = 0;
    fc.assert(
      fc.property(request, (asked) => {
        if (balances(asked)) reckoned += 1;
      }),
    );
    expect(reckoned).toBeGreaterThan(50);
  });
});
