import type { Mix, Portion } from '../../core/substitute/mix.ts';
import type { Replaced } from '../../core/substitute/replaced.ts';
import { roleOfId } from '../../core/substitute/role.ts';
import type { NextStep } from '../answer.ts';
import type { SubstituteWish } from '../topics/substitute.ts';
import { shortName } from './warnings.ts';
import { withoutWords } from './without.ts';

/** Longest a button's message may be. */
const longestSay = 95;

/** A recipe with a herb in it does not fit into one short line. */
const isPlain = ({ portions, strained }: Mix): boolean =>
  strained.length === 0 && portions.every(({ infusedWith, fresh }) => !infusedWith && !fresh);

/** The line that takes up the rounding: the largest oil, or the largest line. */
const rest = (portions: readonly Portion[]): Portion | undefined => {
  const oils = portions.filter(({ ingredient }) => roleOfId(ingredient) === 'oil');
  return (oils.length > 0 ? oils : portions).toSorted((a, b) => b.percent - a.percent)[0];
};

/** The new recipe in one message that saves it, when it is short enough for a button. */
const save = (name: string, mix: Mix): NextStep[] => {
  const filler = rest(mix.portions);
  if (!filler || !isPlain(mix)) return [];
  const lines = mix.portions
    .filter((portion) => portion !== filler)
    .map(({ ingredient, percent }) => `${Number(percent.toFixed(1))}% ${shortName(ingredient)}`);
  const small = mix.portions.some((portion) => portion !== filler && portion.percent < 0.05);
  const say = `save recipe ${name} 2: ${[...lines, `the rest ${shortName(filler.ingredient)}`].join(', ')}`;
  return small || say.length > longestSay ? [] : [{ label: 'Save as new', say }];
};

const others = (name: string, { from, to }: Replaced): NextStep[] => {
  const say = `what can replace ${shortName(from)} in "${name}"`;
  return say.length > longestSay ? [] : [{ label: `Other than ${shortName(to)}`, say }];
};

/** The whole change again with an amount to make, where one sentence says it. */
const make = (name: string, wish: SubstituteWish | undefined): NextStep[] => {
  if (!wish || wish.earlier) return [];
  const { from, to, without = [] } = wish;
  const swapped = from && to ? `swap ${shortName(from)} for ${shortName(to)} in "${name}"` : `"${name}"`;
  const say = `${swapped}${withoutWords(without)} and make 24 tins of 15 ml`;
  return say.length > longestSay ? [] : [{ label: '24 × 15 ml', say }];
};

/**
 * The obvious next steps after a change of a saved recipe: only what can be said in one whole message.
 * @param wish what was asked, when nothing was weighed out yet.
 */
export const nextSteps = (
  name: string | undefined,
  mix: Mix,
  last: Replaced | undefined,
  wish: SubstituteWish | undefined,
): NextStep[] =>
  name === undefined ? [] : [...make(name, wish), ...save(name, mix), ...(last ? others(name, last) : [])];
