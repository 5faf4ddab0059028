import { readNumber } from './number.ts';
import { type Token, tokens } from './tokens.ts';

/** Words by which somebody puts right what was just said; "make that" and "I mean" are made of two. */
const cue = new Set(['no', 'sorry', 'oops', 'wait', 'rather', 'er', 'uh', 'hang', 'hold']);
const cuePart = new Set([
  'make',
  'that',
  'it',
  'i',
  'mean',
  'meant',
  'actually',
  'say',
  'to',
  'be',
  'on',
  'nope',
  'better',
]);
const any = /\b(?:no|not|sorry|oops|wait|rather|make (?:that|it)|i mean|i meant|hang on)\b/i;

/** Words after a number that say of what it is: "tins", "hot plates". */
const mostTail = 2;
const mostCue = 7;

interface Amount {
  readonly first: number;
  /** First token after the number, and after the words that belong to it. */
  readonly after: number;
  readonly tail: readonly string[];
}

const isWord = (token: Token | undefined): boolean => token?.kind === 'word';

const tailFrom = (list: readonly Token[], at: number): string[] => {
  const words: string[] = [];
  for (let next = at; words.length < mostTail && isWord(list[next]); next += 1) {
    const word = list[next]?.word ?? '';
    if (cue.has(word) || cuePart.has(word) || word === 'not') break;
    words.push(word);
  }
  return words;
};

const amountAt = (list: readonly Token[], at: number): Amount | undefined => {
  const read = readNumber(list, at);
  return read && { first: at, after: read.next, tail: tailFrom(list, read.next) };
};

/** "Batch no. 4411". */
const isShortForNumber = (list: readonly Token[], at: number): boolean =>
  list[at]?.word === 'no' && list[at + 1]?.text === '.' && list[at + 1]?.glued === true;

const isPause = (word: string): boolean => /^[,.;:()!-]$/.test(word);

const isSureFrom = (list: readonly Token[], at: number, word: string): boolean =>
  cue.has(word) || /^(?:make (?:that|it)|i meant?)$/.test(`${word} ${list[at + 1]?.word ?? ''}`);

/** Where the new number starts after a correction that starts at `at`; undefined where none does. */
const afterCue = (list: readonly Token[], at: number): number | undefined => {
  let sure = false;
  for (let next = at; next < Math.min(list.length, at + mostCue); next += 1) {
    const word = list[next]?.word ?? '';
    if (sure && readNumber(list, next)) return next;
    if (isShortForNumber(list, next)) return undefined;
    if (isPause(word)) continue;
    if (!cue.has(word) && !cuePart.has(word)) return undefined;
    sure ||= isSureFrom(list, next, word);
  }
  return undefined;
};

interface Cut {
  readonly from: number;
  readonly to: number;
  readonly put: string;
}

/** A share, a ratio or a date is another kind of amount. */
const isPlainEnd = (token: Token | undefined): boolean => !/^[%/×x°]$/.test(token?.text ?? '');

const startsWith = (words: readonly string[], tail: readonly string[]): boolean =>
  tail.length > 0 && words[0] === tail[0];

const cutOf = (
  list: readonly Token[],
  old: Amount,
  tail: number,
  fresh: Amount,
  text: string,
): Cut | undefined => {
  const said = old.tail.slice(0, tail);
  const [from, start] = [list[old.first]?.from ?? 0, list[fresh.first]?.from ?? 0];
  if (!isPlainEnd(list[fresh.after])) return undefined;
  if (said.length === 0 || startsWith(fresh.tail, said)) return { from, to: start, put: '' };
  if (fresh.tail.length > 0) return undefined;
  const end = list[fresh.after - 1]?.to ?? start;
  const noun = text.slice(list[old.after]?.from ?? 0, list[old.after + tail - 1]?.to ?? 0);
  return { from, to: end, put: `${text.slice(start, end)} ${noun}` };
};

/** "12, no, 14 people", "2 tins, sorry, 3 tins", "24 tins, make that 30". */
const corrected = (list: readonly Token[], old: Amount, text: string): Cut | undefined => {
  for (let tail = 0; tail <= old.tail.length; tail += 1) {
    const at = afterCue(list, old.after + tail);
    const fresh = at === undefined ? undefined : amountAt(list, at);
    const cut = fresh && cutOf(list, old, tail, fresh, text);
    if (cut) return cut;
  }
  return undefined;
};

/** What is denied right at a place: "not 0.35", ", not 12 people". */
const deniedAt = (list: readonly Token[], at: number, kept: Amount): Cut | undefined => {
  const not = list[at]?.text === ',' ? at + 1 : at;
  const old = list[not]?.word === 'not' ? amountAt(list, not + 1) : undefined;
  if (!old || !isPlainEnd(list[old.after])) return undefined;
  const named = old.tail.length > 0;
  if (named && !startsWith(old.tail, kept.tail)) return undefined;
  return { from: list[at]?.from ?? 0, to: list[named ? old.after : old.after - 1]?.to ?? 0, put: '' };
};

/** "0.37 not 0.35", "14 people, not 12". */
const denied = (list: readonly Token[], kept: Amount): Cut | undefined => {
  for (let at = kept.after; at <= kept.after + kept.tail.length; at += 1) {
    const cut = deniedAt(list, at, kept);
    if (cut) return cut;
  }
  return undefined;
};

/** Corrections in one message; more is no correction but a riddle. */
const mostCorrections = 4;

const firstCut = (text: string): Cut | undefined => {
  const list = tokens(text);
  for (let at = 0; at < list.length; ) {
    const amount = amountAt(list, at);
    const cut = amount && (corrected(list, amount, text) ?? denied(list, amount));
    if (cut) return cut;
    at = amount?.after ?? at + 1;
  }
  return undefined;
};

const month = '(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]{0,6}';
const date = `(?:\\d{4}-\\d{2}(?:-\\d{2})?|\\d{1,2}[./]\\d{1,2}[./]\\d{2,4}|\\d{1,2}[./]\\d{4}|(?:\\d{1,2}(?:st|nd|rd|th)? )?${month} \\d{4})`;
const dateThenNot = new RegExp(
  `\\b(${date}),? (?:and )?(?:not|instead of|rather than) ${date}(?![-./]?\\d)`,
  'gi',
);
const notThenDate = new RegExp(`\\bnot ${date},? but (?=${date})`, 'gi');

/** "2029-12-31, not 2030-01-31", "not May 2028 but June 2028": the date that holds. */
const withDatesCorrected = (text: string): string => text.replace(dateThenNot, '$1').replace(notThenDate, '');

/** The message with numbers that were put right in mid-sentence as they were meant: "for 12, no, 14 people". */
export const withNumbersCorrected = (text: string): string => {
  let plain = any.test(text) || /\binstead\b/i.test(text) ? withDatesCorrected(text) : text;
  for (let done = 0; done < mostCorrections && any.test(plain); done += 1) {
    const cut = firstCut(plain);
    if (!cut) break;
    plain = plain.slice(0, cut.from) + cut.put + plain.slice(cut.to);
  }
  return plain;
};
