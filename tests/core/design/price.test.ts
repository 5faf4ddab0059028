import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { money } from '../../../core/cost/money.ts';
import type { KeptPrice, Prices } from '../../../core/cost/prices.ts';
import { blendDensity } from '../../../core/density.ts';
import { design, type Proposal } from '../../../core/design/design.ts';
import type { PriceWish } from '../../../core/design/price.ts';
import { anyWishes, plainWishes } from './wishes.ts';

const perKg = (price: string): KeptPrice => ({
  price,
  currency: 'EUR',
  pack: { amount: 1000, unit: 'g' },
  at: '2026-11-25',
});
const euros: Readonly<Record<string, number>> = {
  beeswax: 29,
  'candelilla-wax': 24,
  'shea-butter': 18,
  'cocoa-butter': 12,
  'olive-oil': 9,
  'sunflower-oil': 4,
  'high-oleic-sunflower-oil': 6,
};
const prices: Prices = Object.fromEntries(
  Object.entries(euros).map(([id, price]) => [id, perKg(String(price))]),
);
const wish = (more: Partial<PriceWish> = {}): PriceWish => ({
  prices,
  currency: 'EUR',
  digits: 2,
  unit: { kind: 'kg' },
  ...more,
});

/** Reckoned again with plain numbers. */
const euroPerKg = ({ lines }: Proposal): number =>
  lines.reduce(
    (sum, { ingredient, percent }) => sum + ((euros[ingredient] ?? Number.NaN) * percent) / 100,
    0,
  );

const number = ({ price }: Proposal): number =>
  price ? Number(price.top) / Number(price.under) : Number.NaN;

describe('a design with a price ceiling', () => {
  it('should stay below it and say what each costs', () => {
    const { proposals, relaxed } = design({ ...plainWishes, price: wish({ ceiling: money('12') }) });
    expect(relaxed).toEqual([]);
    expect(proposals.length).toBeGreaterThan(0);
    for (const proposal of proposals) {
      expect(number(proposal)).toBeCloseTo(euroPerKg(proposal), 9);
      expect(euroPerKg(proposal)).toBeLessThanOrEqual(12.005);
    }
  });

  it('should raise a ceiling that nothing keeps to what the cheapest costs', () => {
    const { proposals, relaxed } = design({ ...plainWishes, price: wish({ ceiling: money('5') }) });
    const [first] = relaxed;
    expect(first?.wish).toBe('price');
    const to = first?.wish === 'price' ? Number(first.to.top) / Number(first.to.under) : 0;
    expect(to).toBeGreaterThan(5);
    for (const proposal of proposals) expect(euroPerKg(proposal)).toBeLessThanOrEqual(to + 0.005);
  });

  it('should reckon a container with its fill, its loss and its own price', () => {
    const unit = {
      kind: 'container',
      fill: { amount: 15, unit: 'ml' },
      lossPercent: 3,
      container: money('0.35'),
    } as const;
    const [first] = design({ ...plainWishes, form: 'tin', price: wish({ unit }) }).proposals;
    if (!first) throw new Error('no proposal');
    const { densityGMl } = blendDensity(
      first.lines.map(({ ingredient, percent }) => ({ ingredient, weight: percent })),
    );
    const grams = (15 * densityGMl) / 0.97;
    expect(number(first)).toBeCloseTo((euroPerKg(first) * grams) / 1000 + 0.35, 5);
  });

  it('should use only what has a price, and keep the ceiling it ends with, for any wishes', () => {
    const ceilings = fc.integer({ min: 4, max: 40 }).map(String);
    fc.assert(
      fc.property(anyWishes, ceilings, (wishes, ceiling) => {
        const made = design({ ...wishes, with: [], price: wish({ ceiling: money(ceiling) }) });
        const most = made.wishes.price?.ceiling;
        const limit = most ? Number(most.top) / Number(most.under) : Number.NaN;
        for (const proposal of made.proposals) {
          expect(proposal.lines.filter(({ ingredient }) => !(ingredient in euros))).toEqual([]);
          expect(euroPerKg(proposal)).toBeLessThanOrEqual(limit + 0.005);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('a design from the shelf', () => {
  it('should use only what is there, and say what was asked for and is not', () => {
    const stock = new Set(['beeswax', 'sunflower-oil', 'cocoa-butter']);
    const made = design({ ...plainWishes, with: [{ ingredient: 'shea-butter' }], stock });
    expect(made.relaxed).toContainEqual({
      wish: 'with',
      ingredient: 'shea-butter',
      to: 0,
      why: 'not-in-stock',
    });
    const used = made.proposals.flatMap(({ lines }) => lines.map(({ ingredient }) => ingredient));
    expect(used.length).toBeGreaterThan(0);
    expect(used.filter((id) => !stock.has(id))).toEqual([]);
  });
});
