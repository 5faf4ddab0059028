import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import type { Ingredient } from '../../../core/data/ingredient.ts';
import { type Design, design } from '../../../core/design/design.ts';
import { coldestPromiseC, formRules } from '../../../core/design/rules.ts';
import type { Wishes } from '../../../core/design/wishes.ts';
import { ingredientById, isAroma, isAromaRow, isHerb } from '../../../core/ingredients.ts';
import { blendOf } from '../../../core/melt/blend.ts';
import { firmness } from '../../../core/melt/firmness.ts';
import { anyWishes } from './wishes.ts';

const ofLibrary = (id: string) => {
  const found = ingredientById(id);
  if (!found) throw new Error(`not in the library: ${id}`);
  return found;
};

/** Everything that goes into the pot, herbs in the oil included. */
const contents = ({ proposals }: Design) =>
  proposals.flatMap(({ lines }) =>
    lines.flatMap(({ ingredient, infusedWith }) =>
      infusedWith ? [ofLibrary(ingredient), ofLibrary(infusedWith)] : [ofLibrary(ingredient)],
    ),
  );

/** What these words forbid by the library's own flags: written again here, apart from the code that is tested. */
const flagOf: Readonly<Record<string, readonly string[]>> = {
  nuts: ['tree-nut', 'peanut'],
  peanut: ['peanut'],
  bee: ['bee'],
  wool: ['wool'],
  soy: ['soy'],
  sesame: ['sesame'],
  wheat: ['wheat'],
};

const forbids = (word: string, found: Ingredient): boolean => {
  switch (word) {
    case 'animal':
      return found.vegan !== 'yes';
    case 'wax':
      return found.kind === 'wax';
    case 'scent':
      return isAroma(found);
    case 'coconut':
      return found.id.includes('coconut');
    case 'palm':
      return found.id.startsWith('palm-');
    default:
      return (flagOf[word] ?? []).includes(found.allergen.flag);
  }
};

const least = (found: Ingredient): number => (found.kind === 'wax' ? (found.usePercent?.low ?? 0) : 0);

const most = (found: Ingredient): number =>
  Math.min(
    found.usePercent?.high ?? 100,
    ...(isAromaRow(found)
      ? [found.limits.leaveOnMaxPercent ?? 100, found.limits.dermalMaxPercent ?? 100]
      : []),
  );

const sum = (lines: Design['proposals'][number]['lines']): number =>
  lines.reduce((all, { percent }) => all + percent, 0);

const indexAt = (lines: Design['proposals'][number]['lines'], celsius: number): number => {
  const blend = blendOf(lines.map(({ ingredient, percent }) => ({ ingredient, weight: percent })));
  if (!blend.ok) throw new Error(blend.problem.code);
  const index = firmness(blend.value, celsius);
  return index.ok ? index.value : Number.NaN;
};

const options = { numRuns: 100 };

describe('a design for any wishes', () => {
  test.prop([anyWishes], { numRuns: 300 })('should never contain what is excluded', (wishes) => {
    for (const found of contents(design(wishes))) {
      expect(wishes.vegan && found.vegan !== 'yes').toBe(false);
      expect(wishes.without).not.toContain(found.id);
      expect(wishes.without.filter((word) => forbids(word, found))).toEqual([]);
    }
  });

  test.prop([anyWishes], options)('should hold nothing that is unsafe on lips', (wishes) => {
    for (const found of contents(design(wishes))) {
      expect(found.lips).not.toBe('avoid');
      if (isAromaRow(found)) expect(found.limits.phototoxic).toBe(false);
      if (isHerb(found)) expect(found.lightSensitising).not.toBe('yes');
    }
  });

  test.prop([anyWishes], options)('should keep to usual shares and to 100 %', (wishes) => {
    const asked = new Set(wishes.with.map(({ ingredient }) => ingredient));
    for (const { lines } of design(wishes).proposals) {
      expect(sum(lines)).toBeCloseTo(100, 9);
      expect(sum(lines.filter(({ ingredient }) => isAroma(ofLibrary(ingredient))))).toBeLessThan(1 + 1e-9);
      for (const { ingredient, percent } of lines) {
        const found = ofLibrary(ingredient);
        expect(percent).toBeGreaterThan(0);
        expect(percent).toBeLessThanOrEqual(most(found));
        expect(percent).toBeGreaterThanOrEqual(asked.has(ingredient) ? 0 : least(found));
      }
    }
  });

  test.prop([anyWishes], options)('should survive what it says, in its own form', (wishes) => {
    const made = design(wishes);
    const rule = formRules[made.wishes.form];
    for (const { lines, survivesC, forecast } of made.proposals) {
      const least = made.wishes.survivesC ?? coldestPromiseC;
      expect(indexAt(lines, 25)).toBeGreaterThanOrEqual(rule.least);
      expect(indexAt(lines, 25)).toBeLessThan(rule.most);
      expect(indexAt(lines, survivesC ?? 25)).toBeGreaterThanOrEqual(
        survivesC === undefined ? rule.least : rule.holds,
      );
      expect(survivesC ?? least).toBeGreaterThanOrEqual(least);
      expect(rule.untilSoft ? forecast.softensC : 100).toBeGreaterThanOrEqual(survivesC ?? 0);
    }
  });

  test.prop([anyWishes], options)('should propose something or say what to relax', (wishes) => {
    const made = design(wishes);
    expect(made.proposals.length + made.relaxed.length).toBeGreaterThan(0);
  });

  test.prop([anyWishes], options)('should keep every wish that it does not relax', (wishes) => {
    const made = design(wishes);
    const kept = (wish: string) => made.relaxed.every((each) => each.wish !== wish);
    fc.pre(made.proposals.length > 0);
    expect(made.wishes.form === wishes.form || !kept('form')).toBe(true);
    expect(made.wishes.survivesC === wishes.survivesC || !kept('survives_c')).toBe(true);
    const months = kept('shelf_life_months') ? (wishes.shelfLifeMonths ?? 0) : 0;
    for (const { keeps } of made.proposals) expect(keeps?.months ?? months).toBeGreaterThanOrEqual(months);
  });

  test.prop([anyWishes], options)('should hold all that is asked for, in the share asked for', (wishes) => {
    const made = design(wishes);
    const relaxed = made.relaxed.flatMap((each) => (each.wish === 'with' ? [each.ingredient] : []));
    const wanted = wishes.with.filter(({ ingredient }) => !relaxed.includes(ingredient));
    for (const { lines } of made.proposals) {
      const shares = new Map(lines.map(({ ingredient, percent }) => [ingredient, percent]));
      const herbs = lines.flatMap(({ infusedWith }) => infusedWith ?? []);
      for (const { ingredient, percent } of wanted.filter((each) => !herbs.includes(each.ingredient))) {
        expect(shares.has(ingredient)).toBe(true);
        expect(shares.get(ingredient)).toBe(percent ?? shares.get(ingredient));
      }
    }
  });

  test.prop([anyWishes], options)('should give proposals that differ in wax or butters', (wishes) => {
    const kinds = design(wishes).proposals.map(({ lines }) =>
      lines
        .filter(({ ingredient }) => ['wax', 'butter'].includes(ofLibrary(ingredient).kind))
        .map(({ ingredient }) => ingredient)
        .toSorted()
        .join('+'),
    );
    expect(new Set(kinds).size).toBe(kinds.length);
    expect(kinds.length).toBeLessThanOrEqual(3);
  });

  it('should not come to one recipe twice where butters stand in for the oil', () => {
    const { proposals } = design({
      form: 'stick',
      vegan: false,
      without: ['nuts', 'liquid-oil', 'wax'],
      with: [{ ingredient: 'cetyl-alcohol' }],
    });
    const recipes = proposals.map(({ lines }) => JSON.stringify(lines));
    expect(recipes.length).toBeGreaterThan(1);
    expect(new Set(recipes).size).toBe(recipes.length);
  });

  it('should stay a balm for a tube where coconut oil and cocoa butter soften each other', () => {
    const { wishes, proposals } = design({
      form: 'tube',
      vegan: false,
      without: ['liquid-oil'],
      with: [{ ingredient: 'coconut-oil', percent: 20.5 }],
    });
    expect(wishes.form).toBe('tube');
    expect(proposals.length).toBeGreaterThan(0);
    for (const { lines } of proposals) expect(indexAt(lines, 25)).toBeLessThan(formRules.tube.most);
  });

  it.each<Wishes>([
    {
      form: 'stick',
      vegan: false,
      without: [],
      with: [
        { ingredient: 'sweet-almond-oil', percent: 25 },
        { ingredient: 'cetyl-alcohol', percent: 8 },
        { ingredient: 'nettle', percent: 57.5 },
        { ingredient: 'jojoba-oil', percent: 57.5 },
      ],
      survivesC: 17,
      shelfLifeMonths: 25,
    },
    {
      form: 'tin',
      vegan: true,
      without: ['wax'],
      with: [{ ingredient: 'jojoba-oil', percent: 56 }, { ingredient: 'spearmint-essential-oil' }],
      survivesC: 41,
      shelfLifeMonths: 44,
    },
  ])('should lose neither heat nor shelf life where both and a share stand in the way: $form', (wished) => {
    const { wishes, proposals, relaxed } = design(wished);
    const told = relaxed.map(({ wish }) => wish);
    expect(told).toContain('with');
    expect(told).toContain('shelf_life_months');
    expect(told.includes('survives_c')).toBe(wishes.survivesC !== wished.survivesC);
    expect(proposals.length).toBeGreaterThan(0);
    for (const { survivesC } of proposals)
      expect(survivesC).toBeGreaterThanOrEqual(wishes.survivesC ?? Number.NaN);
  });

  test.prop([anyWishes], { numRuns: 40 })('should be the same each time', (wishes) => {
    const lines = ({ proposals }: Design) => proposals.map((proposal) => proposal.lines);
    expect(lines(design(wishes))).toEqual(lines(design(wishes)));
  });
});
