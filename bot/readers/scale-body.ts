import { defined } from '../../core/defined.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import { gramsIn, isMassUnit } from '../../core/units.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';
import { readLines } from './lines.ts';
import { asTotal, type TargetRead, takeInlineTotal, takeTotal } from './scale-target.ts';
import { type Board, free, type Size, sizeOf } from './target.ts';

/** The recipe's side of a scale request: its lines if it is written out, and the total beside them. */
export interface Body {
  readonly lines: readonly RecipeLine[];
  readonly total: TargetRead;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

/** A recipe's written grams, as far as all lines have them. */
const gramsWritten = (lines: readonly RecipeLine[]): number =>
  lines.reduce(
    (sum, line) => sum + (isMassUnit(line.unit) ? line.amount * gramsIn(line.unit) : Number.NaN),
    0,
  );

/** "Total 100 g" under lines of 100 g is their sum; "200 g total" under other lines is what to make. */
const wantedTotal = (
  total: Item | undefined,
  lines: readonly RecipeLine[],
  reading: Reading,
): Size | undefined => {
  if (total?.letter !== 'g') return undefined;
  const size = sizeOf(total, reading.settings.region);
  const written = gramsWritten(lines);
  return size && Math.abs(size.amount - written) <= written * 0.02 ? undefined : size;
};

/** A written-out recipe: everything not yet taken, read as lines; what fits no line is put back on the board. */
const takeLines = (board: Board, reading: Reading, counted: boolean): Body => {
  const outside = takeInlineTotal(board, reading.settings);
  const read = readLines(free(board));
  if (read.lines.length === 0 && !read.trouble) return { lines: [], total: asTotal(outside), assumed: [] };
  for (const [index, item] of board.items.entries()) {
    if (!read.loose.includes(item)) board.taken[index] = true;
  }
  const late = outside ?? takeTotal(board, reading.settings);
  const total = late ?? (counted ? undefined : wantedTotal(read.total, read.lines, reading));
  return {
    lines: read.lines,
    total: asTotal(total),
    assumed: read.assumed,
    ...defined({ trouble: read.trouble }),
  };
};

const hasInlineRecipe = (board: Board): boolean => {
  const letters = free(board).map((item) => item.letter);
  const names = letters.filter((letter) => letter === 'i').length;
  return names > 1 || (names === 1 && letters.some((letter) => /[gvd%pnrQ]/.test(letter)));
};

/** Reads the recipe's side off the board. `named`: a saved recipe was named; `counted`: containers were. */
export const takeBody = (board: Board, reading: Reading, named: boolean, counted: boolean): Body => {
  if (!named && hasInlineRecipe(board)) return takeLines(board, reading, counted);
  return { lines: [], total: asTotal(takeTotal(board, reading.settings)), assumed: [] };
};
