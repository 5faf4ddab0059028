import type { Ingredient } from '../data/ingredient.ts';
import { strengths } from '../data/melt/strengths.ts';
import { ingredientById, isWax } from '../ingredients.ts';
import { type BlendLine, blendOf } from '../melt/blend.ts';
import { linesAt, replacing } from '../melt/exchange.ts';
import { indexOfStructure, structureAt } from '../melt/firmness.ts';
import { sliding } from '../melt/slide.ts';
import { fullyMeltedC } from '../melt/temperatures.ts';
import { treatmentOf } from '../melt/treatment.ts';

const holdC = 25;

/** The recipe as it stands, looked at once for all candidates. */
export interface Standing {
  readonly lines: readonly BlendLine[];
  readonly from: string;
  readonly percent: number;
  readonly structure: number;
  readonly clearC: number;
}

/** Nothing when something in it has no melting figures: then candidates are ranked without. */
export const standingOf = (lines: readonly BlendLine[], from: string): Standing | undefined => {
  const blend = blendOf(lines);
  const clearC = blend.ok ? fullyMeltedC(blend.value) : undefined;
  if (!blend.ok || clearC === undefined) return undefined;
  const whole = lines.reduce((sum, { weight }) => sum + weight, 0);
  const own = lines.reduce((sum, { ingredient, weight }) => sum + (ingredient === from ? weight : 0), 0);
  const structure = structureAt(blend.value.freezing.aged, holdC);
  return { lines, from, percent: (100 * own) / whole, structure, clearC };
};

/** What a candidate does to the recipe: its percent, and the change of firmness at 25 °C (percent) and full melt (°C). */
export interface Effect {
  readonly percent: number;
  readonly firmnessPercent: number;
  readonly fullyMeltedC: number;
}

const effectOf = (standing: Standing, lines: readonly BlendLine[], percent: number): Effect | undefined => {
  const blend = blendOf(lines);
  const clear = blend.ok ? fullyMeltedC(blend.value) : undefined;
  if (!blend.ok || clear === undefined) return undefined;
  const before = indexOfStructure(standing.structure);
  const after = indexOfStructure(structureAt(blend.value.freezing.aged, holdC));
  return {
    percent,
    firmnessPercent: before > 0 ? 100 * (after / before - 1) : 0,
    fullyMeltedC: clear - standing.clearC,
  };
};

/** A candidate put in gram for gram. */
export const gramForGramEffect = (standing: Standing, to: string): Effect | undefined =>
  effectOf(
    standing,
    standing.lines.map((line) => (line.ingredient === standing.from ? { ...line, ingredient: to } : line)),
    standing.percent,
  );

/** Halvings for a ranking: a hundredth of a percent, where the answer itself takes far more. */
const halvings = 13;

/** As much of a candidate as holds the firmness, by few halvings; nothing where even all the oil is not enough. */
export const holdingEffect = (standing: Standing, to: string): Effect | undefined => {
  const exchange = replacing(standing.lines, standing.from, to);
  if (!exchange.ok) return undefined;
  const blendAt = sliding(exchange.value);
  const holds = (p: number): boolean => structureAt(blendAt(p), holdC) >= standing.structure;
  let low = 0;
  let high = exchange.value.most;
  if (!holds(high)) return undefined;
  for (let halving = 0; halving < halvings; halving += 1) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  const lines = linesAt(exchange.value, high).map(({ ingredient, percent }) => ({
    ingredient,
    weight: percent,
  }));
  return effectOf(standing, lines, high);
};

/** How sure the strength of a firming ingredient is: 100 where low and high agree, 0 from a factor of four on. */
export const evidenceOf = (candidate: Ingredient): number => {
  const treatment = treatmentOf(candidate);
  if (treatment.kind !== 'melts') return 0;
  const { low, high } = strengths[treatment.composition.strength];
  return low > 0 ? Math.max(0, 100 * (1 - Math.log(high / low) / Math.log(4))) : 0;
};

/** Used beside other waxes at 1 to 3 %, never as the only one (common practice); see the notes of a swap. */
const neverAlone = new Set(['carnauba-wax']);

/** 100 inside the candidate's usual share, falling outside it; a wax that is not used alone gets little. */
export const inUsualShare = (candidate: Ingredient, percent: number, lines: readonly BlendLine[]): number => {
  const others = lines.some(({ ingredient, weight }) => {
    const found = ingredientById(ingredient);
    return weight > 0 && found !== undefined && found.id !== candidate.id && isWax(found);
  });
  if (neverAlone.has(candidate.id) && !others) return 10;
  const { usePercent } = candidate;
  if (!usePercent) return 70;
  const over = percent / usePercent.high;
  const under = usePercent.low / Math.max(percent, 0.01);
  return Math.max(0, 100 - 100 * (Math.max(1, over, under) - 1));
};
