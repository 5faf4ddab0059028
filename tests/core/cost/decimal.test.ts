import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costOf } from '../../../core/cost/cost.ts';
import { marginAt, priceForMargin } from '../../../core/cost/margin.ts';
import { coins, coinText, money, ofCoins } from '../../../core/cost/money.ts';
import type { KeptPrice, Prices } from '../../../core/cost/prices.ts';
import { ingredientById } from '../../../core/ingredients.ts';
import { scaleRecipe } from '../../../core/scale.ts';
import { scaleSteps } from '../../../core/settings.ts';

/**
 * Sums of money and of grams against decimal.js (general arithmetic library, 80 digits here), for random inputs: nothing
 * may drift, and each sum is rounded once, half up.
 */
const Exact = Decimal.clone({ precision: 80, rounding: Decimal.ROUND_HALF_UP });

const priceText = fc
  .tuple(fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 0, max: 999_999 }))
  .filter(([whole, part]) => whole + part > 0)
  .map(([whole, part]) => `${whole}.${String(part).padStart(6, '0')}`.replace(/\.?0+$/, ''));
const packG = fc.integer({ min: 1, max: 5_000_000 }).map((thousandths) => thousandths / 1000);
const ingredients = ['beeswax', 'shea-butter', 'olive-oil', 'castor-oil', 'cocoa-butter'] as const;
const kept = (price: string, amount: number, unit: KeptPrice['pack']['unit']): KeptPrice => ({
  price,
  currency: 'EUR',
  pack: { amount, unit },
  at: '2026-11-25',
});

const line = fc.record({
  ingredient: fc.constantFrom(...ingredients),
  steps: fc.integer({ min: 1, max: 900_000 }),
  price: priceText,
  pack: packG,
  unit: fc.constantFrom('g', 'ml'),
});
const asked = fc.record({
  lines: fc.uniqueArray(line, { minLength: 1, maxLength: 5, selector: ({ ingredient }) => ingredient }),
  stepG: fc.constantFrom(...scaleSteps),
  tins: fc.integer({ min: 1, max: 5000 }),
  tin: fc.tuple(priceText, fc.integer({ min: 1, max: 500 })),
  lid: fc.tuple(priceText, fc.integer({ min: 1, max: 500 })),
  rate: priceText,
  hours: fc.integer({ min: 1, max: 4000 }).map((quarters) => quarters / 4),
});

const grams = (steps: number, stepG: number): number => Number((steps * stepG).toFixed(3));
const cents = (value: Decimal): string => value.toDecimalPlaces(2, Decimal.ROUND_HALF_UP).toFixed(2);

describe('money against decimal.js', () => {
  it('should cost a batch exactly, with containers, lids and labour', () => {
    fc.assert(
      fc.property(asked, ({ lines, stepG, tins, tin, lid, rate, hours }) => {
        const prices: Prices = Object.fromEntries([
          ...lines.map(({ ingredient, price, pack, unit }) => [ingredient, kept(price, pack, unit)]),
          ['tin', kept(tin[0], tin[1], 'each')],
          ['lid', kept(lid[0], lid[1], 'each')],
        ]);
        const costs = costOf({
          scaled: {
            lines: lines.map(({ ingredient, steps }) => ({
              ingredient,
              grams: grams(steps, stepG),
              percent: 0,
            })),
            strained: [],
            containers: tins,
          },
          prices,
          currency: 'EUR',
          container: { name: 'tin', parts: ['lid'] },
          labour: { ratePerHour: rate, hours },
        });
        const stuff = lines.reduce((sum, { ingredient, steps, price, pack, unit }) => {
          const density = unit === 'ml' ? (ingredientById(ingredient)?.densityGMl?.value ?? 0) : 1;
          // A pack is known to a millionth of a gram, as the scale's steps are.
          const packed = new Exact(new Exact(pack).times(density).toFixed(6));
          return sum.plus(new Exact(price).times(new Exact(stepG).times(steps)).div(packed));
        }, new Exact(0));
        const pieces = new Exact(tin[0])
          .times(tins)
          .div(tin[1])
          .plus(new Exact(lid[0]).times(tins).div(lid[1]));
        const work = new Exact(rate).times(hours);
        expect(coinText(costs.ingredients, 2)).toBe(cents(stuff));
        expect(coinText(costs.containers, 2)).toBe(cents(pieces));
        expect(coinText(costs.labour, 2)).toBe(cents(work));
        const total = new Exact(cents(stuff)).plus(cents(pieces)).plus(cents(work));
        expect(coinText(costs.total, 2)).toBe(total.toFixed(2));
        expect(coinText(costs.perContainer ?? -1n, 2)).toBe(cents(total.div(tins)));
        expect(costs.lines.reduce((sum, each) => sum + (each.coins ?? 0n), 0n)).toBe(costs.ingredients);
        expect(costs.parts.every(({ coins: part }) => part >= 0n && part <= costs.containers)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it('should tell the margin of a price, and the price of a margin, exactly', () => {
    const selling = fc.record({
      price: priceText,
      total: fc.integer({ min: 1, max: 10_000_000 }),
      count: fc.integer({ min: 1, max: 5000 }),
      percent: fc.integer({ min: 0, max: 9_999 }).map((hundredths) => hundredths / 100),
    });
    fc.assert(
      fc.property(selling, ({ price, total, count, percent }) => {
        const cost = new Exact(total).div(100);
        const margin = marginAt(money(price), ofCoins(BigInt(total), 2), count, 2);
        if (!margin.ok) throw new Error(margin.problem.code);
        const taken = new Exact(price).times(count);
        const left = taken.minus(cost);
        // Half up is towards plus infinity here, for losses too.
        const halfUp = (value: Decimal): string =>
          value
            .times(100)
            .plus(0.5)
            .floor()
            .div(100)
            .toFixed(2)
            .replace(/^-0\.00$/, '0.00');
        expect(coinText(margin.value.profitAll, 2)).toBe(halfUp(left));
        expect(margin.value.percent).toBe(Number(halfUp(left.div(taken).times(100))));
        const least = priceForMargin(percent, ofCoins(BigInt(total), 2), count);
        if (!least.ok) throw new Error(least.problem.code);
        const exact = cost.div(count).times(100).div(new Exact(100).minus(percent));
        expect(coinText(coins(least.value, 2), 2)).toBe(cents(exact));
      }),
      { numRuns: 500 },
    );
  });
});

describe('grams against decimal.js', () => {
  it('should sum to the total at the step of the scale, without drift', () => {
    const recipe = fc.record({
      parts: fc.array(fc.integer({ min: 1, max: 100_000 }), { minLength: 2, maxLength: 5 }),
      count: fc.integer({ min: 1, max: 500 }),
      fill: fc.integer({ min: 1000, max: 120_000 }).map((milli) => milli / 1000),
      lossPercent: fc.integer({ min: 0, max: 200 }).map((tenths) => tenths / 10),
      stepG: fc.constantFrom(...scaleSteps),
    });
    let reckoned = 0;
    fc.assert(
      fc.property(recipe, ({ parts, count, fill, lossPercent, stepG }) => {
        const lines = parts.map((amount, at) => ({
          ingredient: ingredients[at] ?? 'beeswax',
          amount,
          unit: 'part' as const,
        }));
        const target = { kind: 'containers', count, fill: { grams: fill } } as const;
        const scaled = scaleRecipe({ lines, target, lossPercent, stepG, region: 'eu' });
        if (!scaled.ok) return;
        reckoned += 1;
        const { value } = scaled;
        const sum = value.lines.reduce((all, each) => all.plus(each.grams), new Exact(0));
        expect(sum.toString()).toBe(new Exact(value.totalG).toString());
        for (const each of value.lines) expect(new Exact(each.grams).mod(stepG).toString()).toBe('0');
        const net = new Exact(fill).times(count);
        const least = net.div(new Exact(1).minus(new Exact(lossPercent).div(100)));
        const whole = least.div(stepG).ceil().times(stepG);
        // A hair of floating point may add one step, never take one away.
        expect(new Exact(value.totalG).minus(whole).abs().toNumber()).toBeLessThanOrEqual(stepG);
        expect(new Exact(value.totalG).plus(1e-6).gte(least)).toBe(true);
      }),
      { numRuns: 500 },
    );
    expect(reckoned).toBeGreaterThan(300);
  });
});
