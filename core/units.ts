import type { Region } from './settings.ts';

export const massUnits = ['mg', 'g', 'kg', 'oz', 'lb'] as const;
export type MassUnit = (typeof massUnits)[number];
export const volumeUnits = ['ml', 'cl', 'dl', 'l', 'tsp', 'tbsp', 'cup', 'fl oz', 'drop'] as const;
export type VolumeUnit = (typeof volumeUnits)[number];
export const temperatureUnits = ['C', 'F'] as const;
export type TemperatureUnit = (typeof temperatureUnits)[number];
export type Unit = MassUnit | VolumeUnit | TemperatureUnit;

/** Takes off the last digits of floating-point noise: 16.387064000000002 is 16.387064. */
const tidy = (value: number): number => Number(value.toPrecision(14));

/**
 * The roots that every other factor is built on, as mathjs gives them; a test compares each with mathjs itself. They
 * stand here as constants because loading mathjs would cost a one-shot command a quarter of its time. Kitchen
 * measures are built from the roots by their definitions (NIST Handbook 44, appendix C; definitions from memory,
 * rounded values read), because in mathjs a teaspoon is the 5 ml one and `C` the coulomb.
 */
export const roots = {
  poundG: 453.59237,
  cubicInchMl: 16.387064,
  kilogramG: 1000,
  litreMl: 1000,
} as const;

const usGallonMl = tidy(231 * roots.cubicInchMl);
/** UK gallon, 4.54609 litres by definition (UK Units of Measurement Regulations 1995, from memory). */
const imperialGallonMl = tidy(4.54609 * roots.litreMl);

const gramsPer: Readonly<Record<MassUnit, number>> = {
  mg: 1 / 1000,
  g: 1,
  kg: roots.kilogramG,
  oz: roots.poundG / 16,
  lb: roots.poundG,
};

/** Drops of a watery liquid to the millilitre (USP <1101>, medicine dropper: 20 drops of water weigh about 1 g). */
export const wateryDropsPerMl = 20;

interface KitchenMeasures {
  readonly tsp: number;
  readonly tbsp: number;
  readonly cup: number;
  readonly 'fl oz': number;
}

const usMeasures: KitchenMeasures = {
  tsp: tidy(usGallonMl / 768),
  tbsp: tidy(usGallonMl / 256),
  cup: tidy(usGallonMl / 16),
  'fl oz': tidy(usGallonMl / 128),
};
const imperialFlOz = tidy(imperialGallonMl / 160);

/**
 * Kitchen measures by region, in ml. Metric spoons are 5 and 15 ml and a metric cup 250 ml, an Australian tablespoon
 * is 20 ml (common practice, no source). The European Union has no fluid ounce of its own: the US one is taken.
 */
const kitchen: Readonly<Record<Region, KitchenMeasures>> = {
  us: usMeasures,
  eu: { tsp: 5, tbsp: 15, cup: 250, 'fl oz': usMeasures['fl oz'] },
  uk: { tsp: 5, tbsp: 15, cup: 250, 'fl oz': imperialFlOz },
  ca: { tsp: 5, tbsp: 15, cup: 250, 'fl oz': imperialFlOz },
  au: { tsp: 5, tbsp: 20, cup: 250, 'fl oz': imperialFlOz },
};

const metricMl = { ml: 1, cl: 10, dl: 100, l: roots.litreMl } as const;

const includes = <T extends string>(list: readonly T[], unit: string): unit is T =>
  (list as readonly string[]).includes(unit);

export const isMassUnit = (unit: string): unit is MassUnit => includes(massUnits, unit);
export const isVolumeUnit = (unit: string): unit is VolumeUnit => includes(volumeUnits, unit);
export const isTemperatureUnit = (unit: string): unit is TemperatureUnit => includes(temperatureUnits, unit);

/** True for measures whose size depends on where the maker lives. */
export const isKitchenMeasure = (unit: string): boolean => Object.hasOwn(usMeasures, unit);

/** Grams in one of `unit`. */
export const gramsIn = (unit: MassUnit): number => gramsPer[unit];

/**
 * Millilitres in one of `unit` as measured in `region`.
 * @param dropsPerMl drops to the millilitre of this liquid; 20 for watery ones.
 */
export const mlIn = (unit: VolumeUnit, region: Region, dropsPerMl = wateryDropsPerMl): number => {
  if (unit === 'drop') return 1 / dropsPerMl;
  if (unit === 'tsp' || unit === 'tbsp' || unit === 'cup' || unit === 'fl oz') return kitchen[region][unit];
  return metricMl[unit];
};

/** Converts a temperature between °C and °F (exact by definition; compared with mathjs in the tests). */
export const convertTemperature = (value: number, from: TemperatureUnit, to: TemperatureUnit): number => {
  if (from === to) return value;
  return tidy(to === 'F' ? (value * 9) / 5 + 32 : ((value - 32) * 5) / 9);
};
