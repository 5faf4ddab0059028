import type { Herb } from '../data/ingredient.ts';
import { ingredientById, isFat, isHerb } from '../ingredients.ts';
import type { RecipeLine } from '../recipe.ts';
import { fail, ok, type Result } from '../result.ts';
import { type Scaled, type ScaledLine, type ScaleProblem, type ScaleRequest, scaleRecipe } from '../scale.ts';
import { type InfuseProblem, type Infusion, infuse } from './infuse.ts';
import { uptakeFor, usualRatio } from './uptake.ts';
import type { Yields } from './yields.ts';

/** A recipe made with infused oil: what is scaled, and how its oil is infused. */
export interface ChainRequest {
  readonly scale: ScaleRequest;
  /** The herb; where it is not given, the one that the recipe's own oil line is infused with. */
  readonly herb?: string;
  /** Which line is infused; where it is not given, the line that says so, or the largest liquid oil. */
  readonly oil?: string;
  readonly ratio?: number;
  readonly yields?: Yields;
}

export type ChainProblem =
  | ScaleProblem
  | InfuseProblem
  /** No liquid oil in the recipe to infuse. */
  | { readonly code: 'no-oil-line' }
  | { readonly code: 'no-herb' };

/**
 * From herb to tins. Two named losses: `infusion.uptakeG` of oil stays in herb and cloth, `scaled.allowanceG` in jug
 * and spoon. All oil and the other lines together less these two are what the tins hold.
 */
export interface Chain {
  readonly scaled: Scaled;
  readonly line: ScaledLine;
  readonly herb: Herb;
  readonly infusion: Infusion;
  /** The recipe's lines with the infused one marked, as they are weighed out. */
  readonly lines: readonly RecipeLine[];
  /** The oil was not named, and there were others: the largest was taken. */
  readonly oilChosen: boolean;
}

const isLiquidOil = ({ ingredient }: { readonly ingredient: string }): boolean => {
  const found = ingredientById(ingredient);
  return found !== undefined && isFat(found) && /^liquid/.test(found.form);
};

interface Picked {
  readonly line: ScaledLine;
  readonly chosen: boolean;
}

const pickLine = (scaled: Scaled, oil: string | undefined): Result<Picked, ChainProblem> => {
  if (oil !== undefined) {
    const line = scaled.lines.find((each) => each.ingredient === oil);
    return line ? ok({ line, chosen: false }) : fail({ code: 'not-in-recipe', ingredient: oil });
  }
  const marked = scaled.lines.find((line) => line.infusedWith !== undefined);
  if (marked) return ok({ line: marked, chosen: false });
  const oils = scaled.lines.filter(isLiquidOil).toSorted((a, b) => b.grams - a.grams);
  const [line] = oils;
  return line ? ok({ line, chosen: oils.length > 1 }) : fail({ code: 'no-oil-line' });
};

const herbRow = (id: string | undefined): Herb | undefined => {
  const found = id === undefined ? undefined : ingredientById(id);
  return found && isHerb(found) ? found : undefined;
};

/** Scales the recipe, then works back from its oil line to the herb and the oil to set aside. */
export const chainOf = (request: ChainRequest): Result<Chain, ChainProblem> => {
  const scaled = scaleRecipe(request.scale);
  if (!scaled.ok) return scaled;
  const picked = pickLine(scaled.value, request.oil);
  if (!picked.ok) return picked;
  const { line, chosen } = picked.value;
  const herb = herbRow(request.herb ?? line.infusedWith);
  if (!herb) return fail({ code: 'no-herb' });
  const infusion = infuse({
    oilOutG: line.grams,
    ...(request.ratio === undefined ? {} : { ratio: request.ratio }),
    usualRatio: usualRatio(herb).middle,
    uptake: uptakeFor(herb, request.yields),
    stepG: request.scale.stepG,
  });
  if (!infusion.ok) return infusion;
  const isInfused = (each: { ingredient: string; infusedWith?: string | undefined }): boolean =>
    each.ingredient === line.ingredient && each.infusedWith === line.infusedWith;
  return ok({
    scaled: scaled.value,
    line,
    herb,
    infusion: infusion.value,
    lines: request.scale.lines.map((each) =>
      isInfused(each) && !each.strained ? { ...each, infusedWith: herb.id } : each,
    ),
    oilChosen: chosen,
  });
};
