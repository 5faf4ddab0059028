import { type Region, type ScaleStep, scaleSteps } from '../../core/settings.ts';
import { gramsIn, isMassUnit, isVolumeUnit, type MassUnit, mlIn } from '../../core/units.ts';
import type { Item } from './item.ts';

/** Items of a message with a note of which are already spoken for. Their letters make the shape that is searched. */
export interface Board {
  readonly items: readonly Item[];
  readonly taken: boolean[];
}

export const boardOf = (items: readonly Item[]): Board => ({
  items,
  taken: items.map(() => false),
});

/** Letters of the items, `_` for those that are taken. */
export const shapeOf = (board: Board): string =>
  board.items.map((item, index) => (board.taken[index] ? '_' : item.letter)).join('');

export const free = (board: Board): readonly Item[] => board.items.filter((_, index) => !board.taken[index]);

/** Finds a shape; the letters it matched stand as items at `from` to `to`. */
export const findShape = (
  board: Board,
  shape: RegExp,
): { readonly from: number; readonly to: number } | undefined => {
  const match = shape.exec(shapeOf(board));
  return match ? { from: match.index, to: match.index + match[0].length } : undefined;
};

export const take = (board: Board, from: number, to: number): readonly Item[] => {
  const items: Item[] = [];
  for (let index = from; index < to; index += 1) {
    const item = board.items[index];
    if (item && !board.taken[index]) items.push(item);
    board.taken[index] = true;
  }
  return items;
};

/** Finds a shape and takes its items. */
export const takeShape = (board: Board, shape: RegExp): readonly Item[] | undefined => {
  const found = findShape(board, shape);
  return found ? take(board, found.from, found.to) : undefined;
};

export interface Size {
  readonly amount: number;
  readonly unit: 'g' | 'ml';
}

/** A mass in grams or a volume in millilitres, whatever it was written in. */
export const sizeOf = (item: Item, region: Region): Size | undefined => {
  const { unit, value } = item;
  if (unit === undefined || value === undefined) return undefined;
  if (isMassUnit(unit)) return { amount: value * gramsIn(unit), unit: 'g' };
  return isVolumeUnit(unit) ? { amount: value * mlIn(unit, region), unit: 'ml' } : undefined;
};

export interface ContainersRead {
  readonly count?: Item;
  readonly size?: Item;
  readonly container?: string;
}

/**
 * The ways makers write a number of containers and what each holds, most telling first. `B` is "lip balm" and the
 * like in between; what may stand between count and size is punctuation and small words.
 */
const containerShapes: readonly RegExp[] = [
  /n[xo]?B*c[,(:=\-@IWoAF\n]*[gv](?!o?i)\)?B*e?\)?/, // 24 tins of 15 ml each
  /nx?[o(-]?-?[gv]-?\)?B*ce?/, // 24 15 ml tins, 24 x 15 ml tins
  /n[x*][gv](?!o?i)e?/, // 24x15ml
  /[gv]-?B*c[,;:(]?[x*]?nB*\)?(?![gv%dpti])/, // 15 ml tins x 24
  /[gv][x*]n(?![gv%dpti])/, // 15 ml x 24
  /c[:=-]nx?[,;\nA]*w?[:=-]?[gv](?!o?i)e?/, // tins: 24, size: 15 ml
];

const splitShapes: readonly RegExp[] = [
  /nx?B*c(?=[oIFW]*R?[,;(@IWoF-]*[gv]e?c?)/, // 24 tins of NAME, 15 ml each
  /nB*c/,
  /n(?=RB*c)/, // 80 NAME tubes
  /n(?=R[,;(@IWoF-]*[gv](?:B*c|e))/, // 24 NAME in 15 ml tins
];

const partOf = (items: readonly Item[]): ContainersRead => {
  const count = items.find((item) => item.letter === 'n');
  const size = items.find((item) => item.letter === 'g' || item.letter === 'v');
  const container = items.find((item) => item.letter === 'c')?.word;
  return {
    ...(count ? { count } : {}),
    ...(size ? { size } : {}),
    ...(container ? { container } : {}),
  };
};

const takeSize = (board: Board): Item | undefined => {
  const items =
    takeShape(board, /e[gv]/) ??
    takeShape(board, /[gv]-?B*ce?/) ??
    takeShape(board, /[gv]e/) ??
    takeShape(board, /c[o,(:=-]*[gv](?!o?i)/);
  return items?.find((item) => item.letter === 'g' || item.letter === 'v');
};

/** Takes count and size of the containers off the board, whether they stand together or apart. */
export const takeContainers = (board: Board): ContainersRead => {
  for (const shape of containerShapes) {
    const items = takeShape(board, shape);
    if (items) return partOf(items);
  }
  for (const shape of splitShapes) {
    const items = takeShape(board, shape);
    if (!items) continue;
    const size = takeSize(board);
    return { ...partOf(items), ...(size ? { size } : {}) };
  }
  const size = takeSize(board);
  if (!size) return {};
  const count = takeShape(board, /n(?=o|$|[?.!,])/)?.[0]; // 15 ml tins of NAME, 24 of them
  return { size, ...(count ? { count } : {}) };
};

/** "no loss", "loss 5 %", "allow 5 % for waste": percent that stays behind, or undefined when nothing is said. */
export const takeLoss = (board: Board): number | undefined => {
  if (takeShape(board, /W?N[oB]*L+/)) return 0;
  const items =
    takeShape(board, /L[:=oITF-]*[%n]/) ??
    takeShape(board, /W?[%n][oFI-]*L/) ??
    takeShape(board, /W?%(?=w*$)(?<=W%)/);
  return items?.find((item) => item.letter === '%' || item.letter === 'n')?.value;
};

const stepWords = new Set(
  'nearest whole reads read step steps accuracy accurate precise precision resolution rounded round rounding readable increments weighs'.split(
    ' ',
  ),
);

/** The step an item names: "0.01 g", "10 mg", or the bare word "gram". */
const stepOf = (item: Item): ScaleStep | undefined => {
  if (!isMassUnit(item.unit ?? '') || (item.letter !== 'g' && item.letter !== 'u')) return undefined;
  const grams = Number(((item.value ?? 1) * gramsIn(item.unit as MassUnit)).toFixed(6));
  return scaleSteps.find((step) => step === grams);
};

/** "to the nearest 0.01 g", "my scale reads 0.1 g", "to the nearest gram". */
export const takeStep = (board: Board): ScaleStep | undefined => {
  const cue = board.items.findIndex((item, index) => !board.taken[index] && stepWords.has(item.word));
  if (cue < 0) return undefined;
  for (const index of [cue + 1, cue + 2, cue - 1, cue - 2]) {
    const item = board.items[index];
    const step = item && !board.taken[index] ? stepOf(item) : undefined;
    if (step === undefined) continue;
    take(board, Math.min(cue, index), Math.max(cue, index) + 1);
    return step;
  }
  return undefined;
};

/** "double", "half", "x 3", "3 times", "2 batches", "by 1.5": the factor, or undefined. */
export const takeMultiple = (board: Board): number | undefined => {
  const word = takeShape(board, /M/);
  if (word) return word[0]?.value;
  const times = board.items.findIndex(
    (item, at) => item.word === 'times' && board.items[at - 1]?.letter === 'n',
  );
  if (times > 0) return take(board, times - 1, times + 1)[0]?.value;
  const items =
    takeShape(board, /[x*]n(?![gv%dpti])/) ??
    takeShape(board, /n[x*](?![gvi])/) ??
    takeShape(board, /n[oy]*b(?!o)/) ??
    takeFraction(board);
  return items?.find((item) => item.letter === 'n')?.value;
};

const takeFraction = (board: Board): readonly Item[] | undefined => {
  const at = board.items.findIndex(
    (item, index) => item.fraction && item.letter === 'n' && !board.taken[index],
  );
  return at < 0 ? undefined : take(board, at, at + 1);
};
