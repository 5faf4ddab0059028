import { ingredientById } from '../../core/ingredients.ts';
import type { Trouble } from '../answer.ts';
import { unknownIngredient } from './ask-back.ts';
import {
  designWords,
  excludingWords,
  groupLead,
  groupOf,
  groupTail,
  nothingLead,
  notThings,
  unscentedWords,
} from './design-words.ts';
import type { Item } from './item.ts';
import { type Board, take } from './target.ts';

/** What is to be left out, in core's words: groups and ingredient ids. */
export interface WithoutRead {
  readonly without: readonly string[];
  readonly trouble?: Trouble;
}

/** Kinds that are named by an ingredient's name: "no wax", "no palm oil", "no mint". */
const namedGroups: readonly (readonly [RegExp, string])[] = [
  [/essential oil/, 'essential-oils'],
  [/^(?:tree )?nuts?(?: oils?)?$/, 'nuts'],
  [/^(?:aromas?|flavou?rs?)$/, 'scent'],
  [/^palm/, 'palm'],
  [/^(coconut|coconuts)$/, 'coconut'],
  [/^(soy|soya|soybean)s?$/, 'soy'],
  [/^mints?$/, 'mint'],
  [/^wax/, 'wax'],
  [/^butters?$/, 'butter'],
  [/^oils?$/, 'liquid-oil'],
];

const termOf = (item: Item | undefined): readonly string[] | undefined => {
  if (!item) return undefined;
  const named = namedGroups.find(([pattern]) => item.letter === 'i' && pattern.test(item.word));
  if (named) return [named[1]];
  if (item.letter === 'i') return item.infusedWith ? [item.infusedWith] : item.ingredients;
  const group = groupOf(item.word);
  return group === undefined ? undefined : [group];
};

/** Reads "nuts, coconut or palm oil" from a place on: the words of core, and the first place after it. */
interface Run {
  readonly without: readonly string[];
  readonly next: number;
}

const skip = (board: Board, at: number, words: ReadonlySet<string>): number => {
  let next = at;
  while (board.items[next] && !board.taken[next] && words.has(board.items[next]?.word ?? '')) next += 1;
  return next;
};

/** "bee products": the words after a group belong to it; "nuts, …" has none. */
const afterTerm = (board: Board, at: number): number => {
  const end = board.items[at]?.letter === 'i' ? at + 1 : skip(board, at + 1, groupTail);
  return end;
};

const isOr = (item: Item | undefined): boolean => item?.word === 'or' || item?.word === 'nor';
const joins = (item: Item | undefined): boolean =>
  item !== undefined && (/^[,A/&\n]$/.test(item.letter) || isOr(item));

const isAromaTerm = (ids: readonly string[]): boolean =>
  ids.some((id) => ['essential-oil', 'flavour', 'resinoid'].includes(ingredientById(id)?.kind ?? ''));

/** "Mint scent", "rose flavoured". */
const isScentOf = (item: Item | undefined): boolean =>
  item !== undefined && /^(?:scent|fragrance|aroma|smell|flavou?r|taste)(?:ed)?$/.test(item.word);

/** True when the list from here on ends with "or", "nor" or "and": then its commas all belong to it. */
const isClosedList = (board: Board, at: number): boolean => {
  for (let next = at; next < board.items.length; next += 1) {
    const item = board.items[next];
    if (isOr(item) || item?.letter === 'A') return true;
    if (item?.letter !== ',' && !termOf(item) && !groupLead.has(item?.word ?? '')) return false;
  }
  return false;
};

const readRun = (board: Board, from: number): Run => {
  const without: string[] = [];
  let at = skip(board, from, groupLead);
  let next = from;
  for (let term = termOf(board.items[at]); term && !board.taken[at]; term = termOf(board.items[at])) {
    without.push(...term);
    next = afterTerm(board, at);
    if (!joins(board.items[next])) break;
    let start = next + 1;
    while (joins(board.items[start]) || board.items[start]?.letter === 'N') start += 1;
    at = skip(board, start, groupLead);
    const following = termOf(board.items[at]);
    // "no beeswax, peppermint", "no coconut, mint scent": a scent after a comma is a wish of its own, unless the list says "or".
    const isScent = following && (isAromaTerm(following) || isScentOf(board.items[at + 1]));
    if (isScent && !isAromaTerm(term) && !isClosedList(board, next)) break;
  }
  return { without, next };
};

const isCue = (board: Board, at: number): boolean => {
  const item = board.items[at];
  if (!item || board.taken[at]) return false;
  if (item.letter === 'N') return true;
  if (!excludingWords.has(item.word)) return false;
  return item.word !== 'free' || /[oW]/.test(board.items[at + 1]?.letter ?? '');
};

/** Place of the term just before a place: "nut-free" has a dash between, "bee product free" a word that adds nothing. */
const termBefore = (board: Board, at: number): number | undefined => {
  let before = at - 1;
  if (board.items[before]?.letter === '-') before -= 1;
  if (!termOf(board.items[before]) && groupTail.has(board.items[before]?.word ?? '')) before -= 1;
  return termOf(board.items[before]) && !board.taken[before] ? before : undefined;
};

/** Place of a term joined to the one at `at`: "nut- and coconut-free" and "nut and coconut free", not "shea and nut-free". */
const joinedBefore = (board: Board, at: number): number | undefined => {
  if (!/^[A/]$/.test(board.items[at - 1]?.letter ?? '')) return undefined;
  const dash = board.items[at - 2]?.letter === '-';
  const before = dash ? at - 3 : at - 2;
  const item = board.items[before];
  return termOf(item) && (dash || item?.letter !== 'i') ? before : undefined;
};

/** Where the terms before "free" begin. */
const startOfFree = (board: Board, free: number): number | undefined => {
  let start = termBefore(board, free);
  for (let more = start; more !== undefined; more = joinedBefore(board, more)) start = more;
  return start;
};

/** "Nut-free", "a soy allergy". */
const afterTerms = new Set(['free', 'allergic', 'allergy', 'allergies', 'intolerance']);

const takeFree = (board: Board): readonly string[] =>
  board.items.flatMap((item, free) => {
    if (!afterTerms.has(item.word) || board.taken[free]) return [];
    if (item.word === 'free' && isCue(board, free)) return [];
    const start = startOfFree(board, free);
    if (start === undefined) return [];
    return take(board, start, free + 1).flatMap((each) => termOf(each) ?? []);
  });

const isUnknown = (item: Item): boolean =>
  item.letter === 'w' &&
  !notThings.has(item.word) &&
  !designWords.has(item.word) &&
  groupOf(item.word) === undefined;

const takeUnscented = (board: Board): readonly string[] =>
  board.items.flatMap((item, at) => {
    if (!unscentedWords.includes(item.word) || board.taken[at]) return [];
    take(board, at, at + 1);
    return ['scent'];
  });

const leaving = new Set('swap swapped take taking leave keep'.split(' '));

/** The place after "swap … out" or "take out …" that begins here, and what it names. */
const outAt = (board: Board, at: number): Run | undefined => {
  if (!leaving.has(board.items[at]?.word ?? '') || board.taken[at]) return undefined;
  const first = board.items[at + 1]?.word === 'out';
  const start = skip(board, first ? at + 2 : at + 1, groupLead);
  const term = board.taken[start] ? undefined : termOf(board.items[start]);
  if (!term) return undefined;
  const next = afterTerm(board, start);
  if (first) return { without: term, next };
  return board.items[next]?.word === 'out' ? { without: term, next: next + 1 } : undefined;
};

/** "Swap the shea out", "take out the scent". */
const takeOut = (board: Board): readonly string[] =>
  board.items.flatMap((_item, at) => {
    const run = outAt(board, at);
    if (!run) return [];
    take(board, at, run.next);
    return run.without;
  });

/** Takes everything that is to be left out off the board. What nobody knows is asked about: leaving it out is a promise. */
export const takeWithout = (board: Board): WithoutRead => {
  const without = [...takeFree(board), ...takeUnscented(board), ...takeOut(board)];
  for (const [at, item] of board.items.entries()) {
    if (!isCue(board, at)) continue;
    const run = readRun(board, item.word === 'nothing' ? skip(board, at + 1, nothingLead) : at + 1);
    if (run.without.length > 0) {
      take(board, at, run.next);
      without.push(...run.without);
      continue;
    }
    const unknown = board.items[skip(board, at + 1, groupLead)];
    if (item.letter === 'N' && unknown && isUnknown(unknown)) {
      return { without, trouble: unknownIngredient(unknown.word) };
    }
  }
  return { without: [...new Set(without)] };
};
