import { endOfMonth, plusDays, plusMonths } from '../../core/bench/days.ts';

/** What a date in words or figures comes to. */
export interface DayRead {
  /** ISO day. Where no year was said: the last such day up to today, and the next one from today on. */
  readonly past: string;
  readonly future: string;
  /** A month or year stands for its last day. */
  readonly whole?: 'month' | 'year';
  /** How it was read, where it can be read two ways. */
  readonly assumed?: string;
}

/** A day that does not exist, such as 31 February. */
export interface NoDay {
  readonly bad: string;
}

const months = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');
export const monthOf = (word: string): number => months.indexOf(word.slice(0, 3).toLowerCase()) + 1;

export const exact = (day: string, more: Partial<DayRead> = {}): DayRead => ({
  past: day,
  future: day,
  ...more,
});

export const two = (value: number): string => String(value).padStart(2, '0');
export const fourDigits = (year: string): number => (year.length === 2 ? 2000 + Number(year) : Number(year));

const daysOf = (year: number, month: number): number => Number(endOfMonth(`${year}-${two(month)}`).slice(8));

const isYear = (year: number): boolean => year >= 1970 && year <= 2199;
const isMonth = (month: number): boolean => month >= 1 && month <= 12;

export const dated = (year: number, month: number, day: number): DayRead | NoDay | undefined => {
  if (!isYear(year) || !isMonth(month)) return undefined;
  if (day < 1 || day > daysOf(year, month)) return { bad: `${day} ${monthLong(month)} ${year}` };
  return exact(`${year}-${two(month)}-${two(day)}`);
};

const longMonths =
  'January February March April May June July August September October November December'.split(' ');
const monthLong = (month: number): string => longMonths[month - 1] ?? '';

/** A day that comes soon is hardly meant as one of almost a year ago. */
const mostDaysBack = 330;
const mostDaysAhead = 31;

/** "14 May" without a year: the one before and the one after today; 29 February waits for a leap year. */
export const yearless = (month: number, day: number, today: string): DayRead | NoDay | undefined => {
  if (!isMonth(month)) return undefined;
  if (day < 1 || day > daysOf(2024, month)) return { bad: `${day} ${monthLong(month)}` };
  const year = Number(today.slice(0, 4));
  const all = Array.from({ length: 17 }, (_, at) => year - 8 + at)
    .filter((each) => day <= daysOf(each, month))
    .map((each) => `${each}-${two(month)}-${two(day)}`);
  const past = all.filter((each) => each <= today).at(-1);
  const future = all.find((each) => each >= today);
  if (!past || !future) return undefined;
  // "On 12 August", said on 7 August, is next week and not last year.
  const isAhead = past < plusDays(today, -mostDaysBack) && future <= plusDays(today, mostDaysAhead);
  return isAhead ? exact(future) : { past, future };
};

export const monthOnly = (year: number, month: number): DayRead | undefined =>
  isYear(year) && isMonth(month) ? exact(endOfMonth(`${year}-${two(month)}`), { whole: 'month' }) : undefined;

/** "on the 14th": of this month, or of the one before or after. */
export const dayOfMonth = (day: number, today: string): DayRead | undefined => {
  if (day < 1 || day > 31) return undefined;
  const inMonth = (shift: number): string | undefined => {
    const month = plusMonths(`${today.slice(0, 7)}-01`, shift).slice(0, 7);
    return Number(endOfMonth(month).slice(8)) >= day ? `${month}-${two(day)}` : undefined;
  };
  const all = [-2, -1, 0, 1, 2].flatMap((shift) => inMonth(shift) ?? []);
  const past = all.filter((each) => each <= today).at(-1);
  const future = all.find((each) => each >= today);
  return past && future ? { past, future } : undefined;
};
