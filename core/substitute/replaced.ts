import type { SwapNote, SwapProblem } from '../melt/swapped.ts';
import type { Mix } from './mix.ts';

export type ReplaceProblem =
  | SwapProblem
  | { readonly code: 'same-ingredient'; readonly ingredient: string }
  /** A herb for a wax, scent for an oil: nothing to weigh against each other. */
  /** A herb is strained out or sits in an oil's note: there is no half of it. */
  | { readonly code: 'not-in-part'; readonly ingredient: string }
  | { readonly code: 'different-jobs'; readonly from: string; readonly to: string };

/** How the new lines came about. */
export type Way =
  /** The new one slides in against the liquid oil until firmness at 25 °C is the old one. */
  | 'firmness-held'
  /** The same, against the butters, in a recipe without liquid oil. */
  | 'butters-give-way'
  | 'gram-for-gram'
  /** Gram for gram, with more of the recipe's wax to bring the firmness back. */
  | 'gram-for-gram-firmed'
  /** The herb alone: nothing in the tin changes its share. */
  | 'herb';

export interface Replaced {
  readonly from: string;
  readonly to: string;
  readonly way: Way;
  readonly mix: Mix;
  /** Percent of the tin that goes out and comes in. */
  readonly takenPercent: number;
  /** Percent of the old one that stays; missing when all of it went. */
  readonly leftPercent?: number;
  readonly percent: number;
  /** Percent that the evidence on the new one's strength allows; an open end means that all the oil is not enough. */
  readonly range?: readonly [number, number | undefined];
  /** Percent where the fully melted temperature counts as well as firmness. */
  readonly withFullMeltPercent?: number;
  readonly firmedWith?: string;
  readonly addedPercent?: number;
  /** Wax that would bring the firmness back, against the liquid oil; not in the lines. */
  readonly advice?: { readonly wax: string; readonly percent: number };
  readonly notes: readonly SwapNote[];
}
