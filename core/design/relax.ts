import type { Money } from '../cost/money.ts';
import { ingredients } from '../ingredients.ts';
import type { Work } from '../work.ts';
import { type ClashReason, wantedKeepsMonths } from './clashes.ts';
import { ceilingFor } from './price.ts';
import { hottestPromiseC } from './rules.ts';
import { hottestFor, type Search, search } from './search.ts';
import { stepPercent } from './sketch.ts';
import type { Form, Wishes } from './wishes.ts';

/** A wish that cannot be kept beside the others, and what it would have to be. */
export type Relaxed =
  | { readonly wish: 'survives_c'; readonly to: number; readonly why: 'promise' | 'firmness' }
  | { readonly wish: 'shelf_life_months'; readonly to: number }
  /** What the cheapest recipe with the other wishes costs. */
  | { readonly wish: 'price'; readonly to: Money }
  | { readonly wish: 'form'; readonly to: Form }
  /** Share in percent that the ingredient may have instead; 0 leaves it out. */
  | {
      readonly wish: 'with';
      readonly ingredient: string;
      readonly to: number;
      readonly why: ClashReason | 'firmness';
    }
  /** What may still be excluded. Nothing is proposed with what a maker excluded. */
  | { readonly wish: 'without'; readonly drop: string; readonly to: readonly string[] };

export interface Settled {
  readonly wishes: Wishes;
  readonly found: Search;
  readonly relaxed: readonly Relaxed[];
}

/** One way to relax a wish; nothing where it does not help. */
export type Attempt = (wishes: Wishes, found: Search) => Work<Settled | undefined>;

function* works(wishes: Wishes, relaxed: Relaxed): Work<Settled | undefined> {
  const found = yield* search(wishes);
  return found.candidates.length > 0 ? { wishes, found, relaxed: [relaxed] } : undefined;
}

/** The hottest day below the wished one that works. */
export const lessHeat: Attempt = function* (wishes, found) {
  if (wishes.survivesC === undefined) return undefined;
  const to = yield* hottestFor(wishes, found);
  if (to === undefined || to >= wishes.survivesC) return undefined;
  const why = to >= hottestPromiseC ? 'promise' : 'firmness';
  return yield* works({ ...wishes, survivesC: to }, { wish: 'survives_c', to, why });
};

/** Months that any ingredient of the library keeps, below what was wished, shortest first. */
export const shelfLives = (below: number): readonly number[] =>
  [...new Set(ingredients.flatMap(({ shelfLifeMonths }) => shelfLifeMonths?.low ?? []))]
    .filter((months) => months < below)
    .toSorted((a, b) => a - b);

/** The longest shelf life below the wished one that works: the shorter it is, the more may go in. */
export const shorterLife: Attempt = function* (wishes) {
  if (wishes.shelfLifeMonths === undefined) return undefined;
  const lives = shelfLives(Math.min(wishes.shelfLifeMonths, wantedKeepsMonths(wishes) + 1));
  let settled: Settled | undefined;
  let low = 0;
  let high = lives.length - 1;
  while (low <= high) {
    const middle = Math.ceil((low + high) / 2);
    const to = lives[middle] ?? 0;
    const tried = yield* works({ ...wishes, shelfLifeMonths: to }, { wish: 'shelf_life_months', to });
    settled = tried ?? settled;
    if (tried) low = middle + 1;
    else high = middle - 1;
  }
  return settled;
};

const otherForms: Readonly<Record<Form, readonly Form[]>> = {
  stick: ['tin', 'tube'],
  tin: ['stick', 'tube'],
  tube: ['tin', 'stick'],
};

const otherForm: Attempt = function* (wishes) {
  for (const form of otherForms[wishes.form]) {
    const settled = yield* works({ ...wishes, form }, { wish: 'form', to: form });
    if (settled) return settled;
  }
  return undefined;
};

const withShare = (wishes: Wishes, ingredient: string, percent: number | undefined): Wishes => ({
  ...wishes,
  with: wishes.with.map((each) =>
    each.ingredient === ingredient ? { ingredient, ...(percent === undefined ? {} : { percent }) } : each,
  ),
});

/** The share closest to the wished one that works, in half percents: halved down between one that does and the wish. */
function* nearestShare(
  wishes: Wishes,
  ingredient: string,
  working: number,
  wished: number,
): Work<Settled | undefined> {
  let good = Math.round(working / stepPercent);
  let bad = Math.round(wished / stepPercent);
  let settled: Settled | undefined;
  while (Math.abs(good - bad) > 1) {
    const middle = Math.round((good + bad) / 2);
    const to = middle * stepPercent;
    const tried = yield* works(withShare(wishes, ingredient, to), {
      wish: 'with',
      ingredient,
      to,
      why: 'firmness',
    });
    if (tried) good = middle;
    else bad = middle;
    settled = tried ?? settled;
  }
  return settled;
}

/** Another share for one ingredient that has one. */
const otherShare: Attempt = function* (wishes) {
  for (const { ingredient, percent } of wishes.with) {
    if (percent === undefined) continue;
    const open = { wish: 'with', ingredient, to: 0, why: 'firmness' } as const;
    const free = yield* works(withShare(wishes, ingredient, undefined), open);
    const to = free?.found.candidates[0]?.lines.find((line) => line.ingredient === ingredient)?.percent;
    if (!free || to === undefined) continue;
    return (yield* nearestShare(wishes, ingredient, to, percent)) ?? { ...free, relaxed: [{ ...open, to }] };
  }
  return undefined;
};

/** One ingredient left out. */
const leftOut: Attempt = function* (wishes) {
  for (const { ingredient } of wishes.with) {
    const others = wishes.with.filter((each) => each.ingredient !== ingredient);
    const settled = yield* works(
      { ...wishes, with: others },
      { wish: 'with', ingredient, to: 0, why: 'firmness' },
    );
    if (settled) return settled;
  }
  return undefined;
};

/** Says which exclusion stands in the way. What it excludes is not proposed. */
const lessExcluded: Attempt = function* (wishes, found) {
  for (const drop of wishes.without) {
    const to = wishes.without.filter((word) => word !== drop);
    if (yield* works({ ...wishes, without: to }, { wish: 'without', drop, to }))
      return { wishes, found, relaxed: [{ wish: 'without', drop, to }] };
  }
  return undefined;
};

/** The ceiling raised to what the cheapest costs: the other wishes hold, so the price is what stands against them. */
const dearer: Attempt = function* (wishes, { least }) {
  if (!least || !wishes.price?.ceiling) return undefined;
  const to = ceilingFor(least, wishes.price);
  return yield* works({ ...wishes, price: { ...wishes.price, ceiling: to } }, { wish: 'price', to });
};

const attempts: readonly Attempt[] = [
  dearer,
  lessHeat,
  shorterLife,
  otherShare,
  otherForm,
  leftOut,
  lessExcluded,
];

/** The first wish that helps when it alone is relaxed, the least missed first. */
export const oneRelaxed: Attempt = function* (wishes, found) {
  for (const attempt of attempts) {
    const settled = yield* attempt(wishes, found);
    if (settled) return settled;
  }
  return undefined;
};
