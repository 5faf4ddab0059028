import type { Ingredient } from '../data/ingredient.ts';
import { ingredientById } from '../ingredients.ts';
import { finish, type Work } from '../work.ts';
import { type Mix, merged, type Portion } from './mix.ts';
import { type RankOptions, ranked } from './rank.ts';
import { replace } from './replace.ts';
import type { Replaced } from './replaced.ts';
import { roleOf, roleOfId } from './role.ts';
import { standingOf } from './without.ts';

/** One thing that went: replaced, or dropped with its share going to what carries it. */
export type Step =
  | { readonly kind: 'replaced'; readonly from: string; readonly replaced: Replaced }
  | { readonly kind: 'dropped'; readonly from: string; readonly percent: number; readonly into?: string };

export interface DoneWithout {
  readonly mix: Mix;
  readonly steps: readonly Step[];
  /** What stays but has to be asked about: the library cannot tell, or the person has to decide. */
  readonly ask: readonly { readonly ingredient: string; readonly without: string }[];
  /** What has to go and has no replacement that fits; then `mix` still holds it and is no answer. */
  readonly cannot: readonly string[];
}

const idsIn = (mix: Mix): readonly string[] => [
  ...new Set([
    ...mix.portions.flatMap(({ ingredient, infusedWith }) =>
      infusedWith ? [ingredient, infusedWith] : [ingredient],
    ),
    ...mix.strained.map(({ ingredient }) => ingredient),
  ]),
];

const isOut = (id: string, withouts: readonly string[]): boolean => {
  const found = ingredientById(id);
  return found !== undefined && withouts.some((without) => standingOf(found, without) === 'out');
};

/** What is left of the mix without one ingredient, its share given to the largest oil, else to all the rest. */
const dropped = (mix: Mix, id: string): { mix: Mix; percent: number; into?: string } | undefined => {
  const kept = mix.portions.filter(({ ingredient }) => ingredient !== id);
  const keptPercent = kept.reduce((sum, { percent }) => sum + percent, 0);
  if (keptPercent <= 0) return undefined;
  const percent = 100 - keptPercent;
  const [oil] = kept
    .filter(({ ingredient }) => roleOfId(ingredient) === 'oil')
    .toSorted((a, b) => b.percent - a.percent);
  const grown = kept.map(
    (portion): Portion =>
      oil
        ? portion === oil
          ? { ...portion, percent: portion.percent + percent }
          : portion
        : { ...portion, percent: (portion.percent * 100) / keptPercent },
  );
  return { mix: { ...mix, portions: grown }, percent, ...(oil ? { into: oil.ingredient } : {}) };
};

/** A herb goes from the strainer and from the oils it was steeped in; the oil stays. */
const withoutHerb = (mix: Mix, id: string): Mix => ({
  ...mix,
  strained: mix.strained.filter(({ ingredient }) => ingredient !== id),
  portions: merged(
    mix.portions.map(({ infusedWith, ...portion }) =>
      infusedWith === undefined || infusedWith === id ? portion : { ...portion, infusedWith },
    ),
  ),
});

/** Scent, colour and the like carry nothing: they are left out. What makes the balm has to be replaced. */
const isDroppable = (found: Ingredient): boolean => {
  const role = roleOf(found);
  return role === 'aroma' || role === 'additive' || role === 'herb';
};

/** Below this a share is rounding noise: the herb was never in the tin. */
const noisePercent = 1e-9;

interface Went {
  readonly mix: Mix;
  readonly step: Step;
}

const drop = (mix: Mix, found: Ingredient): Went | undefined => {
  const bare = roleOf(found) === 'herb' ? withoutHerb(mix, found.id) : mix;
  const left = dropped(bare, found.id);
  if (!left) return undefined;
  const { percent, into } = left;
  const step: Step = {
    kind: 'dropped',
    from: found.id,
    percent,
    ...(into && percent > noisePercent ? { into } : {}),
  };
  return { mix: left.mix, step };
};

function* replaceBest(
  mix: Mix,
  found: Ingredient,
  withouts: readonly string[],
  options: RankOptions,
): Work<Went | undefined> {
  const ranking = yield* ranked(found.id, mix.portions, withouts, options);
  if (!ranking.ok) return undefined;
  for (const { ingredient } of ranking.value.candidates) {
    const done = replace(mix, found.id, ingredient);
    // A swap that needs none of the new one has lost the ingredient's job altogether.
    if (done.ok && done.value.percent > 0)
      return { mix: done.value.mix, step: { kind: 'replaced', from: found.id, replaced: done.value } };
  }
  return undefined;
}

const questions = (mix: Mix, withouts: readonly string[]): DoneWithout['ask'] =>
  idsIn(mix).flatMap((ingredient) => {
    const found = ingredientById(ingredient);
    return withouts.flatMap((without) =>
      found && standingOf(found, without) === 'ask' ? [{ ingredient, without }] : [],
    );
  });

/**
 * Takes everything out that `withouts` exclude, one after the other, each replaced by the best candidate that is fine
 * with all of them and, with `only`, one of these. When `cannot` is empty nothing excluded is left.
 */
export function* doingWithout(
  mix: Mix,
  withouts: readonly string[],
  options: RankOptions = {},
): Work<DoneWithout> {
  const steps: Step[] = [];
  const cannot: string[] = [];
  let left = mix;
  for (const id of idsIn(mix)) {
    const found = ingredientById(id);
    if (!found || !isOut(id, withouts)) continue;
    const went = isDroppable(found) ? drop(left, found) : yield* replaceBest(left, found, withouts, options);
    if (!went) cannot.push(id);
    else {
      left = went.mix;
      steps.push(went.step);
    }
  }
  return { mix: left, steps, ask: questions(left, withouts), cannot };
}

/** The same in one go. */
export const doWithout = (...asked: Parameters<typeof doingWithout>): DoneWithout =>
  finish(doingWithout(...asked));
