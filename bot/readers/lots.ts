import { lotKey } from '../../core/bench/codes.ts';
import type { Bench } from '../../core/bench/state.ts';
import { oncePerReading, type Reading } from '../reading.ts';
import { letterOf, letters } from './lexicon.ts';
import {
  houseCode,
  houseWord,
  isAfterLotVerb,
  looksLikeCode,
  lotCue,
  nearHouseCode,
  pieceEnd,
  plainCode,
} from './lot-shapes.ts';
import type { Token } from './tokens.ts';
import { readUnit } from './unit.ts';

/** A lot code in a message. `from`/`to` are places in the tidied text, words such as "lot no." included. */
export interface LotSaid {
  /** As the book writes it, or as it was typed when the book does not know it. */
  readonly code: string;
  /** `lot` on the shelf, `batch` poured, `new` to this book. */
  readonly kind: 'lot' | 'batch' | 'new';
  readonly from: number;
  readonly to: number;
  /** True when "lot" or "batch" stands before it. */
  readonly cued: boolean;
  /** Codes that end in the same word, where it was said alone: which of them is asked back about. */
  readonly others?: readonly string[];
}

type Known = Pick<LotSaid, 'code' | 'kind' | 'others'>;

/** Longest code, in tokens with the signs between them: "26 - KIVO". */
const mostTokens = 5;
const longestCode = 40;

const knownAs = (bench: Bench, key: string): Known | undefined => {
  const batch = bench.batches.get(key);
  if (batch) return { code: batch.lot, kind: 'batch' };
  const lot = bench.lots.get(key);
  return lot ? { code: lot.lot, kind: 'lot' } : undefined;
};

const years = Array.from({ length: 100 }, (_, year) => String(year).padStart(2, '0'));

/** "kivo" alone: the batch or lot of that word, the latest first where several years have one. */
const byWord = (bench: Bench, word: string): Known | undefined => {
  if (!houseWord.test(word)) return undefined;
  const found = years.flatMap((year) => knownAs(bench, lotKey(`${year}${word}`)) ?? []).reverse();
  const [only, ...more] = found;
  return only && more.length > 0 ? { ...only, others: found.map(({ code }) => code) } : only;
};

const isCrossed = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'break' || (token.kind === 'sign' && !/^[-/._#]$/.test(token.text));

interface Hit extends Known {
  readonly next: number;
}

/** "Opened 4471": a number of four digits and more, no year and nothing's amount, may be a lot's that the book knows. */
const isLongNumber = (list: readonly Token[], at: number): boolean => {
  const [before, number, after] = [list[at - 1], list[at], list[at + 1]];
  const digits = number?.text ?? '';
  if (!/^\d{4,8}$/.test(digits) || /^(?:19|20)\d\d$/.test(digits)) return false;
  if (/^[€£$%x×*]$/.test(before?.text ?? '') || /^[€£$%x×*/-]$/.test(after?.text ?? '')) return false;
  return readUnit(list, at + 1) === undefined && letterOf(after?.word ?? '') !== letters.container;
};

/** "12 g" is an amount even where a lot is called 12G, and a bare number no lot at all, unless "lot" comes before it. */
const isAmountLike = (list: readonly Token[], at: number, next: number): boolean => {
  if (list[at]?.kind !== 'number') return false;
  if (next === at + 1 && isLongNumber(list, at)) return false;
  return next === at + 1 || (next === at + 2 && readUnit(list, at + 1) !== undefined);
};

/** "A", "is", "beeswax": letters alone say "lot" only where they are no word of anything else. */
const isPlainWord = (reading: Reading, at: number, next: number): boolean => {
  const token = reading.tokens[at];
  if (token?.kind !== 'word' || next !== at + 1) return false;
  const unknown = letterOf(token.word) === letters.unknown;
  if (token.text === token.text.toUpperCase() && token.text.length > (unknown ? 1 : 2)) return false;
  if (!unknown || token.word.length < 3) return true;
  const item = reading.items.find((each) => each.from <= token.from && each.to >= token.to);
  const wider = item !== undefined && item.to > token.to;
  return item !== undefined && (wider || (item.letter !== letters.unknown && item.misspelt === undefined));
};

const isWritten = (list: readonly Token[], at: number, next: number): boolean => {
  const last = list[next - 1];
  if (!last || last.kind === 'sign' || list[at]?.kind === 'sign' || list.slice(at, next).some(isCrossed))
    return false;
  // "LJ2" is another lot than LJ.
  if (list[next]?.glued && /^(?:word|number)$/.test(list[next]?.kind ?? '')) return false;
  // "K 12 g": the twelve belongs to the gram.
  return next === at + 1 || last.glued || last.kind !== 'number' || readUnit(list, next) === undefined;
};

const mayBeCode = (reading: Reading, at: number, next: number, cued: boolean): boolean =>
  isWritten(reading.tokens, at, next) &&
  (cued || !(isAmountLike(reading.tokens, at, next) || isPlainWord(reading, at, next)));

/** A code the book knows at token `at`, the longest one. */
const knownAt = (reading: Reading, at: number, cued: boolean): Hit | undefined => {
  const { tokens: list, bench, text } = reading;
  for (let next = at + mostTokens; next > at; next -= 1) {
    if (!mayBeCode(reading, at, next, cued)) continue;
    const known = knownAs(bench, lotKey(text.slice(list[at]?.from, list[next - 1]?.to)));
    if (known) return { ...known, next };
  }
  const word = list[at];
  if (word?.kind !== 'word' || (!cued && isPlainWord(reading, at, at + 1))) return undefined;
  const known = byWord(bench, word.word);
  return known ? { ...known, next: at + 1 } : undefined;
};

const quotedAt = (reading: Reading, at: number): Hit | undefined => {
  const { tokens: list, text } = reading;
  if (list[at - 1]?.text !== '"') return undefined;
  const end = list.findIndex((token, index) => index > at && token.text === '"');
  const [first, last] = [list[at], list[end - 1]];
  if (end < 0 || !first || !last || last.to - first.from > longestCode) return undefined;
  return { code: text.slice(first.from, last.to), kind: 'new', next: end + 1 };
};

/** "lot K 12": one capital and a whole number that nothing else needs. */
const spacedEnd = (list: readonly Token[], at: number, next: number): number => {
  const [letter, number] = [list[at], list[next]];
  if (next !== at + 1 || !letter || !/^\p{Lu}$/u.test(letter.text) || !number) return next;
  const whole = number.kind === 'number' && /^\d{1,6}$/.test(number.text) && !number.glued;
  const after = list[next + 1];
  return whole &&
    !readUnit(list, next + 1) &&
    !/^[€£$%x×*]$/.test(after?.text ?? '') &&
    after?.kind !== 'word'
    ? next + 1
    : next;
};

/** A code that is new, after "lot" or "batch". A whole word in small letters is none: "lot of", "batch list". */
const newAt = (reading: Reading, at: number, word: string): Hit | undefined => {
  const { tokens: list, text } = reading;
  const quoted = quotedAt(reading, at);
  if (quoted) return quoted;
  const end = spacedEnd(list, at, pieceEnd(list, at));
  const [first, last] = [list[at], list[end - 1]];
  if (!first || !last || end === at || last.to - first.from > longestCode) return undefined;
  const code = text.slice(first.from, last.to);
  // "batch 2 of the balm" counts batches.
  if (word.startsWith('batch') && /^\d{1,2}$/.test(code)) return undefined;
  if (code === 'I' || !looksLikeCode(code) || readsAsAmount(list, at, end)) return undefined;
  return { code, kind: 'new', next: end };
};

/** "lots 500 g": a number with its unit is no code, and "14.50" is money. */
const readsAsAmount = (list: readonly Token[], at: number, end: number): boolean => {
  if (list[at]?.kind !== 'number' || /-/.test(list[at + 1]?.text ?? '')) return false;
  if (end === at + 1) return /[.,]/.test(list[at]?.text ?? '') || readUnit(list, end) !== undefined;
  return end === at + 2 && readUnit(list, at + 1) !== undefined && list[at + 1]?.word !== 'l';
};

const listSigns = new Set([',', '&', '+', ';']);

/** Past "," or "and" between codes of a list. */
const nextInList = (list: readonly Token[], at: number): number => {
  let next = at;
  while (listSigns.has(list[next]?.text ?? '') || list[next]?.word === 'and' || list[next]?.word === 'lot')
    next += 1;
  return next;
};

const saidAt = (reading: Reading, from: number, at: number, hit: Hit, cued: boolean): LotSaid => {
  const { tokens: list } = reading;
  const { next, ...known } = hit;
  return { ...known, from: list[from]?.from ?? 0, to: list[next - 1]?.to ?? list[at]?.to ?? 0, cued };
};

interface Found {
  readonly said: readonly LotSaid[];
  readonly next: number;
}

const cuedAt = (reading: Reading, at: number): Found | undefined => {
  const { tokens: list } = reading;
  const cue = lotCue(list, at);
  if (!cue) return undefined;
  const said: LotSaid[] = [];
  let from = at;
  let next = cue.next;
  for (;;) {
    const hit = knownAt(reading, next, true) ?? newAt(reading, next, cue.word);
    if (!hit) break;
    said.push(saidAt(reading, from, next, hit, true));
    const more = nextInList(list, hit.next);
    from = hit.next;
    if (!cue.many || more === hit.next) return { said, next: hit.next };
    next = more;
  }
  return said.length > 0 ? { said, next: from } : undefined;
};

const isNamed = ({ items }: Reading, token: Token | undefined): boolean =>
  items.some(
    ({ letter, from, to }) =>
      /^[Ri]$/.test(letter) && token !== undefined && from <= token.from && to >= token.to,
  );

/** A code of our own scheme, or one after "trace" and the like, that this book does not have. */
const strangerAt = (reading: Reading, at: number): Hit | undefined => {
  const { tokens: list, text } = reading;
  const end = pieceEnd(list, at);
  const code = text.slice(list[at]?.from ?? 0, list[end - 1]?.to ?? 0);
  const word = list[end - 1]?.word ?? '';
  const written =
    houseCode.test(code) ||
    (nearHouseCode.test(code) && letterOf(word) === letters.unknown) ||
    (plainCode.test(code) &&
      !isNamed(reading, list[at]) &&
      isAfterLotVerb(text.slice(0, list[at]?.from), text));
  return written ? { code: code.toUpperCase(), kind: 'new', next: end } : undefined;
};

const codesIn = (reading: Reading): readonly LotSaid[] => {
  const said: LotSaid[] = [];
  for (let at = 0; at < reading.tokens.length; ) {
    const cued = cuedAt(reading, at);
    const plain = cued ? undefined : (knownAt(reading, at, false) ?? strangerAt(reading, at));
    if (cued) said.push(...cued.said);
    else if (plain) said.push(saidAt(reading, at, at, plain, false));
    at = Math.max(at + 1, cued?.next ?? plain?.next ?? 0);
  }
  return said;
};

/**
 * The lot codes of a message, in their order: the group's lots and batches however spaced or cased ("26-KIVO", "26 kivo",
 * "kivo" alone), and new ones after "lot" or "batch" ("lot G7", "batch no. 4411-B"). Amounts, ingredients and recipes are
 * not among them.
 */
export const lotsIn: (reading: Reading) => readonly LotSaid[] = oncePerReading(codesIn);
