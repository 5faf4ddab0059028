import type { Ingredient } from '../data/ingredient.ts';
import { ingredientById } from '../ingredients.ts';
import { fail, ok, type Result } from '../result.ts';
import { type CrystalState, type Mixture, type MixturePart, mixtureOf } from './composition.ts';
import { type Freezing, freezingOf } from './freezing.ts';
import { type LeftOutReason, type TakenBy, type Treatment, treatmentOf } from './treatment.ts';

/** A line as the recipe resolver gives it; `weight` is in any one unit. */
export interface BlendLine {
  readonly ingredient: string;
  readonly weight: number;
}

export type BlendProblem =
  | { readonly code: 'no-lines' }
  | { readonly code: 'bad-weight'; readonly ingredient: string; readonly weight: number }
  | { readonly code: 'unknown-ingredient'; readonly ingredient: string }
  /** Known to the library, but nobody has melting figures that fit: refused by name, never taken for its neighbour. */
  | { readonly code: 'no-melting-data'; readonly ingredients: readonly string[] }
  /** Powders, herbs and water only. */
  | { readonly code: 'nothing-melts'; readonly leftOut: readonly LeftOut[] };

export interface LeftOut {
  readonly ingredient: string;
  /** Percent of the whole recipe. */
  readonly percent: number;
  readonly why: LeftOutReason;
}

/** One ingredient that melts in, with its share of all that does. */
export interface BlendPart extends MixturePart {
  readonly ingredient: Ingredient;
  readonly by: TakenBy;
  readonly like: string;
}

/** A recipe prepared for melting sums; everything in it is for one gram of what melts. */
export interface Blend {
  readonly parts: readonly BlendPart[];
  readonly leftOut: readonly LeftOut[];
  readonly mixture: Mixture;
  readonly freezing: Readonly<Record<CrystalState, Freezing>>;
}

type Melting = Extract<Treatment, { kind: 'melts' }>;

interface Sorted {
  readonly melting: readonly { ingredient: Ingredient; weight: number; treatment: Melting }[];
  readonly leftOut: readonly LeftOut[];
}

const checkWeights = (lines: readonly BlendLine[]): Result<number, BlendProblem> => {
  if (lines.length === 0) return fail({ code: 'no-lines' });
  const bad = lines.find(({ weight }) => !Number.isFinite(weight) || weight < 0);
  if (bad) return fail({ code: 'bad-weight', ...bad });
  const total = lines.reduce((sum, line) => sum + line.weight, 0);
  const first = lines[0];
  if (!Number.isFinite(total) && first) return fail({ code: 'bad-weight', ...first });
  return total > 0 ? ok(total) : fail({ code: 'no-lines' });
};

const sortOut = (lines: readonly BlendLine[], total: number): Result<Sorted, BlendProblem> => {
  const melting: { ingredient: Ingredient; weight: number; treatment: Melting }[] = [];
  const leftOut: LeftOut[] = [];
  const noData: string[] = [];
  for (const { ingredient: id, weight } of lines) {
    const ingredient = ingredientById(id);
    if (!ingredient) return fail({ code: 'unknown-ingredient', ingredient: id });
    const treatment = treatmentOf(ingredient);
    if (weight === 0) continue;
    if (treatment.kind === 'no-data') noData.push(ingredient.id);
    else if (treatment.kind === 'melts') melting.push({ ingredient, weight, treatment });
    else leftOut.push({ ingredient: ingredient.id, percent: (100 * weight) / total, why: treatment.why });
  }
  if (noData.length > 0) return fail({ code: 'no-melting-data', ingredients: [...new Set(noData)] });
  if (melting.length === 0) return fail({ code: 'nothing-melts', leftOut });
  return ok({ melting, leftOut });
};

/** Prepares parts whose shares add up to 1; for recipes from the library use {@link blendOf}. */
export const blendOfParts = (parts: readonly BlendPart[], leftOut: readonly LeftOut[] = []): Blend => {
  const mixture = mixtureOf(parts);
  return {
    parts,
    leftOut,
    mixture,
    freezing: { aged: freezingOf(mixture, 'aged'), fresh: freezingOf(mixture, 'fresh') },
  };
};

/**
 * Prepares a recipe for melting sums. Weights are normalised; lines of weight 0 count as absent; powders, herbs and
 * water-based things are left out of the percentages and listed. An ingredient without melting figures is a problem.
 */
export const blendOf = (lines: readonly BlendLine[]): Result<Blend, BlendProblem> => {
  const total = checkWeights(lines);
  if (!total.ok) return total;
  const sorted = sortOut(lines, total.value);
  if (!sorted.ok) return sorted;
  const { melting, leftOut } = sorted.value;
  const sum = melting.reduce((all, { weight }) => all + weight, 0);
  const parts = melting.map(({ ingredient, weight, treatment }) => ({
    ingredient,
    share: weight / sum,
    composition: treatment.composition,
    by: treatment.by,
    like: treatment.like,
  }));
  return ok(blendOfParts(parts, leftOut));
};
