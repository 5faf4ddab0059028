import type { Bench } from '../core/bench/state.ts';
import { type BookState, benchOf, type SavedRecipe } from '../core/book.ts';
import { ingredients } from '../core/ingredients.ts';
import { nameWords, wordKey } from '../core/names.ts';
import type { Completion, Topic } from './topic.ts';

/** The platform shows at most this many. */
const mostChoices = 25;

interface Candidate {
  readonly name: string;
  /** What it is found by: its own name, and its other names. */
  readonly own: readonly string[];
  readonly other: readonly string[];
}

/**
 * A name as it is typed, letter by letter, and as names are compared: the first completes "beesw", the second finds "shea
 * butters" and "sheabutter".
 */
const formsOf = (name: string): readonly string[] => {
  const words = nameWords(name);
  const plain = words.join(' ');
  const key = words.map(wordKey).join(' ');
  return plain === key ? [plain] : [plain, key];
};

/** In the order they are offered among equals: by their plain letters, which is fast to compare. */
const byName = (list: readonly Candidate[]): readonly Candidate[] =>
  list.toSorted((a, b) => {
    const [one = '', other = ''] = [a.own[0], b.own[0]];
    return one < other ? -1 : one > other ? 1 : 0;
  });

/** What is made of a part of the book is made once for as long as that part stands unchanged. */
const madeOnce = <P extends object>(
  make: (part: P) => readonly Candidate[],
): ((part: P) => readonly Candidate[]) => {
  const made = new WeakMap<P, readonly Candidate[]>();
  return (part) => {
    const before = made.get(part);
    if (before) return before;
    const list = make(part);
    made.set(part, list);
    return list;
  };
};

// Ingredient names are the same for everyone, so they are keyed once, at the first completion.
const ofIngredients = madeOnce((all: typeof ingredients) =>
  byName(
    all.map(({ name, names, inci }) => ({
      name,
      own: formsOf(name),
      other: [...names, inci].flatMap(formsOf),
    })),
  ),
);

/** A recipe or lot that did not change is the same object in the next state of the book, so it is keyed once. */
const keyedOnce = <T extends object>(make: (thing: T) => Candidate): ((thing: T) => Candidate) => {
  const made = new WeakMap<T, Candidate>();
  return (thing) => {
    const before = made.get(thing);
    if (before) return before;
    const one = make(thing);
    made.set(thing, one);
    return one;
  };
};

const ofRecipe = keyedOnce(({ name }: SavedRecipe) => ({ name, own: formsOf(name), other: [] }));

const ofRecipes = madeOnce((recipes: BookState['recipes']) => byName(Object.values(recipes).map(ofRecipe)));

const ofTopics = madeOnce((topics: readonly Topic[]) =>
  byName(topics.map(({ name }) => ({ name, own: [name], other: [] }))),
);

/** Lots or batches looked through, the latest first: whoever wants an old one types its whole code. */
const mostCoded = 5000;

const ofCode = keyedOnce(({ lot }: { readonly lot: string }) => ({
  name: lot,
  own: [...formsOf(lot), lot.toLowerCase().replace(/[^a-z0-9]/g, '')],
  other: [],
}));

/** Codes of lots or batches, found by their letters and digits; the latest first. */
const coded = madeOnce((items: Bench['lots'] | Bench['batches']) =>
  [...(items as Iterable<[string, { readonly lot: string }]>)]
    .slice(-mostCoded)
    .reverse()
    .map(([, item]) => ofCode(item)),
);

const candidatesOf = (
  state: BookState,
  topics: readonly Topic[],
  kind: Completion,
): readonly (readonly Candidate[])[] => {
  const { lots, batches } = benchOf(state);
  switch (kind) {
    case 'topic':
      return [ofTopics(topics)];
    case 'ingredient':
      return [ofIngredients(ingredients)];
    case 'recipe':
      return [ofRecipes(state.recipes)];
    case 'recipe-or-ingredient':
      return [ofRecipes(state.recipes), ofIngredients(ingredients)];
    case 'batch':
      return [coded(batches)];
    case 'lot':
    case 'lots':
      return [coded(lots)];
    case 'lot-or-batch':
      return [coded(batches), coded(lots)];
  }
};

/** 3 for a name that starts so, 2 for a word in it that does, 1 for anywhere inside, 0 for none. */
const keyRank = (key: string, typed: string): number => {
  const at = key.indexOf(typed);
  if (at <= 0) return at === 0 ? 3 : 0;
  return key.includes(` ${typed}`) ? 2 : 1;
};

const bestRank = (keys: readonly string[], typed: readonly string[]): number => {
  let best = 0;
  for (const key of keys) for (const one of typed) best = Math.max(best, keyRank(key, one));
  return best;
};

/** Own names count twice: 6 is the best there is. */
const mostRank = 6;

const rank = ({ own, other }: Candidate, typed: readonly string[]): number => {
  const best = bestRank(own, typed) * 2;
  return best > 3 || other.length === 0 ? best : Math.max(best, bestRank(other, typed));
};

/** The best of a sorted list, in its own order among equals: one walk, no sorting. */
const bestOf = (lists: readonly (readonly Candidate[])[], said: string): readonly string[] => {
  const typed = formsOf(said).filter((form) => form !== '');
  const ranked = Array.from({ length: mostRank + 1 }, (): string[] => []);
  for (const candidate of lists.flat()) {
    const of = ranked[typed.length === 0 ? 1 : rank(candidate, typed)];
    if (of && of.length < mostChoices) of.push(candidate.name);
  }
  return ranked.slice(1).reverse().flat().slice(0, mostChoices);
};

/** Names that complete what is typed, best first: own names before other names, starts before middles. */
export const complete = (
  state: BookState,
  topics: readonly Topic[],
  kind: Completion,
  typed: string,
): readonly string[] => {
  // Of a list, what is typed last is completed and the rest stays.
  const [, before = '', last = typed] = kind === 'lots' ? (/^(.*,\s*)?([^,]*)$/s.exec(typed) ?? []) : [];
  const found = bestOf(candidatesOf(state, topics, kind), last.slice(0, 100));
  return found.map((name) => before + name);
};
