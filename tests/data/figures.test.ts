import { describe, expect, it } from 'vitest';
import { sources } from '../../core/data/sources.ts';
import { ingredientById, ingredients, isFat } from '../../core/ingredients.ts';
import { allSourced } from './sourced.ts';

describe('figures', () => {
  it('should lie within their ranges', () => {
    const outside = allSourced.filter(({ figure: { low, high, value, typical } }) => {
      const middle = value ?? typical;
      if (low !== undefined && high !== undefined && low > high) return true;
      return middle !== undefined && (middle < (low ?? middle) || middle > (high ?? middle));
    });
    expect(outside.map(({ path }) => path)).toEqual([]);
  });

  /** Range and typical profile have different sources; these disagree there, and are left as found. */
  const knownOutside = [
    'sweet-almond-oil 18:2',
    'high-oleic-sunflower-oil 20:1',
    'grapeseed-oil 18:0',
    'avocado-oil 16:1',
    'safflower-oil 16:0',
    'corn-oil 20:1',
    'walnut-oil 18:1',
    'walnut-oil 20:1',
    'babassu-oil 6:0',
  ];

  it('should have typical fatty acids within their ranges, but for the known ones', () => {
    const profiles = ingredients.filter(isFat).flatMap(({ id, fattyAcids }) =>
      Object.entries(fattyAcids?.acids ?? {}).map(([acid, share]) => ({
        acid: `${id} ${acid}`,
        ...share,
      })),
    );
    expect(profiles.filter(({ low = 0, high = 100 }) => low > high)).toEqual([]);
    const outside = profiles.filter(
      ({ low = 0, high = 100, typical = low }) => typical < low || typical > high,
    );
    expect(outside.map(({ acid }) => acid).sort()).toEqual([...knownOutside].sort());
  });

  it('should have typical profiles that add up to 97-101 %', () => {
    const sums = ingredients.filter(isFat).flatMap(({ id, fattyAcids }) => {
      if (!fattyAcids) return [];
      const acids = Object.values(fattyAcids.acids).reduce((sum, share) => sum + (share?.typical ?? 0), 0);
      return [{ id, sum: acids + (fattyAcids.others?.typical ?? 0) }];
    });
    expect(sums).toHaveLength(56);
    expect(sums.filter(({ sum }) => sum < 97 || sum > 101)).toEqual([]);
  });

  const allowed: Readonly<Record<string, readonly [number, number]>> = {
    densityGMl: [0.8, 1.5],
    liquidDensityGMl: [0.8, 1],
    meltC: [-30, 100],
    usePercent: [0, 100],
    iodineValue: [0, 220],
    saponification: [0, 400],
    shelfLifeMonths: [1, 120],
    flashPointC: [30, 120],
  };

  it('should have plausible units: densities 0.8-1.5 g/ml, melting -30 to 100 °C, shares 0-100 %', () => {
    const outside = allSourced.filter(({ path, figure }) => {
      const field = path.split('.')[1] ?? '';
      const [least, most] = allowed[field] ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
      return [figure.low, figure.value, figure.typical, figure.high].some(
        (x) => x !== undefined && !(x >= least && x <= most),
      );
    });
    expect(outside.map(({ path }) => path)).toEqual([]);
  });

  it('should have a density for everything that is poured or melted', () => {
    const without = ingredients
      .filter(({ densityGMl }) => !densityGMl)
      .map(({ id, kind }) => `${kind} ${id}`);
    expect(without.filter((row) => !/^(?:herb|additive) /.test(row))).toEqual(['resinoid benzoin']);
  });
});

/** Source keys that end in M were recalled, CP is common practice: neither can make a figure "read". */
const recalled = (key: string): boolean => key.endsWith('-M') || key === 'CP';

describe('sources', () => {
  it('should have every source once', () => {
    const keys = sources.map(({ id }) => id);
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys).toHaveLength(85);
  });

  it('should never call a figure read when all its sources are recalled', () => {
    const wrong = allSourced.filter(
      ({ figure }) => figure.how.startsWith('read') && figure.source.every((key) => recalled(key)),
    );
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });

  it('should call common practice what is common practice', () => {
    const wrong = allSourced.filter(
      ({ figure }) => figure.source.join() === 'CP' && figure.how !== 'common-practice',
    );
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });

  it.each([
    ['beeswax-white', 'meltC', 'read'],
    ['beeswax', 'meltC', 'memory'],
    ['rosehip-oil', 'iodineValue', 'memory'],
    ['soybean-oil', 'iodineValue', 'read'],
    ['mango-butter', 'iodineValue', 'derived'],
    ['honey', 'densityGMl', 'memory'],
    ['squalane', 'densityGMl', 'memory'],
    ['infused-oil', 'densityGMl', 'memory'],
    ['shea-butter', 'shelfLifeMonths', 'common-practice'],
  ] as const)('should know how %s %s was found: %s', (id, field, how) => {
    expect(ingredientById(id)?.[field]?.how).toBe(how);
  });
});
