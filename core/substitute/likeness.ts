import type { Fat, Ingredient } from '../data/ingredient.ts';
import { isFat } from '../ingredients.ts';
import { oxidisabilityOf, typicalAcids } from './oxidation.ts';

/** How alike two things are in one respect, or how well one does there: 0 to 100. Missing: nobody could tell. */
export type Part = number | undefined;

const clamp = (value: number): number => Math.max(0, Math.min(100, value));

/** Jojoba is a liquid wax: the same acids, bound otherwise, are half as alike. */
const otherBond = 0.5;

/** Percent of fatty acids two fats have in common. */
export const sharedAcids = (a: Ingredient, b: Ingredient): Part => {
  const [mine, other] = [typicalAcids(a), typicalAcids(b)];
  if (!mine || !other) return undefined;
  let shared = 0;
  for (const [acid, percent] of mine) shared += Math.min(percent, other.get(acid) ?? 0);
  const sameBond = isFat(a) && isFat(b) && a.triglyceride === b.triglyceride;
  return clamp(sameBond ? shared : shared * otherBond);
};

/** The feel texts start with how heavy an oil is, in the trade's own words (common practice). */
const heaviness: readonly (readonly [RegExp, number])[] = [
  [/^very hard/, 6],
  [/^hard/, 5],
  [/^heavy-medium|^medium-heavy/, 4],
  [/^soft-heavy|^heavy/, 5],
  [/^light-medium|^medium-light/, 2],
  [/^light/, 1],
  [/^medium/, 3],
  [/^soft/, 3],
];

const heavinessOf = ({ feel }: Fat): number | undefined => heaviness.find(([shape]) => shape.test(feel))?.[1];

/** Points for each step of heaviness apart: light and light-medium are hard to tell. */
const stepPoints = 15;

export const sameFeel = (a: Ingredient, b: Ingredient): Part => {
  if (!isFat(a) || !isFat(b)) return undefined;
  const [mine, other] = [heavinessOf(a), heavinessOf(b)];
  if (mine === undefined || other === undefined) return undefined;
  return clamp(100 - stepPoints * Math.abs(mine - other));
};

/** Points lost for each unit of oxidisability (Cox value, weights from memory) over the old one. */
const oxidationPoints = 10;

/** 100 for what keeps as well or better. */
export const keepsAsWell = (old: Ingredient, candidate: Ingredient): Part => {
  const [before, after] = [oxidisabilityOf(old), oxidisabilityOf(candidate)];
  if (before === undefined || after === undefined) return undefined;
  return clamp(100 - oxidationPoints * Math.max(0, after - before));
};

const loud = new Set(['tree-nut', 'peanut', 'sesame', 'soy', 'wheat', 'bee', 'wool', 'contact']);

/** 100 when it brings no allergen; 0 when it brings one that was not there. */
export const bringsNoAllergen = (old: Ingredient, candidate: Ingredient): number => {
  if (!loud.has(candidate.allergen.flag)) return 100;
  return candidate.allergen.flag === old.allergen.flag ? 40 : 0;
};

/** Points lost for each 0.001 g/ml apart. */
const densityPoints = 2;

export const sameDensity = (a: Ingredient, b: Ingredient): Part => {
  const [mine, other] = [a.densityGMl?.value, b.densityGMl?.value];
  return mine === undefined || other === undefined
    ? undefined
    : clamp(100 - densityPoints * 1000 * Math.abs(mine - other));
};

/** How far two melting ranges cover the same degrees; 10 °C between them leaves nothing. */
export const sameMelting = (a: Ingredient, b: Ingredient): Part => {
  const [mine, other] = [a.meltC, b.meltC];
  if (!mine || !other) return undefined;
  const lows = Math.abs((mine.low ?? mine.value) - (other.low ?? other.value));
  const highs = Math.abs((mine.high ?? mine.value) - (other.high ?? other.value));
  return clamp(100 - 5 * (lows + highs));
};

/** A vegan thing is not replaced by an animal one without losing points. */
export const staysVegan = (old: Ingredient, candidate: Ingredient): number =>
  old.vegan === 'no' || candidate.vegan === 'yes' ? 100 : candidate.vegan === 'varies' ? 60 : 0;

/** Lips lick: what needs care there is worth less. */
export const goodOnLips = ({ lips }: Ingredient): number => ({ ok: 100, caution: 40, avoid: 0 })[lips];

const nameWords = (text: string): readonly string[] =>
  text.split(/[\s-]+/).filter((word) => !['oil', 'butter', 'wax', 'seed', ''].includes(word));

/** Points where makers do not name it: no fault of its own. */
const unnamedPoints = 40;

/** Whether makers name it as a substitute: each thing named in the row stands between commas (common practice). */
export const namedByMakers = (old: Ingredient, candidate: Ingredient): Part => {
  if (!isFat(old) || !isFat(candidate)) return undefined;
  const wanted = nameWords(candidate.name.replace(/\s*\(.*/, ''));
  const named = old.substitutes
    .replace(/\([^)]*\)/g, '')
    .split(/[,;]/)
    .map((item) => nameWords(item));
  return named.some((words) => wanted.length > 0 && wanted.every((word) => words.includes(word)))
    ? 100
    : unnamedPoints;
};
