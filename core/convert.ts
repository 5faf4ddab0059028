import { dropsPerMl, type GramsProblem, oilDropsPerMl } from './grams.ts';
import { ingredientById } from './ingredients.ts';
import { fail, ok, type Result } from './result.ts';
import type { Region } from './settings.ts';
import {
  convertTemperature,
  gramsIn,
  isMassUnit,
  isTemperatureUnit,
  isVolumeUnit,
  type MassUnit,
  mlIn,
  type Unit,
  type VolumeUnit,
  wateryDropsPerMl,
} from './units.ts';

export interface ConvertRequest {
  readonly value: number;
  readonly from: Unit;
  readonly to: Unit;
  readonly ingredient?: string;
  readonly region: Region;
}

export type ConvertProblem =
  | GramsProblem
  /** A temperature is no weight. */
  | { readonly code: 'different-kinds'; readonly from: Unit; readonly to: Unit }
  /** Volume to weight needs to know of what. */
  | {
      readonly code: 'needs-ingredient';
      readonly from: Unit;
      readonly to: Unit;
    }
  | { readonly code: 'below-absolute-zero' };

export interface Converted {
  readonly value: number;
  readonly unit: Unit;
  /** Range where drops of an oil are counted: 20 to 40 to the ml. */
  readonly low?: number;
  readonly high?: number;
  readonly densityGMl?: number;
  readonly dropsPerMl?: number;
}

const absoluteZeroC = -273.15;

const temperature = ({ value, from, to }: ConvertRequest): Result<Converted, ConvertProblem> => {
  if (!isTemperatureUnit(from) || !isTemperatureUnit(to)) return fail({ code: 'different-kinds', from, to });
  const celsius = convertTemperature(value, from, 'C');
  if (celsius < absoluteZeroC) return fail({ code: 'below-absolute-zero' });
  return ok({ value: convertTemperature(value, from, to), unit: to });
};

/** Grams or millilitres of the amount, at a given number of drops to the millilitre. */
const inBase = (value: number, unit: Unit, region: Region, drops: number): number =>
  isMassUnit(unit) ? value * gramsIn(unit) : value * mlIn(unit as VolumeUnit, region, drops);

const perUnit = (unit: Unit, region: Region, drops: number): number =>
  isMassUnit(unit) ? gramsIn(unit as MassUnit) : mlIn(unit as VolumeUnit, region, drops);

const tidy = (value: number): number => Number(value.toPrecision(13));

const densityFor = (request: ConvertRequest): Result<number | undefined, ConvertProblem> => {
  const { from, to, ingredient } = request;
  if (isMassUnit(from) === isMassUnit(to)) return ok(undefined);
  if (ingredient === undefined) return fail({ code: 'needs-ingredient', from, to });
  const found = ingredientById(ingredient);
  if (!found) return fail({ code: 'unknown-ingredient', ingredient });
  const density = found.densityGMl?.value;
  if (density === undefined) {
    return fail({
      code: 'no-density',
      ingredient,
      unit: (isVolumeUnit(from) ? from : to) as VolumeUnit,
    });
  }
  return ok(density);
};

/**
 * Converts an amount of something between units of mass, volume and temperature. Mass and volume meet through the
 * ingredient's density at 20 °C. Drops of essential oils are 30 to the ml, seen from 20 to 40, so they give a range.
 */
export const convertAmount = (request: ConvertRequest): Result<Converted, ConvertProblem> => {
  const { value, from, to, ingredient, region } = request;
  if (isTemperatureUnit(from) || isTemperatureUnit(to)) return temperature(request);
  const density = densityFor(request);
  if (!density.ok) return density;
  const counts = from === 'drop' || to === 'drop';
  const usual = ingredient === undefined ? wateryDropsPerMl : dropsPerMl(ingredient);
  const rho = density.value;
  const at = (drops: number): number => {
    const base = inBase(value, from, region, drops);
    const across = rho === undefined ? base : isMassUnit(to) ? base * rho : base / rho;
    return tidy(across / perUnit(to, region, drops));
  };
  const ends = [at(oilDropsPerMl.low), at(oilDropsPerMl.high)];
  const ranged = counts && from !== to && usual === oilDropsPerMl.value;
  return ok({
    value: at(usual),
    unit: to,
    ...(ranged ? { low: Math.min(...ends), high: Math.max(...ends) } : {}),
    ...(rho === undefined ? {} : { densityGMl: rho }),
    ...(counts ? { dropsPerMl: usual } : {}),
  });
};
