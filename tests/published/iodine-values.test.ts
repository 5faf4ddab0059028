import { describe, expect, it } from 'vitest';
import type { FattyAcidName, How } from '../../core/data/ingredient.ts';
import type { SourceId } from '../../core/data/sources.ts';
import { ingredientById } from '../../core/ingredients.ts';
import {
  type AcidShares,
  calculatedIodineValue,
  type IodineBasis,
  iodineValueOfAcids,
} from '../../core/iodine.ts';

/** Figures below are typed by hand from the sources named in each row (see core/data/sources.ts for what they are). */

interface FactorRow {
  readonly acid: FattyAcidName;
  readonly basis: IodineBasis;
  readonly expected: number;
}

const aocs: SourceId = 'AOCS-CD1C85';

const factors: readonly FactorRow[] = [
  { acid: '16:1', basis: 'triglyceride', expected: 0.95 },
  { acid: '18:1', basis: 'triglyceride', expected: 0.86 },
  { acid: '18:2', basis: 'triglyceride', expected: 1.732 },
  { acid: '18:3', basis: 'triglyceride', expected: 2.616 },
  { acid: '20:1', basis: 'triglyceride', expected: 0.785 },
  { acid: '22:1', basis: 'triglyceride', expected: 0.723 },
  { acid: '16:1', basis: 'free-acids', expected: 0.9976 },
  { acid: '18:1', basis: 'free-acids', expected: 0.8986 },
  { acid: '18:2', basis: 'free-acids', expected: 1.81 },
  { acid: '18:3', basis: 'free-acids', expected: 2.735 },
  { acid: '20:1', basis: 'free-acids', expected: 0.8175 },
  { acid: '22:1', basis: 'free-acids', expected: 0.7497 },
];

describe(`factors of the calculated iodine value (${aocs}, read)`, () => {
  it.each(factors)('should take $expected a percent of $acid ($basis)', ({ acid, basis, expected }) => {
    expect(iodineValueOfAcids({ [acid]: 1 }, basis)).toBeCloseTo(expected, 10);
  });
});

interface PureRow {
  readonly claim: string;
  readonly acid: FattyAcidName;
  readonly molarMass: number;
  readonly doubleBonds: number;
  readonly expected: number;
}

/** 100 × double bonds × 253.81 / molar mass: derived from atomic masses, not from the factors. */
const pure: readonly PureRow[] = [
  {
    claim: 'triolein',
    acid: '18:1',
    molarMass: 885.43,
    doubleBonds: 3,
    expected: 85.99,
  },
  {
    claim: 'trilinolein',
    acid: '18:2',
    molarMass: 879.38,
    doubleBonds: 6,
    expected: 173.17,
  },
  {
    claim: 'trilinolenin',
    acid: '18:3',
    molarMass: 873.33,
    doubleBonds: 9,
    expected: 261.56,
  },
  {
    claim: 'triricinolein',
    acid: 'ricinoleic',
    molarMass: 933.43,
    doubleBonds: 3,
    expected: 81.57,
  },
];

describe('pure triglycerides (derived from molar masses)', () => {
  it.each(pure)('should give $claim $expected', ({ acid, molarMass, doubleBonds, expected }) => {
    expect((100 * doubleBonds * 253.81) / molarMass).toBeCloseTo(expected, 1);
    expect(Math.abs(iodineValueOfAcids({ [acid]: 100 }, 'triglyceride') - expected)).toBeLessThanOrEqual(
      0.05,
    );
  });
});

interface PublishedProfile {
  readonly claim: string;
  readonly shares: AcidShares;
  readonly expected: number;
}

const shares = (palmitoleic: number, oleic: number, linoleic: number, linolenic: number): AcidShares => ({
  '16:1': palmitoleic,
  '18:1': oleic,
  '18:2': linoleic,
  '18:3': linolenic,
});

/** Profiles with the iodine values printed beside them; tolerance 1, the table's own rounding. */
const published: readonly PublishedProfile[] = [
  { claim: 'corn oil', shares: shares(0.1, 27.7, 57.18, 0.79), expected: 125 },
  {
    claim: 'corn oil, slowly oxidised',
    shares: shares(0.1, 29.84, 52.73, 0.62),
    expected: 119,
  },
  {
    claim: 'corn oil, quickly oxidised',
    shares: shares(0.12, 29.8, 52.32, 0.63),
    expected: 118,
  },
  {
    claim: 'canola oil',
    shares: shares(0.22, 64.57, 17.9, 7.09),
    expected: 105,
  },
  {
    claim: 'canola oil, slowly oxidised',
    shares: shares(0.23, 65.47, 16.51, 5.73),
    expected: 100,
  },
  {
    claim: 'canola oil, quickly oxidised',
    shares: shares(0.23, 66.82, 15.93, 5.01),
    expected: 98,
  },
  {
    claim: 'poultry fat',
    shares: shares(7.11, 38.07, 18.5, 0.77),
    expected: 73,
  },
  { claim: 'tallow', shares: shares(2.55, 32.03, 2.8, 0.22), expected: 35 },
];

describe('profiles published with their iodine value (PMC4384276, read)', () => {
  it.each(published)('should give $claim about $expected', ({ shares: acids, expected }) => {
    expect(Math.abs(iodineValueOfAcids(acids, 'triglyceride') - expected)).toBeLessThanOrEqual(1);
  });
});

interface RangeRow {
  readonly id: string;
  /** The profile's value by hand, then the published range of the oil. */
  readonly expected: number;
  readonly low: number;
  readonly high: number;
  readonly source: readonly SourceId[];
  readonly how: How;
}

/** Our typical profiles come from the USDA table, the ranges from the standards: two sides that know nothing of each other. */
const ranges: readonly RangeRow[] = [
  {
    id: 'soybean-oil',
    expected: 130.7,
    low: 124,
    high: 139,
    source: ['USDA-SR26', 'CODEX210-R'],
    how: 'read',
  },
  {
    id: 'canola-oil',
    expected: 112.3,
    low: 105,
    high: 126,
    source: ['USDA-SR26', 'CODEX210-R'],
    how: 'read',
  },
  {
    id: 'rice-bran-oil',
    expected: 102.4,
    low: 90,
    high: 115,
    source: ['USDA-SR26', 'CODEX210-R'],
    how: 'read',
  },
  {
    id: 'sesame-oil',
    expected: 112.1,
    low: 104,
    high: 120,
    source: ['USDA-SR26', 'CODEX210-R'],
    how: 'read',
  },
  {
    id: 'palm-oil',
    expected: 50.5,
    low: 50,
    high: 55,
    source: ['USDA-SR26', 'CODEX210-R'],
    how: 'read',
  },
  {
    id: 'high-oleic-safflower-oil',
    expected: 91,
    low: 80,
    high: 100,
    source: ['USDA-SR26', 'CODEX210-R'],
    how: 'read',
  },
  {
    id: 'high-oleic-sunflower-oil',
    expected: 81.4,
    low: 78,
    high: 90,
    source: ['USDA-SR26', 'CODEX210-R'],
    how: 'read',
  },
  {
    id: 'walnut-oil',
    expected: 145.5,
    low: 132,
    high: 162,
    source: ['USDA-SR26', 'CODEX210-R'],
    how: 'read',
  },
  {
    id: 'flaxseed-oil',
    expected: 189.6,
    low: 170,
    high: 211,
    source: ['USDA-SR26', 'CODEX210-R'],
    how: 'read',
  },
  {
    id: 'coconut-oil',
    expected: 8.6,
    low: 6.3,
    high: 10.6,
    source: ['USDA-SR26', 'COCO-TR'],
    how: 'read',
  },
  {
    id: 'shea-butter',
    expected: 49.8,
    low: 30,
    high: 75,
    source: ['USDA-SR26', 'CODEX325R'],
    how: 'read',
  },
  {
    id: 'grapeseed-oil',
    expected: 141.3,
    low: 128,
    high: 150,
    source: ['USDA-SR26', 'GRAPE-IT'],
    how: 'read',
  },
];

const calculated = (id: string): number => {
  const ingredient = ingredientById(id);
  const result = ingredient && calculatedIodineValue(ingredient);
  if (!result?.ok) throw new Error(`no calculated iodine value for ${id}`);
  return result.value;
};

describe('iodine values of our typical profiles', () => {
  it.each(ranges)('should put $id into $low-$high ($source, $how)', ({ id, expected, low, high }) => {
    const value = calculated(id);
    expect(Math.abs(value - expected)).toBeLessThanOrEqual(0.2);
    expect(value).toBeGreaterThanOrEqual(low);
    expect(value).toBeLessThanOrEqual(high);
  });

  it('should add up the worked soybean example (USDA-SR26 and AOCS-CD1C85, read)', () => {
    const byHand = 23.4 * 0.86 + 53 * 1.732 + 7.1 * 2.616 + 0.2 * 0.785;
    expect(byHand).toBeCloseTo(130.65, 1);
    expect(calculated('soybean-oil')).toBeCloseTo(byHand, 6);
  });
});

describe('what is no triglyceride', () => {
  it.each(['jojoba-oil', 'lanolin', 'beeswax', 'calendula'])(
    'should give no calculated value for %s',
    (id) => {
      const ingredient = ingredientById(id);
      expect(ingredient && calculatedIodineValue(ingredient)).toEqual({
        ok: false,
        problem: { code: 'not-a-triglyceride' },
      });
    },
  );

  it('should have the measured value of jojoba (MERCK, read): 81.7', () => {
    expect(Math.abs((ingredientById('jojoba-oil')?.iodineValue?.value ?? 0) - 81.7)).toBeLessThanOrEqual(1);
  });

  it('should say when a fat has no profile', () => {
    const house = ingredientById('infused-oil');
    expect(house && calculatedIodineValue(house)).toEqual({
      ok: false,
      problem: { code: 'no-profile' },
    });
  });
});
