import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { echo } from './ask-back.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { type Board, boardOf, free, take } from './target.ts';

/** Words around a question about saved recipes that ask for nothing more. */
export const recipeWords = new Set(
  `get rid roll original second third fourth fifth recipe recipes called named name names version versions history list listing saved save old first previous show open display view read print look
  see all which what whats what's book collection contents content ingredients in rename delete remove restore revert go back bring up out pull put force valid kindly want wants change
  our current latest every each full write find any got available goes into makes contains inside on have has`.split(
    /\s+/,
  ),
);

/** The recipe a message is about. `clear` is false when something in the message asks for more. */
export interface RecipeTarget {
  readonly name?: string;
  readonly trouble?: Trouble;
  readonly assumed: readonly string[];
  readonly clear: boolean;
  readonly version?: number;
}

const takeItem = (board: Board, item: Item): void => {
  const at = board.items.indexOf(item);
  take(board, at, at + 1);
};

/** A saved recipe half remembered, or a trouble with what could have been meant. */
export const findNamed = (
  reading: Reading,
  said: string,
): Pick<RecipeTarget, 'name' | 'trouble' | 'assumed'> => {
  if (said === '') return { assumed: [] };
  const [only, second] = reading.recipes.near(said);
  if (only && !second) return { name: only.name, assumed: [`I took "${said}" as ${only.name}.`] };
  const text = second
    ? `Which recipe do you mean: "${only?.name}" or "${second.name}"?`
    : `There is no recipe called "${echo(said)}" in this book. Ask "list recipes" to see what is saved.`;
  return { trouble: { code: 'unknown-recipe', text }, assumed: [] };
};

const ordinal: Readonly<Record<string, number>> = {
  first: 1,
  original: 1,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
};

/** "The first version of …". */
const versionSaid = ({ corrected }: Reading): number | undefined => {
  const word = /\b(first|original|second|third|fourth|fifth) version\b/i.exec(corrected)?.[1]?.toLowerCase();
  return word === undefined ? undefined : ordinal[word];
};

const takeVersion = (board: Board, reading: Reading): number | undefined => {
  const number = board.items.find((each) => each.letter === 'n');
  if (number?.value === undefined || !reading.words.has('version')) return versionSaid(reading);
  takeItem(board, number);
  return number.value;
};

/** Finds the recipe a message names: a saved name, or the words that are nothing else. */
export const recipeTarget = (reading: Reading): RecipeTarget => {
  const board = boardOf(reading.items);
  const [item, second] = board.items.filter((each) => each.letter === 'R');
  const version = defined({ version: takeVersion(board, reading) });
  if (item && !second) {
    takeItem(board, item);
    const clear = leftover(board, recipeWords, false).blocking.length === 0;
    return {
      ...defined({ name: item.recipe }),
      assumed: [],
      clear,
      ...version,
    };
  }
  const rest = free(board);
  const said = rest
    .filter((each) => /[wBi]/.test(each.letter) && !recipeWords.has(each.word))
    .map((each) => each.word)
    .join(' ');
  const clear = !second && !rest.some((each) => /[gvd%ptr]/.test(each.letter));
  return { ...findNamed(reading, said), clear, ...version };
};
