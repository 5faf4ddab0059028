import { describe, expect, it } from 'vitest';
import type { Fat, FattyAcidName } from '../../../core/data/ingredient.ts';
import { makeUps } from '../../../core/data/melt/make-ups.ts';
import { ingredientById, isFat } from '../../../core/ingredients.ts';
import type { AcidShares } from '../../../core/iodine.ts';
import { compositionOf, mixtureOf } from '../../../core/melt/composition.ts';
import { fractionsFromAcids } from '../../../core/melt/fatty-acids.ts';
import { type Freezing, freezingOf, lastToMelt } from '../../../core/melt/freezing.ts';
import { solidsAt } from '../../../core/melt/solve.ts';
import { softeningC } from '../../../core/melt/temperatures.ts';
import { treatmentOf } from '../../../core/melt/treatment.ts';
import { freezingOfMakeUps } from './blends.ts';

const freezingOfAcids = (acids: AcidShares): Freezing => {
  const fractions = fractionsFromAcids(acids);
  if (!fractions) throw new Error('no make-up');
  const composition = compositionOf({
    fractions,
    strength: 'fat',
    source: ['FA-RULE'],
    how: 'derived',
    confidence: 'low',
  });
  return freezingOf(mixtureOf([{ composition, share: 1 }]), 'aged');
};

const typicalAcids = (id: string): AcidShares => {
  const fat = ingredientById(id);
  if (!fat || !isFat(fat)) throw new Error(`${id} is no fat`);
  const shares: Partial<Record<FattyAcidName, number>> = {};
  for (const [acid, share] of Object.entries(fat.fattyAcids?.acids ?? {}))
    shares[acid as FattyAcidName] = share?.typical ?? 0;
  return shares;
};

describe('the fatty-acid rule', () => {
  // Worked out with the prototype: checks the implementation, not nature.
  it('should give the worked example', () => {
    const acids = { '16:0': 27, '18:0': 36, '18:1': 34, '18:2': 3 };
    const expected = {
      pop: 0.1343,
      pos: 0.3581,
      sos: 0.2387,
      sls: 0.0717,
      poo: 0.0441,
      soo: 0.0588,
      oil: 0.0842,
      trimix: 0.01,
    };
    const fractions = fractionsFromAcids(acids) ?? {};
    for (const [id, fraction] of Object.entries(expected))
      expect(fractions[id as keyof typeof expected], id).toBeCloseTo(fraction, 4);
    const freezing = freezingOfAcids(acids);
    for (const [celsius, percent] of [
      [20, 71.63],
      [25, 65.91],
      [30, 37.16],
      [35, 0],
    ] as const)
      expect(100 * solidsAt(freezing, celsius).solid, `${celsius} °C`).toBeCloseTo(percent, 1);
    expect(lastToMelt(freezing)?.celsius).toBeCloseTo(34.64, 1);
  });

  it.each([
    {
      id: 'sal-butter',
      pop: 0.0058,
      pos: 0.107,
      sos: 0.4912,
      sls: 0.0358,
      poo: 0.0255,
      soo: 0.2338,
      oil: 0.0909,
    },
    {
      id: 'cupuacu-butter',
      pop: 0.0095,
      pos: 0.1154,
      sos: 0.3517,
      sls: 0.0509,
      poo: 0.05,
      soo: 0.3051,
      oil: 0.1073,
    },
  ])('should make up $id as the prototype did', ({ id, ...expected }) => {
    const fractions = fractionsFromAcids(typicalAcids(id)) ?? {};
    for (const [component, fraction] of Object.entries(expected))
      expect(fractions[component as keyof typeof expected], component).toBeCloseTo(fraction, 3);
    const ingredient = ingredientById(id);
    expect(ingredient && treatmentOf(ingredient)).toMatchObject({ by: 'fatty-acid-rule' });
  });

  /** Against make-ups that do not come from the rule: difference in points of solids at 20 °C that is accepted. */
  it.each([
    { id: 'cocoa-butter' as const, points: 9 },
    { id: 'shea-butter' as const, points: 9 },
    { id: 'mango-butter' as const, points: 9 },
    { id: 'kokum-butter' as const, points: 9 },
    { id: 'illipe-butter' as const, points: 9 },
  ])('should come close to the explicit make-up of $id', ({ id, points }) => {
    const rule = freezingOfAcids(typicalAcids(id));
    const explicit = freezingOfMakeUps({ [id]: 1 });
    const difference = 100 * (solidsAt(rule, 20).solid - solidsAt(explicit, 20).solid);
    expect(Math.abs(difference)).toBeLessThanOrEqual(points);
    expect(
      Math.abs((softeningC(rule) ?? Number.NaN) - (softeningC(explicit) ?? Number.NaN)),
    ).toBeLessThanOrEqual(2);
  });

  it('should take a fat with few saturated acids as liquid oil', () => {
    expect(fractionsFromAcids(typicalAcids('sunflower-oil'))).toBe(makeUps['liquid-oil'].fractions);
  });

  it('should copy coconut or palm kernel oil for lauric fats', () => {
    expect(fractionsFromAcids(typicalAcids('coconut-oil'))).toBe(makeUps['coconut-oil'].fractions);
    expect(fractionsFromAcids(typicalAcids('palm-kernel-oil'))).toBe(makeUps['palm-kernel-oil'].fractions);
  });

  it('should give up without a profile', () => {
    expect(fractionsFromAcids({})).toBeUndefined();
  });

  it('should not be used on animal fats or on what is no triglyceride', () => {
    const shea = ingredientById('shea-butter') as Fat;
    const unlisted = { ...shea, id: 'unlisted-butter' };
    expect(treatmentOf(unlisted)).toMatchObject({ kind: 'melts', by: 'fatty-acid-rule' });
    expect(treatmentOf({ ...unlisted, kind: 'animal-fat' })).toEqual({ kind: 'no-data' });
    expect(treatmentOf({ ...unlisted, triglyceride: false })).toEqual({ kind: 'no-data' });
    const { fattyAcids: _, ...bare } = unlisted;
    expect(treatmentOf(bare)).toEqual({ kind: 'no-data' });
  });
});
