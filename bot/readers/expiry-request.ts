import { defined } from '../../core/defined.ts';
import type { PeriodSaid } from './expiry-period.ts';

/** What a question of dates is about. */
export interface About {
  readonly lots?: readonly string[];
  readonly ingredient?: string;
  readonly recipe?: string;
  readonly kind?: 'lot' | 'batch';
}

const kindIn = (text: string): About['kind'] => {
  const [lot, batch] = [/\blots?\b/i.test(text), /\bbatch(?:es)?\b/i.test(text)];
  if (lot === batch) return undefined;
  return lot ? 'lot' : 'batch';
};

/** "Is 26-KIVO still good in November" is answered with its date, whenever that is. */
const stillGood = /\bstill (?:be )?(?:good|ok|okay|alright|fine|usable|safe|in date)\b/i;

/** What is asked of dates in a stretch of time. */
export const requestOf = (
  said: PeriodSaid | undefined,
  about: About,
  text: string,
): Readonly<Record<string, unknown>> =>
  about.lots && stillGood.test(text)
    ? { action: 'due', period: 'all', ...about }
    : inStretch(said, about, text);

const inStretch = (
  said: PeriodSaid | undefined,
  about: About,
  text: string,
): Readonly<Record<string, unknown>> => {
  const { period, from, until } = said ?? {};
  const asksWhen =
    /^\W*(?:and |so )?when\b|\bstill (?:good|ok|okay|alright|fine|usable|safe|in date)\b/i.test(text) &&
    (about.ingredient ?? about.recipe) !== undefined;
  const whole = (about.lots !== undefined || asksWhen) && said === undefined;
  // Whether one lot is out of date is answered with its date.
  const asked = about.lots && period === 'overdue' ? 'all' : period;
  const soon = asked ?? from ?? until ?? (whole ? 'all' : undefined) ?? 'soon';
  return {
    action: 'due',
    ...(from === undefined && until === undefined ? { period: soon } : defined({ from, until })),
    ...about,
    ...(about.lots === undefined ? defined({ kind: kindIn(text) }) : {}),
  };
};
