import { lotKey } from '../bench/codes.ts';
import { laterDay, plusDays } from '../bench/days.ts';
import { dueDayByKey, firstDueDay } from '../bench/due.ts';
import type { Bench, Reminder } from '../bench/state.ts';
import { isBenchEvent, touchedBy } from '../bench/touched.ts';
import { tellMsFrom } from './clock.ts';

/** Days ahead from which something is told: the largest of the reminder's lead days. */
export const leadOf = ({ leadDays }: Reminder): number => Math.max(...leadDays);

/** The last local day that is dealt with: told, or tried in vain. */
export const doneDay = ({ told, reminder }: Bench): string | undefined => {
  const { failedDay } = reminder ?? {};
  if (failedDay === undefined || told === undefined) return failedDay ?? told?.day;
  return laterDay(failedDay, told.day);
};

// What a bench comes to does not change, so it is kept with it for as long as the bench is there.
const known = new WeakMap<Bench, string | null>();

const soonest = (bench: Bench, lead: number): string | null => {
  const there = known.get(bench);
  if (there !== undefined) return there;
  const day = firstDueDay(bench, lead) ?? null;
  known.set(bench, day);
  return day;
};

/** An event of a request; what is no event of the bench, as an undoing, may have changed anything. */
type AnyEvent = { readonly kind: string };

const keysTouchedBy = (before: Bench, events: readonly AnyEvent[]): readonly string[] | undefined => {
  if (!events.every(isBenchEvent)) return undefined;
  const linesBefore = (lot: string) => before.batches.get(lotKey(lot))?.lines;
  return [...new Set(events.flatMap((event) => touchedBy(event, linesBefore)).map(lotKey))];
};

/** The soonest day after some events, from the one before them, or undefined when everything has to be looked at. */
const moved = (
  before: Bench,
  after: Bench,
  events: readonly AnyEvent[],
  lead: number,
): string | null | undefined => {
  const was = known.get(before);
  const keys = keysTouchedBy(before, events);
  if (was === undefined || keys === undefined) return undefined;
  const days = keys.flatMap((key) => dueDayByKey(after, key, lead) ?? []);
  const first = days.reduce<string | null>(
    (least, day) => (least === null || day < least ? day : least),
    null,
  );
  if (was === null || (first !== null && first <= was)) return first;
  // Nothing touched is as soon as the soonest was. If that one was touched, it may be any other now.
  return keys.some((key) => dueDayByKey(before, key, lead) === was) ? undefined : was;
};

/**
 * Notes what `after` comes to from what was known of `before`, so that a pour into a book of 10,000 batches need not look
 * at all of them. `events` are those that lead from one to the other; leaving them out only costs time.
 */
export const follow = (before: Bench, after: Bench, events: readonly AnyEvent[]): void => {
  const { reminder } = after;
  if (!reminder || before === after || known.has(after)) return;
  if (!before.reminder || leadOf(before.reminder) !== leadOf(reminder)) return;
  const day = moved(before, after, events, leadOf(reminder));
  if (day !== undefined) known.set(after, day);
};

/** The day of the group's next message: what is due by then, and not told before; undefined when none will come. */
export const nextDay = (bench: Bench): string | undefined => {
  const { reminder } = bench;
  if (!reminder) return undefined;
  const due = soonest(bench, leadOf(reminder));
  if (due === null) return undefined;
  const done = doneDay(bench);
  const days = [due, reminder.from ?? due, done === undefined ? due : plusDays(done, 1)];
  return days.reduce(laterDay);
};

/** The instant (epoch ms) from which the group's next message is owed; it may long be past. */
export const nextTellMs = (bench: Bench): number | undefined => {
  const day = nextDay(bench);
  return day === undefined || !bench.reminder ? undefined : tellMsFrom(day, bench.reminder);
};
