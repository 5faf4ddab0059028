import type { Money } from '../cost/money.ts';
import { ingredientById } from '../ingredients.ts';
import type { Work } from '../work.ts';
import { type Pan, pan } from './firmness-of.ts';
import { cheaper, costFor, isWithin, type PriceWish, timesDearer } from './price.ts';
import { formRules } from './rules.ts';
import { type DesignLine, linesAt, placeOf, type Sketch } from './sketch.ts';
import { sketchesFor } from './sketches.ts';
import { hottestOf, type Solved, solveSketch } from './solve-sketch.ts';
import type { Wishes } from './wishes.ts';

/** Proposals that are shown at most. */
export const mostProposals = 3;

/** What a second proposal with the same butters, or another with the same wax, costs: they are to differ. */
const sameButterCost = 0.6;
const sameMainCost = 3;

const mainOf = ({ sketch }: Solved): string => sketch.main.ingredient;

const repeats = (solved: Solved, chosen: readonly Solved[]): number =>
  (chosen.some((other) => other.sketch.butters === solved.sketch.butters) ? sameButterCost : 0) +
  (chosen.some((other) => mainOf(other) === mainOf(solved)) ? sameMainCost : 0);

const carries = (id: string): boolean => /^(?:wax|butter)$/.test(ingredientById(id)?.kind ?? '');

/**
 * Waxes and butters of a proposal, in any order: cocoa with shea is the same as shea with cocoa. Read off its lines, for a
 * butter may stand in as what fills up, and then two plans come to one recipe.
 */
const kindOf = ({ sketch, percent }: Solved): string =>
  linesAt(sketch, percent)
    .map(({ ingredient }) => ingredient)
    .filter(carries)
    .toSorted()
    .join('+');

/** The cheapest ones that differ from each other; the earlier sketch where two cost the same. */
const choose = <S extends Solved>(all: readonly S[]): readonly S[] => {
  const chosen: S[] = [];
  const kinds = new Map(all.map((solved) => [solved, kindOf(solved)]));
  const taken = new Set<string | undefined>();
  while (chosen.length < mostProposals) {
    let best: { solved: S; cost: number } | undefined;
    for (const solved of all) {
      if (taken.has(kinds.get(solved))) continue;
      const cost = solved.cost + repeats(solved, chosen);
      if (!best || cost < best.cost) best = { solved, cost };
    }
    if (!best) break;
    chosen.push(best.solved);
    taken.add(kinds.get(best.solved));
  }
  return chosen;
};

const written = ({ sketch, percent }: Solved): readonly DesignLine[] => {
  const lines = linesAt(sketch, percent);
  const place = ({ ingredient }: DesignLine): number => placeOf(ingredientById(ingredient));
  return lines.toSorted((a, b) => place(a) - place(b) || b.percent - a.percent);
};

/** A recipe that fits the wishes, before its forecast. */
export interface Candidate {
  readonly lines: readonly DesignLine[];
  readonly main: string;
  readonly forHeat: boolean;
  /** For the unit of the price wish, where there is one. */
  readonly price?: Money;
}

export interface Search {
  readonly candidates: readonly Candidate[];
  readonly sketches: readonly Sketch[];
  readonly pan: Pan;
  /** The least that any recipe with these wishes costs, whatever the ceiling. */
  readonly least?: Money;
}

interface PricedSolved extends Solved {
  readonly price?: Money;
}

/** Twice as dear counts as much as a wax that makers do not reach for. */
const dearCost = 3;

/** What stays within the ceiling; without a ceiling the cheap come first. */
const affordable = (
  solved: readonly Solved[],
  wish: PriceWish | undefined,
): { readonly within: readonly PricedSolved[]; readonly least?: Money } => {
  if (!wish) return { within: solved };
  const priced = solved.flatMap((each) => {
    const price = costFor(linesAt(each.sketch, each.percent), wish);
    return price ? [{ ...each, price }] : [];
  });
  const least = priced.map(({ price }) => price).toSorted(cheaper)[0];
  if (!least) return { within: [] };
  const within = priced
    .filter(({ price }) => isWithin(price, wish))
    .map((each) => ({ ...each, cost: each.cost + dearCost * (timesDearer(each.price, least) - 1) }));
  return { within, least };
};

/** Looks through every sketch: bounded by their number, about thirty prepared blends each; a pause before each. */
export function* search(wishes: Wishes): Work<Search> {
  const rule = formRules[wishes.form];
  const sketches = sketchesFor(wishes);
  const one = pan();
  const solved: Solved[] = [];
  for (const sketch of sketches) {
    yield;
    const found = solveSketch(sketch, rule, wishes.survivesC, one);
    if (found) solved.push(found);
  }
  const { within, least } = affordable(solved, wishes.price);
  const candidates = choose(within).map((each) => ({
    lines: written(each),
    main: each.sketch.main.ingredient,
    forHeat: each.forHeat,
    ...(each.price ? { price: each.price } : {}),
  }));
  return { candidates, sketches, pan: one, ...(least ? { least } : {}) };
}

/** Hottest day in whole °C that the form can be made to survive with everything else as wished. */
export function* hottestFor(wishes: Wishes, { sketches, pan: one }: Search): Work<number | undefined> {
  let hottest: number | undefined;
  for (const sketch of sketches) {
    yield;
    const found = hottestOf(sketch, formRules[wishes.form], one);
    if (found !== undefined) hottest = Math.max(hottest ?? found, found);
  }
  return hottest;
}
