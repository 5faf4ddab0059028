import type { Money } from '../cost/money.ts';
import { ingredientById } from '../ingredients.ts';
import { blendOf } from '../melt/blend.ts';
import { forecastOf, type MeltForecast } from '../melt/forecast.ts';
import { finish, type Work } from '../work.ts';
import { clearClashes } from './clashes.ts';
import { hottestC } from './firmness-of.ts';
import type { Relaxed } from './relax.ts';
import { formRules, hottestPromiseC } from './rules.ts';
import type { Candidate } from './search.ts';
import { relaxedBy, settle } from './settle.ts';
import type { DesignLine } from './sketch.ts';
import type { Wishes } from './wishes.ts';

export interface Proposal {
  /** Percent by weight, 100 in all: whole or half percents but for scents that may only be in less. */
  readonly lines: readonly DesignLine[];
  readonly forecast: MeltForecast;
  /** Hottest day in whole °C that it survives in its form, at most 49; missing below 20 °C. */
  readonly survivesC?: number;
  /** What carries it: a wax, or a butter where there may be no wax. */
  readonly main: string;
  /** True when the hottest day asked for more wax than the form alone. */
  readonly forHeat: boolean;
  /** What it costs for the unit of the price wish, exactly. */
  readonly price?: Money;
  /** Unopened months of the ingredient that keeps shortest, where the library knows. */
  readonly keeps?: { readonly ingredient: string; readonly months: number };
}

export interface Design {
  /** The wishes that the proposals keep: those asked for, or as relaxed. */
  readonly wishes: Wishes;
  readonly proposals: readonly Proposal[];
  /** What could not be kept and by how much; empty when all wishes are. */
  readonly relaxed: readonly Relaxed[];
}

const keepsOf = (lines: readonly DesignLine[]): Proposal['keeps'] => {
  const lives = lines.flatMap(({ ingredient }) => {
    const months = ingredientById(ingredient)?.shelfLifeMonths?.low;
    return months === undefined ? [] : [{ ingredient, months }];
  });
  return lives.reduce<Proposal['keeps']>(
    (least, life) => (least && least.months <= life.months ? least : life),
    undefined,
  );
};

const proposalOf = (candidate: Candidate, wishes: Wishes): Proposal | undefined => {
  const blend = blendOf(candidate.lines.map(({ ingredient, percent }) => ({ ingredient, weight: percent })));
  if (!blend.ok) return undefined;
  const survivesC = hottestC(blend.value.freezing.aged, formRules[wishes.form]);
  const keeps = keepsOf(candidate.lines);
  return {
    lines: candidate.lines,
    forecast: forecastOf(blend.value),
    ...(survivesC === undefined ? {} : { survivesC }),
    main: candidate.main,
    forHeat: candidate.forHeat,
    ...(keeps ? { keeps } : {}),
    ...(candidate.price ? { price: candidate.price } : {}),
  };
};

/** Above the hottest promise nothing is searched: the wish is relaxed to it at once, if anything reaches that far. */
const promised = (wishes: Wishes): { wishes: Wishes; relaxed: readonly Relaxed[] } => {
  const { survivesC } = wishes;
  if (survivesC === undefined || survivesC <= hottestPromiseC) return { wishes, relaxed: [] };
  return {
    wishes: { ...wishes, survivesC: hottestPromiseC },
    relaxed: [{ wish: 'survives_c', to: hottestPromiseC, why: 'promise' }],
  };
};

const subjectOf = (relaxed: Relaxed): string =>
  relaxed.wish === 'with' ? `with ${relaxed.ingredient}` : relaxed.wish;

/** A later, lower figure for the same wish takes the place of an earlier one. */
const lastOfEach = (relaxed: readonly Relaxed[]): readonly Relaxed[] => [
  ...new Map(relaxed.map((each) => [subjectOf(each), each])).values(),
];

/**
 * From wishes to recipes: up to three proposals that differ in their wax or butters, each with its forecast, all lines
 * in their usual ranges. Where the wishes contradict each other the least of them is relaxed and named; what `vegan`
 * and `without` exclude is never proposed. The same wishes always give the same answer.
 */
export function* designing(wishes: Wishes): Work<Design> {
  const cleared = clearClashes(wishes);
  const capped = promised(cleared.wishes);
  const settled = yield* settle(capped.wishes);
  const proposals: Proposal[] = [];
  for (const candidate of settled.found.candidates) {
    yield;
    const proposal = proposalOf(candidate, settled.wishes);
    if (proposal) proposals.push(proposal);
  }
  return {
    wishes: settled.wishes,
    proposals,
    relaxed: lastOfEach([...relaxedBy(cleared.clashes), ...capped.relaxed, ...settled.relaxed]),
  };
}

/** The same in one go. */
export const design = (wishes: Wishes): Design => finish(designing(wishes));
