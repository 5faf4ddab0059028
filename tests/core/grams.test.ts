import { describe, expect, it } from 'vitest';
import { dropsPerMl, gramsOfLine, mlOf, oilDropsPerMl, weighVolume } from '../../core/grams.ts';
import { line, parts, percent, problemOf, rest, worked } from '../helpers/lines.ts';

describe('drops to the millilitre', () => {
  it('should be 30 for essential oils, flavours and cooling, and 20 for the rest', () => {
    const oils = ['peppermint-essential-oil', 'vanilla-flavour-oil', 'menthol-crystals', 'benzoin'];
    const others = ['vitamin-e', 'olive-oil', 'honey', 'moon-dust'];
    expect(oils.map(dropsPerMl)).toEqual([30, 30, 30, 30]);
    expect(others.map(dropsPerMl)).toEqual([20, 20, 20, 20]);
    expect(oilDropsPerMl).toEqual({ low: 20, value: 30, high: 40 });
  });
});

describe('volumes', () => {
  it('should follow the region for spoons and the ingredient for drops', () => {
    expect(mlOf(2, 'tbsp', 'olive-oil', 'au')).toBe(40);
    expect(mlOf(60, 'drop', 'peppermint-essential-oil', 'au')).toBeCloseTo(2, 12);
  });

  it('should weigh by the density at 20 °C and say how', () => {
    // 2 × 5 ml × 0.958 g/ml.
    expect(worked(weighVolume(2, 'tsp', 'castor-oil', 'eu'))).toEqual({
      ingredient: 'castor-oil',
      amount: 2,
      unit: 'tsp',
      ml: 10,
      densityGMl: 0.958,
      grams: 9.58,
    });
  });

  it('should not weigh what has no density, or is no ingredient', () => {
    expect(problemOf(weighVolume(1, 'tsp', 'mica', 'eu'))).toEqual({
      code: 'no-density',
      ingredient: 'mica',
      unit: 'tsp',
    });
    expect(problemOf(weighVolume(1, 'tsp', 'moon-dust', 'eu'))).toEqual({
      code: 'unknown-ingredient',
      ingredient: 'moon-dust',
    });
  });
});

describe('grams of a line', () => {
  it.each([
    { unit: 'mg', amount: 500, grams: 0.5 },
    { unit: 'g', amount: 20, grams: 20 },
    { unit: 'kg', amount: 0.5, grams: 500 },
    { unit: 'oz', amount: 2, grams: 56.69904625 },
    { unit: 'lb', amount: 1, grams: 453.59237 },
  ] as const)('should bring $amount $unit to $grams g', ({ unit, amount, grams }) => {
    const found = gramsOfLine(line('beeswax', amount, unit), 'eu');
    expect(found && worked(found)).toEqual({ grams });
  });

  it('should leave shares to the sums that know the others', () => {
    for (const share of [percent('beeswax', 20), parts('beeswax', 1), rest('beeswax', 100)]) {
      expect(gramsOfLine(share, 'eu')).toBeUndefined();
    }
  });

  it('should pass on that a volume cannot be weighed', () => {
    const found = gramsOfLine(line('mica', 1, 'tsp'), 'eu');
    expect(found && problemOf(found).code).toBe('no-density');
  });
});
