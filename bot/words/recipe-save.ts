import type { BookEvent, BookState, SavedRecipe } from '../../core/book.ts';
import { weighedIfWatched } from '../../core/check/shares.ts';
import { ingredientById } from '../../core/ingredients.ts';
import { exactName, nameKey } from '../../core/names.ts';
import { resolveRecipe } from '../../core/resolve.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Answer, Trouble } from '../answer.ts';
import { readItems } from '../readers/items.ts';
import { letterOf } from '../readers/lexicon.ts';
import { recipeNames } from '../readers/recipe-names.ts';
import { tokens } from '../readers/tokens.ts';
import { unitOf } from '../readers/unit.ts';
import type { Tools } from '../topic.ts';
import type { RecipeWish } from '../topics/recipe.ts';
import { findRecipe } from './find-recipe.ts';
import { troubleOf } from './problems.ts';
import { badLineWarnings, by, linesTable, next, recipeFigures } from './recipe-table.ts';
import { localRules } from './warnings.ts';

/** Most recipes one book holds; far more than a group makes, and it keeps the name look-ups small. */
const mostRecipes = 10_000;

const amounts = /[gvdpt%r]/;
const tellingLetters = /[wzZBcMSHQ]/;

/** True for a name with a word of its own: "Winter balm", "Quick stick", "Co", but not "recipes", "24 tins", "500 g" or "ml". */
const isTelling = (name: string): boolean => {
  const list = tokens(name);
  if (readItems(list, () => undefined).some((item) => amounts.test(item.letter))) return false;
  const words = list.filter((token) => token.kind === 'word').map((token) => token.word);
  const alone = words.length === 1 && list.length === 1;
  const letterSet = alone ? /[wzZ]/ : tellingLetters;
  return words.some(
    (word) =>
      (word.length > 2 || (alone && word.length === 2 && unitOf(word) === undefined)) &&
      letterSet.test(letterOf(word) ?? ''),
  );
};

/** "Body butter" is what makers call what they make, before it is a butter to melt. */
const ofTheBody = /^(?:body|hand|foot|lip|face|heel) (?:butter|oil|wax|balm)$/i;

/** "Jojoba bar", "Shea block": what is poured as one. A block of wax is bought. */
const isBarOf = (name: string, ids: readonly string[]): boolean =>
  /\b(?:bar|block|slab|cake|puck|melt)s?$/i.test(name) &&
  ids.every((id) => ingredientById(id)?.kind !== 'wax');

/** A name that is a word of the reader's own, or an ingredient's, could never be told from it again. */
export const nameTrouble = (name: string): Trouble | undefined => {
  const ids = exactName(nameKey(name));
  const own = ofTheBody.test(name) || (ids !== undefined && isBarOf(name, ids));
  const ingredient = ids !== undefined && !own;
  if ((isTelling(name) || own) && !ingredient) return undefined;
  return {
    code: 'not-allowed',
    text: `"${name}" would be mistaken for ${ingredient ? 'an ingredient' : 'part of a request'}. Give the recipe a name of its own, for example "Winter balm".`,
  };
};

const tooMany: Trouble = {
  code: 'out-of-range',
  text: `This book holds ${mostRecipes} recipes already. Delete one you no longer use first.`,
};

const outdated = ({ name, versions }: SavedRecipe): Trouble => ({
  code: 'not-allowed',
  text: `${name} was changed by somebody else since you looked: it stands at version ${versions.length}. Nothing was written down: look with "show ${name}", then save yours again.`,
});

type Saving = Result<{ events: readonly BookEvent[]; value: SavedBefore }, Trouble>;
interface SavedBefore {
  readonly id: string;
  readonly again: boolean;
}

/** Decided when its turn has come: two who save at once get two recipes, or two versions of which the later is told. */
const decide = (state: BookState, { name = '', lines = [], seen }: RecipeWish): Saving => {
  const before = recipeNames(state).exact(name);
  if (!before && Object.keys(state.recipes).length >= mostRecipes) return fail(tooMany);
  if (before && seen !== undefined && before.versions.length !== seen) return fail(outdated(before));
  const id = before?.id ?? `r${state.seq + 1}`;
  const event: BookEvent = {
    kind: 'recipe-saved',
    recipe: id,
    name: before?.name ?? name,
    lines: [...lines],
  };
  return ok({ events: [event], value: { id, again: before !== undefined } });
};

/** Writes a recipe, or a new version of one, into the book. */
export const saveRecipe = async (wish: RecipeWish, tools: Tools): Promise<Answer | Trouble> => {
  const { name = '', lines = [] } = wish;
  const before = recipeNames(tools.book.state).exact(name);
  const trouble = before ? undefined : nameTrouble(name);
  if (trouble) return trouble;
  if (!before && wish.existing) {
    const found = findRecipe(name, tools.book);
    if ('code' in found) return found;
  }
  const { region } = tools.settings;
  const resolved = resolveRecipe(
    lines.map((line) => weighedIfWatched(line, region)),
    region,
  );
  if (!resolved.ok) return troubleOf(resolved.problem);
  const changed = await tools.book.change((state) => decide(state, wish), by(tools));
  if (!changed.ok) return changed.problem;
  const { value, state } = changed.value;
  const saved = state.recipes[value.id];
  return saved ? savedAnswer(saved, value.again) : (findRecipe(name, tools.book) as Trouble);
};

/** What is told after a recipe was written. */
export const savedAnswer = (saved: SavedRecipe, again: boolean): Answer => {
  const version = saved.versions.length;
  const kept = again
    ? ` Version ${version - 1} stays readable: "show version ${version - 1} of ${saved.name}".`
    : '';
  return {
    title: again ? `${saved.name}, version ${version}` : `Saved: ${saved.name}`,
    blocks: [linesTable(saved.lines), { kind: 'text', text: `Written in the book.${kept}` }],
    figures: recipeFigures(saved.name, version, saved.lines),
    warnings: [...badLineWarnings(saved.lines), localRules],
    next: next(saved.name),
  };
};
