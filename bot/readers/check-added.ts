import { defined } from '../../core/defined.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import { gramsIn, isMassUnit } from '../../core/units.ts';
import type { Reading } from '../reading.ts';
import { goesOn } from './check-forms.ts';
import { checkWords } from './check-words.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { type Board, boardOf, findShape, take } from './target.ts';

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

interface LastLook {
  readonly request: Readonly<Record<string, unknown>>;
  readonly ingredient: string;
  readonly amount?: RecipeLine;
}

/** The last look, where it was at one thing: by itself or as a share of a balm. */
const lastOfOne = ({ last }: Reading): LastLook | undefined => {
  if (last?.topic !== 'check') return undefined;
  const { ingredient, lines } = last.request;
  if (typeof ingredient === 'string') return { request: last.request, ingredient };
  const [only, second] = Array.isArray(lines) ? (lines as readonly RecipeLine[]) : [];
  return only && !second ? { request: last.request, ingredient: only.ingredient, amount: only } : undefined;
};

/** Of two things by one name the one of the kind that was asked about before; the cold-pressed oil of two. */
const sameKind = (item: Item, before: string): string | undefined => {
  const ids = item.ingredients ?? [];
  const kind = ingredientById(before)?.kind;
  const alike = ids.filter((id) => ingredientById(id)?.kind === kind);
  return ids.length === 1 ? ids[0] : alike.length === 1 ? alike[0] : undefined;
};

/** "Spearmint?": a name and nothing else. */
const isAlone = (items: readonly Item[]): boolean => items.every(({ letter }) => /^[i%?.!]$/.test(letter));

/** "What about 0.2 %?", "and for sweet orange oil?" after a look at one thing: the same with another share, or of another. */
export const otherShare = (
  reading: Reading,
  items: readonly Item[],
): Readonly<Record<string, unknown>> | undefined => {
  const last = lastOfOne(reading);
  const [share, more] = items.filter(({ letter }) => letter === '%');
  const [name, second] = items.filter(({ letter }) => letter === 'i');
  if (
    !last ||
    more ||
    second ||
    (!share && !name) ||
    items.length > 8 ||
    !(goesOn.test(reading.text) || isAlone(items))
  )
    return undefined;
  if (
    items.some(
      (item) =>
        /[Rgvcd]/.test(item.letter) ||
        (/[zH]/.test(item.letter) && !/^(?:instead|better|worse)$/.test(item.word)),
    )
  )
    return undefined;
  const board = boardOf(items.filter((item) => item !== share && item !== name));
  if (leftover(board, followWords, false).blocking.length > 0) return undefined;
  const ingredient = name ? sameKind(name, last.ingredient) : last.ingredient;
  if (ingredient === undefined) return undefined;
  const { region, on, wearer, use, batchG } = last.request;
  const besides = defined({ region, on, wearer, use, batchG });
  const line = share?.value === undefined ? last.amount : { amount: share.value, unit: 'percent' as const };
  return line ? { ...besides, lines: [{ ...line, ingredient }] } : { ...besides, ingredient };
};

const followWords = new Set([
  ...checkWords,
  'instead',
  'same',
  'better',
  'then',
  'if',
  'only',
  'even',
  'thing',
  'take',
  'takes',
  'put',
  'too',
]);
