import { describe, expect, it } from 'vitest';
import { bandOf } from '../../../core/melt/firmness.ts';
import { forecast, type MeltForecast } from '../../../core/melt/forecast.ts';
import { linesOf, type Recipe, worked } from './blends.ts';

const told = (recipe: Recipe): MeltForecast => worked(forecast(linesOf(recipe)));

const salve = { beeswax: 20, 'sunflower-oil': 80 };

describe('firmness bands', () => {
  it.each([
    [0, 'does-not-set'],
    [1.39, 'does-not-set'],
    [1.4, 'ointment'],
    [19.9, 'ointment'],
    [20, 'tin'],
    [79.9, 'tin'],
    [80, 'stick'],
    [299, 'stick'],
    [300, 'hard'],
  ] as const)('should call %d %s', (index, band) => {
    expect(bandOf(index)).toBe(band);
  });
});

describe('forecast', () => {
  it('should give 100 to the yardstick itself', () => {
    expect(told(salve).firmness.at20).toBeCloseTo(100, 9);
  });

  it('should say that oils alone do not set, without temperatures', () => {
    const oil = told({ 'olive-oil': 60, 'jojoba-oil': 40 });
    expect(oil.warnings).toEqual(['does-not-set']);
    expect(oil.firmness.band).toBe('does-not-set');
    expect(oil).not.toHaveProperty('fullyMeltedC');
    expect(oil).not.toHaveProperty('softensC');
    expect(oil).not.toHaveProperty('heat');
  });

  it('should say what a pocket and a parked car do', () => {
    const hot = told({ beeswax: 31.5, 'sunflower-oil': 68.5 });
    expect(hot.survives).toEqual({ pocket: 'stays-firm', parkedCar: 'soft' });
    expect(hot.warnings).toEqual([]);
    expect(told(salve).survives).toEqual({ pocket: 'soft', parkedCar: 'slumps' });
    expect(told(salve).warnings).toEqual(['melts-in-a-pocket']);
    expect(told({ 'shea-butter': 1 }).survives.pocket).toBe('slumps');
  });

  it('should say of no balm at all that it survives a parked car', () => {
    for (const wax of ['carnauba-wax', 'sunflower-wax', 'beeswax'])
      expect(['soft', 'slumps']).toContain(told({ [wax]: 60, 'olive-oil': 40 }).survives.parkedCar);
  });

  it('should tell fresh from aged where butter carries the balm', () => {
    const cocoa = told({ 'cocoa-butter': 60, 'olive-oil': 40 });
    expect(cocoa.firmness.softerAtFirstPercent).toBeGreaterThan(50);
    expect(cocoa.warnings).toEqual(['melts-in-a-pocket', 'softer-at-first', 'may-grain']);
    expect(cocoa.mayGrain).toEqual(['cocoa-butter']);
    expect(told(salve).firmness.softerAtFirstPercent).toBe(0);
  });

  it('should say when a balm that sets is liquid on a warm day', () => {
    const coconut = told({ 'coconut-oil': 1 });
    expect(coconut.firmness.band).toBe('ointment');
    expect(coconut.warnings).toContain('liquid-on-a-warm-day');
  });

  it('should call it a rough estimate when much lies outside the model', () => {
    expect(told({ beeswax: 20, 'olive-oil': 75, mica: 5 }).warnings).not.toContain('rough-estimate');
    expect(told({ beeswax: 20, 'olive-oil': 60, mica: 20 }).warnings).toContain('rough-estimate');
    expect(told({ beeswax: 20, 'olive-oil': 60, lanolin: 20 }).warnings).toContain('rough-estimate');
    expect(told({ beeswax: 20, 'castor-oil': 80 }).warnings).toContain('rough-estimate');
    expect(told({ beeswax: 20, 'olive-oil': 72, 'lavender-essential-oil': 8 }).warnings).toContain(
      'rough-estimate',
    );
    expect(told({ 'olive-oil': 10, mica: 90 }).rough.weakPercent).toBe(90);
  });

  it('should tell the conflicts of evidence about waxes', () => {
    expect(told({ beeswax: 15, 'carnauba-wax': 2, 'olive-oil': 83 }).warnings).toEqual([
      'melts-in-a-pocket',
      'carnauba-evidence-conflicts',
      'several-waxes',
    ]);
    expect(told({ beeswax: 10, 'beeswax-white': 10, 'olive-oil': 80 }).warnings).not.toContain(
      'several-waxes',
    );
  });

  it('should say what it took an ingredient for', () => {
    expect(told({ ...salve, squalane: 2 }).takenAs).toEqual([
      { ingredient: 'sunflower-oil', by: 'class', like: 'liquid-oil' },
      { ingredient: 'squalane', by: 'stand-in', like: 'vitamin-e' },
    ]);
  });
});

describe('uncertainty', () => {
  it('should never be narrower than what measurements say about the model', () => {
    const half = (recipe: Recipe): readonly number[] => {
      const { fullyMeltedC: [low, high] = [0, 0], softensC: [cold, hot] = [0, 0] } = told(recipe).uncertainty;
      return [(high - low) / 2, (hot - cold) / 2];
    };
    for (const [recipe, least] of [
      [salve, 3],
      [{ 'carnauba-wax': 10, 'olive-oil': 90 }, 5],
      [{ 'cocoa-butter': 1 }, 2],
    ] as const) {
      const [clear = 0, soft = 0] = half(recipe);
      expect(clear).toBeGreaterThanOrEqual(least);
      expect(clear).toBeLessThanOrEqual(2 * least);
      expect(soft).toBeGreaterThanOrEqual(4);
    }
  });

  it('should know more about beeswax, the yardstick, than about carnauba', () => {
    const factor = (recipe: Recipe): number => {
      const [low, high] = told(recipe).uncertainty.firmness;
      return high / low;
    };
    expect(factor(salve)).toBeCloseTo(1.5 ** 2, 6);
    expect(factor({ 'carnauba-wax': 20, 'sunflower-oil': 80 })).toBeGreaterThan(5);
  });

  it('should be the same every time', () => {
    expect(told(salve)).toEqual(told(salve));
  });
});
