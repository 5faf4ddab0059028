import { describe, expect, it } from 'vitest';
import type { How } from '../../core/data/ingredient.ts';
import type { SourceId } from '../../core/data/sources.ts';
import { aromaOf, found } from './rows.ts';

/**
 * Figures of the library against published ones, typed by hand from the sources named in each row (see
 * core/data/sources.ts for what they are and how they were seen). Rows marked "memory" are no proof.
 */

/** Density of water at 20 °C in g/ml: turns a relative density 20/20 into g/ml (derived). */
const waterGMl = 0.99821;

interface DensityRow {
  readonly claim: string;
  readonly id: string;
  /** Relative density, or grams per ml where `grams` and `ml` were weighed. */
  readonly expectedGMl: number;
  readonly tolerance: number;
  readonly source: SourceId;
  readonly how: How;
}

const usCupMl = 236.588;
const usTablespoonMl = 14.7868;

const densities: readonly DensityRow[] = [
  {
    claim: 'sunflower 0.921',
    id: 'sunflower-oil',
    expectedGMl: 0.921 * waterGMl,
    tolerance: 0.005,
    source: 'BP2025',
    how: 'read',
  },
  {
    claim: 'castor 0.958',
    id: 'castor-oil',
    expectedGMl: 0.958 * waterGMl,
    tolerance: 0.005,
    source: 'BP2025',
    how: 'read',
  },
  {
    claim: 'borage 0.921',
    id: 'borage-oil',
    expectedGMl: 0.921 * waterGMl,
    tolerance: 0.005,
    source: 'BP2025',
    how: 'read',
  },
  {
    claim: 'wheat germ 0.925',
    id: 'wheat-germ-oil',
    expectedGMl: 0.925 * waterGMl,
    tolerance: 0.005,
    source: 'BP2025',
    how: 'read',
  },
  {
    claim: 'medium-chain triglycerides 0.95',
    id: 'fractionated-coconut-oil',
    expectedGMl: 0.95 * waterGMl,
    tolerance: 0.005,
    source: 'PHEUR-MCT',
    how: 'read',
  },
  {
    claim: 'white beeswax 0.960',
    id: 'beeswax-white',
    expectedGMl: 0.96 * waterGMl,
    tolerance: 0.005,
    source: 'PHEUR-BEES',
    how: 'read',
  },
  {
    claim: 'vegetable oil, tablespoon 13.6 g',
    id: 'soybean-oil',
    expectedGMl: 13.6 / usTablespoonMl,
    tolerance: 0.01,
    source: 'USDA-SR26',
    how: 'read',
  },
  {
    claim: 'vegetable oil, cup 218 g',
    id: 'canola-oil',
    expectedGMl: 218 / usCupMl,
    tolerance: 0.01,
    source: 'USDA-SR26',
    how: 'read',
  },
  {
    claim: 'vegetable oil, cup 218 g',
    id: 'corn-oil',
    expectedGMl: 218 / usCupMl,
    tolerance: 0.01,
    source: 'USDA-SR26',
    how: 'read',
  },
  {
    claim: 'olive oil, cup 216 g',
    id: 'olive-oil',
    expectedGMl: 216 / usCupMl,
    tolerance: 0.01,
    source: 'USDA-SR26',
    how: 'read',
  },
];

interface DensityRangeRow {
  readonly claim: string;
  readonly id: string;
  readonly low: number;
  readonly high: number;
  readonly source: SourceId;
  readonly how: How;
}

const densityRanges: readonly DensityRangeRow[] = [
  {
    claim: 'sweet orange oil',
    id: 'sweet-orange-essential-oil',
    low: 0.842,
    high: 0.85,
    source: 'PHEUR-ORANGE',
    how: 'read',
  },
  {
    claim: 'lemon oil',
    id: 'cold-pressed-lemon-essential-oil',
    low: 0.849,
    high: 0.855,
    source: 'USP2025',
    how: 'read',
  },
  {
    claim: 'sesame oil',
    id: 'sesame-oil',
    low: 0.916,
    high: 0.921,
    source: 'USP32',
    how: 'read',
  },
  {
    claim: 'rice bran oil',
    id: 'rice-bran-oil',
    low: 0.91,
    high: 0.929,
    source: 'CODEX210-R',
    how: 'read',
  },
  {
    claim: 'canola oil',
    id: 'canola-oil',
    low: 0.914,
    high: 0.92,
    source: 'CODEX210-R',
    how: 'read',
  },
  {
    claim: 'soybean oil',
    id: 'soybean-oil',
    low: 0.919,
    high: 0.925,
    source: 'CODEX210-R',
    how: 'read',
  },
  {
    claim: 'high-oleic safflower oil',
    id: 'high-oleic-safflower-oil',
    low: 0.913,
    high: 0.919,
    source: 'CODEX210-R',
    how: 'read',
  },
  {
    claim: 'shea butter',
    id: 'shea-butter',
    low: 0.91,
    high: 0.98,
    source: 'CODEX325R',
    how: 'read',
  },
];

describe('densities at 20 °C', () => {
  it.each(densities)('should have $id near $claim ($source, $how)', ({ id, expectedGMl, tolerance }) => {
    expect(Math.abs((found(id).densityGMl?.value ?? 0) - expectedGMl)).toBeLessThanOrEqual(tolerance);
  });

  it.each(densityRanges)(
    'should have $claim in $low-$high, relative ($source, $how)',
    ({ id, low, high }) => {
      const density = found(id).densityGMl?.value ?? 0;
      expect(density).toBeGreaterThanOrEqual(low * waterGMl);
      expect(density).toBeLessThanOrEqual(high * waterGMl);
    },
  );

  it('should have moved every relative density of the essential oils to g/ml', () => {
    const rows = ['peppermint-essential-oil', 'clove-bud-essential-oil', 'wintergreen-essential-oil'].map(
      aromaOf,
    );
    for (const { relativeDensity, densityGMl } of rows) {
      expect(densityGMl?.low).toBeCloseTo((relativeDensity?.low ?? 0) * waterGMl, 3);
      expect(densityGMl?.high).toBeCloseTo((relativeDensity?.high ?? 0) * waterGMl, 3);
    }
  });
});
