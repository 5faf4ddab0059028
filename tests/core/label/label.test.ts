import { describe, expect, it } from 'vitest';
import { labelElements } from '../../../core/data/rules/label-rule.ts';
import { labelRules } from '../../../core/data/rules/label-rules.ts';
import { ruleSources } from '../../../core/data/rules/sources.ts';
import { type LabelInput, labelOf, monthsUntil } from '../../../core/label/label.ts';
import { durabilityMark, type LabelHas, lacksOf } from '../../../core/label/missing.ts';
import { regions } from '../../../core/settings.ts';

const all: LabelHas = {
  identity: true,
  net: true,
  netRequired: true,
  ingredients: true,
  lot: true,
  bestBefore: true,
  maker: 'there',
  contact: true,
  languages: ['en', 'fr'],
  memberLanguage: true,
};
const on = '2026-11-25';
const codes = (...about: Parameters<typeof lacksOf>) => lacksOf(...about).map(({ code }) => code);

describe('what is missing on a label', () => {
  it.each(regions)('should be nothing when all is there (%s)', (region) => {
    expect(lacksOf(all, region, on)).toEqual([]);
  });

  /** FD&C Act 609(a), on labels since 29 December 2024 (read second-hand). */
  it('should be the contact in the US, from its day on', () => {
    expect(codes({ ...all, contact: false }, 'us', '2024-12-29')).toEqual(['contact']);
    expect(codes({ ...all, contact: false }, 'us', '2024-12-28')).toEqual([]);
    expect(codes({ ...all, contact: false }, 'eu', on)).toEqual([]);
  });

  /** GB guidance of 4 May 2023: seven years from 1 January 2021 (read). */
  it.each([
    ['2027-12-31', []],
    ['2028-01-01', ['uk-responsible-person']],
  ])('should take an EU responsible person in Great Britain until the end of 2027: %s', (day, expected) => {
    expect(codes({ ...all, maker: 'eu' }, 'uk', day)).toEqual(expected);
    expect(codes({ ...all, maker: 'uk' }, 'uk', day)).toEqual([]);
  });

  /** Industry guide for the labelling of cosmetics: identity in both languages (read). */
  it('should be French in Canada when there is English only', () => {
    expect(codes({ ...all, languages: ['en'] }, 'ca', on)).toEqual(['french']);
  });

  it.each(['eu', 'uk'] as const)('should be the lot by law in %s, and good practice elsewhere', (region) => {
    expect(lacksOf({ ...all, lot: false }, region, on)).toMatchObject([{ code: 'lot', level: 'must' }]);
    for (const other of ['us', 'ca', 'au'] as const)
      expect(lacksOf({ ...all, lot: false }, other, on)).toMatchObject([{ level: 'advised' }]);
  });

  it('should not be the net contents of a pack that is freed from them', () => {
    expect(codes({ ...all, net: false, netRequired: false }, 'eu', on)).toEqual([]);
    expect(codes({ ...all, net: false }, 'eu', on)).toEqual(['net']);
  });
});

describe('how long it keeps', () => {
  /** Article 19(1)(c): a date for 30 months or less, the open jar for more (read). */
  it.each([
    ['2026-11-25', '2029-05-25', 'date'],
    ['2026-11-25', '2029-05-26', 'open-jar'],
    ['2026-11-25', '2029-06-25', 'open-jar'],
  ] as const)('should be marked: made %s, best before %s: %s', (madeOn, bestBefore, mark) => {
    expect(durabilityMark(monthsUntil(madeOn, bestBefore))).toBe(mark);
  });

  const input: LabelInput = {
    lines: [
      { ingredient: 'sunflower-oil', percent: 80 },
      { ingredient: 'beeswax', percent: 20 },
    ],
    strained: [],
    region: 'eu',
    on,
    madeOn: '2026-11-25',
    has: {
      identity: true,
      lot: true,
      contact: true,
      languages: ['en'],
      memberLanguage: true,
      maker: 'there',
    },
  };
  const label = (more: Partial<LabelInput>) => {
    const result = labelOf({ ...input, ...more });
    if (!result.ok) throw new Error(result.problem.code);
    return result.value;
  };

  /** The printed month is the last one wholly over: Article 19(1)(c) with Annex VII (read) and arithmetic. */
  it.each([
    ['2027-05-17', '2027-04'],
    ['2027-05-31', '2027-05'],
    ['2028-02-29', '2028-02'],
  ])('should print the last month that is over: %s as %s', (bestBefore, month) => {
    expect(label({ bestBefore }).durability).toMatchObject({ month, mark: 'date', tooShort: false });
  });

  it('should be too short when the printed month is the month of making', () => {
    const { durability, lacks } = label({ bestBefore: '2026-12-30' });
    expect(durability.tooShort).toBe(true);
    expect(lacks.map(({ code }) => code)).toContain('best-before');
  });

  /** House ceilings of 12 and 6 months: common practice, no source. */
  it('should be reckoned from the house ceiling where nobody said', () => {
    expect(label({}).durability.bestBefore <= '2027-11-25').toBe(true);
    const fresh = label({ madeOn: '2026-08-31', strained: [{ ingredient: 'calendula', fresh: true }] });
    expect(fresh.durability.bestBefore).toBe('2027-02-28');
    expect(fresh.durability.month).toBe('2027-02');
  });

  it('should caution about children and honey only where there is reason', () => {
    expect(label({}).cautions).toEqual(['stop-if-it-stings']);
    const lines = [...input.lines, { ingredient: 'peppermint-essential-oil', percent: 0.5 }];
    expect(label({ lines }).cautions).toContain('breathing');
    expect(label({ lines: [...input.lines, { ingredient: 'honey', percent: 1 }] }).cautions).toContain(
      'honey',
    );
  });
});

describe('the rules of labels', () => {
  it('should each have a region, an element and a source that exists, one row for each pair', () => {
    const ids = new Set<string>(ruleSources.map(({ id }) => id));
    const pairs = labelRules.map(({ region, element }) => `${region} ${element}`);
    expect(new Set(pairs).size).toBe(pairs.length);
    for (const { element, source, rule } of labelRules) {
      expect(labelElements).toContain(element);
      expect(ids.has(source)).toBe(true);
      expect(rule.length).toBeGreaterThan(4);
    }
  });

  it('should not be called read where their source is from memory', () => {
    const seen = new Map<string, string>(ruleSources.map(({ id, seen: how }) => [id, how]));
    expect(
      labelRules.filter(({ status, source }) => status === 'read' && seen.get(source) === 'memory'),
    ).toEqual([]);
  });
});
