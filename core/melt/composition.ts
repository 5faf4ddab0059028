import { type ComponentId, meltComponents } from '../data/melt/components.ts';
import type { MakeUp } from '../data/melt/make-ups.ts';
import type { Confidence } from '../data/melt/sources.ts';
import { type StrengthId, strengths } from '../data/melt/strengths.ts';

/** Which crystals a balm has: `aged` after weeks, `fresh` in its first days when it was set without tempering. */
export type CrystalState = 'aged' | 'fresh';

export const componentCount = meltComponents.length;

const indexById = new Map<string, number>(meltComponents.map(({ id }, index) => [id, index]));

/** Place of a component in every array that runs over all components. */
export const componentIndex = (id: ComponentId): number => indexById.get(id) ?? -1;

/** A make-up ready for sums: shares that add up to 1, by place instead of by name. */
export interface Composition {
  readonly shares: readonly { readonly index: number; readonly share: number }[];
  readonly strength: StrengthId;
  readonly confidence: Confidence;
}

/** Brings a make-up's fractions to a sum of 1: published fractions are rounded. */
export const compositionOf = (makeUp: MakeUp): Composition => {
  const entries = Object.entries(makeUp.fractions) as [ComponentId, number][];
  const sum = entries.reduce((all, [, fraction]) => all + fraction, 0);
  return {
    shares: entries.map(([id, fraction]) => ({ index: componentIndex(id), share: fraction / sum })),
    strength: makeUp.strength,
    confidence: makeUp.confidence,
  };
};

/** One ingredient of a blend, with its share of the modelled mass (all shares together are 1). */
export interface MixturePart {
  readonly composition: Composition;
  readonly share: number;
}

/** Grams of each component in one gram of blend, and the same weighted by the strength of what brings it. */
export interface Mixture {
  readonly mass: readonly number[];
  readonly strengthMass: readonly number[];
}

export const middleStrength = (part: MixturePart): number => strengths[part.composition.strength].value;

/** Adds up the parts' components; `strengthOf` lets a strength be varied within its evidence. */
export const mixtureOf = (
  parts: readonly MixturePart[],
  strengthOf: (part: MixturePart) => number = middleStrength,
): Mixture => {
  const mass = new Array<number>(componentCount).fill(0);
  const strengthMass = new Array<number>(componentCount).fill(0);
  for (const part of parts) {
    const strength = strengthOf(part);
    for (const { index, share } of part.composition.shares) {
      const grams = part.share * share;
      mass[index] = (mass[index] ?? 0) + grams;
      strengthMass[index] = (strengthMass[index] ?? 0) + grams * strength;
    }
  }
  return { mass, strengthMass };
};
