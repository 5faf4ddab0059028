import { describe, expect, it } from 'vitest';
import { firmness, holdsAt } from '../../../core/melt/firmness.ts';
import { solidsAt } from '../../../core/melt/solve.ts';
import { fullyMeltedC, solidCurve, solidPercent } from '../../../core/melt/temperatures.ts';
import { blended } from './blends.ts';
import { scipyRows } from './scipy-rows.ts';

describe.each(scipyRows)(
  'against a general root finder: $blend',
  ({ blend: recipe, endC, solidPercent: points }) => {
    const blend = blended(recipe);

    it('should end melting at the same temperature', () => {
      expect(fullyMeltedC(blend)).toBeCloseTo(endC, 8);
    });

    it('should have the same solids', () => {
      for (const [celsius, percent] of points)
        expect(100 * solidsAt(blend.freezing.aged, celsius).solid).toBeCloseTo(percent, 7);
    });
  },
);

describe('temperatures', () => {
  const blend = blended({ beeswax: 20, 'sunflower-oil': 80 });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -270, -273.15, 1e9])(
    'should refuse %d °C',
    (celsius) => {
      const problem = { ok: false, problem: { code: 'bad-temperature', celsius } };
      expect(solidPercent(blend, celsius)).toEqual(problem);
      expect(solidCurve(blend, [20, celsius])).toEqual(problem);
      expect(firmness(blend, celsius)).toEqual(problem);
      expect(holdsAt(blend, celsius)).toEqual(problem);
    },
  );

  it('should draw the curve that single points give, in any order of temperatures', () => {
    const celsius = [60, -20, 33, 20, 54.7, 10];
    const curve = solidCurve(blend, celsius);
    expect(curve.ok).toBe(true);
    for (const [at, percent] of curve.ok ? curve.value : [])
      expect(solidPercent(blend, at)).toEqual({ ok: true, value: percent });
  });

  it('should be all solid when everything in it can freeze and it is cold', () => {
    const { freezing } = blended({ 'cetyl-alcohol': 1 });
    expect(solidsAt(freezing.aged, 20).solid).toBeCloseTo(1, 12);
    expect(solidsAt(freezing.aged, 49.4).solid).toBeCloseTo(1, 12);
    expect(solidsAt(freezing.aged, 49.6).solid).toBe(0);
  });
});
