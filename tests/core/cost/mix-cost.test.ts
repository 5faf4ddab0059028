import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareMoney, costChange, mixCost } from '../../../core/cost/mix-cost.ts';
import { coins } from '../../../core/cost/money.ts';
import type { KeptPrice, Prices } from '../../../core/cost/prices.ts';

const perKg = (price: string): KeptPrice => ({
  price,
  currency: 'EUR',
  pack: { amount: 1000, unit: 'g' },
  at: '2026-11-25',
});

const prices: Prices = {
  beeswax: perKg('29'),
  'candelilla-wax': perKg('24'),
  'shea-butter': perKg('18'),
  'olive-oil': perKg('9.80'),
};
const share = (ingredient: string, percent: number) => ({ ingredient, percent });
const balm = [share('beeswax', 20), share('shea-butter', 30), share('olive-oil', 50)];
const vegan = [share('candelilla-wax', 12), share('shea-butter', 30), share('olive-oil', 58)];

describe('the cost of a kilogram', () => {
  it('should be what it is by hand: 0.2 × 29 + 0.3 × 18 + 0.5 × 9.80 = 16.10', () => {
    const { perKg: cost, missing } = mixCost(balm, prices, 'EUR');
    expect(cost && coins(cost, 2)).toBe(1610n);
    expect(missing).toEqual([]);
  });

  it('should move by what changes: 0.12 × 24 + 0.08 × 9.80 − 0.2 × 29 = −2.136', () => {
    const { perKg: moved } = costChange(balm, vegan, prices, 'EUR');
    expect(moved && coins(moved, 3)).toBe(-2136n);
  });

  it('should need no price of what stays, and name what it lacks', () => {
    const { 'shea-butter': _shea, ...known } = prices;
    expect(costChange(balm, vegan, known, 'EUR').missing).toEqual([]);
    const { beeswax: _wax, ...others } = prices;
    const change = costChange(balm, vegan, others, 'EUR');
    expect(change.missing).toEqual([{ thing: 'beeswax', why: 'none' }]);
    expect(change.perKg).toBeUndefined();
    expect(mixCost(balm, others, 'EUR').perKg).toBeUndefined();
    expect(mixCost(balm, prices, 'GBP').missing.map(({ why }) => why)).toEqual(
      Array(3).fill('other-currency'),
    );
  });

  it('should agree with decimal.js to the coin, and order as it does', () => {
    const cents = fc.integer({ min: 1, max: 99_999 });
    const parts = fc.tuple(fc.integer({ min: 1, max: 98 }), fc.integer({ min: 1, max: 98 }));
    fc.assert(
      fc.property(cents, cents, parts, (a, b, [first, second]) => {
        const noted: Prices = {
          beeswax: perKg((a / 100).toFixed(2)),
          'olive-oil': perKg((b / 100).toFixed(2)),
        };
        const costs = [first, second].map((percent) => {
          const { perKg: cost } = mixCost(
            [share('beeswax', percent), share('olive-oil', 100 - percent)],
            noted,
            'EUR',
          );
          const exact = new Decimal(a)
            .mul(percent)
            .plus(new Decimal(b).mul(100 - percent))
            .div(100);
          return { cost: cost ?? { top: -1n, under: 1n }, exact };
        });
        for (const { cost, exact } of costs)
          expect(coins(cost, 2).toString()).toBe(exact.toDecimalPlaces(0, Decimal.ROUND_HALF_UP).toString());
        const [one, other] = costs;
        if (one && other) expect(compareMoney(one.cost, other.cost)).toBe(one.exact.cmp(other.exact));
      }),
    );
  });
});
