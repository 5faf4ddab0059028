import { tableLines } from '../../bot/render/table.ts';
import { median, quantile, type Times } from './measure.ts';

/** Told as met or missed; missing one fails nothing. */
interface Aim {
  readonly text: string;
  readonly met: boolean;
}

/** One line of the table, in words. */
export interface Row {
  readonly measure: string;
  readonly median?: string;
  readonly p99?: string;
  readonly perSecond?: string;
  /** How it compares with the baseline, and what that is. */
  readonly ratio?: string;
  readonly baseline?: string;
  readonly aim?: Aim;
}

/** What one part of the bench found. A fault fails the whole run. */
export interface Found {
  readonly rows: readonly Row[];
  readonly notes?: readonly string[];
  readonly faults?: readonly string[];
}

const digits = (value: number): string => (value >= 100 ? value.toFixed(0) : value.toPrecision(3));

/** A time of `ms` milliseconds, in the unit that reads best. */
export const time = (ms: number): string => {
  if (ms >= 1000) return `${digits(ms / 1000)} s`;
  return ms >= 1 ? `${digits(ms)} ms` : `${digits(ms * 1000)} µs`;
};

export const megabytes = (bytes: number): string => `${digits(bytes / 1024 / 1024)} MB`;

const whole = (value: number): string => Math.round(value).toLocaleString('en');

/** Median, p99 and rate of single runs that came one after the other. */
export const spread = (times: Times): Pick<Row, 'median' | 'p99' | 'perSecond'> => ({
  median: time(median(times)),
  p99: time(quantile(times, 0.99)),
  perSecond: whole((1000 * times.length) / times.reduce((all, one) => all + one, 0)),
});

export const ratio = (value: number, base: number): string => digits(value / base);

export const rate = (perSecond: number): string => whole(perSecond);

/** `text` says the aim, `value` has to stay below `most`. */
export const below = (value: number, most: number, text: string): Aim => ({
  text,
  met: value < most,
});

const cells = ({ measure, median, p99, perSecond, ratio, baseline, aim }: Row): string[] => [
  measure,
  median ?? '',
  p99 ?? '',
  perSecond ?? '',
  ratio ?? '',
  baseline ?? '',
  aim ? `${aim.text}: ${aim.met ? 'met' : 'MISSED'}` : '',
];

/** The rows as a table of plain text. */
export const report = (rows: readonly Row[], width: number): string =>
  tableLines(
    {
      columns: [
        { title: 'measure', align: 'left' },
        { title: 'median', align: 'right' },
        { title: 'p99', align: 'right' },
        { title: '/s', align: 'right' },
        { title: 'ratio', align: 'right' },
        { title: 'to', align: 'left' },
        { title: 'aim', align: 'left' },
      ],
      rows: rows.map(cells),
    },
    width,
  ).join('\n');
