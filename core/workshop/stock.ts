import { type Bench, isLotOut } from '../bench/state.ts';

/**
 * Grams on the shelf by ingredient that may still be used on an ISO day: lots past their best-before date do not count,
 * nor do oils with herbs in them, which are not the plain oil. Nothing for a group that keeps no lots.
 */
export const stockOn = (
  bench: Bench | undefined,
  day: string,
): Readonly<Record<string, number>> | undefined => {
  if (!bench || bench.lots.size === 0) return undefined;
  const stock: Record<string, number> = {};
  for (const lot of bench.lots.values()) {
    const old = lot.bestBefore !== undefined && lot.bestBefore < day;
    if (old || isLotOut(lot) || (lot.herbs ?? []).length > 0) continue;
    stock[lot.ingredient] =
      (Object.hasOwn(stock, lot.ingredient) ? (stock[lot.ingredient] ?? 0) : 0) + lot.leftG;
  }
  return stock;
};
