import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dilute } from '../../../core/bench/dilute.ts';

describe('alcohol thinned with water', () => {
  it('should take 729 ml of 96 % for a litre of 70 % (0.70 / 0.96, infection-control review, read)', () => {
    expect(dilute({ fromPercent: 96, toPercent: 70 })).toMatchObject({
      value: { spiritMl: 729, madeUpToMl: 1000 },
    });
  });

  it('should say how far an amount at hand goes', () => {
    expect(dilute({ fromPercent: 96, toPercent: 70, haveMl: 500 })).toMatchObject({
      value: { spiritMl: 500, madeUpToMl: 686 },
    });
  });

  it('should refuse what water cannot do', () => {
    expect(dilute({ fromPercent: 40, toPercent: 70 })).toMatchObject({ problem: { code: 'not-weaker' } });
    expect(dilute({ fromPercent: 70, toPercent: 70 })).toMatchObject({ problem: { code: 'not-weaker' } });
    for (const percent of [0, -1, 101, Number.NaN]) {
      expect(dilute({ fromPercent: percent, toPercent: 70 })).toMatchObject({
        problem: { code: 'not-a-strength' },
      });
    }
  });

  it('should hold as much alcohol as before, against decimal.js', () => {
    const strengths = fc.tuple(fc.integer({ min: 2, max: 100 }), fc.integer({ min: 1, max: 99 }));
    fc.assert(
      fc.property(strengths, fc.integer({ min: 100, max: 20_000 }), ([from, part], makeMl) => {
        const to = Math.max(1, Math.floor((from * part) / 100));
        fc.pre(to < from);
        const mixed = dilute({ fromPercent: from, toPercent: to, makeMl });
        if (!mixed.ok) throw new Error(mixed.problem.code);
        const exact = new Decimal(makeMl).times(to).div(from);
        expect(exact.minus(mixed.value.spiritMl).abs().toNumber()).toBeLessThanOrEqual(0.5);
      }),
    );
  });
});
