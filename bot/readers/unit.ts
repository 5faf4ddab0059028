import { slips } from '../../core/edit-distance.ts';
import type { Unit } from '../../core/units.ts';
import type { Token } from './tokens.ts';

export type ReadUnit = Unit | 'percent' | 'part';

const spellings: Readonly<Record<ReadUnit, readonly string[]>> = {
  mg: ['mg', 'mgs', 'milligram', 'milligrams', 'milligramme', 'milligrammes'],
  g: ['g', 'gr', 'grms', 'gm', 'gms', 'grm', 'gram', 'grams', 'gramme', 'grammes', 'gs', 'gramm'],
  kg: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes'],
  oz: ['oz', 'ozs', 'ounce', 'ounces'],
  lb: ['lb', 'lbs', 'pound', 'pounds'],
  ml: ['ml', 'mls', 'millilitre', 'millilitres', 'milliliter', 'milliliters', 'mil', 'mils', 'cc', 'ccm'],
  cl: ['cl', 'centilitre', 'centilitres', 'centiliter', 'centiliters'],
  dl: ['dl', 'decilitre', 'decilitres', 'deciliter', 'deciliters'],
  l: ['l', 'ltr', 'ltrs', 'litre', 'litres', 'liter', 'liters'],
  tsp: ['tsp', 'tsps', 'teaspoon', 'teaspoons', 'teaspoonful', 'teaspoonfuls', 'teasp'],
  tbsp: [
    'tbsp',
    'tbsps',
    'tbs',
    'tbl',
    'tblsp',
    'tbps',
    'tablespoon',
    'tablespoons',
    'tablespoonful',
    'tablespoonfuls',
  ],
  cup: ['cup', 'cups', 'cupful', 'cupfuls'],
  'fl oz': ['floz', 'floz'],
  drop: ['drop', 'drops', 'drps', 'gtt', 'gtts', 'droplet', 'droplets'],
  C: ['c', 'celsius', 'centigrade', 'celcius'],
  F: ['f', 'fahrenheit', 'farenheit', 'fahrenheight', 'fahrenheid', 'farenhite'],
  percent: ['percent', 'pct', 'percents', 'prozent'],
  part: ['part', 'parts'],
};

const byWord = new Map<string, ReadUnit>(
  Object.entries(spellings).flatMap(([unit, words]) =>
    words.map((word) => [word, unit as ReadUnit] as const),
  ),
);

const longWords = [...byWord.keys()].filter((word) => word.length >= 5);

/** Words of their own that are one letter away from a unit: "24 round lids" weigh no pounds. */
const noUnits = new Set(['round', 'found', 'sound', 'bound', 'mound']);

/** A unit word with one letter wrong: only long ones, and only where a number stands before it. */
export const nearUnit = (word: string): ReadUnit | undefined => {
  if (word.length < 5 || noUnits.has(word)) return undefined;
  const near = longWords.find((candidate) => slips(candidate, word, 1) === 1);
  return near === undefined ? undefined : byWord.get(near);
};

/** The unit a single word stands for. */
export const unitOf = (word: string): ReadUnit | undefined => byWord.get(word);

export interface UnitRead {
  readonly unit: ReadUnit;
  readonly next: number;
}

const fluid = new Set(['fl', 'fluid']);

const fluidOunce = (list: readonly Token[], at: number): UnitRead | undefined => {
  if (!fluid.has(list[at]?.word ?? '')) return undefined;
  const point = list[at + 1]?.text === '.' ? 1 : 0;
  return byWord.get(list[at + 1 + point]?.word ?? '') === 'oz'
    ? { unit: 'fl oz', next: at + 2 + point }
    : undefined;
};

const spoons: Readonly<Record<string, ReadUnit>> = {
  table: 'tbsp',
  tea: 'tsp',
};

/** "table spoon", "tea-spoons" in two words. */
const spoonUnit = (list: readonly Token[], at: number): UnitRead | undefined => {
  const word = list[at]?.word ?? '';
  const unit = Object.hasOwn(spoons, word) ? spoons[word] : undefined;
  const hyphen = list[at + 1]?.text === '-' ? 1 : 0;
  return unit && /^spoon(?:s|ful|fuls)?$/.test(list[at + 1 + hyphen]?.word ?? '')
    ? { unit, next: at + 2 + hyphen }
    : undefined;
};

const degrees = new Set(['degree', 'degrees', 'deg', 'degs']);

const degreeUnit = (list: readonly Token[], at: number): UnitRead | undefined => {
  const token = list[at];
  if (token?.text !== '°' && token?.text !== 'º' && !degrees.has(token?.word ?? '')) return undefined;
  const unit = byWord.get(list[at + 1]?.word ?? '');
  return unit === 'C' || unit === 'F' ? { unit, next: at + 2 } : undefined;
};

/** Reads the unit that starts at token `at`: a word, `%`, `fl. oz`, `°C`, `degrees Fahrenheit`, `per cent`. */
export const readUnit = (list: readonly Token[], at: number): UnitRead | undefined => {
  const token = list[at];
  if (!token) return undefined;
  if (token.text === '%') return { unit: 'percent', next: at + 1 };
  if (token.word === 'per' && list[at + 1]?.word === 'cent') return { unit: 'percent', next: at + 2 };
  const special = fluidOunce(list, at) ?? degreeUnit(list, at) ?? spoonUnit(list, at);
  if (special) return special;
  const unit = byWord.get(token.word);
  return unit === undefined ? undefined : { unit, next: at + 1 };
};
