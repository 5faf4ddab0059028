import { describe, expect, it } from 'vitest';
import { type Region, regions } from '../../core/settings.ts';
import {
  convertTemperature,
  gramsIn,
  isKitchenMeasure,
  isMassUnit,
  isTemperatureUnit,
  isVolumeUnit,
  massUnits,
  mlIn,
  temperatureUnits,
  volumeUnits,
} from '../../core/units.ts';

describe('units', () => {
  it('should know each unit as one kind only', () => {
    for (const unit of [...massUnits, ...volumeUnits, ...temperatureUnits]) {
      expect([isMassUnit(unit), isVolumeUnit(unit), isTemperatureUnit(unit)].filter(Boolean)).toHaveLength(1);
    }
  });

  it.each(['', 'stone', 'G', 'percent', 'toString', '__proto__'])(
    'should not take "%s" for a unit',
    (word) => {
      expect([isMassUnit(word), isVolumeUnit(word), isTemperatureUnit(word)]).toEqual([false, false, false]);
    },
  );

  it('should build the mass units on the gram', () => {
    expect(massUnits.map(gramsIn)).toEqual([0.001, 1, 1000, 28.349523125, 453.59237]);
  });

  it('should have the same metric volumes everywhere', () => {
    for (const region of regions) {
      expect((['ml', 'cl', 'dl', 'l'] as const).map((unit) => mlIn(unit, region))).toEqual([
        1, 10, 100, 1000,
      ]);
    }
  });

  it.each(['tsp', 'tbsp', 'cup', 'fl oz'])('should call %s a kitchen measure', (unit) => {
    expect(isKitchenMeasure(unit)).toBe(true);
  });

  it.each(['ml', 'cl', 'dl', 'l', 'drop', 'g', 'oz', 'C', 'stick', 'toString', 'constructor'])(
    'should not call %s a kitchen measure',
    (unit) => {
      expect(isKitchenMeasure(unit)).toBe(false);
    },
  );

  it('should count 20 watery drops to the millilitre, or as many as it is told', () => {
    expect(mlIn('drop', 'us')).toBe(0.05);
    expect(mlIn('drop', 'us', 40)).toBe(0.025);
  });
});

describe('kitchen measures by region, in ml', () => {
  const spoons = (region: Region): readonly number[] => [
    mlIn('tsp', region),
    mlIn('tbsp', region),
    mlIn('cup', region),
  ];

  it('should be metric in the EU, the UK and Canada', () => {
    for (const region of ['eu', 'uk', 'ca'] as const) expect(spoons(region)).toEqual([5, 15, 250]);
  });

  it('should have a tablespoon of 20 ml in Australia only', () => {
    expect(spoons('au')).toEqual([5, 20, 250]);
  });

  it('should be customary in the US: 3 teaspoons to a tablespoon, 16 of those to a cup of 8 fluid ounces', () => {
    expect(mlIn('tbsp', 'us')).toBeCloseTo(3 * mlIn('tsp', 'us'), 10);
    expect(mlIn('cup', 'us')).toBeCloseTo(16 * mlIn('tbsp', 'us'), 10);
    expect(mlIn('cup', 'us')).toBeCloseTo(8 * mlIn('fl oz', 'us'), 10);
  });

  it('should have an imperial fluid ounce in the UK, Canada and Australia, a US one in the US and the EU', () => {
    expect((['uk', 'ca', 'au'] as const).map((region) => mlIn('fl oz', region))).toEqual([
      28.4130625, 28.4130625, 28.4130625,
    ]);
    expect((['us', 'eu'] as const).map((region) => mlIn('fl oz', region))).toEqual([
      29.5735295625, 29.5735295625,
    ]);
  });
});

describe('temperatures', () => {
  it.each([
    { c: -40, f: -40 },
    { c: 0, f: 32 },
    { c: 37, f: 98.6 },
    { c: 100, f: 212 },
    { c: -273.15, f: -459.67 },
  ])('should have $c °C at $f °F', ({ c, f }) => {
    expect(convertTemperature(c, 'C', 'F')).toBe(f);
    expect(convertTemperature(f, 'F', 'C')).toBe(c);
  });

  it('should leave a temperature alone that is in the unit already', () => {
    expect(convertTemperature(61.12345678901234, 'C', 'C')).toBe(61.12345678901234);
  });
});
