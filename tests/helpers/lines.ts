import type { RecipeLine, RecipeUnit } from '../../core/recipe.ts';
import type { Result } from '../../core/result.ts';

type Extra = Pick<RecipeLine, 'strained' | 'infusedWith' | 'fresh'>;

/** A recipe line in any unit. */
export const line = (
  ingredient: string,
  amount: number,
  unit: RecipeUnit,
  extra: Partial<Extra> = {},
): RecipeLine => ({ ingredient, amount, unit, ...extra });

export const percent = (ingredient: string, amount: number, extra?: Partial<Extra>): RecipeLine =>
  line(ingredient, amount, 'percent', extra);

export const parts = (ingredient: string, amount: number, extra?: Partial<Extra>): RecipeLine =>
  line(ingredient, amount, 'part', extra);

export const grams = (ingredient: string, amount: number, extra?: Partial<Extra>): RecipeLine =>
  line(ingredient, amount, 'g', extra);

/** "q.s.", or "to 100 g" when a total is given. */
export const rest = (ingredient: string, totalG = 0): RecipeLine => line(ingredient, totalG, 'rest');

export const strained = { strained: true } as const;

/** What a sum came to. A problem fails the test and is shown. */
export const worked = <T, P>(result: Result<T, P>): T => {
  if (!result.ok) throw new Error(`expected a result, got ${JSON.stringify(result.problem)}`);
  return result.value;
};

/** The problem a sum met. A result fails the test and is shown. */
export const problemOf = <T, P>(result: Result<T, P>): P => {
  if (result.ok) throw new Error(`expected a problem, got ${JSON.stringify(result.value)}`);
  return result.problem;
};
