import { mostAromaPercent } from '../../core/design/dose.ts';
import type { WantedIngredient } from '../../core/design/wishes.ts';
import { ingredientById, isAroma, isAromaRow } from '../../core/ingredients.ts';
import type { Trouble } from '../answer.ts';
import { askWhich, unknownIngredient } from './ask-back.ts';
import { designWords } from './design-words.ts';
import type { Item } from './item.ts';
import { type Board, take } from './target.ts';

/** What has to be in, with what was taken for granted about a name. */
export interface WithRead {
  readonly with: readonly WantedIngredient[];
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

const isSafeAroma = (id: string, vegan: boolean): boolean => {
  const found = ingredientById(id);
  if (!found || !isAroma(found) || found.lips === 'avoid' || mostAromaPercent(found) <= 0) return false;
  return (!vegan || found.vegan === 'yes') && !(isAromaRow(found) && found.limits.phototoxic);
};

const herbIn = (ids: readonly string[]): string | undefined =>
  ids.find((id) => ingredientById(id)?.kind === 'herb');

interface Picked {
  readonly id?: string;
  readonly assumed?: string;
  readonly trouble?: Trouble;
}

const nameOf = (id: string): string => ingredientById(id)?.name ?? id;

/** A name that stands for one thing: taken, with what is to be said about it. */
const pickOnly = (item: Item, id: string): Picked => {
  if (item.because) return { id, assumed: `"${item.word}": ${item.because}.` };
  return item.misspelt ? { id, assumed: `I read "${item.misspelt}" as ${nameOf(id)}.` } : { id };
};

/** "peppermint" in a balm is its oil, if only one of its oils is safe on lips; "infused" makes it the herb. */
const pickOneOf = (item: Item, ids: readonly string[], infused: boolean, vegan: boolean): Picked => {
  const herb = herbIn(ids);
  const [safe, another] = ids.filter((id) => isSafeAroma(id, vegan));
  const oil = another === undefined ? (safe ?? herb) : undefined;
  const id = infused && herb ? herb : oil;
  return id === undefined
    ? { trouble: askWhich(item) }
    : { id, assumed: `I took "${item.word}" as ${nameOf(id)}.` };
};

const pick = (item: Item, infused: boolean, vegan: boolean): Picked => {
  const ids = item.infusedWith ? [item.infusedWith] : (item.ingredients ?? []);
  const [only, second] = ids;
  return only !== undefined && second === undefined
    ? pickOnly(item, only)
    : pickOneOf(item, ids, infused, vegan);
};

const isName = (board: Board, at: number): boolean => board.items[at]?.letter === 'i' && !board.taken[at];

const filling = /^[o(:=-]$/;

/** Place of the name an amount in percent belongs to: after it, or just before it. */
const nameFor = (board: Board, percent: number): number | undefined => {
  const step = (from: number, by: 1 | -1): number | undefined => {
    let at = from + by;
    while (filling.test(board.items[at]?.letter ?? '')) at += by;
    return isName(board, at) ? at : undefined;
  };
  return step(percent, 1) ?? step(percent, -1);
};

const sharesOf = (board: Board): ReadonlyMap<number, number> => {
  const shares = new Map<number, number>();
  for (const [at, item] of board.items.entries()) {
    if (item.letter !== '%' || board.taken[at] || item.value === undefined) continue;
    const name = nameFor(board, at);
    if (name === undefined || shares.has(name)) continue;
    shares.set(name, item.value);
    take(board, at, at + 1);
  }
  return shares;
};

/** A word that nobody knows where a name is due: after "with", or joined to a name. */
const unknownName = (board: Board): Item | undefined =>
  board.items.find((item, at) => {
    if (item.letter !== 'w' || board.taken[at] || designWords.has(item.word)) return false;
    const before = board.items[at - 1];
    if (before?.letter === 'W') return before.word !== 'given';
    return before?.letter === 'A' && isName(board, at - 2);
  });

/** Names that only say a kind ("a butter", "some oil") wish for nothing in particular. */
const isKind = (item: Item): boolean => item.generic === true && !/essential/.test(item.word);

interface Named extends Picked {
  readonly percent?: number | undefined;
}

const takeNames = (board: Board, vegan: boolean): readonly Named[] => {
  const shares = sharesOf(board);
  const infused = board.items.some((item) => item.letter === 'H');
  return board.items.flatMap((item, at) => {
    if (!isName(board, at)) return [];
    take(board, at, at + 1);
    return isKind(item) ? [] : [{ ...pick(item, infused, vegan), percent: shares.get(at) }];
  });
};

/** Takes the names that are left on the board: everything not excluded has to be in. */
export const takeWith = (board: Board, vegan: boolean): WithRead => {
  const unknown = unknownName(board);
  if (unknown) return { with: [], assumed: [], trouble: unknownIngredient(unknown.word) };
  const named = takeNames(board, vegan);
  const trouble = named.find((each) => each.trouble)?.trouble;
  if (trouble) return { with: [], assumed: [], trouble };
  const wanted = new Map<string, WantedIngredient>();
  for (const { id, percent } of named) {
    if (id !== undefined) wanted.set(id, { ingredient: id, ...(percent === undefined ? {} : { percent }) });
  }
  return { with: [...wanted.values()], assumed: named.flatMap(({ assumed }) => assumed ?? []) };
};
