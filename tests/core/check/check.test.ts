import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { type CheckInput, checkRecipe } from '../../../core/check/check.ts';
import { dropsIn, mostDrops, roundedDown } from '../../../core/check/cut.ts';
import type { Finding } from '../../../core/check/finding.ts';
import { roomFor } from '../../../core/check/most.ts';
import { sharesOfLines } from '../../../core/check/shares.ts';
import { aromas } from '../../../core/data/essential-oils.ts';
import { regions } from '../../../core/settings.ts';

const on = '2027-03-01';
const base = { strained: [], region: 'eu', on } as const;
const check = (ingredient: string, percent: number, more: Partial<CheckInput> = {}) =>
  checkRecipe({ ...base, lines: [{ ingredient, percent }], ...more });
const codes = (findings: readonly Finding[]): string[] => findings.map(({ code }) => code);

describe('a clean recipe', () => {
  it('should be within, with nothing to warn of', () => {
    const report = checkRecipe({
      ...base,
      lines: [
        { ingredient: 'candelilla-wax', percent: 15 },
        { ingredient: 'mango-butter', percent: 30 },
        { ingredient: 'high-oleic-sunflower-oil', percent: 54.8 },
        { ingredient: 'vitamin-e', percent: 0.2 },
      ],
    });
    expect(report.verdict).toBe('within');
    expect(report.findings).toEqual([]);
    expect(report.allergens).toEqual([]);
  });
});

describe('what only rests on memory', () => {
  it('should warn and never stop: eugenol of clove bud (limit from memory)', () => {
    const report = check('clove-bud-essential-oil', 0.9);
    expect(report.verdict).toBe('warn');
    expect(report.findings[0]).toMatchObject({ code: 'over-limit', level: 'warn' });
  });

  it('should warn where only the high end of a range from memory is over a law', () => {
    // May chang holds 60 to 80 % citral (from memory): 0.16 % of it brings 0.096 to 0.128 %.
    const report = check('litsea-essential-oil', 0.16);
    expect(report.findings[0]).toMatchObject({ code: 'over-limit', level: 'warn' });
    expect(check('litsea-essential-oil', 0.3).findings[0]).toMatchObject({ level: 'stop' });
  });
});

describe('the change that would clear a finding', () => {
  it.each([
    [0.1467, 0.146],
    [0.029, 0.029],
    [1.0999, 1.09],
    [12.349, 12.3],
    [0, 0],
  ])('should round %s down to %s', (percent, down) => {
    expect(roundedDown(percent)).toBe(down);
  });

  it('should count heavy drops for the most and give a range for what there is', () => {
    // 1 g of an oil of 0.9 g/ml is 1.11 ml: 22 heavy drops at 20 to the ml, 44 light ones at 40.
    expect(dropsIn(1, 'peru-balsam')).toEqual({ low: 22, high: 44 });
    expect(mostDrops(1, 'peru-balsam')).toBe(22);
    expect(mostDrops(0.04, 'peru-balsam')).toBe(0);
  });

  const oil = fc.constantFrom(...aromas.map(({ id }) => id));
  const line = fc.record({ ingredient: oil, percent: fc.double({ min: 0.001, max: 5, noNaN: true }) });
  const blend = fc.uniqueArray(line, {
    minLength: 1,
    maxLength: 4,
    selector: ({ ingredient }) => ingredient,
  });

  const cutFindings = new Set(['over-limit', 'aroma-too-high', 'light-sensitising', 'limit-coming']);

  test.prop([blend, fc.constantFrom(...regions)])('should clear it', (lines, region) => {
    const most = new Map<string, number>();
    const first = checkRecipe({ ...base, lines, region });
    for (const finding of first.findings)
      if ('cuts' in finding)
        for (const { ingredient, mostPercent } of finding.cuts)
          most.set(ingredient, Math.min(mostPercent, most.get(ingredient) ?? 100));
    const changed = lines
      .map((each) => ({ ...each, percent: Math.min(each.percent, most.get(each.ingredient) ?? 100) }))
      .filter(({ percent }) => percent > 0);
    const again = checkRecipe({ ...base, lines: changed, region });
    expect(codes(again.findings).filter((code) => cutFindings.has(code))).toEqual([]);
    expect(again.verdict).not.toBe('not-ok');
  });

  test.prop([line, fc.constantFrom(...regions)])(
    'should never ask for more than there is',
    ({ ingredient, percent }, region) => {
      for (const finding of check(ingredient, percent, { region }).findings)
        if ('cuts' in finding)
          for (const cut of finding.cuts) expect(cut.mostPercent).toBeLessThan(cut.nowPercent);
    },
  );
});

describe('room for one scent', () => {
  it.each(aromas.map(({ id }) => id))('should be within its own limits: %s', (id) => {
    const [least] = roomFor(id, { region: 'eu', on });
    expect(least?.mostPercent).toBeGreaterThan(0);
    const report = check(id, least?.mostPercent ?? 0);
    expect(codes(report.findings)).not.toContain('over-limit');
    expect(codes(report.findings)).not.toContain('aroma-too-high');
  });

  it('should be no question for what has no scent', () => {
    expect(roomFor('shea-butter', { region: 'eu', on })).toEqual([]);
  });
});

describe('days and places', () => {
  it('should ask for the citral law only from its day', () => {
    const laws = (day: string) =>
      check('citral', 0.12, { on: day }).limits.filter(({ kind }) => kind === 'law').length;
    expect([laws('2026-12-31'), laws('2027-01-01')]).toEqual([0, 1]);
  });

  it('should judge lip colours in the US alone', () => {
    expect(check('charcoal', 1, { region: 'us' }).verdict).toBe('not-ok');
    expect(check('charcoal', 1, { region: 'eu' }).verdict).toBe('within');
  });

  it('should prohibit verbena oil in the EU and Great Britain, by what was read', () => {
    expect(check('verbena-essential-oil', 0.1, { region: 'uk' }).verdict).toBe('not-ok');
    expect(check('verbena-essential-oil', 0.1, { region: 'us' }).verdict).toBe('within');
  });
});

describe('children', () => {
  it('should be told always and warned of when it is for them', () => {
    const levels = (wearer: 'anyone' | 'children') =>
      check('menthol-crystals', 0.3, { wearer })
        .findings.filter(({ code }) => code === 'not-for-children')
        .map(({ level }) => level);
    expect(levels('anyone')).toEqual(['note']);
    expect(levels('children')).toEqual(['warn']);
  });
});

describe('shares of lines', () => {
  const drops = [{ ingredient: 'peppermint-essential-oil', amount: 10, unit: 'drop' }] as const;

  it('should ask how big the balm is for drops alone', () => {
    expect(sharesOfLines(drops, 'eu')).toMatchObject({ ok: false, problem: { code: 'no-batch-for-drops' } });
  });

  it('should reckon drops in a batch by 30 to the millilitre', () => {
    // 10 / 30 ml x 0.906 g/ml = 0.302 g in 100 g.
    const found = sharesOfLines(drops, 'eu', 100);
    expect(found.ok && found.value.lines[0]?.percent).toBeCloseTo(0.302, 4);
  });

  it('should take a few scents by percent as part of a balm, and a broken recipe as a problem', () => {
    const part = sharesOfLines(
      [{ ingredient: 'peppermint-essential-oil', amount: 2, unit: 'percent' }],
      'eu',
    );
    expect(part).toMatchObject({ ok: true, value: { partial: true, lines: [{ percent: 2 }] } });
    const broken = sharesOfLines(
      [
        { ingredient: 'beeswax', amount: 20, unit: 'percent' },
        { ingredient: 'olive-oil', amount: 70, unit: 'percent' },
      ],
      'eu',
    );
    expect(broken).toMatchObject({ ok: false, problem: { code: 'percent-sum' } });
  });
});
