import { type MissingPrice, priceOfGrams } from './cost.ts';
import { type Money, minus, sumOf } from './money.ts';
import type { Prices } from './prices.ts';

/** One thing in the tin, percent by weight. */
interface Share {
  readonly ingredient: string;
  readonly percent: number;
}

/** What one kilogram of a mix costs, exactly; missing prices are named and never guessed. */
export interface MixCost {
  readonly perKg?: Money;
  readonly missing: readonly MissingPrice[];
}

const gramsPerPercent = 10;

const sharesOf = (mix: readonly Share[]): ReadonlyMap<string, number> => {
  const shares = new Map<string, number>();
  for (const { ingredient, percent } of mix) shares.set(ingredient, (shares.get(ingredient) ?? 0) + percent);
  return shares;
};

const costOfShares = (
  shares: ReadonlyMap<string, number>,
  prices: Prices | undefined,
  currency: string,
): MixCost => {
  const all = [...shares].map(([ingredient, percent]) =>
    priceOfGrams(ingredient, percent * gramsPerPercent, prices, currency),
  );
  const missing = all.flatMap((each) => ('missing' in each ? [each.missing] : []));
  const known = all.flatMap((each) => ('cost' in each ? [each.cost] : []));
  return { missing, ...(missing.length === 0 ? { perKg: sumOf(known) } : {}) };
};

/** Cost of one kilogram of a mix; undefined `perKg` when a price is missing. */
export const mixCost = (mix: readonly Share[], prices: Prices | undefined, currency: string): MixCost =>
  costOfShares(sharesOf(mix), prices, currency);

/** What a change of lines does to the cost of one kilogram. */
export interface CostChange {
  /** Cost after less cost before; only the lines that change need a price. */
  readonly perKg?: Money;
  /** Cost after of the lines that changed, without the one that went: enough to order changes of the same line. */
  readonly comesTo?: Money;
  readonly missing: readonly MissingPrice[];
}

/** Below this many percent a share has not changed. */
const samePercent = 1e-6;

const changed = (
  of: ReadonlyMap<string, number>,
  other: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> =>
  new Map(
    [...of].filter(([id, percent]) => percent > 0 && Math.abs(percent - (other.get(id) ?? 0)) > samePercent),
  );

/** How the cost of one kilogram moves from one mix to another. */
export const costChange = (
  before: readonly Share[],
  after: readonly Share[],
  prices: Prices | undefined,
  currency: string,
): CostChange => {
  const [was, is] = [sharesOf(before), sharesOf(after)];
  const out = costOfShares(changed(was, is), prices, currency);
  const into = costOfShares(changed(is, was), prices, currency);
  const missing = [...new Map([...out.missing, ...into.missing].map((each) => [each.thing, each])).values()];
  return {
    missing,
    ...(into.perKg ? { comesTo: into.perKg } : {}),
    ...(out.perKg && into.perKg ? { perKg: minus(into.perKg, out.perKg) } : {}),
  };
};

/** -1, 0 or 1, for sorting. */
export const compareMoney = (a: Money, b: Money): number => {
  const { top } = minus(a, b);
  return top < 0n ? -1 : top > 0n ? 1 : 0;
};
