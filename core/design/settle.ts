import { ingredientById } from '../ingredients.ts';
import type { Work } from '../work.ts';
import type { Clash } from './clashes.ts';
import {
  type Attempt,
  lessHeat,
  oneRelaxed,
  type Relaxed,
  type Settled,
  shelfLives,
  shorterLife,
} from './relax.ts';
import { coldestPromiseC } from './rules.ts';
import { search } from './search.ts';
import type { Wishes } from './wishes.ts';

type Lowered = Extract<Relaxed, { readonly wish: 'survives_c' | 'shelf_life_months' }>;

/** Heat and shelf life as low as any recipe may have them: no less of them leaves room for more. */
const lowest = ({ survivesC, shelfLifeMonths }: Wishes): readonly Lowered[] => [
  ...(survivesC !== undefined && survivesC > coldestPromiseC
    ? [{ wish: 'survives_c', to: coldestPromiseC, why: 'firmness' } as const]
    : []),
  ...(shelfLifeMonths === undefined ? [] : shelfLives(shelfLifeMonths).slice(0, 1)).map(
    (to) => ({ wish: 'shelf_life_months', to }) as const,
  ),
];

const figureOf = { survives_c: 'survivesC', shelf_life_months: 'shelfLifeMonths' } as const;
const lessOf: Readonly<Record<Lowered['wish'], Attempt>> = {
  survives_c: lessHeat,
  shelf_life_months: shorterLife,
};

const withFigure = (wishes: Wishes, wish: Lowered['wish'], figure: number | undefined): Wishes => ({
  ...wishes,
  [figureOf[wish]]: figure,
});

/** Raises a lowered wish again: to what was asked for if that works now, else as far as it works, else not. */
function* raised(settled: Settled, wish: Lowered['wish'], asked: Wishes): Work<Settled> {
  const wishes = withFigure(settled.wishes, wish, asked[figureOf[wish]]);
  const others = settled.relaxed.filter((each) => each.wish !== wish);
  const found = yield* search(wishes);
  if (found.candidates.length > 0) return { wishes, found, relaxed: others };
  const lessened = yield* lessOf[wish](wishes, found);
  return lessened ? { ...lessened, relaxed: [...others, ...lessened.relaxed] } : settled;
}

/** When no one wish helps: heat and shelf life are lowered, one more is relaxed, and the two raised as far as they go. */
const severalRelaxed: Attempt = function* (wishes) {
  const low = lowest(wishes);
  const milder = low.reduce((all, { wish, to }) => withFigure(all, wish, to), wishes);
  const found = yield* search(milder);
  const one = found.candidates.length > 0 ? undefined : yield* oneRelaxed(milder, found);
  let settled: Settled = one
    ? { ...one, relaxed: [...low, ...one.relaxed] }
    : { wishes: milder, found, relaxed: low };
  // An exclusion stands in the way: nothing is proposed, so nothing else is given way on.
  if (settled.found.candidates.length === 0) return one && { ...one, wishes };
  for (const { wish } of low.toReversed()) settled = yield* raised(settled, wish, wishes);
  return settled;
};

/** What asks for opposite things is relaxed before anything is searched. */
export const relaxedBy = (clashes: readonly Clash[]): readonly Relaxed[] =>
  clashes.map(({ ingredient, reason, percent }) => ({
    wish: 'with',
    ingredient: ingredientById(ingredient)?.id ?? ingredient,
    to: percent,
    why: reason,
  }));

/** The wishes as they are if something fits them, or with as few of them relaxed as it takes. */
export function* settle(wishes: Wishes): Work<Settled> {
  const found = yield* search(wishes);
  if (found.candidates.length > 0) return { wishes, found, relaxed: [] };
  const one = yield* oneRelaxed(wishes, found);
  return one ?? (yield* severalRelaxed(wishes, found)) ?? { wishes, found, relaxed: [] };
}
