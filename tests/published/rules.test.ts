import { describe, expect, it } from 'vitest';
import { type AllergenList, allergenRule, declarable } from '../../core/check/allergens.ts';
import { amountsOf, type CheckLine } from '../../core/check/amounts.ts';
import { type CheckInput, checkRecipe } from '../../core/check/check.ts';
import { type Analysis, groupName } from '../../core/check/composition.ts';
import { roundedDown } from '../../core/check/cut.ts';
import { lightSum } from '../../core/check/other-findings.ts';
import { judgeClaim } from '../../core/claim/claim.ts';
import { allergenRows } from '../../core/data/rules/allergens.ts';
import type { Region } from '../../core/settings.ts';

/**
 * Worked rows of the rules, typed by hand. `read`: the expected value follows from a text that was seen; the others
 * prove less and are marked. Sources: EU 2023/1545 (fragrance allergens), 1223/2009 Annexes II and III, 2026/909
 * (citral), 2022/1531 and the GB amendment of 2025 (methyl salicylate), IFRA 49th Amendment, SCCS/1681/25, the
 * essential-oil safety handbook of 2014 (light), FDA colour table, Ph. Eur. lavender by PMC9148000.
 */

const today = '2026-11-25';
const limonene: Analysis = { ingredient: 'sweet-orange-essential-oil', name: 'Limonene', percent: 95 };
const orange: CheckLine = { ingredient: 'sweet-orange-essential-oil', percent: 0.5 };

const check = (lines: readonly CheckLine[], region: Region, more: Partial<CheckInput> = {}) =>
  checkRecipe({ lines, strained: [], region, on: today, ...more });

const declared = (lines: readonly CheckLine[], region: Region, more: Partial<CheckInput> = {}): string[] =>
  check(lines, region, more)
    .allergens.filter(({ declare }) => declare)
    .map(({ name }) => name);

const percentOf = (lines: readonly CheckLine[], name: string, analyses: readonly Analysis[] = []): number =>
  amountsOf(lines, analyses).find((amount) => amount.name === name)?.percent ?? 0;

const codes = (lines: readonly CheckLine[], region: Region, more: Partial<CheckInput> = {}): string[] =>
  check(lines, region, more).findings.map(({ code }) => code);

const rows = (lines: readonly CheckLine[], region: Region, more: Partial<CheckInput> = {}) =>
  check(lines, region, more).limits;

describe('fragrance allergens to name (EU 2023/1545, read)', () => {
  it('should name limonene at 0.475 % and the orange oil itself in the EU (EU 2023/1545, read)', () => {
    const report = check([orange], 'eu', { analyses: [limonene] });
    expect(report.allergens).toContainEqual({
      name: 'Limonene',
      percent: 0.475,
      declare: true,
      certain: true,
    });
    expect(report.allergens).toContainEqual({
      name: 'Citrus Aurantium Peel Oil',
      percent: 0.5,
      declare: true,
      certain: true,
    });
  });

  it('should ask for limonene alone in Great Britain (GB allergen notice, read second-hand)', () => {
    const names = declared([orange], 'uk', { analyses: [limonene] });
    expect(names).toContain('Limonene');
    expect(names).not.toContain('Citrus Aurantium Peel Oil');
  });

  it('should ask for nothing in the US (US regulatory agenda, read) and Australia (F2020L01469, from memory)', () => {
    expect(declared([orange], 'us', { analyses: [limonene] })).toEqual([]);
    expect(declared([orange], 'au', { analyses: [limonene] })).toEqual([]);
    expect(allergenRule('us', today).status).toBe('read');
    expect(allergenRule('au', today).status).toBe('memory');
  });

  it('should ask in Canada what the EU asks for new goods (SOR/2024-63, read second-hand)', () => {
    expect(declared([orange], 'ca', { analyses: [limonene] })).toEqual(
      declared([orange], 'eu', { analyses: [limonene] }),
    );
    expect(allergenRule('ca', today)).toMatchObject({ list: 'full', status: 'read-secondary' });
  });

  it.each([
    [0.001, 'leave-on', false],
    [0.0011, 'leave-on', true],
    [0.0011, 'rinse-off', false],
  ] as const)(
    'should count over the threshold strictly: %s %% on a %s product (EU 2023/1545, read)',
    (percent, use, named) => {
      const lines = [{ ingredient: 'linalool', percent }];
      const found = declarable(lines, amountsOf(lines, []), 'full', use);
      expect(found).toMatchObject([{ name: 'Linalool', percent, declare: named }]);
    },
  );

  it('should sum limonene over two oils and name it once (EU 2023/1545, read)', () => {
    const lines = [
      { ingredient: 'sweet-orange-essential-oil', percent: 0.3 },
      { ingredient: 'peppermint-essential-oil', percent: 0.2 },
    ];
    const analyses = [limonene, { ingredient: 'peppermint-essential-oil', name: 'limonene', percent: 2 }];
    const found = check(lines, 'eu', { analyses }).allergens.filter(({ name }) => name === 'Limonene');
    expect(found).toMatchObject([{ percent: 0.289, declare: true }]);
  });

  it.each([
    [0.05, 0.00075, false],
    [0.1, 0.0015, true],
  ])(
    'should name vanillin only over the threshold: %s %% extract (EU 2023/1545, read)',
    (percent, vanillin, named) => {
      const report = check([{ ingredient: 'vanilla-extract', percent }], 'eu', {
        analyses: [{ ingredient: 'vanilla-extract', name: 'Vanillin', percent: 1.5 }],
      });
      expect(report.allergens).toMatchObject([{ name: 'Vanillin', percent: vanillin, declare: named }]);
    },
  );

  it('should add neral and geranial up to citral (EU 2023/1545 and Danish EPA 2008, read)', () => {
    const lemon = 'cold-pressed-lemon-essential-oil';
    const analyses = [
      { ingredient: lemon, name: 'neral', percent: 0.74 },
      { ingredient: lemon, name: 'geranial', percent: 1.18 },
    ];
    expect(percentOf([{ ingredient: lemon, percent: 0.4 }], 'Citral', analyses)).toBeCloseTo(0.00768, 9);
    const named = declared([{ ingredient: lemon, percent: 0.4 }], 'eu', { analyses });
    expect(named.filter((name) => name === 'Citral')).toHaveLength(1);
  });

  const lavender = [{ ingredient: 'lavender-essential-oil', percent: 0.2 }];
  it.each([
    ['Linalool', 0.09],
    ['Linalyl Acetate', 0.094],
    ['Camphor', 0.0024],
    ['Limonene', 0.002],
    ['Terpineol', 0.004],
    ['Lavandula Oil/Extract', 0.2],
  ])(
    'should name %s at %s %% from 0.2 %% lavender oil in the EU (PMC9148000 and EU 2023/1545, read)',
    (name, percent) => {
      const found = check(lavender, 'eu').allergens.find((each) => each.name === name);
      expect(found?.percent).toBeCloseTo(percent, 9);
      expect(found?.declare).toBe(true);
    },
  );

  it('should leave the new entries of lavender oil out in Great Britain (GB allergen notice, read second-hand)', () => {
    const named = declared(lavender, 'uk');
    expect(named).toEqual(expect.arrayContaining(['Linalool', 'Limonene']));
    for (const name of ['Linalyl Acetate', 'Camphor', 'Terpineol', 'Lavandula Oil/Extract'])
      expect(named).not.toContain(name);
  });

  it('should name menthol in the EU and not in Great Britain (EU 2023/1545, read)', () => {
    const mint = [{ ingredient: 'peppermint-essential-oil', percent: 0.5 }];
    const analyses = [{ ingredient: 'peppermint-essential-oil', name: 'Menthol', percent: 40 }];
    expect(percentOf(mint, 'Menthol', analyses)).toBeCloseTo(0.2, 9);
    expect(declared(mint, 'eu', { analyses })).toContain('Menthol');
    expect(declared(mint, 'uk', { analyses })).not.toContain('Menthol');
  });

  it.each([
    ['2026-07-31', '2027-05-01', 'old'],
    ['2026-07-31', '2028-08-01', 'full'],
    ['2026-08-01', '2026-08-01', 'full'],
  ] as const)(
    'should ask of goods first supplied %s and sold %s the %s list (EU 2023/1545, read)',
    (placed, sold, list) => {
      expect(allergenRule('eu', placed, sold).list).toBe(list satisfies AllergenList);
    },
  );

  it('should hold 81 entries, and 26 of the old list with two prohibited (EU 2023/1545 and Annex III, read)', () => {
    expect(allergenRows.filter(({ kind }) => kind === 'allergen')).toHaveLength(81);
    expect(allergenRows.filter(({ oldList }) => oldList)).toHaveLength(26);
    const gone = allergenRows.filter(({ kind }) => kind === 'prohibited').flatMap(({ cas }) => cas);
    expect(gone.toSorted()).toEqual(['31906-04-4', '80-54-6']);
  });

  it.each([
    ['neral', 'Citral'],
    ['alpha-pinene', 'Pinene'],
    ['beta-pinene', 'Pinene'],
    ['Citrus Sinensis Peel Oil', 'Citrus Aurantium Peel Oil'],
    ['lavandin oil', 'Lavandula Oil/Extract'],
  ])('should group %s as %s (EU 2023/1545, read)', (name, group) => {
    expect(groupName(name)).toBe(group);
  });

  it('should not take rose hip seed oil for the rose flower entry (EU 2023/1545, read)', () => {
    expect(declared([{ ingredient: 'rosehip-oil', percent: 10 }], 'eu')).toEqual([]);
  });
});

describe('limits on lips', () => {
  const citral = (percent: number) => [{ ingredient: 'citral', percent }];

  it('should not allow 0.12 % citral in the EU from 2027-01-01 (EU 2026/909, read)', () => {
    const report = check(citral(0.12), 'eu', { on: '2027-01-02' });
    expect(report.verdict).toBe('not-ok');
    expect(report.limits).toContainEqual(
      expect.objectContaining({ kind: 'law', limitPercent: 0.11, ok: false, status: 'read' }),
    );
  });

  it('should warn before that day (EU 2026/909, read)', () => {
    const report = check(citral(0.12), 'eu', { on: '2026-12-01' });
    expect(report.verdict).toBe('warn');
    expect(report.coming).toMatchObject([{ limitPercent: 0.11, appliesFrom: '2027-01-01' }]);
    expect(report.findings.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['over-limit', 'limit-coming']),
    );
  });

  it('should allow exactly 0.11 % (EU 2026/909, read)', () => {
    expect(check(citral(0.11), 'eu', { on: '2027-01-02' }).verdict).toBe('within');
  });

  it('should find 0.375 % citral in 0.5 % lemongrass oil, and 0.146 % of the oil as the most (EU 2026/909; share from memory)', () => {
    const lines = [{ ingredient: 'lemongrass-essential-oil', percent: 0.5 }];
    const analyses = [{ ingredient: 'lemongrass-essential-oil', name: 'Citral', percent: 75 }];
    expect(percentOf(lines, 'Citral', analyses)).toBeCloseTo(0.375, 9);
    expect(roundedDown(0.11 / 0.75)).toBe(0.146);
    const [first] = check(lines, 'eu', { on: '2027-01-02', analyses }).findings;
    expect(first).toMatchObject({ code: 'over-limit', level: 'stop', cuts: [{ mostPercent: 0.146 }] });
  });

  it('should find 0.0495 % methyl salicylate in 0.05 % wintergreen oil: over (Annex III 324, read second-hand)', () => {
    const lines = [{ ingredient: 'wintergreen-essential-oil', percent: 0.05 }];
    const analyses = [{ ingredient: 'wintergreen-essential-oil', name: 'Methyl Salicylate', percent: 99 }];
    expect(percentOf(lines, 'Methyl Salicylate', analyses)).toBeCloseTo(0.0495, 9);
    expect(check(lines, 'eu', { analyses }).verdict).toBe('not-ok');
  });

  const salicylate = (percent: number) => [{ ingredient: 'methyl-salicylate', percent }];
  it('should not allow methyl salicylate for small children in the EU (EU 2023/1545, read)', () => {
    expect(check(salicylate(0.03), 'eu').verdict).toBe('within');
    expect(check(salicylate(0.03), 'eu', { wearer: 'children' }).verdict).toBe('not-ok');
  });

  it('should keep it at 0.02 % for a baby in Great Britain (GB Annex III, read second-hand)', () => {
    expect(check(salicylate(0.025), 'uk', { wearer: 'babies' }).verdict).toBe('not-ok');
    expect(check(salicylate(0.025), 'uk').verdict).toBe('within');
  });

  it('should find methyl eugenol of rose otto over two limits (IFRA 49th Amendment; industry read, law from memory)', () => {
    const otto = 'rose-otto-essential-oil';
    const analyses = [{ ingredient: otto, name: 'Methyl eugenol', percent: 2 }];
    const found = rows([{ ingredient: otto, percent: 0.05 }], 'eu', { analyses }).filter(
      ({ subject }) => subject === 'Methyl eugenol',
    );
    expect(
      found.map(({ percent, limitPercent, ok, status }) => ({ percent, limitPercent, ok, status })),
    ).toEqual(
      expect.arrayContaining([
        { percent: 0.001, limitPercent: 0.0002, ok: false, status: 'memory' },
        { percent: 0.001, limitPercent: 0.00058, ok: false, status: 'read' },
      ]),
    );
  });

  it('should give 0.029 % as the most rose otto by the industry limit (IFRA 49th Amendment, read)', () => {
    expect(roundedDown(0.00058 / 0.02)).toBe(0.029);
  });

  it('should find 0.08 % estragole in 0.1 % basil oil: over 0.012 % (IFRA 49th Amendment; limit read, share from memory)', () => {
    const lines = [{ ingredient: 'basil-essential-oil', percent: 0.1 }];
    expect(percentOf(lines, 'Estragole')).toBeCloseTo(0.08, 9);
    expect(rows(lines, 'eu')).toContainEqual(
      expect.objectContaining({ subject: 'Estragole', limitPercent: 0.012, ok: false, status: 'read' }),
    );
  });

  it.each([['verbena-essential-oil'], ['peru-balsam']])(
    'should prohibit %s in the EU (Annex II, read)',
    (ingredient) => {
      const report = check([{ ingredient, percent: 0.1 }], 'eu');
      expect(report.verdict).toBe('not-ok');
      expect(report.findings[0]).toMatchObject({ code: 'prohibited', level: 'stop' });
    },
  );

  it('should let verbena absolute pass the law and not the industry limit (EU 2023/1545 and IFRA 49th Amendment, read and read second-hand)', () => {
    const found = rows([{ ingredient: 'verbena-absolute', percent: 0.15 }], 'eu');
    expect(found.map(({ kind, limitPercent, ok }) => ({ kind, limitPercent, ok }))).toEqual([
      { kind: 'law', limitPercent: 0.2, ok: true },
      { kind: 'industry', limitPercent: 0.12, ok: false },
    ]);
  });

  it('should find Tagetes oil over 0.01 % and ask which marigold (Annexes II and III, read)', () => {
    const lines = [{ ingredient: 'tagetes-essential-oil', percent: 0.02 }];
    const found = codes(lines, 'eu', { doubtful: ['marigold'] });
    expect(found).toEqual(expect.arrayContaining(['over-limit', 'wrong-species']));
  });

  it('should find 0.0009 % of the anthranilate in mandarin oil within (Annexes II and III, read)', () => {
    const lines = [{ ingredient: 'mandarin-essential-oil', percent: 0.15 }];
    expect(rows(lines, 'eu')).toContainEqual(
      expect.objectContaining({
        subject: 'Methyl N-methylanthranilate',
        percent: 0.0009,
        limitPercent: 0.1,
        ok: true,
      }),
    );
  });
});

describe('light-sensitising oils (handbook of 2014, read second-hand)', () => {
  const oil = (ingredient: string, percent: number): CheckLine => ({
    ingredient: `${ingredient}-essential-oil`,
    percent,
  });

  it.each([
    [[oil('cold-pressed-bergamot', 0.4)], 1, false],
    [[oil('cold-pressed-bergamot', 0.3), oil('cold-pressed-lemon', 1)], 1.25, true],
    [[oil('bergamot-fcf', 1)], 0, false],
    [[oil('sweet-orange', 1)], 0, false],
  ] as const)('should sum the fractions of %j to %s (warn: %s)', (lines, sum, warns) => {
    expect(lightSum(lines)).toBeCloseTo(sum, 9);
    expect(codes(lines, 'eu').includes('light-sensitising')).toBe(warns);
  });

  it('should still name the allergens of furocoumarin-free bergamot (handbook of 2014)', () => {
    expect(declared([oil('bergamot-fcf', 1)], 'eu')).toEqual(
      expect.arrayContaining(['Limonene', 'Linalool', 'Citrus Aurantium Bergamia Peel Oil']),
    );
  });
});

describe('what does not belong on lips', () => {
  it('should keep tea tree oil off lips (SCCS/1681/25, read)', () => {
    expect(codes([{ ingredient: 'tea-tree-essential-oil', percent: 1 }], 'eu')).toContain('keep-off-lips');
  });

  it('should tell of peanut protein and nuts (EU 2017/2228, read)', () => {
    const report = check([{ ingredient: 'peanut-oil', percent: 30 }], 'eu');
    expect(report.findings).toContainEqual(expect.objectContaining({ code: 'peanut-protein' }));
    expect(report.findings).toContainEqual(
      expect.objectContaining({ hazard: expect.objectContaining({ code: 'nut-allergen' }) }),
    );
  });

  it.each([
    ['ultramarine-chromium-green', 'not-ok', '21 CFR 73.2725 read second-hand, FDA colour table read'],
    ['carmine', 'within', 'FDA colour table, read'],
    ['beet-powder', 'not-ok', '21 CFR 73, read second-hand'],
  ])('should judge %s on lips in the US as %s (%s)', (ingredient, verdict) => {
    expect(check([{ ingredient, percent: 1 }], 'us').verdict).toBe(verdict);
  });

  it('should warn of comfrey in an infusion (comfrey risk profile 2013, read)', () => {
    const lines = [{ ingredient: 'infused-oil', percent: 80, infusedWith: 'comfrey' }];
    const report = check(lines, 'eu');
    expect(report.findings[0]).toMatchObject({ code: 'not-for-lips', level: 'warn' });
  });

  it('should warn of 1.5 % scent in all (common practice, no source)', () => {
    expect(codes([{ ingredient: 'lavender-essential-oil', percent: 1.5 }], 'eu')).toContain('aroma-too-high');
  });

  it('should warn of fresh mint (from memory)', () => {
    expect(codes([], 'eu', { strained: [{ ingredient: 'peppermint', fresh: true }] })).toContain(
      'brings-water',
    );
  });
});

/** The verdict on each exact phrase is a judgement, the rule behind it is read or from memory as marked. */
describe('wordings', () => {
  it.each([
    ['heals cracked lips', 'eu', 'medicinal', 'MHRA note 8 and FDA letters, read'],
    ['adds shine and a hint of mint', 'eu', 'ok', 'look and taste, read'],
    ['SPF 15', 'us', 'medicinal', 'sunscreen drug, memory'],
    ['SPF 15', 'eu', 'reword', 'approved filters and a test, memory'],
    ['approved by the FDA', 'us', 'reword', 'misleading, read'],
    ['not tested on animals', 'eu', 'reword', 'Regulation 655/2013, read'],
  ] as const)('should judge "%s" in %s as %s (%s)', (wording, region, verdict, _why) => {
    expect(judgeClaim(wording, region).verdict).toBe(verdict);
  });

  it('should offer softening for healing (MHRA note 8 and FDA letters, read)', () => {
    expect(judgeClaim('heals cracked lips', 'eu').sayInstead).toBe('Softens dry-feeling lips');
  });
});
