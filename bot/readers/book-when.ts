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

const months = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');
const inMonth =
  /\b(?:in|during|of|since|last) (jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\b(?:,? (20\d\d))?/i;

const ofMonth = (text: string, today: string): Period | undefined => {
  const match = inMonth.exec(text);
  const [said, name = '', year] = match ?? [];
  if (said === undefined) return undefined;
  const number = String(months.indexOf(name.slice(0, 3).toLowerCase()) + 1).padStart(2, '0');
  const thisYear = Number(today.slice(0, 4));
  const lastSuch = `${thisYear}-${number}` <= today.slice(0, 7) ? thisYear : thisYear - 1;
  const month = `${year ?? lastSuch}-${number}`;
  return { from: firstOf(month), to: /^since/i.test(said) ? today : endOfMonth(month), said };
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
  return ofMonth(reading.text, today) ?? ofDay(reading, today);
};
