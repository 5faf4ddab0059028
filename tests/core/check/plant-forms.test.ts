import { describe, expect, it } from 'vitest';
import { isCheckable } from '../../../core/check/check.ts';
import { watchedThing } from '../../../core/check/composition.ts';
import { readPlant } from '../../../core/check/plant-forms.ts';
import { plantRows } from '../../../core/data/rules/plant-names.ts';
import { ingredients } from '../../../core/ingredients.ts';
import { nameWords, wordKey } from '../../../core/names.ts';

const keysOf = (text: string): string[] => nameWords(text).flatMap((word) => wordKey(word).split(' '));
const read = (text: string) => readPlant(keysOf(text), 0)?.meaning;

const latin = ingredients.flatMap(({ kind, origin = '' }) =>
  kind === 'herb' || kind === 'essential-oil'
    ? [origin.replace(/ (?:\/|agg\.).*$/, '').replace(/ \(.*$/, '')]
    : [],
);
const names = [...new Set([...plantRows.flatMap((row) => row.names), ...latin])];
const isAny = (name: string): boolean =>
  plantRows.some((row) => row.any !== undefined && row.names.includes(name));
const plain = names.filter((name) => !isAny(name));

describe('a plant in a form', () => {
  it('should be known by every name, Latin ones of the tables included', () => {
    expect(names.filter((name) => read(`${name} extract`) === undefined && !name.startsWith('aloe'))).toEqual(
      [],
    );
  });

  it.each(names.map((name) => [name]))('should only mean things that can be checked: %s', (name) => {
    for (const form of [
      'X',
      'X oil',
      'X essential oil',
      'X absolute',
      'X CO2 extract',
      'dried X',
      'fresh X',
      'X tea',
    ]) {
      const meaning = read(form.replace('X', name));
      const ids = [...(meaning?.ingredients ?? []), ...(meaning?.infusedWith ? [meaning.infusedWith] : [])];
      expect(ids.filter((id) => !isCheckable(id))).toEqual([]);
    }
  });

  // Water lets mould grow in a balm that has none: common practice, no source.
  it.each([
    'X tea',
    'X juice',
    'X hydrosol',
    'X floral water',
    'X tincture',
    'X gel',
    'brewed X',
    'juice of X',
  ])('should bring water: %s', (form) => {
    const dry = names.filter((name) => {
      const [id = ''] = read(form.replace('X', name))?.ingredients ?? [];
      return watchedThing(id)?.kind !== 'water';
    });
    expect(dry).toEqual([]);
  });

  it.each(['fresh X', 'freshly picked X', 'wet X leaves', 'X (fresh)', 'just-picked X flowers'])(
    'should be wet as it was picked: %s',
    (form) => {
      expect(plain.filter((name) => read(form.replace('X', name))?.fresh !== true)).toEqual([]);
    },
  );

  it('should be the essential oil where that is said, and never the herb', () => {
    const herbs = names.filter((name) =>
      read(`${name} essential oil`)?.ingredients.some(
        (id) => ingredients.find((each) => each.id === id)?.kind === 'herb',
      ),
    );
    expect(herbs).toEqual([]);
  });

  it('should stay what it is where words are beside it that change nothing', () => {
    for (const name of plain)
      expect(read(`my own organic finely cut ${name} leaves`)).toEqual(read(`${name} leaves`));
  });

  it.each([
    ['Lippia citriodora essential oil', 'verbena-essential-oil'],
    ['verbena absolute', 'verbena-absolute'],
    ['Laurus nobilis seed oil', 'laurel-seed-oil'],
    ['laurel leaf oil', 'laurel-leaf-essential-oil'],
    ['Tagetes erecta extract', 'tagetes-erecta'],
    ['Myroxylon pereirae resin', 'peru-balsam'],
    ['Peru balsam oil', 'peru-balsam-extract'],
    ['Tussilago farfara leaves', 'coltsfoot'],
    ['Mentha pulegium oil', 'pennyroyal-essential-oil'],
    ['Gaultheria procumbens leaf oil', 'wintergreen-essential-oil'],
    ['oil of thyme', 'thyme-essential-oil'],
    ['lemon peel', 'zest'],
  ])('should tell %s', (said, id) => {
    expect(read(said)?.ingredients).toEqual([id]);
  });

  it.each(['water bath', 'tea tree balm', 'milk thistle oil', 'calendula infused olive oil'])(
    'should leave alone: %s',
    (said) => {
      const meaning = read(said);
      expect(meaning?.ingredients.some((id) => watchedThing(id)?.kind === 'water') ?? false).toBe(false);
      expect(meaning?.infusedWith).toBeUndefined();
    },
  );
});
