import { fc, test } from '@fast-check/vitest';
import { Decimal } from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { netContents } from '../../../core/label/net-contents.ts';
import type { Region } from '../../../core/settings.ts';

const net = (said: Parameters<typeof netContents>[0], region: Region) => {
  const result = netContents(said, region);
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
};

describe('net contents', () => {
  /** 1 oz = 28.349523125 g exactly (unit tables, read); both units and rounding down: 15 USC 1453, 21 CFR 701.13 (from memory). */
  it.each([
    [12, 'Net Wt. 0.42 oz (12 g)'],
    [15, 'Net Wt. 0.52 oz (15 g)'],
    [10, 'Net Wt. 0.35 oz (10 g)'],
    [30, 'Net Wt. 1.05 oz (30 g)'],
    [4.25, 'Net Wt. 0.14 oz (4.25 g)'],
  ])('should print %f g in the US as %s', (grams, printed) => {
    expect(net({ grams }, 'us').printed).toBe(printed);
  });

  it('should ask a "0.15 oz" stick to hold at least 4.26 g', () => {
    expect(net({ ounces: 0.15 }, 'us')).toMatchObject({ ounces: 0.15, grams: 4.25, holdG: 4.26 });
  });

  /** Regulation (EC) 1223/2009, Article 19(1)(b): packs of less than 5 g are free of it (read). */
  it.each([
    [4.5, false],
    [4.99, false],
    [5, true],
  ])('should say for %f g in the EU and Great Britain whether a figure is required', (grams, required) => {
    for (const region of ['eu', 'uk'] as const) expect(net({ grams }, region).required).toBe(required);
    expect(net({ grams }, 'us').required).toBe(true);
  });

  /** Below a quarter ounce, 7.087 g: 21 CFR 1.24, labelled card or box only (read second-hand). */
  it('should free a US pack below a quarter ounce on a card only', () => {
    expect(net({ grams: 7.08 }, 'us').freedOnCard).toBe(true);
    expect(net({ grams: 7.09 }, 'us').freedOnCard).toBe(false);
    expect(net({ grams: 7.08 }, 'eu').freedOnCard).toBe(false);
  });

  it('should print three figures at most in Canada (from memory)', () => {
    expect(net({ grams: 12.56 }, 'ca').printed).toBe('12.5 g');
    expect(net({ grams: 123.4 }, 'ca').printed).toBe('123 g');
  });

  it('should refuse what no small tin holds', () => {
    expect(netContents({ grams: 0.2 }, 'eu')).toMatchObject({ problem: { code: 'net-too-small' } });
    expect(netContents({ grams: 1001 }, 'eu')).toMatchObject({ problem: { code: 'net-too-large' } });
  });

  test.prop([fc.integer({ min: 30, max: 100_000 })])(
    'should never overstate, and be the largest two decimals that do not (against a decimal library)',
    (hundredths) => {
      const grams = hundredths / 100;
      const { ounces } = net({ grams }, 'us');
      const exact = new Decimal(hundredths).div(100).div('28.349523125');
      expect(ounces).toBe(exact.toDecimalPlaces(2, Decimal.ROUND_FLOOR).toNumber());
    },
  );

  test.prop([fc.integer({ min: 2, max: 3500 }), fc.constantFrom<Region>('eu', 'uk', 'us', 'ca', 'au')])(
    'should ask a tin declared in ounces to hold no less than either figure',
    (hundredths, region) => {
      const ounces = hundredths / 100;
      const { holdG, grams } = net({ ounces }, region);
      expect(holdG).toBeGreaterThanOrEqual(grams);
      const exact = new Decimal(hundredths).div(100).mul('28.349523125');
      if (region === 'us') expect(new Decimal(holdG).gte(exact)).toBe(true);
      expect(exact.gte(grams)).toBe(true);
    },
  );
});
