import type { Finding } from '../../core/check/finding.ts';
import type { Shares } from '../../core/check/shares.ts';
import { ingredientById, isFat } from '../../core/ingredients.ts';
import type { NextStep } from '../answer.ts';
import { nameOf } from './check-text.ts';
import { brief, plain } from './numbers.ts';

/** Longest sentence that fits a button. */
const longest = 95;

/** The strictest share of each ingredient that any finding asks for. */
const cutsOf = (findings: readonly Finding[]): ReadonlyMap<string, number> => {
  const most = new Map<string, number>();
  for (const finding of findings) {
    if (!('cuts' in finding) || finding.level === 'note') continue;
    for (const { ingredient, mostPercent } of finding.cuts)
      most.set(ingredient, Math.min(mostPercent, most.get(ingredient) ?? Number.POSITIVE_INFINITY));
  }
  return most;
};

/** What takes up what was cut: the largest oil of the recipe. */
const fillerOf = ({ lines }: Shares, cut: ReadonlyMap<string, number>): string | undefined =>
  lines
    .filter(({ ingredient, infusedWith }) => {
      const found = ingredientById(ingredient);
      return found !== undefined && isFat(found) && !cut.has(ingredient) && infusedWith === undefined;
    })
    .toSorted((a, b) => b.percent - a.percent)[0]?.ingredient;

/** The recipe with the changes in it, in percent, as one sentence; undefined when it is too long for a button. */
const changedRecipe = (shares: Shares, cut: ReadonlyMap<string, number>): string | undefined => {
  const filler = fillerOf(shares, cut);
  if (shares.partial || shares.strained.length > 0 || filler === undefined) return undefined;
  const kept = shares.lines
    .map((line) => ({ ...line, percent: Math.min(line.percent, cut.get(line.ingredient) ?? line.percent) }))
    .filter(({ percent, ingredient }) => percent > 0 && ingredient !== filler)
    .map(({ ingredient, percent }) => ({ ingredient, percent: Number(percent.toFixed(3)) }));
  const rest = Number((100 - kept.reduce((sum, { percent }) => sum + percent, 0)).toFixed(3));
  const lines = [...kept, { ingredient: filler, percent: rest }]
    .toSorted((a, b) => b.percent - a.percent)
    .map(({ ingredient, percent }) => `${plain(percent, 3)}% ${nameOf(ingredient)}`);
  const say = `check ${lines.join(', ')}`;
  return say.length <= longest ? say : undefined;
};

/** Offers of the obvious next steps: the changed recipe, or the share that would be within, and how it melts. */
export const nextSteps = (
  findings: readonly Finding[],
  shares: Shares,
  name: string | undefined,
): readonly NextStep[] => {
  const cut = cutsOf(findings);
  const [first] = [...cut].filter(([, most]) => most > 0);
  const changed = cut.size > 0 ? changedRecipe(shares, cut) : undefined;
  const one = first ? `is ${brief(first[1])}% ${nameOf(first[0])} ok in a lip balm` : undefined;
  return [
    ...(changed ? [{ label: 'Check it with the changes', say: changed }] : []),
    ...(!changed && one && one.length <= longest ? [{ label: 'Check the smaller share', say: one }] : []),
    ...(name ? [{ label: 'Show the recipe', say: `show "${name}"` }] : []),
  ];
};
