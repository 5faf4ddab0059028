import { plusMonths } from '../../core/bench/days.ts';
import { defined } from '../../core/defined.ts';
import { readBench } from '../readers/bench-reading.ts';
import { periodIn as daysGone } from '../readers/book-when.ts';
import { periodIn } from '../readers/expiry-period.ts';
import type { Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import type { Wish } from './facet.ts';
import type { Subject } from './subject.ts';

const yearOut =
  /\b(?:before|until|by|till) (?:the |this )?year(?:'s end|-end| end| is (?:out|over|done)| ends)\b/i;
const nextFew = /\bnext (\d{1,3})(?!\d| ?(?:days?|weeks?|months?|years?|fortnights?))/i;
const oldest = /\b(?:oldest|soonest|first)\b/i;
const dayAlone =
  /\bthe (\d{1,2})(?:st|nd|rd|th)\b(?! (?:of )?(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec))/i;

/** "By the 20th": the next one. */
const withWholeDays = (text: string, today: string): string =>
  text.replace(dayAlone, (said, day: string) => {
    const inMonth = `${today.slice(0, 8)}${day.padStart(2, '0')}`;
    return Number(day) > 28 ? said : inMonth < today ? plusMonths(inMonth, 1) : inMonth;
  });

/** "Won't make it to August". */
const lasts = /\b(?:make it|last|keep|see us) (?:to|through|till|until|past|beyond|into)\b/i;

/** What goes out of date in a stretch of time. */
export const dueIn = (_: Subject, reading: Reading): Wish | undefined => {
  const text = withWholeDays(
    reading.text.replace(lasts, 'by').replace(yearOut, 'this year').replace(nextFew, 'next $1 days'),
    readBench(reading).today,
  );
  const said = periodIn(text === reading.text ? reading : readAgain(text, reading));
  if (said?.trouble || (!said && !oldest.test(text))) return undefined;
  const { period, from, until } = said ?? { period: /\boldest\b/i.test(text) ? 'all' : 'soon' };
  return { topic: 'expiry', request: { action: 'due', ...defined({ period, from, until }) } };
};

/** What was written in a stretch of days. */
export const changesIn = (_: Subject, reading: Reading): Wish => {
  const when = daysGone(reading);
  const days = when && { from: when.from, to: when.to };
  return { topic: 'book', request: { action: 'history', ...days } };
};
