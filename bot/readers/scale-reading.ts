import { defined } from '../../core/defined.ts';
import { weighVolume } from '../../core/grams.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import { gramsIn, isMassUnit, isVolumeUnit } from '../../core/units.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { askWhich } from './ask-back.ts';
import { takeRecipe } from './body.ts';
import { ouncesBeside } from './in-ounces.ts';
import type { Item } from './item.ts';
import { takeBody } from './scale-body.ts';
import { takeJug } from './scale-jug.ts';
import {
  quantityTrouble,
  type TargetAndTrouble,
  type TargetRead,
  takeCountOrMultiple,
  takeLimit,
  takeLoneCount,
} from './scale-target.ts';
import { type Board, boardOf, free, shapeOf, take, takeLoss, takeStep } from './target.ts';

/** What a message says to the scale topic, before it is decided whether that is enough. */
export interface ScaleReading {
  readonly board: Board;
  readonly recipe?: string;
  readonly lines: readonly RecipeLine[];
  readonly target: TargetRead;
  readonly limit?: { readonly ingredient: string; readonly grams: number };
  readonly lossPercent?: number;
  readonly stepG?: number;
  readonly units?: 'oz';
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

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

const followsScale = (reading: Reading): boolean => reading.last?.topic === 'scale';

/** "24 tins … 15 g" said apart: a lone mass is the fill when a count has none. */
const settled = (target: TargetRead, total: TargetRead): TargetRead => {
  if (target.count === undefined || target.size !== undefined) return { ...target, ...total };
  if (total.totalG !== undefined) return { ...target, size: { amount: total.totalG, unit: 'g' } };
  if (total.totalMl !== undefined) return { ...target, size: { amount: total.totalMl, unit: 'ml' } };
  return target;
};

/** "no, I meant 40", "20 g tins, not 15 ml": a correction takes the old value back and gives the new one. */
const takeCorrection = (board: Board): void => {
  const shape = shapeOf(board);
  if (/^N(?!L)/.test(shape)) take(board, 0, 1);
  for (let at = shape.search(/z[gvn]/); at >= 0; at = shapeOf(board).search(/z[gvn]/)) {
    if (board.items[at]?.word !== 'not') return;
    take(board, at, at + 2);
  }
};

/** "… scaled to thirty tins" is a request; "I scaled it last week" is a story. */
const takeParticiple = (board: Board): void => {
  const at = board.items.findIndex(
    (item, index) => item.word === 'scaled' && board.items[index + 1]?.letter === 'T',
  );
  if (at >= 0) take(board, at, at + 1);
};

/** The number of containers on its own, after a scaling: "and 40?", "back to 24 but in 30 ml". */
const loneCount = (board: Board, target: TargetRead, hasBody: boolean): TargetAndTrouble => {
  const open = target.count === undefined && target.totalG === undefined && target.factor === undefined;
  return open && !hasBody ? takeLoneCount(board) : { target: {} };
};

/** Reads a message as a scale request. */
export const readScale = (reading: Reading): ScaleReading => {
  const board = boardOf(reading.items);
  const follows = followsScale(reading);
  if (follows) takeCorrection(board);
  takeJug(board);
  const units = ouncesBeside(reading);
  const quantity = quantityTrouble(free(board));
  takeParticiple(board);
  const stepG = takeStep(board);
  const lossPercent = takeLoss(board);
  const counted = takeCountOrMultiple(board, reading.settings);
  const recipe = takeRecipe(board);
  const limited = limitOf(takeLimit(board, recipe !== undefined), reading);
  const body = takeBody(board, reading, recipe !== undefined, Object.keys(counted.target).length > 0);
  const target = settled(counted.target, body.total);
  const hasBody = recipe !== undefined || body.lines.length > 0;
  const lone = follows ? loneCount(board, target, hasBody) : { target: {} };
  const trouble = quantity ?? counted.trouble ?? lone.trouble ?? limited.trouble ?? body.trouble;
  return {
    board,
    lines: body.lines,
    target:
      lone.target.count !== undefined && target.totalMl !== undefined
        ? fillOf(target, lone.target)
        : { ...target, ...lone.target },
    assumed: body.assumed,
    ...defined({ recipe, limit: limited.limit, lossPercent, stepG, units, trouble }),
  };
};

/** A count and a lone volume together are containers: "24, but in 30 ml". */
const fillOf = ({ totalMl = 0, ...rest }: TargetRead, lone: TargetRead): TargetRead => ({
  ...rest,
  ...lone,
  size: { amount: totalMl, unit: 'ml' },
});

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
