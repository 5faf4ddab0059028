import { describe, expect, it } from 'vitest';
import { fattyAcidNames } from '../../core/data/ingredient.ts';
import { ingredients, isFat } from '../../core/ingredients.ts';

const molarMasses: Readonly<Record<(typeof fattyAcidNames)[number], number>> = {
  '6:0': 116.16,
  '8:0': 144.21,
  '10:0': 172.26,
  '12:0': 200.32,
  '14:0': 228.37,
  '16:0': 256.42,
  '16:1': 254.41,
  '18:0': 284.48,
  '18:1': 282.46,
  '18:2': 280.45,
  '18:3': 278.43,
  '18:3n6': 278.43,
  '20:0': 312.53,
  '20:1': 310.51,
  '22:0': 340.58,
  '22:1': 338.57,
  ricinoleic: 298.46,
};

/** Saponification value in mg KOH/g of a pure triglyceride with this profile (derived from atomic masses). */
const saponificationOf = (shares: Readonly<Partial<Record<string, number>>>): number => {
  const known = fattyAcidNames.flatMap((acid) => {
    const share = shares[acid] ?? 0;
    return share > 0 ? [{ share, moles: share / molarMasses[acid] }] : [];
  });
  const grams = known.reduce((sum, { share }) => sum + share, 0);
  const moles = known.reduce((sum, row) => sum + row.moles, 0);
  return (3 * 56_105.6) / ((3 * grams) / moles + 38.05);
};

describe('profiles against saponification values', () => {
  it.each([
    ['18:1', 190.1],
    ['12:0', 263.4],
    ['18:0', 188.8],
  ])('should weigh the pure triglyceride of %s right: %f (derived)', (acid, expected) => {
    expect(Math.abs(saponificationOf({ [acid]: 100 }) - expected)).toBeLessThanOrEqual(0.2);
  });

  it('should have every profile within 3 of its saponification range', () => {
    const off = ingredients.filter(isFat).flatMap(({ id, triglyceride, fattyAcids, saponification }) => {
      if (!triglyceride || !fattyAcids || !saponification) return [];
      const typical = Object.fromEntries(
        Object.entries(fattyAcids.acids).map(([acid, share]) => [acid, share?.typical]),
      );
      const value = saponificationOf(typical);
      return value < saponification.low - 3 || value > saponification.high + 3
        ? [`${id} ${value.toFixed(1)}`]
        : [];
    });
    expect(off).toEqual([]);
  });
});
