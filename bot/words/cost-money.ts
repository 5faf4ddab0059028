import { coinText } from '../../core/cost/money.ts';
import type { DayPrice } from '../../core/cost/prices.ts';
import { ingredientById } from '../../core/ingredients.ts';
import { readable } from './numbers.ts';
import { shortName } from './warnings.ts';

/** "12.50 EUR". */
export const amountText = (coins: bigint, digits: number, currency: string): string =>
  `${coinText(coins, digits)} ${currency}`;

/** Coins as a figure: 12.5. Exact enough for JSON; sums are done in coins. */
export const figure = (coins: bigint, digits: number): number => Number(coinText(coins, digits));

/** "tin 15 ml", "shea butter": what a price is of. */
export const thingName = (thing: string): string => {
  if (ingredientById(thing)) return shortName(thing);
  return thing.replace(/-(\d+(?:\.\d+)?)-(g|ml)$/, ' $1 $2');
};

/** "24 tins of 15 g", "1 jar". */
export const containersText = (
  count: number,
  container: string | undefined,
  size: { readonly amount: number; readonly unit: string } | undefined,
): string => {
  const word = `${container ?? 'container'}${count === 1 ? '' : 's'}`;
  return size ? `${count} ${word} of ${readable(size.amount)} ${size.unit}` : `${count} ${word}`;
};

const packText = ({ pack }: DayPrice): string => {
  if (pack.unit === 'each') return pack.amount === 1 ? 'each' : `for ${readable(pack.amount)}`;
  const big = pack.unit === 'g' ? 'kg' : 'l';
  return pack.amount === 1000 ? `per ${big}` : `per ${readable(pack.amount)} ${pack.unit}`;
};

/** A typed price, filled up to the currency's smallest coin: "14.5" is 14.50. */
export const typedText = (price: string, digits: number): string => {
  const [whole = '0', part = ''] = price.split('.');
  return digits === 0 && part === '' ? whole : `${whole}.${part.padEnd(digits, '0')}`;
};

/** "14.50 EUR per 500 g, incl. VAT". */
export const priceText = (price: DayPrice, digits: number): string => {
  const vat = price.vat ? `, ${price.vat}. VAT` : '';
  return `${typedText(price.price, digits)} ${price.currency} ${packText(price)}${vat}`;
};
