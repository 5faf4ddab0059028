import { fail, ok, type Result } from '../result.ts';
import { coins, coinText, type Money, minus, portion } from './money.ts';

/** Millionths of a percent: exact for every margin that is typed. */
const perUnit = 1_000_000;

export type MarginProblem =
  | { readonly code: 'no-price' }
  /** A margin of 100 % or more would need a cost of nothing. */
  | { readonly code: 'margin-out-of-range' };

export interface Margin {
  /** Selling price, profit for one container and for all, in smallest coins. */
  readonly price: bigint;
  readonly profit: bigint;
  readonly profitAll: bigint;
  /** (price − cost) / price in percent, to a hundredth, half up. */
  readonly percent: number;
}

const percentOf = (part: Money, whole: Money): number =>
  Number(
    coinText(coins(portion({ top: part.top * whole.under, under: part.under * whole.top }, 100n, 1n), 2), 2),
  );

/** What a selling price leaves of it, over the exact cost of one container. */
export const marginAt = (
  price: Money,
  total: Money,
  count: number,
  digits: number,
): Result<Margin, MarginProblem> => {
  if (price.top <= 0n) return fail({ code: 'no-price' });
  const all = portion(price, BigInt(count), 1n);
  const profitAll = minus(all, total);
  return ok({
    price: coins(price, digits),
    profit: coins(portion(profitAll, 1n, BigInt(count)), digits),
    profitAll: coins(profitAll, digits),
    percent: percentOf(profitAll, all),
  });
};

/** The lowest price in whole coins that leaves at least this margin: cost / (1 − margin). */
export const priceForMargin = (
  percent: number,
  total: Money,
  count: number,
): Result<Money, MarginProblem> => {
  if (!(percent >= 0) || percent >= 100) return fail({ code: 'margin-out-of-range' });
  const left = BigInt(Math.round((100 - percent) * perUnit));
  return left <= 0n
    ? fail({ code: 'margin-out-of-range' })
    : ok(portion(portion(total, 1n, BigInt(count)), BigInt(100 * perUnit), left));
};
