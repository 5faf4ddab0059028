import type { RecipeLine } from '../../core/recipe.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { askedBefore, type Subject, subjectBefore, takeRecipe, takeRemembered } from './body.ts';
import { takeBody } from './scale-body.ts';
import { looseWords } from './scale-reading.ts';
import { quantityTrouble, takeCountOrMultiple } from './scale-target.ts';
import type { Wish } from './scale-wish.ts';
import { type Board, free, takeLoss, takeStep } from './target.ts';

/** The recipe a change is for, and how much of it is to be made, as far as the message says. */
export interface ChangeBody {
  readonly recipe?: string;
  readonly lines?: readonly RecipeLine[];
  /** As the scale topic takes it; empty when nothing is to be weighed out. */
  readonly make: Wish;
  /** True when the recipe is the one spoken of before. */
  readonly before: boolean;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

const sizedTotal = (make: Wish, total: Wish): Wish => {
  if (make.count === undefined || make.size !== undefined) return { ...make, ...total };
  const { totalG, totalMl } = total;
  if (totalG !== undefined) return { ...make, size: { amount: totalG, unit: 'g' } };
  return totalMl === undefined ? make : { ...make, size: { amount: totalMl, unit: 'ml' } };
};

/** What was to be made before goes with the recipe; an amount of one ingredient does not. */
const madeBefore = (reading: Reading): Wish => {
  const { topic, request } = reading.last ?? {};
  const source = topic === 'substitute' ? request?.make : topic === 'scale' ? request : undefined;
  if (!source || typeof source !== 'object') return {};
  const { recipe: _r, lines: _l, limit: _i, units: _u, ...make } = source as Wish;
  return make;
};

/** "The mint lip balm": a saved name half remembered that has an ingredient's name in it. */
const takeHalfName = (board: Board, reading: Reading, known: ReadonlySet<string>) => {
  const words = looseWords(board, known);
  // "Lip balm" is in the name of many a recipe and means none of them.
  const telling = board.items.some((item) => item.letter !== 'B' && words.split(' ').includes(item.word));
  const [only, second] = telling && words.includes(' ') ? reading.recipes.near(words) : [];
  if (!only || second) return undefined;
  for (const [index, item] of board.items.entries())
    if (/[wBib]/.test(item.letter) && words.includes(item.word)) board.taken[index] = true;
  return { recipe: only.name, assumed: [`I took "${words}" as ${only.name}.`] };
};

const spokenOf = (
  reading: Reading,
  board: Board,
  known: ReadonlySet<string>,
): (Subject & Pick<ChangeBody, 'before'>) | undefined => {
  const near = takeHalfName(board, reading, known) ?? takeRemembered(board, reading, known);
  if (near) return { ...near, before: false };
  // A swap after a swap is reckoned from the recipe that both change, so that it can be taken back.
  const before = reading.last?.topic === 'substitute' ? askedBefore(reading) : subjectBefore(reading);
  return before ? { ...before, assumed: [], before: true } : undefined;
};

/** Reads the recipe's side of a message whose change has been taken off the board already. */
export const takeChangeBody = (board: Board, reading: Reading, known: ReadonlySet<string>): ChangeBody => {
  const quantity = quantityTrouble(free(board));
  const stepG = takeStep(board);
  const lossPercent = takeLoss(board);
  const counted = takeCountOrMultiple(board, reading.settings);
  const named = takeRecipe(board);
  const body = takeBody(board, reading, named !== undefined, Object.keys(counted.target).length > 0);
  const make: Wish = {
    ...sizedTotal({ ...counted.target }, { ...body.total }),
    ...(stepG === undefined ? {} : { stepG }),
    ...(lossPercent === undefined ? {} : { lossPercent }),
  };
  const trouble = quantity ?? counted.trouble ?? body.trouble;
  const told = { assumed: body.assumed, ...(trouble ? { trouble } : {}) };
  if (named !== undefined) return { recipe: named, make, before: false, ...told };
  if (body.lines.length > 0) return { lines: body.lines, make, before: false, ...told };
  const spoken = spokenOf(reading, board, known);
  if (!spoken) return { make, before: false, ...told };
  const { recipe, lines, before } = spoken;
  return {
    ...(recipe === undefined ? {} : { recipe }),
    ...(recipe === undefined && lines ? { lines } : {}),
    make: before ? { ...madeBefore(reading), ...make } : make,
    before,
    ...told,
    assumed: [...told.assumed, ...spoken.assumed],
  };
};
