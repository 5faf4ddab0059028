import { describe, expect, it } from 'vitest';
import { hazardsOf } from '../../core/hazards.ts';
import { clean, codes, hazards } from '../helpers/hazards.ts';
import { grams, percent, strained } from '../helpers/lines.ts';
import { scaled } from '../helpers/scaling.ts';

describe('what a hazard tells', () => {
  it('should add up all aroma, to the share and no further', () => {
    const three = [
      { ingredient: 'peppermint-essential-oil', percent: 0.5 },
      { ingredient: 'sweet-orange-essential-oil', percent: 0.4 },
      { ingredient: 'menthol-crystals', percent: 0.2 },
    ];
    expect(hazards({ with: three })).toContainEqual({
      code: 'aroma-too-high',
      percent: 1.1,
      usualPercent: 1,
    });
    // 0.1 + 0.2 + 0.7 is 0.9999999999999999 or 1.0000000000000002 by the order it is added in; both are 1 %.
    for (const each of [
      [0.1, 0.2, 0.7],
      [0.7, 0.2, 0.1],
      [0.3, 0.6, 0.1],
    ]) {
      const lines = three.map(({ ingredient }, index) => ({ ingredient, percent: each[index] ?? 0 }));
      expect(codes({ with: lines })).not.toContain('aroma-too-high');
    }
  });

  it('should name the oil that is over its own usual share', () => {
    expect(hazards({ with: [{ ingredient: 'clove-bud-essential-oil', percent: 0.3 }] })).toContainEqual({
      code: 'aroma-over-usual',
      ingredient: 'clove-bud-essential-oil',
      percent: 0.3,
      usualPercent: 0.1,
    });
  });

  it('should list nuts, and what nut-allergic people ask about, apart', () => {
    const lines = ['sweet-almond-oil', 'shea-butter', 'peanut-oil'].map((ingredient) => ({
      ingredient,
      percent: 5,
    }));
    expect(hazards({ with: lines })).toContainEqual({
      code: 'nut-allergen',
      ingredients: ['sweet-almond-oil', 'peanut-oil'],
      ask: ['shea-butter'],
    });
  });

  it('should name an ingredient once, in the tin and strained', () => {
    const found = hazards({
      with: [{ ingredient: 'calendula', percent: 1, fresh: true }],
      strained: [{ ingredient: 'calendula', fresh: true }],
    });
    expect(found).toContainEqual({ code: 'brings-water', ingredients: ['calendula'] });
    expect(found.filter((hazard) => hazard.code === 'daisy-family')).toEqual([
      { code: 'daisy-family', ingredients: ['calendula'] },
    ]);
  });

  it('should put lips first and weighing last', () => {
    const found = codes({
      with: [
        { ingredient: 'neem-oil', percent: 5 },
        { ingredient: 'beeswax', percent: 5 },
      ],
      tooSmall: [{ ingredient: 'beeswax', wantedG: 0.1, leastG: 4.1, raised: false }],
    });
    expect(found[0]).toBe('not-for-lips');
    expect(found.at(-1)).toBe('too-little-to-weigh');
  });
});

describe('hazards of a scaled recipe', () => {
  const batch = { kind: 'mass', grams: 500 } as const;

  it('should be none for a clean one', () => {
    const lines = clean.lines.map((each) => percent(each.ingredient, each.percent));
    expect(hazardsOf(scaled(lines, batch))).toEqual([]);
  });

  it('should see the strained herb and the line too small to weigh', () => {
    const lines = [
      grams('candelilla-wax', 20),
      grams('olive-oil', 79.9),
      grams('vitamin-e', 0.1),
      grams('plantain', 9, strained),
    ];
    expect(hazardsOf(scaled(lines, batch)).map((hazard) => hazard.code)).toEqual([
      'wrong-species',
      'too-little-to-weigh',
    ]);
  });
});
