import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeFill, tolerableError } from '../../../core/bench/filling.ts';

const value = (declaredG: number, weighed: readonly number[], region: Parameters<typeof judgeFill>[2]) => {
  const judged = judgeFill(declaredG, weighed, region);
  if (!judged.ok) throw new Error(judged.problem.code);
  return judged.value;
};

describe('how full a pack has to be', () => {
  // gov.uk, weights and measures, packaged goods: table of tolerable negative errors, rounded up to 0.1 g (read).
  it.each([
    [5, 0.5, 4.5, 4],
    [10, 0.9, 9.1, 8.2],
    [12, 1.1, 10.9, 9.8],
    [15, 1.4, 13.6, 12.2],
    [20, 1.8, 18.2, 16.4],
    [30, 2.7, 27.3, 24.6],
    [50, 4.5, 45.5, 41],
    [60, 4.5, 55.5, 51],
  ])('should allow %s g an error of %s g: T1 %s g, T2 %s g (gov.uk, read)', (declared, tne, t1G, t2G) => {
    expect(tolerableError(declared)).toBe(tne);
    for (const region of ['eu', 'uk'] as const)
      expect(value(declared, [], region)).toMatchObject({ rule: 'average', t1G, t2G, status: 'read' });
  });

  it.each([
    [100, 4.5],
    [200, 9],
    [300, 9],
    [500, 15],
    [1000, 15],
    [10_000, 150],
    [15_000, 150],
    [20_000, 200],
  ])('should follow the bands up to 25 kg: %s g, %s g (gov.uk, read)', (declared, tne) => {
    expect(tolerableError(declared)).toBe(tne);
  });

  it('should find five tins of 15 g with a mean of 14.90 g not full enough, one short, none inadequate (gov.uk, read)', () => {
    expect(value(15, [15.2, 15.1, 14.9, 13.5, 15.8], 'uk')).toMatchObject({
      meanG: 14.9,
      short: [13.5],
      inadequate: [],
      ok: false,
    });
  });

  it('should want every stick of 4.3 g full: the average system starts at 5 g (gov.uk, read)', () => {
    expect(value(4.3, [4.25], 'eu')).toMatchObject({ rule: 'every', short: [4.25], ok: false });
    expect(value(4.3, [4.3, 4.4], 'eu').ok).toBe(true);
  });

  it('should find 94.9 g in a 100 g tin too little in Australia: more than 5 % short (measurement.gov.au, read)', () => {
    expect(value(100, [94.9], 'au')).toMatchObject({ t2G: 95, inadequate: [94.9], ok: false });
    expect(value(100, [95, 105.2], 'au').ok).toBe(true);
  });

  it('should take the US figure as from memory, and the strict way where none is known', () => {
    expect(value(15, [13.4], 'us')).toMatchObject({ status: 'memory', t2G: 13.5, ok: false });
    expect(value(15, [14.9], 'ca')).toMatchObject({ rule: 'every', status: 'none-found', ok: false });
    expect(value(50, [49], 'us')).toMatchObject({ rule: 'every', ok: false });
  });

  it('should refuse what is no weight', () => {
    for (const grams of [0, -5, Number.NaN, 30_000])
      expect(judgeFill(grams, [], 'eu')).toMatchObject({ problem: { code: 'not-a-fill' } });
  });

  it('should never call packs full that are under what they declare on average', () => {
    const weights = fc.array(
      fc.integer({ min: 10, max: 4000 }).map((n) => n / 10),
      { minLength: 2, maxLength: 30 },
    );
    fc.assert(
      fc.property(
        fc.integer({ min: 5, max: 300 }),
        weights,
        fc.constantFrom('eu', 'uk', 'us', 'ca', 'au'),
        (declared, packs, region) => {
          const report = value(declared, packs, region);
          if (report.ok)
            expect(packs.reduce((a, b) => a + b, 0) / packs.length).toBeGreaterThanOrEqual(declared - 1e-3);
          else expect(packs.some((grams) => grams < declared)).toBe(true);
        },
      ),
    );
  });
});
