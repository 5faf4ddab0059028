import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type InfuseRequest, infuse } from '../../../core/infuse/infuse.ts';
import { uptakeFor, usualRatio, waysFor } from '../../../core/infuse/uptake.ts';
import { ingredientById, isHerb } from '../../../core/ingredients.ts';
import { scaleSteps } from '../../../core/settings.ts';

const herbRow = (id: string) => {
  const found = ingredientById(id);
  if (!found || !isHerb(found)) throw new Error(`no herb ${id}`);
  return found;
};

const calendula = herbRow('calendula');
const base = {
  usualRatio: usualRatio(calendula).middle,
  uptake: uptakeFor(calendula, undefined),
  stepG: 0.1,
} satisfies InfuseRequest;

const worked = (request: Partial<InfuseRequest>) => {
  const result = infuse({ ...base, ...request });
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
};

const problemOf = (request: Partial<InfuseRequest>) => {
  const result = infuse({ ...base, ...request });
  return result.ok ? undefined : result.problem.code;
};

// Worked by hand from the row's common-practice figures: 1:5 to 1:10, 0.9 to 1.8 g kept to the gram (middle 1.35).
describe('an infusion worked by hand', () => {
  it('should take the usual ratio for a herb alone: 40 g at 1:8 is 320 g of oil, 54 g of it kept', () => {
    expect(worked({ herbG: 40 })).toMatchObject({
      herbG: 40,
      oilInG: 320,
      uptakeG: 54,
      uptakeLowG: 36,
      uptakeHighG: 72,
      oilOutG: 266,
      oilOutLowG: 248,
      oilOutHighG: 284,
      ratio: 8,
      ratioAssumed: true,
    });
  });

  it('should reckon back from the oil: 320 g at 1:10 takes 32 g of herb', () => {
    expect(worked({ oilInG: 320, ratio: 10 })).toMatchObject({ herbG: 32, uptakeG: 43.2, oilOutG: 276.8 });
  });

  it('should reckon back from what is wanted: 266 g at 1:8 takes 40 g in 320 g', () => {
    const { herbG, oilInG, oilOutG } = worked({ oilOutG: 266, ratio: 8 });
    expect([herbG, oilInG, oilOutG]).toEqual([40, 320, 266]);
  });

  it('should find the ratio of two amounts', () => {
    expect(worked({ herbG: 50, oilInG: 300 })).toMatchObject({ ratio: 6, ratioAssumed: false });
    expect(worked({ herbG: 40, oilOutG: 266 })).toMatchObject({ ratio: 8, oilInG: 320 });
    expect(worked({ oilInG: 320, oilOutG: 266 })).toMatchObject({ herbG: 40 });
  });

  it('should say what oil to start with to be sure: all that the herb may keep on top', () => {
    expect(worked({ oilOutG: 266, ratio: 8 }).oilInSureG).toBe(338);
  });
});

describe('an infusion that cannot be', () => {
  it.each([
    [{}, 'no-amount'],
    [{ herbG: 0 }, 'not-a-number'],
    [{ herbG: Number.NaN }, 'not-a-number'],
    [{ herbG: 40, ratio: -1 }, 'not-a-number'],
    [{ herbG: 40, ratio: 1 }, 'herb-keeps-all'],
    [{ oilOutG: 300, ratio: 1.2 }, 'herb-keeps-all'],
    [{ oilInG: 300, oilOutG: 320 }, 'more-out-than-in'],
    [{ herbG: 40, oilInG: 320, ratio: 10 }, 'do-not-agree'],
    [{ herbG: 900_000, ratio: 10 }, 'infusion-too-big'],
    [{ oilInG: 0.01, ratio: 8 }, 'infusion-too-small'],
  ] as const)('should name the problem of %j: %s', (request, code) => {
    expect(problemOf(request)).toBe(code);
  });

  it('should bear a said ratio within two percent of the amounts', () => {
    expect(problemOf({ herbG: 40, oilInG: 322, ratio: 8 })).toBeUndefined();
  });
});

describe('any infusion', () => {
  const grams = fc.double({ min: 0.5, max: 5000, noNaN: true });
  const request = fc.record(
    { herbG: grams, oilInG: grams, oilOutG: grams, ratio: fc.double({ min: 2, max: 40, noNaN: true }) },
    { requiredKeys: [] },
  );

  it('should balance to the step: oil in is what is kept and what comes out', () => {
    fc.assert(
      fc.property(request, fc.constantFrom(...scaleSteps), (asked, stepG) => {
        const result = infuse({ ...base, ...asked, stepG });
        if (!result.ok) return;
        const { herbG, oilInG, uptakeG, oilOutG, oilOutLowG, oilOutHighG } = result.value;
        const steps = (value: number) => Math.round(value / stepG);
        expect(steps(oilInG)).toBe(steps(uptakeG) + steps(oilOutG));
        for (const value of [herbG, oilInG, uptakeG, oilOutG]) {
          expect(Math.abs(value / stepG - steps(value))).toBeLessThan(1e-6);
        }
        expect(oilOutLowG).toBeLessThanOrEqual(oilOutG + 1e-9);
        expect(oilOutHighG).toBeGreaterThanOrEqual(oilOutG - 1e-9);
        expect(oilOutG).toBeGreaterThan(0);
      }),
    );
  });

  it('should give what is wanted, or a step more, never less', () => {
    fc.assert(
      fc.property(grams, fc.double({ min: 3, max: 40, noNaN: true }), (oilOutG, ratio) => {
        const out = worked({ oilOutG, ratio }).oilOutG;
        expect(out).toBeGreaterThanOrEqual(oilOutG - 1e-6);
        expect(out).toBeLessThan(oilOutG + 0.1 + 1e-6);
      }),
    );
  });

  it('should find the way back: what comes out of a herb asks for that herb again', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 500, noNaN: true }),
        fc.integer({ min: 4, max: 20 }),
        (herbG, ratio) => {
          const there = worked({ herbG, ratio, stepG: 0.001 });
          const back = worked({ oilOutG: there.oilOutG, ratio, stepG: 0.001 });
          expect(Math.abs(back.herbG - there.herbG)).toBeLessThan(0.01);
        },
      ),
    );
  });
});

describe('what is known of a herb', () => {
  it('should come from its row, and from common practice where no herb is named', () => {
    expect(uptakeFor(calendula, undefined)).toEqual({ value: 1.35, low: 0.9, high: 1.8, weighings: 0 });
    expect(uptakeFor(undefined, undefined)).toEqual({ value: 1.3, low: 0.8, high: 1.8, weighings: 0 });
    expect(usualRatio(herbRow('turmeric'))).toEqual({ low: 10, high: 20, middle: 15 });
    expect(waysFor(herbRow('dandelion-flower'))).toEqual({
      hours: [2, 6],
      bathC: [40, 60],
      coldWeeks: [2, 4],
    });
    expect(waysFor(undefined).coldWeeks).toEqual([4, 6]);
  });
});
