import { describe, expect, it } from 'vitest';
import { type Ingredient, ingredientSchema } from '../../core/data/ingredient.ts';
import {
  ingredientById,
  ingredients,
  isAroma,
  isAromaRow,
  isFat,
  isHerb,
  isSmallDose,
  isWax,
} from '../../core/ingredients.ts';
import { type FactTable, factIds } from './fact-ids.ts';

const ids = ingredients.map(({ id }) => id);

describe('rows', () => {
  it.each(ingredients.map((ingredient) => [ingredient.id, ingredient] as const))(
    'should have a valid %s',
    (_, row) => {
      const checked = ingredientSchema.safeParse(row);
      expect(checked.error?.issues ?? []).toEqual([]);
    },
  );

  it('should refuse a row with a misspelt field, a strange source or a bad id', () => {
    const row = ingredientById('beeswax');
    expect(ingredientSchema.safeParse({ ...row, melting: 1 }).success).toBe(false);
    expect(ingredientSchema.safeParse({ ...row, id: 'Bees Wax' }).success).toBe(false);
    expect(
      ingredientSchema.safeParse({
        ...row,
        densityGMl: { value: 1, source: ['NOBODY'], how: 'read' },
      }).success,
    ).toBe(false);
  });

  it('should have every id once, older ids included', () => {
    const all = ingredients.flatMap(({ id, alsoIds }) => [id, ...alsoIds]);
    expect(all.filter((id, index) => all.indexOf(id) !== index)).toEqual([]);
  });
});

const kindOfTable: Readonly<Record<FactTable, (ingredient: Ingredient) => boolean>> = {
  oils: isFat,
  waxes: isWax,
  botanicals: isHerb,
  essentials: isAromaRow,
  additives: (ingredient) => 'additive' in ingredient && ingredient.additive !== undefined,
};

describe('fact tables', () => {
  it.each([
    ['oils', 57],
    ['waxes', 15],
    ['botanicals', 41],
    ['essentials', 40],
    ['additives', 28],
  ] as const)('should have all rows of the %s: %i', (table, count) => {
    expect(factIds[table]).toHaveLength(count);
    expect(new Set(factIds[table]).size).toBe(count);
  });

  it('should have one ingredient a row, two merged pairs and one of our own', () => {
    const rows = Object.values(factIds).reduce((sum, table) => sum + table.length, 0);
    // Lanolin is a fat and an additive, alkanet a herb and an additive; infused oil is in no table.
    expect(ingredients).toHaveLength(rows - 2 + 1);
    expect(ingredientById('lanolin')).toMatchObject({
      kind: 'animal-fat',
      additive: { group: 'emollient' },
    });
    expect(ingredientById('alkanet')).toMatchObject({
      kind: 'herb',
      additive: { group: 'colour' },
    });
    expect(ingredientById('alkanet-root')?.id).toBe('alkanet');
  });

  /** Tables share some ids; the herb has the bare one, so these essential oils are found by their own only. */
  const besideHerbs: Readonly<Record<string, string>> = {
    'chamomile-roman': 'roman-chamomile-essential-oil',
    'chamomile-german': 'german-chamomile-essential-oil',
  };

  const rowOf = (table: FactTable, id: string): string | undefined => {
    const forms = table === 'essentials' ? [`${id}-essential-oil`, besideHerbs[id] ?? id] : [id];
    return forms.map(ingredientById).find((row) => row && kindOfTable[table](row))?.id;
  };

  it.each(Object.keys(factIds) as FactTable[])('should find each row of the %s by its table id', (table) => {
    const rows = factIds[table].map((id) => rowOf(table, id) ?? `${id} is missing`);
    expect(rows.filter((row) => row.endsWith('missing'))).toEqual([]);
    expect(new Set(rows).size).toBe(rows.length);
  });
});

describe('ids the rest of the house relies on', () => {
  it.each(
    (
      'beeswax beeswax-white sweet-almond-oil fractionated-coconut-oil rosehip-oil vitamin-e flaxseed-oil corn-oil ' +
      'rice-bran-wax meadowfoam-oil shea-butter virgin-coconut-oil high-oleic-sunflower-oil peppermint-essential-oil ' +
      'lavender-essential-oil sweet-orange-essential-oil bitter-orange-essential-oil calendula chamomile ' +
      'roman-chamomile lavender peppermint benzoin vanilla-flavour-oil berry-flavour-oil infused-oil'
    ).split(' '),
  )('should have %s', (id) => {
    expect(ids).toContain(id);
  });

  it('should end every essential oil in -essential-oil, and nothing else', () => {
    for (const { id, kind } of ingredients)
      expect([id, id.endsWith('-essential-oil')]).toEqual([id, kind === 'essential-oil']);
  });

  it('should sort ingredients into kinds', () => {
    const those = (test: (ingredient: Ingredient) => boolean, list: string) =>
      list.split(' ').map((id) => [id, test(ingredientById(id) as Ingredient)]);
    expect(
      those(
        isAroma,
        'peppermint-essential-oil benzoin vanilla-flavour-oil menthol-crystals flavour-oil camphor',
      ),
    ).toEqual(
      those(
        () => true,
        'peppermint-essential-oil benzoin vanilla-flavour-oil menthol-crystals flavour-oil camphor',
      ),
    );
    expect(those(isAroma, 'peppermint shea-butter vitamin-e beeswax honey')).toEqual(
      those(() => false, 'peppermint shea-butter vitamin-e beeswax honey'),
    );
    expect(those(isSmallDose, 'vitamin-e carmine lavender-essential-oil')).toEqual(
      those(() => true, 'vitamin-e carmine lavender-essential-oil'),
    );
    expect(those(isSmallDose, 'shea-butter squalane lavender mica')).toEqual(
      those(() => false, 'shea-butter squalane lavender mica'),
    );
    expect(those(isFat, 'jojoba-oil lanolin infused-oil')).toEqual(
      those(() => true, 'jojoba-oil lanolin infused-oil'),
    );
  });
});

describe('what a maker must be warned of', () => {
  it.each([
    ['sweet-almond-oil', 'tree-nut'],
    ['walnut-oil', 'tree-nut'],
    ['hazelnut-oil', 'tree-nut'],
    ['macadamia-oil', 'tree-nut'],
    ['peanut-oil', 'peanut'],
    ['sesame-oil', 'sesame'],
    ['soybean-oil', 'soy'],
    ['soy-wax', 'soy'],
    ['wheat-germ-oil', 'wheat'],
    ['beeswax', 'bee'],
    ['honey', 'bee'],
    ['propolis-extract', 'bee'],
    ['lanolin', 'wool'],
    ['calendula', 'daisy-family'],
    ['roman-chamomile-essential-oil', 'daisy-family'],
    ['lavender-essential-oil', 'fragrance'],
    ['infused-oil', 'unknown'],
  ])('should flag %s as %s', (id, flag) => {
    expect(ingredientById(id)?.allergen.flag).toBe(flag);
  });

  it('should keep these off lips', () => {
    const off =
      'neem-oil comfrey arnica st-johns-wort cinnamon-bark-essential-oil wintergreen-essential-oil poke-root';
    for (const id of off.split(' ')) expect([id, ingredientById(id)?.lips]).toEqual([id, 'avoid']);
  });

  it('should call nothing from an animal vegan', () => {
    const animal = 'beeswax beeswax-white lanolin beef-tallow lard honey propolis-extract carmine';
    for (const id of animal.split(' ')) expect([id, ingredientById(id)?.vegan]).toEqual([id, 'no']);
  });

  it('should have no infusion for a poisonous root', () => {
    expect(ingredients.filter((row) => isHerb(row) && !row.infusion).map(({ id }) => id)).toEqual([
      'poke-root',
    ]);
  });
});
