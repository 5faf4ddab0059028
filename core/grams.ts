import { ingredientById, isAroma } from './ingredients.ts';
import type { RecipeLine } from './recipe.ts';
import { fail, ok, type Result } from './result.ts';
import type { Region } from './settings.ts';
import { gramsIn, isMassUnit, isVolumeUnit, mlIn, type VolumeUnit, wateryDropsPerMl } from './units.ts';

/**
 * Drops of an essential oil to the millilitre, from bottle inserts: about 30, seen from 20 to 40 (three studies of
 * 1999, 2000 and 2016, read second-hand). Far from exact, so drops always come with grams.
 */
export const oilDropsPerMl = { low: 20, value: 30, high: 40 } as const;

export type GramsProblem =
  | { readonly code: 'unknown-ingredient'; readonly ingredient: string }
  /** No density is known, so a spoon or drop of it has no weight we could stand by. */
  | {
      readonly code: 'no-density';
      readonly ingredient: string;
      readonly unit: VolumeUnit;
    };

/** How a volume became grams; the answer says so. */
export interface VolumeTaken {
  readonly ingredient: string;
  readonly amount: number;
  readonly unit: VolumeUnit;
  readonly ml: number;
  readonly densityGMl: number;
  readonly grams: number;
}

/** Drops to the millilitre for this ingredient: thin watery ones 20, essential oils and flavours about 30. */
export const dropsPerMl = (ingredient: string): number => {
  const found = ingredientById(ingredient);
  return found && isAroma(found) ? oilDropsPerMl.value : wateryDropsPerMl;
};

export const mlOf = (amount: number, unit: VolumeUnit, ingredient: string, region: Region): number =>
  amount * mlIn(unit, region, dropsPerMl(ingredient));

/** Turns a volume of an ingredient into grams through its density at 20 °C. */
export const weighVolume = (
  amount: number,
  unit: VolumeUnit,
  ingredient: string,
  region: Region,
): Result<VolumeTaken, GramsProblem> => {
  const found = ingredientById(ingredient);
  if (!found) return fail({ code: 'unknown-ingredient', ingredient });
  const density = found.densityGMl?.value;
  if (density === undefined) return fail({ code: 'no-density', ingredient, unit });
  const ml = mlOf(amount, unit, ingredient, region);
  return ok({
    ingredient,
    amount,
    unit,
    ml,
    densityGMl: density,
    grams: ml * density,
  });
};

export interface LineGrams {
  readonly grams: number;
  readonly volume?: VolumeTaken;
}

/** Grams of a line written as mass or volume; undefined for percent, parts and "the rest", which need the others. */
export const gramsOfLine = (
  line: RecipeLine,
  region: Region,
): Result<LineGrams, GramsProblem> | undefined => {
  if (isMassUnit(line.unit)) return ok({ grams: line.amount * gramsIn(line.unit) });
  if (!isVolumeUnit(line.unit)) return undefined;
  const weighed = weighVolume(line.amount, line.unit, line.ingredient, region);
  return weighed.ok ? ok({ grams: weighed.value.grams, volume: weighed.value }) : weighed;
};
