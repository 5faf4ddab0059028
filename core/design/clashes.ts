import type { Ingredient } from '../data/ingredient.ts';
import { usualAromaPercent } from '../hazards.ts';
import { ingredientById, isAroma, isAromaRow, isFat, isHerb } from '../ingredients.ts';
import { treatmentOf } from '../melt/treatment.ts';
import { mostAromaPercent } from './dose.ts';
import { excludes } from './exclusions.ts';
import { accentPercents, butterRangePercent } from './palette.ts';
import type { WantedIngredient, Wishes } from './wishes.ts';

/** Why something that was asked for cannot be in, or not with that share. */
export type ClashReason =
  | 'not-vegan'
  | 'excluded'
  | 'not-for-lips'
  | 'light-sensitising'
  | 'no-melting-data'
  | 'not-in-stock'
  | 'not-to-be-infused'
  | 'one-herb'
  | 'over-usual'
  | 'under-usual'
  | 'over-whole';

/** `percent` is the share it would have to have instead: 0 leaves it out. */
export interface Clash {
  readonly ingredient: string;
  readonly reason: ClashReason;
  readonly percent: number;
}

const isLightSensitising = (ingredient: Ingredient): boolean =>
  (isAromaRow(ingredient) && ingredient.limits.phototoxic) ||
  (isHerb(ingredient) && ingredient.lightSensitising === 'yes');

const impossible = (ingredient: Ingredient, wishes: Wishes): ClashReason | undefined => {
  if (wishes.vegan && ingredient.vegan !== 'yes') return 'not-vegan';
  if (wishes.without.some((word) => excludes(word, ingredient))) return 'excluded';
  if (isLightSensitising(ingredient)) return 'light-sensitising';
  if (ingredient.lips === 'avoid') return 'not-for-lips';
  if (isAroma(ingredient) && mostAromaPercent(ingredient) <= 0) return 'not-for-lips';
  if (isHerb(ingredient)) return ingredient.infusion ? undefined : 'not-to-be-infused';
  return treatmentOf(ingredient).kind === 'no-data' ? 'no-melting-data' : undefined;
};

/** The usual range in percent of what may be asked for with a share of its own; nothing where there is none. */
const rangeOf = (ingredient: Ingredient): { low: number; high: number } | undefined => {
  if (isAroma(ingredient)) return { low: 0, high: mostAromaPercent(ingredient) };
  const accent = accentPercents[ingredient.id];
  if (accent !== undefined) return { low: 0, high: 2 * accent };
  const { usePercent } = ingredient;
  if (usePercent) return { low: ingredient.kind === 'wax' ? 0 : usePercent.low, high: usePercent.high };
  return isFat(ingredient) && ingredient.kind !== 'liquid-oil'
    ? { ...butterRangePercent, low: 0 }
    : undefined;
};

const shareClash = (ingredient: Ingredient, percent: number | undefined): Clash | undefined => {
  const range = percent === undefined ? undefined : rangeOf(ingredient);
  if (percent === undefined || !range || percent <= range.high) {
    if (percent === undefined || !range || percent >= range.low) return undefined;
    return { ingredient: ingredient.id, reason: 'under-usual', percent: range.low };
  }
  return { ingredient: ingredient.id, reason: 'over-usual', percent: range.high };
};

const keepsMonths = (ingredient: Ingredient): number => ingredient.shelfLifeMonths?.low ?? Infinity;

const clashOf = ({ ingredient: id, percent }: WantedIngredient, wishes: Wishes): Clash | undefined => {
  const ingredient = ingredientById(id);
  if (!ingredient) return { ingredient: id, reason: 'no-melting-data', percent: 0 };
  const lacking = wishes.stock && !wishes.stock.has(ingredient.id);
  const reason = lacking ? 'not-in-stock' : impossible(ingredient, wishes);
  return reason ? { ingredient: ingredient.id, reason, percent: 0 } : shareClash(ingredient, percent);
};

const applied = (wanted: WantedIngredient, clashes: readonly Clash[]): readonly WantedIngredient[] => {
  const clash = clashes.find(({ ingredient }) => ingredient === wanted.ingredient);
  if (!clash) return [wanted];
  return clash.percent > 0 ? [{ ingredient: wanted.ingredient, percent: clash.percent }] : [];
};

/** Percent kept for each scent that has no share of its own. */
const openScentPercent = 0.2;

/** Scents may come to 1 % in all: given shares that leave too little for the others are taken back in proportion. */
const scentClashes = (wanted: readonly WantedIngredient[]): readonly Clash[] => {
  const scents = wanted.filter(({ ingredient }) => {
    const found = ingredientById(ingredient);
    return found !== undefined && isAroma(found);
  });
  const given = scents.flatMap(({ ingredient, percent }) =>
    percent === undefined ? [] : [{ ingredient, percent }],
  );
  const sum = given.reduce((all, { percent }) => all + percent, 0);
  const open = scents.length - given.length;
  const most = Math.max(usualAromaPercent / 2, usualAromaPercent - open * openScentPercent);
  if (given.length === 0 || sum <= most) return [];
  return given.map(({ ingredient, percent }) => ({
    ingredient,
    reason: 'over-usual',
    percent: Math.floor((percent / sum) * most * 100) / 100,
  }));
};

/** Percent that given shares may come to, so that oil, or a wax and oil, still find room. */
const mostGiven = { besideOil: 90, besideWaxAndOil: 80 } as const;

/** Shares that already come to the whole, or more: the largest is cut to what leaves room for the others. */
const wholeClash = (wanted: readonly WantedIngredient[]): readonly Clash[] => {
  const sum = wanted.reduce((all, { percent = 0 }) => all + percent, 0);
  const largest = wanted.reduce<WantedIngredient | undefined>(
    (most, each) => ((each.percent ?? 0) > (most?.percent ?? 0) ? each : most),
    undefined,
  );
  const most = wanted.some(({ ingredient }) => ingredientById(ingredient)?.kind === 'wax')
    ? mostGiven.besideOil
    : mostGiven.besideWaxAndOil;
  if (sum <= most || !largest) return [];
  const less = Math.floor((largest.percent ?? 0) - (sum - most));
  return [{ ingredient: largest.ingredient, reason: 'over-whole', percent: Math.max(0, less) }];
};

/** One oil is steeped with one herb; more than that is a matter of mixing infused oils. */
const herbClashes = (wanted: readonly WantedIngredient[]): readonly Clash[] =>
  wanted
    .filter(({ ingredient }) => ingredientById(ingredient)?.kind === 'herb')
    .slice(1)
    .map(({ ingredient }) => ({ ingredient, reason: 'one-herb', percent: 0 }));

export interface Cleared {
  readonly wishes: Wishes;
  readonly clashes: readonly Clash[];
}

/** Finds what asks for two opposite things or for something unsafe, and takes it out of the wishes. */
export const clearClashes = (wishes: Wishes): Cleared => {
  const each = wishes.with.flatMap((wanted) => clashOf(wanted, wishes) ?? []);
  const together = [herbClashes, scentClashes, wholeClash];
  return together.reduce<Cleared>(
    (cleared, find) => {
      const found = find(cleared.wishes.with);
      return {
        wishes: { ...cleared.wishes, with: cleared.wishes.with.flatMap((wanted) => applied(wanted, found)) },
        clashes: [...cleared.clashes, ...found],
      };
    },
    { wishes: { ...wishes, with: wishes.with.flatMap((wanted) => applied(wanted, each)) }, clashes: each },
  );
};

/** Months that the shortest-lived wanted ingredient keeps. */
export const wantedKeepsMonths = (wishes: Wishes): number =>
  Math.min(
    ...wishes.with.map(({ ingredient }) => {
      const found = ingredientById(ingredient);
      return found ? keepsMonths(found) : Infinity;
    }),
    Infinity,
  );
