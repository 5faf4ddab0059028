import { ingredientById } from '../ingredients.ts';
import type { RecipeLine } from '../recipe.ts';
import type { Resolved, StrainedLine } from '../resolve.ts';

/** One thing in the tin, in percent by weight of all that goes into it. */
export interface Portion {
  readonly ingredient: string;
  readonly percent: number;
  readonly infusedWith?: string;
  readonly fresh?: boolean;
}

/** A recipe as a substitution sees it: shares of the tin, the herbs strained out, and the batch it was written for. */
export interface Mix {
  readonly portions: readonly Portion[];
  readonly strained: readonly StrainedLine[];
  /** Grams, when the recipe is written in amounts and not only in shares. */
  readonly batchG?: number;
}

/** Older ids become the ones in use, so that one thing has one name. */
const canonical = (id: string): string => ingredientById(id)?.id ?? id;

export const mixOf = (resolved: Resolved): Mix => {
  const whole = resolved.lines.reduce((sum, { weight }) => sum + weight, 0);
  return {
    portions: merged(
      resolved.lines.map(({ weight, ...line }) => ({
        ...line,
        ingredient: canonical(line.ingredient),
        percent: (100 * weight) / whole,
      })),
    ),
    strained: resolved.strained,
    ...(resolved.batchG === undefined ? {} : { batchG: resolved.batchG }),
  };
};

/** The mix as recipe lines again, in grams where it came in amounts, else in percent, ready to be scaled. */
export const linesOfMix = ({ portions, strained, batchG }: Mix): readonly RecipeLine[] => {
  const whole = batchG ?? 100;
  const unit: RecipeLine['unit'] = batchG === undefined ? 'percent' : 'g';
  return [
    ...portions.map(({ percent, ...portion }) => ({
      ...portion,
      amount: (percent * whole) / 100,
      unit,
    })),
    ...strained.map(({ perGram, ...herb }) => ({
      ...herb,
      amount: perGram * whole,
      unit,
      strained: true,
    })),
  ];
};

const sameThing = (a: Portion, b: Portion): boolean =>
  a.ingredient === b.ingredient && a.infusedWith === b.infusedWith && a.fresh === b.fresh;

/** One thing on two lines becomes one line, where it stood first. */
export const merged = (portions: readonly Portion[]): readonly Portion[] => {
  const list: Portion[] = [];
  for (const portion of portions) {
    const at = list.findIndex((other) => sameThing(other, portion));
    const before = list[at];
    if (before) list[at] = { ...before, percent: before.percent + portion.percent };
    else list.push(portion);
  }
  return list;
};
