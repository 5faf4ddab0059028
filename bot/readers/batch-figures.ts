import { gramsIn, isMassUnit } from '../../core/units.ts';
import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';

/** Temperatures and weighings told with a pour. */
export interface PourFiguresSaid {
  readonly bathC?: number;
  readonly pourC?: number;
  readonly weighedG?: number;
  readonly filledG?: number;
}

interface Taken {
  readonly figures: PourFiguresSaid;
  readonly items: readonly Item[];
}

const look = 32;
const bath = /\b(?:bath|melted|melt|heated|heat|held)\W*(?:\w+\W+){0,3}$/i;
const pour = /\b(?:poured|pour|pouring)\W*(?:\w+\W+){0,2}$/i;
const weighed =
  /\b(?:weighed(?:[ -]out)?|weigh[ -]?out|set out|made up|total(?: of)?)\W*(?:for _+\W*)?(?:(?:was|were|is|about|in all|all|came to)\W*){0,2}$/i;
const filled =
  /\b(?:filled|yield(?:ed)?|net|tins (?:hold|held|got)|ended up(?: with)?|left with|came out|got)\W*(?:(?:was|is|of|about|in all|them with|with|in)\W*){0,2}$/i;
const weighedAfter =
  /^\W*(?:weighed(?! out)|weighed out|set out|in all|went in)\b(?!\W*(?:(?:was|were|is|about) )?\d)/i;
const filledAfter =
  /^\W*(?:filled|net|in (?:the )?(?:tins|jars|pots)|ended up|came out)\b(?!\W*(?:(?:was|were|is|about|with) )?\d)/i;

const celsius = ({ value = 0, unit }: Item): number =>
  Number((unit === 'F' ? ((value - 32) * 5) / 9 : value).toFixed(1));

const grams = ({ value = 0, unit }: Item): number =>
  Number((value * (unit !== undefined && isMassUnit(unit) ? gramsIn(unit) : 1)).toFixed(3));

type Key = keyof PourFiguresSaid;

/** "Poured, bath 74 C": the nearer of the two words. */
const isOfBath = (before: string): boolean => {
  const [inBath, poured] = [bath.exec(before), pour.exec(before)];
  return inBath !== null && (poured === null || poured.index < inBath.index);
};

const temperatureKey = (before: string, had: PourFiguresSaid): Key => {
  if (isOfBath(before)) return 'bathC';
  return pour.test(before) || had.pourC === undefined ? 'pourC' : 'bathC';
};

const weightKey = (before: string, after: string): Key | undefined => {
  // "Filled with 40 g each" says how much goes into one.
  if (
    /^\W*(?:(?:net|of it)\W+)?(?:in(?:to)? )?(?:each|every|apiece|a (?:tin|jar|pot|stick|tube)|per)\b/i.test(
      after,
    )
  )
    return undefined;
  if (weighed.test(before) || weighedAfter.test(after)) return 'weighedG';
  return filled.test(before) || filledAfter.test(after) ? 'filledG' : undefined;
};

/** "bath 70, poured at 65": degrees without their sign, where they can be nothing else. */
const bareKey = (before: string, { value = 0 }: Item, had: PourFiguresSaid): Key | undefined => {
  if (value < 40 || value > 120) return undefined;
  if (/\bbath\b[^,;.\d]{0,24}$/i.test(before)) return 'bathC';
  return /\b(?:pour(?:ed)? at|pour(?:ing)?(?: temp(?:erature)?)?(?: was| of| at)?|thermometer (?:said|showed|read|at)|poured (?:when|as) it (?:was|reached))\W*(?:about )?$/i.test(
    before,
  ) && had.pourC === undefined
    ? 'pourC'
    : undefined;
};

const keyOf = ({ text }: Reading, item: Item, had: PourFiguresSaid): Key | undefined => {
  if (item.value === undefined || item.upTo !== undefined) return undefined;
  const before = text.slice(Math.max(0, item.from - look), item.from);
  if (item.letter === 't') return temperatureKey(before, had);
  if (item.letter === 'n') return bareKey(before, item, had);
  const isMass = item.letter === 'g' && isMassUnit(item.unit ?? '');
  return isMass ? weightKey(before, text.slice(item.to, item.to + look)) : undefined;
};

/** Bath and pouring temperature, what was weighed out and what was filled; with the items they stand in. */
export const takePourFigures = (rest: Reading): Taken => {
  const figures: { -readonly [K in Key]?: number } = {};
  const items: Item[] = [];
  for (const item of rest.items) {
    const key = keyOf(rest, item, figures);
    if (key === undefined || figures[key] !== undefined) continue;
    figures[key] = item.letter === 'g' ? grams(item) : celsius(item);
    items.push(item);
  }
  return { figures, items };
};
