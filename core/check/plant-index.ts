import type { Ingredient } from '../data/ingredient.ts';
import { type PlantRow, plantRows } from '../data/rules/plant-names.ts';
import { ingredients, isHerb } from '../ingredients.ts';
import { nameKey } from '../name-key.ts';
import { type NameIndex, wordIndex } from '../word-index.ts';

/** A plant with all that its forms may be, tables and plant rows together. */
export interface Plant {
  readonly herb?: string;
  readonly oils: readonly string[];
  readonly row?: PlantRow;
}

const formEnd =
  /(?: (?:essential|oil|leaf|flowers?|petals?|blossoms?|heads?|buds?|root|seed|powder|peel|extract|fruit|herb))+$/;

/** "Mentha x piperita / M. spicata" as its first name, without the sign of a cross and what stands in brackets. */
const latinOf = (origin: string): readonly string[] => {
  const [first = ''] = origin.split(/ (?:\/|agg\.)/);
  const plain = first.replace(/\s*\([^)]*\)/g, '').trim();
  return [plain, plain.replace(/ x /, ' ')];
};

const stemsOf = ({ name, names, inci, origin = '' }: Ingredient): readonly string[] => {
  const said = [name, ...names, inci].map((each) =>
    each
      .toLowerCase()
      .replace(/\s*\([^)]*\)/g, '')
      .replace(formEnd, ''),
  );
  return [...said, ...latinOf(origin)].map(nameKey).filter((key) => key !== '' && !generic.has(key));
};

const generic = new Set(['aroma', 'flavor', 'garden', 'common', 'dried', 'berry', 'fruit']);

const addTo = (map: Map<string, Plant>, key: string, more: Partial<Plant>): void => {
  const before = map.get(key) ?? { oils: [] };
  map.set(key, {
    ...before,
    ...more,
    oils: [...new Set([...before.oils, ...(more.oils ?? [])])],
    ...(before.herb === undefined ? {} : { herb: before.herb }),
  });
};

const addRows = (map: Map<string, Plant>): void => {
  for (const row of plantRows)
    for (const name of row.names)
      addTo(map, nameKey(name), { row, oils: row.oils ?? [], ...(row.herb ? { herb: row.herb } : {}) });
};

/** What a plant row says of a plant that is bad in whatever form holds. */
const addFound = (map: Map<string, Plant>, found: Ingredient, more: Partial<Plant>): void => {
  for (const key of stemsOf(found)) if (map.get(key)?.row?.any === undefined) addTo(map, key, more);
};

const build = (): NameIndex<Plant> => {
  const map = new Map<string, Plant>();
  addRows(map);
  for (const found of ingredients) {
    if (isHerb(found)) addFound(map, found, { herb: found.id });
    else if (found.kind === 'essential-oil') addFound(map, found, { oils: [found.id] });
  }
  return wordIndex(map);
};

let index: NameIndex<Plant> | undefined;

/** The plant whose name, longest first, starts at a key, and how many keys the name takes. */
export const plantAt = (keys: readonly string[], at: number): { plant: Plant; words: number } | undefined => {
  index ??= build();
  const found = index.find(keys, at);
  return found && { plant: found.value, words: found.words };
};
