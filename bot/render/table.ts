import type { Column } from '../answer.ts';
import { clean } from './clean.ts';
import { plainTableLines } from './plain-table.ts';
import { plainStyle, type Style } from './style.ts';
import { padTo, widthOf } from './width.ts';
import { wrap } from './wrap.ts';

export interface TableSpec {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
  /** Set below the rows, under a rule. */
  readonly total?: readonly string[];
}

/** A text column is not squeezed below this many columns: then the rows are stacked instead. */
const narrowestText = 8;
/** Gaps between columns, the more comfortable first. */
const gaps = [2, 1] as const;

const longestWord = (text: string): number => Math.max(...text.split(/\s+/).map(widthOf));
const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);

const cellsOf = (table: TableSpec): TableSpec => {
  const full = (row: readonly string[]) => table.columns.map((_, index) => clean(row[index] ?? '').trim());
  return {
    columns: table.columns.map(({ title, align }) => ({
      title: clean(title).trim(),
      align,
    })),
    rows: table.rows.map(full),
    ...(table.total ? { total: full(table.total) } : {}),
  };
};

/** Widths that fit into `room`: numbers stay whole, titles and text columns wrap. Undefined when nothing fits. */
const fitted = ({ columns, rows, total }: TableSpec, room: number): readonly number[] | undefined => {
  const body = total ? [...rows, total] : rows;
  const cells = columns.map((_, index) => Math.max(0, ...body.map((row) => widthOf(row[index] ?? ''))));
  const floor = columns.map(({ title, align }, index) => {
    const least = align === 'right' ? (cells[index] ?? 0) : Math.min(cells[index] ?? 0, narrowestText);
    return Math.max(least, longestWord(title));
  });
  if (sum(floor) > room) return undefined;
  const widths = columns.map(({ title }, index) => Math.max(cells[index] ?? 0, widthOf(title)));
  while (sum(widths) > room) {
    const slack = widths.map((width, index) => (width > (floor[index] ?? 0) ? width : 0));
    const widest = slack.indexOf(Math.max(...slack));
    widths[widest] = (widths[widest] ?? 0) - 1;
  }
  return widths;
};

interface Layout {
  readonly columns: readonly Column[];
  readonly widths: readonly number[];
  readonly gap: string;
}

/** One row as lines. A wrapped cell goes on one blank further in; a title stands on the line above the rule. */
const rowLines = (
  cells: readonly string[],
  { columns, widths, gap }: Layout,
  sit: 'top' | 'bottom',
): string[] => {
  const side = (index: number) => columns[index]?.align ?? 'left';
  // Most rows fit as they are.
  if (cells.every((cell, index) => !cell.includes('\n') && widthOf(cell) <= (widths[index] ?? 0))) {
    const padded = cells.map((cell, index) => padTo(cell, widths[index] ?? 0, side(index)));
    return [padded.join(gap).trimEnd()];
  }
  const wrapped = cells.map((cell, index) =>
    wrap(cell, widths[index] ?? 0, side(index) === 'left' && sit === 'top' ? ' ' : ''),
  );
  const height = Math.max(...wrapped.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) =>
    wrapped
      .map((lines, index) => {
        const text = lines[sit === 'bottom' ? line - height + lines.length : line] ?? '';
        return padTo(text, widths[index] ?? 0, side(index));
      })
      .join(gap)
      .trimEnd(),
  );
};

const aligned = (table: TableSpec, layout: Layout, style: Style): string[] => {
  const across = sum(layout.widths) + layout.gap.length * (layout.widths.length - 1);
  const rule = style.rule('─'.repeat(across));
  const titles = table.columns.map(({ title }) => title);
  const head = titles.some((title) => title !== '') ? rowLines(titles, layout, 'bottom').map(style.head) : [];
  return [
    ...head,
    ...(head.length > 0 ? [rule] : []),
    ...table.rows.flatMap((row) => rowLines(row, layout, 'top')),
    ...(table.total ? [rule, ...rowLines(table.total, layout, 'top').map(style.total)] : []),
  ];
};

const stackedRow = (
  columns: readonly Column[],
  [first, ...others]: readonly string[],
  width: number,
): string[] => [
  ...wrap(first ?? '', width, ' '),
  ...others.flatMap((cell, index) => {
    const title = columns[index + 1]?.title ?? '';
    return cell === '' ? [] : wrap(`  ${title === '' ? '' : `${title}: `}${cell}`, width, '  ');
  }),
];

/** For a width too small for the columns side by side: each row as a heading with its cells below. */
const stacked = ({ columns, rows, total }: TableSpec, width: number, style: Style): string[] => [
  ...rows.flatMap((row) => stackedRow(columns, row, width)),
  ...(total
    ? [style.rule('─'.repeat(Math.min(width, 20))), ...stackedRow(columns, total, width).map(style.total)]
    : []),
];

/**
 * A table as lines of plain text for a fixed-width font, none wider than `width` columns (10 or more). Numbers
 * (right-aligned columns) are never broken; text and titles wrap; where even that is too wide, rows are stacked.
 * Control characters in cells are dropped. `style` colours whole lines.
 */
export const tableLines = (table: TableSpec, width: number, style: Style = plainStyle): string[] => {
  if (table.columns.length === 0) return [];
  const easy = plainTableLines(table, width, style);
  if (easy) return easy;
  const cells = cellsOf(table);
  for (const gap of gaps) {
    const widths = fitted(cells, width - gap * (cells.columns.length - 1));
    if (widths) return aligned(cells, { columns: cells.columns, widths, gap: ' '.repeat(gap) }, style);
  }
  return stacked(cells, width, style);
};
