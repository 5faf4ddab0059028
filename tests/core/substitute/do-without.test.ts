import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ingredientById } from '../../../core/ingredients.ts';
import { doWithout } from '../../../core/substitute/do-without.ts';
import type { Mix } from '../../../core/substitute/mix.ts';
import { anyMix, demoMixes, mix, percentIn, sumOf } from './mixes.ts';

/** Everything in or steeped in a mix, by the library's own facts and not by the code under test. */
const factsIn = (made: Mix) =>
  [
    ...made.portions.flatMap(({ ingredient, infusedWith }) =>
      infusedWith ? [ingredient, infusedWith] : [ingredient],
    ),
    ...made.strained.map(({ ingredient }) => ingredient),
  ].map((id) => {
    const found = ingredientById(id);
    if (!found) throw new Error(id);
    return found;
  });

const nutsIn = (made: Mix): readonly string[] =>
  factsIn(made)
    .filter(({ allergen }) => allergen.flag === 'tree-nut' || allergen.flag === 'peanut')
    .map(({ id }) => id);

const animalIn = (made: Mix): readonly string[] =>
  factsIn(made)
    .filter(({ vegan }) => vegan === 'no')
    .map(({ id }) => id);

/** Shea, argan and coconut are a question for the allergic person: never kept in silence. */
const questionable =
  /^(shea-butter|argan-oil|coconut-oil|virgin-coconut-oil|fractionated-coconut-oil|infused-oil)$/;

describe('a recipe without something', () => {
  it.each(demoMixes)('should leave no nut in %s, and keep 100 %%', (_name, before) => {
    const done = doWithout(before, ['nuts']);
    expect(done.cannot).toEqual([]);
    expect(nutsIn(done.mix)).toEqual([]);
    expect(sumOf(done.mix)).toBeCloseTo(100, 9);
  });

  it.each(demoMixes)('should leave nothing animal in %s, and keep 100 %%', (_name, before) => {
    const done = doWithout(before, ['animal']);
    expect(done.cannot).toEqual([]);
    expect(animalIn(done.mix)).toEqual([]);
    expect(sumOf(done.mix)).toBeCloseTo(100, 9);
  });

  it('should keep what it excludes out of 500 recipes, or say what cannot be replaced', () => {
    let changed = 0;
    let refused = 0;
    fc.assert(
      fc.property(anyMix, (before) => {
        for (const [withouts, left] of [
          [['nuts'], nutsIn],
          [['animal'], animalIn],
          [['nuts', 'animal'], (made: Mix) => [...nutsIn(made), ...animalIn(made)]],
        ] as const) {
          const done = doWithout(before, withouts);
          if (done.cannot.length > 0) {
            refused += 1;
            expect(left(before)).toEqual(expect.arrayContaining([...done.cannot]));
            continue;
          }
          if (done.steps.length > 0) changed += 1;
          expect(left(done.mix)).toEqual([]);
          expect(sumOf(done.mix)).toBeCloseTo(100, 6);
          expect(done.mix.portions.every(({ percent }) => percent > 0)).toBe(true);
        }
      }),
      { numRuns: 500, seed: 20_261_125 },
    );
    // Were all refused, or nothing ever changed, the property would say nothing.
    expect(changed).toBeGreaterThan(400);
    expect(refused).toBeLessThan(300);
  });

  it('should ask about every shea, argan and coconut that stays in a nut-free recipe', () => {
    fc.assert(
      fc.property(anyMix, (before) => {
        const done = doWithout(before, ['nuts']);
        const stay = factsIn(done.mix)
          .map(({ id }) => id)
          .filter((id) => questionable.test(id));
        const asked = done.ask.map(({ ingredient }) => ingredient);
        for (const id of stay) expect(asked).toContain(id);
      }),
      { numRuns: 200, seed: 7 },
    );
  });

  it('should never bring in what leaves a question open', () => {
    const done = doWithout(mix({ beeswax: 20, 'macadamia-oil': 30, 'peanut-oil': 50 }), ['nuts']);
    const came = done.steps.flatMap((step) => (step.kind === 'replaced' ? [step.replaced.to] : []));
    expect(came).toHaveLength(2);
    for (const id of came) expect(id).not.toMatch(questionable);
  });

  it('should drop scent into the largest oil and leave the rest alone', () => {
    const before = mix({ beeswax: 20, 'olive-oil': 60, 'castor-oil': 19, 'peppermint-essential-oil': 1 });
    const done = doWithout(before, ['scent']);
    expect(done.steps).toMatchObject([
      { kind: 'dropped', from: 'peppermint-essential-oil', into: 'olive-oil' },
    ]);
    expect(percentIn(done.mix, 'olive-oil')).toBeCloseTo(61, 9);
    expect(percentIn(done.mix, 'beeswax')).toBe(20);
  });

  it('should take a herb from the strainer and from its oil, and keep the oil', () => {
    const before: Mix = {
      portions: [
        { ingredient: 'beeswax', percent: 20 },
        { ingredient: 'olive-oil', percent: 80, infusedWith: 'calendula' },
      ],
      strained: [{ ingredient: 'calendula', perGram: 0.1 }],
    };
    const done = doWithout(before, ['calendula']);
    expect(done.mix.strained).toEqual([]);
    expect(done.mix.portions).toEqual([
      { ingredient: 'beeswax', percent: 20 },
      { ingredient: 'olive-oil', percent: 80 },
    ]);
  });

  it('should not put white beeswax in the place of beeswax', () => {
    const done = doWithout(mix({ beeswax: 20, 'olive-oil': 80 }), ['beeswax']);
    expect(percentIn(done.mix, 'beeswax') + percentIn(done.mix, 'beeswax-white')).toBe(0);
  });

  it('should say what cannot be replaced', () => {
    // Nobody has melting figures for soy wax, so nothing can be balanced against it.
    const done = doWithout(mix({ 'soy-wax': 30, 'olive-oil': 70 }), ['soy']);
    expect(done.cannot).toEqual(['soy-wax']);
  });

  it('should change nothing where there is nothing to leave out', () => {
    const before = mix({ 'candelilla-wax': 12, 'olive-oil': 88 });
    expect(doWithout(before, ['nuts', 'animal', 'scent'])).toMatchObject({
      mix: before,
      steps: [],
      cannot: [],
    });
  });

  it('should ask the supplier about what may be palm or animal', () => {
    const done = doWithout(mix({ 'stearic-acid': 10, 'olive-oil': 90 }), ['palm', 'animal']);
    expect(done.ask).toEqual([
      { ingredient: 'stearic-acid', without: 'palm' },
      { ingredient: 'stearic-acid', without: 'animal' },
    ]);
  });
});
