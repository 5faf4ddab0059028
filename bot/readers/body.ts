import { defined } from '../../core/defined.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';
import { readLines, saysEqual } from './lines.ts';
import { isOthersName } from './others-name.ts';
import { type Board, free, take } from './target.ts';

/** What a question is about: a saved recipe, a written-out one, or a single ingredient. */
export interface Subject {
  readonly recipe?: string;
  readonly lines?: readonly RecipeLine[];
  readonly ingredient?: Item;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

/** The saved recipe a message names, taken off the board; nothing when it names two different ones. */
export const takeRecipe = (board: Board): string | undefined => {
  let recipe: string | undefined;
  for (const [index, item] of board.items.entries()) {
    if (item.letter !== 'R' || board.taken[index]) continue;
    if (recipe !== undefined && recipe !== item.recipe) return undefined;
    recipe = item.recipe;
    board.taken[index] = true;
  }
  return recipe;
};

export const takeItem = (board: Board, item: Item): Item => {
  const at = board.items.indexOf(item);
  take(board, at, at + 1);
  return item;
};

/** Reads recipe lines off the board; what fits no line stays on it. */
export const takeWrittenOut = (board: Board): Subject | undefined => {
  const read = readLines(free(board));
  if (read.lines.length === 0 && !read.trouble) return undefined;
  for (const [index, item] of board.items.entries()) {
    if (!read.loose.includes(item)) board.taken[index] = true;
  }
  return { lines: read.lines, assumed: read.assumed, ...defined({ trouble: read.trouble }) };
};

const isWrittenOut = (board: Board): boolean => {
  const letters = free(board).map((item) => item.letter);
  const parts = free(board).some((item) => item.unit === 'part');
  return (
    letters.includes('i') &&
    (parts || saysEqual(free(board)) || letters.some((letter) => /[gvd%pnrQH]/.test(letter)))
  );
};

/** The subject of a question: recipe, lines, or one ingredient without an amount. */
export const takeSubject = (board: Board): Subject => {
  const recipe = takeRecipe(board);
  if (recipe !== undefined) return { recipe, assumed: [] };
  const names = free(board).filter((item) => item.letter === 'i');
  const [ingredient, second] = names;
  if (ingredient && !second && !isWrittenOut(board)) {
    return { ingredient: takeItem(board, ingredient), assumed: [] };
  }
  return (names.length > 0 ? takeWrittenOut(board) : undefined) ?? { assumed: [] };
};

/** What a workshop makes, where that is one thing. */
const onlyMaking = ({
  makings,
}: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> | undefined => {
  const [only, second] = Array.isArray(makings) ? makings : [];
  return second === undefined ? only : undefined;
};

/** The recipe the member's last request was about: scaled, melted, shown or saved; before a swap changed it. */
export const askedBefore = (reading: Reading): Pick<Subject, 'recipe' | 'lines'> | undefined => {
  const request = reading.last?.request;
  if (!request || reading.last?.topic === 'ingredient' || request.action === 'delete') return undefined;
  const { recipe, lines } = onlyMaking(request) ?? request;
  const name = recipe ?? request.newName ?? request.name;
  if (typeof name === 'string') return { recipe: name };
  return Array.isArray(lines) && lines.length > 0 ? { lines: lines as readonly RecipeLine[] } : undefined;
};

/** The recipe in hand: the one that the last answer came to (after a swap, a design), else the one asked about. */
export const subjectBefore = (reading: Reading): Pick<Subject, 'recipe' | 'lines'> | undefined => {
  const made = reading.last?.made?.[0];
  return made ? { lines: made.lines } : askedBefore(reading);
};

/** Stretches of a message's words a name can hide in: "does the hand blam melt" has it in the middle. */
const longestName = 6;
/** In a wall of text nothing is looked for that way. */
const mostItems = 60;

interface Stretch {
  readonly items: readonly Item[];
  readonly said: string;
}

/** "Lips" alone, or "lip balm", is in the name of many a recipe and means none of them. */
const isTelling = (item: Item, known: ReadonlySet<string>): boolean =>
  item.letter !== 'B' && item.word !== 'lips' && !known.has(item.word);

/** Runs of neighbouring words, longest first. */
const stretchesOf = (board: Board, letters: RegExp): Stretch[] => {
  const found: Stretch[] = [];
  if (board.items.length > mostItems) return found;
  for (let length = longestName; length >= 1; length -= 1) {
    for (let at = 0; at + length <= board.items.length; at += 1) {
      const items = board.items.slice(at, at + length);
      if (items.some((item, index) => board.taken[at + index] || !letters.test(item.letter))) continue;
      found.push({ items, said: items.map((item) => item.word).join(' ') });
    }
  }
  return found;
};

const takeNamed = (board: Board, reading: Reading, stretch: Stretch): Subject | undefined => {
  const [only, second] = reading.recipes.near(stretch.said);
  if (!only || second || isOthersName(reading, stretch.items[0], stretch.said, only.name)) return undefined;
  for (const item of stretch.items) takeItem(board, item);
  return { recipe: only.name, assumed: [`I took "${stretch.said}" as ${only.name}.`] };
};

/** A saved recipe half remembered in the words left on the board: exactly one has them in its name. */
export const takeRemembered = (
  board: Board,
  reading: Reading,
  known: ReadonlySet<string>,
): Subject | undefined => {
  const loose = free(board).filter((item) => /[wBZ]/.test(item.letter) && !known.has(item.word));
  const all = { items: loose, said: loose.map((item) => item.word).join(' ') };
  const whole = loose.some((item) => isTelling(item, known)) ? takeNamed(board, reading, all) : undefined;
  if (whole) return whole;
  for (const stretch of stretchesOf(board, /[wBZ]/)) {
    const telling = stretch.items.some((item) => isTelling(item, known));
    const near = telling ? takeNamed(board, reading, stretch) : undefined;
    if (near) return near;
  }
  return undefined;
};

/** "How much beeswax, shea and oil do I need for …": names of the recipe's own lines ask for nothing more. */
export const takeOwnIngredients = (
  board: Board,
  reading: Reading,
  recipe: unknown,
  written?: readonly RecipeLine[],
): void => {
  const lines = typeof recipe === 'string' ? reading.recipes.exact(recipe)?.lines : written;
  if (!lines) return;
  const own = new Set(lines.map((line) => line.ingredient));
  for (const [index, item] of board.items.entries()) {
    if (item.letter === 'i' && item.ingredients?.some((id) => own.has(id))) board.taken[index] = true;
  }
};
