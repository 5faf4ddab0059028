import { describe, expect, it } from 'vitest';
import { type Hazard, hazardsOf } from '../../core/hazards.ts';
import { clean, codes, type Extra, hazards } from '../helpers/hazards.ts';

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
