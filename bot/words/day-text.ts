import { Temporal } from 'temporal-polyfill';

const months = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');
const longMonths =
  'January February March April May June July August September October November December'.split(' ');
const weekdays = 'Monday Tuesday Wednesday Thursday Friday Saturday Sunday'.split(' ');

/** An ISO day as it is read: "27 Dec 2026". */
export const dayText = (day: string): string => {
  const [year = '', month = '', date = ''] = day.split('-');
  return `${Number(date)} ${months[Number(month) - 1] ?? ''} ${year}`;
};

/** "Friday 27 November". */
export const weekdayText = (day: string): string => {
  const { dayOfWeek, day: date, month } = Temporal.PlainDate.from(day);
  return `${weekdays[dayOfWeek - 1]} ${date} ${longMonths[month - 1]}`;
};

/** Days from today in words: "today", "in 3 days", "2 days ago". */
export const awayText = (days: number): string => {
  if (days === 0) return 'today';
  if (days === 1) return 'tomorrow';
  if (days === -1) return 'yesterday';
  return days > 0 ? `in ${days} days` : `${-days} days ago`;
};

/** A time of day: "9:00", "21:30". */
export const clockText = ({ hour, minute }: { readonly hour: number; readonly minute: number }): string =>
  `${hour}:${String(minute).padStart(2, '0')}`;

/** An IANA zone as people say it: "Lisbon", "New York"; UTC stays UTC. */
export const zoneText = (zone: string): string => (zone.split('/').at(-1) ?? zone).replaceAll('_', ' ');
