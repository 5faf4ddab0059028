import { clean } from '../render/clean.ts';

// Everything a reply says may echo a member's words (recipe names, unknown ingredients), so all of it is escaped, and
// whatever formatting a message has is added by the renderer afterwards.

const zeroWidthSpace = '\u200B';

/** At the start of a line these make a heading, a quotation or a list. */
const lineStart = /^([ \t]*)([#>+-]|\d+(?=[.)][ \t]))/gm;
const inline = /[\\`*_~|<[\]]/g;

/** Most lines have nothing to escape, and one look is cheaper than three. */
const marked = /[\\`*_~|<[\]@]|^[ \t]*(?:[#>+-]|\d+[.)][ \t])/m;

const escapeMarks = (text: string): string => (marked.test(text) ? escaped(text) : text);

const escaped = (text: string): string =>
  text
    .replace(inline, String.raw`\$&`)
    .replace(lineStart, (_, space: string, mark: string) =>
      /\d/.test(mark) ? `${space}${mark}\\` : `${space}\\${mark}`,
    )
    // `@everyone` is already kept from ringing by the allowed mentions; this also keeps it from being lit up.
    .replaceAll('@', `@${zeroWidthSpace}`);

/** Plain text as it must be written in a message to be shown just so. Addresses in it do not become links. */
export const chatText = (text: string): string =>
  escapeMarks(clean(text)).replaceAll('://', `:${zeroWidthSpace}//`);

const address = /(https?:\/\/[\w.~:/?#!$&'()+,;=%-]+)/;

/** As `chatText`, for text no member can have written: addresses in it stay links. */
export const sourceText = (text: string): string =>
  clean(text)
    .split(address)
    .map((part, index) => (index % 2 === 1 ? part : escapeMarks(part)))
    .join('');

/** A line for inside a code block, which nothing in it can close: the fence is made of backticks. */
export const codeText = (line: string): string => line.replaceAll('`', "'");
