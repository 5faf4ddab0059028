import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { convertAmount } from '../../core/convert.ts';
import type { Region } from '../../core/settings.ts';
import { roots, type Unit } from '../../core/units.ts';
import { worked } from '../helpers/lines.ts';

/**
 * Unit factors against the definitions and tables they come from. "read" means that the figure was seen in the named
 * place; "memory" rows are the exact definitions as recalled and prove less; "derived" rows anyone can work out.
 */
interface UnitRow {
  readonly claim: string;
  readonly ask: {
    readonly value: number;
    readonly from: Unit;
    readonly to: Unit;
    readonly region?: Region;
  };
  readonly expected: number;
  /** Largest difference allowed, in the unit of `expected`; 0 is exact. Tables allow half of their last digit. */
  readonly tolerance: number;
  readonly source: string;
  readonly how: 'read' | 'memory' | 'derived';
}

const us = 'us';
const hb44 = 'NIST Handbook 44, appendix C; yard and pound agreement of 1959';
const ukUnits = 'Units of Measurement Regulations 1995 (gallon of 4.54609 litres)';
const sp430 = 'NIST SP 430, table 1 (metric household page)';
const cooking = 'NIST cooking measurement equivalencies';
const cfr = '21 CFR 101.9(b)(5)(viii), labelling measures, quoted in a note on unit standards';
const formula = '°C = (°F - 32) × 5/9, exact by definition';
const dropper = 'USP32-NF27 chapter 1101, medicine dropper';

const definitions: readonly UnitRow[] = [
  {
    claim: '1 avoirdupois ounce is 28.349523125 g',
    ask: { value: 1, from: 'oz', to: 'g' },
    expected: 28.349523125,
    tolerance: 0,
    source: hb44,
    how: 'memory',
  },
  {
    claim: '1 avoirdupois pound is 453.59237 g',
    ask: { value: 1, from: 'lb', to: 'g' },
    expected: 453.59237,
    tolerance: 0,
    source: hb44,
    how: 'memory',
  },
  {
    claim: '1 US fluid ounce is 29.5735295625 ml',
    ask: { value: 1, from: 'fl oz', to: 'ml', region: us },
    expected: 29.5735295625,
    tolerance: 0,
    source: hb44,
    how: 'memory',
  },
  {
    claim: '1 US tablespoon is 14.78676478125 ml',
    ask: { value: 1, from: 'tbsp', to: 'ml', region: us },
    expected: 14.78676478125,
    tolerance: 0,
    source: hb44,
    how: 'memory',
  },
  {
    claim: '1 US teaspoon is 4.92892159375 ml',
    ask: { value: 1, from: 'tsp', to: 'ml', region: us },
    expected: 4.92892159375,
    tolerance: 0,
    source: hb44,
    how: 'memory',
  },
  {
    claim: '1 US cup is 236.5882365 ml',
    ask: { value: 1, from: 'cup', to: 'ml', region: us },
    expected: 236.5882365,
    tolerance: 0,
    source: hb44,
    how: 'memory',
  },
  {
    claim: '1 US gallon (16 cups, 231 cubic inches) is 3785.411784 ml',
    ask: { value: 16, from: 'cup', to: 'ml', region: us },
    expected: 3785.411784,
    tolerance: 0,
    source: hb44,
    how: 'memory',
  },
  {
    claim: '1 imperial fluid ounce is 28.4130625 ml',
    ask: { value: 1, from: 'fl oz', to: 'ml', region: 'uk' },
    expected: 28.4130625,
    tolerance: 0,
    source: ukUnits,
    how: 'memory',
  },
  {
    claim: '5 oz is 141.747615625 g',
    ask: { value: 5, from: 'oz', to: 'g' },
    expected: 141.747615625,
    tolerance: 0,
    source: hb44,
    how: 'memory',
  },
];

const tables: readonly UnitRow[] = [
  {
    claim: '1 US teaspoonful is 4.9 ml',
    ask: { value: 1, from: 'tsp', to: 'ml', region: us },
    expected: 4.9,
    tolerance: 0.05,
    source: sp430,
    how: 'read',
  },
  {
    claim: '1 US tablespoonful is 15 ml',
    ask: { value: 1, from: 'tbsp', to: 'ml', region: us },
    expected: 15,
    tolerance: 0.5,
    source: sp430,
    how: 'read',
  },
  {
    claim: '1 US fluid ounce is 30 ml',
    ask: { value: 1, from: 'fl oz', to: 'ml', region: us },
    expected: 30,
    tolerance: 0.5,
    source: sp430,
    how: 'read',
  },
  {
    claim: 'a quarter US cupful is 59 ml',
    ask: { value: 0.25, from: 'cup', to: 'ml', region: us },
    expected: 59,
    tolerance: 0.5,
    source: sp430,
    how: 'read',
  },
  {
    claim: '1 US cupful is 237 ml',
    ask: { value: 1, from: 'cup', to: 'ml', region: us },
    expected: 237,
    tolerance: 0.5,
    source: sp430,
    how: 'read',
  },
  {
    claim: '1 US quart (4 cupfuls) is 946 ml',
    ask: { value: 4, from: 'cup', to: 'ml', region: us },
    expected: 946,
    tolerance: 0.5,
    source: sp430,
    how: 'read',
  },
  {
    claim: '1 litre is 33.8 US fluid ounces',
    ask: { value: 1, from: 'l', to: 'fl oz', region: us },
    expected: 33.8,
    tolerance: 0.05,
    source: sp430,
    how: 'read',
  },
  {
    claim: '1 litre is 67.6 US tablespoonfuls',
    ask: { value: 1, from: 'l', to: 'tbsp', region: us },
    expected: 67.6,
    tolerance: 0.05,
    source: sp430,
    how: 'read',
  },
  {
    claim: '1 ounce by weight is about 28 g',
    ask: { value: 1, from: 'oz', to: 'g' },
    expected: 28,
    tolerance: 0.5,
    source: cooking,
    how: 'read',
  },
  {
    claim: '1 pound is about 454 g',
    ask: { value: 1, from: 'lb', to: 'g' },
    expected: 454,
    tolerance: 0.5,
    source: cooking,
    how: 'read',
  },
];

/**
 * The labelling measures are not what a kitchen measures with: the US customary ones lie within 1.5 % of them, and the
 * metric spoons are exactly the same.
 */
const labelling: readonly UnitRow[] = [
  {
    claim: 'a labelling teaspoon is 5 ml, as the metric one',
    ask: { value: 1, from: 'tsp', to: 'ml', region: 'eu' },
    expected: 5,
    tolerance: 0,
    source: cfr,
    how: 'read',
  },
  {
    claim: 'a labelling tablespoon is 15 ml, as the metric one',
    ask: { value: 1, from: 'tbsp', to: 'ml', region: 'eu' },
    expected: 15,
    tolerance: 0,
    source: cfr,
    how: 'read',
  },
  {
    claim: 'a labelling teaspoon of 5 ml is near the US customary one',
    ask: { value: 1, from: 'tsp', to: 'ml', region: us },
    expected: 5,
    tolerance: 0.075,
    source: cfr,
    how: 'read',
  },
  {
    claim: 'a labelling cup of 240 ml is near the US customary one',
    ask: { value: 1, from: 'cup', to: 'ml', region: us },
    expected: 240,
    tolerance: 3.6,
    source: cfr,
    how: 'read',
  },
  {
    claim: 'a labelling fluid ounce of 30 ml is near the US customary one',
    ask: { value: 1, from: 'fl oz', to: 'ml', region: us },
    expected: 30,
    tolerance: 0.45,
    source: cfr,
    how: 'read',
  },
  {
    claim: 'a labelling ounce of 28 g is near the avoirdupois one',
    ask: { value: 1, from: 'oz', to: 'g' },
    expected: 28,
    tolerance: 0.42,
    source: cfr,
    how: 'read',
  },
];

const pair = (value: number, from: 'C' | 'F', to: 'C' | 'F', expected: number): UnitRow => ({
  claim: `${value} °${from} is ${expected} °${to}`,
  ask: { value, from, to },
  expected,
  tolerance: 0.01,
  source: formula,
  how: 'derived',
});

const temperatures: readonly UnitRow[] = [
  pair(143, 'F', 'C', 61.67),
  pair(149, 'F', 'C', 65),
  pair(150, 'F', 'C', 65.56),
  pair(160, 'F', 'C', 71.11),
  pair(35, 'C', 'F', 95),
  pair(37, 'C', 'F', 98.6),
  pair(61, 'C', 'F', 141.8),
  pair(65, 'C', 'F', 149),
  pair(66, 'C', 'F', 150.8),
  pair(75, 'C', 'F', 167),
  pair(80, 'C', 'F', 176),
  pair(86, 'C', 'F', 186.8),
];

/** Density of water at 20 °C in g/ml (derived: what turns a drop's volume into its weight). */
const waterGMl = 0.99821;

const droppers: readonly (Omit<UnitRow, 'ask'> & {
  readonly got: (ml: number) => number;
  readonly drops: number;
})[] = [
  {
    claim: 'one drop of water weighs 45 to 55 mg',
    drops: 1,
    got: (ml) => ml * waterGMl * 1000,
    expected: 50,
    tolerance: 5,
    source: dropper,
    how: 'read',
  },
  {
    claim: '1 ml of water is 20 drops, give or take 2',
    drops: 1,
    got: (ml) => 1 / ml,
    expected: 20,
    tolerance: 2,
    source: `${dropper} (teaching note)`,
    how: 'read',
  },
  {
    claim: '20 drops of water weigh 1.000 g, give or take 0.050 g',
    drops: 20,
    got: (ml) => ml * waterGMl,
    expected: 1,
    tolerance: 0.05,
    source: 'Ph. Eur. 2.1.1, standard drop counter',
    how: 'memory',
  },
];

const toldBy = ({ ask }: UnitRow): number => worked(convertAmount({ region: 'eu', ...ask })).value;

describe('unit factors', () => {
  it.each([...definitions, ...tables, ...labelling, ...temperatures])(
    'should know that $claim ($source, $how)',
    (row) => {
      expect(Math.abs(toldBy(row) - row.expected)).toBeLessThanOrEqual(row.tolerance);
    },
  );

  it.each(droppers)('should know that $claim ($source, $how)', ({ drops, got, expected, tolerance }) => {
    const ml = worked(convertAmount({ value: drops, from: 'drop', to: 'ml', region: 'eu' })).value;
    expect(Math.abs(got(ml) - expected)).toBeLessThanOrEqual(tolerance);
  });
});

/** mathjs works in kilograms and cubic metres, which leaves a trace of floating-point noise in the last digit. */
const noise = 1e-14;

const nearly = (got: number, expected: number): void =>
  expect(Math.abs(got / expected - 1)).toBeLessThanOrEqual(noise);

describe('the roots of the unit table, as mathjs has them', () => {
  it('should hold the same pound, kilogram, cubic inch and litre', () => {
    nearly(unit(1, 'lbm').toNumber('g'), roots.poundG);
    nearly(unit(1, 'kg').toNumber('g'), roots.kilogramG);
    nearly(unit(1, 'cuin').toNumber('ml'), roots.cubicInchMl);
    nearly(unit(1, 'litre').toNumber('ml'), roots.litreMl);
  });

  it.each([-40, 0, 35, 37, 65, 66, 71.5, 86, 100])(
    'should convert %d °C and back as mathjs does',
    (celsius) => {
      const there = unit(celsius, 'degC').toNumber('degF');
      const told = worked(convertAmount({ value: celsius, from: 'C', to: 'F', region: 'us' })).value;
      const back = worked(convertAmount({ value: there, from: 'F', to: 'C', region: 'us' })).value;
      expect(told).toBeCloseTo(there, 9);
      expect(back).toBeCloseTo(celsius, 9);
    },
  );

  /**
   * mathjs 15.2 carries these three exactly as well, so building them from the roots is a second way to the same figure
   * and not a correction of mathjs.
   */
  it.each([
    { measure: 'ounce', of: 'g', from: 'oz' },
    { measure: 'cup', of: 'ml', from: 'cup' },
    { measure: 'fluidounce', of: 'ml', from: 'fl oz' },
  ] as const)('should build the same US $measure from the roots', ({ measure, of, from }) => {
    const built = worked(convertAmount({ value: 1, from, to: of, region: 'us' })).value;
    nearly(unit(1, measure).toNumber(of), built);
  });

  /** Why users' words never reach mathjs: its spoons are metric everywhere and its C is a charge. */
  it('should find metric spoons and the coulomb in mathjs, which is why our own table is asked instead', () => {
    expect(unit(1, 'teaspoon').toNumber('ml')).toBeCloseTo(5, 9);
    expect(unit(1, 'tablespoon').toNumber('ml')).toBeCloseTo(15, 9);
    expect(unit('5 C').hasBase('ELECTRIC_CHARGE')).toBe(true);
    expect(() => unit(1, 'tbsp')).toThrow();
  });
});
