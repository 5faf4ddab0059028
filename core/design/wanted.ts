import type { Ingredient } from '../data/ingredient.ts';
import { usualAromaPercent } from '../hazards.ts';
import { ingredientById, isAroma } from '../ingredients.ts';
import { additivePercent, aromaPercent } from './dose.ts';
import { accentPercents } from './palette.ts';
import type { DesignLine } from './sketch.ts';
import type { WantedIngredient, Wishes } from './wishes.ts';

/** What was asked for, sorted by what it does in a balm. */
export interface Wanted {
  readonly butters: readonly WantedIngredient[];
  /** Lines with a settled share: accents, additives, scents, oils with a share of their own. */
  readonly settled: readonly DesignLine[];
  /** Oils without a share: they fill up to 100 %. */
  readonly fillers: readonly string[];
  readonly herb: string | undefined;
}

const found = (wishes: Wishes): readonly { wanted: WantedIngredient; ingredient: Ingredient }[] =>
  wishes.with.flatMap((wanted) => {
    const ingredient = ingredientById(wanted.ingredient);
    return ingredient ? [{ wanted, ingredient }] : [];
  });

const isButter = ({ kind, usePercent }: Ingredient): boolean =>
  kind === 'butter' || (kind === 'animal-fat' && usePercent === undefined);

const settledPercent = (ingredient: Ingredient, scentRoom: number): number | undefined => {
  if (isAroma(ingredient)) return aromaPercent(ingredient, scentRoom);
  if (ingredient.kind === 'additive' || ingredient.kind === 'animal-fat') return additivePercent(ingredient);
  return accentPercents[ingredient.id];
};

/** Percent that each scent without a share of its own may have, so that all of them stay within 1 %. */
const scentRoom = (others: ReturnType<typeof found>): number => {
  const scents = others.filter(({ ingredient }) => isAroma(ingredient)).map(({ wanted }) => wanted.percent);
  const given = scents.reduce<number>((sum, percent = 0) => sum + percent, 0);
  return Math.max(0, usualAromaPercent - given) / scents.filter((percent) => percent === undefined).length;
};

/** Sorts the wanted ingredients; waxes are left to the backbones. */
export const sortWanted = (wishes: Wishes): Wanted => {
  const all = found(wishes).filter(({ ingredient }) => ingredient.kind !== 'wax');
  const butters = all.filter(({ ingredient }) => isButter(ingredient)).map(({ wanted }) => wanted);
  const herb = all.find(({ ingredient }) => ingredient.kind === 'herb')?.ingredient.id;
  const others = all.filter(({ ingredient }) => !isButter(ingredient) && ingredient.kind !== 'herb');
  const room = scentRoom(others);
  const settled: DesignLine[] = [];
  const fillers: string[] = [];
  for (const { wanted, ingredient } of others) {
    const percent = wanted.percent ?? settledPercent(ingredient, room);
    if (percent === undefined) fillers.push(ingredient.id);
    else settled.push({ ingredient: ingredient.id, percent });
  }
  return { butters, settled, fillers, herb };
};
