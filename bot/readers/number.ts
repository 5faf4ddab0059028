import type { Token } from './tokens.ts';

/** A number read from tokens: `next` is the first token after it. */
export interface NumberRead {
  readonly value: number;
  readonly next: number;
}

type Numbers = Readonly<Record<string, number>>;

/** Looked up with members' own words, so nothing is inherited: "constructor" is no number. */
const numbers = (rows: Numbers): Numbers => Object.assign(Object.create(null), rows);

const small = numbers({
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
});
const tens = numbers({
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
});
const fractions = numbers({
  half: 1 / 2,
  third: 1 / 3,
  thirds: 1 / 3,
  quarter: 1 / 4,
  quarters: 1 / 4,
});

/**
 * Reads a digit token. A comma or point is a thousands mark when groups of exactly three follow and the other mark (or
 * a second group) shows it, or for `1,250` with a comma; otherwise it is the decimal mark: `12,5`, `0,125`, `1.250`.
 */
export const digits = (text: string): number => {
  const lastComma = text.lastIndexOf(',');
  const lastPoint = text.lastIndexOf('.');
  if (lastComma < 0) return /^\d+(\.\d{3}){2,}$/.test(text) ? Number(text.replaceAll('.', '')) : Number(text);
  if (lastPoint > lastComma) return Number(text.replaceAll(',', ''));
  const grouped = /^[1-9]\d{0,2}(,\d{3})+$/.test(text);
  if (grouped) return Number(text.replaceAll(',', ''));
  return Number(text.replaceAll('.', '').replace(',', '.'));
};

/** "one" to "nineteen", for readers that look at a message's text. */
export const smallNumbers: Numbers = small;
/** "twenty" to "ninety". */
export const tensNumbers: Numbers = tens;

const wordNumber = (list: readonly Token[], at: number): NumberRead | undefined => {
  const word = list[at]?.word ?? '';
  const ten = tens[word];
  if (ten === undefined) return word in small ? { value: small[word] ?? 0, next: at + 1 } : undefined;
  const hyphen = list[at + 1]?.text === '-' ? 1 : 0;
  const unit = small[list[at + 1 + hyphen]?.word ?? ''];
  return unit !== undefined && unit < 10
    ? { value: ten + unit, next: at + 2 + hyphen }
    : { value: ten, next: at + 1 };
};

/** `/ 2` after a whole number, glued on both sides or not at all. */
const fractionTail = (
  list: readonly Token[],
  at: number,
): { readonly over: number; readonly next: number } | undefined => {
  const over = list[at + 1];
  if (list[at]?.text !== '/' || over?.kind !== 'number') return undefined;
  const value = Number(over.text);
  return Number.isInteger(value) && value > 0 && value <= 16 ? { over: value, next: at + 2 } : undefined;
};

const isWhole = (token: Token | undefined): boolean => token?.kind === 'number' && /^\d+$/.test(token.text);

/** `1 250`: a thin-space style thousand, only when the next token group is three digits and not a unit of its own. */
const spacedThousands = (list: readonly Token[], at: number): NumberRead | undefined => {
  const first = list[at];
  if (!isWhole(first) || !first || !/^[1-9]\d{0,2}$/.test(first.text)) return undefined;
  let value = Number(first.text);
  let next = at + 1;
  for (let token = list[next]; token && !token.glued && /^\d{3}$/.test(token.text); token = list[next]) {
    value = value * 1000 + Number(token.text);
    next += 1;
  }
  return next > at + 1 ? { value, next } : undefined;
};

const digitNumber = (list: readonly Token[], at: number): NumberRead | undefined => {
  const token = list[at];
  if (token?.kind !== 'number') return undefined;
  const over = fractionTail(list, at + 1);
  if (over && isWhole(token)) return { value: Number(token.text) / over.over, next: over.next };
  const second = list[at + 1];
  if (isWhole(token) && isWhole(second) && !second?.glued) {
    const mixed = fractionTail(list, at + 2);
    if (mixed)
      return {
        value: Number(token.text) + Number(second?.text) / mixed.over,
        next: mixed.next,
      };
  }
  const value = digits(token.text);
  return Number.isFinite(value) ? { value, next: at + 1 } : undefined;
};

const articles = new Set(['a', 'an']);

/** `half`, `half a`, `a quarter of a`, `three quarters of a`, and the tail of `one and a half`. */
const fractionWord = (list: readonly Token[], at: number): NumberRead | undefined => {
  const skip = articles.has(list[at]?.word ?? '') ? 1 : 0;
  const value = fractions[list[at + skip]?.word ?? ''];
  if (value === undefined) return undefined;
  let next = at + skip + 1;
  if (list[next]?.word === 'of' && articles.has(list[next + 1]?.word ?? '')) next += 2;
  else if (articles.has(list[next]?.word ?? '')) next += 1;
  return { value, next };
};

/** "three quarters", "two thirds", "one third". */
const severalths = (list: readonly Token[], read: NumberRead): NumberRead => {
  const word = list[read.next]?.word ?? '';
  const part = (/s$/.test(word) && read.value < 10) || read.value === 1 ? fractions[word] : undefined;
  if (part === undefined) return read;
  const tail = fractionWord(list, read.next);
  return { value: read.value * part, next: tail?.next ?? read.next + 1 };
};

/** "One and half cup". */
const isMeasure =
  /^(?:cups?|tbsps?|tsps?|tablespoons?|teaspoons?|kilos?|kg|pounds?|lbs?|ounces?|oz|lit(?:re|er)s?|dozen)$/;
const withHalf = (list: readonly Token[], read: NumberRead): NumberRead => {
  if (list[read.next]?.word !== 'and') return read;
  const tail = fractionWord(list, read.next + 1);
  const isMixed = list[read.next + 1]?.word !== 'half' || isMeasure.test(list[read.next + 2]?.word ?? '');
  return tail && isMixed ? { value: read.value + tail.value, next: tail.next } : read;
};

const multiplied = (list: readonly Token[], read: NumberRead): NumberRead => {
  const word = list[read.next]?.word ?? '';
  if (word === 'dozen' || word === 'doz') return { value: read.value * 12, next: read.next + 1 };
  if (word !== 'hundred' && word !== 'thousand') return read;
  const base = read.value * (word === 'hundred' ? 100 : 1000);
  const and = list[read.next + 1]?.word === 'and' ? 1 : 0;
  const more = wordNumber(list, read.next + 1 + and);
  return more ? { value: base + more.value, next: more.next } : { value: base, next: read.next + 1 };
};

const articleNumber = (list: readonly Token[], at: number): NumberRead | undefined => {
  const word = list[at + 1]?.word ?? '';
  if (!articles.has(list[at]?.word ?? '')) return undefined;
  if (word === 'couple') return { value: 2, next: list[at + 2]?.word === 'of' ? at + 3 : at + 2 };
  return word === 'dozen' || word === 'hundred' || word === 'thousand'
    ? multiplied(list, { value: 1, next: at + 1 })
    : undefined;
};

/** `half a dozen`: a fraction of a dozen. */
const fractionNumber = (list: readonly Token[], at: number): NumberRead | undefined => {
  const read = fractionWord(list, at);
  return read ? multiplied(list, read) : undefined;
};

/**
 * Reads the number that starts at token `at`: digits with either decimal mark, fractions, mixed numbers, number words
 * to the thousands, dozens, halves. Undefined when no number starts there.
 */
export const readNumber = (list: readonly Token[], at: number, spaced = true): NumberRead | undefined => {
  const token = list[at];
  if (token?.kind === 'number') {
    const thousands = spaced ? spacedThousands(list, at) : undefined;
    const read = thousands ?? digitNumber(list, at);
    return read && multiplied(list, withHalf(list, read));
  }
  if (token?.kind !== 'word') return undefined;
  if (token.word === 'dozen') return { value: 12, next: at + 1 };
  const read = wordNumber(list, at);
  if (read) return multiplied(list, withHalf(list, severalths(list, read)));
  return articleNumber(list, at) ?? fractionNumber(list, at);
};
