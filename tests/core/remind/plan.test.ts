import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { firstDueDay } from '../../../core/bench/due.ts';
import type { BenchEvent } from '../../../core/bench/events.ts';
import type { Bench } from '../../../core/bench/state.ts';
import { firstDay } from '../../../core/remind/clock.ts';
import { follow, nextDay, nextTellMs } from '../../../core/remind/next.ts';
import { planFor } from '../../../core/remind/plan.ts';
import { benchAfter } from './bench-after.ts';

const lot = (code: string, bestBefore: string, grams = 100): BenchEvent => ({
  kind: 'lot-bought',
  lot: code,
  ingredient: 'beeswax',
  grams,
  on: '2026-01-01',
  bestBefore,
});

const set = (more: Partial<Extract<BenchEvent, { kind: 'reminder-set' }>> = {}): BenchEvent => ({
  kind: 'reminder-set',
  hour: 9,
  minute: 0,
  zone: 'Europe/Lisbon',
  leadDays: [30, 7, 0],
  channel: 'hall',
  from: '2026-11-25',
  ...more,
});

const sent = (day: string, items: string[] = []): BenchEvent => ({ kind: 'reminder-sent', day, items });

const at = (iso: string): number => Date.parse(iso);

/** "new K12 | open G7", or when it is looked at again. */
const planned = (bench: Bench, iso: string): string => {
  const plan = planFor(bench, at(iso));
  if (plan.kind === 'wait')
    return plan.untilMs === undefined ? 'never' : new Date(plan.untilMs).toISOString();
  const { day, fresh, open } = plan.message;
  const codes = (list: typeof fresh): string => list.map((each) => each.lot).join(' ');
  return `${day} new ${codes(fresh)} | open ${codes(open)}`;
};

// Lisbon is on UTC in winter, so that local times can be read off the instants below.
describe('what is told on a day', () => {
  it('should tell nothing where nothing has a date, nothing is left, or no reminder is set', () => {
    expect(planned(benchAfter([lot('K12', '2026-12-01')]), '2026-11-26T09:00Z')).toBe('never');
    expect(planned(benchAfter([set()]), '2026-11-26T09:00Z')).toBe('never');
    const gone: BenchEvent = { kind: 'lot-counted', lot: 'K12', leftG: 0, on: '2026-11-25' };
    expect(planned(benchAfter([lot('K12', '2026-12-01'), gone, set()]), '2026-11-26T09:00Z')).toBe('never');
  });

  it('should wait for the largest of the lead days, then tell each day until it is answered', () => {
    const bench = benchAfter([lot('K12', '2027-01-10'), set()]);
    // 30 days before 10 January 2027 is 11 December 2026.
    expect(planned(bench, '2026-11-26T09:00Z')).toBe('2026-12-11T09:00:00.000Z');
    expect(planned(bench, '2026-12-11T08:59Z')).toBe('2026-12-11T09:00:00.000Z');
    expect(planned(bench, '2026-12-11T09:00Z')).toBe('2026-12-11 new K12 | open ');
    const told = benchAfter([sent('2026-12-11', ['lot:K12'])], bench);
    expect(planned(told, '2026-12-11T09:01Z')).toBe('2026-12-12T09:00:00.000Z');
    expect(planned(told, '2026-12-12T09:00Z')).toBe('2026-12-12 new  | open K12');
    // Seven days before, it counts as new once more.
    const later = benchAfter([sent('2027-01-02', ['lot:K12'])], told);
    expect(planned(later, '2027-01-03T09:00Z')).toBe('2027-01-03 new K12 | open ');
  });

  it('should leave out what is done for good, and what is put off until its day', () => {
    const bench = benchAfter([
      lot('K12', '2026-12-01'),
      lot('G7', '2026-12-02'),
      set(),
      sent('2026-11-25', ['lot:K12', 'lot:G7']),
    ]);
    const answered = benchAfter(
      [
        { kind: 'due-answered', item: 'lot:K12', answer: 'done', bestBefore: '2026-12-01' },
        {
          kind: 'due-answered',
          item: 'lot:G7',
          answer: 'again',
          until: '2026-12-03',
          bestBefore: '2026-12-02',
        },
      ],
      bench,
    );
    expect(planned(answered, '2026-11-26T09:00Z')).toBe('2026-12-03T09:00:00.000Z');
    expect(planned(answered, '2026-12-03T09:00Z')).toBe('2026-12-03 new G7 | open ');
    // A purchase with a later date is asked about again: the answer was to the other date.
    const bought = benchAfter([lot('K12', '2026-12-20')], answered);
    expect(planned(bought, '2026-11-26T09:00Z')).toBe('2026-11-26 new  | open K12');
  });

  it('should make up missed days once, and a missed hour later on the same day', () => {
    const bench = benchAfter([lot('K12', '2026-12-01'), set(), sent('2026-11-25', ['lot:K12'])]);
    expect(planned(bench, '2026-11-29T17:30Z')).toBe('2026-11-29 new  | open K12');
    const made = benchAfter([sent('2026-11-29', ['lot:K12'])], bench);
    expect(planned(made, '2026-11-29T17:31Z')).toBe('2026-11-30T09:00:00.000Z');
    // Back before the hour: the day's own message covers the missed ones.
    expect(planned(bench, '2026-11-29T07:00Z')).toBe('2026-11-29T09:00:00.000Z');
  });

  it('should begin with the first hour to come', () => {
    const time = { hour: 9, minute: 0, zone: 'Europe/Lisbon' };
    expect(firstDay(at('2026-11-25T08:00Z'), time)).toBe('2026-11-25');
    expect(firstDay(at('2026-11-25T10:00Z'), time)).toBe('2026-11-26');
    const bench = benchAfter([lot('K12', '2026-12-01'), set({ from: '2026-11-26' })]);
    expect(planned(bench, '2026-11-25T10:00Z')).toBe('2026-11-26T09:00:00.000Z');
  });
});

describe('a zone or an hour changed in mid-day', () => {
  const open = [lot('K12', '2026-12-01'), set()];
  const onThe25th = benchAfter([...open, sent('2026-11-25', ['lot:K12'])]);

  it('should not tell the same local day twice when it goes west', () => {
    // 10:00 in Lisbon is midnight in Honolulu (UTC-10): the 25th there begins, and the 25th is told.
    const moved = benchAfter([set({ zone: 'Pacific/Honolulu' })], onThe25th);
    expect(planned(moved, '2026-11-25T10:00Z')).toBe('2026-11-26T19:00:00.000Z');
    expect(planned(moved, '2026-11-25T19:00Z')).toBe('2026-11-26T19:00:00.000Z');
  });

  it('should tell the day that has begun in the east', () => {
    // 10:00 in Lisbon is midnight of the 26th in Kiritimati (UTC+14); nine o'clock there is 19:00 UTC.
    const moved = benchAfter([set({ zone: 'Pacific/Kiritimati' })], onThe25th);
    expect(planned(moved, '2026-11-25T10:00Z')).toBe('2026-11-25T19:00:00.000Z');
    expect(planned(moved, '2026-11-25T19:00Z')).toBe('2026-11-26 new  | open K12');
  });

  it('should tell a day at once whose new hour has passed, and not again at the old one', () => {
    const moved = benchAfter([set({ hour: 8 })], benchAfter([...open, sent('2026-11-24', ['lot:K12'])]));
    expect(planned(moved, '2026-11-25T08:30Z')).toBe('2026-11-25 new  | open K12');
    const told = benchAfter([sent('2026-11-25', ['lot:K12'])], moved);
    expect(planned(told, '2026-11-25T09:00Z')).toBe('2026-11-26T08:00:00.000Z');
  });

  it('should not tell a day again when reminders are stopped and set anew', () => {
    const again = benchAfter(
      [{ kind: 'reminder-stopped' }, set({ hour: 11, from: '2026-11-25' })],
      onThe25th,
    );
    expect(planned(again, '2026-11-25T11:00Z')).toBe('2026-11-26T11:00:00.000Z');
  });

  it('should keep still when the clock is put back', () => {
    expect(planned(onThe25th, '2026-11-23T12:00Z')).toBe('2026-11-26T09:00:00.000Z');
  });
});

describe('a message that could not be posted', () => {
  it('should be tried again the next day, and at once where the reminder is set anew', () => {
    const failed = benchAfter([
      lot('K12', '2026-12-01'),
      set(),
      { kind: 'reminder-failed', day: '2026-11-25', why: 'no-channel', told: true },
    ]);
    expect(failed.reminder?.toldOwner).toBe(true);
    expect(planned(failed, '2026-11-25T12:00Z')).toBe('2026-11-26T09:00:00.000Z');
    const moved = benchAfter([set({ channel: 'kitchen' })], failed);
    expect(planned(moved, '2026-11-25T12:00Z')).toBe('2026-11-25 new K12 | open ');
  });
});

describe('the day of the next message, followed from event to event', () => {
  const code = fc.constantFrom('A', 'B', 'C', 'D');
  const day = fc
    .integer({ min: 0, max: 120 })
    .map((days) => new Date(Date.UTC(2026, 9, 1 + days)).toISOString().slice(0, 10));
  const grams = fc.integer({ min: 1, max: 50 });
  const batch = fc.constantFrom('26-BABA', '26-DODO');
  const some = fc.oneof(
    fc.tuple(code, day, grams).map(([each, on, left]) => lot(each, on, left)),
    fc
      .tuple(code, fc.integer({ min: 0, max: 20 }))
      .map(([each, leftG]): BenchEvent => ({ kind: 'lot-counted', lot: each, leftG, on: '2026-11-25' })),
    fc
      .tuple(code, fc.option(day))
      .map(([each, bestBefore]): BenchEvent => ({ kind: 'lot-dated', lot: each, bestBefore })),
    fc.tuple(code, grams).map(
      ([each, left]): BenchEvent => ({
        kind: 'stock-taken',
        draws: [{ lot: each, grams: left }],
        how: 'used',
        on: '2026-11-25',
      }),
    ),
    fc.tuple(batch, day, code, grams).map(
      ([each, bestBefore, from, left]): BenchEvent => ({
        kind: 'batch-poured',
        lot: each,
        name: 'Winter balm',
        lines: [{ ingredient: 'beeswax', grams: left, draws: [{ lot: from, grams: left }] }],
        count: 3,
        container: 'tin',
        madeOn: '2026-10-01',
        bestBefore,
        because: { kind: 'said' },
        weighedG: left,
      }),
    ),
    fc.tuple(batch, code, grams).map(
      ([each, from, left]): BenchEvent => ({
        kind: 'batch-corrected',
        lot: each,
        changes: { lines: [{ ingredient: 'beeswax', grams: left, draws: [{ lot: from, grams: left }] }] },
        why: 'wrong lot',
      }),
    ),
    fc.tuple(batch, fc.integer({ min: 1, max: 3 })).map(
      ([each, count]): BenchEvent => ({
        kind: 'tins-gone',
        lot: each,
        count,
        how: 'given',
        on: '2026-11-25',
      }),
    ),
    fc.tuple(fc.constantFrom('lot:A', 'lot:B', 'batch:26BABA'), fc.constantFrom('done', 'again'), day).map(
      ([item, answer, until]): BenchEvent => ({
        kind: 'due-answered',
        item,
        answer: answer as 'done' | 'again',
        ...(answer === 'again' ? { until } : {}),
      }),
    ),
    day.map((each) => sent(each)),
    fc.constantFrom(30, 3).map((lead) => set({ leadDays: [lead, 0], from: '2026-10-01' })),
    fc.constant<BenchEvent>({ kind: 'reminder-stopped' }),
  );

  test.prop([fc.array(fc.array(some, { minLength: 1, maxLength: 3 }), { maxLength: 25 })])(
    'should be what looking at everything gives',
    (changes) => {
      let bench = benchAfter([set({ from: '2026-10-01' })]);
      nextDay(bench);
      for (const events of changes) {
        const after = benchAfter(events, bench);
        follow(bench, after, events);
        // The same bench as a new object has nothing noted about it, so everything is looked at.
        expect(nextDay(after)).toBe(nextDay({ ...after }));
        const due = after.reminder && firstDueDay(after, Math.max(...after.reminder.leadDays));
        expect(nextTellMs(after) === undefined).toBe(due === undefined);
        bench = after;
      }
    },
  );
});
