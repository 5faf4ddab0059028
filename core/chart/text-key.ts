import { whole } from './axis.ts';
import type { ChartFigures, ChartMark } from './chart-spec.ts';
import { drawable } from './chart-text.ts';

/** What a phone's code block shows without breaking its lines. */
export const columns = 40;
const mostLabel = 16;

/** A mark that has a letter on the axis and an entry in the key. */
export interface Keyed {
  readonly letter: string;
  readonly mark: ChartMark;
  readonly entry: string;
}

const entryOf = (letter: string, { label, celsius, curve }: ChartMark, numbered: boolean): string => {
  const name = drawable(label).slice(0, mostLabel).trim();
  const which = numbered && curve !== undefined ? `${curve + 1} ` : '';
  return `${letter} ${which}${name} ${whole(celsius)}°`;
};

const keyGap = '  ';

/** Entries in rows; nothing when they take more than `most`. */
const inRows = (entries: readonly string[], most: number): readonly string[] | undefined => {
  const filled: string[] = [];
  for (const entry of entries) {
    const last = filled.at(-1);
    const joined = last === undefined ? entry : last + keyGap + entry;
    if (last !== undefined && joined.length <= columns) filled[filled.length - 1] = joined;
    else filled.push(entry);
  }
  return filled.length <= most ? filled : undefined;
};

const keyedMarks = ({ marks, curves }: ChartFigures): readonly Keyed[] =>
  [...marks]
    .sort((a, b) => a.celsius - b.celsius)
    .map((mark, at) => {
      const letter = String.fromCharCode('a'.charCodeAt(0) + at);
      return { letter, mark, entry: entryOf(letter, mark, curves.length > 1) };
    });

/** The most of the marks, first named first, whose key fits. */
export const fittingKey = (
  figures: ChartFigures,
  most: number,
): { keyed: readonly Keyed[]; key: readonly string[] } => {
  for (let count = figures.marks.length; count > 0; count--) {
    const keyed = keyedMarks({ ...figures, marks: figures.marks.slice(0, count) });
    const key = inRows(
      keyed.map(({ entry }) => entry),
      most,
    );
    if (key) return { keyed, key };
  }
  return { keyed: [], key: [] };
};
