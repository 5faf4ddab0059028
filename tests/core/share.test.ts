import { fc, it } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { type Shares, shareOut } from '../../core/share.ts';
import { problemOf, worked } from '../helpers/lines.ts';

const shared = (weights: readonly number[], total: number): Shares => worked(shareOut(weights, total));

describe('sharing out whole steps', () => {
  it.each([
    { say: 'by largest remainder', weights: [20, 30, 50], total: 3712, steps: [742, 1114, 1856] },
    { say: 'evenly', weights: [1, 1, 1, 1], total: 8, steps: [2, 2, 2, 2] },
    {
      say: 'with the odd steps to the earlier of equal lines',
      weights: [1, 1, 1],
      total: 11,
      steps: [4, 4, 3],
    },
    { say: 'one line', weights: [0.3], total: 7, steps: [7] },
    { say: 'around a line without a weight', weights: [1, 0, 1], total: 4, steps: [2, 0, 2] },
    { say: 'a step to each line', weights: [1, 98, 1], total: 3, steps: [1, 1, 1] },
  ])('should share $say', ({ weights, total, steps }) => {
    expect(shared(weights, total).steps).toEqual(steps);
  });

  it('should raise a line below one step, take the step from the largest, and say which', () => {
    expect(shared([100, 200, 0.01], 300)).toEqual({ steps: [100, 199, 1], raised: [2] });
  });

  it('should not call a line raised that its own remainder brought to one step', () => {
    // Quotas 9.4 and 0.6: the odd step is the second line's by right.
    expect(shared([9.4, 0.6], 10)).toEqual({ steps: [9, 1], raised: [] });
  });

  it('should take several raised steps from whichever line is largest then', () => {
    expect(shared([50, 50, 0.01, 0.01, 0.01], 10)).toEqual({ steps: [3, 4, 1, 1, 1], raised: [2, 3, 4] });
  });

  it.each([{ weights: [] }, { weights: [0] }, { weights: [0, 0, 0] }])(
    'should have nothing to share for $weights',
    ({ weights }) => {
      expect(problemOf(shareOut(weights, 100))).toEqual({ code: 'nothing-to-share' });
    },
  );

  it('should refuse fewer steps than lines with a weight', () => {
    expect(problemOf(shareOut([1, 2, 0, 3], 2))).toEqual({ code: 'too-few-steps', steps: 2, lines: 3 });
    expect(problemOf(shareOut([1], 0))).toEqual({ code: 'too-few-steps', steps: 0, lines: 1 });
  });

  // However small a line is beside the others, it is on the table: none is silently rounded to zero.
  it.each([
    { say: 'a ten-billionth of a percent', weights: [100, 1e-10] },
    { say: '0.4 mg beside ten tonnes', weights: [1e7, 0.0004] },
  ])('should still give a step to $say', ({ weights }) => {
    expect(shared(weights, 1000)).toEqual({ steps: [999, 1], raised: [1] });
  });
});

/** Weights in millionths, so that the sums here are exact whole numbers. */
const millionths = fc.array(fc.integer({ min: 0, max: 5_000_000_000 }), { minLength: 1, maxLength: 20 });
const batch = millionths.chain((weights) => {
  const weighed = weights.filter((weight) => weight > 0).length;
  return fc.tuple(fc.constant(weights), fc.integer({ min: Math.max(1, weighed), max: 1_000_000_000 }));
});
const ofMillionths = (weights: readonly number[]): number[] => weights.map((weight) => weight / 1e6);
const sumOf = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

describe('sharing out any weights', () => {
  it.prop([batch])('should sum to the total exactly, in whole steps', ([weights, total]) => {
    fc.pre(sumOf(weights) > 0);
    const { steps } = shared(ofMillionths(weights), total);
    expect(sumOf(steps)).toBe(total);
    expect(steps.every((each) => Number.isSafeInteger(each) && each >= 0)).toBe(true);
  });

  it.prop([batch])(
    'should give a step to each line with a weight, and none to the others',
    ([weights, total]) => {
      fc.pre(sumOf(weights) > 0);
      const { steps } = shared(ofMillionths(weights), total);
      expect(steps.map((each) => each > 0)).toEqual(weights.map((weight) => weight > 0));
    },
  );

  it.prop([batch])(
    'should stay within one step of the quota, but for raised lines and their givers',
    ([weights, total]) => {
      fc.pre(sumOf(weights) > 0);
      const { steps, raised } = shared(ofMillionths(weights), total);
      const sum = BigInt(sumOf(weights));
      for (const [index, weight] of weights.entries()) {
        // Compared as whole numbers: steps / total against weight / sum.
        const product = BigInt(weight) * BigInt(total);
        const given = BigInt(steps[index] ?? 0) * sum;
        if (raised.includes(index)) {
          expect(steps[index]).toBe(1);
          expect(product < sum).toBe(true);
          continue;
        }
        expect(given < product + sum).toBe(true);
        expect(given > product - sum * BigInt(1 + raised.length)).toBe(true);
      }
    },
  );

  it.prop([batch])('should treat equal lines alike, to one step', ([weights, total]) => {
    fc.pre(sumOf(weights) > 0);
    const twice = [...weights, ...weights];
    const { steps } = shared(ofMillionths(twice), total + weights.length);
    for (const index of weights.keys()) {
      const difference = (steps[index] ?? 0) - (steps[index + weights.length] ?? 0);
      expect(Math.abs(difference)).toBeLessThanOrEqual(1);
    }
  });

  it.prop([batch])('should come out the same every time, and when shared out again', ([weights, total]) => {
    fc.pre(sumOf(weights) > 0);
    const first = shared(ofMillionths(weights), total);
    expect(shared(ofMillionths(weights), total)).toEqual(first);
    expect(
      shared(
        first.steps.map((each) => each / 1000),
        total,
      ).steps,
    ).toEqual(first.steps);
  });

  it.prop([batch])('should give a heavier line no fewer steps than a lighter one', ([weights, total]) => {
    fc.pre(sumOf(weights) > 0);
    const { steps, raised } = shared(ofMillionths(weights), total);
    fc.pre(raised.length === 0);
    for (const [a, heavier] of weights.entries()) {
      for (const [b, lighter] of weights.entries()) {
        if (heavier > lighter) expect(steps[a] ?? 0).toBeGreaterThanOrEqual(steps[b] ?? 0);
      }
    }
  });
});
