import { isMassUnit, isVolumeUnit } from '../../core/units.ts';
import { placed, type Read } from './item.ts';
import { letterOf, letters } from './lexicon.ts';
import { digits, readNumber } from './number.ts';
import type { Token } from './tokens.ts';
import { nearUnit, type ReadUnit, readUnit } from './unit.ts';

const amountLetter = (unit: ReadUnit): string => {
  if (unit === 'percent') return letters.percent;
  if (unit === 'part') return letters.part;
  if (unit === 'drop') return letters.drops;
  if (isMassUnit(unit)) return letters.mass;
  return isVolumeUnit(unit) ? letters.volume : letters.temperature;
};

/** A minus that belongs to the number: glued to it, and not a bullet, a dash after a word, or part of a range. */
const isNegative = (list: readonly Token[], at: number, before: string): boolean => {
  const sign = list[at - 1];
  if (sign?.text !== '-' || !list[at]?.glued || sign.glued) return false;
  return list[at - 2]?.kind === 'word' && before !== letters.ingredient;
};

const isBulletOrMinus = (list: readonly Token[], at: number): boolean =>
  list[at - 1]?.text === '-' && (list[at]?.glued ?? false) && (at === 1 || list[at - 2]?.kind === 'break');

/** "1.", "2)" or "A)" before a line of a list. */
export const isListNumber = (list: readonly Token[], at: number): boolean => {
  const sign = list[at + 1];
  const starts = at === 0 || list[at - 1]?.kind === 'break';
  return (
    starts &&
    /^(?:\d{1,2}|[A-Za-z])$/.test(list[at]?.text ?? '') &&
    (sign?.text === '.' || sign?.text === ')') &&
    sign.glued
  );
};

const series = (list: readonly Token[], at: number, sign: string): { values: number[]; next: number } => {
  const values: number[] = [];
  let next = at;
  // "7: 2 oz" is a name's number before a list; a ratio has its colon glued on both sides or on neither.
  while (
    list[next]?.text === sign &&
    list[next + 1]?.kind === 'number' &&
    list[next]?.glued === list[next + 1]?.glued
  ) {
    values.push(digits(list[next + 1]?.text ?? ''));
    next += 2;
  }
  return { values, next };
};

const unitAfter = (list: readonly Token[], at: number): { unit: ReadUnit; next: number } | undefined => {
  const hyphen = list[at]?.text === '-' && list[at]?.glued && list[at + 1]?.glued ? 1 : 0;
  const of = list[at]?.word === 'of' && list[at + 1]?.word === 'a' ? 2 : 0;
  const read = readUnit(list, at + hyphen) ?? (of ? readUnit(list, at + of) : undefined);
  if (read) return read;
  const near = nearUnit(list[at]?.word ?? '');
  return near === undefined ? undefined : { unit: near, next: at + 1 };
};

/** True for the words of containers: tins, jars, sticks. */
export const isContainer = (token: Token | undefined): boolean =>
  token !== undefined && letterOf(token.word) === letters.container;

const readRange = (
  list: readonly Token[],
  value: number,
  next: number,
): { upTo: number; next: number } | undefined => {
  const sign = list[next];
  if (sign?.text !== '-' && sign?.word !== 'to') return undefined;
  if (sign.word === 'to' && list[next + 1]?.kind !== 'number') return undefined;
  if (sign.text === '-' && !sign.glued) return undefined;
  const end = readNumber(list, next + 1);
  if (!end || end.value <= value || list[next + 1]?.kind !== 'number') return undefined;
  // "scale 20 to 24 tins" is a range; "20 g to 24 tins" never comes here, because of its unit.
  return { upTo: end.value, next: end.next };
};

const ratioAt = (list: readonly Token[], at: number, value: number, next: number): Read | undefined => {
  const { values, next: end } = series(list, next, ':');
  if (values.length === 0) return undefined;
  const clock = list[end]?.word === 'am' || list[end]?.word === 'pm';
  return clock ? undefined : placed(list, at, end, letters.ratio, { ratio: [value, ...values] });
};

/** "24 150 ml tins" is a count and a size, "1 250 g" is one number. */
const numberAt = (list: readonly Token[], at: number) => {
  const read = readNumber(list, at);
  if (!read || read.next <= at + 1 || list[at]?.kind !== 'number') return read;
  const unit = unitAfter(list, read.next);
  return unit && isContainer(list[unit.next]) ? readNumber(list, at, false) : read;
};

/** Reads the amount, number, ratio or range that starts at a token. `before` is the letter of the item before it. */
export const readAmount = (list: readonly Token[], at: number, before: string): Read | undefined => {
  const number = numberAt(list, at);
  if (!number) return undefined;
  const ratio = ratioAt(list, at, number.value, number.next);
  if (ratio) return ratio;
  const range = readRange(list, number.value, number.next);
  const value = isNegative(list, at, before) ? -number.value : number.value;
  const unit = unitAfter(list, range?.next ?? number.next);
  const next = unit?.next ?? range?.next ?? number.next;
  const fraction = list[at]?.kind === 'word' && value < 1 && value > 0;
  return placed(list, at, next, unit ? amountLetter(unit.unit) : letters.number, {
    value,
    ...(unit ? { unit: unit.unit } : {}),
    ...(range ? { upTo: range.upTo } : {}),
    ...(fraction ? { fraction } : {}),
    ...(isBulletOrMinus(list, at) ? { bulletOrMinus: true } : {}),
  });
};

const articles = new Set(['a', 'an']);

/** "a cup of", "an ounce", "a tin of 15 ml": the article is a one. */
export const readArticle = (list: readonly Token[], at: number): Read | undefined => {
  if (!articles.has(list[at]?.word ?? '')) return undefined;
  if (isContainer(list[at + 1])) return placed(list, at, at + 1, letters.number, { value: 1 });
  const unit = readUnit(list, at + 1);
  if (!unit || unit.unit === 'C' || unit.unit === 'F') return undefined;
  return placed(list, at, unit.next, amountLetter(unit.unit), {
    value: 1,
    unit: unit.unit,
  });
};
