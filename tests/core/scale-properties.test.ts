import { fc, it } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import type { RecipeLine } from '../../core/recipe.ts';
import type { Scaled, Target } from '../../core/scale.ts';
import { regions, type ScaleStep, scaleSteps } from '../../core/settings.ts';
import { gramsOfSteps, stepDecimals, stepsNearest } from '../../core/steps.ts';
import { grams, parts } from '../helpers/lines.ts';
import { gramsOf, scaled } from '../helpers/scaling.ts';

const pool = [
  'beeswax',
  'candelilla-wax',
  'shea-butter',
  'cocoa-butter',
  'olive-oil',
  'castor-oil',
  'jojoba-oil',
  'lanolin',
  'vitamin-e',
  'peppermint-essential-oil',
];

interface Share {
  readonly ingredient: string;
  readonly weight: number;
}

/** One to ten different ingredients. */
const recipes = (min: number, max: number): fc.Arbitrary<readonly Share[]> =>
  fc.uniqueArray(fc.record({ ingredient: fc.constantFrom(...pool), weight: fc.integer({ min, max }) }), {
    selector: (each) => each.ingredient,
    minLength: 1,
    maxLength: pool.length,
  });

const anyRecipe = recipes(1, 10_000);
/** No line under half a percent or so, so that none of them is raised in a batch of 250 g or more. */
const evenRecipe = recipes(50, 1000);
const inParts = (shares: readonly Share[]): RecipeLine[] =>
  shares.map((each) => parts(each.ingredient, each.weight));

const step = fc.constantFrom(...scaleSteps);
const loss = fc.integer({ min: 0, max: 500 }).map((tenths) => tenths / 10);
const house = fc.record({ stepG: step, lossPercent: loss, region: fc.constantFrom(...regions) });
const fill = fc.oneof(
  fc.integer({ min: 5, max: 200 }).map((amount) => ({ grams: amount })),
  fc.integer({ min: 5, max: 200 }).map((amount) => ({ ml: amount })),
);
const count = fc.integer({ min: 3, max: 400 });
const containers = fc.record({ kind: fc.constant('containers' as const), count, fill });
/** Always room for ten lines on a 1 g scale, and less than a tonne. */
const mass = fc.double({ min: 12, max: 9000, noNaN: true });
const target: fc.Arbitrary<Target> = fc.oneof(
  containers,
  fc.record({ kind: fc.constant('mass' as const), grams: mass }),
  fc.record({ kind: fc.constant('mass' as const), grams: mass, fill }),
  fc.record({ kind: fc.constant('volume' as const), ml: mass }),
);

const sumInSteps = (table: Scaled): number =>
  gramsOf(table).reduce((all, each) => all + stepsNearest(each, table.stepG), 0);

const onStep = (weight: number, stepG: ScaleStep): boolean =>
  Number(weight.toFixed(stepDecimals(stepG))) === weight;

const noise = 1e-9;

describe('any recipe to any target', () => {
  it.prop([anyRecipe, target, house])(
    'should have lines that sum to the total exactly, in whole steps',
    (shares, to, at) => {
      const table = scaled(inParts(shares), to, at);
      expect(gramsOfSteps(sumInSteps(table), at.stepG)).toBe(table.totalG);
      expect(gramsOf(table).every((each) => each > 0 && onStep(each, at.stepG))).toBe(true);
      expect(table.lines.map((each) => each.ingredient)).toEqual(shares.map((each) => each.ingredient));
    },
  );

  it.prop([anyRecipe, target, house])(
    'should have a total of at least net / (1 - loss), as printed',
    (shares, to, at) => {
      const { totalG, netG, allowanceG } = scaled(inParts(shares), to, at);
      expect(totalG).toBeGreaterThanOrEqual(netG / (1 - at.lossPercent / 100) - noise);
      expect(allowanceG).toBeCloseTo(totalG - netG, 4);
      expect(allowanceG).toBeGreaterThanOrEqual(0);
    },
  );

  it.prop([anyRecipe, target, house])(
    'should keep each line within one step of its share, but for raised ones',
    (shares, to, at) => {
      const table = scaled(inParts(shares), to, at);
      const raised = table.tooSmall.filter((each) => each.raised).map((each) => each.ingredient);
      const sum = shares.reduce((all, each) => all + each.weight, 0);
      for (const [index, { ingredient, weight }] of shares.entries()) {
        const quota = (table.totalG * weight) / sum;
        const given = table.lines[index]?.grams ?? 0;
        if (raised.includes(ingredient)) {
          expect(given).toBe(at.stepG);
          expect(quota).toBeLessThan(at.stepG);
        } else {
          expect(given - quota).toBeLessThan(at.stepG + noise);
          // What raised lines get is given by the largest.
          expect(quota - given).toBeLessThan(at.stepG * (1 + raised.length) + noise);
        }
      }
    },
  );

  it.prop([anyRecipe, target, house])(
    'should report every raised line, and no line that the scale can tell',
    (shares, to, at) => {
      const { tooSmall } = scaled(inParts(shares), to, at);
      for (const each of tooSmall) {
        expect(each.wantedG).toBeLessThan(each.leastG);
        if (each.raised) expect(each.wantedG).toBeLessThan(at.stepG);
      }
    },
  );
});

describe('any recipe to containers', () => {
  it.prop([anyRecipe, containers, house])(
    'should hold the fills, and not a step more than needed',
    (shares, to, at) => {
      const table = scaled(inParts(shares), to, at);
      const each = 'grams' in to.fill ? to.fill.grams : (table.fillGEach ?? 0);
      expect(table.containers).toBe(to.count);
      // Fills in ml are printed to 0.0001 g.
      expect(Math.abs(table.netG - each * to.count)).toBeLessThanOrEqual(1e-4 * to.count);
      expect(table.totalG - table.netG / (1 - at.lossPercent / 100)).toBeLessThan(at.stepG + 1e-3);
    },
  );

  it.prop([anyRecipe, containers, house])(
    'should fill as many again when its total is weighed out',
    (shares, to, at) => {
      const { totalG, fillGEach = 0 } = scaled(inParts(shares), to, at);
      const again = scaled(inParts(shares), { kind: 'mass', grams: totalG, fill: to.fill }, at);
      expect(again.totalG).toBe(totalG);
      expect(again.containers).toBeGreaterThanOrEqual(to.count);
      // A step rounded up may be one more tin where the tin is hardly more than a step.
      expect(again.containers).toBeLessThanOrEqual(to.count + Math.ceil(at.stepG / fillGEach));
    },
  );
});

describe('any recipe to a mass or a multiple', () => {
  it.prop([anyRecipe, mass, house])(
    'should weigh out the mass itself, to the step',
    (shares, gramsWanted, at) => {
      const { totalG } = scaled(inParts(shares), { kind: 'mass', grams: gramsWanted }, at);
      expect(Math.abs(totalG - gramsWanted)).toBeLessThanOrEqual(at.stepG / 2 + noise);
    },
  );

  it.prop([anyRecipe, step, fc.integer({ min: 1, max: 5 })])(
    'should multiply every line exactly by a whole number',
    (shares, stepG, factor) => {
      const lines = shares.map((each) => grams(each.ingredient, gramsOfSteps(each.weight, stepG)));
      const table = scaled(lines, { kind: 'multiple', factor }, { stepG });
      expect(gramsOf(table)).toEqual(shares.map((each) => gramsOfSteps(each.weight * factor, stepG)));
    },
  );
});

describe('scaling what was scaled', () => {
  const asWeighed = (table: Scaled): RecipeLine[] =>
    table.lines.map((each) => grams(each.ingredient, each.grams));

  it.prop([anyRecipe, mass, step])(
    'should change nothing at the same total',
    (shares, gramsWanted, stepG) => {
      const first = scaled(inParts(shares), { kind: 'mass', grams: gramsWanted }, { stepG });
      const again = scaled(asWeighed(first), { kind: 'mass', grams: first.totalG }, { stepG });
      expect(gramsOf(again)).toEqual(gramsOf(first));
      expect(gramsOf(scaled(asWeighed(first), { kind: 'multiple', factor: 1 }, { stepG }))).toEqual(
        gramsOf(first),
      );
    },
  );

  it.prop([evenRecipe, fc.integer({ min: 250, max: 5000 }), fc.integer({ min: 250, max: 5000 }), step])(
    'should keep the shares to the rounding of both tables',
    (shares, firstG, secondG, stepG) => {
      const first = scaled(inParts(shares), { kind: 'mass', grams: firstG }, { stepG });
      const second = scaled(asWeighed(first), { kind: 'mass', grams: secondG }, { stepG });
      const sum = shares.reduce((all, each) => all + each.weight, 0);
      for (const [index, { weight }] of shares.entries()) {
        const wanted = (secondG * weight) / sum;
        const off = Math.abs((second.lines[index]?.grams ?? 0) - wanted);
        expect(off).toBeLessThan(stepG * (1 + secondG / firstG) + noise);
      }
    },
  );
});

describe('as much as one ingredient allows', () => {
  it.prop([evenRecipe, fc.nat(), fc.integer({ min: 500, max: 20_000 }), step])(
    'should use it up to a step, and the batch could not be a step bigger',
    (shares, pick, tenths, stepG) => {
      const { ingredient, weight } = shares[pick % shares.length] ?? { ingredient: '', weight: 1 };
      const have = tenths / 10;
      const table = scaled(inParts(shares), { kind: 'limit', ingredient, grams: have }, { stepG });
      const used = table.lines.find((each) => each.ingredient === ingredient)?.grams ?? 0;
      const share = weight / shares.reduce((all, each) => all + each.weight, 0);
      expect(used).toBeLessThan(have + stepG);
      expect(table.totalG * share).toBeLessThanOrEqual(have + 1e-5);
      expect((table.totalG + stepG) * share).toBeGreaterThan(have - 1e-5);
    },
  );
});
