import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ingredientById, ingredients } from '../../../core/ingredients.ts';
import { treatmentOf } from '../../../core/melt/treatment.ts';
import { bringsNoAllergen } from '../../../core/substitute/likeness.ts';
import { oxidisabilityOf } from '../../../core/substitute/oxidation.ts';
import { type Ranking, rank } from '../../../core/substitute/rank.ts';
import { roleOfId } from '../../../core/substitute/role.ts';
import { worked } from '../melt/blends.ts';
import { anyMix, demoMixes, mix } from './mixes.ts';

const ranking = (
  id: string,
  portions?: Parameters<typeof rank>[1],
  withouts: Parameters<typeof rank>[2] = [],
): Ranking => worked(rank(id, portions, withouts));

const best = ({ candidates }: Ranking): readonly string[] => candidates.map(({ ingredient }) => ingredient);

const scoreOf = ({ candidates }: Ranking, id: string): number =>
  candidates.find(({ ingredient }) => ingredient === id)?.score ?? 0;

const found = (id: string) => {
  const ingredient = ingredientById(id);
  if (!ingredient) throw new Error(id);
  return ingredient;
};

/**
 * What makers say replaces what (common practice, no source). A tenth of an oil's score is the same practice, told in
 * the library's rows, so this checks the ranking as a whole and not nature.
 */
const practice: readonly (readonly [string, readonly string[]])[] = [
  ['sweet-almond-oil', ['high-oleic-sunflower-oil', 'apricot-kernel-oil', 'camellia-seed-oil']],
  ['olive-oil', ['avocado-oil', 'high-oleic-sunflower-oil', 'camellia-seed-oil']],
  ['jojoba-oil', ['meadowfoam-oil']],
  ['coconut-oil', ['babassu-oil', 'palm-kernel-oil']],
  ['shea-butter', ['mango-butter', 'cupuacu-butter']],
  ['cocoa-butter', ['illipe-butter', 'sal-butter', 'kokum-butter']],
  ['beeswax', ['candelilla-wax']],
  ['peppermint-essential-oil', ['spearmint-essential-oil']],
];

describe('a ranking', () => {
  it.each(practice)(
    'should have among its first eight for %s what makers use (common practice)',
    (id, usual) => {
      const first = best(ranking(id)).slice(0, 8);
      for (const each of usual) expect(first).toContain(each);
    },
  );

  it('should stand best first, with scores and parts from 0 to 100', () => {
    for (const { id } of ingredients) {
      const { candidates } = ranking(id);
      const scores = candidates.map(({ score }) => score);
      expect(scores).toEqual(scores.toSorted((a, b) => b - a));
      for (const { score, parts } of candidates)
        for (const value of [score, ...Object.values(parts)]) {
          expect(value).toBeGreaterThanOrEqual(0);
          expect(value).toBeLessThanOrEqual(100);
        }
    }
  });

  it('should offer only the same job, nothing to be kept off lips, and no wax or butter without figures', () => {
    for (const { id } of ingredients) {
      for (const { ingredient } of ranking(id).candidates) {
        expect(ingredient).not.toBe(id);
        expect(roleOfId(ingredient)).toBe(roleOfId(id));
        expect(found(ingredient).lips).not.toBe('avoid');
        if (['wax', 'butter'].includes(roleOfId(id) ?? ''))
          expect(treatmentOf(found(ingredient)).kind).toBe('melts');
      }
    }
  });

  it('should name the waxes it cannot judge', () => {
    expect(ranking('beeswax').unranked).toEqual(expect.arrayContaining(['soy-wax', 'berry-wax']));
  });

  it('should leave out what a recipe has to do without', () => {
    fc.assert(
      fc.property(anyMix, (before) => {
        for (const { ingredient } of before.portions) {
          for (const { ingredient: id } of ranking(ingredient, before.portions, ['nuts', 'animal'])
            .candidates) {
            expect(['tree-nut', 'peanut']).not.toContain(found(id).allergen.flag);
            expect(found(id).vegan).toBe('yes');
          }
        }
      }),
      { numRuns: 60, seed: 2 },
    );
  });

  it('should value what brings an allergen below what brings none, and one nut for another in between', () => {
    const [olive, hazelnut] = [found('olive-oil'), found('hazelnut-oil')];
    expect(bringsNoAllergen(olive, found('macadamia-oil'))).toBe(0);
    expect(bringsNoAllergen(olive, found('camellia-seed-oil'))).toBe(100);
    expect(bringsNoAllergen(hazelnut, found('macadamia-oil'))).toBeGreaterThan(0);
    const flags = best(ranking('olive-oil'))
      .slice(0, 6)
      .map((id) => found(id).allergen.flag);
    expect(new Set(flags)).toEqual(new Set(['none']));
  });

  it('should judge a wax in the recipe it is for', () => {
    const alone = ranking('beeswax', mix({ beeswax: 20, 'olive-oil': 80 }).portions);
    const beside = ranking('beeswax', mix({ beeswax: 4, 'candelilla-wax': 10, 'olive-oil': 86 }).portions);
    expect(scoreOf(beside, 'carnauba-wax')).toBeGreaterThan(scoreOf(alone, 'carnauba-wax'));
  });

  it('should say when the ingredient is not in the recipe, or unknown', () => {
    expect(rank('lanolin', demoMixes[0]?.[1].portions)).toMatchObject({
      ok: false,
      problem: { code: 'not-in-recipe' },
    });
    expect(rank('unicorn-wax', undefined)).toMatchObject({
      ok: false,
      problem: { code: 'unknown-ingredient' },
    });
  });
});

/** Cox values as remembered from food-chemistry tables (memory): the order counts, not the figure. */
describe('oxidisability', () => {
  it('should rise from coconut over olive, almond and sunflower to flaxseed', () => {
    const order = ['coconut-oil', 'olive-oil', 'sweet-almond-oil', 'sunflower-oil', 'flaxseed-oil'];
    const values = order.map((id) => oxidisabilityOf(found(id)) ?? Number.NaN);
    expect(values).toEqual(values.toSorted((a, b) => a - b));
  });

  it('should be the weighted sum of the acids: pure oleic 1, linoleic 10.3, linolenic 21.6 (arithmetic)', () => {
    const olive = found('olive-oil');
    if (!('fattyAcids' in olive)) throw new Error('no acids');
    const typical = (acid: '16:1' | '18:1' | '18:2' | '18:3' | '20:1' | '22:1'): number =>
      olive.fattyAcids?.acids[acid]?.typical ?? 0;
    const slow = typical('16:1') + typical('18:1') + typical('20:1') + typical('22:1');
    const sum = (slow + 10.3 * typical('18:2') + 21.6 * typical('18:3')) / 100;
    expect(oxidisabilityOf(olive)).toBeCloseTo(sum, 9);
  });
});
