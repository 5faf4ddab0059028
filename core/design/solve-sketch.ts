import type { Freezing } from '../melt/freezing.ts';
import { hottestC, indexIn, type Pan, standsAt } from './firmness-of.ts';
import { bandC, type FormRule } from './rules.ts';
import { linesAt, openPercent, type Sketch, stepPercent } from './sketch.ts';

/** A sketch with its share found. */
export interface Solved {
  readonly sketch: Sketch;
  readonly percent: number;
  /** True when the hottest day asked for more of the main line than the form alone. */
  readonly forHeat: boolean;
  readonly cost: number;
}

/** First step from `low` to `high` at which a condition that grows with the share holds; `high + 1` if none. */
const firstStep = (low: number, high: number, holds: (step: number) => boolean): number => {
  let from = low;
  let to = high + 1;
  while (from < to) {
    const middle = Math.floor((from + to) / 2);
    if (holds(middle)) to = middle;
    else from = middle + 1;
  }
  return from;
};

interface Steps {
  readonly low: number;
  readonly high: number;
  at(step: number): Freezing;
}

const stepsOf = (sketch: Sketch, pan: Pan): Steps => {
  const low = Math.ceil(sketch.main.low / stepPercent);
  const most = Math.min(sketch.main.high, openPercent(sketch));
  const seen = new Map<number, Freezing>();
  const at = (step: number): Freezing => {
    const freezing = seen.get(step) ?? pan(linesAt(sketch, step * stepPercent));
    seen.set(step, freezing);
    return freezing;
  };
  return { low, high: Math.floor(most / stepPercent), at };
};

/** Steps whose firmness at 25 °C lies in the form's band; nothing when there are none. */
const bandSteps = (steps: Steps, rule: FormRule): { first: number; last: number } | undefined => {
  const index = (step: number): number => indexIn(steps.at(step), bandC);
  const first = firstStep(steps.low, steps.high, (step) => index(step) >= rule.least);
  const last = firstStep(first, steps.high, (step) => index(step) >= rule.most) - 1;
  return first <= last ? { first, last } : undefined;
};

const isInBand = (steps: Steps, step: number, rule: FormRule): boolean => {
  const index = indexIn(steps.at(step), bandC);
  return index >= rule.least && index < rule.most;
};

/**
 * The step nearest to one that was found by halving. More of the main line makes nearly every blend firmer, so halving
 * finds the band; where two fats soften each other (coconut oil and cocoa butter without a wax) it does not, and each
 * step is looked at.
 */
const nearestFitting = (steps: Steps, step: number, fits: (step: number) => boolean): number | undefined => {
  if (fits(step)) return step;
  const all = Array.from({ length: steps.high - steps.low + 1 }, (_, at) => steps.low + at);
  return all.toSorted((a, b) => Math.abs(a - step) - Math.abs(b - step)).find(fits);
};

/** One and a half times too firm or too soft counts as one. */
const firmnessCost = (index: number, aim: number): number => (Math.log(index / aim) / Math.log(1.5)) ** 2 / 2;

/** Finds the share of the main line: firm enough on the hottest day, and near the form's aim if that asks for more. */
export const solveSketch = (
  sketch: Sketch,
  rule: FormRule,
  survivesC: number | undefined,
  pan: Pan,
): Solved | undefined => {
  const steps = stepsOf(sketch, pan);
  const band = bandSteps(steps, rule);
  if (!band) return undefined;
  const holds = (step: number): boolean =>
    survivesC === undefined || standsAt(steps.at(step), survivesC, rule);
  const needed = firstStep(band.first, band.last, holds);
  if (needed > band.last) return undefined;
  const aimed = Math.min(
    band.last,
    firstStep(band.first, band.last, (step) => indexIn(steps.at(step), bandC) >= rule.aim),
  );
  const fits = (step: number): boolean => isInBand(steps, step, rule) && holds(step);
  const step = nearestFitting(steps, Math.max(needed, aimed), fits);
  if (step === undefined) return undefined;
  return {
    sketch,
    percent: step * stepPercent,
    forHeat: needed > aimed,
    cost: sketch.cost + firmnessCost(indexIn(steps.at(step), bandC), rule.aim),
  };
};

/** Hottest day in °C that this sketch can be made to survive in its form; nothing when it does not fit the form. */
export const hottestOf = (sketch: Sketch, rule: FormRule, pan: Pan): number | undefined => {
  const steps = stepsOf(sketch, pan);
  const band = bandSteps(steps, rule);
  const last = band && nearestFitting(steps, band.last, (step) => isInBand(steps, step, rule));
  return last === undefined ? undefined : hottestC(steps.at(last), rule);
};
