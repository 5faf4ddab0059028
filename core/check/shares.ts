import { gramsOfLine } from '../grams.ts';
import { ingredientById, isAdditive } from '../ingredients.ts';
import type { RecipeLine } from '../recipe.ts';
import { type RecipeProblem, resolveRecipe } from '../resolve.ts';
import { fail, ok, type Result } from '../result.ts';
import type { Region } from '../settings.ts';
import { isVolumeUnit, mlIn } from '../units.ts';
import { type CheckLine, tidy } from './amounts.ts';
import { watchedThing } from './composition.ts';
import { isScent } from './other-findings.ts';

export interface Shares {
  readonly lines: readonly CheckLine[];
  readonly strained: readonly { readonly ingredient: string; readonly fresh?: boolean }[];
  /** Grams of the whole, where the recipe says so. */
  readonly batchG?: number;
  /** True where only some lines of a balm were named, with their share of it. */
  readonly partial: boolean;
}

export type ShareProblem =
  | RecipeProblem
  | { readonly code: 'no-batch-for-drops'; readonly ingredient: string };

/** Thin scents, about 30 drops and 0.9 g to the millilitre. */
const watchedDropsPerMl = 30;
const watchedGMl = 0.9;

/** The library knows no density of a watched thing: a spoon or drop of one is weighed by a usual figure. */
export const weighedIfWatched = (line: RecipeLine, region: Region): RecipeLine => {
  if (!watchedThing(line.ingredient) || !isVolumeUnit(line.unit)) return line;
  const aroma = isScent(line.ingredient);
  const ml = line.amount * mlIn(line.unit, region, aroma ? watchedDropsPerMl : undefined);
  return { ...line, unit: 'g', amount: tidy(ml * (aroma ? watchedGMl : 1)) };
};

const isSmall = ({ ingredient }: RecipeLine): boolean => {
  const found = ingredientById(ingredient);
  return isScent(ingredient) || watchedThing(ingredient) !== undefined || (found ? isAdditive(found) : false);
};

const checkLine = (line: RecipeLine, percent: number): CheckLine => ({
  ingredient: line.ingredient,
  percent: tidy(percent),
  ...(line.infusedWith ? { infusedWith: line.infusedWith } : {}),
  ...(line.fresh ? { fresh: true } : {}),
});

const herbsAmong = (lines: readonly RecipeLine[]): Shares['strained'] =>
  lines
    .filter(({ strained }) => strained)
    .map(({ ingredient, fresh }) => ({ ingredient, ...(fresh ? { fresh } : {}) }));

/** "2 % peppermint oil in a lip balm": a few lines by their share, the rest of the balm not named. */
const percentOnly = (lines: readonly RecipeLine[]): Shares | undefined => {
  if (!lines.every(({ unit }) => unit === 'percent')) return undefined;
  const sum = lines.reduce((all, { amount }) => all + amount, 0);
  if (sum > 99.5 || (lines.length > 1 && !lines.every(isSmall))) return undefined;
  return {
    lines: lines.filter(({ strained }) => !strained).map((line) => checkLine(line, line.amount)),
    strained: herbsAmong(lines),
    partial: true,
  };
};

/** "9 drops of lemon oil in 100 g". */
const ofBatch = (
  lines: readonly RecipeLine[],
  batchG: number,
  region: Region,
): Result<Shares, ShareProblem> => {
  const checked: CheckLine[] = [];
  for (const line of lines) {
    const grams = gramsOfLine(line, region);
    if (grams && !grams.ok) return grams;
    const percent = grams ? (grams.value.grams / batchG) * 100 : line.amount;
    if (!line.strained) checked.push(checkLine(line, percent));
  }
  return ok({ lines: checked, strained: herbsAmong(lines), batchG, partial: true });
};

const dropsAlone = (lines: readonly RecipeLine[]): RecipeLine | undefined =>
  lines.every(isSmall) ? lines.find(({ unit }) => isVolumeUnit(unit)) : undefined;

/**
 * What share of the balm each line is. A whole recipe goes through the same sums as weighing does; a few scents or
 * additives by percent, or in a batch of `batchG` grams, are taken as part of a balm.
 */
export const sharesOfLines = (
  written: readonly RecipeLine[],
  region: Region,
  batchG?: number,
): Result<Shares, ShareProblem> => {
  const lines = written.map((line) => weighedIfWatched(line, region));
  const part = percentOnly(lines);
  if (part) return ok({ ...part, ...(batchG ? { batchG } : {}) });
  if (batchG) return ofBatch(lines, batchG, region);
  const drops = dropsAlone(written);
  if (drops) return fail({ code: 'no-batch-for-drops', ingredient: drops.ingredient });
  const resolved = resolveRecipe(lines, region);
  if (!resolved.ok) return resolved;
  const whole = resolved.value.lines.reduce((sum, { weight }) => sum + weight, 0);
  return ok({
    lines: resolved.value.lines.map((line) => ({
      ingredient: line.ingredient,
      percent: tidy((line.weight / whole) * 100),
      ...(line.infusedWith ? { infusedWith: line.infusedWith } : {}),
      ...(line.fresh ? { fresh: true } : {}),
    })),
    strained: resolved.value.strained.map(({ ingredient, fresh }) => ({
      ingredient,
      ...(fresh ? { fresh } : {}),
    })),
    ...(resolved.value.batchG === undefined ? {} : { batchG: resolved.value.batchG }),
    partial: false,
  });
};
