import { otherThings } from '../../core/data/other-things.ts';
import { defined } from '../../core/defined.ts';
import { ingredientById } from '../../core/ingredients.ts';
import { allNames, ambiguousName, nameKey } from '../../core/names.ts';
import { clearName, nearNames } from '../../core/near-names.ts';
import { isBackground } from './background-words.ts';
import type { Item } from './item.ts';
import type { NameRead, NameReader } from './items.ts';
import { isChatter, letterOf, letters } from './lexicon.ts';
import { type Found, nameIndex } from './name-index.ts';
import { ownWords } from './own-words.ts';
import type { RecipeNames } from './recipe-names.ts';
import type { Token } from './tokens.ts';
import { readUnit } from './unit.ts';

export interface NameSearch {
  readonly list: readonly Token[];
  /** Keys of the tokens that can be part of a name, and where each stands in `list`. */
  readonly keys: readonly string[];
  readonly places: readonly number[];
  readonly recipes: RecipeNames;
}

/** Nothing inside such a name may be read as an ingredient: "peanut butter" is neither a nut oil nor a butter. */
const nothing: readonly string[] = [];
const ingredientIndex = nameIndex<readonly string[]>([
  ...otherThings.map((name) => [nameKey(name), nothing] as const),
  ...allNames(),
]);

/** Look-ups for misspelt names in one message; past that the words stay unknown, so a wall of text costs little. */
const mostGuesses = 24;

const isHerb = (ids: readonly string[]): boolean => ids.some((id) => ingredientById(id)?.kind === 'herb');

const infusion = [['infused', 'oil'], ['infusion'], ['oil'], ['infused'], ['macerate']];

/** Words after a herb's name that make it an oil steeped with the herb: how many keys they take. */
const infusionWords = (keys: readonly string[], at: number): number => {
  const found = infusion.find((words) => words.every((word, index) => keys[at + index] === word));
  if (!found) return 0;
  return found.length === 1 && found[0] === 'infused' ? 0 : found.length;
};

const known = (list: readonly Token[], at: number): boolean => {
  const word = list[at]?.word ?? '';
  return (
    ownWords.has(word) ||
    isChatter(word) ||
    letterOf(word) !== letters.unknown ||
    readUnit(list, at) !== undefined
  );
};

interface Near {
  readonly ids: readonly string[];
  readonly words: number;
  readonly said: string;
}

/** The ids a misspelt phrase stands for: one ingredient if that is clear, several if the name itself means several. */
const nearIds = (said: string): readonly string[] => {
  const matches = nearNames(said);
  const clear = clearName(matches);
  if (clear) return clear.ids;
  const [best, second] = matches;
  return best && best.ids.length > 1 && (!second || second.distance > best.distance) ? best.ids : [];
};

const saidBetween = (search: NameSearch, at: number, words: number): string =>
  [...new Set(search.places.slice(at, at + words))].map((place) => search.list[place]?.word ?? '').join(' ');

/** A misspelt name that starts at an unknown word, longest first; only an unambiguous match counts. */
const nearName = (search: NameSearch, at: number): Near | undefined => {
  for (let words = 3; words >= 1; words -= 1) {
    const keys = search.keys.slice(at, at + words);
    if (keys.length < words || keys.some((key) => key === '' || /^\d/.test(key))) continue;
    const said = saidBetween(search, at, words);
    // "Lavander in jojoba" is not about lavandin.
    if (words > 1 && / (?:in|into|to|of|with|and|for|at|on|from|or|by|the|an?|is|it)$/.test(said)) continue;
    // "To settle it" is not about nettle.
    if (words === 1 && isBackground(said.toLowerCase())) continue;
    const ids = nearIds(said);
    if (ids.length > 0) return { ids, words, said };
  }
  return undefined;
};

/** "shea buter": a known name whose second word is misspelt. */
const extended = (search: NameSearch, at: number, words: number, ids: readonly string[]): number => {
  const next = search.places[at + words];
  const last = search.places[at + words - 1] ?? 0;
  if (next === undefined || next !== last + 1 || search.keys[at + words] === '' || known(search.list, next))
    return 0;
  if (search.list[next]?.kind !== 'word' || (search.list[next]?.word.length ?? 0) < 3) return 0;
  const near = nearIds(saidBetween(search, at, words + 1));
  return near.length === 1 && ids.includes(near[0] ?? '') ? 1 : 0;
};

const herbIn = (ids: readonly string[]): string | undefined =>
  ids.find((id) => ingredientById(id)?.kind === 'herb');

/** What has to be asked back about a name, given the key it was found by. */
const questionFor = (search: NameSearch, at: number, words: number): Partial<Item> => {
  const ambiguous = ambiguousName(search.keys.slice(at, at + words).join(' '));
  return defined({ because: ambiguous?.because, generic: ambiguous?.alone });
};

const itemFor = (
  search: NameSearch,
  at: number,
  words: number,
  ids: readonly string[],
  misspelt?: string,
): NameRead => {
  const oil = isHerb(ids) ? infusionWords(search.keys, at + words) : 0;
  const infusedWith = oil ? herbIn(ids) : undefined;
  const next = (search.places[at + words + oil - 1] ?? 0) + 1;
  const word = saidBetween(search, at, words + oil);
  if (ids.length === 0) return { letter: letters.unknown, part: { word }, next };
  const part = infusedWith
    ? { word, ingredients: ['infused-oil'], infusedWith }
    : { word, ingredients: ids, ...questionFor(search, at, words) };
  return { letter: letters.ingredient, part: { ...part, ...defined({ misspelt }) }, next };
};

/** Where each token's first key stands. */
const positionsOf = (places: readonly number[]): ReadonlyMap<number, number> => {
  const positions = new Map<number, number>();
  for (const [index, place] of places.entries()) if (!positions.has(place)) positions.set(place, index);
  return positions;
};

/** "Beeswax (yellow, pellets)": a name may not end inside a bracket that goes on. */
const wordsInBalance = (search: NameSearch, at: number, words: number): number => {
  const first = search.places[at] ?? 0;
  const last = search.places[at + words - 1] ?? first;
  const open = search.list.findIndex((token, index) => index > first && index < last && token.text === '(');
  if (open < 0 || search.list.slice(open, last + 2).some((token) => token.text === ')')) return words;
  return search.places.findIndex((place) => place > open) - at;
};

const findIngredient = (search: NameSearch, at: number): Found<readonly string[]> | undefined => {
  const found = ingredientIndex.find(search.keys, at);
  const words = found ? wordsInBalance(search, at, found.words) : 0;
  return found && words < found.words ? ingredientIndex.find(search.keys.slice(0, at + words), at) : found;
};

const knownName = (search: NameSearch, at: number): NameRead | undefined => {
  const recipe = search.recipes.index.find(search.keys, at);
  const found = findIngredient(search, at);
  if (recipe && recipe.words >= (found?.words ?? 0)) {
    const last = search.places[at + recipe.words - 1] ?? 0;
    return {
      letter: letters.recipe,
      part: { recipe: recipe.value.name },
      next: last + 1,
    };
  }
  if (!found) return undefined;
  const more = extended(search, at, found.words, found.value);
  const said = more ? saidBetween(search, at, found.words + 1) : undefined;
  return itemFor(search, at, found.words + more, found.value, said);
};

/** A word that is nothing else and long enough to be a slip of a name. */
const isStray = (search: NameSearch, token: number): boolean => {
  const found = search.list[token];
  return (
    found?.kind === 'word' &&
    found.word.length >= 3 &&
    !found.word.includes("'") &&
    !known(search.list, token)
  );
};

/**
 * Finds names at a token: the group's recipes and the ingredient library, the longer one first; then, for a word that
 * is nothing else, a misspelt ingredient.
 */
export const nameReader = (search: NameSearch): NameReader => {
  const positions = positionsOf(search.places);
  let guesses = 0;
  return (token) => {
    const at = positions.get(token);
    if (at === undefined || search.keys[at] === '') return undefined;
    const name = knownName(search, at);
    if (name) return name;
    if (guesses >= mostGuesses || !isStray(search, token)) return undefined;
    guesses += 1;
    const near = nearName(search, at);
    return near ? itemFor(search, at, near.words, near.ids, near.said) : undefined;
  };
};
