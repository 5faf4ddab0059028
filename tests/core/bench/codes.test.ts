import { distance } from 'fastest-levenshtein';
import { describe, expect, it } from 'vitest';
import { isUnwanted, lotCode, lotKey } from '../../../core/bench/codes.ts';
import { nextCode } from '../../../core/bench/fold.ts';
import { emptyBench } from '../../../core/bench/state.ts';

const codes = (count: number) => Array.from({ length: count }, (_, at) => lotCode('2026-11-25', at));

describe('lot codes of the house', () => {
  it('should all be different within a year, short ones and long ones', () => {
    const all = codes(40_000);
    expect(new Set(all).size).toBe(all.length);
    expect(all.slice(0, 3600).every((code) => /^26-[A-Z]{4}$/.test(code))).toBe(true);
    expect(all.slice(3600).every((code) => /^26-[A-Z]{6}$/.test(code))).toBe(true);
  });

  it('should not look alike one after the other', () => {
    const all = codes(500);
    for (let at = 1; at < all.length; at += 1)
      expect(distance(all[at - 1] ?? '', all[at] ?? '')).toBeGreaterThan(1);
  });

  it('should be found however they are spaced or spelt', () => {
    for (const said of ['26-KIVO', '26 kivo', '26kivo', '26-Kivo']) expect(lotKey(said)).toBe('26KIVO');
  });

  it('should pass over unwanted ones and those that are taken', () => {
    const first = nextCode(emptyBench, '2026-11-25').code;
    const lot = { lot: first, ingredient: 'beeswax', gotG: 1, leftG: 1, on: '2026-11-25', notes: [] };
    const bench = { ...emptyBench, lots: emptyBench.lots.set(lotKey(first), lot) };
    expect(nextCode(bench, '2026-11-25').code).not.toBe(first);
    expect(codes(3600).filter(isUnwanted).length).toBeGreaterThan(0);
    for (let made = 0; made < 3600; made += 1)
      expect(isUnwanted(nextCode({ ...emptyBench, made }, '2026-11-25').code)).toBe(false);
  });
});
