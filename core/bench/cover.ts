import { drawFor, lessDrawn, type Need } from './draw.ts';
import type { Bench } from './state.ts';

/** An ingredient of a batch of which the shelf holds less than the batch takes. */
export interface Shortage {
  readonly ingredient: string;
  readonly infusedWith?: string | undefined;
  readonly neededG: number;
  readonly haveG: number;
}

/** Grams that no lot covers, and the bench after the draw. An infused oil may be steeped anew from the plain one. */
const drawn = (bench: Bench, need: Need, on: string): { readonly shortG: number; readonly bench: Bench } => {
  const own = drawFor(bench, need, on);
  const left = lessDrawn(bench, own.draws);
  if (own.shortG <= 0 || need.infusedWith === undefined) return { shortG: own.shortG, bench: left };
  const plain = drawFor(left, { ingredient: need.ingredient, grams: own.shortG }, on);
  return { shortG: plain.shortG, bench: lessDrawn(left, plain.draws) };
};

/**
 * What the shelf is short of for a batch, lots past their date left out; nothing when it holds enough of everything. A
 * lot that two lines draw from serves each gram once.
 */
export const shortagesOf = (bench: Bench, needs: readonly Need[], on: string): readonly Shortage[] => {
  let now = bench;
  return needs.flatMap((need): readonly Shortage[] => {
    const { shortG, bench: left } = drawn(now, need, on);
    now = left;
    if (shortG <= 0) return [];
    const { ingredient, infusedWith, grams } = need;
    return [{ ingredient, infusedWith, neededG: grams, haveG: grams - shortG }];
  });
};
