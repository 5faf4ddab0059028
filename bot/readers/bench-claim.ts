import { defined } from '../../core/defined.ts';
import { isVolumeUnit, mlIn } from '../../core/units.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readAdvice } from './bench-advice.ts';
import { readFill } from './bench-fill.ts';
import { benchCues } from './bench-words.ts';
import type { Item } from './item.ts';

const alcohol = /\b(?:alcohol|ethanol|isopropanol|isopropyl|ipa|spirit|spirits)\b/i;
const thinning = /\b(?:dilut\w*|thin|water down|mix|make|making|strength|strong|from|how much|into)\b/i;
/** Something else is made with it: nothing for disinfecting. */
const otherUse = /\b(?:tincture|infus\w*|steep|drink|herbs?|extract|perfume|balm|lip)\b/i;

const mlOfItem = (item: Item | undefined, reading: Reading): number | undefined =>
  item?.value !== undefined && item.unit !== undefined && isVolumeUnit(item.unit)
    ? item.value * mlIn(item.unit, reading.settings.region)
    : undefined;

/** "I have 500 ml of 96 %": the volume is of the strong one. */
const isOfStrong = (
  items: readonly Item[],
  volume: Item,
  strong: Item | undefined,
  text: string,
): boolean => {
  if (/\b(?:i|we) have\b|\bgot\b|\bwith my\b/i.test(text)) return true;
  const at = items.indexOf(volume);
  return strong !== undefined && items.indexOf(strong) === at + 2 && items[at + 1]?.letter === 'o';
};

interface Strengths {
  readonly fromPercent?: number;
  readonly toPercent?: number;
  /** The item of the stronger one, if two were said. */
  readonly strong?: Item;
}

/** Over this a single strength is what there is, not what is wanted; percent by volume. */
const strongFrom = 80;

const strengthsIn = (items: readonly Item[], text: string): Strengths | undefined => {
  const found = items.filter((item) => item.letter === '%' && item.value !== undefined);
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

const readDilution = (reading: Reading): Claim | undefined => {
  const { text, items } = reading;
  if (!alcohol.test(text) || !thinning.test(text) || otherUse.test(text)) return undefined;
  const said = strengthsIn(items, text);
  if (!said) return undefined;
  const { strong, ...strengths } = said;
  const volume = items.find((item) => item.letter === 'v');
  const size = mlOfItem(volume, reading);
  const have = volume !== undefined && isOfStrong(items, volume, strong, text);
  return claim({ alcohol: { ...strengths, ...defined(have ? { haveMl: size } : { makeMl: size }) } }, 3.1);
};

/** A wording asked about belongs on a label, whatever it speaks of. */
const wording =
  /\b(?:can|may|could) (?:i|we) (?:say|write|claim|call)\b|\bclaim\b|\bwording\b|\bon (?:the|a|my|our) label\b/i;

/** What a message would mean at the bench: alcohol to thin, how full a tin has to be, or what to do. */
export const claimBench = (reading: Reading): Claim | undefined => {
  if (!anyWord(reading, benchCues) || wording.test(reading.text)) return undefined;
  const fill = readFill(reading);
  if (fill) return 'trouble' in fill ? refuse(fill.trouble, 2.6) : claim({ fill }, 3.1);
  const mixed = readDilution(reading);
  if (mixed) return mixed;
  const advice = readAdvice(reading.text);
  return advice === undefined ? undefined : claim({ advice }, 3.1);
};
