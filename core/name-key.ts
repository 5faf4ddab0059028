import { spellings } from './data/spellings.ts';

const known = new Map(Object.entries(spellings));
const marks = /\p{M}+/gu;
const notAscii = /[^\p{ASCII}]/u;

/** One word's singular, by ending only: consistent rather than clever, because both sides go through it. */
const singular = (word: string): string => {
  if (word.length < 4 || !word.endsWith('s') || /(?:ss|us|is)$/.test(word)) return word;
  if (word.endsWith('ies') && word.length > 4) return `${word.slice(0, -3)}y`;
  return /(?:[xz]|[cs]h|o)es$/.test(word) ? word.slice(0, -2) : word.slice(0, -1);
};

const joined = /^(.{3,})(oil|butter|wax)$/;

/**
 * The form in which a word is compared: singular, one spelling, compounds taken apart ("sheabutter" gives
 * "shea butter"). Takes a word as {@link nameWords} gives it: lower case, letters and digits only.
 */
export const wordKey = (word: string): string => {
  const spelled = known.get(word);
  if (spelled !== undefined) return spelled;
  const one = singular(word);
  const again = known.get(one);
  if (again !== undefined) return again;
  const parts = joined.exec(one);
  if (parts?.[1] !== undefined && parts[2] !== undefined) return `${wordKey(parts[1])} ${parts[2]}`;
  return one.length > 6 ? one.replace(/is(e|ed|er|ing)$/, 'iz$1') : one;
};

/** The words of a text: lower case, accents off, apostrophes closed up, everything else that is no letter or digit a gap. */
export const nameWords = (text: string): string[] => {
  const plain = notAscii.test(text) ? text.normalize('NFKD').replace(marks, '') : text;
  const lower = plain
    .toLowerCase()
    .replace(/['\u2019\u02bc]/g, '')
    .replace(/\be\.\s?o\b\.?/g, 'eo');
  return lower.match(/[a-z0-9]+/g) ?? [];
};

/** The form in which a name is compared: its words' keys joined by one space. Empty when nothing is left. */
export const nameKey = (text: string): string => nameWords(text).map(wordKey).join(' ');
