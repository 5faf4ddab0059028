import { fail, ok, type Result } from '../result.ts';
import type { ThemeName } from './theme.ts';

/** `[celsius, percent solid]`. */
export type Point = readonly [number, number];

export interface MeltCurve {
  readonly name: string;
  /** When set and aged; rising temperatures, at least two points. */
  readonly aged: readonly Point[];
  /** Soon after pouring; a thin line. */
  readonly fresh?: readonly Point[];
}

/** `place`: a temperature out there (room, pocket); `change`: what happens to the balm; `pour`: what the maker does. */
export type MarkRole = 'place' | 'change' | 'pour';

export interface ChartMark {
  readonly role: MarkRole;
  readonly label: string;
  readonly celsius: number;
  /** Which curve it belongs to, 0 or 1; a `place` belongs to none. */
  readonly curve?: 0 | 1;
  /** Where it may lie, in °C; shown as a bar on the axis. */
  readonly rangeC?: readonly [number, number];
}

export interface ChartWords {
  /** What the upright axis counts: "solid %". */
  readonly solid: string;
  /** Name of the thin lines: "freshly poured". */
  readonly fresh: string;
  /** Name of the bars on the axis: "may be off this far". */
  readonly range: string;
}

export interface MeltChartSpec {
  readonly title: string;
  /** One curve, or before and after a swap. */
  readonly curves: readonly [MeltCurve] | readonly [MeltCurve, MeltCurve];
  readonly marks: readonly ChartMark[];
  readonly words: ChartWords;
  readonly theme: ThemeName;
}

export type ChartProblem =
  | { readonly code: 'too-few-points'; readonly curve: number }
  | { readonly code: 'temperatures-not-rising'; readonly curve: number }
  | { readonly code: 'not-a-number' }
  | { readonly code: 'too-many-marks'; readonly most: number };

/** Figures of one picture: what the curves and marks need to be drawn. */
export type ChartFigures = Pick<MeltChartSpec, 'curves' | 'marks'>;

export const mostMarks = 12;

const everyNumber = ({ curves, marks }: ChartFigures): readonly number[] => [
  ...curves.flatMap(({ aged, fresh }) => [...aged, ...(fresh ?? [])].flat()),
  ...marks.flatMap(({ celsius, rangeC }) => [celsius, ...(rangeC ?? [])]),
];

const linesIn = ({ curves }: ChartFigures): readonly (readonly Point[])[] =>
  curves.flatMap(({ aged, fresh }) => (fresh ? [aged, fresh] : [aged]));

const rises = (points: readonly Point[]): boolean =>
  points.every(([celsius], at) => at === 0 || celsius > (points[at - 1]?.[0] ?? celsius));

/** The figures when they can be drawn. */
export const checkedFigures = <T extends ChartFigures>(figures: T): Result<T, ChartProblem> => {
  const lines = linesIn(figures);
  const short = lines.findIndex((points) => points.length < 2);
  if (short >= 0) return fail({ code: 'too-few-points', curve: short });
  if (!everyNumber(figures).every((value) => Math.abs(value) < 1e4)) return fail({ code: 'not-a-number' });
  const falling = lines.findIndex((points) => !rises(points));
  if (falling >= 0) return fail({ code: 'temperatures-not-rising', curve: falling });
  if (figures.marks.length > mostMarks) return fail({ code: 'too-many-marks', most: mostMarks });
  return ok(figures);
};

/** Lowest and highest temperature in °C of curves and marks. */
export const temperatureSpan = (figures: ChartFigures): readonly [number, number] => {
  const all = [
    ...linesIn(figures).flatMap((points) => points.map(([celsius]) => celsius)),
    ...figures.marks.map(({ celsius }) => celsius),
  ];
  return [Math.min(...all), Math.max(...all)];
};

/** Highest share of solids, in percent. */
export const highestPercent = (figures: ChartFigures): number =>
  Math.max(...linesIn(figures).flatMap((points) => points.map(([, percent]) => percent)));

/** Percent at a temperature, straight between the points and level beyond them. */
export const percentAt = (points: readonly Point[], celsius: number): number => {
  const next = points.findIndex(([at]) => at >= celsius);
  const right = points[next < 0 ? points.length - 1 : next];
  const left = points[next < 0 ? points.length - 1 : Math.max(0, next - 1)];
  if (!left || !right) return 0;
  const width = right[0] - left[0];
  return width === 0 ? right[1] : left[1] + ((right[1] - left[1]) * (celsius - left[0])) / width;
};

/** Degrees shown below the coldest mark and above the hottest. */
const marginC = { below: 5, above: 8 } as const;
const roundC = 5;
const mostSamples = 160;

/**
 * Temperatures in °C at which to sample a curve so that all marks lie inside: from the 5 °C step below the coldest to the
 * one above the hottest, 80 to 160 of them, and those of the marks: a wax by itself melts between two of them.
 */
export const chartTemperatures = (marksC: readonly number[]): readonly number[] => {
  const low = Math.floor((Math.min(...marksC) - marginC.below) / roundC) * roundC;
  const high = Math.ceil((Math.max(...marksC) + marginC.above) / roundC) * roundC;
  if (!Number.isFinite(low) || !Number.isFinite(high)) return [];
  const step = 2 ** Math.ceil(Math.log2((high - low) / mostSamples));
  const even = Array.from({ length: Math.round((high - low) / step) + 1 }, (_, at) => low + at * step);
  return [...new Set([...even, ...marksC])].sort((a, b) => a - b);
};
