import { isPlainShort } from './plain-text.ts';

/**
 * Latin, Greek and Cyrillic letters, punctuation, currency and fractions: one column for each UTF-16 unit. Nearly all
 * text is of this kind, and it spares the loading of the segmenter's data at start.
 */
const narrowSigns = String.raw`\x20-\x7E\xA0-\xAC\xAE-\u02FF\u0370-\u0482\u048A-\u052F\u2010-\u2027\u2030-\u203B\u20A0-\u20BF\u2150-\u218B\u2500-\u257F`;
const narrow = new RegExp(`^[${narrowSigns}]*$`);
/** Everything else, with the one sign before it that an accent or a joiner may belong to. */
const others = new RegExp(`[${narrowSigns}]?[^${narrowSigns}]+`, 'g');

/** Wide and full-width ranges of Unicode's annex 11 (East Asian Width W and F), written from its table by block. */
const wide =
  /^[\u1100-\u115F\u2329\u232A\u2630-\u2637\u268A-\u268F\u2E80-\u303E\u3041-\u33FF\u3400-\u4DBF\u4DC0-\uA4C6\uA960-\uA97C\uAC00-\uD7A3\uF900-\uFAFF\uFE10-\uFE19\uFE30-\uFE6B\uFF01-\uFF60\uFFE0-\uFFE6\u{16FE0}-\u{18DFF}\u{1AFF0}-\u{1B2FF}\u{1D300}-\u{1D376}\u{1F200}-\u{1F265}\u{20000}-\u{3FFFD}]/u;

const invisible =
  /^[\p{Default_Ignorable_Code_Point}\p{Control}\p{Format}\p{Nonspacing_Mark}\p{Enclosing_Mark}]+$/u;
const emoji = /^(?:\p{Emoji_Presentation}|\p{Emoji}\uFE0F|[\d#*]\u20E3)/u;

let segmenter: Intl.Segmenter | undefined;

/** The characters a person sees: an accent stays on its letter, a joined emoji is one. */
export const graphemes = (text: string): string[] => {
  if (narrow.test(text)) return text.split('');
  segmenter ??= new Intl.Segmenter();
  return Array.from(segmenter.segment(text), ({ segment }) => segment);
};

const graphemeWidth = (grapheme: string): number => {
  if (invisible.test(grapheme)) return 0;
  return emoji.test(grapheme) || wide.test(grapheme) ? 2 : 1;
};

/**
 * Columns a text takes in a fixed-width font; for several lines, those of the widest. Only what needs it is cut into
 * the characters a person sees: for a whole line with one emoji in it that took longer than everything else about it.
 */
export const widthOf = (text: string): number => {
  if (isPlainShort(text) || narrow.test(text)) return text.length;
  if (text.includes('\n')) return Math.max(...text.split('\n').map(widthOf));
  return [...text.matchAll(others)].reduce(
    (columns, [part]) =>
      graphemes(part).reduce((so, grapheme) => so + graphemeWidth(grapheme), columns - part.length),
    text.length,
  );
};

/** Filled with blanks to `columns`, on the right or (`right` aligned) on the left. A wider text stays as it is. */
export const padTo = (text: string, columns: number, align: 'left' | 'right'): string => {
  const blanks = ' '.repeat(Math.max(0, columns - widthOf(text)));
  return align === 'right' ? blanks + text : text + blanks;
};

/** Lines longer than this are hard to follow, however wide the window; a phone shows about 40 columns. */
const bounds = { least: 40, usual: 80, most: 100 } as const;

/** Columns to set text to in a window of `columns`; the usual 80 where there is no window. */
export const widthFor = (columns: number | undefined): number =>
  Math.min(Math.max(columns || bounds.usual, bounds.least), bounds.most);
