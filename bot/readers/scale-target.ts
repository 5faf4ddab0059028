import type { Settings } from '../../core/settings.ts';
import type { Trouble } from '../answer.ts';
import type { Item } from './item.ts';
import { saysEqual } from './lines.ts';
import {
  type Board,
  findShape,
  free,
  type Size,
  shapeOf,
  sizeOf,
  take,
  takeContainers,
  takeMultiple,
} from './target.ts';

/** Everything a message says about how much to make. Kept apart so that a follow-up can replace one part of it. */
export interface TargetRead {
  readonly count?: number;
  readonly size?: Size;
  readonly totalG?: number;
  readonly totalMl?: number;
  readonly factor?: number;
}

export interface TargetAndTrouble {
  readonly target: TargetRead;
  readonly trouble?: Trouble;
}

const badQuantity = (text: string): Trouble => ({ code: 'bad-quantity', text });

/** A quantity that cannot be meant: a range or a negative number. */
export const quantityTrouble = (items: readonly Item[]): Trouble | undefined => {
  const range = items.find((item) => item.upTo !== undefined);
  if (range) {
    return badQuantity(
      `I read a range, ${range.value} to ${range.upTo}. Which number shall I take? For example "24 tins of 15 ml".`,
    );
  }
  const negative = items.find((item) => item.value !== undefined && item.value < 0);
  return negative
    ? badQuantity('An amount below zero cannot be weighed. Write it without the minus, for example "500 g".')
    : undefined;
};

const takeItem = (board: Board, item: Item): void => {
  const at = board.items.indexOf(item);
  take(board, at, at + 1);
};

/**
 * "with my 80 g of beeswax", "I have 80 g beeswax": amount and name that stand together. Beside a saved recipe any
 * such pair is a limit; in a written-out recipe only one that is called "my".
 */
export const takeLimit = (board: Board, hasRecipe: boolean): { item: Item; amount: Item } | undefined => {
  const shapes = hasRecipe ? [/y?[gvd]o?y?i/, /iy?[gvd]/] : [/y[gvd]o?i/];
  for (const shape of shapes) {
    const found = findShape(board, shape);
    const items = found ? board.items.slice(found.from, found.to) : [];
    const item = items.find((each) => each.letter === 'i');
    const amount = items.find((each) => each.value !== undefined);
    if (!found || !item || !amount || !(hasRecipe || standsTwice(board, item))) continue;
    take(board, found.from, found.to);
    return { item, amount };
  }
  return hasRecipe ? takeWhatIsLeft(board) : undefined;
};

/** "The beeswax is nearly gone, 48 g left": the one amount, of the one ingredient. */
const takeWhatIsLeft = (board: Board): { item: Item; amount: Item } | undefined => {
  const [item, another] = free(board).filter(({ letter }) => letter === 'i');
  const [amount, second] = free(board).filter(({ letter }) => /[gvd]/.test(letter));
  const next = amount && board.items[board.items.indexOf(amount) + 1]?.word;
  if (!item || another || !amount || second || !/^(?:left|remaining|over)$/.test(next ?? ''))
    return undefined;
  for (const one of [item, amount]) takeItem(board, one);
  return { item, amount };
};

/** In a written-out recipe the ingredient one has so much of is named a second time, in its own line. */
const standsTwice = (board: Board, item: Item): boolean =>
  free(board).filter((other) => other.letter === 'i' && other.ingredients?.[0] === item.ingredients?.[0])
    .length > 1;

/** The one mass or volume nobody else claimed: "to 500 g". */
export const takeTotal = (board: Board, settings: Settings): Size | undefined => {
  const amounts = free(board).filter((item) => item.letter === 'g' || item.letter === 'v');
  const [item] = amounts;
  if (!item || amounts.length > 1) return undefined;
  takeItem(board, item);
  return sizeOf(item, settings.region);
};

/** Where a total may stand around a written-out recipe. */
const inlineTotals: readonly RegExp[] = [
  /[TF>]y?[gv](?!o?i)/, // 50 g olive oil to 500 g, … -> 500 g
  /b[oFW]?[gv](?!o?i)/, // a batch of 500 g
  /[gv](?=b)/, // a 500 g batch
  /[gv](?=[oW:\n]+[%pnrgv])/, // 500 g of 20 % beeswax …
];

/** "olive oil to 100 g": the only amount in its clause, so it says what the oil fills up to. */
const fillsUp = (board: Board, from: number): boolean => {
  // A ratio or "equal parts" is a whole recipe already, and "the rest" needs no figure.
  if (board.items.some((item) => item.letter === 'r') || saysEqual(board.items)) return false;
  let hasName = false;
  for (let index = from - 1; index >= 0 && !board.taken[index]; index -= 1) {
    const letter = board.items[index]?.letter ?? ',';
    if (/[,;\nA]/.test(letter)) break;
    if (/[gvd%pnQ]/.test(letter)) return false;
    hasName ||= letter === 'i';
  }
  return hasName;
};

/** Takes the total beside a written-out recipe, where the recipe's own amounts must be left alone. */
export const takeInlineTotal = (board: Board, settings: Settings): Size | undefined => {
  for (const shape of inlineTotals) {
    const match = shape.exec(shapeOf(board));
    if (!match || fillsUp(board, match.index)) continue;
    const items = take(board, match.index, match.index + match[0].length);
    const amount = items.find((item) => item.letter === 'g' || item.letter === 'v');
    if (amount) return sizeOf(amount, settings.region);
  }
  return undefined;
};

const wholeTrouble = (count: Item | undefined): Trouble | undefined => {
  if (count?.value === undefined || (Number.isInteger(count.value) && count.value >= 1)) return undefined;
  return badQuantity(
    'The number of containers has to be a whole number of at least one, for example "24 tins of 15 ml".',
  );
};

/** Takes containers or, failing a count, a multiple. */
export const takeCountOrMultiple = (board: Board, settings: Settings): TargetAndTrouble => {
  const { count, size } = takeContainers(board);
  const fill = size && sizeOf(size, settings.region);
  const factor = count ? undefined : takeMultiple(board);
  const trouble = wholeTrouble(count);
  return {
    ...(trouble ? { trouble } : {}),
    target: {
      ...(count?.value === undefined ? {} : { count: count.value }),
      ...(fill ? { size: fill } : {}),
      ...(factor === undefined ? {} : { factor }),
    },
  };
};

/** A lone number after a scale answer: "and 40?", "make it 40". */
export const takeLoneCount = (board: Board): TargetAndTrouble => {
  const numbers = free(board).filter((item) => item.letter === 'n');
  const [item] = numbers;
  if (!item || item.value === undefined || numbers.length > 1) return { target: {} };
  takeItem(board, item);
  const trouble = wholeTrouble(item);
  return { ...(trouble ? { trouble } : {}), target: { count: item.value } };
};

export const asTotal = (size: Size | undefined): TargetRead => {
  if (!size) return {};
  return size.unit === 'g' ? { totalG: size.amount } : { totalMl: size.amount };
};
