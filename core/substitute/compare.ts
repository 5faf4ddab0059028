import type { AllergenFlag } from '../data/ingredient.ts';
import { ingredientById } from '../ingredients.ts';
import { type Blend, blendOf } from '../melt/blend.ts';
import { figuresOf } from '../melt/swap-parts.ts';
import type { SwapFigures } from '../melt/swapped.ts';
import { shelfLifeDays } from '../shelf-life.ts';
import type { Mix, Portion } from './mix.ts';
import { oxidisabilityOf } from './oxidation.ts';

/** What else is worth knowing of a mix besides its lines. */
export interface Profile {
  /** Missing when something in it has no melting figures. */
  readonly heat?: SwapFigures;
  readonly blend?: Blend;
  readonly allergens: readonly AllergenFlag[];
  /** True, false, or null where it depends on the maker of an ingredient. */
  readonly vegan: boolean | null;
  /** Label names by falling percent; from 1 % down their order is free. */
  readonly label: readonly string[];
  /** Shortest shelf life of the lines in days, as far as known; no line known: missing. */
  readonly keepsDays?: number;
  /** Who sets the shelf life, and whose is not known. */
  readonly shortest?: string;
  readonly keepsUnknown: readonly string[];
  /** Oxidisability of all fats together (Cox value), as far as known. */
  readonly oxidisability: number;
}

const holdC = 25;
/** A line below this share does not go bad in a way that sets the date of the whole tin. */
const datedPercent = 1;

const knownOf = (mix: Mix) =>
  mix.portions.flatMap((portion) => {
    const found = ingredientById(portion.ingredient);
    return found ? [{ found, portion }] : [];
  });

/** Everything in the tin and everything steeped in it: what a person may react to. */
const allOf = (mix: Mix) => {
  const ids = [
    ...mix.portions.flatMap(({ ingredient, infusedWith }) =>
      infusedWith ? [ingredient, infusedWith] : [ingredient],
    ),
    ...mix.strained.map(({ ingredient }) => ingredient),
  ];
  return [...new Set(ids)].flatMap((id) => {
    const found = ingredientById(id);
    return found ? [found] : [];
  });
};

const veganOf = (mix: Mix): boolean | null => {
  const all = allOf(mix).map(({ vegan }) => vegan);
  if (all.includes('no')) return false;
  return all.includes('varies') ? null : true;
};

const keepingOf = (mix: Mix): Pick<Profile, 'keepsDays' | 'shortest' | 'keepsUnknown'> => {
  const dated = knownOf(mix).filter(({ portion }) => portion.percent >= datedPercent);
  const lives = dated
    .flatMap(({ found }) =>
      found.shelfLifeMonths ? [{ id: found.id, days: shelfLifeDays(found.shelfLifeMonths.low) }] : [],
    )
    .sort((a, b) => a.days - b.days);
  const [first] = lives;
  const keepsUnknown = dated
    .filter(({ found }) => found.shelfLifeMonths === undefined)
    .map(({ found }) => found.id);
  return { ...(first ? { keepsDays: first.days, shortest: first.id } : {}), keepsUnknown };
};

const byPercent = (a: Portion, b: Portion): number => b.percent - a.percent;

const labelOf = (mix: Mix): readonly string[] => {
  const names = [...mix.portions]
    .sort(byPercent)
    .map(({ ingredient }) => ingredientById(ingredient)?.inci ?? ingredient);
  return [...new Set(names)];
};

/** Looks at a mix from all sides that a substitution can change. */
export const profileOf = (mix: Mix): Profile => {
  const blend = blendOf(mix.portions.map(({ ingredient, percent }) => ({ ingredient, weight: percent })));
  const flags = allOf(mix).map(({ allergen }) => allergen.flag);
  return {
    ...(blend.ok ? { heat: figuresOf(blend.value, holdC), blend: blend.value } : {}),
    allergens: [...new Set(flags)].filter((flag) => flag !== 'none').toSorted(),
    vegan: veganOf(mix),
    label: labelOf(mix),
    ...keepingOf(mix),
    oxidisability: knownOf(mix).reduce(
      (sum, { found, portion }) => sum + ((oxidisabilityOf(found) ?? 0) * portion.percent) / 100,
      0,
    ),
  };
};

export interface Comparison {
  readonly before: Profile;
  readonly after: Profile;
  /** Change of the firmness index at 25 °C in percent; missing without melting figures or firmness to begin with. */
  readonly firmnessPercent?: number;
  /** Change of the fully melted temperature in °C. */
  readonly fullyMeltedC?: number;
  readonly bestBeforeDays?: number;
}

const changeOf = (before: number | undefined, after: number | undefined): number | undefined =>
  before === undefined || after === undefined ? undefined : after - before;

/** What a substitution changes besides the lines. */
export const compare = (mixBefore: Mix, mixAfter: Mix): Comparison => {
  const before = profileOf(mixBefore);
  const after = profileOf(mixAfter);
  const firm = changeOf(before.heat?.firmness, after.heat?.firmness);
  const melt = changeOf(before.heat?.fullyMeltedC, after.heat?.fullyMeltedC);
  const days = changeOf(before.keepsDays, after.keepsDays);
  const index = before.heat?.firmness ?? 0;
  return {
    before,
    after,
    ...(firm === undefined || index <= 0 ? {} : { firmnessPercent: (100 * firm) / index }),
    ...(melt === undefined ? {} : { fullyMeltedC: melt }),
    ...(days === undefined ? {} : { bestBeforeDays: days }),
  };
};
