import fc from 'fast-check';
import { demoRecipes } from '../../../bot/demo.ts';
import { ingredients } from '../../../core/ingredients.ts';
import { blendOf } from '../../../core/melt/blend.ts';
import { resolveRecipe } from '../../../core/resolve.ts';
import { type Mix, mixOf, type Portion } from '../../../core/substitute/mix.ts';
import { roleOf } from '../../../core/substitute/role.ts';
import { worked } from '../melt/blends.ts';

export const mix = (shares: Readonly<Record<string, number>>): Mix => ({
  portions: Object.entries(shares).map(([ingredient, percent]) => ({ ingredient, percent })),
  strained: [],
});

export const percentIn = ({ portions }: Mix, id: string): number =>
  portions.reduce((sum, { ingredient, percent }) => sum + (ingredient === id ? percent : 0), 0);

export const sumOf = ({ portions }: Mix): number => portions.reduce((sum, { percent }) => sum + percent, 0);

export const demoMixes: readonly (readonly [string, Mix])[] = demoRecipes.map(({ name, lines }) => [
  name,
  mixOf(worked(resolveRecipe(lines, 'eu'))),
]);

const idsOfRole = (role: string): readonly string[] =>
  ingredients.filter((found) => roleOf(found) === role).map(({ id }) => id);

const some = (role: string, min: number, max: number) =>
  fc.uniqueArray(fc.constantFrom(...idsOfRole(role)), { minLength: min, maxLength: max });

const share = fc.double({ min: 1, max: 40, noNaN: true });

const line = (id: string, weight: number, infusedWith: string | undefined): Portion => ({
  ingredient: id,
  percent: weight,
  ...(infusedWith ? { infusedWith } : {}),
});

/** Any recipe a maker could write: one or two waxes, up to three butters, one to four oils, scent, additives, a herb. */
export const anyMix: fc.Arbitrary<Mix> = fc
  .record({
    wax: some('wax', 0, 2),
    butter: some('butter', 0, 3),
    oil: some('oil', 1, 4),
    aroma: some('aroma', 0, 2),
    additive: some('additive', 0, 2),
    herb: fc.option(fc.constantFrom(...idsOfRole('herb')), { nil: undefined }),
    strained: some('herb', 0, 1),
    weights: fc.array(share, { minLength: 16, maxLength: 16 }),
  })
  .map(({ wax, butter, oil, aroma, additive, herb, strained, weights }) => {
    const firm = [...wax, ...butter, ...oil].map((id, at) =>
      line(id, weights[at] ?? 1, id === oil[0] ? herb : undefined),
    );
    const small = [...aroma, ...additive].map((id, at) => line(id, (weights[15 - at] ?? 1) / 20, undefined));
    const all = [...firm, ...small];
    const whole = all.reduce((sum, { percent }) => sum + percent, 0);
    return {
      portions: all.map((portion) => ({ ...portion, percent: (100 * portion.percent) / whole })),
      strained: strained.map((ingredient) => ({ ingredient, perGram: 0.05 })),
    };
  });

/** Whether the melting model has figures for everything in a mix. */
export const isForecast = ({ portions }: Mix): boolean =>
  blendOf(portions.map(({ ingredient, percent }) => ({ ingredient, weight: percent }))).ok;
