import { boldAdvances, regularAdvances, signAdvances } from './advances.ts';

export type Weight = 'regular' | 'bold';

const unitsPerEm = 2048;
const firstCode = 0x20;
const advances = { regular: regularAdvances, bold: boldAdvances } as const;
/** Widest of the other characters that {@link drawable} lets through, in ems, taken from the font. */
const widestEms = { regular: 1.07, bold: 1.27 } as const;

/** Letters whose accent stands beside them and widens them (the horn, and l with its caron or dot). */
const widened = /\u031B|^l./u;

const emsOf = (character: string, weight: Weight): number => {
  const sign = signAdvances[character]?.[weight === 'regular' ? 0 : 1];
  if (sign !== undefined) return sign / unitsPerEm;
  const parts = character.normalize('NFD');
  const units = widened.test(parts) ? undefined : advances[weight][parts.charCodeAt(0) - firstCode];
  return units === undefined ? widestEms[weight] : units / unitsPerEm;
};

/** Width of a text at a font size, both in the same units; never less than what is drawn. */
export const textWidth = (text: string, size: number, weight: Weight = 'regular'): number =>
  size * Array.from(text).reduce((sum, character) => sum + emsOf(character, weight), 0);

/** Latin, Greek, Cyrillic, punctuation: what the shipped font has and the width estimate holds for. */
const known =
  /[\x20-\x7E\xA0-\xAC\xAE-\u017F\u0384-\u03FF\u0400-\u04FF\u1E00-\u1EF9\u2010-\u2026\u202F\u20AC\u2212]/u;
const lacking = /[\u038B\u038D\u03A2]/u;

const shownAs = (character: string): string => {
  if (known.test(character) && !lacking.test(character)) return character;
  if (/\s/u.test(character)) return ' ';
  return /[\p{Letter}\p{Number}]/u.test(character) ? '…' : '';
};

/**
 * A person's text as the chart can show it: on one line, without control characters and emoji; letters that the font
 * lacks become an ellipsis, so that nobody sees empty boxes.
 */
export const drawable = (text: string): string =>
  Array.from(text.normalize('NFC'), shownAs).join('').replace(/…+/g, '…').replace(/ +/g, ' ').trim();

/** Cut to a width at a font size, with an ellipsis where something is missing. */
export const shortened = (text: string, size: number, width: number, weight: Weight = 'regular'): string => {
  if (textWidth(text, size, weight) <= width) return text;
  let kept = '';
  let used = textWidth('…', size, weight);
  for (const character of text) {
    used += size * emsOf(character, weight);
    if (used > width) break;
    kept += character;
  }
  return `${kept.trimEnd()}…`;
};

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
};

/** Text for between tags or in an attribute of XML. */
export const xmlText = (text: string): string =>
  text.replace(/[&<>"']/g, (character) => entities[character] ?? '');
