import fc from 'fast-check';
import { bignumber } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  coins,
  coinsAtLeast,
  coinText,
  minorDigits,
  minus,
  money,
  ofCoins,
  plus,
  portion,
  shareCoins,
  sumOf,
} from '../../../core/cost/money.ts';

const price = fc
  .tuple(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 6 }), fc.nat(999_999))
  .map(([whole, digits, part]) =>
    digits === 0 ? `${whole}` : `${whole}.${String(part).padStart(6, '0').slice(0, digits)}`,
  );

describe('money', () => {
  it('should round half up to the coin', () => {
    expect(coins(money('0.005'), 2)).toBe(1n);
    expect(coins(money('0.0049'), 2)).toBe(0n);
    expect(coins(money('14.5'), 2)).toBe(1450n);
    expect(coins(minus(money('0'), money('0.005')), 2)).toBe(0n);
    expect(coins(minus(money('0'), money('0.006')), 2)).toBe(-1n);
    expect(coinsAtLeast(money('1.001'), 2)).toBe(101n);
    expect(coinsAtLeast(money('1.00'), 2)).toBe(100n);
  });

  it('should write all the digits of a currency', () => {
    expect([
      coinText(1450n, 2),
      coinText(5n, 2),
      coinText(-5n, 2),
      coinText(1450n, 0),
      coinText(5n, 3),
    ]).toEqual(['14.50', '0.05', '-0.05', '1450', '0.005']);
    expect([minorDigits('EUR'), minorDigits('JPY'), minorDigits('KWD')]).toEqual([2, 0, 3]);
  });

  it('should not drift where floating point does: 0.1 + 0.2 is 0.3', () => {
    expect(coins(plus(money('0.1'), money('0.2')), 2)).toBe(30n);
    expect(sumOf(Array.from({ length: 1000 }, () => money('0.1')))).toEqual(money('100'));
    expect(coins(money('1.005'), 2)).toBe(101n);
  });

  // The outside reference is mathjs' decimal arithmetic at 64 digits, which shares no code with ours.
  it("should agree with a decimal library on a price's portion, to the coin", () => {
    fc.assert(
      fc.property(
        price,
        fc.integer({ min: 1, max: 5_000_000 }),
        fc.integer({ min: 1, max: 2_000_000 }),
        (text, part, whole) => {
          const ours = coins(portion(money(text), BigInt(part), BigInt(whole)), 2);
          const theirs = bignumber(text).times(part).times(100).div(whole).plus('0.5').floor();
          expect(ours.toString()).toBe(theirs.toFixed());
        },
      ),
      { numRuns: 300 },
    );
  });

  it('should agree with a decimal library on sums', () => {
    fc.assert(
      fc.property(fc.array(price, { maxLength: 30 }), (texts) => {
        const theirs = texts.reduce((sum, text) => sum.plus(text), bignumber(0)).times(1_000_000);
        expect(coins(sumOf(texts.map(money)), 6).toString()).toBe(theirs.toFixed());
      }),
    );
  });
});

describe('shares of a total', () => {
  it('should sum to it exactly, each within a coin of its due', () => {
    fc.assert(
      fc.property(fc.array(price, { minLength: 1, maxLength: 20 }), fc.nat(10_000_000), (texts, count) => {
        const amounts = texts.map(money);
        const total = BigInt(count);
        const shares = shareCoins(amounts, total);
        const sum = sumOf(amounts);
        if (sum.top === 0n) {
          expect(shares.every((share) => share === 0n)).toBe(true);
          return;
        }
        expect(shares.reduce((all, share) => all + share, 0n)).toBe(total);
        for (const [index, amount] of amounts.entries()) {
          const due = portion(amount, total * sum.under, sum.top);
          const off = minus(ofCoins(shares[index] ?? 0n, 0), due);
          expect(coins({ top: off.top < 0n ? -off.top : off.top, under: off.under }, 6)).toBeLessThanOrEqual(
            1_000_000n,
          );
        }
      }),
    );
  });
});
