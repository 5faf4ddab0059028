import { daysBetween, printedMonth } from '../../core/bench/days.ts';
import type { DateLimit } from '../../core/bench/event-fields.ts';
import type { Trouble } from '../answer.ts';
import { todayOf } from '../readers/days.ts';
import type { Tools } from '../topic.ts';
import { plain } from './numbers.ts';
import { shortName } from './warnings.ts';

const months = 'January February March April May June July August September October November December'.split(
  ' ',
);
const weekdays = 'Sunday Monday Tuesday Wednesday Thursday Friday Saturday'.split(' ');

/** "14 May 2027". */
export const dayText = (day: string): string => {
  const [year, month, date] = day.split('-').map(Number);
  return `${date} ${months[(month ?? 1) - 1]} ${year}`;
};

/** "Saturday 21 November 2026": said back, so that a slip in a date is seen. */
export const longDayText = (day: string): string =>
  `${weekdays[new Date(`${day}T12:00:00Z`).getUTCDay()]} ${dayText(day)}`;

/** "04/2027", as printed on the tin. */
export const printedText = (bestBefore: string): string => {
  const [year, month] = printedMonth(bestBefore).split('-');
  return `${month}/${year}`;
};

/** The group's own day at this message. */
export const todayFor = ({ at, settings }: Tools): string => todayOf({ at, settings });

const capWords: Readonly<Record<Extract<DateLimit, { kind: 'house' }>['why'], string>> = {
  usual: 'the usual ceiling (common practice)',
  own: "the group's own ceiling",
  fresh: 'something fresh is in it (common practice)',
  honey: 'honey is in it (common practice)',
  'home-dried': 'a herb dried at home is in it (common practice)',
  'fragile-oil': 'a fifth or more is oil that goes off early (common practice)',
};

const inMonths = (count: number): string => `${plain(count)} month${count === 1 ? '' : 's'}`;

/** Why a best-before date is what it is: "grapeseed oil lot G7 ends 14 May 2027". */
export const reasonText = (because: DateLimit, bestBefore: string): string => {
  switch (because.kind) {
    case 'lot':
      return `${shortName(because.ingredient)} lot ${because.lot} ends ${dayText(bestBefore)}`;
    case 'undated-lot':
      return `${shortName(because.ingredient)} lot ${because.lot} has no date of its own and usually keeps ${inMonths(because.months)}`;
    case 'ingredient':
      return `${shortName(because.ingredient)} usually keeps ${inMonths(because.months)}`;
    case 'house':
      return `${inMonths(because.months)} after the pour: ${capWords[because.why]}`;
    case 'said':
      return 'as you said';
  }
};

/** "in 3 days", "today", "5 days ago". */
export const fromNow = (today: string, day: string): string => {
  const days = daysBetween(today, day);
  if (days === 0) return 'today';
  const count = `${Math.abs(days)} day${Math.abs(days) === 1 ? '' : 's'}`;
  return days > 0 ? `in ${count}` : `${count} ago`;
};

/** What is written down was done: a day still to come is a slip. */
export const futureTrouble = (on: string, today: string): Trouble | undefined =>
  on <= today
    ? undefined
    : {
        code: 'out-of-range',
        text: `${longDayText(on)} is still to come (today is ${dayText(today)}). I write down what was done: say for example "yesterday" or "on ${today}".`,
      };

/** The oldest day that can be written down. */
const oldest = '1990-01-01';

export const oldTrouble = (on: string): Trouble | undefined =>
  on >= oldest ? undefined : { code: 'out-of-range', text: `${dayText(on)} is too long ago to be meant.` };

export const dayTrouble = (on: string, today: string): Trouble | undefined =>
  futureTrouble(on, today) ?? oldTrouble(on);
