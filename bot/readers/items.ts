import { isContainer, isListNumber, readAmount, readArticle } from './amount.ts';
import { type Item, placed, type Read } from './item.ts';
import { letterOf, letters, multipleOf } from './lexicon.ts';
import { corrected } from './spelling.ts';
import type { Token } from './tokens.ts';
import { readUnit, unitOf } from './unit.ts';

export interface NameRead {
  readonly part: Partial<Item>;
  readonly letter: string;
  readonly next: number;
}

/** Looks up names at a token: the item's parts and the first token after it. */
export type NameReader = (at: number) => NameRead | undefined;

const silentSigns = new Set(['~', '#', '|', '[', ']', '{', '}', '^', '_', '\\', '…', "'"]);
const signLetters: Readonly<Record<string, string>> = {
  '&': 'A',
  '+': 'A',
  '×': 'x',
  '*': '*',
  '€': 'z',
  $: 'z',
  '£': 'z',
};

const readSign = (list: readonly Token[], at: number): Read => {
  const sign = list[at]?.text ?? '';
  if (silentSigns.has(sign)) return { next: at + 1 };
  const known = signLetters[sign] ?? (/^[,;.:()\-=?!"/>@<]$/.test(sign) ? sign : letters.unknown);
  return placed(list, at, at + 1, known, {});
};

const perContainer = (list: readonly Token[], at: number): Read | undefined => {
  const word = list[at]?.word;
  if (word !== 'per' && word !== 'each' && word !== '/') return undefined;
  return isContainer(list[at + 1]) ? placed(list, at, at + 2, letters.each, {}) : undefined;
};

const letterWithSlash = (list: readonly Token[], at: number): Read | undefined => {
  if (list[at]?.word !== 'w' || list[at + 1]?.text !== '/') return undefined;
  const out = list[at + 2]?.word === 'o';
  return placed(list, at, at + (out ? 3 : 2), out ? letters.none : letters.with, {});
};

const readWord = (list: readonly Token[], at: number): Read => {
  const word = list[at]?.word ?? '';
  const unit = readUnit(list, at);
  if (unit) return placed(list, at, unit.next, letters.unit, { unit: unit.unit });
  const meant = corrected(word);
  const unitMeant = meant === word ? undefined : unitOf(meant);
  if (unitMeant) return placed(list, at, at + 1, letters.unit, { unit: unitMeant });
  const letter = letterOf(meant);
  if (letter === undefined) return { next: at + 1 };
  const value = multipleOf(meant);
  return placed(list, at, at + 1, letter, {
    word: meant,
    ...(value === undefined ? {} : { value }),
  });
};

/** "quick one", "each one": a pronoun, unless something to count follows. */
const isJustOne = (list: readonly Token[], at: number): boolean => {
  if (list[at]?.word !== 'one') return false;
  if (pointing.has(list[at - 1]?.word ?? '')) return true;
  const next = list[at + 1];
  if (next?.kind === 'number') return false;
  const counts =
    next?.kind === 'word' && (isContainer(next) || readUnit(list, at + 1) || countable.has(next.word));
  return !counts && next?.text !== '-' && next?.text !== ':';
};

const pointing = new Set(['each', 'quick', 'this', 'that', 'every', 'which', 'another', 'little']);

const countable = new Set([
  'dozen',
  'hundred',
  'thousand',
  'and',
  'batch',
  'half',
  'third',
  'quarter',
  'to',
  'time',
  'part',
]);

const readAt = (list: readonly Token[], at: number, names: NameReader, before: string): Read => {
  const token = list[at];
  if (token?.kind === 'break') return placed(list, at, at + 1, '\n', {});
  if (isListNumber(list, at)) return { next: at + 2 };
  if (isJustOne(list, at)) return { next: at + 1 };
  const name = names(at);
  if (name) return placed(list, at, name.next, name.letter, name.part);
  const amount =
    readAmount(list, at, before) ??
    readArticle(list, at) ??
    perContainer(list, at) ??
    letterWithSlash(list, at);
  if (amount) return amount;
  if (token?.kind === 'word') return readWord(list, at);
  const unit = token?.text === '%' ? undefined : readUnit(list, at);
  return unit ? placed(list, at, unit.next, letters.unit, { unit: unit.unit }) : readSign(list, at);
};

const compound: Readonly<Record<string, string>> = { lb: 'oz', kg: 'g' };

/** "1 lb 4 oz" is one amount. */
const joined = (items: readonly Item[]): Item[] => {
  const list: Item[] = [];
  for (const item of items) {
    const last = list.at(-1);
    const pair = last?.letter === 'g' && item.letter === 'g' && compound[last.unit ?? ''] === item.unit;
    if (!pair || !last || item.value === undefined || last.value === undefined) {
      list.push(item);
      continue;
    }
    const inSmall = last.unit === 'lb' ? last.value * 16 : last.value * 1000;
    list[list.length - 1] = {
      ...item,
      value: inSmall + item.value,
      from: last.from,
    };
  }
  return list;
};

const making = new Set('make do scale pour weigh of times by'.split(' '));

/** "Heat plan 4 Fernlea hand balm": a figure typed for the word, where no count of it is asked for. */
const fourMeansFor = (items: readonly Item[]): readonly Item[] =>
  items.map((item, at) => {
    const [before, after] = [items[at - 1], items[at + 1]];
    const typed = item.letter === 'n' && item.value === 4 && item.to - item.from === 1;
    const asked = before !== undefined && /[wZz]/.test(before.letter) && !making.has(before.word);
    const named = asked && after?.letter === letters.recipe;
    // "30 % shea 4 winter"
    const forWhat =
      before?.letter === letters.ingredient && after?.letter === letters.unknown && !items[at + 2];
    return typed && (named || forWhat)
      ? { letter: letters.for, word: 'for', from: item.from, to: item.to }
      : item;
  });

/** Reads tokens into items, chatter left out. Names are looked for first, then numbers and amounts, then words. */
export const readItems = (list: readonly Token[], names: NameReader): readonly Item[] => {
  const items: Item[] = [];
  let before = '';
  for (let at = 0; at < list.length; ) {
    const { item, next } = readAt(list, at, names, before);
    if (item) items.push(item);
    if (item && item.letter !== '-') before = item.letter;
    at = Math.max(next, at + 1);
  }
  return fourMeansFor(joined(items));
};
