import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CostRequest, costOf, labourFor } from '../../../core/cost/cost.ts';
import { marginAt, priceForMargin } from '../../../core/cost/margin.ts';
import { coinsAtLeast, money, ofCoins } from '../../../core/cost/money.ts';
import type { KeptPrice, Prices } from '../../../core/cost/prices.ts';

const kept = (
  price: string,
  amount: number,
  unit: KeptPrice['pack']['unit'],
  currency = 'EUR',
): KeptPrice => ({
  price,
  currency,
  pack: { amount, unit },
  at: '2026-11-25',
});

const prices: Prices = {
  beeswax: kept('14.50', 500, 'g'),
  'shea-butter': kept('18', 1000, 'g'),
  'olive-oil': kept('9.80', 1000, 'ml'),
  tin: kept('0.35', 1, 'each'),
};

const line = (ingredient: string, grams: number) => ({ ingredient, grams, percent: 0 });
const scaled: CostRequest['scaled'] = {
  lines: [line('beeswax', 74.2), line('shea-butter', 111.4), line('olive-oil', 185.6)],
  strained: [],
  containers: 24,
};
const tins = { name: 'tin', holds: { amount: 15, unit: 'g' } } as const;
const cost = (more: Partial<CostRequest> = {}) =>
  costOf({ scaled, prices, currency: 'EUR', container: tins, ...more });

describe('the cost of a batch', () => {
  // By hand: 74.2 × 14.50 / 500 = 2.1518; 111.4 × 18 / 1000 = 2.0052; 185.6 / 0.912 × 9.80 / 1000 = 1.9944.
  // Together 6.1514, so 6.15; tins 24 × 0.35 = 8.40; 14.55 / 24 = 0.606.
  it('should be what it is by hand, and its lines should sum to the ingredients', () => {
    const { lines, ingredients, containers, total, perContainer, missing } = cost();
    expect([ingredients, containers, total, perContainer, missing]).toEqual([615n, 840n, 1455n, 61n, []]);
    expect(lines.map(({ coins }) => coins)).toEqual([215n, 201n, 199n]);
  });

  it('should count labour at the hourly rate', () => {
    expect(cost({ labour: { ratePerHour: '15', hours: 2.5 } })).toMatchObject({
      labour: 3750n,
      total: 5205n,
    });
  });

  it('should name what has no price, or none it can use, and give no cost per container then', () => {
    const { missing, lines, perContainer } = cost({
      prices: {
        beeswax: kept('14.50', 500, 'g', 'GBP'),
        'shea-butter': kept('1', 1, 'each'),
        calendula: kept('9', 100, 'ml'),
      },
      scaled: { ...scaled, strained: [{ ingredient: 'calendula', grams: 30 }] },
    });
    expect(missing).toEqual([
      { thing: 'beeswax', why: 'other-currency' },
      { thing: 'shea-butter', why: 'wrong-kind' },
      { thing: 'olive-oil', why: 'none' },
      { thing: 'calendula', why: 'no-density' },
      { thing: 'tin', why: 'none' },
    ]);
    expect(lines.every(({ coins }) => coins === undefined)).toBe(true);
    expect(perContainer).toBeUndefined();
  });

  it('should prefer the price of a container of that size', () => {
    const sized = { ...prices, 'tin-15-g': kept('20', 100, 'each') };
    expect(cost({ prices: sized }).containers).toBe(480n);
  });

  it('should pay for a herb that is strained out again', () => {
    const herb = { ...prices, calendula: kept('8', 100, 'g') };
    const { lines } = cost({
      prices: herb,
      scaled: { ...scaled, strained: [{ ingredient: 'calendula', grams: 25 }] },
    });
    expect(lines.at(-1)).toEqual({ ingredient: 'calendula', grams: 25, strained: true, coins: 200n });
  });

  it('should keep lines, parts and total adding up for any prices', () => {
    const amount = fc.integer({ min: 1, max: 9_999_999 }).map((value) => value / 1000);
    const text = fc
      .integer({ min: 1, max: 99_999_999 })
      .map((value) => `${Math.floor(value / 1000)}.${String(value % 1000).padStart(3, '0')}`);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(amount, text, amount), { minLength: 1, maxLength: 20 }),
        text,
        (rows, each) => {
          const ids = rows.map((_, at) => `thing-${at}`);
          const known = Object.fromEntries(
            rows.map(([, price, pack], at) => [ids[at] ?? '', kept(price, pack, 'g')]),
          );
          const result = cost({
            prices: { ...known, tin: kept(each, 1, 'each') },
            scaled: {
              lines: rows.map(([grams], at) => line(ids[at] ?? '', grams)),
              strained: [],
              containers: 7,
            },
          });
          expect(result.lines.reduce((sum, { coins = 0n }) => sum + coins, 0n)).toBe(result.ingredients);
          expect(result.total).toBe(result.ingredients + result.containers + result.labour);
        },
      ),
    );
  });
});

describe('labour', () => {
  const labour = { ratePerHour: '15', currency: 'EUR', hours: 2 };
  it('should count the hours said, else those of a batch, and nothing without a rate or in another currency', () => {
    expect(labourFor(labour, 3, 'EUR')).toEqual({ ratePerHour: '15', hours: 3 });
    expect(labourFor(labour, undefined, 'EUR')).toEqual({ ratePerHour: '15', hours: 2 });
    expect(labourFor({ ratePerHour: '15', currency: 'EUR' }, undefined, 'EUR')).toBeUndefined();
    expect(labourFor(labour, 3, 'GBP')).toBeUndefined();
    expect(labourFor({ ...labour, ratePerHour: null }, 3, 'EUR')).toBeUndefined();
  });
});

describe('a margin', () => {
  // By hand: 24 × 6.50 = 156.00; less 14.55 is 141.45, which is 90.67 % of the price and 5.89 a piece.
  it('should be the share of the price that is left', () => {
    expect(marginAt(money('6.50'), ofCoins(1455n, 2), 24, 2)).toEqual({
      ok: true,
      value: { price: 650n, profit: 589n, profitAll: 14145n, percent: 90.67 },
    });
  });

  it('should be below zero for a price under the cost', () => {
    expect(marginAt(money('0.50'), ofCoins(1455n, 2), 24, 2)).toMatchObject({
      value: { percent: -21.25, profitAll: -255n },
    });
  });

  it('should give a price that leaves it, and a coin less that does not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1_000_000 }),
        fc.integer({ min: 1, max: 500 }),
        fc.integer({ min: 0, max: 99 }),
        (total, count, percent) => {
          const exact = ofCoins(BigInt(total), 2);
          const price = priceForMargin(percent, exact, count);
          if (!price.ok) throw new Error(price.problem.code);
          const coin = coinsAtLeast(price.value, 2);
          // profit / revenue >= percent / 100, in whole numbers.
          const leaves = (one: bigint) =>
            (one * BigInt(count) - BigInt(total)) * 100n >= one * BigInt(count) * BigInt(percent);
          expect(leaves(coin)).toBe(true);
          expect(coin > 1n && leaves(coin - 1n)).toBe(false);
        },
      ),
    );
  });

  it('should not be asked to be all of the price', () => {
    expect(priceForMargin(100, ofCoins(1455n, 2), 24)).toMatchObject({
      problem: { code: 'margin-out-of-range' },
    });
    expect(priceForMargin(Number.NaN, ofCoins(1455n, 2), 24)).toMatchObject({ ok: false });
    expect(marginAt(money('0'), ofCoins(1455n, 2), 24, 2)).toMatchObject({ problem: { code: 'no-price' } });
  });
});
