import { graphemes, widthOf } from './width.ts';

/** A word too long for a line, cut between the characters a person sees. */
const chopped = (word: string, room: number): string[] => {
  if (widthOf(word) <= room) return [word];
  const pieces: string[] = [];
  let piece = '';
  let columns = 0;
  for (const grapheme of graphemes(word)) {
    const more = widthOf(grapheme);
    if (piece !== '' && columns + more > room) {
      pieces.push(piece);
      piece = '';
      columns = 0;
    }
    piece += grapheme;
    columns += more;
  }
  return [...pieces, piece];
};

const wrapLine = (line: string, width: number, hang: string): string[] => {
  // No character takes more than two columns, so a short line need not be measured.
  if (line.length * 2 <= width || widthOf(line) <= width) return [line.trimEnd()];
  const indent = line.slice(0, Math.min(line.search(/[^ ]|$/), Math.floor(width / 2)));
  const start = indent + hang;
  const words = line.trim().split(/ +/);
  const pieces = words.flatMap((word) => chopped(word, Math.max(1, width - widthOf(start))));
  const lines: string[] = [];
  let current = indent + (pieces[0] ?? '');
  let columns = widthOf(current);
  for (const piece of pieces.slice(1)) {
    const more = widthOf(piece);
    if (columns + 1 + more <= width) {
      current += ` ${piece}`;
      columns += 1 + more;
    } else {
      lines.push(current);
      current = start + piece;
      columns = widthOf(start) + more;
    }
  }
  return [...lines, current];
};

/**
 * Lines no wider than `width` columns, broken between words (inside a word only when it is longer than a line).
 * A line that fits stays as written; the indent of one that does not is kept, and `hang` is put before its
 * continuation lines. `width` counts in columns of a fixed-width font and must leave at least 2 beside `hang`.
 */
export const wrap = (text: string, width: number, hang = ''): string[] =>
  text.includes('\n')
    ? text.split('\n').flatMap((line) => wrapLine(line, width, hang))
    : wrapLine(text, width, hang);
