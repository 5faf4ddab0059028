import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { KeptPrice, Prices } from '../../../core/cost/prices.ts';
import { ingredients } from '../../../core/ingredients.ts';
import { bestSaving, byPrice, pricedIn } from '../../../core/substitute/cheapest.ts';
import { doWithout } from '../../../core/substitute/do-without.ts';
import { rank } from '../../../core/substitute/rank.ts';
import { finish } from '../../../core/work.ts';
import { worked } from '../melt/blends.ts';
import { anyMix, mix } from './mixes.ts';

const perKg = (price: string): KeptPrice => ({
  price,
  currency: 'EUR',
  pack: { amount: 1000, unit: 'g' },
  at: '2026-11-25',
});
const prices: Prices = {
  beeswax: perKg('29'),
  'candelilla-wax': perKg('60'),
  'rice-bran-wax': perKg('20'),
  'olive-oil': perKg('9'),
  'canola-oil': perKg('3'),
  'avocado-oil': perKg('22'),
  'camellia-seed-oil': perKg('40'),
};
const market = { prices, currency: 'EUR' };
const salve = mix({ beeswax: 20, 'olive-oil': 80 });

describe('choosing by price', () => {
  it('should put the cheapest oil first, with what a kilogram costs less', () => {
    const { candidates } = worked(rank('olive-oil', salve.portions, [], { most: 60 }));
    const ordered = byPrice(finish(pricedIn(salve, 'olive-oil', candidates, market)));
    expect(ordered.map(({ candidate }) => candidate.ingredient)).toEqual([
      'canola-oil',
      'avocado-oil',
      'camellia-seed-oil',
    ]);
    // 80 % of a kilogram at 3 instead of 9.
    const { top, under } = ordered[0]?.change.perKg ?? { top: 0n, under: 1n };
    expect(Number(top) / Number(under)).toBeCloseTo(-4.8, 9);
  });

  it('should find the one swap that saves most', () => {
    expect(finish(bestSaving(salve, [], market))).toMatchObject({
      from: 'olive-oil',
      candidate: { ingredient: 'canola-oil' },
    });
  });

  it('should find none where nothing alike is cheaper or has a price', () => {
    expect(finish(bestSaving(salve, [], { prices: {}, currency: 'EUR' }))).toBeUndefined();
    expect(finish(bestSaving(salve, [], { prices, currency: 'GBP' }))).toBeUndefined();
  });
});

describe('choosing from the shelf', () => {
  it('should offer only what is there', () => {
    const only = new Set(['canola-oil', 'jojoba-oil', 'beeswax']);
    const { candidates } = worked(rank('olive-oil', salve.portions, [], { only }));
    expect(candidates.map(({ ingredient }) => ingredient).toSorted()).toEqual(['canola-oil', 'jojoba-oil']);
  });

  it('should bring in nothing that is not there, in any recipe', () => {
    const ids = ingredients.map(({ id }) => id);
    fc.assert(
      fc.property(anyMix, fc.uniqueArray(fc.constantFrom(...ids), { maxLength: 40 }), (before, shelf) => {
        const only = new Set(shelf);
        const had = new Set(before.portions.map(({ ingredient }) => ingredient));
        const done = doWithout(before, ['nuts', 'animal'], { only });
        const came = done.mix.portions.map(({ ingredient }) => ingredient).filter((id) => !had.has(id));
        expect(came.filter((id) => !only.has(id))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
