import { describe, expect, it } from 'vitest';
import { meltComponents } from '../../../core/data/melt/components.ts';
import { type MakeUp, makeUps } from '../../../core/data/melt/make-ups.ts';
import { meltSourceIds, meltSources } from '../../../core/data/melt/sources.ts';
import { strengths } from '../../../core/data/melt/strengths.ts';
import { freezingLossMlPerG, growthPerK, liquidDensities } from '../../../core/data/melt/volumes.ts';
import * as yardsticks from '../../../core/data/melt/yardsticks.ts';

describe('tables of the melting model', () => {
  it('should have each component and source once', () => {
    const ids = meltComponents.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(meltSourceIds).size).toBe(meltSources.length);
  });

  it.each(Object.entries<MakeUp>(makeUps))(
    'should have shares of %s that add up to 1',
    (_, { fractions }) => {
      const shares = Object.values(fractions);
      expect(shares.every((share) => share > 0 && share <= 1)).toBe(true);
      expect(Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1)).toBeLessThanOrEqual(2e-4);
    },
  );

  it('should use every component and every source', () => {
    const used = new Set(Object.values<MakeUp>(makeUps).flatMap(({ fractions }) => Object.keys(fractions)));
    expect(meltComponents.map(({ id }) => id).filter((id) => !used.has(id))).toEqual([]);
    const cited = new Set<string>(
      [
        ...meltComponents,
        ...Object.values(makeUps),
        ...Object.values(strengths),
        ...Object.values(liquidDensities),
        growthPerK,
        ...Object.values(freezingLossMlPerG),
        ...Object.values(yardsticks),
      ].flatMap(({ source }) => [...source]),
    );
    expect(meltSourceIds.filter((id) => !cited.has(id) && id !== 'FA-RULE')).toEqual([]);
  });

  it.each(Object.entries(strengths))('should keep the strength of %s within its evidence', (_, strength) => {
    expect(strength.low).toBeLessThanOrEqual(strength.value);
    expect(strength.high).toBeGreaterThanOrEqual(strength.value);
  });
});
