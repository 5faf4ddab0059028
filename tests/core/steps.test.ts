import { fc, it } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { type ScaleStep, scaleSteps } from '../../core/settings.ts';
import { gramsOfSteps, stepDecimals, stepsAtLeast, stepsAtMost, stepsNearest } from '../../core/steps.ts';

const anyStep = fc.constantFrom(...scaleSteps);
/** Up to a tonne on the finest scale. */
const anySteps = fc.integer({ min: 1, max: 1_000_000_000 });

describe('steps of a scale', () => {
  it('should show 0, 1, 2 or 3 decimals', () => {
    expect(scaleSteps.map(stepDecimals)).toEqual([0, 1, 2, 3]);
  });

  it('should bring 3712 steps of 0.1 g to 371.2 g without a stray digit', () => {
    // 3712 × 0.1 is 371.20000000000005 in floating point.
    expect(gramsOfSteps(3712, 0.1)).toBe(371.2);
    expect(gramsOfSteps(3, 0.1)).toBe(0.3);
    expect(gramsOfSteps(371_135, 0.001)).toBe(371.135);
  });

  it.each([
    { got: 371.134, stepG: 0.1, least: 3712, most: 3711, nearest: 3711 },
    { got: 371.2, stepG: 0.1, least: 3712, most: 3712, nearest: 3712 },
    { got: 0, stepG: 0.1, least: 0, most: 0, nearest: 0 },
    { got: 0.04, stepG: 0.1, least: 1, most: 0, nearest: 0 },
    { got: 0.05, stepG: 0.1, least: 1, most: 0, nearest: 1 },
    { got: 1.5, stepG: 1, least: 2, most: 1, nearest: 2 },
    { got: 0.1 + 0.2, stepG: 0.1, least: 3, most: 3, nearest: 3 },
  ] as const)('should hold $got g at $stepG g in $least, $most and $nearest steps', (row) => {
    expect(stepsAtLeast(row.got, row.stepG)).toBe(row.least);
    expect(stepsAtMost(row.got, row.stepG)).toBe(row.most);
    expect(stepsNearest(row.got, row.stepG)).toBe(row.nearest);
  });

  it.prop([anySteps, anyStep])(
    'should come back to the same steps, rounded up, down or nearest',
    (steps, stepG) => {
      const grams = gramsOfSteps(steps, stepG);
      expect(stepsAtLeast(grams, stepG)).toBe(steps);
      expect(stepsAtMost(grams, stepG)).toBe(steps);
      expect(stepsNearest(grams, stepG)).toBe(steps);
    },
  );

  it.prop([anySteps, anyStep])('should never show more decimals than the scale does', (steps, stepG) => {
    const grams = gramsOfSteps(steps, stepG);
    expect(Number(grams.toFixed(stepDecimals(stepG)))).toBe(grams);
  });

  it.prop([fc.double({ min: 0, max: 100_000, noNaN: true }), anyStep])(
    'should bracket any weight between two neighbouring steps',
    (grams, stepG: ScaleStep) => {
      const least = stepsAtLeast(grams, stepG);
      const most = stepsAtMost(grams, stepG);
      expect(least - most).toBeGreaterThanOrEqual(0);
      expect(least - most).toBeLessThanOrEqual(1);
      expect(gramsOfSteps(least, stepG)).toBeGreaterThanOrEqual(grams - 2e-6);
      expect(gramsOfSteps(most, stepG)).toBeLessThanOrEqual(grams + 2e-6);
    },
  );
});
