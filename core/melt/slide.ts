import { strengths } from '../data/melt/strengths.ts';
import { firmnessPower } from '../data/melt/yardsticks.ts';
import { ingredientById } from '../ingredients.ts';
import { type Mixture, type MixturePart, middleStrength, mixtureOf } from './composition.ts';
import type { Exchange, SlidingLine } from './exchange.ts';
import { structureAt } from './firmness.ts';
import { type Freezing, freezingOf, lastToMelt } from './freezing.ts';
import { treatmentOf } from './treatment.ts';

/** Which end of its evidence an ingredient's strength is taken from. */
export type StrengthEnd = 'low' | 'value' | 'high';

interface NamedPart extends MixturePart {
  readonly id: string;
}

const partsOf = (lines: readonly SlidingLine[], amount: (line: SlidingLine) => number): NamedPart[] =>
  lines.flatMap((line) => {
    const ingredient = ingredientById(line.ingredient);
    const treatment = ingredient && treatmentOf(ingredient);
    return treatment?.kind === 'melts'
      ? [{ id: ingredient?.id ?? line.ingredient, composition: treatment.composition, share: amount(line) }]
      : [];
  });

const atP = (base: Mixture, step: Mixture, p: number): Mixture => ({
  mass: base.mass.map((grams, place) => grams + p * (step.mass[place] ?? 0)),
  strengthMass: base.strengthMass.map((grams, place) => grams + p * (step.strengthMass[place] ?? 0)),
});

/**
 * An exchange ready for sums: the prepared blend at p percent. Mixtures are sums of lines and lines slide in straight
 * lines, so two mixtures are enough for all p. `strengthOf` picks the end of the evidence for each ingredient.
 */
export const sliding = (
  exchange: Exchange,
  strengthOf: (id: string) => StrengthEnd = () => 'value',
): ((p: number) => Freezing) => {
  const strength = (part: MixturePart): number =>
    'id' in part && typeof part.id === 'string'
      ? strengths[part.composition.strength][strengthOf(part.id)]
      : middleStrength(part);
  const start = partsOf(exchange.lines, (line) => line.start);
  const whole = start.reduce((sum, { share }) => sum + share, 0);
  const base = mixtureOf(
    start.map((part) => ({ ...part, share: part.share / whole })),
    strength,
  );
  const step = mixtureOf(
    partsOf(exchange.lines, (line) => line.slope / whole),
    strength,
  );
  return (p) => freezingOf(atP(base, step, p), 'aged');
};

/** Halvings of at most 100 percent: far below a thousandth of a percent. */
const halvings = 45;

export type Found =
  | { readonly kind: 'found'; readonly percent: number }
  | { readonly kind: 'enough-at-none' }
  | { readonly kind: 'too-little-at-most' };

/** The p at which the structure at `celsius` reaches `wanted`: structure grows with p, so it is found by halving. */
export const percentFor = (
  blendAt: (p: number) => Freezing,
  most: number,
  celsius: number,
  wanted: number,
): Found => {
  const structure = (p: number): number => structureAt(blendAt(p), celsius);
  if (structure(0) >= wanted) return { kind: 'enough-at-none' };
  if (structure(most) < wanted) return { kind: 'too-little-at-most' };
  let low = 0;
  let high = most;
  for (let halving = 0; halving < halvings; halving += 1) {
    const middle = (low + high) / 2;
    if (structure(middle) < wanted) low = middle;
    else high = middle;
  }
  return { kind: 'found', percent: (low + high) / 2 };
};

/** What counts as one step off: a fifth in firmness, 3 °C in the fully melted temperature. */
const firmnessStep = 0.2;
const clearStepC = 3;

const scanPoints = 60;
const goldenShare = (Math.sqrt(5) - 1) / 2;
const goldenSteps = 30;

const goldenSection = (low: number, high: number, cost: (p: number) => number): number => {
  let a = low;
  let b = high;
  let left = b - goldenShare * (b - a);
  let right = a + goldenShare * (b - a);
  let costLeft = cost(left);
  let costRight = cost(right);
  for (let step = 0; step < goldenSteps; step += 1) {
    if (costLeft < costRight) {
      b = right;
      right = left;
      costRight = costLeft;
      left = b - goldenShare * (b - a);
      costLeft = cost(left);
    } else {
      a = left;
      left = right;
      costLeft = costRight;
      right = a + goldenShare * (b - a);
      costRight = cost(right);
    }
  }
  return (a + b) / 2;
};

/**
 * The p that comes closest to both the wanted structure at `celsius` and the wanted fully melted temperature. The cost
 * may have two valleys, where another component becomes the last to melt: a scan finds the deeper one first.
 */
export const percentForBoth = (
  blendAt: (p: number) => Freezing,
  most: number,
  celsius: number,
  wanted: { readonly structure: number; readonly clearC: number },
): number | undefined => {
  const cost = (p: number): number => {
    const freezing = blendAt(p);
    const clear = lastToMelt(freezing);
    const structure = structureAt(freezing, celsius);
    if (!clear || structure <= 0) return Number.POSITIVE_INFINITY;
    const firmnessOff = (firmnessPower.value * Math.log(structure / wanted.structure)) / firmnessStep;
    return firmnessOff ** 2 + ((clear.celsius - wanted.clearC) / clearStepC) ** 2;
  };
  const width = most / (scanPoints - 1);
  const scan = Array.from({ length: scanPoints }, (_, place) => ({
    p: place * width,
    cost: cost(place * width),
  }));
  const best = scan.reduce((least, point) => (point.cost < least.cost ? point : least));
  if (!Number.isFinite(best.cost)) return undefined;
  return goldenSection(Math.max(0, best.p - width), Math.min(most, best.p + width), cost);
};
