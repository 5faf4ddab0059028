import { compareMoney, mixCost } from '../cost/mix-cost.ts';
import { coins, coinsAtLeast, type Money, money, ofCoins, plus, portion } from '../cost/money.ts';
import type { Prices } from '../cost/prices.ts';
import { blendDensity } from '../density.ts';
import type { DesignLine } from './sketch.ts';

/** What the ceiling is set on: a kilogram of balm, or one filled container with its own price and the loss. */
export type PricedUnit =
  | { readonly kind: 'kg' }
  | {
      readonly kind: 'container';
      readonly fill: { readonly amount: number; readonly unit: 'g' | 'ml' };
      readonly lossPercent: number;
      /** Price of one empty container; nothing where none is noted. */
      readonly container: Money | undefined;
    };

/** Cost minded: only what has a price is used; cheapest first, or up to a ceiling. */
export interface PriceWish {
  readonly prices: Prices | undefined;
  readonly currency: string;
  /** Digits of the currency's smallest coin. */
  readonly digits: number;
  readonly unit: PricedUnit;
  readonly ceiling?: Money;
}

/** Grams are counted to the milligram. */
const perGram = 1000;

const kilogram = (perKg: Money, grams: number): Money =>
  portion(perKg, BigInt(Math.round(grams * perGram)), BigInt(1000 * perGram));

const gramsOf = (lines: readonly DesignLine[], unit: Extract<PricedUnit, { kind: 'container' }>): number => {
  const { amount, unit: measure } = unit.fill;
  const density = blendDensity(lines.map(({ ingredient, percent }) => ({ ingredient, weight: percent })));
  const net = measure === 'g' ? amount : amount * density.densityGMl;
  return net / (1 - unit.lossPercent / 100);
};

/** What a recipe costs for the unit of the wish, exactly; nothing when a price is missing. */
export const costFor = (lines: readonly DesignLine[], wish: PriceWish): Money | undefined => {
  const { perKg } = mixCost(lines, wish.prices, wish.currency);
  if (!perKg || wish.unit.kind === 'kg') return perKg;
  const filled = kilogram(perKg, gramsOf(lines, wish.unit));
  return wish.unit.container ? plus(filled, wish.unit.container) : filled;
};

/** What is asked for is what is shown: a cost that rounds to the ceiling is within it. */
export const isWithin = (cost: Money | undefined, { ceiling, digits }: PriceWish): boolean =>
  cost !== undefined && (ceiling === undefined || coins(cost, digits) <= coins(ceiling, digits));

/** The ceiling that this cost needs, in whole coins. */
export const ceilingFor = (cost: Money, { digits }: PriceWish): Money =>
  ofCoins(coinsAtLeast(cost, digits), digits);

export const cheaper = (a: Money | undefined, b: Money | undefined): number => {
  if (a && b) return compareMoney(a, b);
  return a ? -1 : b ? 1 : 0;
};

const one = money('1');
const share = 1_000_000;

/** How many times dearer, as a plain number: for ordering only. */
export const timesDearer = (cost: Money, least: Money): number => {
  if (least.top <= 0n) return 1;
  const times = portion(one, cost.top * least.under * BigInt(share), cost.under * least.top);
  return Number(times.top / times.under) / share;
};
