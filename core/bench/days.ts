import { Temporal } from 'temporal-polyfill';

/** Calendar arithmetic on ISO days (`2027-02-28`), by the standard: months end where they end, leap days count. */

/** `months` later; 31 August and six months is the last day of February. */
export const plusMonths = (day: string, months: number): string =>
  Temporal.PlainDate.from(day).add({ months }, { overflow: 'constrain' }).toString();

const dayMs = 86_400_000;

/** Midnight of an ISO day in UTC, where every day has the same length. RangeError for what is no day. */
const midnightMs = (day: string): number => {
  const at = Date.parse(`${day}T00:00:00Z`);
  if (Number.isNaN(at)) throw new RangeError(`no day: ${day}`);
  return at;
};

// Days are counted for each line of long lists, so these two do without an object of the calendar.

export const plusDays = (day: string, days: number): string => {
  const text = new Date(midnightMs(day) + days * dayMs).toISOString();
  return text.slice(0, text.indexOf('T'));
};

/** The later of two ISO days. */
export const laterDay = (a: string, b: string): string => (a > b ? a : b);

/** The earlier of two ISO days. */
export const earlierDay = (a: string, b: string): string => (a < b ? a : b);

/** Whole days from one day to another; negative when `to` comes first. */
export const daysBetween = (from: string, to: string): number => (midnightMs(to) - midnightMs(from)) / dayMs;

/** The last day of a month given as `2027-03`. */
export const endOfMonth = (month: string): string => {
  const first = Temporal.PlainDate.from(`${month}-01`);
  return first.with({ day: first.daysInMonth }).toString();
};

/** The local day of an instant in an IANA zone. Throws RangeError for a zone that does not exist: check it first. */
export const localDay = (atMs: number, zone: string): string =>
  Temporal.Instant.fromEpochMilliseconds(atMs).toZonedDateTimeISO(zone).toPlainDate().toString();

/** Whether the zone's rules are known here. */
export const isZone = (zone: string): boolean => {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone);
    return true;
  } catch {
    return false;
  }
};

/**
 * The month printed as best before, `2027-04`: the last one that is over by then, since a printed month means "until its
 * last day" (Regulation (EC) 1223/2009, Annex VII and Article 19(1)(c)).
 */
export const printedMonth = (bestBefore: string): string => {
  const date = Temporal.PlainDate.from(bestBefore);
  const month = date.toPlainYearMonth();
  return (date.day === date.daysInMonth ? month : month.subtract({ months: 1 })).toString();
};

/**
 * Easter Sunday of a year of the Gregorian calendar, ISO: the anonymous algorithm (Meeus, Astronomical Algorithms,
 * chapter 8; from memory).
 */
export const easterOf = (year: number): string => {
  const golden = year % 19;
  const [century, inCentury] = [Math.floor(year / 100), year % 100];
  const moved = Math.floor((century + 8) / 25);
  const epact =
    (19 * golden + century - Math.floor(century / 4) - Math.floor((century - moved + 1) / 3) + 15) % 30;
  const weekday = (32 + 2 * (century % 4) + 2 * Math.floor(inCentury / 4) - epact - (inCentury % 4)) % 7;
  const late = Math.floor((golden + 11 * epact + 22 * weekday) / 451);
  const day = epact + weekday - 7 * late + 114;
  const pad = (part: number): string => String(part).padStart(2, '0');
  return `${year}-${pad(Math.floor(day / 31))}-${pad((day % 31) + 1)}`;
};
