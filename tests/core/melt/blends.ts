import { type MakeUpId, makeUps } from '../../../core/data/melt/make-ups.ts';
import { type Blend, type BlendLine, blendOf } from '../../../core/melt/blend.ts';
import { type CrystalState, compositionOf, mixtureOf } from '../../../core/melt/composition.ts';
import { type Freezing, freezingOf } from '../../../core/melt/freezing.ts';
import type { Result } from '../../../core/result.ts';

export type Recipe = Readonly<Record<string, number>>;

export const linesOf = (recipe: Recipe): readonly BlendLine[] =>
  Object.entries(recipe).map(([ingredient, weight]) => ({ ingredient, weight }));

export const blended = (recipe: Recipe): Blend => worked(blendOf(linesOf(recipe)));

/** Make-ups without a library ingredient (other origins of cocoa butter, hydrogenated fat) go straight to the solver. */
export const freezingOfMakeUps = (
  grams: Readonly<Partial<Record<MakeUpId, number>>>,
  state: CrystalState = 'aged',
): Freezing => {
  const entries = Object.entries(grams) as [MakeUpId, number][];
  const sum = entries.reduce((all, [, weight]) => all + weight, 0);
  return freezingOf(
    mixtureOf(
      entries.map(([id, weight]) => ({ composition: compositionOf(makeUps[id]), share: weight / sum })),
    ),
    state,
  );
};

/** The value of something that is known to work out here. */
export const worked = <T>(result: Result<T, { readonly code: string }>): T => {
  if (!result.ok) throw new Error(result.problem.code);
  return result.value;
};
