import { coins, coinText, decimalText, minorDigits, money, portion } from '../../core/cost/money.ts';
import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { moneyIn, otherSaid } from './cost-money.ts';
import type { Item } from './item.ts';
import type { Piece } from './stock-pieces.ts';
import { sizeOf } from './target.ts';

interface Pack {
  readonly amount: number;
  readonly unit: 'g' | 'ml';
}

/** "18 per kg" of 500 g is 9.00: what the whole purchase came to, to the smallest coin. */
const wholePrice = (price: string, per: number, amount: number, currency: string): string | undefined => {
  const digits = minorDigits(currency);
  const whole = portion(money(price), BigInt(Math.round(amount * 1000)), BigInt(Math.round(per * 1000)));
  const text = coinText(coins(whole, digits), digits);
  return decimalText.test(text) && Number(text) > 0 ? text : undefined;
};

const perUnit = (items: readonly Item[], reading: Reading) => {
  const unit = items.find((item) => item.letter === 'u' && item.unit !== undefined);
  return unit && sizeOf({ ...unit, value: 1 }, reading.settings.region);
};

/** "Two lots of oil" counts, and "till summer 2028" names a year: neither is money. */
const isNoPrice = (item: Item, all: readonly Item[]): boolean => {
  const at = all.indexOf(item);
  const [before, after] = [all[at - 1], all[at + 1]];
  if (item.letter !== 'n') return false;
  const signed = [before, after].some((each) =>
    /^(?:[€£$]|eur|euros?|for|costs?|paid|at)$/.test(each?.word ?? ''),
  );
  const year = Number.isInteger(item.value) && (item.value ?? 0) >= 2000 && (item.value ?? 0) <= 2199;
  // "One 100 g": how many of that size.
  const counts =
    Number.isInteger(item.value) &&
    (item.value ?? 0) <= 12 &&
    (/^[gv]$/.test(after?.letter ?? '') || /^[a-z]+$/i.test(item.word));
  return /^[oc]$/.test(after?.letter ?? '') || ((year || counts) && !signed);
};

interface PriceTold {
  readonly items: readonly Item[];
  readonly price?: string;
  /** What the price is for. */
  readonly pack?: Pack;
  /** What all of it came to, where the price is for something else. */
  readonly paid?: string;
  readonly currency?: string;
  readonly trouble?: Trouble;
}

/** The price of one purchase: for all of it, or for a unit ("18 per kg"). */
export const priceTold = (
  piece: Piece,
  used: readonly Item[],
  reading: Reading,
  bought: Pack | undefined,
): PriceTold => {
  const own = reading.settings.currency;
  const free = piece.items.filter(
    (item) => !used.includes(item) && item.letter !== 'i' && !isNoPrice(item, piece.items),
  );
  const found = moneyIn(free, own);
  if (!found) return { items: [] };
  const { items, price } = found;
  if (found.trouble || price === undefined) return { items, ...defined({ trouble: found.trouble }) };
  const currency = otherSaid(reading.text.slice(piece.from, piece.to), own);
  const per = perUnit(free, reading);
  if (!per || per.unit !== bought?.unit) return { items, price, ...defined({ pack: bought, currency }) };
  const paid = wholePrice(price, per.amount, bought.amount, currency ?? own);
  return { items, price, pack: per, ...defined({ paid, currency }) };
};
