import type { Ingredient } from '../data/ingredient.ts';

/** One line of a proposal; percent by weight. */
export interface DesignLine {
  readonly ingredient: string;
  readonly percent: number;
  readonly infusedWith?: string;
}

/** A recipe with one share open: `main` is searched between `low` and `high`, the filler takes what is left. */
export interface Sketch {
  readonly main: { readonly ingredient: string; readonly low: number; readonly high: number };
  /** Everything whose share is settled: partner wax, butters, small oils, additives, scent. */
  readonly fixed: readonly DesignLine[];
  /** What fills up to 100 %, in equal shares: liquid oils, or soft butters when there may be no oil. */
  readonly fillers: readonly Omit<DesignLine, 'percent'>[];
  readonly cost: number;
  /** Which butters go with the waxes: a second proposal with the same ones is dearer. */
  readonly butters: string;
}

/** Shares are whole or half percents. */
export const stepPercent = 0.5;

const sum = (lines: readonly DesignLine[]): number => lines.reduce((all, { percent }) => all + percent, 0);

/** Sums of halves and hundredths without floating-point noise. */
const tidy = (percent: number): number => Number(percent.toFixed(2));

/** Percent that main line and fillers have together. */
export const openPercent = (sketch: Sketch): number => tidy(100 - sum(sketch.fixed));

const shared = (fillers: Sketch['fillers'], percent: number): readonly DesignLine[] => {
  const each = Math.floor(percent / fillers.length / stepPercent) * stepPercent;
  return fillers.map((filler, place) => ({
    ...filler,
    percent: place === 0 ? tidy(percent - each * (fillers.length - 1)) : each,
  }));
};

/** The recipe with `percent` of the main line; lines of nothing are left away. */
export const linesAt = (sketch: Sketch, percent: number): readonly DesignLine[] =>
  [
    { ingredient: sketch.main.ingredient, percent },
    ...sketch.fixed,
    ...shared(sketch.fillers, tidy(openPercent(sketch) - percent)),
  ].filter((line) => line.percent > 0);

const places: Readonly<Record<Ingredient['kind'], number>> = {
  wax: 0,
  butter: 1,
  'animal-fat': 1,
  'liquid-oil': 2,
  additive: 3,
  herb: 3,
  'essential-oil': 4,
  resinoid: 4,
  flavour: 4,
};

/** Place of an ingredient in a written-out recipe: wax, butters, oils, small doses, scent. */
export const placeOf = (ingredient: Ingredient | undefined): number =>
  ingredient ? places[ingredient.kind] : places.herb;
