import { ingredientById } from '../../core/ingredients.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import { gramsIn, isMassUnit } from '../../core/units.ts';
import type { Reading } from '../reading.ts';
import { type Board, findShape, take } from './target.ts';

/** Percent of each line of a recipe in weights or percent; undefined where a line is in spoons or parts. */
const percents = (lines: readonly RecipeLine[]): readonly RecipeLine[] | undefined => {
  const weights = lines.map(({ amount, unit }) =>
    unit === 'percent' ? amount : isMassUnit(unit) ? amount * gramsIn(unit) : undefined,
  );
  const mixed = new Set(lines.map(({ unit }) => unit === 'percent')).size > 1;
  if (mixed || weights.includes(undefined)) return undefined;
  const total = weights.reduce<number>((sum, weight) => sum + (weight ?? 0), 0);
  return total > 0
    ? lines.map((line, at) => ({ ...line, amount: (100 * (weights[at] ?? 0)) / total, unit: 'percent' }))
    : undefined;
};

/** A recipe with something put into it. */
export interface Added {
  readonly lines: readonly RecipeLine[];
  readonly assumed: string;
}

/** "R with 0.3 % sweet orange oil": the recipe with that share of it, the rest making room. */
export const takeAdded = (board: Board, reading: Reading, recipe: string): Added | undefined => {
  const found = findShape(board, /%[oy]?i/) ?? findShape(board, /i[-:IT]?%/);
  const saved = reading.recipes.exact(recipe);
  const items = found ? board.items.slice(found.from, found.to) : [];
  const share = items.find(({ letter }) => letter === '%')?.value;
  const [id, second] = items.find(({ letter }) => letter === 'i')?.ingredients ?? [];
  if (!found || !saved || !id || second !== undefined || !share || share >= 100) return undefined;
  const base = percents(saved.lines);
  if (!base) return undefined;
  take(board, found.from, found.to);
  const rest = base.map((line) => ({
    ...line,
    amount: Number(((line.amount * (100 - share)) / 100).toFixed(6)),
  }));
  return {
    lines: [...rest, { ingredient: id, amount: share, unit: 'percent' }],
    assumed: `I put ${share} % ${ingredientById(id)?.name ?? id} into ${saved.name}; its other lines make room.`,
  };
};

/** "What about 0.2 %?" after a look at a share of one thing: the same with another share. */
export const otherShare = (reading: Reading): Readonly<Record<string, unknown>> | undefined => {
  const { items, last, text } = reading;
  const lines = last?.topic === 'check' ? last.request.lines : undefined;
  const [only, second] = Array.isArray(lines) ? (lines as readonly RecipeLine[]) : [];
  const [share, more] = items.filter(({ letter }) => letter === '%');
  if (!only || second || share?.value === undefined || more || items.length > 6) return undefined;
  if (!/^\W*(?:and|what about|how about|what if|or|then|ok|is|only|at|with|would|so)\b/i.test(text))
    return undefined;
  if (items.some(({ letter }) => /[iRgvczZH]/.test(letter))) return undefined;
  return { ...last?.request, lines: [{ ...only, amount: share.value, unit: 'percent' }] };
};
