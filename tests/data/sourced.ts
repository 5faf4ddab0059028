import { ingredients } from '../../core/ingredients.ts';

export interface Sourced {
  readonly source: readonly string[];
  readonly how: string;
  readonly low?: number;
  readonly value?: number;
  readonly typical?: number;
  readonly high?: number;
}

const isSourced = (value: object): value is Sourced => 'source' in value && 'how' in value;

/** Every figure and statement of a row with where it stands. */
const sourcedIn = (value: unknown, path = ''): { readonly path: string; readonly figure: Sourced }[] => {
  if (typeof value !== 'object' || value === null) return [];
  const own = isSourced(value) ? [{ path, figure: value }] : [];
  return [...own, ...Object.entries(value).flatMap(([key, part]) => sourcedIn(part, `${path}.${key}`))];
};

/** Every figure and statement of the library. */
export const allSourced = ingredients.flatMap((ingredient) => sourcedIn(ingredient, ingredient.id));
