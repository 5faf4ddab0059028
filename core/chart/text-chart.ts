import { ok, type Result } from '../result.ts';
import { type Scale, scaleOf, ticksOf, whole } from './axis.ts';
import { axisDomains } from './chart-axes.ts';
import {
  type ChartFigures,
  type ChartProblem,
  checkedFigures,
  type MeltCurve,
  percentAt,
} from './chart-spec.ts';
import { drawable } from './chart-text.ts';
import { columns, fittingKey, type Keyed } from './text-key.ts';

/** A dozen rows leave room for the answer around it. */
const rows = 12;
const gutter = 5;
const plotColumns = columns - gutter;
/** Fewer rows for the plot leave more for the key. */
const plotRows = { least: 4, most: 6 } as const;
/** The axis with the marks' letters, and the temperatures under it. */
const axisRows = 2;
/** Columns that a temperature and the blanks around it take at least. */
const tickColumns = 5;

const eighths = [' ', '▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'] as const;

interface Grid {
  readonly x: Scale;
  /** Percent at the plot's upper edge. */
  readonly highest: number;
  readonly rows: number;
}

const gridOf = (figures: ChartFigures, plot: number): Grid => {
  const { x, percent } = axisDomains(figures);
  return { x: scaleOf(x.domain, [0, plotColumns - 1]), highest: percent[1], rows: plot };
};

/** Solids at each column, in rows of the plot. */
const heights = ({ aged }: MeltCurve, { x, highest, rows: plot }: Grid): readonly number[] => {
  const [low, high] = x.domain;
  return Array.from({ length: plotColumns }, (_, column) => {
    const celsius = low + ((high - low) * column) / (plotColumns - 1);
    return (Math.min(highest, Math.max(0, percentAt(aged, celsius))) / highest) * plot;
  });
};

/** Solids below this part of a row are none. */
const traceRows = 0.02;

/** One curve is an area in eighths of a row; a trace of solids still shows. */
const areaRow = (tops: readonly number[], floor: number): string =>
  tops
    .map((top) => {
      const filled = Math.round(Math.min(1, Math.max(0, top - floor)) * 8);
      return eighths[floor === 0 && top > traceRows ? Math.max(1, filled) : filled] ?? ' ';
    })
    .join('');

/** Whether a curve runs through a cell: through its own row, and through those it falls past since the column before. */
const runsThrough = (tops: readonly number[], column: number, floor: number, highest: number): boolean => {
  const rowOf = (top: number): number => (top <= traceRows ? -1 : Math.min(highest, Math.floor(top)));
  const own = rowOf(tops[column] ?? 0);
  const before = column === 0 ? own : rowOf(tops[column - 1] ?? 0);
  return floor === own || (floor > own && floor < before);
};

/** What stands in a cell for each set of curves through it: both take turns. */
const cellOf = (one: boolean, two: boolean, column: number): string => {
  if (one && two) return column % 2 === 0 ? '1' : '2';
  if (one) return '1';
  return two ? '2' : ' ';
};

/** Two curves are lines of the figures 1 and 2. */
const linesRow = (first: readonly number[], second: readonly number[], floor: number, grid: Grid): string =>
  first
    .map((_top, column) => {
      const [one, two] = [first, second].map((tops) => runsThrough(tops, column, floor, grid.rows - 1));
      return cellOf(one ?? false, two ?? false, column);
    })
    .join('');

const plotOf = ({ curves: [first, second] }: ChartFigures, grid: Grid): readonly string[] => {
  const tops = heights(first, grid);
  const others = second && heights(second, grid);
  return Array.from({ length: grid.rows }, (_, row) => {
    const floor = grid.rows - 1 - row;
    return others ? linesRow(tops, others, floor, grid) : areaRow(tops, floor);
  });
};

/** Letters on the axis, each at the free column nearest to its temperature. */
const axisLine = (keyed: readonly Keyed[], { x }: Grid): string => {
  const cells = Array.from({ length: plotColumns }, () => '─');
  for (const { letter, mark } of keyed) {
    const wished = Math.round(x.at(mark.celsius));
    const free = cells.flatMap((cell, column) => (cell === '─' ? [column] : []));
    const nearest = free.sort((a, b) => Math.abs(a - wished) - Math.abs(b - wished) || b - a)[0];
    if (nearest !== undefined) cells[nearest] = letter;
  }
  return `${' '.repeat(gutter - 1)}└${cells.join('')}`;
};

const tickLine = ({ x }: Grid): string => {
  const [low, high] = x.domain;
  const step = [5, 10, 20, 50, 100, 200, 500, 1000].find(
    (size) => (size / (high - low)) * (plotColumns - 1) >= tickColumns,
  );
  let line = ' °C ';
  for (const celsius of ticksOf(x.domain, step ?? high - low)) {
    const text = whole(celsius);
    const at = gutter + Math.round(x.at(celsius)) - Math.floor((text.length - 1) / 2);
    if (at > line.length && at + text.length <= columns) line = line.padEnd(at) + text;
  }
  return line;
};

/** The highest percentage at the upper edge, half of it at the middle where there is one. */
const labelled = (row: string, at: number, grid: Grid): string => {
  const shown = at === 0 || at === grid.rows / 2;
  const label = shown ? `${whole(grid.highest * (1 - at / grid.rows))}%` : '';
  return `${label.padStart(gutter - 1)}│${row}`.trimEnd();
};

const namesOf = ({ curves }: ChartFigures): readonly string[] =>
  curves.length < 2
    ? []
    : curves.map(({ name }, at) => `${at + 1} ${drawable(name)}`.slice(0, columns).trimEnd());

/**
 * The same figures as a small chart in text: solids (percent) upward, °C along the bottom, letters for the marks with a
 * key below. At most 40 columns and 12 rows, to be shown in a fixed-width font. Two curves are drawn with the figures 1
 * and 2 and named. Marks whose key does not fit are left out, the last ones first. Problems as with the picture.
 */
export const textChart = (figures: ChartFigures): Result<readonly string[], ChartProblem> => {
  const checked = checkedFigures(figures);
  if (!checked.ok) return checked;
  const names = namesOf(figures);
  const free = rows - axisRows - names.length;
  const { keyed, key } = fittingKey(figures, free - plotRows.least);
  const grid = gridOf(figures, Math.min(plotRows.most, free - key.length));
  return ok([
    ...plotOf(figures, grid).map((row, at) => labelled(row, at, grid)),
    axisLine(keyed, grid),
    tickLine(grid),
    ...names,
    ...key,
  ]);
};
