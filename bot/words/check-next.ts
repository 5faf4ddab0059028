import type { Finding } from '../../core/check/finding.ts';
import type { Shares } from '../../core/check/shares.ts';
import { ingredientById, isFat } from '../../core/ingredients.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { NextStep } from '../answer.ts';
import { nameOf } from './check-text.ts';
import { brief } from './numbers.ts';

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

const rounded = (amount: number): number => Number(amount.toFixed(3));

interface Change {
  readonly lines: readonly RecipeLine[];
  /** What takes up what was cut. */
  readonly filler: string;
}

/** Shares as lines in percent, which sum to 100: every line that is cut keeps to its most, the filler takes the rest. */
const percentLines = (
  shares: Shares,
  cut: ReadonlyMap<string, number>,
  filler: string,
): readonly RecipeLine[] => {
  const line = (each: Shares['lines'][number], amount: number): RecipeLine => ({
    ingredient: each.ingredient,
    amount,
    unit: 'percent',
    ...(each.infusedWith ? { infusedWith: each.infusedWith } : {}),
    ...(each.fresh ? { fresh: true } : {}),
  });
  const kept = shares.lines
    .filter(({ ingredient }) => ingredient !== filler)
    .map((each) => line(each, rounded(Math.min(each.percent, cut.get(each.ingredient) ?? each.percent))))
    .filter(({ amount }) => amount > 0);
  const rest = rounded(100 - kept.reduce((sum, { amount }) => sum + amount, 0));
  return [...kept, { ingredient: filler, amount: rest, unit: 'percent' as const }].toSorted(
    (a, b) => b.amount - a.amount,
  );
};

/** The recipe with every change in it that clears a finding, in percent; undefined where none can be made so. */
export const changedLines = (findings: readonly Finding[], shares: Shares): Change | undefined => {
  const cut = cutsOf(findings);
  const filler = fillerOf(shares, cut);
  const open = shares.partial || shares.strained.length > 0;
  return cut.size === 0 || open || filler === undefined
    ? undefined
    : { filler, lines: percentLines(shares, cut, filler) };
};

/** Offers of the obvious next steps: the change to be made, or the share that would be within, and the recipe. */
export const nextSteps = (
  findings: readonly Finding[],
  shares: Shares,
  name: string | undefined,
): readonly NextStep[] => {
  const [first] = [...cutsOf(findings)].filter(([, most]) => most > 0);
  const changed = changedLines(findings, shares);
  const one = first ? `is ${brief(first[1])}% ${nameOf(first[0])} ok in a lip balm` : undefined;
  return [
    ...(changed
      ? [{ label: name ? 'Make the change, save it' : 'Make the change', say: 'apply the change' }]
      : []),
    ...(!changed && one && one.length <= longest ? [{ label: 'Check the smaller share', say: one }] : []),
    ...(name ? [{ label: 'Show the recipe', say: `show "${name}"` }] : []),
  ];
};
