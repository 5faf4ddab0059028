/** A cell: text, or a number that stays one. */
export type Cell = string | number | undefined;

const number = /^[+-]?\d+(?:\.\d+)?$/;

// A spreadsheet takes a cell that begins so for a formula, which may run programs or send data away: a single quote goes
// in front (OWASP Application Security Verification Standard 5.0, 1.2.10, names = + - @, tab and null; carriage return and
// the full-width signs are from memory of its page on CSV injection). A plain number with its sign is none.
const formula = /^[=+\-@\t\r\n\0＝＋－＠]/u;

const harmless = (text: string): string => (formula.test(text) && !number.test(text) ? `'${text}` : text);

const cellText = (cell: Cell): string => {
  if (cell === undefined) return '';
  const text = typeof cell === 'number' ? String(cell) : harmless(cell);
  return /[",\r\n\t']/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

/**
 * A table as comma-separated values by RFC 4180 (lines end in CR LF, quotes are doubled, every line has as many cells),
 * in UTF-8 with a byte order mark, without which one common spreadsheet reads accents wrongly.
 */
export const csvText = (header: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  `\uFEFF${[header, ...rows].map((row) => `${row.map(cellText).join(',')}\r\n`).join('')}`;
