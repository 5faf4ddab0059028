import { describe, expect, it } from 'vitest';
import { type Hazard, type HazardInput, hazardsOf } from '../../core/hazards.ts';
import { type ScaleRequest, scaleRecipe } from '../../core/scale.ts';
import { grams, percent, strained, worked } from '../helpers/lines.ts';

/** Nothing here stings, smells, is wet, grows next to something poisonous, or came from a nut, a bee or a sheep. */
const clean: HazardInput = {
  lines: [
    { ingredient: 'candelilla-wax', percent: 20 },
    { ingredient: 'mango-butter', percent: 30 },
    { ingredient: 'high-oleic-sunflower-oil', percent: 50 },
  ],
  strained: [],
  tooSmall: [],
};

interface Extra {
  readonly with?: HazardInput['lines'];
  readonly strained?: HazardInput['strained'];
  readonly tooSmall?: HazardInput['tooSmall'];
}

const hazards = (extra: Extra): readonly Hazard[] =>
  hazardsOf({
    lines: [...clean.lines, ...(extra.with ?? [])],
    strained: extra.strained ?? [],
    tooSmall: extra.tooSmall ?? [],
  });

const codes = (extra: Extra): readonly string[] => hazards(extra).map((hazard) => hazard.code);

const some = (ingredient: string, share = 1): Extra => ({ with: [{ ingredient, percent: share }] });
const herb = (ingredient: string): Extra => ({ strained: [{ ingredient }] });

describe('hazards', () => {
  it('should find none in a clean recipe', () => {
    expect(hazardsOf(clean)).toEqual([]);
  });

  it('should find none in an empty one, nor in a thing it does not know', () => {
    expect(hazardsOf({ lines: [], strained: [], tooSmall: [] })).toEqual([]);
    expect(hazards(some('moon-dust', 50))).toEqual([]);
  });

  it.each<{ say: string; extra: Extra; expected: Hazard['code'] }>([
    { say: 'neem oil', extra: some('neem-oil'), expected: 'not-for-lips' },
    { say: 'strained comfrey', extra: herb('comfrey'), expected: 'not-for-lips' },
    {
      say: 'oil infused with arnica',
      extra: { with: [{ ingredient: 'olive-oil', percent: 20, infusedWith: 'arnica' }] },
      expected: 'not-for-lips',
    },
    { say: 'tea tree oil', extra: some('tea-tree-essential-oil', 0.1), expected: 'lip-caution' },
    {
      say: 'peppermint oil over 1 %',
      extra: some('peppermint-essential-oil', 1.2),
      expected: 'aroma-over-usual',
    },
    {
      say: 'peppermint oil over 1 %',
      extra: some('peppermint-essential-oil', 1.2),
      expected: 'aroma-too-high',
    },
    { say: 'menthol over 1 %', extra: some('menthol-crystals', 1.5), expected: 'aroma-too-high' },
    {
      say: 'cold-pressed lemon oil',
      extra: some('cold-pressed-lemon-essential-oil', 0.3),
      expected: 'light-sensitising',
    },
    { say: 'strained St John’s wort', extra: herb('st-johns-wort'), expected: 'light-sensitising' },
    { say: 'honey', extra: some('honey', 2), expected: 'brings-water' },
    {
      say: 'fresh strained calendula',
      extra: { strained: [{ ingredient: 'calendula', fresh: true }] },
      expected: 'brings-water',
    },
    {
      say: 'a fresh herb in the tin',
      extra: { with: [{ ingredient: 'mallow', percent: 1, fresh: true }] },
      expected: 'brings-water',
    },
    { say: 'plantain', extra: herb('plantain'), expected: 'wrong-species' },
    { say: 'sweet almond oil', extra: some('sweet-almond-oil'), expected: 'nut-allergen' },
    { say: 'peanut oil', extra: some('peanut-oil'), expected: 'nut-allergen' },
    { say: 'sesame oil', extra: some('sesame-oil'), expected: 'food-allergen' },
    { say: 'wheat germ oil', extra: some('wheat-germ-oil'), expected: 'food-allergen' },
    { say: 'soybean oil', extra: some('soybean-oil'), expected: 'food-allergen' },
    { say: 'beeswax', extra: some('beeswax'), expected: 'bee-allergen' },
    { say: 'lanolin', extra: some('lanolin'), expected: 'wool-allergen' },
    { say: 'calendula', extra: herb('calendula'), expected: 'daisy-family' },
    {
      say: 'a line too small',
      extra: { tooSmall: [{ ingredient: 'vitamin-e', wantedG: 0.1, leastG: 1.64, raised: false }] },
      expected: 'too-little-to-weigh',
    },
  ])('should find $expected in $say, and not without it', ({ extra, expected }) => {
    expect(codes(extra)).toContain(expected);
    expect(codes({})).not.toContain(expected);
  });

  it.each<{ say: string; extra: Extra; missing: Hazard['code'] }>([
    { say: 'peppermint oil at 1 %', extra: some('peppermint-essential-oil', 1), missing: 'aroma-too-high' },
    { say: 'peppermint oil at 1 %', extra: some('peppermint-essential-oil', 1), missing: 'aroma-over-usual' },
    {
      say: 'distilled lemon oil',
      extra: some('distilled-lemon-essential-oil', 0.5),
      missing: 'light-sensitising',
    },
    { say: 'dried strained calendula', extra: herb('calendula'), missing: 'brings-water' },
    { say: 'nettle, whose look-alike is harmless', extra: herb('nettle'), missing: 'wrong-species' },
    { say: 'thyme, whose look-alike is harmless', extra: herb('thyme'), missing: 'wrong-species' },
    { say: 'shea butter alone', extra: some('shea-butter', 20), missing: 'nut-allergen' },
    { say: 'candelilla wax', extra: some('candelilla-wax'), missing: 'bee-allergen' },
    { say: 'grapeseed oil', extra: some('grapeseed-oil'), missing: 'food-allergen' },
    { say: 'peppermint leaf', extra: herb('peppermint'), missing: 'daisy-family' },
  ])('should not find $missing in $say', ({ extra, missing }) => {
    expect(codes(extra)).not.toContain(missing);
  });
});

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
    expect(hazards(some('clove-bud-essential-oil', 0.3))).toContainEqual({
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
  const request = (lines: ScaleRequest['lines']): ScaleRequest => ({
    lines,
    target: { kind: 'mass', grams: 500 },
    lossPercent: 3,
    stepG: 0.1,
    region: 'eu',
  });

  it('should be none for a clean one', () => {
    const lines = clean.lines.map((each) => percent(each.ingredient, each.percent));
    expect(hazardsOf(worked(scaleRecipe(request(lines))))).toEqual([]);
  });

  it('should see the strained herb and the line too small to weigh', () => {
    const scaled = worked(
      scaleRecipe(
        request([
          grams('candelilla-wax', 20),
          grams('olive-oil', 79.9),
          grams('vitamin-e', 0.1),
          grams('plantain', 9, strained),
        ]),
      ),
    );
    expect(hazardsOf(scaled).map((hazard) => hazard.code)).toEqual(['wrong-species', 'too-little-to-weigh']);
  });
});
