import type { Bench } from '../core/bench/state.ts';
import { type BookState, benchOf } from '../core/book.ts';
import { ingredients } from '../core/ingredients.ts';
import { nameKey } from '../core/names.ts';
import type { Completion, Topic } from './topic.ts';

/** The platform shows at most this many. */
const mostChoices = 25;

interface Candidate {
  readonly name: string;
  /** The keys it is found by: its own name's and those of its other names. */
  readonly keys: readonly string[];
}

/** Ingredient names are the same for everyone, so they are keyed once, at the first completion. */
let ingredientCandidates: readonly Candidate[] | undefined;

const ofIngredients = (): readonly Candidate[] => {
  ingredientCandidates ??= ingredients.map(({ name, names, inci }) => ({
    name,
    keys: [name, ...names, inci].map(nameKey),
  }));
  return ingredientCandidates;
};

const ofRecipes = new WeakMap<object, readonly Candidate[]>();

const recipesOf = (state: BookState): readonly Candidate[] => {
  const before = ofRecipes.get(state.recipes);
  if (before) return before;
  const list = Object.values(state.recipes).map(({ name }) => ({
    name,
    keys: [nameKey(name)],
  }));
  ofRecipes.set(state.recipes, list);
  return list;
};

/** 3 for a name that starts so, 2 for a word in it that does, 1 for anywhere inside, 0 for none. */
const keyRank = (key: string, typed: string): number => {
  if (key.startsWith(typed)) return 3;
  if (key.includes(` ${typed}`)) return 2;
  return key.includes(typed) ? 1 : 0;
};

const rank = (candidate: Candidate, typed: string): number =>
  candidate.keys.reduce((best, key, index) => Math.max(best, keyRank(key, typed) * (index === 0 ? 2 : 1)), 0);

/** Lots or batches looked through, the latest first: whoever wants an old one types its whole code. */
const mostCoded = 5000;

/** Codes of lots or batches, found by their letters and digits. */
const coded = (items: Bench['lots'] | Bench['batches']): readonly Candidate[] =>
  [...(items as Iterable<[string, { readonly lot: string }]>)]
    .slice(-mostCoded)
    .map(([key, { lot }]) => ({ name: lot, keys: [nameKey(lot), key.toLowerCase()] }));

const candidatesOf = (state: BookState, topics: readonly Topic[], kind: Completion): readonly Candidate[] => {
  if (kind === 'topic') return topics.map(({ name }) => ({ name, keys: [name] }));
  if (kind === 'ingredient') return ofIngredients();
  if (kind === 'recipe') return recipesOf(state);
  if (kind === 'batch') return coded(benchOf(state).batches);
  if (kind === 'lot') return coded(benchOf(state).lots);
  return [...recipesOf(state), ...ofIngredients()];
};

/** Names that complete what is typed, best first: own names before other names, starts before middles. */
export const complete = (
  state: BookState,
  topics: readonly Topic[],
  kind: Completion,
  typed: string,
): readonly string[] => {
  const key = nameKey(typed.slice(0, 100));
  return candidatesOf(state, topics, kind)
    .map((candidate) => ({
      name: candidate.name,
      rank: key === '' ? 1 : rank(candidate, key),
    }))
    .filter((candidate) => candidate.rank > 0)
    .toSorted((a, b) => b.rank - a.rank || a.name.localeCompare(b.name, 'en'))
    .slice(0, mostChoices)
    .map((candidate) => candidate.name);
};
