import type { Ingredient } from '../data/ingredient.ts';
import { isAdditive, isHerb } from '../ingredients.ts';
import * as like from './likeness.ts';
import type { Portion } from './mix.ts';
import {
  type Effect,
  evidenceOf,
  gramForGramEffect,
  holdingEffect,
  inUsualShare,
  type Standing,
} from './rank-firm.ts';
import type { Role } from './role.ts';
import { scentFamilyOf } from './scent-family.ts';

/** What a score is made of, 0 to 100 each. */
export type PartName =
  | 'fatty_acids'
  | 'feel'
  | 'keeping'
  | 'allergens'
  | 'density'
  | 'melting'
  | 'firmness'
  | 'full_melt'
  | 'share'
  | 'evidence'
  | 'vegan'
  | 'lips'
  | 'practice'
  | 'kind';

/** The parts that could be told, rounded. */
export type KnownParts = Readonly<Partial<Record<PartName, number>>>;

export type Parts = Readonly<Partial<Record<PartName, like.Part>>>;

/** House weights: what matters for the job comes first. */
export const weightsOf: Readonly<Record<Role, Readonly<Partial<Record<PartName, number>>>>> = {
  oil: { fatty_acids: 35, feel: 15, keeping: 15, allergens: 15, practice: 10, density: 5, lips: 5 },
  butter: {
    firmness: 30,
    full_melt: 10,
    melting: 15,
    fatty_acids: 20,
    practice: 10,
    allergens: 10,
    vegan: 5,
  },
  wax: { full_melt: 25, share: 25, evidence: 20, melting: 10, allergens: 10, vegan: 10 },
  aroma: { kind: 60, lips: 30, share: 10 },
  herb: { kind: 50, lips: 40, allergens: 10 },
  additive: { kind: 70, lips: 20, vegan: 10 },
};

/** Weighted mean of the parts that are known. */
export const scoreOf = (role: Role, parts: Parts): number => {
  let sum = 0;
  let weight = 0;
  for (const [name, share] of Object.entries(weightsOf[role])) {
    const part = parts[name as PartName];
    if (part === undefined) continue;
    sum += part * share;
    weight += share;
  }
  return weight > 0 ? Math.round(sum / weight) : 0;
};

export const known = (parts: Parts): KnownParts =>
  Object.fromEntries(
    Object.entries(parts).flatMap(([name, part]) => (part === undefined ? [] : [[name, Math.round(part)]])),
  );

/** A fifth in firmness costs half the points, 6 °C in full melt all of them. */
const firmnessPoints = 250;
const meltPointsPerC = 100 / 6;

const ofFirmness = ({ firmnessPercent }: Effect): number =>
  Math.max(0, 100 - firmnessPoints * Math.abs(Math.log(Math.max(1e-6, 1 + firmnessPercent / 100))));
const ofFullMelt = ({ fullyMeltedC }: Effect): number =>
  Math.max(0, 100 - meltPointsPerC * Math.abs(fullyMeltedC));

const oilParts = (old: Ingredient, candidate: Ingredient): Parts => ({
  fatty_acids: like.sharedAcids(old, candidate),
  feel: like.sameFeel(old, candidate),
  keeping: like.keepsAsWell(old, candidate),
  allergens: like.bringsNoAllergen(old, candidate),
  density: like.sameDensity(old, candidate),
  practice: like.namedByMakers(old, candidate),
  lips: like.goodOnLips(candidate),
});

const firmParts = (effect: Effect | undefined): Parts =>
  effect ? { firmness: ofFirmness(effect), full_melt: ofFullMelt(effect) } : {};

const butterParts = (old: Ingredient, candidate: Ingredient, effect: Effect | undefined): Parts => ({
  ...firmParts(effect),
  practice: like.namedByMakers(old, candidate),
  melting: like.sameMelting(old, candidate),
  fatty_acids: like.sharedAcids(old, candidate),
  allergens: like.bringsNoAllergen(old, candidate),
  vegan: like.staysVegan(old, candidate),
});

const waxParts = (ask: Asked, candidate: Ingredient, effect: Effect | undefined): Parts => ({
  ...(effect
    ? { full_melt: ofFullMelt(effect), share: inUsualShare(candidate, effect.percent, without(ask)) }
    : {}),
  evidence: evidenceOf(candidate),
  melting: like.sameMelting(ask.old, candidate),
  allergens: like.bringsNoAllergen(ask.old, candidate),
  vegan: like.staysVegan(ask.old, candidate),
});

/** Like for like: the family of a scent, the botanical family of a herb, the group of an additive. */
export const kindOf = (old: Ingredient, candidate: Ingredient): number => {
  if (isHerb(old) && isHerb(candidate)) return old.family === candidate.family ? 80 : 30;
  if (isAdditive(old) && isAdditive(candidate))
    return old.additive.group === candidate.additive.group ? 80 : 0;
  return scentFamilyOf(old.id) === scentFamilyOf(candidate.id) ? 80 : 25;
};

const otherParts = (old: Ingredient, candidate: Ingredient, percent: number): Parts => ({
  kind: kindOf(old, candidate),
  lips: like.goodOnLips(candidate),
  allergens: like.bringsNoAllergen(old, candidate),
  vegan: like.staysVegan(old, candidate),
  share: inUsualShare(candidate, percent, []),
});

export interface Asked {
  readonly old: Ingredient;
  readonly role: Role;
  readonly portions: readonly Portion[];
  readonly standing?: Standing;
}

const without = ({ portions, old }: Asked) =>
  portions
    .filter(({ ingredient }) => ingredient !== old.id)
    .map(({ ingredient, percent }) => ({ ingredient, weight: percent }));

export const effectFor = ({ role, standing }: Asked, candidate: Ingredient): Effect | undefined => {
  if (!standing) return undefined;
  if (role === 'wax') return holdingEffect(standing, candidate.id);
  return role === 'butter' ? gramForGramEffect(standing, candidate.id) : undefined;
};

const percentOfOld = ({ portions, old }: Asked): number =>
  portions.reduce((sum, { ingredient, percent }) => sum + (ingredient === old.id ? percent : 0), 0);

export const partsFor = (ask: Asked, candidate: Ingredient, effect: Effect | undefined): Parts => {
  if (ask.role === 'oil') return oilParts(ask.old, candidate);
  if (ask.role === 'butter') return butterParts(ask.old, candidate, effect);
  if (ask.role === 'wax') return waxParts(ask, candidate, effect);
  return otherParts(ask.old, candidate, percentOfOld(ask));
};
