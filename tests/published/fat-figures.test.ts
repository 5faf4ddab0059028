import { describe, expect, it } from 'vitest';
import { fatOf, waxOf } from './rows.ts';

/**
 * Figures of the library against published ones, typed by hand from the sources named in each row (see
 * core/data/sources.ts for what they are and how they were seen). Rows marked "memory" are no proof.
 */

describe('saponification and ester values', () => {
  it('should hold jojoba: one mole of KOH to a wax ester of 606 g/mol, measured 92.2 (MERCK, read)', () => {
    const { saponification } = fatOf('jojoba-oil');
    expect(Math.abs(56_105.6 / 606 - 92.2)).toBeLessThanOrEqual(0.6);
    expect(saponification?.low ?? Number.NaN).toBeLessThanOrEqual(92.2);
    expect(saponification?.high ?? Number.NaN).toBeGreaterThanOrEqual(92.6);
  });

  it('should have the ester value of carnauba, 78-95 less 2-7 (JECFA-CARN, read)', () => {
    expect(waxOf('carnauba-wax')).toMatchObject({
      saponification: { low: 78, high: 95 },
      acidValue: { low: 2, high: 7 },
      esterValue: { low: 78 - 7, high: 95 - 2, how: 'read' },
    });
  });

  it('should have the ester value of white beeswax, 87-104 less 17-24 (PHEUR-BEES, read)', () => {
    expect(waxOf('beeswax-white')).toMatchObject({
      saponification: { low: 87, high: 104 },
      acidValue: { low: 17, high: 24 },
      esterValue: { low: 87 - 17, high: 104 - 24, how: 'read' },
    });
  });
});

describe('what a name promises', () => {
  it('should keep canola at 2 % erucic acid or less (CODEX210-R, read)', () => {
    const erucic = fatOf('canola-oil').fattyAcids?.acids['22:1'];
    expect(erucic?.high ?? Number.NaN).toBeLessThanOrEqual(2);
    expect(erucic?.typical ?? Number.NaN).toBeLessThanOrEqual(2);
  });

  it.each([
    { id: 'high-oleic-sunflower-oil', least: 75 },
    { id: 'high-oleic-safflower-oil', least: 70 },
  ])('should have at least $least % oleic acid in $id (CODEX210-R, read)', ({ id, least }) => {
    const oleic = fatOf(id).fattyAcids?.acids['18:1'];
    expect(oleic?.low ?? Number.NaN).toBeGreaterThanOrEqual(least);
    expect(oleic?.typical ?? Number.NaN).toBeGreaterThanOrEqual(least);
  });

  it('should overlap the rule for refined sheanut oil, 185-195 and 28-43 (CFR184-1702, read)', () => {
    const { saponification, iodineValue } = fatOf('shea-butter');
    expect(saponification?.low ?? Number.NaN).toBeLessThanOrEqual(195);
    expect(saponification?.high ?? Number.NaN).toBeGreaterThanOrEqual(185);
    expect(iodineValue?.low ?? Number.NaN).toBeLessThanOrEqual(43);
    expect(iodineValue?.high ?? Number.NaN).toBeGreaterThanOrEqual(28);
  });
});
