import { type Money, minorDigits, money } from '../../core/cost/money.ts';
import { containerThing, priceOf } from '../../core/cost/prices.ts';
import { defined } from '../../core/defined.ts';
import type { PricedUnit, PriceWish } from '../../core/design/price.ts';
import type { Wishes } from '../../core/design/wishes.ts';
import type { Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { DesignWish } from '../topics/design.ts';
import { noStock, stockOf } from './in-stock.ts';
import { hasPrices } from './substitute-cost.ts';

const usualSize = { amount: 15, unit: 'ml' } as const;

/** Price of one empty container as noted, for its size first; nothing where it is not noted in this currency. */
const containerPrice = (limit: NonNullable<DesignWish['priceLimit']>, tools: Tools): Money | undefined => {
  const { prices } = tools.book.state;
  const name = limit.container ?? 'tin';
  const kept = priceOf(prices, containerThing(name, limit.size ?? usualSize)) ?? priceOf(prices, name);
  if (!kept || kept.currency !== tools.settings.currency || kept.pack.unit !== 'each') return undefined;
  const { top, under } = money(kept.price);
  return { top, under: under * BigInt(Math.round(kept.pack.amount)) };
};

const unitOf = ({ priceLimit }: DesignWish, tools: Tools): PricedUnit => {
  if (priceLimit?.per !== 'container') return { kind: 'kg' };
  const { lossPercent } = tools.settings;
  return {
    kind: 'container',
    fill: priceLimit.size ?? usualSize,
    lossPercent,
    container: containerPrice(priceLimit, tools),
  };
};

/** Ingredients that were asked for and have no price: with them there is no telling what a recipe costs. */
export const unpriced = (wish: DesignWish, tools: Tools): readonly string[] =>
  wish.price
    ? (wish.with ?? [])
        .map(({ ingredient }) => ingredient)
        .filter((id) => priceOf(tools.book.state.prices, id)?.currency !== tools.settings.currency)
    : [];

const priceWish = (wish: DesignWish, tools: Tools): PriceWish | undefined => {
  if (!wish.price || !hasPrices(tools) || unpriced(wish, tools).length > 0) return undefined;
  const { currency } = tools.settings;
  return {
    prices: tools.book.state.prices,
    currency,
    digits: minorDigits(currency),
    unit: unitOf(wish, tools),
    ...(wish.priceLimit ? { ceiling: money(wish.priceLimit.amount) } : {}),
  };
};

/** The wishes as core takes them, with the group's prices and stock where they count. */
export const wishesOf = (wish: DesignWish, tools: Tools): Wishes | Trouble => {
  const stock = wish.stocked ? new Set(stockOf(tools).keys()) : undefined;
  if (stock?.size === 0) return noStock;
  return {
    form: wish.form,
    vegan: wish.vegan ?? false,
    without: wish.without ?? [],
    with: (wish.with ?? []).map(({ ingredient, percent }) => ({ ingredient, ...defined({ percent }) })),
    ...defined({
      survivesC: wish.survivesC,
      shelfLifeMonths: wish.shelfLifeMonths,
      price: priceWish(wish, tools),
      stock,
    }),
  };
};
