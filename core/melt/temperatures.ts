import { fail, ok, type Result } from '../result.ts';
import type { Blend } from './blend.ts';
import type { CrystalState } from './composition.ts';
import { type Freezing, lastToMelt } from './freezing.ts';
import { lastC, type Solids, solidsAt, solidsIn, working } from './solve.ts';

/** Room temperature of the model's yardsticks, in °C. */
export const roomC = 20;

/** Coldest and hottest temperature in °C that the sums take; balms live far inside. */
export const coldestC = -200;
export const hottestC = 1000;

export interface TemperatureProblem {
  readonly code: 'bad-temperature';
  readonly celsius: number;
}

const badTemperature = (celsius: number): boolean => !(celsius >= coldestC && celsius <= hottestC);

/** A figure at a temperature that came from outside: one the sums cannot take is a problem. */
export const atCelsius = <T>(
  celsius: number,
  figure: (celsius: number) => T,
): Result<T, TemperatureProblem> =>
  badTemperature(celsius) ? fail({ code: 'bad-temperature', celsius }) : ok(figure(celsius));

/** A percentage as printed figures need it: rounding noise may not leave 0-100. */
const percentOf = (solids: Solids): number => Math.min(100, 100 * solids.solid);

/** Percent by weight of what melts in that is solid at `celsius`, at rest: ideal solubility, each component on its own. */
export const solidPercent = (
  blend: Blend,
  celsius: number,
  state: CrystalState = 'aged',
): Result<number, TemperatureProblem> =>
  atCelsius(celsius, (at) => percentOf(solidsAt(blend.freezing[state], at)));

/** The same for many temperatures, as `[celsius, percent]`; 100 points cost well under a millisecond. */
export const solidCurve = (
  blend: Blend,
  celsius: readonly number[],
  state: CrystalState = 'aged',
): Result<readonly (readonly [number, number])[], TemperatureProblem> => {
  const bad = celsius.find(badTemperature);
  if (bad !== undefined) return fail({ code: 'bad-temperature', celsius: bad });
  const freezing = blend.freezing[state];
  const order = working(freezing);
  return ok(celsius.map((at) => [at, percentOf(solidsIn(order, freezing.totalMoles, at))] as const));
};

/** Temperature in °C above which all is liquid and clear; nothing for a blend in which nothing ever freezes. */
export const fullyMeltedC = (blend: Blend, state: CrystalState = 'aged'): number | undefined =>
  lastToMelt(blend.freezing[state])?.celsius;

/** Percent of solids at which a fat slips in its tube; chosen to reproduce slip points of fats. */
const slipPercent = 5;
/** A blend with few solids softens when a third of what it has at room temperature is left. */
const shareOfRoom = 1 / 3;
/** Below this target, in percent, a blend is liquid at room temperature and has no softening point. */
const liquidTarget = 0.05;
/** Coldest softening point looked for, in °C. */
const coldestSofteningC = -30;

/** Softening point of prepared figures, for callers that vary them; see {@link softensC}. */
export const softeningC = (freezing: Freezing): number | undefined => {
  const clear = lastToMelt(freezing);
  if (!clear || clear.celsius <= coldestSofteningC) return undefined;
  const order = working(freezing);
  const { totalMoles } = freezing;
  const percentAt = (celsius: number): number => percentOf(solidsIn(order, totalMoles, celsius));
  const target = Math.min(slipPercent, percentAt(roomC) * shareOfRoom);
  if (target <= liquidTarget || percentAt(coldestSofteningC) < target) return undefined;
  return lastC(coldestSofteningC, clear.celsius, (celsius) => percentAt(celsius) >= target);
};

/**
 * Temperature in °C at which the balm goes soft: 5 % solids are left, or a third of what it has at 20 °C when that is
 * less. Nothing for a blend that is liquid at 20 °C.
 */
export const softensC = (blend: Blend, state: CrystalState = 'aged'): number | undefined =>
  softeningC(blend.freezing[state]);
