import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';

/** A day, a month (of a year, or the last one that was), or a year, as a price was asked for or noted. */
export interface When {
  readonly day?: string;
  /** 1 for January. */
  readonly month?: number;
  readonly year?: number;
}

export interface WhenRead {
  readonly when: When;
  readonly items: readonly Item[];
}

const months = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');
const month =
  '(jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)';
const year = '(20\\d\\d)';

const isoDay = /\b(20\d\d)-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])\b/;
const isoMonth = /\b(20\d\d)-(0[1-9]|1[0-2])\b(?!-)/;
const dayOfMonth = new RegExp(`\\b(\\d{1,2})(?:st|nd|rd|th)?\\s+(?:of\\s+)?${month}\\s+${year}\\b`, 'i');
const monthDay = new RegExp(`\\b${month}\\s+(\\d{1,2})(?:st|nd|rd|th)?,?\\s+${year}\\b`, 'i');
const inMonth = new RegExp(
  `\\b(?:in|of|for|since|last|during|back in)\\s+${month}\\b(?:,?\\s+${year})?`,
  'i',
);
const inYear = new RegExp(`\\b(?:in|of|for|during)\\s+${year}\\b`, 'i');

const lastOf = /\b(last|this) (month|year)\b/i;

/** "Last month", by the day of the message. */
const relative = (text: string, at: number): Match | undefined => {
  const [said, which, unit] = lastOf.exec(text) ?? [];
  if (said === undefined) return undefined;
  const now = new Date(at);
  const back = which?.toLowerCase() === 'last' ? 1 : 0;
  const from = text.search(lastOf);
  const place = { from, to: from + said.length };
  if (unit?.toLowerCase() === 'year') return { when: { year: now.getUTCFullYear() - back }, ...place };
  const first = new Date(Date.UTC(now.getUTCFullYear(), now.getUTCMonth() - back, 1));
  return { when: { month: first.getUTCMonth() + 1, year: first.getUTCFullYear() }, ...place };
};

const monthOf = (said: string): number => months.indexOf(said.slice(0, 3).toLowerCase()) + 1;
const two = (value: number | string): string => String(value).padStart(2, '0');

interface Match {
  readonly when: When;
  readonly from: number;
  readonly to: number;
}

const found = (
  match: RegExpExecArray | null,
  when: (groups: readonly string[]) => When,
): Match | undefined =>
  match
    ? {
        when: when(match.slice(1).map((each) => each ?? '')),
        from: match.index,
        to: match.index + match[0].length,
      }
    : undefined;

const isDay = (day: string): boolean => {
  const at = new Date(`${day}T00:00:00Z`);
  return !Number.isNaN(at.getTime()) && at.toISOString().slice(0, 10) === day;
};

const match = (text: string): Match | undefined => {
  const read =
    found(isoDay.exec(text), ([y, m, d]) => ({ day: `${y}-${m}-${d}` })) ??
    found(dayOfMonth.exec(text), ([d = '', m = '', y]) => ({ day: `${y}-${two(monthOf(m))}-${two(d)}` })) ??
    found(monthDay.exec(text), ([m = '', d = '', y]) => ({ day: `${y}-${two(monthOf(m))}-${two(d)}` })) ??
    found(isoMonth.exec(text), ([y, m]) => ({ year: Number(y), month: Number(m) })) ??
    found(inMonth.exec(text), ([m = '', y]) => ({ month: monthOf(m), ...(y ? { year: Number(y) } : {}) })) ??
    found(inYear.exec(text), ([y]) => ({ year: Number(y) }));
  return read?.when.day !== undefined && !isDay(read.when.day) ? undefined : read;
};

/** Letters right before a date that belong to it: "on", "from", "since". */
const leading = /^(?:on|from|since|as of|dated|in|at)$/;

/** When a message speaks of, with the items that say so. */
export const readWhen = (reading: Reading): WhenRead | undefined => {
  const at = match(reading.text) ?? relative(reading.text, reading.at);
  if (!at) return undefined;
  const inside = reading.items.filter((item) => item.from < at.to && item.to > at.from);
  const first = inside[0];
  const before = first ? reading.items[reading.items.indexOf(first) - 1] : undefined;
  return { when: at.when, items: before && leading.test(before.word) ? [before, ...inside] : inside };
};
