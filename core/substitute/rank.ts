import type { Ingredient } from '../data/ingredient.ts';
import { ingredientById, ingredients } from '../ingredients.ts';
import { treatmentOf } from '../melt/treatment.ts';
import { fail, ok, type Result } from '../result.ts';
import { finish, type Work } from '../work.ts';
import type { Portion } from './mix.ts';
import { type Effect, standingOf } from './rank-firm.ts';
import { type Asked, effectFor, type KnownParts, kindOf, known, partsFor, scoreOf } from './rank-parts.ts';
import { type Role, roleOf } from './role.ts';
import { isFineWithout } from './without.ts';

export interface Candidate {
  readonly ingredient: string;
  /** 0 to 100. */
  readonly score: number;
  readonly parts: KnownParts;
  /** Waxes: at the percent that holds the firmness; butters: gram for gram. */
  readonly effect?: Effect;
}

export interface Ranking {
  readonly role: Role;
  readonly candidates: readonly Candidate[];
  /** Things of the same kind that nobody has melting figures for: named, not ranked. */
  readonly unranked: readonly string[];
}

export type RankProblem =
  | { readonly code: 'unknown-ingredient'; readonly ingredient: string }
  | { readonly code: 'not-in-recipe'; readonly ingredient: string };

const candidateOf = (ask: Asked, found: Ingredient): Candidate => {
  const effect = effectFor(ask, found);
  const parts = partsFor(ask, found, effect);
  return {
    ingredient: found.id,
    score: scoreOf(ask.role, parts),
    parts: known(parts),
    ...(effect ? { effect } : {}),
  };
};

/** Things sold as a kind and not as one thing ("infused oil", "flavour oil"): no answer to what to use. */
const nothingInParticular = new Set(['infused-oil', 'flavour-oil']);

const hasFigures = (found: Ingredient): boolean => treatmentOf(found).kind === 'melts';

/** Animal fats only stand in for animal fats; colour for colour, an antioxidant for an antioxidant. */
const isOffered = (old: Ingredient, role: Role, found: Ingredient): boolean => {
  if (found.id === old.id || found.lips === 'avoid' || nothingInParticular.has(found.id)) return false;
  if (roleOf(found) !== role) return false;
  if (found.kind === 'animal-fat') return old.kind === 'animal-fat';
  if (role === 'oil') return found.kind === 'liquid-oil';
  return role !== 'additive' || kindOf(old, found) > 0;
};

/** A butter or wax without melting figures cannot be judged, so it is not offered as if it were fine. */
const needsFigures = (role: Role): boolean => role === 'butter' || role === 'wax';

export interface RankOptions {
  /** Only these are offered: what is in stock, say. */
  readonly only?: ReadonlySet<string>;
  /** Candidates at most; 12 unless said otherwise. */
  readonly most?: number;
}

/** Herbs and scents are rarely alike enough for more. */
const fewestPoints = 20;
const mostCandidates = 12;

/** Recipes to judge a candidate in where none is named: a plain salve, and a salve with a butter. */
export const plainRecipe = (old: Ingredient): readonly Portion[] => {
  const role = roleOf(old);
  if (role === 'wax') return [portion(old.id, 20), portion('olive-oil', 80)];
  if (role === 'butter') return [portion('beeswax', 20), portion(old.id, 30), portion('olive-oil', 50)];
  return [portion(old.id, 100)];
};

const portion = (ingredient: string, percent: number): Portion => ({ ingredient, percent });

/**
 * Ranks what can replace an ingredient, for the job it does in a recipe (or, without one, in a plain salve).
 * `withouts` are things the recipe has to do without; a candidate that leaves a question open there is not offered.
 */
export function* ranked(
  id: string,
  recipe: readonly Portion[] | undefined,
  withouts: readonly string[] = [],
  { only, most = mostCandidates }: RankOptions = {},
): Work<Result<Ranking, RankProblem>> {
  const old = ingredientById(id);
  if (!old) return fail({ code: 'unknown-ingredient', ingredient: id });
  const portions = recipe ?? plainRecipe(old);
  const role = roleOf(old);
  const present = portions.some(
    ({ ingredient, infusedWith, percent }) =>
      infusedWith === old.id || (ingredient === old.id && percent > 0),
  );
  if (!present && role !== 'herb') return fail({ code: 'not-in-recipe', ingredient: old.id });
  const lines = portions.map(({ ingredient, percent }) => ({ ingredient, weight: percent }));
  const standing = needsFigures(role) ? standingOf(lines, old.id) : undefined;
  const ask: Asked = { old, role, portions, ...(standing ? { standing } : {}) };
  const pool = ingredients.filter(
    (found) => isOffered(old, role, found) && isFineWithout(found, withouts) && (only?.has(found.id) ?? true),
  );
  const judged = pool.filter((found) => !needsFigures(role) || hasFigures(found));
  const candidates: Candidate[] = [];
  for (const found of judged) {
    yield;
    candidates.push(candidateOf(ask, found));
  }
  return ok({
    role,
    candidates: candidates
      .filter(({ score }) => score >= fewestPoints)
      .toSorted((a, b) => b.score - a.score)
      .slice(0, most),
    unranked: pool.filter((found) => !judged.includes(found)).map((found) => found.id),
  });
}

/** The same in one go. */
export const rank = (...asked: Parameters<typeof ranked>): Result<Ranking, RankProblem> =>
  finish(ranked(...asked));
