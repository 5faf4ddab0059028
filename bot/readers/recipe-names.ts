import type { BookState, SavedRecipe } from '../../core/book.ts';
import { slips } from '../../core/edit-distance.ts';
import { nameKey } from '../../core/names.ts';
import { type NameIndex, wordIndex } from '../../core/word-index.ts';
import { type Veils, veilsFor } from './veiled-names.ts';

/** The names of one group's saved recipes, ready for reading a message. */
export interface RecipeNames {
  readonly index: NameIndex<SavedRecipe>;
  /** The saved recipe of exactly this name (case, accents and plural aside). */
  exact(name: string): SavedRecipe | undefined;
  /** Saved recipes whose name is close to what was said, best first. */
  near(said: string): readonly SavedRecipe[];
  /** True for a word that stands in some name, or nearly: a cheap look before `near`. */
  hasWord(word: string): boolean;
  /** Names whose words would say something else. */
  readonly veils: Veils;
}

/** How far two words may differ: one letter in short ones, two from six letters on. */
const closeWord = (a: string, b: string): boolean =>
  a === b || slips(a, b, 2) <= (Math.min(a.length, b.length) >= 6 ? 2 : a.length > 3 ? 1 : 0);

/** "handbalm" for "hand balm": the words run together or taken apart. */
const sameLetters = (said: readonly string[], key: string): boolean => {
  const run = said.join('');
  return run.length > 5 && closeWord(run, key.replaceAll(' ', ''));
};

const isNear = (said: readonly string[], name: readonly string[]): boolean =>
  said.length > 0 && said.every((word) => name.some((other) => closeWord(word, other)));

/** Part of the name with its words run together: "handbalm" for "Fernlea hand balm". */
const sameEnd = (said: readonly string[], name: readonly string[]): boolean =>
  name.some((_, index) => index > 0 && sameLetters(said, name.slice(index).join(' '))) ||
  sameLetters(said, [...name.slice(0, 1), name.slice(1).join('')].join(' '));

/** Words of all names by their first letter, also run together to the end of a name: "handbalm". */
const wordsByLetter = (keys: readonly string[]): ReadonlyMap<string, ReadonlySet<string>> => {
  const byLetter = new Map<string, Set<string>>();
  for (const key of keys) {
    const words = key.split(' ');
    for (const word of words.flatMap((each, at) => [each, words.slice(at).join('')])) {
      const letter = word.charAt(0);
      byLetter.set(letter, (byLetter.get(letter) ?? new Set()).add(word));
    }
  }
  return byLetter;
};

const wordsIn = (keys: readonly string[]): RecipeNames['hasWord'] => {
  let byLetter: ReturnType<typeof wordsByLetter> | undefined;
  return (word) => {
    byLetter ??= wordsByLetter(keys);
    const list = byLetter.get(word.charAt(0));
    return list !== undefined && (list.has(word) || [...list].some((other) => closeWord(word, other)));
  };
};

/** As a name stands in a message's keys: a number with a decimal sign is one of them there, whichever sign it is. */
const keyInMessage = (name: string): string =>
  name
    .split(/(\d+(?:[.,]\d+)+)/)
    .map((part, index) => (index % 2 === 1 ? part.replaceAll(',', '.') : nameKey(part)))
    .filter((key) => key !== '')
    .join(' ');

const build = (state: BookState): RecipeNames => {
  const recipes = Object.values(state.recipes);
  const keyed = recipes.map((recipe) => [nameKey(recipe.name), recipe] as const);
  const byKey = new Map(keyed);
  const veils = veilsFor(recipes.map(({ name }) => name));
  const veiled = veils.list.flatMap(({ name, veil }) => {
    const recipe = byKey.get(nameKey(name));
    return recipe ? [[veil, recipe] as const] : [];
  });
  for (const [veil, recipe] of veiled) byKey.set(nameKey(veil), recipe);
  // Picked from the suggestions, a name comes as it was saved.
  const byName = new Map(recipes.map((recipe) => [recipe.name, byKey.get(nameKey(recipe.name))]));
  const near = (said: string): readonly SavedRecipe[] => {
    const words = nameKey(said).split(' ').filter(Boolean);
    return keyed
      .map(([key, recipe]) => ({ key, recipe, words: key.split(' ') }))
      .filter(
        (entry) => isNear(words, entry.words) || sameLetters(words, entry.key) || sameEnd(words, entry.words),
      )
      .sort((a, b) => a.words.length - b.words.length || (a.key < b.key ? -1 : 1))
      .map((entry) => entry.recipe);
  };
  return {
    index: wordIndex([
      ...recipes.map((recipe) => [keyInMessage(recipe.name), recipe] as const),
      ...veiled.map(([veil, recipe]) => [keyInMessage(veil), recipe] as const),
    ]),
    exact: (name) => byName.get(name) ?? byKey.get(nameKey(name)),
    hasWord: wordsIn([...keyed.map(([key]) => key), ...veiled.map(([veil]) => nameKey(veil))]),
    near,
    veils,
  };
};

// The state object is replaced at each event, so names are indexed once a change, not once a message.
const known = new WeakMap<object, RecipeNames>();

export const recipeNames = (state: BookState): RecipeNames => {
  const before = known.get(state.recipes);
  if (before) return before;
  const names = build(state);
  known.set(state.recipes, names);
  return names;
};
