import { Temporal } from 'temporal-polyfill';
import type { Region } from '../settings.ts';

/** How a figure came here. */
type Seen = 'read' | 'read-secondary' | 'memory' | 'none-found';

export interface ReactionDuty {
  /** Who is told of a serious reaction; missing where no duty was found. */
  readonly who: string;
  /** How soon, in words. */
  readonly soon: string;
  /** The last day, where the rule or a guideline counts days. */
  readonly by?: string;
  readonly source: string;
  readonly seen: Seen;
}

const observed = (day: Temporal.PlainDate): Temporal.PlainDate => {
  if (day.dayOfWeek === 6) return day.subtract({ days: 1 });
  return day.dayOfWeek === 7 ? day.add({ days: 1 }) : day;
};

/** The `nth` given weekday (1 Monday … 7 Sunday) of a month; -1 is the last. */
const nthWeekday = (year: number, month: number, weekday: number, nth: number): Temporal.PlainDate => {
  const first = Temporal.PlainDate.from({ year, month, day: 1 });
  if (nth < 0) {
    const last = first.with({ day: first.daysInMonth });
    return last.subtract({ days: (last.dayOfWeek - weekday + 7) % 7 });
  }
  return first.add({ days: ((weekday - first.dayOfWeek + 7) % 7) + 7 * (nth - 1) });
};

/** Federal holidays of the United States as observed: 5 U.S.C. 6103 (from memory). */
export const usHolidays = (year: number): ReadonlySet<string> => {
  const fixed = (month: number, day: number) => observed(Temporal.PlainDate.from({ year, month, day }));
  const days = [
    fixed(1, 1),
    nthWeekday(year, 1, 1, 3),
    nthWeekday(year, 2, 1, 3),
    nthWeekday(year, 5, 1, -1),
    fixed(6, 19),
    fixed(7, 4),
    nthWeekday(year, 9, 1, 1),
    nthWeekday(year, 10, 1, 2),
    fixed(11, 11),
    nthWeekday(year, 11, 4, 4),
    fixed(12, 25),
    // New Year's Day of the next year, when it is observed on the last day of this one.
    observed(Temporal.PlainDate.from({ year: year + 1, month: 1, day: 1 })),
  ];
  return new Set(days.map(String));
};

/** The day `count` business days after `from` (not counted itself): Monday to Friday without US federal holidays. */
export const afterBusinessDays = (from: string, count: number): string => {
  let day = Temporal.PlainDate.from(from);
  for (let counted = 0; counted < count; ) {
    day = day.add({ days: 1 });
    if (day.dayOfWeek <= 5 && !usHolidays(day.year).has(day.toString())) counted += 1;
  }
  return day.toString();
};

const plusDays = (day: string, days: number): string => Temporal.PlainDate.from(day).add({ days }).toString();

/**
 * What a region asks for after a serious reaction the group heard of on `heardOn` (ISO day). Advice and no ruling: whether
 * a reaction is serious is for whoever was hurt and their doctor to say.
 */
export const reactionDuty = (region: Region, heardOn: string): ReactionDuty => {
  switch (region) {
    case 'us':
      return {
        who: 'the FDA (form 3500A, with a copy of the label)',
        soon: 'within 15 business days of hearing of it, and what you learn in the year after',
        by: afterBusinessDays(heardOn, 15),
        source: 'FD&C Act section 605, as amended by MoCRA 2022',
        seen: 'read-secondary',
      };
    case 'eu':
      return {
        who: 'the authority of the country where it happened',
        soon: 'without delay; the guideline says within 20 calendar days of knowing it is serious',
        by: plusDays(heardOn, 20),
        source: 'Regulation (EC) 1223/2009, Article 23 (the 20 days from memory)',
        seen: 'memory',
      };
    case 'uk':
      return {
        who: 'the Secretary of State (Office for Product Safety and Standards)',
        soon: 'without delay',
        source: 'Regulation (EC) 1223/2009 as kept in UK law, Article 23',
        seen: 'read',
      };
    case 'au':
      return {
        who: 'the consumer regulator, if death, serious injury or illness is linked to the balm',
        soon: 'within 2 days of knowing',
        by: plusDays(heardOn, 2),
        source: 'Australian Consumer Law, section 131',
        seen: 'memory',
      };
    case 'ca':
      return {
        who: 'Health Canada, which takes reports of reactions',
        soon: 'no deadline for cosmetics was found: report it anyway',
        source: 'no rule found',
        seen: 'none-found',
      };
  }
};

export interface KeepFor {
  readonly text: string;
  readonly source: string;
  readonly seen: Seen;
}

/** How long the record of a reaction is kept. */
export const keepReactionsFor = (region: Region): KeepFor =>
  region === 'us'
    ? {
        text: '6 years; small businesses 3 years',
        source: 'FD&C Act section 605(e), as amended by MoCRA 2022',
        seen: 'read-secondary',
      }
    : region === 'eu' || region === 'uk'
      ? {
          text: '10 years after the last batch, with the product file',
          source: 'Regulation (EC) 1223/2009, Article 11(3)',
          seen: 'read',
        }
      : {
          text: '5 years (common practice, no source)',
          source: 'common practice, no source',
          seen: 'none-found',
        };
