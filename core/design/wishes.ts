import type { PriceWish } from './price.ts';

/** What the balm is filled into: a stick that is pushed up, a tin or jar for the finger, a soft balm for a tube. */
export const forms = ['stick', 'tin', 'tube'] as const;
export type Form = (typeof forms)[number];

/** An ingredient that has to be in, with its share in percent if the maker asked for one. */
export interface WantedIngredient {
  readonly ingredient: string;
  readonly percent?: number;
}

/**
 * What a maker wishes for. `vegan` and `without` are never given way on: no proposal contains what they exclude.
 * The others may be relaxed, and then the design says which and by how much.
 */
export interface Wishes {
  readonly form: Form;
  /** Hottest day it has to survive, in °C. */
  readonly survivesC?: number;
  readonly vegan: boolean;
  /** Groups of exclusions.ts and ingredient ids. */
  readonly without: readonly string[];
  readonly with: readonly WantedIngredient[];
  /** Months that every fat in it has to keep. */
  readonly shelfLifeMonths?: number;
  readonly price?: PriceWish;
  /** Only these may be used: what is on the shelf. */
  readonly stock?: ReadonlySet<string>;
}
