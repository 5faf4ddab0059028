import { fc, it } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { blendDensity } from '../../core/density.ts';
import { ingredientById, ingredients } from '../../core/ingredients.ts';

const densityOf = (ingredient: string): number => {
  const value = ingredientById(ingredient)?.densityGMl?.value;
  if (value === undefined) throw new Error(`${ingredient} has no density`);
  return value;
};

describe('density of a blend', () => {
  it('should add up the volumes, not the densities', () => {
    // 100 g of each: 200 / (100 / 1.42 + 100 / 0.81) = 1.03157 g/ml; the mean of the two densities would be 1.115.
    const { densityGMl } = blendDensity([
      { ingredient: 'honey', weight: 100 },
      { ingredient: 'squalane', weight: 100 },
    ]);
    expect([densityOf('honey'), densityOf('squalane')]).toEqual([1.42, 0.81]);
    expect(densityGMl).toBeCloseTo(1.03157, 5);
  });

  it('should be the density of a single line, whatever its weight', () => {
    expect(blendDensity([{ ingredient: 'beeswax', weight: 0.3 }]).densityGMl).toBeCloseTo(
      densityOf('beeswax'),
      12,
    );
  });

  it('should name lines without a density and take them to be as dense as the rest', () => {
    const known = [
      { ingredient: 'beeswax', weight: 20 },
      { ingredient: 'olive-oil', weight: 80 },
    ];
    const blend = blendDensity([
      ...known,
      { ingredient: 'mica', weight: 1 },
      { ingredient: 'moon-dust', weight: 9 },
    ]);
    expect(blend.unknown).toEqual(['mica', 'moon-dust']);
    expect(blend.densityGMl).toBe(blendDensity(known).densityGMl);
  });

  it('should take an ordinary oil when no line has a density', () => {
    expect(blendDensity([{ ingredient: 'moon-dust', weight: 1 }])).toEqual({
      densityGMl: 0.915,
      unknown: ['moon-dust'],
    });
    expect(blendDensity([])).toEqual({ densityGMl: 0.915, unknown: [] });
  });

  const dense = ingredients.filter((found) => found.densityGMl).map((found) => found.id);
  const blends = fc.array(
    fc.record({
      ingredient: fc.constantFrom(...dense),
      weight: fc.double({ min: 0.01, max: 1000, noNaN: true }),
    }),
    { minLength: 1, maxLength: 12 },
  );

  it.prop([blends])('should lie between its lightest and its heaviest line', (lines) => {
    const each = lines.map((line) => densityOf(line.ingredient));
    const { densityGMl, unknown } = blendDensity(lines);
    expect(unknown).toEqual([]);
    expect(densityGMl).toBeGreaterThanOrEqual(Math.min(...each) - 1e-12);
    expect(densityGMl).toBeLessThanOrEqual(Math.max(...each) + 1e-12);
  });

  it.prop([blends, fc.double({ min: 0.001, max: 1000, noNaN: true })])(
    'should not depend on the size of the batch or the order of the lines',
    (lines, factor) => {
      const bigger = lines.map((line) => ({ ...line, weight: line.weight * factor })).reverse();
      expect(blendDensity(bigger).densityGMl).toBeCloseTo(blendDensity(lines).densityGMl, 10);
    },
  );
});
