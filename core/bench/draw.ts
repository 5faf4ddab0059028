import { lotKey } from './codes.ts';
import type { Draw } from './event-fields.ts';
import { minusG, plusG } from './exact.ts';
import type { Bench, Lot } from './state.ts';

/** What is wanted of one ingredient; `infusedWith` asks for an oil infused with that herb in the house. */
export interface Need {
  readonly ingredient: string;
  readonly grams: number;
  readonly infusedWith?: string | undefined;
  /** Lots named by the maker: drawn first, in this order. */
  readonly from?: readonly string[] | undefined;
}

export interface Drawn {
  readonly draws: readonly Draw[];
  /** What no lot covered. */
  readonly shortG: number;
  /** Lots that would have covered it and are past their date. */
  readonly expired: readonly string[];
  /** Lots named by the maker that are of something else, unknown or empty. */
  readonly unfit: readonly string[];
}

const farOff = '9999-12-31';

/** Oldest best-before first; lots without a date come last, then the one that came first. */
export const byDate = (a: Lot, b: Lot): number => {
  const [first, second] = [a.bestBefore ?? farOff, b.bestBefore ?? farOff];
  if (first !== second) return first < second ? -1 : 1;
  return a.on === b.on ? (a.lot < b.lot ? -1 : 1) : a.on < b.on ? -1 : 1;
};

/** A lot may be used on its date and not after it. */
export const isExpired = ({ bestBefore }: Lot, on: string): boolean =>
  bestBefore !== undefined && bestBefore < on;

/** "Calendula oil", whatever oil it was steeped in. */
const anyOil = 'infused-oil';

/**
 * True for a lot that can stand for what is wanted: the same ingredient, infused with the same herb or with none. An oil
 * that is named by its herb alone stands for every oil with that herb.
 */
export const isLotOf = (
  lot: Lot,
  { ingredient, infusedWith }: Pick<Need, 'ingredient' | 'infusedWith'>,
): boolean => {
  const same = lot.ingredient === ingredient;
  if (infusedWith === undefined) return same && lot.herbs === undefined;
  const named = same || ingredient === anyOil || lot.ingredient === anyOil;
  return named && lot.herbs?.includes(infusedWith) === true;
};

/** A lot that the maker named may be of the same oil with a herb in it that the recipe does not name, or without it. */
const mayBeNamed = (lot: Lot, { ingredient, infusedWith }: Need): boolean =>
  lot.ingredient === ingredient && (lot.herbs === undefined) !== (infusedWith === undefined);

/** The lots the maker named, as far as they can stand for what is wanted: just that first, else the same oil. */
const namedFor = (bench: Bench, need: Need): readonly Lot[] => {
  const named = (need.from ?? []).flatMap((code) => bench.lots.get(lotKey(code)) ?? []);
  const filled = named.filter(({ leftG }) => leftG > 0);
  const just = filled.filter((lot) => isLotOf(lot, need));
  return just.length > 0 ? just : filled.filter((lot) => mayBeNamed(lot, need));
};

/**
 * Draws what is wanted on a day: from the named lots first, then from the others by oldest best-before, splitting over
 * lots. A lot past its date is drawn only when it was named by the maker, and `expired` tells of it either way.
 */
export const drawFor = (bench: Bench, need: Need, on: string): Drawn => {
  const all = [...bench.lots.values()].filter((lot) => isLotOf(lot, need) && lot.leftG > 0).sort(byDate);
  const named = need.from ?? [];
  const chosen = namedFor(bench, need);
  const others = all.filter((lot) => !chosen.includes(lot));
  const draws: Draw[] = [];
  let missing = need.grams;
  for (const lot of [...chosen, ...others.filter((each) => !isExpired(each, on))]) {
    if (missing <= 0) break;
    const grams = Math.min(missing, lot.leftG);
    draws.push({ lot: lot.lot, grams });
    missing = minusG(missing, grams);
  }
  const drawnExpired = chosen.filter(
    (lot) => isExpired(lot, on) && draws.some(({ lot: code }) => code === lot.lot),
  );
  const leftOut = missing > 0 ? others.filter((lot) => isExpired(lot, on)) : [];
  return {
    draws,
    shortG: Math.max(0, missing),
    expired: [...drawnExpired, ...leftOut].map(({ lot }) => lot),
    unfit: named.filter((code) => !chosen.some((lot) => lotKey(lot.lot) === lotKey(code))),
  };
};

/** Grams of an ingredient on the shelf that may be used on a day, plain and infused lots apart. */
export const inStockG = (bench: Bench, on: string): ReadonlyMap<string, number> => {
  const sums = new Map<string, number>();
  for (const lot of bench.lots.values()) {
    if (lot.leftG <= 0 || lot.herbs !== undefined || isExpired(lot, on)) continue;
    sums.set(lot.ingredient, plusG(sums.get(lot.ingredient) ?? 0, lot.leftG));
  }
  return sums;
};

/** The bench with so much less in its lots. */
export const lessDrawn = (bench: Bench, draws: readonly Draw[]): Bench => {
  let { lots } = bench;
  for (const { lot, grams } of draws) {
    const key = lotKey(lot);
    const before = lots.get(key);
    if (before) lots = lots.set(key, { ...before, leftG: minusG(before.leftG, grams) });
  }
  return { ...bench, lots };
};

/**
 * Draws for several needs in one go: a lot drawn by one need has that much less for the next.
 */
export const drawForAll = (bench: Bench, needs: readonly Need[], on: string): readonly Drawn[] => {
  let now = bench;
  return needs.map((need) => {
    const drawn = drawFor(now, need, on);
    now = lessDrawn(now, drawn.draws);
    return drawn;
  });
};
