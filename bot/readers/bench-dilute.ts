import { defined } from '../../core/defined.ts';
import { isVolumeUnit, mlIn } from '../../core/units.ts';
import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';

const alcohol = /\b(?:alcohol|ethanol|isopropanol|isopropyl|ipa|spirit|spirits|disinfectant)\b/i;
const thinning = /\b(?:dilut\w*|thin|water down|mix|make|making|strength|strong|from|how much|into)\b/i;
/** Something else is made with it: nothing for disinfecting. */
const otherUse = /\b(?:tincture|infus\w*|steep|drink|herbs?|extract|perfume|balm|lip)\b/i;

/** Alcohol to thin: percent by volume, millilitres. */
export interface DilutionRead {
  readonly fromPercent?: number;
  readonly toPercent?: number;
  readonly makeMl?: number;
  readonly haveMl?: number;
}

/** The volume of an item in millilitres; undefined when it is none. */
export const mlOfItem = (item: Item | undefined, reading: Reading): number | undefined =>
  item?.value !== undefined && item.unit !== undefined && isVolumeUnit(item.unit)
    ? item.value * mlIn(item.unit, reading.settings.region)
    : undefined;

const having = /\b(?:i|we) have\b|\bgot\b|\bwith my\b|\bi've\b/i;
const wanting = /\b(?:needs?|wants?|make|making|total|mix|end up with)\b/i;

/** What may stand between a volume and the strength it is of: "250 ml of my 96 %", "250 ml ethanol, 96 %". */
const ofIt =
  /^[\s,]{0,3}(?:(?:of|at|my|our|the|rubbing|pure|strong|surgical|alcohol|ethanol|isopropanol|ipa|spirits?)[\s,]{1,3}){0,5}$/i;

/** "I have 500 ml of 96 %": the volume is of the strong one. The word that stands before the volume decides. */
const isOfStrong = (volume: Item, strong: Item | undefined, text: string): boolean => {
  const before = text.slice(0, volume.from);
  if (having.test(before) && !wanting.test(before)) return true;
  return strong !== undefined && ofIt.test(text.slice(volume.to, strong.from)) && strong.from > volume.to;
};

interface Strengths {
  readonly fromPercent?: number;
  readonly toPercent?: number;
  /** The item of the stronger one, if two were said. */
  readonly strong?: Item;
}

/** Over this a single strength is what there is, not what is wanted; percent by volume. */
const strongFrom = 80;

/** "90 % down to 70": the sign said once. */
const isAim = (items: readonly Item[], at: number, value: number): boolean =>
  items[at - 1]?.letter === 'T' &&
  value >= 30 &&
  value < 100 &&
  !/^[cn]$/.test(items[at + 1]?.letter ?? '') &&
  items.some(({ letter }) => letter === '%');

/** "94 %", and "94 degrees" as bottles have it in many countries. */
export const percentsIn = (items: readonly Item[]): readonly Item[] =>
  items.filter(
    (item, at) =>
      item.value !== undefined &&
      (item.letter === '%' ||
        (item.letter === 'n' &&
          (/^degrees?$/.test(items[at + 1]?.word ?? '') || isAim(items, at, item.value)))),
  );

const strengthsIn = (items: readonly Item[], text: string): Strengths | undefined => {
  const found = percentsIn(items);
  const sorted = found.toSorted((a, b) => (b.value ?? 0) - (a.value ?? 0));
  if (found.length === 2) {
    // "Dilute 40 % to 70 %" is said the wrong way round, and has to be told so.
    const [from, to] = /\bdilut/i.test(text) ? found : sorted;
    return defined({ fromPercent: from?.value, toPercent: to?.value, strong: from });
  }
  const [only] = sorted;
  if (!only?.value || found.length > 1) return undefined;
  return only.value > strongFrom ? { fromPercent: only.value } : { toPercent: only.value };
};

/** Reads alcohol to thin; undefined when a message asks nothing of it. */
export const readDilution = (reading: Reading): DilutionRead | undefined => {
  const { text, items } = reading;
  if (!alcohol.test(text) || otherUse.test(text)) return undefined;
  const said = strengthsIn(items, text);
  if (!said) return undefined;
  const { strong, ...strengths } = said;
  const both = strengths.fromPercent !== undefined && strengths.toPercent !== undefined;
  if (!thinning.test(text) && !both) return undefined;
  // "Is 96 % better than 70 %?" asks which to take.
  if (/\bbetter\b|\bwhich\b|\bversus\b|\bvs\b/i.test(text)) return undefined;
  const volume = items.find((item) => item.letter === 'v');
  const size = mlOfItem(volume, reading);
  const have = volume !== undefined && isOfStrong(volume, strong, text);
  return { ...strengths, ...defined(have ? { haveMl: size } : { makeMl: size }) };
};
