import type { Ingredient } from '../data/ingredient.ts';
import { ingredientById, isAroma, isWax } from '../ingredients.ts';
import { treatmentOf } from '../melt/treatment.ts';

/** What a recipe can be asked to do without; an ingredient's id serves as well. */
export const withoutKinds = [
  'nuts',
  'peanut',
  'animal',
  'bee',
  'wool',
  'palm',
  'coconut',
  'scent',
  'soy',
  'sesame',
  'wheat',
  'mineral',
] as const;
export type WithoutKind = (typeof withoutKinds)[number];

/** `out`: it has to go. `ask`: whoever asks has to decide, so it is said and never kept in silence. */
export type Standing = 'out' | 'ask' | 'fine';

/** Botanically nuts, their kin, or asked about by people with a nut allergy; none is a listed tree nut here. */
const askedAboutNuts = new Set([
  'shea-butter',
  'argan-oil',
  'coconut-oil',
  'virgin-coconut-oil',
  'fractionated-coconut-oil',
  'apricot-kernel-oil',
  'marula-oil',
  'tamanu-oil',
  'illipe-butter',
  'horse-chestnut',
]);

const coconuts = new Set(['coconut-oil', 'virgin-coconut-oil']);
const oilPalm = new Set(['palm-oil', 'palm-kernel-oil']);
/** Often made from palm or palm-kernel fatty acids (common knowledge of the trade): the supplier has to say. */
const maybePalm = new Set([
  'fractionated-coconut-oil',
  'stearic-acid',
  'cetyl-alcohol',
  'ascorbyl-palmitate',
  'vitamin-e',
  'tocopheryl-acetate',
]);
/** Often thinned with another oil. */
const maybeSoy = new Set(['vitamin-e', 'tocopheryl-acetate']);
const maybeWheat = new Set(['vitamin-e']);

const fromFlag =
  (...flags: readonly Ingredient['allergen']['flag'][]) =>
  (found: Ingredient): boolean =>
    flags.includes(found.allergen.flag);

const unknown = fromFlag('unknown');
const within =
  (ids: ReadonlySet<string>) =>
  (found: Ingredient): boolean =>
    ids.has(found.id);
const none = (): boolean => false;

interface Rule {
  readonly out: (found: Ingredient) => boolean;
  readonly ask: (found: Ingredient) => boolean;
}

const rules: Readonly<Record<WithoutKind, Rule>> = {
  nuts: {
    out: fromFlag('tree-nut', 'peanut'),
    ask: (found) => askedAboutNuts.has(found.id) || unknown(found),
  },
  peanut: { out: fromFlag('peanut'), ask: unknown },
  animal: { out: (found) => found.vegan === 'no', ask: (found) => found.vegan === 'varies' },
  bee: { out: fromFlag('bee'), ask: none },
  wool: { out: fromFlag('wool'), ask: none },
  palm: { out: within(oilPalm), ask: (found) => maybePalm.has(found.id) || unknown(found) },
  coconut: {
    // Most is coconut; some is palm kernel. Either way not for those who avoid coconut.
    out: (found) => coconuts.has(found.id) || found.id === 'fractionated-coconut-oil',
    ask: unknown,
  },
  scent: { out: isAroma, ask: none },
  soy: { out: fromFlag('soy'), ask: (found) => maybeSoy.has(found.id) || unknown(found) },
  sesame: { out: fromFlag('sesame'), ask: unknown },
  wheat: { out: fromFlag('wheat'), ask: (found) => maybeWheat.has(found.id) || unknown(found) },
  mineral: { out: (found) => isWax(found) && found.mineral, ask: none },
};

const isKind = (without: string): without is WithoutKind => Object.hasOwn(rules, without);

/** White beeswax is beeswax, virgin coconut oil coconut oil: one make-up under two names is one thing to avoid. */
const isSameThing = (a: Ingredient, b: Ingredient): boolean => {
  if (a.id === b.id) return true;
  const [mine, other] = [treatmentOf(a), treatmentOf(b)];
  return mine.kind === 'melts' && other.kind === 'melts' && mine.by === 'own' && mine.like === other.like;
};

/** Where an ingredient stands with one thing to do without: a kind of the list, or an ingredient's id. */
export const standingOf = (ingredient: Ingredient, without: string): Standing => {
  if (!isKind(without)) {
    const named = ingredientById(without);
    return named && isSameThing(named, ingredient) ? 'out' : 'fine';
  }
  if (rules[without].out(ingredient)) return 'out';
  return rules[without].ask(ingredient) ? 'ask' : 'fine';
};

/** Fine with everything that is to be left out, with no question left open. */
export const isFineWithout = (ingredient: Ingredient, withouts: readonly string[]): boolean =>
  withouts.every((without) => standingOf(ingredient, without) === 'fine');
