import { describe, expect, it } from 'vitest';
import { tellMs } from '../../../core/remind/clock.ts';
import { type Told, tellDaily } from './tell-daily.ts';
import { dayMs, type Jump, jumpsIn, nextIsoDay, offsetAt, wallAt } from './zone-reference.ts';

const zones = Intl.supportedValuesOf('timeZone');
const from = Date.UTC(2026, 0, 1);
const to = Date.UTC(2029, 0, 1);
/** `whole` looks at every zone by its name, `1/2` and `2/2` at half of them each, for two processes. */
const asked = process.env.EVERY_ZONE ?? '';
const [part = 1, parts = 1] = /^\d+\/\d+$/.test(asked) ? asked.split('/').map(Number) : [];
const everything = asked === 'whole' || parts > 1;
const named = zones.filter((_, at) => at % parts === part - 1);

const jumps = new Map(zones.map((zone) => [zone, jumpsIn(zone, from, to)]));

const clock = (minutes: number): string => {
  const inDay = ((minutes % 1440) + 1440) % 1440;
  return `${String(Math.floor(inDay / 60)).padStart(2, '0')}:${String(inDay % 60).padStart(2, '0')}`;
};

/** Minutes after local midnight, read by the clock as it stood before the jump. */
const localMinutes = ({ atMs, before }: Jump): number => (atMs / 60_000 + before) % 1440;

/** Times of day around a jump: before it, in the middle of what is left out or comes twice, at its ends. */
const timesAround = (jump: Jump): readonly string[] => {
  const start = localMinutes(jump);
  const size = jump.after - jump.before;
  return [start - 60, start - 1, start, start + size / 2, start + size, start + 60].map(clock);
};

/** What is wrong with a row of messages: each is on the day after the one before, at its time unless the clocks moved. */
const faultsOf = (told: readonly Told[], zone: string, time: string): string[] =>
  told.flatMap(({ atMs, day }, index) => {
    const wall = wallAt(atMs, zone);
    const before = told[index - 1];
    // The first may be made up for an hour that had passed before the row begins.
    const near = index === 0 || offsetAt(atMs - dayMs / 2, zone) !== offsetAt(atMs + dayMs / 2, zone);
    return [
      ...(wall.day === day ? [] : [`${zone} ${time}: ${day} told on ${wall.day}`]),
      ...(before && wall.day !== nextIsoDay(before.day)
        ? [`${zone} ${time}: ${wall.day} after ${before.day}`]
        : []),
      ...(wall.time === time || near ? [] : [`${zone} ${time}: ${day} told at ${wall.time}`]),
    ];
  });

const daysBetween = (fromDay: string, toDay: string): number =>
  (Date.parse(`${toDay}T00:00:00Z`) - Date.parse(`${fromDay}T00:00:00Z`)) / dayMs;

/** Tells daily between two instants and looks at every message with the independent clock. */
const faultsBetween = (zone: string, time: string, startMs: number, endMs: number): string[] => {
  const told = tellDaily({ zone, time, startMs, endMs });
  const days = daysBetween(wallAt(startMs, zone).day, wallAt(endMs, zone).day);
  const count =
    Math.abs(told.length - days) <= 1 ? [] : [`${zone} ${time}: ${told.length} messages in ${days} days`];
  return [...count, ...faultsOf(told, zone, time)];
};

/** Zones whose clocks jump at the same instants by the same amount differ in nothing the reckoning looks at. */
const byRules = (): string[] => {
  const seen = new Map<string, string>();
  for (const zone of zones) {
    const rules = JSON.stringify([offsetAt(from, zone), jumps.get(zone)]);
    if (!seen.has(rules)) seen.set(rules, zone);
  }
  return [...seen.values()];
};

describe('every IANA zone over three years', () => {
  it('should know zones that change their clocks and zones that do not', () => {
    const changing = zones.filter((zone) => (jumps.get(zone) ?? []).length > 0);
    expect(zones.length).toBeGreaterThan(400);
    expect(changing.length).toBeGreaterThan(100);
    expect(changing.length).toBeLessThan(zones.length);
  });

  it('should tell once a day in the days around both clock changes, at every time near them', {
    timeout: 240_000,
  }, () => {
    const faults = named.flatMap((zone) =>
      (jumps.get(zone) ?? []).flatMap((jump) =>
        [...new Set([...timesAround(jump), '00:00', '23:59', '09:00'])].flatMap((time) =>
          faultsBetween(zone, time, jump.atMs - 2.5 * dayMs, jump.atMs + 2.5 * dayMs),
        ),
      ),
    );
    expect(faults).toEqual([]);
  });

  const whole = everything ? named : byRules();
  it(`should tell once on each of the 1,096 days, in ${whole.length} zones`, { timeout: 1_800_000 }, () => {
    const faults = whole.flatMap((zone) => {
      const [jump] = jumps.get(zone) ?? [];
      const time = jump ? (timesAround(jump)[3] ?? '02:30') : '02:30';
      return faultsBetween(zone, time, from, to);
    });
    expect(faults).toEqual([]);
  });
});

/**
 * Dates of clock changes by the IANA tz database 2025b (files europe, northamerica, australasia, africa; rules EU, US, LH,
 * AN, and Nuuk's zone lines): EU last Sundays of March and October at 01:00 UTC; US second Sunday of March and first of
 * November at 02:00; Lord Howe first Sundays of October and April at 02:00 by half an hour. Sundays by the calendar.
 */
const published: readonly (readonly [zone: string, day: string, time: string, utc: string])[] = [
  // Spring forward: 01:00 to 02:00 in Lisbon, 02:00 to 03:00 in Berlin; half past is told an hour later by the clock.
  ['Europe/Lisbon', '2027-03-28', '01:30', '2027-03-28T01:30:00Z'],
  ['Europe/Berlin', '2027-03-28', '02:30', '2027-03-28T01:30:00Z'],
  ['Europe/London', '2026-03-29', '01:30', '2026-03-29T01:30:00Z'],
  ['America/New_York', '2027-03-14', '02:30', '2027-03-14T07:30:00Z'],
  // Fall back: the hour that comes twice is told the first time, in summer time.
  ['Europe/Lisbon', '2027-10-31', '01:30', '2027-10-31T00:30:00Z'],
  ['Europe/Berlin', '2027-10-31', '02:30', '2027-10-31T00:30:00Z'],
  ['America/New_York', '2027-11-07', '01:30', '2027-11-07T05:30:00Z'],
  // Half an hour only: UTC+10:30 and +11.
  ['Australia/Lord_Howe', '2027-10-03', '02:15', '2027-10-02T15:45:00Z'],
  ['Australia/Lord_Howe', '2027-04-04', '01:45', '2027-04-03T14:45:00Z'],
  // Plain days on either side.
  ['Europe/Lisbon', '2027-03-27', '09:00', '2027-03-27T09:00:00Z'],
  ['Europe/Lisbon', '2027-03-29', '09:00', '2027-03-29T08:00:00Z'],
  ['Asia/Kathmandu', '2027-01-01', '09:00', '2027-01-01T03:15:00Z'],
];

describe('days and hours that do not exist, or exist twice', () => {
  it.each(published)('should tell %s on %s at %s at %s', (zone, day, time, utc) => {
    const [hour = 0, minute = 0] = time.split(':').map(Number);
    const at = tellMs(day, { hour, minute, zone });
    expect(at === undefined ? undefined : new Date(at).toISOString()).toBe(utc.replace('Z', '.000Z'));
  });

  it('should keep to the day when the clocks jump over midnight', () => {
    // Nuuk goes from 23:00 on Saturday to 00:00 on Sunday (01:00 UTC on 28 March 2027, UTC-2 to UTC-1).
    const at = tellMs('2027-03-27', { hour: 23, minute: 30, zone: 'America/Nuuk' });
    expect(at).toBe(Date.UTC(2027, 2, 28, 0, 30));
    expect(wallAt(at ?? 0, 'America/Nuuk')).toEqual({ day: '2027-03-27', time: '22:30' });
  });

  it('should tell nothing on a day that was left out', () => {
    // Samoa crossed the date line: Apia had no 30 December 2011 (tz database, australasia).
    const nine = { hour: 9, minute: 0, zone: 'Pacific/Apia' };
    expect(tellMs('2011-12-30', nine)).toBeUndefined();
    expect(
      tellDaily({
        zone: nine.zone,
        time: '09:00',
        startMs: Date.UTC(2011, 11, 28, 10),
        endMs: Date.UTC(2012, 0, 1, 10),
      }).map(({ day }) => day),
    ).toEqual(['2011-12-28', '2011-12-29', '2011-12-31', '2012-01-01']);
  });
});
