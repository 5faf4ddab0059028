import type { Ingredient } from '../../core/data/ingredient.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import { roleOfId } from '../../core/substitute/role.ts';
import type { Trouble } from '../answer.ts';
import { shortName } from '../words/warnings.ts';
import { askWhich, orList } from './ask-back.ts';
import type { Item } from './item.ts';

/** A name settled to one ingredient, or the question that has to be asked back. */
export interface Settled {
  readonly id?: string;
  readonly trouble?: Trouble;
  readonly assumed?: string;
}

const canonical = (id: string): string => ingredientById(id)?.id ?? id;

/** Everything a recipe names, the herbs in its oils included. */
export const idsOf = (lines: readonly RecipeLine[]): readonly string[] => [
  ...new Set(
    lines.flatMap(({ ingredient, infusedWith }) =>
      infusedWith ? [canonical(ingredient), canonical(infusedWith)] : [canonical(ingredient)],
    ),
  ),
];

const isNut = (found: Ingredient | undefined): boolean =>
  found?.allergen.flag === 'tree-nut' || found?.allergen.flag === 'peanut';

/** "The wax", "the nut oil", "coconut": the lines of the recipe it can mean. */
const meant = (item: Item, own: readonly string[]): readonly string[] => {
  const ids = item.ingredients ?? [];
  if (!item.generic) return own.filter((id) => ids.includes(id));
  if (/\bnut\b/.test(item.word)) return own.filter((id) => isNut(ingredientById(id)));
  const roles = new Set(ids.map(roleOfId));
  return own.filter((id) => roles.has(roleOfId(id)));
};

const misread = (item: Item, id: string): Pick<Settled, 'assumed'> =>
  item.misspelt ? { assumed: `I read "${item.misspelt}" as ${shortName(id)}.` } : {};

const whichOfRecipe = (item: Item, ids: readonly string[]): Trouble => ({
  code: 'unknown-ingredient',
  text: `"${item.word}" can mean more than one line of this recipe. Did you mean ${orList(ids.map(shortName))}?`,
});

/** Settles what goes out: a name that means several things is the one that the recipe has. */
export const settleOut = (item: Item, own: readonly string[] | undefined): Settled => {
  const [id, ...others] = item.ingredients ?? [];
  if (id !== undefined && others.length === 0 && !item.because)
    return { id: canonical(id), ...misread(item, id) };
  const [only, second] = own ? meant(item, own) : [];
  if (only !== undefined && second === undefined)
    return {
      id: only,
      assumed: item.generic ? `I took "${item.word}" as ${shortName(only)}.` : undefined,
    } as Settled;
  if (only !== undefined && own) return { trouble: whichOfRecipe(item, meant(item, own)) };
  return { trouble: askWhich(item) };
};

/** Settles what comes in: a name that means several things is the one that does the job of what goes out. */
export const settleIn = (item: Item, from: string): Settled => {
  const ids = item.ingredients ?? [];
  const [id, ...others] = ids;
  if (id !== undefined && others.length === 0 && !item.because)
    return { id: canonical(id), ...misread(item, id) };
  const fitting = ids.filter((each) => roleOfId(each) === roleOfId(from) && !item.generic);
  const [only, second] = fitting;
  // Herb or scent of one plant, its oil or its wax: the job tells. Kinds of coconut oil differ in more than that.
  const rest = ids.filter((each) => each !== only).map(roleOfId);
  const plant =
    rest.every((role) => role === 'herb' || role === 'aroma') ||
    (only !== undefined && roleOfId(only) === 'wax' && !rest.includes('wax'));
  if (only === undefined || second !== undefined || ids.length < 2 || !plant)
    return { trouble: askWhich(item) };
  return { id: canonical(only), assumed: `I took "${item.word}" as ${shortName(only)}.` };
};

/** The one line of the recipe that does the same job: what "candelilla instead" takes the place of. */
export const sameJob = (to: string, own: readonly string[]): readonly string[] =>
  own.filter((id) => id !== to && roleOfId(id) === roleOfId(to));
