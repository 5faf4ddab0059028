import { easterOf, plusDays } from '../../core/bench/days.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { readBench } from './bench-reading.ts';
import { monthOf, two } from './day-calendar.ts';
import type { DaySaid } from './days.ts';
import { textOf } from './expiry-clauses.ts';

/** A stretch of time asked about, relative to the day it is asked on unless it names days. */
export interface PeriodSaid {
  readonly period?: string;
  readonly from?: string;
  readonly until?: string;
  readonly trouble?: Trouble;
  /** The text without the words that said so. */
  readonly rest: string;
}

const numberWords = 'a one two three four five six seven eight nine ten eleven twelve'.split(' ');
const counted = (said: string): number => {
  if (/^an?$|^one$/i.test(said)) return 1;
  if (/^couple of$/i.test(said)) return 2;
  if (/^few$/i.test(said)) return 3;
  const at = numberWords.indexOf(said.toLowerCase());
  return at >= 0 ? at : Number(said);
};
const number = '(\\d{1,4}|an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|couple of|few)';
const monthNames =
  'january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec';

/** Calendar stretches by their words, most telling first. */
const named: readonly (readonly [RegExp, string])[] = [
  [
    /(?<!\b(?:runs?|running|go|goes|going|gets?|getting|be|turns?|before it is|when it is) )\b(?:out of date|(?:past|over|beyond|passed|older than) (?:its|their|the|best)?\s*(?:best[- ]before|use[- ]by|sell[- ]by|date|best)(?: dates?)?|over ?due|(?:already |has |have |is |are )?expired|(?:is|are) too old|(?:already|has|have) run out of date|did (?:something|anything) go (?:off|out of date)|(?:can|may) (?:we |i )?no longer (?:use|sell)|should have been (?:used|sold|finished)(?: up)?|already over|over already|gone off|(?:gone|went) stale|no longer good|not (?:good|usable|fine|ok|okay) any ?more|no good any ?more)\b(?! (?:by(?! now\b)|before|on(?! (?:the shel|our shel|hand|here))|in(?! (?:stock|the (?:cupboard|store|house|pantry|shed|larder)|here|our))|this|next))/i,
    'overdue',
  ],
  [
    /\b(?:by the end of |before the end of |until the end of |end of |during |in |over )?(?:this|the current|the) (?:calendar |whole )?month\b/i,
    'this-month',
  ],
  [/\b(?:in|within|over|during) the (?:next|coming|following) week\b/i, 'days-7'],
  [/\b(?:in|within|over|during) (?:the (?:next|coming|following)|a) fortnight\b/i, 'days-14'],
  [/\b(?:in|within|over|during) the (?:next|coming|following) month\b/i, 'months-1'],
  [/\b(?:in|within|over|during) the (?:next|coming|following) year\b/i, 'months-12'],
  [/\b(?:in |during )?(?:next|the following|the coming) month\b/i, 'next-month'],
  [
    /\b(?:by the end of |before the end of |until the end of |end of |during |in )?(?:this|the current|the) week\b/i,
    'this-week',
  ],
  [/\b(?:in |during )?(?:next|the following|the coming) week\b/i, 'next-week'],
  [
    /\b(?:by the end of |before the end of |until the end of |end of |during |in )?(?:this|the current|the) year\b/i,
    'this-year',
  ],
  [/\b(?:in |during )?(?:next|the following|the coming) year\b/i, 'next-year'],
  [/\b(?:this |the |over the )?weekend\b/i, 'weekend'],
  [/\b(?:by |before )?tomorrow\b/i, 'tomorrow'],
  [/\b(?:by )?today\b|\btonight\b/i, 'today'],
  [/\bsoon\b|\bsoonest\b|\bfirst\b(?! (?:of|day)\b)|\bcoming up\b|\bupcoming\b/i, 'soon'],
];

const without = (text: string, match: RegExpExecArray): string =>
  `${text.slice(0, match.index)} ${text.slice(match.index + match[0].length)}`;

const span = new RegExp(
  `\\b(?:(?:in|within|over|during|for)\\s+)?(?:the\\s+)?(?:(?:next|coming|following)\\s+)?(?:a\\s+)?${number}\\s+(days?|weeks?|fortnights?|months?|years?)\\b(?:\\s+ahead)?(?:'? time)?`,
  'i',
);
const perUnit: Readonly<Record<string, number>> = { d: 1, w: 7, f: 14 };

const readSpan = (text: string, bare: string): PeriodSaid | undefined => {
  const match = span.exec(text);
  if (!match) return undefined;
  const unit = (match[2] ?? '').charAt(0).toLowerCase();
  const count = counted(match[1] ?? '');
  const rest = without(bare, match);
  if (count < 1 || count > 3650)
    return {
      rest,
      trouble: {
        code: 'out-of-range',
        text: 'Ask for one day to ten years ahead, for example "what expires in the next 60 days".',
      },
    };
  if (unit === 'm' || unit === 'y') return { period: `months-${unit === 'y' ? 12 * count : count}`, rest };
  return { period: `days-${count * (perUnit[unit] ?? 1)}`, rest };
};

const monthOrYear = new RegExp(
  `\\b(by (?:the )?end of |before (?:the )?end of |until (?:the )?end of |till (?:the )?end of |by |before |until )?(?:in |during |the )*(?:(${monthNames})\\b,?\\s*)?(20\\d{2})?\\b`,
  'gi',
);

/** The calendar month or year that was said, from its first to its last day. */
const monthOrYearOf = (month: string | undefined, inYear: string | undefined, today: string) => {
  if (month === undefined) return { from: `${inYear}-01-01`, until: `${inYear}-12-31` };
  const at = monthOf(month);
  const year = inYear === undefined ? yearOf(at, today) : Number(inYear);
  return { from: `${year}-${two(at)}-01`, until: lastDay(year, at) };
};

/** "may" is a month only where it is asked for as one. */
const isMonth = (whole: string, month: string | undefined): boolean =>
  month?.toLowerCase() !== 'may' || /\b(?:in|by|before|until|during|of)\b/i.test(whole);

/** "in June", "in June 2027", "in 2027", "before March": a calendar month or year. */
const readMonth = (text: string, today: string): PeriodSaid | undefined => {
  for (const match of text.matchAll(monthOrYear)) {
    const [whole, cue = '', month, inYear] = match;
    if ((month ?? inYear) === undefined || !isMonth(whole, month)) continue;
    const rest = `${text.slice(0, match.index)} ${text.slice(match.index + whole.length)}`;
    const { from, until } = monthOrYearOf(month, inYear, today);
    if (/^before $/i.test(cue)) return { until: plusDays(from, -1), rest };
    return cue.trim() === '' ? { from, until, rest } : { until, rest };
  }
  return undefined;
};

const yearOf = (month: number, today: string): number => {
  const [year = 0, now = 0] = today.split('-').map(Number);
  return month < now ? year + 1 : year;
};

const lastDay = (year: number, month: number): string =>
  plusDays(month === 12 ? `${year + 1}-01-01` : `${year}-${two(month + 1)}-01`, -1);

const untilCue =
  /^[\s\S]*\b(before|by|until|till|up to|through|not later than|no later than)\b(?:[\s,]+[\p{L}'-]+){0,6}[\s,]*$/iu;

/** Feasts with a date of their own, by year. */
const feasts: readonly (readonly [RegExp, (year: number) => string])[] = [
  [/\b(before|by|until|till)?\s*(?:easter)(?: sunday| fair| market| holidays?)?\b/i, easterOf],
  [
    /\b(before|by|until|till)?\s*(?:christmas|xmas)(?: day| fair| market| sale)?\b/i,
    (year) => `${year}-12-25`,
  ],
  [/\b(before|by|until|till)?\s*(?:new year|new year's)(?: day| eve)?\b/i, (year) => `${year}-01-01`],
  [/\b(before|by|until|till)?\s*(?:halloween)\b/i, (year) => `${year}-10-31`],
];

const readFeast = (text: string, today: string): PeriodSaid | undefined => {
  for (const [pattern, dayOf] of feasts) {
    const match = pattern.exec(text);
    if (!match) continue;
    const year = Number(today.slice(0, 4));
    const day = dayOf(year) >= today ? dayOf(year) : dayOf(year + 1);
    return { until: /before/i.test(match[1] ?? '') ? plusDays(day, -1) : day, rest: without(text, match) };
  }
  return undefined;
};

const oneDay = (day: DaySaid, before: string): Omit<PeriodSaid, 'rest'> => {
  const { future, whole } = day;
  const cue = untilCue.exec(before)?.[1]?.toLowerCase();
  const from = whole === undefined ? future : startOf(day);
  // "Before the end of March" is all of March.
  if (cue === 'before' && whole !== undefined && /\bend of\b/i.test(day.said)) return { until: future };
  if (cue === 'before') return { until: plusDays(from, -1) };
  if (cue !== undefined || /^(?:by|until|till|up to)\b/i.test(day.said)) return { until: future };
  if (whole === undefined && /^(?:in|within)\b/i.test(day.said)) return { until: future };
  return { from, until: future };
};

/** Days that were read as dates: "before the fair on 12 June", "by Friday", "between 1 and 12 June", "on 3 May". */
const readDays = (reading: Reading): PeriodSaid | undefined => {
  const { days, trouble, ...read } = readBench(reading);
  const rest = textOf(read.rest);
  if (trouble) return { trouble, rest };
  const [first, second, third] = days;
  if (!first || third) return undefined;
  if (!second) {
    const before = reading.text
      .slice(0, first.to - first.said.length)
      .replace(/\bbest[- ]before\b/gi, (said) => '_'.repeat(said.length));
    // What happens on that day is not asked about: "before the spring market on 12 June".
    const cue = untilCue.exec(before);
    const at = cue ? cue[0].toLowerCase().lastIndexOf((cue[1] ?? '').toLowerCase()) : 0;
    const bare = cue ? `${rest.slice(0, at)} ${rest.slice(first.from)}` : rest;
    return { ...oneDay(first, before), rest: bare };
  }
  return first.future <= second.future ? { from: first.future, until: second.future, rest } : undefined;
};

/** A month stands for its last day, a year for its last one. */
const startOf = ({ future, whole }: DaySaid): string =>
  whole === 'year' ? `${future.slice(0, 4)}-01-01` : `${future.slice(0, 7)}-01`;

/** "What will have expired by October" is not over yet. */
const ahead = /\b(?:will|shall|going to)\b|\w'll\b/i;

/** What stretch of time a message asks about, if it says so. */
export const periodIn = (reading: Reading): PeriodSaid | undefined => {
  const { today, rest } = readBench(reading);
  const [text, bare] = [textOf(reading), textOf(rest)];
  for (const [pattern, period] of named) {
    const match = period === 'overdue' && ahead.test(text) ? null : pattern.exec(text);
    if (match && (period !== 'soon' || !span.test(text))) return { period, rest: without(bare, match) };
  }
  return readSpan(text, bare) ?? readDays(reading) ?? readFeast(bare, today) ?? readMonth(bare, today);
};
