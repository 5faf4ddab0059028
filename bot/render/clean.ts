import { isPlainShort } from './plain-text.ts';

/** Anything the five rules below would change. Hardly any text has it, and one look is cheaper than five. */
const suspect =
  /[^\P{Control}\n]|[\u00AD\u061C\u180E\u200B\u200E\u200F\u2028-\u202E\u2060-\u206F\uFEFF\uFFF9-\uFFFB]|\p{Surrogate}/u;

/**
 * Takes out of a text what could steer a terminal or turn the reading order round: control characters (ESC, BEL,
 * backspace …), directional overrides and isolates, invisible fillers. Accents, emoji and their joiners stay.
 * A tab becomes a space; every kind of line break becomes `\n`; half a surrogate pair becomes U+FFFD.
 */
export const clean = (text: string): string =>
  isPlainShort(text) || !suspect.test(text) ? text : cleaned(text);

const cleaned = (text: string): string =>
  text
    .replace(/\r\n?|[\u0085\u2028\u2029]/g, '\n')
    .replace(/\t/g, ' ')
    .replace(/[\p{Surrogate}]/gu, '\uFFFD')
    .replace(/\p{Control}/gu, (character) => (character === '\n' ? '\n' : ''))
    .replace(/[\u00AD\u061C\u180E\u200B\u200E\u200F\u202A-\u202E\u2060-\u206F\uFEFF\uFFF9-\uFFFB]/g, '');

/** The same, on one line. */
export const cleanLine = (text: string): string => clean(text).replace(/\n+/g, ' ').trim();
