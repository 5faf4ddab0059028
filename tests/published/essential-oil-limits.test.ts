import { describe, expect, it } from 'vitest';
import type { How } from '../../core/data/ingredient.ts';
import { aromaOf } from './rows.ts';

/**
 * Figures of the library against published ones, typed by hand from the sources named in each row (see
 * core/data/sources.ts for what they are and how they were seen). Rows marked "memory" are no proof.
 */

interface SideRow {
  readonly claim: string;
  readonly id: string;
  readonly expected: number | undefined;
  readonly how: How;
}

/** Light-sensitising: most in a leave-on product, in percent (EOS2014-R, read second-hand). */
const leaveOnMax: readonly SideRow[] = [
  {
    claim: 'bergamot, cold-pressed',
    id: 'cold-pressed-bergamot-essential-oil',
    expected: 0.4,
    how: 'read-secondary',
  },
  {
    claim: 'lime, cold-pressed',
    id: 'cold-pressed-lime-essential-oil',
    expected: 0.7,
    how: 'read-secondary',
  },
  {
    claim: 'bitter orange',
    id: 'bitter-orange-essential-oil',
    expected: 1.25,
    how: 'read-secondary',
  },
  {
    claim: 'lemon, cold-pressed',
    id: 'cold-pressed-lemon-essential-oil',
    expected: 2,
    how: 'read-secondary',
  },
  {
    claim: 'grapefruit',
    id: 'grapefruit-essential-oil',
    expected: 4,
    how: 'read-secondary',
  },
];

const notLightSensitising = [
  'distilled-lemon-essential-oil',
  'distilled-lime-essential-oil',
  'sweet-orange-essential-oil',
  'mandarin-essential-oil',
  'bergamot-fcf-essential-oil',
];

/** Most on skin, in percent (EOS2014-R, read second-hand). */
const dermalMax: readonly SideRow[] = [
  {
    claim: 'clove bud',
    id: 'clove-bud-essential-oil',
    expected: 0.5,
    how: 'read-secondary',
  },
  {
    claim: 'cinnamon bark',
    id: 'cinnamon-bark-essential-oil',
    expected: 0.07,
    how: 'read-secondary',
  },
  {
    claim: 'cinnamon leaf',
    id: 'cinnamon-leaf-essential-oil',
    expected: 0.6,
    how: 'read-secondary',
  },
  {
    claim: 'lemongrass',
    id: 'lemongrass-essential-oil',
    expected: 0.7,
    how: 'read-secondary',
  },
  {
    claim: 'melissa',
    id: 'lemon-balm-essential-oil',
    expected: 0.9,
    how: 'read-secondary',
  },
  {
    claim: 'sweet fennel',
    id: 'sweet-fennel-essential-oil',
    expected: 2.5,
    how: 'read-secondary',
  },
  {
    claim: 'star anise',
    id: 'star-anise-essential-oil',
    expected: 1.75,
    how: 'read-secondary',
  },
];

const shareOf = (id: string, substance: string): { readonly low: number; readonly high: number } => {
  const row = aromaOf(id).constituents.allergens.find(({ name }) => name === substance);
  if (!row) throw new Error(`no ${substance} in ${id}`);
  return row;
};

/** EU: a listed allergen is named on a leave-on product above this percentage (EU2023-1545, read). */
const declareAbovePercent = 0.001;

describe('essential oils', () => {
  it.each(leaveOnMax)('should limit $claim to $expected % ($how)', ({ id, expected, how }) => {
    expect(aromaOf(id).limits).toMatchObject({
      phototoxic: true,
      leaveOnMaxPercent: expected,
      how,
    });
  });

  it.each(notLightSensitising)('should not call %s light-sensitising (EOS2014-R, read second-hand)', (id) => {
    const { limits } = aromaOf(id);
    expect(limits.phototoxic).toBe(false);
    expect(limits.leaveOnMaxPercent).toBeUndefined();
  });

  it.each(dermalMax)('should hold $claim to $expected % on skin ($how)', ({ id, expected, how }) => {
    expect(aromaOf(id).limits).toMatchObject({
      dermalMaxPercent: expected,
      how,
    });
  });

  it('should give 0.20-0.45 % linalool for 1 % lavender oil (PMC9148000, read)', () => {
    const { low, high } = shareOf('lavender-essential-oil', 'linalool');
    expect([low / 100, high / 100]).toEqual([0.2, 0.45]);
  });

  it('should give 0.46-0.485 % limonene for 0.5 % sweet orange oil (PHEUR-ORANGE, read)', () => {
    const { low, high } = shareOf('sweet-orange-essential-oil', 'limonene');
    expect([(low * 0.5) / 100, (high * 0.5) / 100]).toEqual([0.46, 0.485]);
  });

  it('should put 0.005 % lavender oil over the naming limit at the top of its range only (read)', () => {
    const { low, high } = shareOf('lavender-essential-oil', 'linalool');
    expect((low * 0.005) / 100).toBeLessThanOrEqual(declareAbovePercent + 1e-12);
    expect((high * 0.005) / 100).toBeGreaterThan(declareAbovePercent);
  });
});
