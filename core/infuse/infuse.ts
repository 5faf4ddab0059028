import { fail, ok, type Result } from '../result.ts';
import type { ScaleStep } from '../settings.ts';
import { gramsOfSteps, stepsAtLeast, stepsNearest } from '../steps.ts';
import type { Uptake } from './uptake.ts';
import { mostInfusionG } from './yields.ts';

/**
 * What is known of an infusion; grams throughout. Any one amount is enough, because a ratio is always at hand; two
 * amounts give the ratio. `usualRatio` is taken where neither a ratio nor a second amount is given.
 */
export interface InfuseRequest {
  readonly herbG?: number;
  readonly oilInG?: number;
  /** Oil wanted after straining. */
  readonly oilOutG?: number;
  /** Parts of oil to one part of dried herb, by weight. */
  readonly ratio?: number;
  readonly usualRatio: number;
  readonly uptake: Uptake;
  readonly stepG: ScaleStep;
}

export type InfuseProblem =
  | { readonly code: 'no-amount' }
  | { readonly code: 'not-a-number' }
  /** At this ratio the herb would drink all the oil. */
  | { readonly code: 'herb-keeps-all'; readonly ratio: number; readonly uptakeGPerG: number }
  | { readonly code: 'more-out-than-in'; readonly oilInG: number; readonly oilOutG: number }
  /** Three figures of which one does not fit the others. */
  | { readonly code: 'do-not-agree'; readonly ratio: number; readonly saidRatio: number }
  | { readonly code: 'infusion-too-small'; readonly stepG: ScaleStep }
  | { readonly code: 'infusion-too-big'; readonly mostG: number };

/** An infusion to the step of the scale: `oilInG` is always exactly `uptakeG + oilOutG`. */
export interface Infusion {
  readonly herbG: number;
  readonly oilInG: number;
  /** Oil that stays in herb and cloth. */
  readonly uptakeG: number;
  readonly uptakeLowG: number;
  readonly uptakeHighG: number;
  readonly oilOutG: number;
  readonly oilOutLowG: number;
  readonly oilOutHighG: number;
  readonly ratio: number;
  /** True when nothing said what ratio to take. */
  readonly ratioAssumed: boolean;
  /** Oil to start with to be sure of `oilOutG` even if the herb keeps the most it is known to. */
  readonly oilInSureG: number;
}

interface Amounts {
  readonly herbG: number;
  readonly oilInG: number;
  readonly ratio: number;
}

/** Share by which a said ratio may miss the two said amounts: 1 to 8 for 40 g in 322 g is no contradiction. */
const agreement = 0.02;

const tidy = (value: number): number => Number(value.toPrecision(6));

const fromBoth = (
  herbG: number,
  oilInG: number,
  said: number | undefined,
): Result<Amounts, InfuseProblem> => {
  const ratio = oilInG / herbG;
  if (said !== undefined && Math.abs(ratio - said) > said * agreement) {
    return fail({ code: 'do-not-agree', ratio: tidy(ratio), saidRatio: said });
  }
  return ok({ herbG, oilInG, ratio });
};

const fromOut = (request: InfuseRequest, oilOutG: number): Result<Amounts, InfuseProblem> => {
  const { herbG, oilInG, uptake } = request;
  if (herbG !== undefined) return fromBoth(herbG, oilOutG + uptake.value * herbG, request.ratio);
  if (oilInG !== undefined) {
    if (oilOutG >= oilInG) return fail({ code: 'more-out-than-in', oilInG, oilOutG });
    return fromBoth((oilInG - oilOutG) / uptake.value, oilInG, request.ratio);
  }
  const ratio = request.ratio ?? request.usualRatio;
  if (ratio <= uptake.value) return fail({ code: 'herb-keeps-all', ratio, uptakeGPerG: uptake.value });
  const herb = oilOutG / (ratio - uptake.value);
  return ok({ herbG: herb, oilInG: herb * ratio, ratio });
};

const amountsOf = (request: InfuseRequest): Result<Amounts, InfuseProblem> => {
  const { herbG, oilInG, oilOutG } = request;
  const ratio = request.ratio ?? request.usualRatio;
  if (herbG !== undefined && oilInG !== undefined) return fromBoth(herbG, oilInG, request.ratio);
  if (oilOutG !== undefined) return fromOut(request, oilOutG);
  if (herbG !== undefined) return ok({ herbG, oilInG: herbG * ratio, ratio });
  if (oilInG !== undefined) return ok({ herbG: oilInG / ratio, oilInG, ratio });
  return fail({ code: 'no-amount' });
};

interface Steps {
  readonly herb: number;
  readonly oilIn: number;
  readonly kept: number;
}

/** Whole steps of the scale. A wanted yield is met to the step; otherwise what is kept is taken off what goes in. */
const stepsOf = (amounts: Amounts, { oilOutG, uptake, stepG, oilInG }: InfuseRequest): Steps => {
  const herb = Math.max(1, stepsNearest(amounts.herbG, stepG));
  const kept = stepsNearest(gramsOfSteps(herb, stepG) * uptake.value, stepG);
  const wanted = oilOutG !== undefined && oilInG === undefined;
  const oilIn = wanted ? stepsAtLeast(oilOutG, stepG) + kept : stepsNearest(amounts.oilInG, stepG);
  return { herb, oilIn, kept };
};

const infusionOf = (steps: Steps, amounts: Amounts, request: InfuseRequest): Infusion => {
  const { stepG, uptake } = request;
  const grams = (count: number): number => gramsOfSteps(count, stepG);
  const atMostIn = (perGram: number): number =>
    Math.min(steps.oilIn, stepsNearest(grams(steps.herb) * perGram, stepG));
  const most = atMostIn(uptake.high);
  const least = Math.min(steps.kept, atMostIn(uptake.low));
  const out = steps.oilIn - steps.kept;
  const said = [request.herbG, request.oilInG, request.oilOutG].filter((each) => each !== undefined).length;
  return {
    herbG: grams(steps.herb),
    oilInG: grams(steps.oilIn),
    uptakeG: grams(steps.kept),
    uptakeLowG: grams(least),
    uptakeHighG: grams(most),
    oilOutG: grams(out),
    oilOutLowG: grams(steps.oilIn - most),
    oilOutHighG: grams(steps.oilIn - least),
    ratio: tidy(amounts.ratio),
    ratioAssumed: request.ratio === undefined && said < 2,
    oilInSureG: grams(out + most),
  };
};

const isAmount = (value: number | undefined): boolean =>
  value === undefined || (Number.isFinite(value) && value > 0);

/**
 * Works out an infusion from any one of herb, oil in and oil out (with a ratio or the usual one), or from two of
 * them. What the herb keeps is `uptake` grams of oil to the gram of dried herb.
 */
export const infuse = (request: InfuseRequest): Result<Infusion, InfuseProblem> => {
  const { herbG, oilInG, oilOutG, ratio, stepG, uptake } = request;
  if (![herbG, oilInG, oilOutG, ratio].every(isAmount)) return fail({ code: 'not-a-number' });
  const amounts = amountsOf(request);
  if (!amounts.ok) return amounts;
  if (amounts.value.oilInG > mostInfusionG || amounts.value.herbG > mostInfusionG) {
    return fail({ code: 'infusion-too-big', mostG: mostInfusionG });
  }
  const steps = stepsOf(amounts.value, request);
  if (steps.oilIn < 1) return fail({ code: 'infusion-too-small', stepG });
  if (steps.kept >= steps.oilIn) {
    return fail({
      code: 'herb-keeps-all',
      ratio: tidy(amounts.value.ratio),
      uptakeGPerG: uptake.value,
    });
  }
  return ok(infusionOf(steps, amounts.value, request));
};
