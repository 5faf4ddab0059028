import { type CostChange, compareMoney, costChange } from '../cost/mix-cost.ts';
import type { Money } from '../cost/money.ts';
import type { Prices } from '../cost/prices.ts';
import type { Work } from '../work.ts';
import type { Mix } from './mix.ts';
import { type Candidate, type RankOptions, ranked } from './rank.ts';
import { replace } from './replace.ts';
import { roleOfId } from './role.ts';

/** A candidate with what it does to the cost of a kilogram, once it is in the recipe as its job asks. */
export interface Priced {
  readonly candidate: Candidate;
  readonly change: CostChange;
}

export interface Market {
  readonly prices: Prices | undefined;
  readonly currency: string;
}

/** Candidates as they come, each put in its place and priced; those that cannot be put in are left away. */
export function* pricedIn(
  mix: Mix,
  old: string,
  candidates: readonly Candidate[],
  { prices, currency }: Market,
): Work<readonly Priced[]> {
  const priced: Priced[] = [];
  for (const candidate of candidates) {
    yield;
    const done = replace(mix, old, candidate.ingredient);
    if (!done.ok) continue;
    const change = costChange(mix.portions, done.value.mix.portions, prices, currency);
    priced.push({ candidate, change });
  }
  return priced;
}

/** Those whose cost can be told, cheapest first, the better likeness first where two cost the same. */
export const byPrice = (priced: readonly Priced[]): readonly Priced[] =>
  priced
    .filter(({ change }) => change.comesTo !== undefined)
    .toSorted((a, b) => {
      const [one, other] = [a.change.comesTo, b.change.comesTo];
      const order = one && other ? compareMoney(one, other) : 0;
      return order === 0 ? b.candidate.score - a.candidate.score : order;
    });

/** Below this score a cheaper thing is no likeness, and a cheaper balm is another balm. */
export const alikeScore = 55;

/** More than are shown: what is cheap need not be most alike. */
export const mostPriced = 60;

export interface Saving extends Priced {
  readonly from: string;
  /** Below nothing: what a kilogram costs less. */
  readonly perKg: Money;
}

function* savingsOf(
  mix: Mix,
  from: string,
  withouts: readonly string[],
  market: Market,
  options: RankOptions,
): Work<readonly Saving[]> {
  const ranking = yield* ranked(from, mix.portions, withouts, { ...options, most: mostPriced });
  if (!ranking.ok) return [];
  const alike = ranking.value.candidates.filter(({ score }) => score >= alikeScore);
  return (yield* pricedIn(mix, from, alike, market)).flatMap((priced) => {
    const { perKg } = priced.change;
    return perKg && perKg.top < 0n ? [{ ...priced, from, perKg }] : [];
  });
}

/**
 * The one swap that takes the most off the cost of a kilogram among things alike whose price is noted; nothing when no
 * such swap saves anything. Scents are left alone: they are chosen by nose.
 */
export function* bestSaving(
  mix: Mix,
  withouts: readonly string[],
  market: Market,
  options: RankOptions = {},
): Work<Saving | undefined> {
  const all: Saving[] = [];
  for (const from of new Set(mix.portions.map(({ ingredient }) => ingredient))) {
    if (roleOfId(from) === 'aroma' || roleOfId(from) === 'herb') continue;
    all.push(...(yield* savingsOf(mix, from, withouts, market, options)));
  }
  return all.reduce<Saving | undefined>(
    (best, each) => (best && compareMoney(best.perKg, each.perKg) <= 0 ? best : each),
    undefined,
  );
}
