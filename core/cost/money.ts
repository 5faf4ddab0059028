/**
 * Money without floating point: a fraction of whole numbers in units of the currency. Prices come in as decimal text,
 * everything between is exact, and only what is shown is rounded, half up, to the currency's smallest coin.
 */
export interface Money {
  readonly top: bigint;
  /** Always above zero. */
  readonly under: bigint;
}

/** A price as typed: up to nine digits before the point and six after it. */
export const decimalText = /^\d{1,9}(?:\.\d{1,6})?$/;

const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? a : gcd(b, a % b));

const size = (value: bigint): bigint => (value < 0n ? -value : value);

const reduced = (top: bigint, under: bigint): Money => {
  const common = gcd(size(top), under);
  return common > 1n ? { top: top / common, under: under / common } : { top, under };
};

export const nothing: Money = { top: 0n, under: 1n };

/** Reads decimal text such as "14.50"; the text must fit `decimalText`. */
export const money = (text: string): Money => {
  const [whole = '0', part = ''] = text.split('.');
  return reduced(BigInt(`${whole}${part}`), 10n ** BigInt(part.length));
};

export const plus = (a: Money, b: Money): Money =>
  reduced(a.top * b.under + b.top * a.under, a.under * b.under);

export const minus = (a: Money, b: Money): Money => plus(a, { top: -b.top, under: b.under });

/** `a` times `top` over `under`; `under` must be above zero. */
export const portion = (a: Money, top: bigint, under: bigint): Money => reduced(a.top * top, a.under * under);

export const sumOf = (all: readonly Money[]): Money => all.reduce(plus, nothing);

/** Digits after the point of a currency's smallest coin (ISO 4217, from memory); 2 for all that are not named. */
const otherDigits: Readonly<Record<string, number>> = {
  BHD: 3,
  CLP: 0,
  ISK: 0,
  JOD: 3,
  JPY: 0,
  KRW: 0,
  KWD: 3,
  OMR: 3,
  PYG: 0,
  TND: 3,
  UGX: 0,
  VND: 0,
  XAF: 0,
  XOF: 0,
};

export const minorDigits = (currency: string): number => otherDigits[currency] ?? 2;

const floorDiv = (top: bigint, under: bigint): bigint => {
  const cut = top / under;
  return top % under < 0n ? cut - 1n : cut;
};

/** Whole smallest coins, half up: 0.005 is one cent, -0.005 is none. */
export const coins = (amount: Money, digits: number): bigint => {
  const top = amount.top * 10n ** BigInt(digits);
  return floorDiv(2n * top + amount.under, 2n * amount.under);
};

/** Whole smallest coins that are at least the amount: a price that must not fall short. */
export const coinsAtLeast = (amount: Money, digits: number): bigint =>
  -floorDiv(-(amount.top * 10n ** BigInt(digits)), amount.under);

export const ofCoins = (count: bigint, digits: number): Money => reduced(count, 10n ** BigInt(digits));

/** Coins as decimal text with all digits: 1250 is "12.50". */
export const coinText = (count: bigint, digits: number): string => {
  const sign = count < 0n ? '-' : '';
  const all = String(size(count)).padStart(digits + 1, '0');
  return digits === 0 ? `${sign}${all}` : `${sign}${all.slice(0, -digits)}.${all.slice(-digits)}`;
};

/**
 * Shares out whole coins in proportion to the exact amounts, largest remainder first (the earlier one where two are
 * alike), so that the shares always sum to `total`. Amounts must not be below zero.
 */
export const shareCoins = (amounts: readonly Money[], total: bigint): readonly bigint[] => {
  const sum = sumOf(amounts);
  if (sum.top <= 0n) return amounts.map(() => 0n);
  const exact = amounts.map(({ top, under }) => ({
    top: top * sum.under * total,
    under: under * sum.top,
  }));
  const shares = exact.map(({ top, under }) => top / under);
  const order = exact
    .map(({ top, under }, index) => ({ index, rest: { top: top % under, under } }))
    .sort((a, b) => {
      const difference = b.rest.top * a.rest.under - a.rest.top * b.rest.under;
      return difference === 0n ? a.index - b.index : difference > 0n ? 1 : -1;
    });
  const missing = Number(total - shares.reduce((all, share) => all + share, 0n));
  for (const { index } of order.slice(0, missing)) shares[index] = (shares[index] ?? 0n) + 1n;
  return shares;
};
