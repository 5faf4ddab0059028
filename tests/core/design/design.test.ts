import { describe, expect, it } from 'vitest';
import { design } from '../../../core/design/design.ts';
import type { Wishes } from '../../../core/design/wishes.ts';
import { holdingOf } from '../../../core/melt/firmness.ts';
import { plainWishes } from './wishes.ts';

const made = (wishes: Partial<Wishes>) => design({ ...plainWishes, ...wishes });
const asked = (...ingredients: string[]) => ingredients.map((ingredient) => ({ ingredient }));
const ids = (wishes: Partial<Wishes>) =>
  made(wishes).proposals.map(({ lines }) => lines.map(({ ingredient }) => ingredient));

describe('design', () => {
  it('should give three recipes with three different waxes when nothing stands in the way', () => {
    const { proposals, relaxed } = made({});
    expect(relaxed).toEqual([]);
    expect(new Set(proposals.map(({ main }) => main)).size).toBe(3);
  });

  it('should put everything in that was asked for', () => {
    for (const lines of ids({
      survivesC: 38,
      vegan: true,
      without: ['nuts'],
      with: asked('shea-butter', 'mango-butter'),
    }))
      expect(lines).toEqual(expect.arrayContaining(['shea-butter', 'mango-butter']));
  });

  it('should choose no butter that a person with a nut allergy has to ask about, unless it was asked for', () => {
    for (const lines of ids({ without: ['nuts'] })) expect(lines).not.toContain('shea-butter');
    for (const lines of ids({ without: ['nuts'], with: asked('shea-butter') }))
      expect(lines).toContain('shea-butter');
  });

  it('should steep the wanted herb in the liquid oil', () => {
    const [first] = made({ form: 'tin', with: asked('calendula') }).proposals;
    expect(first?.lines).toContainEqual(expect.objectContaining({ infusedWith: 'calendula' }));
  });

  it('should dose a scent within its usual range on lips', () => {
    const share = (ingredient: string) =>
      made({ with: asked(ingredient) }).proposals[0]?.lines.find((line) => line.ingredient === ingredient)
        ?.percent;
    expect(share('peppermint-essential-oil')).toBe(0.5);
    expect(share('german-chamomile-essential-oil')).toBe(0.3);
    expect(share('clove-bud-essential-oil')).toBe(0.1);
  });

  it('should hold a stick firm and a tin from slumping on the hottest day, by the model’s own thresholds', () => {
    for (const { forecast, survivesC } of made({ survivesC: 37 }).proposals) {
      expect(forecast.survives.pocket).toBe('stays-firm');
      expect(survivesC).toBeGreaterThanOrEqual(37);
    }
    for (const { forecast } of made({ form: 'tin', survivesC: 37 }).proposals)
      expect(holdingOf(forecast.firmness.at37)).not.toBe('slumps');
  });
});

describe('wishes that contradict each other', () => {
  it('should leave beeswax out of a vegan balm and say so', () => {
    const { proposals, relaxed } = made({ vegan: true, with: asked('beeswax') });
    expect(relaxed).toEqual([{ wish: 'with', ingredient: 'beeswax', to: 0, why: 'not-vegan' }]);
    expect(proposals).toHaveLength(3);
  });

  it('should promise nothing from 50 °C on', () => {
    expect(made({ survivesC: 60 }).relaxed).toEqual([{ wish: 'survives_c', to: 49, why: 'promise' }]);
    expect(made({ survivesC: 50 }).relaxed).toEqual([{ wish: 'survives_c', to: 49, why: 'promise' }]);
    expect(made({ survivesC: 49 }).relaxed).toEqual([]);
  });

  it('should name the hottest day that the other wishes allow, and no hotter one', () => {
    const wishes: Partial<Wishes> = { form: 'tin', without: ['wax'] };
    const [heat] = made({ ...wishes, survivesC: 45 }).relaxed;
    if (heat?.wish !== 'survives_c') throw new Error('expected the heat to be relaxed');
    expect(made({ ...wishes, survivesC: heat.to }).relaxed).toEqual([]);
    expect(made({ ...wishes, survivesC: heat.to + 1 }).relaxed).toEqual([heat]);
  });

  it('should offer a tin where a stick would have no wax', () => {
    const all = ['beeswax', 'candelilla-wax', 'carnauba-wax', 'rice-bran-wax', 'sunflower-wax'];
    expect(made({ without: ['wax'] }).relaxed).toEqual([{ wish: 'form', to: 'tin' }]);
    expect(made({ without: all }).relaxed).toEqual([{ wish: 'form', to: 'tin' }]);
  });

  it('should propose nothing with what was excluded, and name the exclusion in the way', () => {
    const { proposals, relaxed } = made({ form: 'tin', without: ['wax', 'butter'] });
    expect(proposals).toEqual([]);
    expect(relaxed).toEqual([{ wish: 'without', drop: 'wax', to: ['butter'] }]);
  });

  it('should shorten the shelf life to that of what was asked for', () => {
    expect(made({ shelfLifeMonths: 18, with: asked('shea-butter') }).relaxed).toEqual([
      { wish: 'shelf_life_months', to: 15 },
    ]);
  });

  it('should take a share back to the nearest one that gives the form', () => {
    const [share] = made({ form: 'tube', with: [{ ingredient: 'beeswax', percent: 30 }] }).relaxed;
    if (share?.wish !== 'with') throw new Error('expected a share to be relaxed');
    expect(made({ form: 'tube', with: [{ ingredient: 'beeswax', percent: share.to }] }).relaxed).toEqual([]);
    const more = [{ ingredient: 'beeswax', percent: share.to + 0.5 }];
    expect(made({ form: 'tube', with: more }).relaxed).not.toEqual([]);
  });

  it.each([
    ['cold-pressed-lime-essential-oil', 'light-sensitising'],
    ['cinnamon-bark-essential-oil', 'not-for-lips'],
    ['neem-oil', 'not-for-lips'],
    ['soy-wax', 'no-melting-data'],
  ])('should never take %s: %s', (ingredient, why) => {
    const { proposals, relaxed } = made({ with: asked(ingredient) });
    expect(relaxed).toEqual([{ wish: 'with', ingredient, to: 0, why }]);
    expect(proposals.length).toBeGreaterThan(0);
  });
});
