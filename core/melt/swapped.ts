import type { Blend, BlendProblem } from './blend.ts';
import type { ExchangedLine, ExchangeProblem } from './exchange.ts';
import type { TemperatureProblem } from './temperatures.ts';

export type SwapProblem =
  | BlendProblem
  | ExchangeProblem
  | TemperatureProblem
  /** Powders, herbs and water: they do not melt in, so the model has nothing to say about swapping them. */
  | { readonly code: 'does-not-melt-in'; readonly ingredient: string }
  /** Liquid at this temperature, so it cannot carry what the other carried. */
  | { readonly code: 'liquid-cannot-carry'; readonly ingredient: string; readonly celsius: number }
  /** A wax in the place of an oil: gram for gram it would be rock, and there is no firmness to hold. */
  | { readonly code: 'wax-cannot-be-oil'; readonly ingredient: string }
  /** Even with all the oil gone it stays softer; `lines` is the firmest that can be had. */
  | {
      readonly code: 'not-enough-oil';
      readonly mostPercent: number;
      readonly lines: readonly ExchangedLine[];
      readonly before: SwapFigures;
      readonly after: SwapFigures;
    };

/** Firmness indices (100: 20 % beeswax in oil at 20 °C) and temperatures in °C, aged. */
export interface SwapFigures {
  readonly firmness: number;
  readonly firmnessAt37: number;
  readonly fullyMeltedC?: number;
  readonly softensC?: number;
}

export type SwapNote =
  /** Firm enough without any: nothing of it is needed. */
  | 'already-firm'
  /** Strengths of waxes are uncertain. */
  | 'make-a-trial-tin'
  | 'carnauba-evidence-conflicts'
  /** Carnauba is used at 1-3 % beside other waxes, never as the only wax (common practice). */
  | 'not-as-only-wax'
  /** Rice bran wax alone is too weak in sticks (S-RBWSTICK, read). */
  | 'weak-alone-in-sticks'
  /** Fully melted moves by more than 3 °C. */
  | 'full-melt-moves';

export interface Swapped {
  readonly takenPercent: number;
  /** Percent of the new ingredient put in, by weight of the whole recipe. */
  readonly percent: number;
  readonly ratioByWeight: number;
  /**
   * Percent needed if the new ingredient is as strong, or as weak, as its evidence allows. Without a second end even
   * all the oil would not be enough for the weak case.
   */
  readonly range: readonly [number, number | undefined];
  readonly lines: readonly ExchangedLine[];
  readonly celsius: number;
  readonly before: SwapFigures;
  readonly after: SwapFigures;
  readonly blendBefore: Blend;
  readonly blendAfter: Blend;
  /** The best compromise when the fully melted temperature counts as well as firmness. */
  readonly withFullMelt?: {
    readonly percent: number;
    readonly lines: readonly ExchangedLine[];
    readonly after: SwapFigures;
  };
  readonly notes: readonly SwapNote[];
}

/** `celsius` is where firmness is held, 25 unless said otherwise. */
export interface SwapOptions {
  readonly celsius?: number;
  /** How much of the old ingredient goes, above 0 and at most 1; all of it unless said otherwise. */
  readonly share?: number;
}
