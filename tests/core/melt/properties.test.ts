import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ingredients } from '../../../core/ingredients.ts';
import { type Blend, type BlendLine, blendOf } from '../../../core/melt/blend.ts';
import { firmness } from '../../../core/melt/firmness.ts';
import { forecast } from '../../../core/melt/forecast.ts';
import { meltingOrder } from '../../../core/melt/order.ts';
import { fullyMeltedC, softensC, solidCurve } from '../../../core/melt/temperatures.ts';
import { treatmentOf } from '../../../core/melt/treatment.ts';
import { worked } from './blends.ts';

const idsThat = (kind: ReturnType<typeof treatmentOf>['kind']): readonly string[] =>
  ingredients.filter((ingredient) => treatmentOf(ingredient).kind === kind).map(({ id }) => id);

const melting = idsThat('melts');
const weight = fc.double({ min: 0.05, max: 100, noNaN: true });
const line = fc.record({ ingredient: fc.constantFrom(...melting), weight });
const recipe = fc.array(line, { minLength: 1, maxLength: 9 });

const blend = (lines: readonly BlendLine[]): Blend => worked(blendOf(lines));

const celsius = Array.from({ length: 29 }, (_, place) => -20 + 4 * place);

const curve = (one: Blend, at: readonly number[] = celsius): readonly number[] =>
  worked(solidCurve(one, at)).map(([, percent]) => percent);

/** Everything the model says about a recipe, to compare two ways of writing it. */
const figures = (lines: readonly BlendLine[]): readonly number[] => {
  const one = blend(lines);
  return [
    ...curve(one),
    fullyMeltedC(one) ?? -999,
    softensC(one) ?? -999,
    worked(firmness(one, 25)),
    worked(firmness(one, 20, 'fresh')),
  ];
};

const expectSame = (a: readonly BlendLine[], b: readonly BlendLine[]): void => {
  const second = figures(b);
  for (const [place, value] of figures(a).entries())
    expect(Math.abs(value - (second[place] ?? Number.NaN))).toBeLessThanOrEqual(
      1e-6 * Math.max(1, Math.abs(value)),
    );
};

describe('melting of any recipe', () => {
  it('should lose solids with every degree and stay within 0 and 100', () => {
    fc.assert(
      fc.property(recipe, (lines) => {
        let before = 100;
        for (const percent of curve(blend(lines))) {
          expect(percent).toBeGreaterThanOrEqual(0);
          expect(percent).toBeLessThanOrEqual(before + 1e-9);
          before = percent;
        }
      }),
    );
  });

  it('should be clear just above fully melted and not yet clear just below', () => {
    fc.assert(
      fc.property(recipe, (lines) => {
        const one = blend(lines);
        const clear = fullyMeltedC(one);
        if (clear === undefined) {
          expect(curve(one).every((percent) => percent === 0)).toBe(true);
          return;
        }
        const [below = 0, above = 1] = curve(one, [clear - 0.05, clear + 0.001]);
        expect(below).toBeGreaterThan(0);
        expect(above).toBe(0);
      }),
    );
  });

  it('should not soften later than it has melted', () => {
    fc.assert(
      fc.property(recipe, (lines) => {
        const one = blend(lines);
        const soft = softensC(one);
        if (soft !== undefined) expect(soft).toBeLessThanOrEqual((fullyMeltedC(one) ?? Number.NaN) + 1e-6);
      }),
    );
  });

  it('should melt in an order that ends at fully melted', () => {
    fc.assert(
      fc.property(recipe, (lines) => {
        const one = blend(lines);
        const order = meltingOrder(one).map(({ goneAboveC }) => goneAboveC);
        expect(order).toEqual([...order].sort((a, b) => a - b));
        const last = order.at(-1);
        if (last !== undefined) expect(last).toBeCloseTo(fullyMeltedC(one) ?? Number.NaN, 6);
        else expect(curve(one, [20])[0]).toBe(0);
      }),
    );
  });

  it('should not change when the recipe is scaled', () => {
    fc.assert(
      fc.property(recipe, fc.double({ min: 1e-3, max: 1e4, noNaN: true }), (lines, factor) => {
        expectSame(
          lines,
          lines.map((one) => ({ ...one, weight: one.weight * factor })),
        );
      }),
    );
  });

  it('should not depend on the order of the lines', () => {
    fc.assert(
      fc.property(recipe, (lines) => {
        expectSame(lines, [...lines].reverse());
        expectSame(
          lines,
          [...lines].sort((a, b) => a.weight - b.weight),
        );
      }),
    );
  });

  it('should not change when a line is split in two', () => {
    fc.assert(
      fc.property(recipe, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (lines, share) => {
        const split = lines.flatMap((one) => [
          { ...one, weight: one.weight * share },
          { ...one, weight: one.weight * (1 - share) },
        ]);
        expectSame(lines, split);
      }),
    );
  });

  it('should only get softer and melt lower with more liquid oil', () => {
    fc.assert(
      fc.property(recipe, weight, (lines, more) => {
        const before = blend(lines);
        const after = blend([...lines, { ingredient: 'sunflower-oil', weight: more }]);
        const clear = fullyMeltedC(before);
        if (clear !== undefined) expect(fullyMeltedC(after)).toBeLessThanOrEqual(clear + 1e-9);
        const old = curve(before);
        for (const [place, percent] of curve(after).entries())
          expect(percent).toBeLessThanOrEqual((old[place] ?? Number.NaN) + 1e-9);
      }),
    );
  });
});

describe('a forecast of any recipe', () => {
  const any = fc.record({ ingredient: fc.constantFrom(...melting, ...idsThat('left-out')), weight });

  const numbersIn = (value: unknown): readonly number[] => {
    if (typeof value === 'number') return [value];
    if (value === null || typeof value !== 'object') return [];
    return Object.values(value).flatMap(numbersIn);
  };

  it('should only hold finite numbers, and its intervals the figures themselves', () => {
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 12 }), (lines) => {
        const made = forecast(lines);
        if (!made.ok) {
          expect(made.problem.code).toBe('nothing-melts');
          return;
        }
        const { blend: _, ...told } = made.value;
        expect(numbersIn(told).every(Number.isFinite)).toBe(true);
        const { uncertainty } = told;
        const within: readonly (readonly [number | undefined, readonly [number, number] | undefined])[] = [
          [told.fullyMeltedC, uncertainty.fullyMeltedC],
          [told.softensC, uncertainty.softensC],
          [told.firmness.at25, uncertainty.firmness],
        ];
        for (const [value, range] of within) {
          expect(range === undefined).toBe(value === undefined);
          if (value === undefined || !range) continue;
          expect(range[0]).toBeLessThanOrEqual(value);
          expect(range[1]).toBeGreaterThanOrEqual(value);
        }
      }),
      { numRuns: 60 },
    );
  });
});
