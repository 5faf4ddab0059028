import type { RecipeLine } from './recipe.ts';
import type { RecipeProblem, Resolved } from './resolve.ts';
import { fail, ok, type Result } from './result.ts';
import type { Region, ScaleStep } from './settings.ts';
import { gramsOfSteps, stepsAtLeast, stepsAtMost, stepsNearest } from './steps.ts';

/** What the maker wants the recipe scaled to. Fill sizes are per container. */
export type Target =
  | { readonly kind: 'containers'; readonly count: number; readonly fill: Fill }
  /** A weigh-out of exactly this much; with a fill, how many containers it makes is told. */
  | { readonly kind: 'mass'; readonly grams: number; readonly fill?: Fill }
  | { readonly kind: 'volume'; readonly ml: number; readonly fill?: Fill }
  | { readonly kind: 'multiple'; readonly factor: number; readonly fill?: Fill }
  /** As much as this amount of one ingredient allows. */
  | {
      readonly kind: 'limit';
      readonly ingredient: string;
      readonly grams: number;
      readonly fill?: Fill;
    };

export type Fill = { readonly grams: number } | { readonly ml: number };

export interface ScaleRequest {
  readonly lines: readonly RecipeLine[];
  readonly target: Target;
  /** Share of the weigh-out that stays in jug and spoon, in percent. */
  readonly lossPercent: number;
  readonly stepG: ScaleStep;
  readonly region: Region;
}

export type ScaleProblem =
  | RecipeProblem
  /** Doubling a recipe in percent or parts: there is no batch to double. */
  | { readonly code: 'no-batch-size' }
  | { readonly code: 'not-in-recipe'; readonly ingredient: string }
  /** A target of no size at all: nothing per container, or a loss of everything. */
  | { readonly code: 'not-a-number' }
  | {
      readonly code: 'batch-too-small';
      readonly totalG: number;
      readonly lines: number;
      readonly stepG: ScaleStep;
    }
  | {
      readonly code: 'batch-too-big';
      readonly totalG: number;
      readonly mostG: number;
    };

/** Largest batch the sums are meant for: a tonne is no small batch. */
export const mostBatchG = 1_000_000;

const fillG = (fill: Fill, densityGMl: number): number =>
  'grams' in fill ? fill.grams : fill.ml * densityGMl;

export interface Plan {
  readonly totalSteps: number;
  readonly containers?: number;
  readonly fillGEach?: number;
  readonly netG?: number;
}

const containersPlan = (
  target: Extract<Target, { kind: 'containers' }>,
  densityGMl: number,
  request: ScaleRequest,
): Plan => {
  const fillGEach = fillG(target.fill, densityGMl);
  const netG = fillGEach * target.count;
  const totalSteps = stepsAtLeast(netG / (1 - request.lossPercent / 100), request.stepG);
  return { totalSteps, containers: target.count, fillGEach, netG };
};

const limitSteps = (
  target: Extract<Target, { kind: 'limit' }>,
  resolved: Resolved,
  stepG: ScaleStep,
): Result<number, ScaleProblem> => {
  const sum = resolved.lines.reduce((all, line) => all + line.weight, 0);
  const own = resolved.lines.filter((line) => line.ingredient === target.ingredient);
  const herbs = resolved.strained.filter((line) => line.ingredient === target.ingredient);
  // What goes into the tins and what is strained out again both come from the same bag.
  const perGram =
    own.reduce((all, line) => all + line.weight / sum, 0) +
    herbs.reduce((all, herb) => all + herb.perGram, 0);
  if (perGram <= 0) return fail({ code: 'not-in-recipe', ingredient: target.ingredient });
  return ok(stepsAtMost(target.grams / perGram, stepG));
};

/** How many whole containers a weigh-out fills, when the target says what each holds. */
const filling = (
  totalSteps: number,
  fill: Fill | undefined,
  densityGMl: number,
  request: ScaleRequest,
): Plan => {
  if (!fill) return { totalSteps };
  const fillGEach = fillG(fill, densityGMl);
  const netG = gramsOfSteps(totalSteps, request.stepG) * (1 - request.lossPercent / 100);
  return {
    totalSteps,
    fillGEach,
    containers: Math.floor(netG / fillGEach + 1e-9),
  };
};

/** Whole steps of the scale to weigh out in all, and what that fills. */
export const planFor = (
  request: ScaleRequest,
  resolved: Resolved,
  densityGMl: number,
): Result<Plan, ScaleProblem> => {
  const { target, stepG } = request;
  if (target.kind === 'containers') return ok(containersPlan(target, densityGMl, request));
  if (target.kind === 'limit') {
    const steps = limitSteps(target, resolved, stepG);
    return steps.ok ? ok(filling(steps.value, target.fill, densityGMl, request)) : steps;
  }
  if (target.kind === 'multiple' && resolved.batchG === undefined) return fail({ code: 'no-batch-size' });
  const grams =
    target.kind === 'multiple'
      ? (resolved.batchG ?? 0) * target.factor
      : target.kind === 'mass'
        ? target.grams
        : target.ml * densityGMl;
  return ok(filling(stepsNearest(grams, stepG), target.fill, densityGMl, request));
};

/** Too much for a small batch, or too little to give every line a step of the scale. */
export const checkSize = (plan: Plan, resolved: Resolved, stepG: ScaleStep): ScaleProblem | undefined => {
  if (Number.isNaN(plan.totalSteps) || !Number.isFinite(plan.containers ?? 0))
    return { code: 'not-a-number' };
  const totalG = gramsOfSteps(plan.totalSteps, stepG);
  if (totalG > mostBatchG) return { code: 'batch-too-big', totalG, mostG: mostBatchG };
  if (plan.totalSteps < resolved.lines.length) {
    return {
      code: 'batch-too-small',
      totalG,
      lines: resolved.lines.length,
      stepG,
    };
  }
  return undefined;
};
