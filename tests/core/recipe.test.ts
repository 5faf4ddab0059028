import { describe, expect, it } from 'vitest';
import {
  maxLines,
  maxNameLength,
  recipeLine,
  recipeLines,
  recipeName,
  recipeUnits,
} from '../../core/recipe.ts';
import { defaultSettings, scaleSteps, settingsSchema } from '../../core/settings.ts';
import { isMassUnit, isVolumeUnit, massUnits, volumeUnits } from '../../core/units.ts';
import { grams, percent } from '../helpers/lines.ts';

describe('a recipe line', () => {
  it('should take every unit of mass and volume, and shares beside them', () => {
    const shares = recipeUnits.filter((unit) => !isMassUnit(unit) && !isVolumeUnit(unit));
    expect(shares).toEqual(['percent', 'part', 'rest']);
    expect(recipeUnits).toHaveLength(massUnits.length + volumeUnits.length + shares.length);
  });

  it.each([
    { say: 'plain', line: grams('beeswax', 20) },
    { say: 'strained and fresh', line: percent('calendula', 5, { strained: true, fresh: true }) },
    { say: 'infused', line: percent('olive-oil', 5, { infusedWith: 'calendula' }) },
    { say: 'zero, which the sums ask about', line: grams('beeswax', 0) },
  ])('should hold a $say one', ({ line }) => {
    expect(recipeLine.parse(line)).toEqual(line);
  });

  it.each([
    { say: 'a negative amount', line: { ...grams('beeswax', 20), amount: -1 } },
    { say: 'no number', line: { ...grams('beeswax', 20), amount: Number.NaN } },
    { say: 'endless amounts', line: { ...grams('beeswax', 20), amount: Number.POSITIVE_INFINITY } },
    { say: 'a temperature', line: { ...grams('beeswax', 20), unit: 'C' } },
    { say: 'an unknown field', line: { ...grams('beeswax', 20), colour: 'green' } },
    { say: 'no ingredient', line: { ...grams('', 20) } },
    { say: 'an endless name', line: grams('x'.repeat(61), 20) },
  ])('should refuse $say', ({ line }) => {
    expect(recipeLine.safeParse(line).success).toBe(false);
  });

  it(`should come in one to ${maxLines} lines`, () => {
    const many = (length: number): unknown => Array.from({ length }, () => grams('beeswax', 1));
    expect(
      [0, 1, maxLines, maxLines + 1].map((length) => recipeLines.safeParse(many(length)).success),
    ).toEqual([false, true, true, false]);
  });

  it('should have a name that says something and is not too long', () => {
    expect(recipeName.parse('  Fernlea hand balm ')).toBe('Fernlea hand balm');
    expect(recipeName.safeParse('   ').success).toBe(false);
    expect(recipeName.safeParse('x'.repeat(maxNameLength + 1)).success).toBe(false);
  });
});

describe('settings', () => {
  it('should have defaults that are allowed: 3 % loss on a 0.1 g scale', () => {
    expect(settingsSchema.parse(defaultSettings)).toEqual(defaultSettings);
    expect(defaultSettings).toMatchObject({ lossPercent: 3, stepG: 0.1, units: 'g' });
  });

  it('should allow every step that a scale reads in', () => {
    for (const stepG of scaleSteps)
      expect(settingsSchema.safeParse({ ...defaultSettings, stepG }).success).toBe(true);
  });

  it.each([
    { stepG: 0.5 },
    { lossPercent: -1 },
    { lossPercent: 51 },
    { region: 'moon' },
    { units: 'lb' },
    { currency: 'euro' },
    { writerRole: 'x'.repeat(101) },
    { theme: 'dark' },
  ])('should refuse %o', (change) => {
    expect(settingsSchema.safeParse({ ...defaultSettings, ...change }).success).toBe(false);
  });
});
