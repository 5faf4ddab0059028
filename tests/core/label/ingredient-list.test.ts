import { describe, expect, it } from 'vitest';
import { ingredientList, type ListInput, unnamedOil } from '../../../core/label/ingredient-list.ts';

const on = '2026-11-25';
type Pair = readonly [ingredient: string, percent: number];

const listOf = (pairs: readonly Pair[], more: Partial<ListInput> = {}) =>
  ingredientList({
    lines: pairs.map(([ingredient, percent]) => ({ ingredient, percent })),
    strained: [],
    region: 'eu',
    on,
    ...more,
  });
const names = (...about: Parameters<typeof listOf>) => listOf(...about).entries.map(({ name }) => name);

const base: readonly Pair[] = [
  ['beeswax', 20],
  ['sunflower-oil', 79.5],
];
const orange: readonly Pair[] = [...base, ['sweet-orange-essential-oil', 0.5]];
const limonene95 = [{ ingredient: 'sweet-orange-essential-oil', name: 'Limonene', percent: 95 }];

/** Regulation (EC) 1223/2009, Article 19(1)(g), words read in an authority's copy; 21 CFR 701.3(f) from memory. */
describe('the order of the list', () => {
  it('should fall by weight, then those under 1 %, colours last (Article 19(1)(g))', () => {
    // A 60, B 38, C 0.9, D 0.6, colour E 0.5.
    expect(
      names([
        ['iron-oxides', 0.5],
        ['allantoin', 0.6],
        ['vitamin-e', 0.9],
        ['shea-butter', 38],
        ['sunflower-oil', 60],
      ]),
    ).toEqual([
      'Helianthus Annuus Seed Oil',
      'Butyrospermum Parkii Butter',
      'Tocopherol',
      'Allantoin',
      'CI 77491',
      'CI 77492',
      'CI 77499',
    ]);
  });

  it('should put colours last however much of them there is', () => {
    expect(names([...base, ['mica', 5]]).at(-1)).toBe('CI 77019');
  });

  it.each(['eu', 'us', 'ca', 'au'] as const)('should sort an ingredient of exactly 1 %% (%s)', (region) => {
    const { entries } = listOf([...base, ['vitamin-e', 1], ['bisabolol', 0.99]], { region });
    expect(entries.find(({ name }) => name === 'Tocopherol')?.group).toBe('main');
    expect(entries.find(({ name }) => name === 'Bisabolol')?.group).toBe('small');
  });

  it('should merge two ingredients of one name, and keep equal weights in a settled order', () => {
    const merged = listOf([
      ['sunflower-oil', 30],
      ['high-oleic-sunflower-oil', 30],
      ['beeswax', 20],
      ['shea-butter', 20],
    ]);
    expect(merged.entries.map(({ name, percent }) => [name, percent])).toEqual([
      ['Helianthus Annuus Seed Oil', 60],
      ['Butyrospermum Parkii Butter', 20],
      ['Cera Alba', 20],
    ]);
  });

  it('should add the extract of a steeped herb among those under 1 %, and leave a strange oil blank', () => {
    const lines = [
      { ingredient: 'sunflower-oil', percent: 50, infusedWith: 'calendula' },
      { ingredient: 'infused-oil', percent: 30 },
      { ingredient: 'beeswax', percent: 20 },
    ];
    const list = ingredientList({ lines, strained: [{ ingredient: 'chamomile' }], region: 'eu', on });
    expect(list.entries.map(({ name, group }) => [name, group])).toEqual([
      ['Helianthus Annuus Seed Oil', 'main'],
      [unnamedOil, 'main'],
      ['Cera Alba', 'main'],
      ['Calendula Officinalis Flower Extract', 'small'],
      ['Chamomilla Recutita Flower Extract', 'small'],
    ]);
    expect(list.unnamedOils).toEqual(['infused-oil']);
  });
});

/** EU list of common ingredient names and the US form with the English plant name, from memory (high confidence). */
describe('names', () => {
  it.each([
    ['beeswax', 'Cera Alba', 'Beeswax'],
    ['candelilla-wax', 'Euphorbia Cerifera Cera', 'Euphorbia Cerifera (Candelilla) Wax'],
    ['carnauba-wax', 'Copernicia Cerifera Cera', 'Copernicia Cerifera (Carnauba) Wax'],
    ['shea-butter', 'Butyrospermum Parkii Butter', 'Butyrospermum Parkii (Shea) Butter'],
    ['cocoa-butter', 'Theobroma Cacao Seed Butter', 'Theobroma Cacao (Cocoa) Seed Butter'],
    ['coconut-oil', 'Cocos Nucifera Oil', 'Cocos Nucifera (Coconut) Oil'],
    ['olive-oil', 'Olea Europaea Fruit Oil', 'Olea Europaea (Olive) Fruit Oil'],
    ['sweet-almond-oil', 'Prunus Amygdalus Dulcis Oil', 'Prunus Amygdalus Dulcis (Sweet Almond) Oil'],
    ['castor-oil', 'Ricinus Communis Seed Oil', 'Ricinus Communis (Castor) Seed Oil'],
    ['jojoba-oil', 'Simmondsia Chinensis Seed Oil', 'Simmondsia Chinensis (Jojoba) Seed Oil'],
    ['lanolin', 'Lanolin', 'Lanolin'],
    ['vitamin-e', 'Tocopherol', 'Tocopherol'],
    ['honey', 'Mel', 'Honey'],
    ['peppermint-essential-oil', 'Mentha Piperita Oil', 'Mentha Piperita (Peppermint) Oil'],
  ])('should call %s %s in the EU and %s in the US', (id, eu, us) => {
    expect(names([[id, 100]])[0]).toBe(eu);
    expect(names([[id, 100]], { region: 'us' })[0]).toBe(us);
  });

  it('should name colours by number in the EU and by their additive name in the US (21 CFR 701.3(c))', () => {
    const tint: readonly Pair[] = [
      ['castor-oil', 95],
      ['carmine', 5],
    ];
    expect(names(tint).at(-1)).toBe('CI 75470');
    expect(names(tint, { region: 'us' }).at(-1)).toBe('Carmine (CI 75470)');
  });

  it('should print no remark of ours, and ask about names that want asking', () => {
    const list = ingredientList({
      lines: [{ ingredient: 'sunflower-oil', percent: 100, infusedWith: 'pineapple-weed' }],
      strained: [],
      region: 'eu',
      on,
    });
    expect(list.entries.map(({ name }) => name).join()).not.toMatch(/check|[()]/);
    expect(list.ask).toEqual(['pineapple-weed']);
  });

  it('should let one word stand for scent where that is wanted and nothing has to be named by itself', () => {
    const mint: readonly Pair[] = [
      ...base,
      ['peppermint-essential-oil', 0.3],
      ['rosemary-essential-oil', 0.2],
    ];
    expect(names(mint, { region: 'us', scentAsAroma: true }).at(-1)).toBe('Flavor');
    expect(names(mint, { region: 'au', scentAsAroma: true }).at(-1)).toBe('Aroma');
    // Peppermint oil is an entry of the EU list itself; rosemary oil is none.
    expect(names(mint, { scentAsAroma: true })).toEqual(
      expect.arrayContaining(['Mentha Piperita Oil', 'Aroma']),
    );
  });
});

/** Annex III of Regulation (EC) 1223/2009 as amended by (EU) 2023/1545 (read); GB, CA by secondary sources. */
describe('allergens in the list', () => {
  it('should name limonene and the oil by its own entry in the EU', () => {
    const list = listOf(orange, { analyses: limonene95 });
    expect(list.entries.map(({ name }) => name).slice(2, 4)).toEqual([
      'Citrus Aurantium Peel Oil',
      'Limonene',
    ]);
    expect(list.allergens.find(({ name }) => name === 'Limonene')?.percent).toBe(0.475);
  });

  it('should name limonene but keep the oil its ingredient name in Great Britain', () => {
    const uk = names(orange, { analyses: limonene95, region: 'uk' });
    expect(uk).toContain('Limonene');
    expect(uk).toContain('Citrus Aurantium Dulcis Peel Oil');
    expect(uk).not.toContain('Citrus Aurantium Peel Oil');
  });

  it.each(['us', 'au'] as const)('should name none in %s, where no list is in force', (region) => {
    expect(listOf(orange, { region }).entries.filter(({ group }) => group === 'allergen')).toEqual([]);
  });

  it('should follow the EU list in Canada for new goods', () => {
    expect(names(orange, { region: 'ca', analyses: limonene95 })).toEqual(
      names(orange, { analyses: limonene95 }),
    );
  });

  it.each([
    ['2026-07-31', '2027-05-01', 'old'],
    ['2026-07-31', '2028-08-01', 'full'],
    ['2026-08-01', '2026-08-01', 'full'],
  ] as const)(
    'should follow the dates: first supplied %s, sold %s: the %s list',
    (placed, soldOn, expected) => {
      const list = listOf(orange, { on: placed, soldOn });
      expect(list.rule.list).toBe(expected);
      expect(list.entries.some(({ name }) => name === 'Citrus Aurantium Peel Oil')).toBe(expected === 'full');
    },
  );

  it('should stand after all others under 1 %, before colours, and no name twice', () => {
    const list = listOf([
      ...base,
      ['peppermint-essential-oil', 0.5],
      ['menthol-crystals', 0.3],
      ['vitamin-e', 0.2],
      ['mica', 0.1],
    ]).entries;
    const groups = list.map(({ group }) => group);
    expect(groups).toEqual([...groups].toSorted((a, b) => order.indexOf(a) - order.indexOf(b)));
    expect(list.filter(({ name }) => name === 'Menthol')).toHaveLength(1);
    expect(new Set(list.map(({ name }) => name)).size).toBe(list.length);
  });

  it('should name what is over 0.001 %, and not what is exactly that', () => {
    const scented = (percent: number) =>
      names([...base, ['sweet-orange-essential-oil', 0.1]], {
        analyses: [{ ingredient: 'sweet-orange-essential-oil', name: 'Citral', percent }],
      });
    expect(scented(1)).not.toContain('Citral');
    expect(scented(1.1)).toContain('Citral');
  });
});

const order = ['main', 'small', 'allergen', 'colour'];
