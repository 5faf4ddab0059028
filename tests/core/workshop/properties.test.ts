import { it as property } from '@fast-check/vitest';
import fc from 'fast-check';
import { describe, expect } from 'vitest';
import { scaleSteps } from '../../../core/settings.ts';
import { stepsNearest } from '../../../core/steps.ts';
import type { Making } from '../../../core/workshop/kit.ts';
import type { SetAside } from '../../../core/workshop/set-aside.ts';
import { lengthMin } from '../../../core/workshop/timeline.ts';
import { planWorkshop, type WorkshopRequest } from '../../../core/workshop/workshop.ts';
import { percent } from '../../helpers/lines.ts';
import { stick } from './plans.ts';

const making: fc.Arbitrary<Making> = fc
  .record({
    wax: fc.integer({ min: 10, max: 30 }),
    oil: fc.integer({ min: 20, max: 60 }),
    scent: fc.constantFrom(0, 0.4, 1),
    each: fc.integer({ min: 1, max: 12 }),
    fill: fc.oneof(
      fc.integer({ min: 4, max: 120 }).map((ml) => ({ ml })),
      fc.integer({ min: 4, max: 120 }).map((grams) => ({ grams })),
    ),
    infused: fc.boolean(),
  })
  .map(({ wax, oil, scent, each, fill, infused }) => ({
    lines: [
      percent('beeswax', wax),
      { ...percent('sunflower-oil', oil), ...(infused ? { infusedWith: 'calendula' } : {}) },
      percent('shea-butter', 100 - wax - oil - scent),
      ...(scent > 0 ? [percent('lavender-essential-oil', scent)] : []),
    ],
    each,
    fill,
    container: 'tin',
  }));

const request: fc.Arbitrary<WorkshopRequest> = fc
  .record({
    people: fc.integer({ min: 1, max: 120 }),
    makings: fc.array(fc.oneof(making, fc.constant(stick)), { minLength: 1, maxLength: 3 }),
    sparePercent: fc.integer({ min: 0, max: 100 }),
    lossPercent: fc.integer({ min: 0, max: 20 }),
    stepG: fc.constantFrom(...scaleSteps.filter((step) => step < 1)),
    plates: fc.option(fc.integer({ min: 1, max: 6 })),
    jug: fc.option(fc.integer({ min: 60, max: 3000 })),
    stock: fc.option(fc.integer({ min: 0, max: 2000 })),
  })
  .map(({ plates, jug, stock, ...rest }) => ({
    ...rest,
    region: 'eu' as const,
    ...(plates === null ? {} : { hotPlates: plates }),
    ...(jug === null ? {} : { jugMl: jug }),
    ...(stock === null ? {} : { stockG: { beeswax: stock, 'shea-butter': stock / 2 } }),
  }));

const planOf = (any: WorkshopRequest) => {
  const plan = planWorkshop(any);
  if (!plan.ok) throw new Error(JSON.stringify(plan.problem));
  return plan.value;
};

const sum = (all: readonly number[], stepG: WorkshopRequest['stepG']): number =>
  all.reduce((steps, each) => steps + stepsNearest(each, stepG), 0);

const checkLine = (line: SetAside, { people, sparePercent, stepG }: WorkshopRequest): void => {
  const steps = (grams: number): number => stepsNearest(grams, stepG);
  expect(line.grams).toBeGreaterThan(0);
  expect(steps(line.grams)).toBe(steps(line.kitsG) + steps(line.spareG));
  if (line.together) return;
  expect(steps(line.kitsG)).toBe(steps(line.perPersonG) * people);
  expect(line.spareG).toBeGreaterThanOrEqual((line.kitsG * sparePercent) / 100 - 1e-9);
};

describe('any workshop', () => {
  property.prop([request], { numRuns: 150 })('should balance to the step', (any) => {
    const { stepG } = any;
    const plan = planOf(any);
    for (const { kit, lines } of plan.recipes) {
      const kitSteps = sum(
        kit.lines.map(({ grams }) => grams),
        stepG,
      );
      expect(kitSteps).toBe(stepsNearest(kit.weighedG, stepG));
      for (const line of lines) checkLine(line, any);
      // Every person can fill every container: what is melted, less the loss, is at least the net.
      expect(kit.meltedG * (1 - any.lossPercent / 100)).toBeGreaterThanOrEqual(kit.netG - 1e-6);
    }
    const all = plan.lines.map(({ grams }) => grams);
    expect(sum(all, stepG)).toBe(stepsNearest(plan.totalG, stepG));
    expect(sum([plan.kitsG, plan.spareG], stepG)).toBe(stepsNearest(plan.totalG, stepG));
  });

  property.prop([request], { numRuns: 150 })(
    'should fit its jugs two thirds full at the pour temperature',
    (any) => {
      const plan = planOf(any);
      for (const { jugs, melting, totalG } of plan.recipes) {
        expect(jugs.hotMlFullest).toBeLessThanOrEqual((jugs.jugMl * 2) / 3 + 1e-6);
        expect(jugs.jugs * jugs.jugMl * (2 / 3)).toBeGreaterThanOrEqual(totalG * melting.hotMlPerG - 1e-6);
        // Molten fats and waxes weigh 0.80 to 0.93 g to the ml (melt densities and growth with heat, memory).
        expect(1 / melting.hotMlPerG).toBeGreaterThan(0.8);
        expect(1 / melting.hotMlPerG).toBeLessThan(0.93);
      }
      expect(plan.baths.atOnce * plan.baths.rounds).toBeGreaterThanOrEqual(plan.baths.jugs);
      expect(plan.baths.atOnce).toBeLessThanOrEqual(any.hotPlates ?? plan.baths.jugs);
    },
  );

  property.prop([request], { numRuns: 150 })('should buy at least what is lacking', (any) => {
    const plan = planOf(any);
    const needed = new Map<string, number>();
    for (const { ingredient, grams } of plan.lines)
      needed.set(ingredient, (needed.get(ingredient) ?? 0) + grams);
    for (const [ingredient, grams] of needed) {
      const bought = plan.shopping.find((each) => each.ingredient === ingredient);
      const there = any.stockG?.[ingredient] ?? 0;
      expect((bought?.gramsToBuy ?? 0) + there).toBeGreaterThanOrEqual(grams - 1e-6);
    }
    for (const { ahead } of [plan.steeped]) {
      for (const { herb, infusion } of ahead) {
        expect(
          plan.shopping.find(({ ingredient }) => ingredient === herb)?.gramsToBuy,
        ).toBeGreaterThanOrEqual(infusion.herbG - 1e-6);
      }
    }
  });

  property.prop([request], { numRuns: 100 })(
    'should have a day in order: nothing is poured before it is melted',
    (any) => {
      const { timeline } = planOf(any);
      const times = timeline.map(({ atMin }) => atMin);
      expect(times).toEqual(times.toSorted((a, b) => a - b));
      const first = (step: string) => timeline.find((each) => each.step === step)?.atMin ?? Number.NaN;
      const last = (step: string) =>
        Math.max(
          ...timeline.filter((each) => each.step === step).map(({ atMin, minutes }) => atMin + minutes),
        );
      expect(first('set-up')).toBeLessThan(first('warm-baths'));
      expect(first('pour')).toBeGreaterThanOrEqual(first('melt'));
      expect(first('set')).toBe(last('pour'));
      expect(first('hand-out')).toBeGreaterThanOrEqual(last('set'));
      expect(first('hand-out')).toBeGreaterThanOrEqual(last('clean'));
      expect(lengthMin(timeline)).toBe(last('hand-out'));
    },
  );
});
