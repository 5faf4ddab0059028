import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compare } from '../../../core/substitute/compare.ts';
import type { Mix } from '../../../core/substitute/mix.ts';
import { replace, shareOf } from '../../../core/substitute/replace.ts';
import type { Replaced } from '../../../core/substitute/replaced.ts';
import { worked } from '../melt/blends.ts';
import { anyMix, isForecast, mix, percentIn, sumOf } from './mixes.ts';

const balm = mix({ beeswax: 20, 'shea-butter': 30, 'olive-oil': 50 });
const half = { part: { amount: 0.5, unit: 'share' } } as const;

const isLiquidSwap = ({ way }: Replaced): boolean =>
  way === 'gram-for-gram' || way === 'gram-for-gram-firmed';

/** Looks at one swap of a part; 1 when its firmness was to be held and was looked at. */
const checked = (before: Mix, made: Replaced, share: number): 0 | 1 => {
  expect(sumOf(made.mix)).toBeCloseTo(100, 6);
  if (isLiquidSwap(made))
    expect(percentIn(made.mix, made.from)).toBeCloseTo(percentIn(before, made.from) * (1 - share), 6);
  const moved = compare(before, made.mix).firmnessPercent;
  const holds = !isLiquidSwap(made) && made.way !== 'herb' && !made.notes.includes('already-firm');
  if (!holds || moved === undefined || !isForecast(before)) return 0;
  expect(Math.abs(moved)).toBeLessThan(0.5);
  return 1;
};

describe('a part of an ingredient exchanged', () => {
  it('should leave the other part in and hold the firmness', () => {
    const made = worked(replace(balm, 'beeswax', 'candelilla-wax', half));
    expect(percentIn(made.mix, 'beeswax')).toBeCloseTo(10, 9);
    expect(made).toMatchObject({ takenPercent: 10, leftPercent: 10 });
    expect(compare(balm, made.mix).firmnessPercent).toBeCloseTo(0, 3);
    expect(sumOf(made.mix)).toBeCloseTo(100, 9);
  });

  it('should move a liquid gram for gram', () => {
    const made = worked(replace(balm, 'olive-oil', 'castor-oil', { part: { amount: 15, unit: 'percent' } }));
    expect(percentIn(made.mix, 'olive-oil')).toBeCloseTo(35, 9);
    expect(percentIn(made.mix, 'castor-oil')).toBeCloseTo(15, 9);
  });

  it('should say nothing of a wax alone where some of the old one stays', () => {
    expect(worked(replace(balm, 'beeswax', 'carnauba-wax')).notes).toContain('not-as-only-wax');
    expect(worked(replace(balm, 'beeswax', 'carnauba-wax', half)).notes).not.toContain('not-as-only-wax');
  });

  it.each([
    [{ amount: 5, unit: 'percent' }, 0.25],
    [{ amount: 20, unit: 'percent' }, 1],
    [{ amount: 35, unit: 'percent' }, 1],
    [{ amount: 0.3, unit: 'share' }, 0.3],
  ] as const)('should take %j as that share of 20 %% beeswax: %d', (part, share) => {
    expect(shareOf(balm, 'beeswax', part)).toBeCloseTo(share, 9);
  });

  it('should weigh grams against the batch they are of', () => {
    expect(shareOf({ ...balm, batchG: 250 }, 'beeswax', { amount: 25, unit: 'g' })).toBeCloseTo(0.5, 9);
  });

  it('should refuse a part of a herb', () => {
    const infused = { ...balm, strained: [{ ingredient: 'calendula', perGram: 0.1 }] };
    const made = replace(infused, 'calendula', 'chamomile', half);
    expect(made.ok ? 'made' : made.problem.code).toBe('not-in-part');
  });

  it('should keep 100 %, what stays and, held, the firmness of any recipe', () => {
    let held = 0;
    const asked = anyMix.chain((before) =>
      fc.record({
        before: fc.constant(before),
        from: fc.constantFrom(...before.portions.map(({ ingredient }) => ingredient)),
        to: fc.constantFrom('beeswax', 'candelilla-wax', 'mango-butter', 'jojoba-oil'),
        share: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      }),
    );
    fc.assert(
      fc.property(asked, ({ before, from, to, share }) => {
        const made = replace(before, from, to, { part: { amount: share, unit: 'share' } });
        if (made.ok) held += checked(before, made.value, share);
      }),
      { numRuns: 300 },
    );
    expect(held).toBeGreaterThan(10);
  });

  it('should say so where it is firm enough without the new one, with butters giving way too', () => {
    const butters = mix({ 'palm-kernel-oil': 53.5, 'coconut-oil': 29.5, 'virgin-coconut-oil': 17 });
    const made = worked(
      replace(butters, 'virgin-coconut-oil', 'beeswax', { part: { amount: 0.05, unit: 'share' } }),
    );
    expect(made).toMatchObject({ way: 'butters-give-way', percent: 0 });
    expect(made.notes).toContain('already-firm');
  });

  it('should change gram for gram where that is asked, whatever the firmness does', () => {
    const made = worked(replace(balm, 'beeswax', 'candelilla-wax', { gramForGram: true }));
    expect(percentIn(made.mix, 'candelilla-wax')).toBe(20);
    expect(compare(balm, made.mix).firmnessPercent).toBeGreaterThan(50);
    const rock = replace(balm, 'olive-oil', 'beeswax', { gramForGram: true });
    expect(rock.ok ? 'made' : rock.problem.code).toBe('wax-cannot-be-oil');
  });
});
