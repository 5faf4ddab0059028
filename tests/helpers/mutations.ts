import fc from 'fast-check';
import { maxMessageLength } from '../../bot/readers/tidy.ts';

// Messages that went wrong on their way: what people really ask, with letters and words lost, doubled, swapped or
// added, numbers grown out of all measure, and characters no maker has a key for.

/** What is put in between: signs with a meaning to the reader, and characters that trouble programs. */
const strange = [
  ...'0123456789.,:;/%-+x×()[]{}<>"\'`*_~|\\#@&=?!°½¼⅓²₂',
  ' ',
  '\n',
  '\r\n',
  '\t',
  '\u0000',
  '\u001b[31m',
  '\u00a0',
  '\u200b',
  '\u200d',
  '\u202e',
  '\u2028',
  '\ufeff',
  '\ufffd',
  '\ud83d',
  '\udc4d',
  '👍🏽',
  '👩‍🔬',
  'e\u0301\u0302\u0303\u0304\u0305',
  'ß',
  'İ',
  'ﬁ',
  'Ω',
  '蜜蝋',
  'شمع',
  '５００',
  '℃',
  '㎖',
  '{{7*7}}',
  '<@900000000000000203>',
  '@everyone',
  '```',
];

/** Words that mean something to a program that looks them up carelessly. */
const programWords = ['constructor', '__proto__', 'toString', 'hasOwnProperty', 'null', 'true'];

const numbers = [
  '0',
  '-1',
  '-0',
  '00012',
  '1e309',
  '1e-400',
  '9'.repeat(40),
  `0.${'0'.repeat(60)}1`,
  '1/0',
  '0/0',
  '1,234,567,890.5',
  '1.2.3',
  '½½',
  '٣',
  '９９９',
  '12345678901234567890 x 5',
];

type Edit = (text: string) => string;

/** A place in `length`, from a share of it: an edit stays meaningful when the text before it shrinks. */
const placeIn = (length: number, share: number): number => Math.min(length - 1, Math.floor(share * length));

const onCharacters =
  (share: number, change: (character: string, next: string) => string): Edit =>
  (text) => {
    if (text === '') return change('', '');
    const at = placeIn(text.length, share);
    return text.slice(0, at) + change(text.charAt(at), text.charAt(at + 1)) + text.slice(at + 2);
  };

const onWords =
  (share: number, change: (word: string, next: string) => readonly string[]): Edit =>
  (text) => {
    const words = text.split(' ');
    const at = placeIn(words.length, share);
    const changed = change(words[at] ?? '', words[at + 1] ?? '');
    return [...words.slice(0, at), ...changed, ...words.slice(at + 2)].join(' ');
  };

const withNumber =
  (share: number, number: string): Edit =>
  (text) => {
    const found = [...text.matchAll(/\d+(?:[.,]\d+)?/g)];
    const hit = found[placeIn(found.length, share)];
    if (!hit) return `${text} ${number}`;
    return text.slice(0, hit.index) + number + text.slice(hit.index + hit[0].length);
  };

/** The same over and over, up to the longest message that is read, and now and then a little beyond. */
const repeated =
  (by: string, length: number): Edit =>
  (text) => {
    const unit = `${text}${by}`;
    return unit.repeat(Math.ceil(length / Math.max(1, unit.length))).slice(0, length);
  };

const share = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });

const editing = (texts: readonly string[]): fc.Arbitrary<Edit> => {
  const words = [...new Set(texts.flatMap((text) => text.split(/\s+/)))];
  const strangeWords = fc.constantFrom(...programWords);
  const character = share.chain((at) =>
    fc.oneof(
      fc.constant(onCharacters(at, (_, next) => next)),
      fc.constant(onCharacters(at, (one, next) => one + one + next)),
      fc.constant(onCharacters(at, (one, next) => next + one)),
      fc.constant(onCharacters(at, (one, next) => one.toUpperCase() + next)),
      fc.constantFrom(...strange).map((sign) => onCharacters(at, (one, next) => one + sign + next)),
    ),
  );
  const word = share.chain((at) =>
    fc.oneof(
      fc.constant(onWords(at, (_, next) => [next])),
      fc.constant(onWords(at, (one, next) => [one, one, next])),
      fc.constant(onWords(at, (one, next) => [next, one])),
      fc.constantFrom(...words).map((other) => onWords(at, (one, next) => [one, other, next])),
      strangeWords.map((other) => onWords(at, (one, next) => [one, other, next])),
      strangeWords.map((other) => onWords(at, (_, next) => [other, next])),
    ),
  );
  const number = fc.tuple(share, fc.constantFrom(...numbers)).map(([at, chosen]) => withNumber(at, chosen));
  const long = fc
    .tuple(
      fc.constantFrom('', ' ', '\n', ', ', ' and '),
      fc.integer({ min: 200, max: maxMessageLength + 50 }),
    )
    .map(([by, length]) => repeated(by, length));
  return fc.oneof(
    { weight: 10, arbitrary: character },
    { weight: 6, arbitrary: word },
    { weight: 3, arbitrary: number },
    { weight: 1, arbitrary: long },
  );
};

/** Messages made from `texts` by one to five slips each. Draw them with a seed, so that a bad one comes again. */
export const mutated = (texts: readonly string[]): fc.Arbitrary<string> =>
  fc
    .tuple(fc.constantFrom(...texts), fc.array(editing(texts), { minLength: 1, maxLength: 5 }))
    .map(([text, edits]) => edits.reduce((so, edit) => edit(so), text));
