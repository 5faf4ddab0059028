import { weighVolume } from '../../core/grams.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import { gramsIn, isMassUnit, isVolumeUnit } from '../../core/units.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { askWhich } from './ask-back.ts';
import type { Item } from './item.ts';
import { readLines } from './lines.ts';
import {
  asTotal,
  quantityTrouble,
  type TargetRead,
  takeCountOrMultiple,
  takeInlineTotal,
  takeLimit,
  takeLoneCount,
  takeTotal,
} from './scale-target.ts';
import { type Board, boardOf, free, takeLoss, takeStep } from './target.ts';

/** What a message says to the scale topic, before it is decided whether that is enough. */
export interface ScaleReading {
  readonly board: Board;
  readonly recipe?: string;
  readonly lines: readonly RecipeLine[];
  readonly target: TargetRead;
  readonly limit?: { readonly ingredient: string; readonly grams: number };
  readonly lossPercent?: number;
  readonly stepG?: number;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

const takeRecipe = (board: Board): string | undefined => {
  let recipe: string | undefined;
  for (const [index, item] of board.items.entries()) {
    if (item.letter !== 'R' || board.taken[index]) continue;
    if (recipe !== undefined && recipe !== item.recipe) return undefined;
    recipe = item.recipe;
    board.taken[index] = true;
  }
  return recipe;
};

type Limit = { readonly ingredient: string; readonly grams: number };

const limitOf = (
  pair: { item: Item; amount: Item } | undefined,
  reading: Reading,
): { limit?: Limit; trouble?: Trouble } => {
  if (!pair) return {};
  const [id, ...others] = pair.item.ingredients ?? [];
  if (id === undefined || others.length > 0) return { trouble: askWhich(pair.item) };
  const { unit, value } = pair.amount;
  if (unit === undefined || value === undefined) return {};
  if (isMassUnit(unit)) return { limit: { ingredient: id, grams: value * gramsIn(unit) } };
  if (!isVolumeUnit(unit)) return {};
  const weighed = weighVolume(value, unit, id, reading.settings.region);
  if (weighed.ok) return { limit: { ingredient: id, grams: weighed.value.grams } };
  const name = ingredientById(id)?.name ?? id;
  return {
    trouble: {
      code: 'missing',
      text: `I know no density for ${name}; tell me its weight, for example "80 g of ${name}".`,
    },
  };
};

interface Body {
  readonly lines: readonly RecipeLine[];
  readonly total: TargetRead;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

/** A written-out recipe: everything not yet taken, read as lines; what fits no line is put back on the board. */
const takeLines = (board: Board, reading: Reading): Body => {
  const outside = takeInlineTotal(board, reading.settings);
  const items = free(board);
  const read = readLines(items);
  if (read.lines.length === 0 && !read.trouble) return { lines: [], total: asTotal(outside), assumed: [] };
  for (const [index, item] of board.items.entries()) {
    if (!read.loose.includes(item)) board.taken[index] = true;
  }
  const late = outside ?? takeTotal(board, reading.settings);
  return {
    lines: read.lines,
    total: asTotal(late),
    assumed: read.assumed,
    ...(read.trouble ? { trouble: read.trouble } : {}),
  };
};

const hasInlineRecipe = (board: Board): boolean => {
  const letters = free(board).map((item) => item.letter);
  return (
    (letters.includes('i') && letters.some((letter) => /[gvd%pnrQ]/.test(letter))) ||
    letters.filter((letter) => letter === 'i').length > 1
  );
};

const takeBody = (board: Board, reading: Reading, named: boolean): Body => {
  if (named)
    return {
      lines: [],
      total: asTotal(takeTotal(board, reading.settings)),
      assumed: [],
    };
  if (hasInlineRecipe(board)) return takeLines(board, reading);
  return {
    lines: [],
    total: asTotal(takeTotal(board, reading.settings)),
    assumed: [],
  };
};

const followsScale = (reading: Reading): boolean => reading.last?.topic === 'scale';

/** "24 tins … 15 g" said apart: a lone mass is the fill when a count has none. */
const settled = (target: TargetRead, total: TargetRead): TargetRead => {
  if (target.count === undefined || target.size !== undefined) return { ...target, ...total };
  if (total.totalG !== undefined) return { ...target, size: { amount: total.totalG, unit: 'g' } };
  if (total.totalMl !== undefined) return { ...target, size: { amount: total.totalMl, unit: 'ml' } };
  return target;
};

/** Reads a message as a scale request. */
export const readScale = (reading: Reading): ScaleReading => {
  const board = boardOf(reading.items);
  const quantity = quantityTrouble(reading.items);
  const stepG = takeStep(board);
  const lossPercent = takeLoss(board);
  const counted = takeCountOrMultiple(board, reading.settings);
  const recipe = takeRecipe(board);
  const limited = limitOf(takeLimit(board, recipe !== undefined), reading);
  const body = takeBody(board, reading, recipe !== undefined);
  const target = settled(counted.target, body.total);
  const empty = Object.keys(target).length === 0 && recipe === undefined && body.lines.length === 0;
  const lone = followsScale(reading) && empty ? takeLoneCount(board) : { target: {} };
  const trouble = quantity ?? counted.trouble ?? lone.trouble ?? limited.trouble ?? body.trouble;
  return {
    board,
    ...(recipe === undefined ? {} : { recipe }),
    lines: body.lines,
    target: { ...target, ...lone.target },
    ...(limited.limit ? { limit: limited.limit } : {}),
    ...(lossPercent === undefined ? {} : { lossPercent }),
    ...(stepG === undefined ? {} : { stepG }),
    assumed: body.assumed,
    ...(trouble ? { trouble } : {}),
  };
};

/** The words that could be the name of a recipe nobody saved, or a saved one half remembered. */
export const looseWords = (board: Board, skip: ReadonlySet<string>): string => {
  const words: string[] = [];
  for (const [index, item] of board.items.entries()) {
    const usable = !board.taken[index] && /[wBibyR]/.test(item.letter) && !skip.has(item.word);
    if (usable) words.push(item.word);
    else if (words.length > 0 && (board.taken[index] || /[,;.?!\n]/.test(item.letter))) break;
  }
  return words.join(' ');
};
