import { describe, expect, it } from 'vitest';
import { heatPlan } from '../../../core/melt/heat.ts';
import { meltingOrder } from '../../../core/melt/order.ts';
import { fullyMeltedC } from '../../../core/melt/temperatures.ts';
import { blended } from './blends.ts';

const tin = blended({
  'olive-oil': 56,
  'sweet-orange-essential-oil': 1,
  'shea-butter': 12,
  'cocoa-butter': 10,
  'vitamin-e': 0.5,
  mica: 0.5,
  'carnauba-wax': 2,
  beeswax: 18,
});

describe('heat plan', () => {
  const plan = heatPlan(tin);
  const clear = fullyMeltedC(tin) ?? Number.NaN;

  it('should heat the bath above fully melted, to just above the hardest wax', () => {
    expect(plan?.bathC[0]).toBe(clear + 5);
    expect(plan?.bathC[1]).toBe(83 + 5);
    expect(heatPlan(blended({ beeswax: 20, 'olive-oil': 80 }))?.bathC[1]).toBe(63.5 + 5);
  });

  it('should never ask for a bath above 90 °C, nor an upside-down one', () => {
    expect(heatPlan(blended({ 'carnauba-wax': 1 }))?.bathC).toEqual([90, 90]);
    const coconut = heatPlan(blended({ 'coconut-oil': 1 }))?.bathC ?? [0, 0];
    expect(coconut[1]).toBeGreaterThan(coconut[0]);
  });

  it('should pour a few degrees above fully melted', () => {
    expect(plan?.pourRangeC).toEqual([clear + 3, clear + 8]);
    expect(plan?.pourC).toBe(clear + 5.5);
  });

  it('should not ask for aroma in a balm that has set already', () => {
    expect(plan?.wishedBelowC).toBe(50);
    expect(plan?.addAromaBelowC).toBe(plan?.pourC);
    const soft = heatPlan(blended({ 'coconut-oil': 90, 'sweet-orange-essential-oil': 1 }));
    expect(soft?.addAromaBelowC).toBe(50);
  });

  it('should name what heat harms and the lowest flash point', () => {
    expect(plan?.sensitive).toEqual(['sweet-orange-essential-oil', 'vitamin-e']);
    expect(plan?.lowestFlashPointC).toBeGreaterThan(30);
    const menthol = heatPlan(blended({ 'carnauba-wax': 10, 'olive-oil': 89, 'menthol-crystals': 1 }));
    expect(menthol?.tooHotFor).toEqual([{ ingredient: 'menthol-crystals', maxC: 60 }]);
  });

  it('should start with the hardest wax and end with the aroma', () => {
    expect(plan?.stages).toEqual([
      { stage: 'waxes', ingredients: ['carnauba-wax', 'beeswax'] },
      { stage: 'butters', ingredients: ['shea-butter', 'cocoa-butter'] },
      { stage: 'oils', ingredients: ['olive-oil'] },
      { stage: 'stir-in', ingredients: ['mica'] },
      { stage: 'cool-down', ingredients: ['sweet-orange-essential-oil', 'vitamin-e'] },
    ]);
  });

  it('should need no plan for oils alone', () => {
    expect(heatPlan(blended({ 'olive-oil': 1 }))).toBeUndefined();
  });
});

describe('order of melting', () => {
  it('should name the ingredients that carry each kind of crystal, the largest first', () => {
    const order = meltingOrder(tin);
    expect(order.at(-1)?.carriedBy).toEqual(['carnauba-wax']);
    expect(order.find(({ component }) => component === 'sos')?.carriedBy).toEqual([
      'shea-butter',
      'cocoa-butter',
    ]);
  });

  it('should be empty for what is liquid at 20 °C', () => {
    expect(meltingOrder(blended({ 'olive-oil': 99, 'shea-butter': 1 }))).toEqual([]);
  });
});
