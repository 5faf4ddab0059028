import { endOfMonth, plusDays, plusMonths } from '../../core/bench/days.ts';
import type { Reading } from '../reading.ts';
import { daysIn, todayOf } from './days.ts';

/** A stretch of days, both ends in it, and the words that said so. */
export interface Period {
  readonly from: string;
  readonly to: string;
  readonly said: string;
}

const weekday = (day: string): number => (new Date(`${day}T00:00:00Z`).getUTCDay() + 6) % 7;
const monday = (day: string): string => plusDays(day, -weekday(day));
const firstOf = (month: string): string => `${month}-01`;

type Span = readonly [from: string, to: string];

/** Plain words for a stretch of days, reckoned from today. */
const spans: readonly (readonly [RegExp, (today: string, count: number) => Span])[] = [
  [/\btoday\b|\bso far today\b/i, (today) => [today, today]],
  [/\byesterday\b/i, (today) => [plusDays(today, -1), plusDays(today, -1)]],
  [/\bthis week\b/i, (today) => [monday(today), today]],
  [/\blast week\b/i, (today) => [plusDays(monday(today), -7), plusDays(monday(today), -1)]],
  [/\bthis month\b/i, (today) => [firstOf(today.slice(0, 7)), today]],
  [
    /\blast month\b/i,
    (today) => {
      const month = plusMonths(firstOf(today.slice(0, 7)), -1).slice(0, 7);
      return [firstOf(month), endOfMonth(month)];
    },
  ],
  [/\bthis year\b/i, (today) => [`${today.slice(0, 4)}-01-01`, today]],
  [
    /\blast year\b/i,
    (today) => {
      const year = Number(today.slice(0, 4)) - 1;
      return [`${year}-01-01`, `${year}-12-31`];
    },
  ],
  [
    /\b(?:in |over |for )?(?:the )?(?:last|past) (\d{1,3}) days?\b/i,
    (today, count) => [plusDays(today, 1 - count), today],
  ],
];

const month =
  '(jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\\b';
const year = '(?:,? (20\\d\\d))?';
const dayOfMonth = '(?:the )?(\\d{1,2})(?:st|nd|rd|th)?(?: of)?';
/** One end of a stretch: "2027-03-01", "1 March 2027", "March 1", "March". */
const end = `(?:(20\\d\\d-\\d\\d-\\d\\d)|${dayOfMonth}(?: ${month}${year})?|${month}(?: (\\d{1,2})(?:st|nd|rd|th)?)?${year})`;
const between = new RegExp(`\\b(?:between|from) ${end} (?:and|to|till|until|up to|through|-) ${end}`, 'i');

interface End {
  readonly iso?: string | undefined;
  readonly day?: number | undefined;
  readonly month?: string | undefined;
  readonly year?: number | undefined;
}

const endOf = ([iso, day, first, itsYear, second, after, otherYear]: readonly (
  | string
  | undefined
)[]): End => ({
  iso,
  day: day === undefined && after === undefined ? undefined : Number(day ?? after),
  month: first ?? second,
  year: Number(itsYear ?? otherYear ?? 0) || undefined,
});

const endsIn = (one: End, other: End, today: string): Span | undefined => {
  const name = one.month ?? other.month;
  if (one.iso !== undefined) return [one.iso, one.iso];
  if (name === undefined) return undefined;
  const number = numberOf(name);
  const said = one.year ?? other.year;
  const whole = `${said ?? lastYearOf(number, today)}-${number}`;
  if (one.day === undefined) return [firstOf(whole), endOfMonth(whole)];
  const day = `${whole}-${String(one.day).padStart(2, '0')}`;
  return one.day >= 1 && day <= endOfMonth(whole) ? [day, day] : undefined;
};

/** "Between 1 and 31 March", "from March to May 2027". */
const ofRange = (text: string, today: string): Period | undefined => {
  const match = between.exec(text);
  if (!match) return undefined;
  const [first, last] = [endOf(match.slice(1, 8)), endOf(match.slice(8, 15))];
  const to = endsIn(last, first, today)?.[1];
  const from = endsIn(first, last, today)?.[0];
  return from !== undefined && to !== undefined && from <= to ? { from, to, said: match[0] } : undefined;
};

const months = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');
const numberOf = (name: string): string =>
  String(months.indexOf(name.slice(0, 3).toLowerCase()) + 1).padStart(2, '0');
/** The year in which such a month was last, or is now. */
const lastYearOf = (number: string, today: string): number => {
  const thisYear = Number(today.slice(0, 4));
  return `${thisYear}-${number}` <= today.slice(0, 7) ? thisYear : thisYear - 1;
};
const inMonth = new RegExp(`\\b(?:in|during|of|since|last|from|for) ${month}${year}`, 'i');
/** "March batches", "March's entries". */
const monthFirst = new RegExp(
  `^\\W*(?:the |our |all |show |list |give me |me )*${month}${year}(?='?s? (?:batch(?:es)?|pours|entries|history|log|changes|records)\\b)`,
  'i',
);

const ofMonth = (text: string, today: string): Period | undefined => {
  const first = monthFirst.exec(text);
  const [said, name = '', inYear] = inMonth.exec(text) ?? first ?? [];
  if (said === undefined) return undefined;
  const number = numberOf(name);
  const whole = `${inYear ?? lastYearOf(number, today)}-${number}`;
  const to = /^since/i.test(said) ? today : endOfMonth(whole);
  return { from: firstOf(whole), to, said: said === first?.[0] ? said.slice(said.indexOf(name)) : said };
};

const ofDay = (reading: Reading, today: string): Period | undefined => {
  const day = daysIn(reading).days.find(({ role }) => role === 'on');
  if (!day) return undefined;
  const said = reading.text.slice(day.from, day.to);
  const from = day.whole === 'month' ? firstOf(day.past.slice(0, 7)) : day.past;
  return { from, to: /\bsince\b/i.test(said) ? today : day.past, said };
};

/** The stretch of days that a question about the past names; undefined when it names none. */
export const periodIn = (reading: Reading): Period | undefined => {
  const today = todayOf(reading);
  for (const [pattern, span] of spans) {
    const match = pattern.exec(reading.text);
    if (!match) continue;
    const [from, to] = span(today, Number(match[1] ?? 0));
    return { from, to, said: match[0] };
  }
  return ofRange(reading.text, today) ?? ofMonth(reading.text, today) ?? ofDay(reading, today);
};
