import { lotKey } from '../bench/codes.ts';
import { laterDay, plusDays } from '../bench/days.ts';
import { dueDayByKey, firstDueDay } from '../bench/due.ts';
import type { BenchEvent, Draw } from '../bench/events.ts';
import type { Bench, Reminder } from '../bench/state.ts';
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

const ofDraws = (draws: readonly Draw[]): string[] => draws.map(({ lot }) => lot);

const ofBatch = (bench: Bench, code: string): string[] =>
  ofDraws(bench.batches.get(lotKey(code))?.lines.flatMap(({ draws }) => draws) ?? []);

/** Keys of the lots and batches an event may have made due sooner or later; undefined when it could be any. */
const touched = (before: Bench, event: BenchEvent): readonly string[] | undefined => {
  switch (event.kind) {
    case 'lot-bought':
    case 'lot-dated':
    case 'lot-counted':
    case 'tins-gone':
    case 'tins-back':
      return [event.lot];
    case 'oil-infused':
    case 'stock-taken':
      return ['lot' in event ? event.lot : '', ...ofDraws(event.draws)];
    case 'batch-poured':
      return [event.lot, ...ofDraws(event.lines.flatMap(({ draws }) => draws))];
    case 'batch-corrected':
      return [
        event.lot,
        ...ofBatch(before, event.lot),
        ...ofDraws(event.changes.lines?.flatMap(({ draws }) => draws) ?? []),
      ];
    case 'due-answered':
      return [event.item.slice(event.item.indexOf(':') + 1)];
    case 'lot-opened':
    case 'low-mark-set':
    case 'batch-noted':
    case 'batch-looked':
    case 'reaction-noted':
    case 'reaction-followed':
    case 'reminder-begun':
    case 'reminder-sent':
    case 'reminder-failed':
      return [];
    default:
      return undefined;
  }
};

const touchedBy = (before: Bench, events: readonly BenchEvent[]): readonly string[] | undefined => {
  const codes = events.map((event) => touched(before, event));
  return codes.includes(undefined)
    ? undefined
    : [...new Set(codes.flatMap((each) => each ?? []).map(lotKey))];
};

/** The soonest day after some events, from the one before them, or undefined when everything has to be looked at. */
const moved = (
  before: Bench,
  after: Bench,
  events: readonly BenchEvent[],
  lead: number,
): string | null | undefined => {
  const was = known.get(before);
  const keys = touchedBy(before, events);
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
export const follow = (before: Bench, after: Bench, events: readonly BenchEvent[]): void => {
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
