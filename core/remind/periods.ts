import { Temporal } from 'temporal-polyfill';
import { endOfMonth, plusDays, plusMonths } from '../bench/days.ts';

/** A stretch of days, both ends counted; without a beginning it reaches back as far as there is anything. */
export interface Stretch {
  readonly from?: string;
  readonly until: string;
}

const weekOf = (day: string): Stretch => {
  const { dayOfWeek } = Temporal.PlainDate.from(day);
  return { from: plusDays(day, 1 - dayOfWeek), until: plusDays(day, 7 - dayOfWeek) };
};

const monthOf = (day: string): Stretch => {
  const month = day.slice(0, 7);
  return { from: `${month}-01`, until: endOfMonth(month) };
};

const yearOf = (year: number): Stretch => ({ from: `${year}-01-01`, until: `${year}-12-31` });

/** The end of time, as far as dates on a shelf go. */
const never = '9999-12-31';

type Named = (today: string) => Stretch;

/** Weeks begin on Monday (ISO 8601). */
const named: Readonly<Record<string, Named>> = {
  overdue: (today) => ({ until: plusDays(today, -1) }),
  today: (today) => ({ from: today, until: today }),
  tomorrow: (today) => ({ from: plusDays(today, 1), until: plusDays(today, 1) }),
  weekend: (today) => {
    const { until } = weekOf(today);
    return { from: plusDays(until, -1), until };
  },
  'this-week': weekOf,
  'next-week': (today) => weekOf(plusDays(today, 7)),
  'this-month': monthOf,
  'next-month': (today) => monthOf(plusMonths(`${today.slice(0, 7)}-01`, 1)),
  'this-year': (today) => yearOf(Number(today.slice(0, 4))),
  'next-year': (today) => yearOf(Number(today.slice(0, 4)) + 1),
  all: () => ({ until: never }),
};

/** The days of a stretch by its name, such as `this-month`, `days-60`, `months-2`; undefined for another name. */
export const stretchOf = (period: string, today: string): Stretch | undefined => {
  const find = Object.hasOwn(named, period) ? named[period] : undefined;
  if (find) return find(today);
  const [, unit, count] = /^(days|months)-(\d{1,4})$/.exec(period) ?? [];
  if (count === undefined) return undefined;
  return {
    from: today,
    until: unit === 'days' ? plusDays(today, Number(count)) : plusMonths(today, Number(count)),
  };
};
