import { ambiguousNames, ordinaryNames } from './data/ambiguous-names.ts';
import type { Ingredient } from './data/ingredient.ts';
import { ingredients } from './ingredients.ts';
import { nameKey } from './name-key.ts';

/** What a herb's part may be called after its name; "calendula petals" and "calendula flower heads" are calendula. */
const partWords: readonly (readonly [RegExp, readonly string[]])[] = [
  [/flower|petal|strobile/, ['flower', 'flower head', 'petal', 'blossom', 'head', 'bud']],
  [/top|herb/, ['flower', 'flowering top', 'top', 'herb']],
  [/leaf/, ['leaf', 'herb']],
  [/root|rhizome/, ['root', 'root powder', 'root slice']],
  [/seed/, ['seed']],
  [/pod/, ['pod', 'bean']],
  [/bark/, ['bark', 'stick']],
];

const herbNames = (name: string, part: string): string[] =>
  partWords.flatMap(([pattern, words]) => (pattern.test(part) ? words.map((word) => `${name} ${word}`) : []));

/** The part of a plant, not its oil: "clove bud" is a spice, "clove" in a lip balm the oil. */
const plantPart = / (?:seed|root|peel|leaf|flower|bark|bud|fruit)$/;

/** "clove oil" is also "clove essential oil", "oil of clove" and, where nothing else has that name, "clove". */
const essentialNames = (name: string): string[] => {
  const stem = /^(.+?)(?: essential)? oil$/.exec(name.toLowerCase())?.[1];
  if (stem === undefined) return [];
  const forms = [`${stem} oil`, `${stem} essential oil`, `oil of ${stem}`, `essential oil of ${stem}`];
  return plantPart.test(` ${stem}`) ? forms : [...forms, stem];
};

/** An INCI name is typed with its bracket, without the bracket signs, and without what stands in the bracket. */
const withoutBracket = (inci: string): string => inci.replace(/\s*\([^)]*\)/g, '');

const labelNames = ({ inci, inciEu, inciUs }: Ingredient): string[] =>
  [inci, inciEu, inciUs].flatMap((name) => (name === undefined ? [] : [name, withoutBracket(name)]));

/** "Mentha x piperita / M. spicata (arvensis)": the first plant's name, with the sign of a cross and without. */
const latinOf = (origin: string): string[] => {
  const plain = origin.replace(/ (?:\/|agg\.|var\.).*$/, '').replace(/\s*\([^)]*\)/g, '');
  return /^[A-Z][a-z]+ (?:x )?[a-z]+$/.test(plain) ? [...new Set([plain, plain.replace(/ x /, ' ')])] : [];
};

const essentialCount = new Map<string, number>();
for (const { kind, origin = '' } of ingredients)
  if (kind === 'essential-oil')
    for (const latin of latinOf(origin)) essentialCount.set(latin, (essentialCount.get(latin) ?? 0) + 1);

/** "Melissa officinalis oil" is the essential oil, where only one comes of that plant; the others are asked about. */
const latinOils = (origin: string): string[] =>
  latinOf(origin)
    .filter((latin) => essentialCount.get(latin) === 1)
    .flatMap((latin) => [`${latin} oil`, `${latin} essential oil`, `essential oil of ${latin}`]);

const namesOf = (ingredient: Ingredient): string[] => {
  const plain = [ingredient.name, ...ingredient.names];
  const ids = [ingredient.id, ...ingredient.alsoIds];
  const all = [...plain, ...ids, ...labelNames(ingredient)];
  if (ingredient.kind === 'essential-oil')
    return [...all, ...plain.flatMap(essentialNames), ...latinOils(ingredient.origin ?? '')];
  if (ingredient.kind !== 'herb') return all;
  const latin = (ingredient.origin ?? '').replace(/ (?:\/|agg\.).*$/, '');
  return [...all, latin, ...plain.flatMap((name) => herbNames(name, ingredient.part))];
};

/** Which ingredients carry a name, by the name's key. Names given to several rows are not settled here yet. */
export const carriers = (): Map<string, string[]> => {
  const map = new Map<string, string[]>();
  for (const ingredient of ingredients) {
    for (const name of namesOf(ingredient)) {
      const key = nameKey(name);
      const ids = map.get(key);
      if (!ids) map.set(key, [ingredient.id]);
      else if (!ids.includes(ingredient.id)) ids.push(ingredient.id);
    }
  }
  return map;
};

/** "Butyrospermum parkii" alone: a plant's name where only one ingredient is made of that plant. */
const plantsOfOne = (known: ReadonlyMap<string, unknown>): [string, readonly string[]][] => {
  const byPlant = new Map<string, Set<string>>();
  for (const { id, inci, kind } of ingredients) {
    const plant = /^([A-Z][a-z]+ [A-Z][a-z]+) \S/.exec(withoutBracket(inci))?.[1];
    if (!plant || !/^(?:liquid-oil|butter|wax)$/.test(kind)) continue;
    byPlant.set(plant, (byPlant.get(plant) ?? new Set()).add(id));
  }
  return [...byPlant].flatMap(([plant, ids]): [string, readonly string[]][] =>
    ids.size === 1 && !known.has(nameKey(plant)) ? [[nameKey(plant), [...ids]]] : [],
  );
};

/** Every name's key with the ids it stands for: names that mean two things as declared, the ordinary one elsewhere. */
export const nameIndex = (): ReadonlyMap<string, readonly string[]> => {
  const map: Map<string, readonly string[]> = carriers();
  map.delete('');
  for (const { names, ids } of ambiguousNames) for (const name of names) map.set(nameKey(name), ids);
  for (const [name, id] of Object.entries(ordinaryNames)) map.set(nameKey(name), [id]);
  for (const [plant, ids] of plantsOfOne(map)) map.set(plant, ids);
  return map;
};
