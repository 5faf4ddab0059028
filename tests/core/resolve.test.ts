import { fc, it } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import type { RecipeLine } from '../../core/recipe.ts';
import { type Resolved, resolveRecipe } from '../../core/resolve.ts';
import type { Region } from '../../core/settings.ts';
import { grams, line, parts, percent, rest, strained, worked } from '../helpers/lines.ts';

const resolved = (lines: readonly RecipeLine[], region: Region = 'eu'): Resolved =>
  worked(resolveRecipe(lines, region));

/** Shares of the whole, in percent, in the order of the lines. */
const shares = ({ lines }: Resolved): readonly number[] => {
  const sum = lines.reduce((all, each) => all + each.weight, 0);
  return lines.map((each) => Number(((100 * each.weight) / sum).toFixed(9)));
};

describe('what share each line is', () => {
  it.each([
    { say: 'percent', lines: [percent('beeswax', 20), percent('olive-oil', 80)] },
    { say: 'parts', lines: [parts('beeswax', 1), parts('olive-oil', 4)] },
    { say: 'percent and parts', lines: [percent('beeswax', 20), parts('olive-oil', 3)] },
    { say: 'percent and the rest', lines: [percent('beeswax', 20), rest('olive-oil')] },
    { say: 'grams', lines: [grams('beeswax', 15), grams('olive-oil', 60)] },
    {
      say: 'kilograms and milligrams',
      lines: [line('beeswax', 1, 'kg'), line('olive-oil', 4_000_000, 'mg')],
    },
    { say: 'ounces and pounds', lines: [line('beeswax', 4, 'oz'), line('olive-oil', 1, 'lb')] },
    { say: 'grams and percent', lines: [percent('beeswax', 20), grams('olive-oil', 60)] },
    { say: 'grams and the rest', lines: [grams('beeswax', 10), rest('olive-oil', 50)] },
  ])('should be 20 and 80 % written in $say', ({ lines }) => {
    expect(shares(resolved(lines))).toEqual([20, 80]);
  });

  it('should let parts share what percentages leave', () => {
    expect(
      shares(resolved([percent('beeswax', 25), parts('olive-oil', 2), parts('shea-butter', 1)])),
    ).toEqual([25, 50, 25]);
  });

  it('should weigh spoons and drops through the density of the line', () => {
    // 2 × 15 ml × 0.912 g/ml = 27.36 g and 30 drops / 30 × 0.906 g/ml = 0.906 g.
    const { lines, volumes } = resolved([
      line('olive-oil', 2, 'tbsp'),
      line('peppermint-essential-oil', 30, 'drop'),
    ]);
    expect(lines[0]?.weight).toBeCloseTo(27.36, 10);
    expect(lines[1]?.weight).toBeCloseTo(0.906, 10);
    expect(volumes).toMatchObject([
      { ingredient: 'olive-oil', amount: 2, unit: 'tbsp', ml: 30, densityGMl: 0.912 },
      { ingredient: 'peppermint-essential-oil', amount: 30, unit: 'drop', ml: 1, densityGMl: 0.906 },
    ]);
  });

  it('should measure spoons as the region does', () => {
    const spoon = (region: Region): number | undefined =>
      resolved([line('olive-oil', 1, 'tbsp')], region).lines[0]?.weight;
    expect(spoon('au')).toBeCloseTo(20 * 0.912, 10);
    expect(spoon('us')).toBeCloseTo(14.78676478125 * 0.912, 10);
  });

  it('should merge one ingredient on two lines, but not a plain oil with an infused or fresh one', () => {
    const { lines } = resolved([
      percent('olive-oil', 30),
      percent('beeswax', 20),
      percent('olive-oil', 10),
      percent('olive-oil', 25, { infusedWith: 'calendula' }),
      percent('olive-oil', 15, { infusedWith: 'calendula' }),
    ]);
    expect(lines).toEqual([
      { ingredient: 'olive-oil', weight: 40 },
      { ingredient: 'beeswax', weight: 20 },
      { ingredient: 'olive-oil', weight: 40, infusedWith: 'calendula' },
    ]);
  });

  it('should take 99.9 % for a rounded 100 %, and tell the sum', () => {
    expect(resolved([percent('beeswax', 33.3), percent('olive-oil', 66.6)]).percentSum).toBeCloseTo(99.9, 10);
    expect(resolved([percent('beeswax', 33.3), percent('olive-oil', 66.7)])).not.toHaveProperty('percentSum');
  });
});

describe('the batch as written', () => {
  it.each([
    { say: 'the sum of the grams', lines: [grams('beeswax', 15), grams('olive-oil', 60)], batchG: 75 },
    {
      say: 'what percentages beside grams make it',
      lines: [percent('beeswax', 20), grams('olive-oil', 60)],
      batchG: 75,
    },
    {
      say: 'the total that the rest fills up to',
      lines: [grams('beeswax', 15), rest('olive-oil', 75)],
      batchG: 75,
    },
    {
      say: 'that total beside percentages too',
      lines: [percent('beeswax', 20), rest('olive-oil', 75)],
      batchG: 75,
    },
  ])('should be $say', ({ lines, batchG }) => {
    expect(resolved(lines).batchG).toBeCloseTo(batchG, 10);
  });

  it('should be unknown for shares alone', () => {
    expect(resolved([percent('beeswax', 20), percent('olive-oil', 80)])).not.toHaveProperty('batchG');
    expect(resolved([parts('beeswax', 1), parts('olive-oil', 4)])).not.toHaveProperty('batchG');
  });
});

describe('herbs that are strained out', () => {
  const perGram = (recipe: readonly RecipeLine[]): number | undefined =>
    resolved(recipe).strained[0]?.perGram;

  it('should come beside 100 %, or be counted within it', () => {
    // Beside: 10 g for 100 g in the tins. Within: 10 g for the 90 g that stay.
    expect(
      perGram([percent('beeswax', 20), percent('olive-oil', 80), percent('calendula', 10, strained)]),
    ).toBe(0.1);
    const within = [percent('beeswax', 18), percent('olive-oil', 72), percent('calendula', 10, strained)];
    expect(perGram(within)).toBeCloseTo(10 / 90, 12);
    expect(shares(resolved(within))).toEqual([20, 80]);
  });

  it.each([
    {
      say: 'grams',
      recipe: [grams('beeswax', 20), grams('olive-oil', 80), grams('calendula', 10, strained)],
    },
    {
      say: 'percent beside grams',
      recipe: [grams('beeswax', 20), grams('olive-oil', 80), percent('calendula', 10, strained)],
    },
    { say: 'parts', recipe: [parts('beeswax', 2), parts('olive-oil', 8), parts('calendula', 1, strained)] },
    {
      say: 'percent beside the rest',
      recipe: [percent('beeswax', 20), rest('olive-oil'), percent('calendula', 10, strained)],
    },
  ])('should be 0.1 g for each gram in the tins, in $say', ({ recipe }) => {
    expect(perGram(recipe)).toBeCloseTo(0.1, 12);
    expect(shares(resolved(recipe))).toEqual([20, 80]);
  });

  it('should be kept apart from the lines and keep their freshness', () => {
    const found = resolved([
      grams('olive-oil', 100),
      grams('calendula', 10, { strained: true, fresh: true }),
    ]);
    expect(found.lines.map((each) => each.ingredient)).toEqual(['olive-oil']);
    expect(found.strained).toEqual([{ ingredient: 'calendula', perGram: 0.1, fresh: true }]);
    expect(found.batchG).toBe(100);
  });

  it('should be one thing to weigh when a herb stands on two lines', () => {
    const { strained: herbs } = resolved([
      grams('olive-oil', 100),
      grams('calendula', 10, strained),
      grams('calendula', 5, strained),
    ]);
    expect(herbs.map((herb) => herb.ingredient)).toEqual(['calendula']);
    expect(herbs[0]?.perGram).toBeCloseTo(0.15, 12);
  });
});

const names = ['beeswax', 'olive-oil', 'shea-butter', 'castor-oil', 'cocoa-butter', 'jojoba-oil'];
const amounts = fc.array(fc.integer({ min: 1, max: 100_000 }), { minLength: 1, maxLength: 6 });

describe('any recipe', () => {
  it.prop([amounts])('should be the same shares in parts, grams and percent', (each) => {
    const sum = each.reduce((a, b) => a + b, 0);
    const written = (to: (name: string, amount: number) => RecipeLine): readonly number[] =>
      shares(resolved(each.map((amount, index) => to(names[index] ?? '', amount))));
    const inParts = written(parts);
    const others = [written(grams), written((name, amount) => percent(name, (100 * amount) / sum))];
    for (const other of others) {
      for (const [index, share] of other.entries()) expect(share).toBeCloseTo(inParts[index] ?? 0, 7);
    }
  });

  it.prop([amounts, fc.integer({ min: 1, max: 99 })])(
    'should give the rest what percentages leave',
    (each, most) => {
      const sum = each.reduce((a, b) => a + b, 0);
      const lines = each.map((amount, index) => percent(names[index] ?? '', (most * amount) / sum));
      const found = resolved([...lines, rest('lanolin')]);
      expect(shares(found).at(-1)).toBeCloseTo(100 - most, 7);
    },
  );
});
