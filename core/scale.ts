import { type BlendDensity, blendDensity } from './density.ts';
import { dropsPerMl } from './grams.ts';
import { ingredientById, isAroma, isSmallDose } from './ingredients.ts';
import { keptFor } from './kept.ts';
import type { RecipeLine } from './recipe.ts';
import { type RecipeProblem, type Resolved, resolveRecipe } from './resolve.ts';
import { fail, ok, type Result } from './result.ts';
import type { Region, ScaleStep } from './settings.ts';
import { shareOut } from './share.ts';
import { gramsOfSteps, stepsNearest } from './steps.ts';
import { checkSize, planFor, type ScaleProblem, type ScaleRequest } from './target.ts';
import { leastWeighableG } from './weighing.ts';

export type { Fill, ScaleProblem, ScaleRequest, Target } from './target.ts';

export interface ScaledLine {
  readonly ingredient: string;
  /** Percent by weight of what goes into the containers. */
  readonly percent: number;
  /** Whole steps of the scale; all lines together make the total. */
  readonly grams: number;
  /** For aroma only, about: 30 drops to the ml, and bottles differ from 20 to 40. */
  readonly drops?: number;
  readonly infusedWith?: string;
  readonly fresh?: boolean;
}

/** A line that the scale cannot tell well enough, with what the recipe asks for and what the scale needs. */
export interface TooSmall {
  readonly ingredient: string;
  readonly wantedG: number;
  readonly leastG: number;
  /** True when the line came out under one step of the scale and was given one step. */
  readonly raised: boolean;
}

export interface Scaled {
  readonly lines: readonly ScaledLine[];
  readonly strained: readonly {
    readonly ingredient: string;
    readonly grams: number;
    readonly fresh?: boolean;
  }[];
  readonly totalG: number;
  readonly netG: number;
  readonly allowanceG: number;
  readonly lossPercent: number;
  readonly stepG: ScaleStep;
  readonly densityGMl: number;
  readonly densityUnknown: readonly string[];
  readonly containers?: number;
  readonly fillGEach?: number;
  readonly tooSmall: readonly TooSmall[];
  readonly resolved: Resolved;
}

/** Rounded down, so that total ≥ net / (1 − loss) holds for the printed figures too, floating point and all. */
const netUnder = (netG: number, totalG: number, loss: number): number => {
  const down = Math.floor(netG * 1e4 + 1e-6) / 1e4;
  return down / (1 - loss) > totalG ? Math.round(down * 1e4 - 1) / 1e4 : down;
};

const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));

const drops = (ingredient: string, grams: number): number | undefined => {
  const found = ingredientById(ingredient);
  if (!found || !isAroma(found) || !found.densityGMl) return undefined;
  // A line that is weighed is at least a drop.
  return Math.max(1, Math.round((grams / found.densityGMl.value) * dropsPerMl(ingredient)));
};

// Written out field by field: copying an object and adding to it is many times slower.
const scaledLines = (
  { lines }: Resolved,
  percents: readonly number[],
  steps: readonly number[],
  stepG: ScaleStep,
): ScaledLine[] =>
  lines.map(({ ingredient, infusedWith, fresh }, index) => {
    const grams = gramsOfSteps(steps[index] ?? 0, stepG);
    const inDrops = drops(ingredient, grams);
    return {
      ingredient,
      ...(infusedWith === undefined ? {} : { infusedWith }),
      ...(fresh === undefined ? {} : { fresh }),
      percent: percents[index] ?? 0,
      grams,
      ...(inDrops === undefined ? {} : { drops: inDrops }),
    };
  });

const tooSmallLines = (
  resolved: Resolved,
  sum: number,
  totalG: number,
  stepG: ScaleStep,
  raised: readonly number[],
): TooSmall[] =>
  resolved.lines.flatMap((line, index) => {
    const found = ingredientById(line.ingredient);
    const leastG = leastWeighableG(stepG, found && isSmallDose(found) ? 'small' : 'bulk');
    const wantedG = (totalG * line.weight) / sum;
    return wantedG < leastG
      ? [
          {
            ingredient: line.ingredient,
            wantedG,
            leastG,
            raised: raised.includes(index),
          },
        ]
      : [];
  });

/** What a recipe comes to whatever it is scaled to. */
interface Prepared {
  readonly resolved: Resolved;
  readonly density: BlendDensity;
  /** All weights together. */
  readonly sum: number;
  /** Of each line. */
  readonly percents: readonly number[];
}

const prepare = (lines: readonly RecipeLine[], region: Region): Result<Prepared, RecipeProblem> => {
  const resolution = resolveRecipe(lines, region);
  if (!resolution.ok) return resolution;
  const resolved = resolution.value;
  const sum = resolved.lines.reduce((all, line) => all + line.weight, 0);
  const percents = resolved.lines.map(({ weight }) => rounded((100 * weight) / sum, 4));
  return ok({ resolved, density: blendDensity(resolved.lines), sum, percents });
};

// A saved recipe's lines are the same array until it is edited.
const byRegion = keptFor((_: readonly RecipeLine[]) => new Map<Region, ReturnType<typeof prepare>>());

const prepared = (lines: readonly RecipeLine[], region: Region): ReturnType<typeof prepare> => {
  const known = byRegion(lines);
  const recipe = known.get(region) ?? prepare(lines, region);
  known.set(region, recipe);
  return recipe;
};

/**
 * Scales a recipe to a target. Lines are whole steps of the scale and sum to the total; a container target weighs out
 * `net / (1 − loss)`, rounded up to the step; a mass, volume or multiple is the weigh-out itself, and what the loss
 * leaves of it is the net. Fill volumes use the set blend's density at 20 °C.
 */
export const scaleRecipe = (request: ScaleRequest): Result<Scaled, ScaleProblem> => {
  const recipe = prepared(request.lines, request.region);
  if (!recipe.ok) return recipe;
  const { resolved, density, sum, percents } = recipe.value;
  const plan = planFor(request, resolved, density.densityGMl);
  if (!plan.ok) return plan;
  const { stepG, lossPercent } = request;
  const { totalSteps, containers, fillGEach } = plan.value;
  const problem = checkSize(plan.value, resolved, stepG);
  if (problem) return fail(problem);
  const shares = shareOut(
    resolved.lines.map((line) => line.weight),
    totalSteps,
  );
  const totalG = gramsOfSteps(totalSteps, stepG);
  if (!shares.ok)
    return fail({
      code: 'batch-too-small',
      totalG,
      lines: resolved.lines.length,
      stepG,
    });
  const loss = lossPercent / 100;
  const netG = netUnder(plan.value.netG ?? totalG * (1 - loss), totalG, loss);
  return ok({
    lines: scaledLines(resolved, percents, shares.value.steps, stepG),
    strained: resolved.strained.map(({ perGram, ...herb }) => ({
      ...herb,
      grams: gramsOfSteps(Math.max(1, stepsNearest(perGram * totalG, stepG)), stepG),
    })),
    totalG,
    netG,
    allowanceG: rounded(totalG - netG, 4),
    lossPercent,
    stepG,
    densityGMl: rounded(density.densityGMl, 4),
    densityUnknown: density.unknown,
    ...(containers === undefined ? {} : { containers }),
    ...(fillGEach === undefined ? {} : { fillGEach: rounded(fillGEach, 4) }),
    tooSmall: tooSmallLines(resolved, sum, totalG, stepG, shares.value.raised),
    resolved,
  });
};
