import type { Part } from '../../core/substitute/replace.ts';
import { gramsIn, isMassUnit } from '../../core/units.ts';
import type { Item } from './item.ts';
import { type Board, take } from './target.ts';

/** "Half the beeswax", "10 of the 20 % beeswax": how much of an ingredient is meant. */
export interface PartRead {
  readonly of: Item;
  /** Missing when only "some of it" was said. */
  readonly part?: Part;
  /** True for a fraction of the whole: "half candelilla instead" says it of what comes in. */
  readonly fraction: boolean;
  /** As it was said of the ingredient: "5 % of the shea". */
  readonly ofIt: boolean;
}

const verbs =
  /^(?:swap\w*|swop|exchang\w+|switch\w*|trad(?:e|ing)|chang(?:e|ed|ing)|replac\w+|substitut\w+|sub|subbing)$/;
const someWords = /^(?:some|part|bit|portion|little)$/;

/** "Swap …", "instead of …": an amount right after it belongs to the exchange. */
const asksAt = (board: Board, at: number): boolean => {
  const [item, before] = [board.items[at], board.items[at - 1]];
  if (item?.word === 'of') return before?.word === 'instead';
  return item !== undefined && verbs.test(item.word);
};

const partOf = (item: Item, ofIt: boolean): Part | undefined => {
  const { letter, value, unit } = item;
  if (value === undefined || value <= 0) return undefined;
  if ((item.fraction || letter === 'n') && value < 1) return { amount: value, unit: 'share' };
  if (letter === '%') {
    if (!ofIt) return { amount: value, unit: 'percent' };
    return value < 100 ? { amount: value / 100, unit: 'share' } : { amount: 1, unit: 'share' };
  }
  return unit !== undefined && isMassUnit(unit) ? { amount: value * gramsIn(unit), unit: 'g' } : undefined;
};

/** "10 of the 30 % shea": the number takes the unit of the whole that it is a part of. */
const numberOf = (number: Item, whole: Item): Part | undefined =>
  number.value === undefined || whole.value === undefined || number.value > whole.value
    ? undefined
    : partOf({ ...whole, value: number.value }, false);

const isAmount = (item: Item | undefined): item is Item => item !== undefined && /[n%g]/.test(item.letter);

interface Place {
  readonly from: number;
  readonly read: PartRead;
}

/** "10 of the 30 % shea": two numbers before the name; "some of it" has none. */
const partOfWhole = (board: Board, place: number, name: Item): Place | undefined => {
  const [number, of, whole] = [board.items[place - 2], board.items[place - 1], board.items[place]];
  if (!whole || of?.letter !== 'o' || number?.letter !== 'n' || number.fraction) return undefined;
  const part = numberOf(number, whole);
  return part && { from: place - 2, read: { of: name, part, fraction: false, ofIt: false } };
};

/** "Some of the beeswax": said, or small talk that has left no item between the verb and "of". */
const someOf = (board: Board, place: number, name: Item): Place | undefined => {
  const word = board.items[place]?.word ?? '';
  const read = { of: name, fraction: false, ofIt: true };
  if (someWords.test(word)) return { from: place, read };
  return asksAt(board, place) && word !== 'of' ? { from: place + 1, read } : undefined;
};

/** What stands before the name at `at`, right to left: an optional "of", an amount, an optional "10 of the". */
const partBefore = (board: Board, name: Item, at: number): Place | undefined => {
  const ofIt = board.items[at - 1]?.letter === 'o';
  const place = ofIt ? at - 2 : at - 1;
  const amount = board.items[place];
  const some = ofIt ? someOf(board, place, name) : undefined;
  if (some || !isAmount(amount) || board.taken[place]) return some;
  const whole = partOfWhole(board, place, name);
  const part = whole ? undefined : partOf(amount, ofIt);
  if (!part) return whole;
  const read = { of: name, part, fraction: amount.fraction === true, ofIt: ofIt && amount.letter === '%' };
  return { from: place, read };
};

const placesIn = (board: Board): readonly (Place & { readonly at: number })[] =>
  board.items.flatMap((item, at) => {
    const place = item.letter === 'i' && !board.taken[at] ? partBefore(board, item, at) : undefined;
    return place ? [{ ...place, at }] : [];
  });

/**
 * Takes the amount off the board that says how much of an ingredient is exchanged, and leaves its name there. An amount
 * belongs to the exchange when it stands right behind the word that asks for it; a fraction anywhere, if there is one.
 */
export const takePart = (board: Board): PartRead | undefined => {
  const places = placesIn(board);
  const fractions = places.filter(({ read }) => read.fraction);
  const found =
    places.find(({ from }) => asksAt(board, from - 1)) ??
    (fractions.length === 1 && places.length === 1 ? fractions[0] : undefined);
  if (!found) return undefined;
  take(board, found.from, found.at);
  return found.read;
};
