import { isPlainShort } from './plain-text.ts';
import type { Style } from './style.ts';
import type { TableSpec } from './table.ts';

const gap = '  ';

const cellsOf = (row: readonly string[], count: number): string[] => {
  const cells: string[] = [];
  for (let at = 0; at < count; at += 1) cells.push((row[at] ?? '').trim());
  return cells;
};

const rowLine = (cells: readonly string[], widths: readonly number[], right: readonly boolean[]): string => {
  let line = '';
  for (let at = 0; at < cells.length; at += 1) {
    const cell = cells[at] ?? '';
    const blanks = ' '.repeat((widths[at] ?? 0) - cell.length);
    line += `${at > 0 ? gap : ''}${right[at] ? blanks + cell : cell + blanks}`;
  }
  return line.trimEnd();
};

/** The widest cell of each column, or undefined when a cell is no plain short text. */
const widthsOf = (rows: readonly (readonly string[])[], count: number): number[] | undefined => {
  const widths = new Array<number>(count).fill(0);
  for (const row of rows) {
    for (let at = 0; at < count; at += 1) {
      const cell = row[at] ?? '';
      if (!isPlainShort(cell)) return undefined;
      if (cell.length > (widths[at] ?? 0)) widths[at] = cell.length;
    }
  }
  return widths;
};

/**
 * The table as `tableLines` sets it, where that is easy: plain text that fits side by side as it is. Each cell is looked at
 * once; nearly every table of an answer is of this kind. Undefined for all others.
 */
export const plainTableLines = (table: TableSpec, width: number, style: Style): string[] | undefined => {
  const count = table.columns.length;
  const titles = table.columns.map(({ title }) => title.trim());
  const rows = table.rows.map((row) => cellsOf(row, count));
  const total = table.total && cellsOf(table.total, count);
  const widths = widthsOf([titles, ...rows, ...(total ? [total] : [])], count);
  if (!widths) return undefined;
  const across = widths.reduce((all, one) => all + one, gap.length * (count - 1));
  if (across > width) return undefined;
  const right = table.columns.map(({ align }) => align === 'right');
  const rule = style.rule('─'.repeat(across));
  const titled = titles.some((title) => title !== '');
  const lines = titled ? [style.head(rowLine(titles, widths, right)), rule] : [];
  for (const row of rows) lines.push(rowLine(row, widths, right));
  if (total) lines.push(rule, style.total(rowLine(total, widths, right)));
  return lines;
};
