import { ingredientById, isFat } from '../ingredients.ts';
import type { RecipeLine } from '../recipe.ts';
import { fail, ok, type Result } from '../result.ts';
import { scaleRecipe } from '../scale.ts';
import type { Region } from '../settings.ts';

/** A herb one of a recipe's oils is to be infused with. */
export interface InfusionWish {
  readonly herb: string;
  /** The oil; where it is not given, the largest liquid one. */
  readonly oil?: string | undefined;
  /** Parts of oil to one part of dried herb, by weight. */
  readonly ratio?: number | undefined;
}

export type InfusedLinesProblem =
  | { readonly code: 'oil-not-in-recipe'; readonly oils: readonly string[] }
  | { readonly code: 'no-oil-line' };

export interface InfusedLines {
  readonly lines: readonly RecipeLine[];
  readonly oil: string;
  /** The oil was not named, and there were others: the largest was taken. */
  readonly chosen: boolean;
}

const isLiquidOil = (ingredient: string): boolean => {
  const found = ingredientById(ingredient);
  return found !== undefined && isFat(found) && /^liquid/.test(found.form);
};

/** Liquid oils of a recipe, largest share first; in the order of its lines where it cannot be scaled. */
const oilsOf = (lines: readonly RecipeLine[], region: Region): readonly string[] => {
  const target = { kind: 'mass', grams: 1000 } as const;
  const scaled = scaleRecipe({ lines: [...lines], target, lossPercent: 0, stepG: 0.001, region });
  const sized = scaled.ok ? scaled.value.lines.toSorted((a, b) => b.grams - a.grams) : lines;
  return [...new Set(sized.map(({ ingredient }) => ingredient))].filter(isLiquidOil);
};

/** The recipe with one of its oils marked as infused with the herb. */
export const withInfusion = (
  lines: readonly RecipeLine[],
  { herb, oil }: InfusionWish,
  region: Region,
): Result<InfusedLines, InfusedLinesProblem> => {
  const oils = oilsOf(lines, region);
  const [largest] = oils;
  if (largest === undefined) return fail({ code: 'no-oil-line' });
  if (oil !== undefined && !oils.includes(oil)) return fail({ code: 'oil-not-in-recipe', oils });
  const taken = oil ?? largest;
  return ok({
    lines: lines.map((line) => (line.ingredient === taken ? { ...line, infusedWith: herb } : line)),
    oil: taken,
    chosen: oil === undefined && oils.length > 1,
  });
};
