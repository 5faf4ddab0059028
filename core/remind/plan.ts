import { laterDay, localDay, plusDays } from '../bench/days.ts';
import { type Due, dueBy } from '../bench/due.ts';
import type { Bench, Reminder } from '../bench/state.ts';
import { dayAt, tellMsFrom } from './clock.ts';
import { doneDay, leadOf, nextDay } from './next.ts';

/** What a daily message says: what is told for the first time or came closer, and what was told before. */
export interface DueMessage {
  /** The local day it is for. */
  readonly day: string;
  readonly fresh: readonly Due[];
  readonly open: readonly Due[];
}

export type Plan =
  /** `begun` is set when this day's message was begun before and may have gone out. */
  | {
      readonly kind: 'tell';
      readonly message: DueMessage;
      readonly reminder: Reminder;
      readonly begun?: NonNullable<Reminder['begun']>;
    }
  /** Nothing to tell now; look again at this instant, or never. */
  | { readonly kind: 'wait'; readonly untilMs: number | undefined };

/** True when one of the lead days, or the day it was put off to, falls after the last message and not after `day`. */
const cameCloser = (
  { bestBefore, answer }: Due,
  leadDays: readonly number[],
  told: string,
  day: string,
): boolean => {
  const marks = leadDays.map((lead) => plusDays(bestBefore, -lead));
  return [...marks, ...(answer?.until ? [answer.until] : [])].some((mark) => mark > told && mark <= day);
};

/** Everything a group is to be told on a day, sorted into new and still open. */
export const messageFor = (bench: Bench, reminder: Reminder, day: string): DueMessage => {
  const due = dueBy(bench, day, plusDays(day, leadOf(reminder)));
  const { told } = bench;
  const before = new Set(told?.items);
  const isFresh = (each: Due): boolean =>
    told === undefined || !before.has(each.item) || cameCloser(each, reminder.leadDays, told.day, day);
  return { day, fresh: due.filter(isFresh), open: due.filter((each) => !isFresh(each)) };
};

/**
 * What is to be done for a group now. One message for each local day on which something is due, at the reminder's hour
 * or, when that was missed, later on the same day; days missed as a whole come with the next message. A day that was told
 * stays told whatever the clock, the zone or the hour does afterwards.
 */
export const planFor = (bench: Bench, nowMs: number): Plan => {
  const { reminder } = bench;
  const next = nextDay(bench);
  if (!reminder || next === undefined) return { kind: 'wait', untilMs: undefined };
  const day = dayAt(nowMs, reminder);
  if (day !== undefined && day >= next) {
    const message = messageFor(bench, reminder, day);
    const { begun } = reminder;
    return { kind: 'tell', message, reminder, ...(begun?.day === day ? { begun } : {}) };
  }
  const today = localDay(nowMs, reminder.zone);
  const earliest = day === undefined ? today : plusDays(today, 1);
  return { kind: 'wait', untilMs: tellMsFrom(laterDay(next, earliest), reminder) };
};

/** True when a day needs no further message, so that a second sweep or a late record changes nothing. */
export const isDone = (bench: Bench, day: string): boolean => (doneDay(bench) ?? '') >= day;
