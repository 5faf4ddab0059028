import type { Ingredient } from '../data/ingredient.ts';
import { ingredientById, ingredients, isFat } from '../ingredients.ts';
import { type Standing, standingOf, withoutKinds } from '../substitute/without.ts';
import type { Wishes } from './wishes.ts';

type Test = (ingredient: Ingredient) => boolean;

const ofGroup =
  (group: string): Test =>
  (ingredient) =>
    ingredient.kind === 'additive' && ingredient.additive.group === group;

/** What a design can be asked to do without besides the kinds that a swap knows. */
const ownGroups = {
  wax: ({ kind }) => kind === 'wax',
  butter: ({ kind }) => kind === 'butter',
  'liquid-oil': ({ kind }) => kind === 'liquid-oil',
  'essential-oils': ({ kind }) => kind === 'essential-oil' || kind === 'resinoid',
  'daisy-family': ({ allergen, origin }) =>
    allergen.flag === 'daisy-family' || /^(helianthus|carthamus)/i.test(origin ?? ''),
  mint: ({ id }) => /mint|menthol/.test(id),
  citrus: ({ id }) => /orange|lemon-essential|lime|bergamot|grapefruit|mandarin/.test(id),
  herbs: ({ kind, id }) => kind === 'herb' || id === 'infused-oil',
  colour: ofGroup('colour'),
  antioxidant: ofGroup('antioxidant'),
  /** Water, dairy, alcohol, preservatives and the like: in none of the proposals anyway. */
  'never-in': () => false,
} as const satisfies Readonly<Record<string, Test>>;

type OwnGroup = keyof typeof ownGroups;

const isOwnGroup = (word: string): word is OwnGroup => Object.hasOwn(ownGroups, word);

/** Words that exclude a whole group; any other word of `without` is an ingredient's id. */
export const exclusionGroups: readonly string[] = [...withoutKinds, ...Object.keys(ownGroups)];

/** Genus and species of a fat: "no sunflower oil" means the high-oleic one too. */
const species = ({ origin }: Ingredient): string | undefined =>
  origin
    ?.split(/[\s,]+/, 2)
    .join(' ')
    .toLowerCase();

const isKin = (ingredient: Ingredient, id: string): boolean => {
  const named = ingredientById(id);
  if (!named) return ingredient.id === id;
  if (named.id.startsWith('beeswax')) return ingredient.id.startsWith('beeswax');
  const plants = isFat(ingredient) && isFat(named) && species(named) !== undefined;
  return ingredient.id === named.id || (plants && species(ingredient) === species(named));
};

/** Where an ingredient stands with one word of `without`: out, a question for whoever asked, or fine. */
const standing = (ingredient: Ingredient, word: string): Standing => {
  if (isOwnGroup(word)) return ownGroups[word](ingredient) ? 'out' : 'fine';
  if (!exclusionGroups.includes(word)) return isKin(ingredient, word) ? 'out' : 'fine';
  // Here nothing is kept that only may be of animals: the design chooses, nobody has to be asked.
  if (word === 'animal') return ingredient.vegan === 'yes' ? 'fine' : 'out';
  return standingOf(ingredient, word);
};

/** True when one word of `without` forbids this ingredient. */
export const excludes = (word: string, ingredient: Ingredient): boolean =>
  standing(ingredient, word) === 'out';

type Hard = Pick<Wishes, 'vegan' | 'without'>;

/** True for what may go in: vegan where that is wished for, and forbidden by no word of `without`. */
export const isAllowed = (ingredient: Ingredient, { vegan, without }: Hard): boolean =>
  (!vegan || ingredient.vegan === 'yes') && !without.some((word) => excludes(word, ingredient));

/** True for what is allowed and leaves no question open: only that is put in without being asked for. */
export const isFreelyAllowed = (ingredient: Ingredient, wishes: Hard): boolean =>
  isAllowed(ingredient, wishes) && wishes.without.every((word) => standing(ingredient, word) === 'fine');

/** Ids of everything that `vegan` and `without` forbid. */
export const excludedIds = (wishes: Hard): ReadonlySet<string> =>
  new Set(ingredients.filter((ingredient) => !isAllowed(ingredient, wishes)).map(({ id }) => id));

/** Which of these ingredients an allergic person has to decide about, by the word that asks for it. */
export const openQuestions = (
  ids: readonly string[],
  without: readonly string[],
): readonly { readonly without: string; readonly ingredients: readonly string[] }[] =>
  without.flatMap((word) => {
    const asked = ids.filter((id) => {
      const ingredient = ingredientById(id);
      return ingredient !== undefined && standing(ingredient, word) === 'ask';
    });
    return asked.length > 0 ? [{ without: word, ingredients: asked }] : [];
  });
