import { describe, expect, it } from 'vitest';
import { bestBeforeOf, type DatedLine, isFragileOil } from '../../../core/bench/best-before.ts';
import { printedMonth } from '../../../core/bench/days.ts';

const lines: readonly DatedLine[] = [
  { ingredient: 'sunflower-oil', percent: 60, fromLots: true },
  { ingredient: 'beeswax', percent: 39.5, fromLots: true },
  { ingredient: 'peppermint-essential-oil', percent: 0.5, fromLots: true },
];
const lot = (code: string, ingredient: string, bestBefore?: string, on = '2026-10-01') => ({
  lot: code,
  ingredient,
  bestBefore,
  on,
});

const dateOf = (request: Parameters<typeof bestBeforeOf>[0]) => {
  const result = bestBeforeOf(request);
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
};

/*
 * Regulation (EC) 1223/2009, Article 19(1)(c) asks for a date the maker can prove and gives no number. That the shortest lot
 * decides, and the ceilings of twelve and six months, are common practice, no source. The dates are calendar arithmetic.
 */
describe('best before (worked examples)', () => {
  it('should end with the lot that ends first, and name it', () => {
    const lots = [
      lot('S1', 'sunflower-oil', '2027-08-31'),
      lot('B1', 'beeswax', '2029-01-31'),
      lot('P1', 'peppermint-essential-oil', '2027-05-17'),
    ];
    expect(dateOf({ madeOn: '2026-11-25', lines, lots })).toEqual({
      bestBefore: '2027-05-17',
      because: { kind: 'lot', lot: 'P1', ingredient: 'peppermint-essential-oil' },
      rough: false,
    });
  });

  it('should not go beyond the house ceiling, whose month the group may set', () => {
    const lots = [lot('S1', 'sunflower-oil', '2029-01-01')];
    expect(dateOf({ madeOn: '2026-11-25', lines, lots }).bestBefore).toBe('2027-11-25');
    const own = dateOf({ madeOn: '2026-11-25', lines, lots, capMonths: 9 });
    expect(own).toMatchObject({
      bestBefore: '2027-08-25',
      because: { kind: 'house', months: 9, why: 'own' },
    });
  });

  it('should end six months after a fresh infusion, at the end of a short month', () => {
    const fresh = lines.map((line) => ({ ...line, fresh: true }));
    const date = dateOf({ madeOn: '2026-08-31', lines: fresh, lots: [] });
    expect(date).toMatchObject({ bestBefore: '2027-02-28', because: { kind: 'house', why: 'fresh' } });
    expect(dateOf({ madeOn: '2027-08-31', lines: fresh, lots: [] }).bestBefore).toBe('2028-02-29');
  });

  it('should take six months for a fifth of an oil rich in linolenic acid, and not for less', () => {
    const flax = (percent: number) => [
      { ingredient: 'flaxseed-oil', percent, fromLots: true },
      { ingredient: 'beeswax', percent: 100 - percent, fromLots: true },
    ];
    expect(dateOf({ madeOn: '2026-11-25', lines: flax(20), lots: [] }).bestBefore).toBe('2027-05-25');
    expect(dateOf({ madeOn: '2026-11-25', lines: flax(19.9), lots: [] }).bestBefore).toBe('2027-11-25');
  });

  it('should reckon a lot without a date from the day it came, and say so', () => {
    const date = dateOf({
      madeOn: '2026-11-25',
      lines,
      lots: [lot('S1', 'sunflower-oil', undefined, '2026-01-31')],
    });
    expect(date.because).toMatchObject({ kind: 'undated-lot', lot: 'S1' });
    expect(date.rough).toBe(true);
  });

  it('should refuse a lot that ended on the day or before it', () => {
    for (const bestBefore of ['2026-11-25', '2026-11-01']) {
      const result = bestBeforeOf({
        madeOn: '2026-11-25',
        lines,
        lots: [lot('S1', 'sunflower-oil', bestBefore)],
      });
      expect(result).toMatchObject({ ok: false, problem: { code: 'lot-expired', lot: 'S1', bestBefore } });
    }
  });

  it('should reckon a line without any lot from its usual shelf life', () => {
    const bare = lines.map((line) => ({ ...line, fromLots: false }));
    expect(dateOf({ madeOn: '2026-11-25', lines: bare, lots: [] }).bestBefore <= '2027-11-25').toBe(true);
  });
});

describe('oils that tire soon', () => {
  it.each(['flaxseed-oil', 'hemp-seed-oil', 'rosehip-oil', 'walnut-oil'])('should count %s', (id) => {
    expect(isFragileOil(id)).toBe(true);
  });
  it.each(['olive-oil', 'sunflower-oil', 'jojoba', 'beeswax', 'sweet-almond-oil'])(
    'should not count %s',
    (id) => {
      expect(isFragileOil(id)).toBe(false);
    },
  );
});

/* Regulation (EC) 1223/2009, Article 19(1)(c) and Annex VII: "best used before the end of", month and year. */
describe('the printed month', () => {
  it.each([
    ['2027-05-17', '2027-04'],
    ['2027-05-31', '2027-05'],
    ['2028-02-29', '2028-02'],
    ['2027-01-30', '2026-12'],
  ])('should be wholly over by %s: %s', (date, month) => {
    expect(printedMonth(date)).toBe(month);
  });
});
