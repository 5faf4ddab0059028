import type { Form } from '../../core/design/wishes.ts';
import { convertTemperature } from '../../core/units.ts';
import { anyWord, type Reading } from '../reading.ts';
import { heatWords, softWords, stickWords } from './design-words.ts';
import type { Item } from './item.ts';
import { type Board, take } from './target.ts';

/** A figure read, and what was taken for granted about it. */
export interface FigureRead {
  readonly value?: number;
  readonly assumed?: string;
}

const tenth = (value: number): number => Number(value.toFixed(1));
const fromF = (value: number): number => tenth(convertTemperature(value, 'F', 'C'));

/** Bare degrees above this are Fahrenheit: no summer day has them in Celsius. */
const hottestBareC = 60;
/** A lower number after a design counts something. */
const coolestDay = 15;

const surviving =
  /^(?:surviv\w*|withstand\w*|stand|stands|holds?|melt\w*|soften\w*|slump\w*|soft|runny|liquid|heat|hot|to|at|of|summer|weather|temperatures?|day|in|up|firm|solid|hard)$/;

/** Words beside which a bare number after "at" or "to" is a temperature. */
const lasting =
  'survive survives surviving withstand withstands stand stands melt melts melting soften softens slump slumps soft runny liquid stay stays keep keeps'.split(
    ' ',
  );

const monthsIn: Readonly<Record<string, number>> = {
  month: 1,
  months: 1,
  mths: 1,
  year: 12,
  years: 12,
  yr: 12,
  yrs: 12,
};

/** "Same but 42", "42?": a number and nothing else. */
const isOnlyNumber = (items: readonly Item[]): boolean =>
  items.every(
    ({ letter, word }) => /^[n?.!,F]$/.test(letter) || word === 'same' || word === 'then' || word === 'what',
  );

/** "Hotter please, 42" after a design: the only number there is. */
const onlyNumber = (board: Board, reading: Reading): Item | undefined => {
  const [item, second] = board.items.filter((each, at) => each.letter === 'n' && !board.taken[at]);
  const asked =
    reading.last?.topic === 'design' &&
    (anyWord(reading, ['only', 'enough', 'needed', 'hotter', 'warmer', 'heat', 'hot', 'colder', 'cooler']) ||
      isOnlyNumber(reading.items));
  return asked && !second && (item?.value ?? 0) >= coolestDay ? item : undefined;
};

const bareDegrees = (board: Board, reading: Reading): Item | undefined =>
  onlyNumber(board, reading) ??
  board.items.find((item, at) => {
    if (item.letter !== 'n' || board.taken[at] || /^an?$/.test(item.word)) return false;
    if (Object.hasOwn(monthsIn, board.items[at + 1]?.word ?? '')) return false;
    if (/^degrees?$/.test(board.items[at + 1]?.word ?? '')) return true;
    return lasting.some((word) => reading.words.has(word)) && surviving.test(board.items[at - 1]?.word ?? '');
  });

const heatSaid = (reading: Reading): FigureRead => {
  const found = heatWords.find(([words]) => words.some((word) => reading.words.has(word)));
  if (!found) return {};
  const word = found[0].find((each) => reading.words.has(each));
  return { value: found[1], assumed: `I reckoned "${word}" as ${found[1]} °C.` };
};

const takeAt = (board: Board, item: Item): Item => {
  const at = board.items.indexOf(item);
  take(board, at, at + 1);
  return item;
};

/** "40 C rather than 38": the one that is no longer wished for. */
const notThat = /\b(?:rather than|instead of|not) \d{1,3}(?: ?°?[CF]\b| degrees)?/i;

const takeNotThat = (board: Board, { text }: Reading): void => {
  const match = notThat.exec(text);
  if (!match) return;
  const end = match.index + match[0].length;
  for (const [at, item] of board.items.entries())
    if (item.from >= match.index && item.to <= end) take(board, at, at + 1);
};

/** The hottest day in °C: a temperature, bare degrees, or a word for heat. */
export const takeHottest = (board: Board, reading: Reading): FigureRead => {
  takeNotThat(board, reading);
  const said = board.items.filter((item, at) => item.letter === 't' && !board.taken[at]);
  if (said.length > 0) {
    const values = said
      .map((item) => takeAt(board, item))
      .map(({ unit, value = 0, upTo }) => {
        const most = upTo ?? value;
        return unit === 'F' ? fromF(most) : tenth(most);
      });
    return { value: Math.max(...values) };
  }
  const bare = bareDegrees(board, reading);
  if (!bare) return heatSaid(reading);
  const value = takeAt(board, bare).value ?? 0;
  if (value <= hottestBareC) return { value };
  return { value: fromF(value), assumed: `I took ${value} degrees as °F.` };
};

/** How long it is to keep, in months: "18 months", "a year", "two years". */
export const takeShelfLife = (board: Board): number | undefined => {
  for (const [at, item] of board.items.entries()) {
    const months = Object.hasOwn(monthsIn, item.word) ? monthsIn[item.word] : undefined;
    // "A class of ten-year-olds" is no time to keep.
    const isAge = board.items.slice(at + 1, at + 3).some(({ word }) => /^olds?$/.test(word));
    if (item.letter !== 'w' || months === undefined) continue;
    if (isAge) {
      take(board, Math.max(0, at - 2), at + 3);
      continue;
    }
    const before = [board.items[at - 1], board.items[at - 2]].find((each) => each?.letter === 'n');
    const count = before ? takeAt(board, before).value : 1;
    take(board, at, at + 1);
    return tenth(months * (count ?? 1));
  }
  return undefined;
};

const forms: Readonly<Record<string, Form>> = {
  stick: 'stick',
  tube: 'tube',
  tin: 'tin',
  jar: 'tin',
  pot: 'tin',
  tub: 'tin',
  pottle: 'tin',
  tinlet: 'tin',
  jarlet: 'tin',
};

/** The form a container's word stands for. */
export const formOfWord = (word: string): Form | undefined => forms[word.replace(/s$/, '')];

const formOf = (item: Item): Form | undefined => forms[item.word.replace(/s$/, '')];

/** A count before a container or "recipes" says nothing about the recipe: "a stick", "three ideas". */
const takeCounts = (board: Board): void => {
  for (const [at, item] of board.items.entries()) {
    if (item.letter !== 'n' || board.taken[at]) continue;
    const next = board.items.slice(at + 1, at + 4);
    if (next.some(({ letter, word }) => /[cb]/.test(letter) || /^(ideas?|suggestions?|options?)$/.test(word)))
      take(board, at, at + 1);
  }
};

const pushedUp = /\b(?:push|twist|turn)[ -]up\b/i;

/** What it is filled into, if the message says so: the container, or words that only fit one. */
export const takeForm = (board: Board, reading: Reading): Form | undefined => {
  takeCounts(board);
  const said = board.items.flatMap((item, at) =>
    item.letter === 'c' && !board.taken[at] ? [{ item, at }] : [],
  );
  for (const { at } of said) take(board, at, at + 1);
  const named = said.flatMap(({ item }) => formOf(item) ?? []);
  if (anyWord(reading, stickWords) || pushedUp.test(reading.text)) return 'stick';
  const [first] = named;
  if (first !== undefined) return first;
  return anyWord(reading, softWords) ? 'tube' : undefined;
};
