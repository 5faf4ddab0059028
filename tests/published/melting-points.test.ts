import { describe, expect, it } from 'vitest';
import type { How } from '../../core/data/ingredient.ts';
import type { SourceId } from '../../core/data/sources.ts';
import { found } from './rows.ts';

/**
 * Figures of the library against published ones, typed by hand from the sources named in each row (see
 * core/data/sources.ts for what they are and how they were seen). Rows marked "memory" are no proof.
 */

interface MeltRow {
  readonly claim: string;
  readonly id: string;
  readonly low: number;
  readonly high: number;
  readonly source: SourceId;
  readonly how: How;
}

const melting: readonly MeltRow[] = [
  {
    claim: 'white beeswax, drop point',
    id: 'beeswax-white',
    low: 61,
    high: 66,
    source: 'PHEUR-BEES',
    how: 'read',
  },
  {
    claim: 'white wax, melting range',
    id: 'beeswax-white',
    low: 62,
    high: 65,
    source: 'USP-WAX',
    how: 'read',
  },
  {
    claim: 'beeswax, old codex',
    id: 'beeswax',
    low: 61,
    high: 64,
    source: 'BPC1911',
    how: 'read',
  },
  {
    claim: 'carnauba wax',
    id: 'carnauba-wax',
    low: 80,
    high: 86,
    source: 'JECFA-CARN',
    how: 'read',
  },
  {
    claim: 'rice bran wax',
    id: 'rice-bran-wax',
    low: 75,
    high: 80,
    source: 'CFR172-890',
    how: 'read',
  },
  {
    claim: 'candelilla wax',
    id: 'candelilla-wax',
    low: 68.5,
    high: 72.5,
    source: 'ENCY',
    how: 'read',
  },
  {
    claim: 'cocoa butter, slip point',
    id: 'cocoa-butter',
    low: 30,
    high: 34,
    source: 'USP32',
    how: 'read',
  },
  {
    claim: 'cocoa butter, clear',
    id: 'cocoa-butter',
    low: 31,
    high: 35,
    source: 'USP32',
    how: 'read',
  },
  {
    claim: 'unrefined shea butter',
    id: 'shea-butter',
    low: 35,
    high: 40,
    source: 'CODEX325R',
    how: 'read',
  },
  {
    claim: 'kokum butter, slip',
    id: 'kokum-butter',
    low: 34,
    high: 40,
    source: 'KOKUM-E',
    how: 'read',
  },
  {
    claim: 'mango kernel fat',
    id: 'mango-butter',
    low: 25,
    high: 33,
    source: 'MANGO12',
    how: 'read',
  },
  {
    claim: 'palm kernel oil',
    id: 'palm-kernel-oil',
    low: 27.3,
    high: 28,
    source: 'PKO-J',
    how: 'read',
  },
  {
    claim: 'wool fat',
    id: 'lanolin',
    low: 40,
    high: 44.4,
    source: 'BPC1911',
    how: 'read',
  },
  {
    claim: 'jojoba oil',
    id: 'jojoba-oil',
    low: 6.8,
    high: 7,
    source: 'MERCK',
    how: 'read',
  },
  {
    claim: 'almond oil, solidifies',
    id: 'sweet-almond-oil',
    low: -18,
    high: -18,
    source: 'BP2025',
    how: 'read',
  },
];

/** Tolerance of a melting figure in °C. */
const meltTolerance = 1;

describe('melting and drop points', () => {
  it.each(melting)('should hold $claim $low-$high °C ($source, $how)', ({ id, low, high }) => {
    const melt = found(id).meltC;
    expect(melt?.low ?? Number.NaN).toBeLessThanOrEqual(low + meltTolerance);
    expect(melt?.high ?? Number.NaN).toBeGreaterThanOrEqual(high - meltTolerance);
    // The figure to calculate with must not lie far off the published range, other grades allowed for.
    expect(melt?.value ?? Number.NaN).toBeGreaterThanOrEqual(low - meltTolerance - 1);
    expect(melt?.value ?? Number.NaN).toBeLessThanOrEqual(high + meltTolerance + 1);
  });

  it('should keep the order of full melting in a bath (the monographs above, read)', () => {
    const order = [
      'cocoa-butter',
      'shea-butter',
      'beeswax',
      'candelilla-wax',
      'rice-bran-wax',
      'carnauba-wax',
    ];
    const melts = order.map((id) => found(id).meltC?.value ?? Number.NaN);
    expect(melts).not.toContain(Number.NaN);
    expect(melts).toEqual([...melts].sort((a, b) => a - b));
  });

  it('should hold white beeswax to the whole monograph range (PHEUR-BEES, read)', () => {
    expect(found('beeswax-white').meltC).toMatchObject({
      low: 61,
      high: 66,
      how: 'read',
    });
  });
});
