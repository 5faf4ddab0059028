import { readNumber } from './number.ts';
import type { Token } from './tokens.ts';

/** A length of time in a message, with the places of its words. */
export interface Duration {
  readonly minutes: number;
  readonly from: number;
  readonly to: number;
}

const hourWord = /^(?:hours?|hrs?|h)$/;
const minuteWord = /^(?:minutes?|mins?)$/;
const money = /^(?:€|£|\$|eur|euros?|gbp|quid|pounds?|dollars?|usd|cad|aud|chf|cents?|p|pence)$/;

interface Part {
  readonly minutes: number;
  /** First token after it. */
  readonly next: number;
}

const skipping = (list: readonly Token[], at: number, words: readonly string[]): number =>
  words.includes(list[at]?.word ?? '') ? at + 1 : at;

/** "15 an hour" is a rate: money stands right before the article. */
const isRate = (list: readonly Token[], article: number): boolean => {
  const before = list[article - 1];
  return (
    before?.kind === 'number' || money.test(before?.word ?? '') || readNumber(list, article - 1) !== undefined
  );
};

/** The number before "hours", or the article of "an hour". */
const countAt = (
  list: readonly Token[],
  at: number,
): { readonly count: number; readonly next: number } | undefined => {
  const read = readNumber(list, at);
  if (read) {
    const next = skipping(list, read.next, ['-']);
    return { count: read.value, next: read.value < 1 ? skipping(list, next, ['of']) : next };
  }
  const article = /^an?$/.test(list[at]?.word ?? '') && !isRate(list, at);
  return article ? { count: 1, next: at + 1 } : undefined;
};

/** "… and a half", "… and a quarter", "… and 20 minutes", "… 15 min". */
const moreAfter = (list: readonly Token[], at: number): Part => {
  const and = skipping(list, at, ['and', '&']);
  const read = readNumber(list, skipping(list, and, ['a']));
  if (!read) return { minutes: 0, next: at };
  if (minuteWord.test(list[read.next]?.word ?? '')) return { minutes: read.value, next: read.next + 1 };
  return and > at && read.value < 1
    ? { minutes: read.value * 60, next: read.next }
    : { minutes: 0, next: at };
};

const partAt = (list: readonly Token[], at: number): Part | undefined => {
  const counted = countAt(list, at);
  if (!counted) return undefined;
  const { count, next } = counted;
  const unit = count < 1 ? skipping(list, next, ['an']) : next;
  const word = list[unit]?.word ?? '';
  if (minuteWord.test(word)) return { minutes: count, next: unit + 1 };
  // "one and a half hours" is one number already; "an hour and a half" is not.
  if (!hourWord.test(word)) return undefined;
  const more = moreAfter(list, unit + 1);
  return { minutes: count * 60 + more.minutes, next: more.next };
};

/** The first length of time in a message: "2 h", "90 minutes", "an hour and a half", "half an hour". */
export const readDuration = (list: readonly Token[]): Duration | undefined => {
  for (let at = 0; at < list.length; ) {
    const part = partAt(list, at);
    const [first, last] = [list[at], part && list[part.next - 1]];
    if (part && first && last) return { minutes: part.minutes, from: first.from, to: last.to };
    at = Math.max(at + 1, readNumber(list, at)?.next ?? 0);
  }
  return undefined;
};
