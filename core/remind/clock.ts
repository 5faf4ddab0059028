import { Temporal } from 'temporal-polyfill';
import { localDay } from '../bench/days.ts';

/** When a group is told: a time of day in an IANA zone. */
export interface TellTime {
  readonly hour: number;
  readonly minute: number;
  readonly zone: string;
}

/**
 * The instant (epoch ms) at which a local day is told. A time that the clocks jump over is told as much later as they
 * jumped, one that comes twice the first time; if later would be another day, then as much earlier. Undefined for a day
 * that a zone has left out altogether, as Apia did on 30 December 2011.
 */
export const tellMs = (day: string, { hour, minute, zone }: TellTime): number | undefined => {
  const date = Temporal.PlainDate.from(day);
  const wall = date.toPlainDateTime({ hour, minute });
  for (const disambiguation of ['compatible', 'earlier'] as const) {
    const at = wall.toZonedDateTime(zone, { disambiguation });
    if (at.toPlainDate().equals(date)) return at.epochMilliseconds;
  }
  return undefined;
};

/** Most days in a row that no zone ever left out. */
const mostMissing = 3;

/** The first instant at which a day from `day` on is told. */
export const tellMsFrom = (day: string, time: TellTime): number | undefined => {
  const first = Temporal.PlainDate.from(day);
  for (let days = 0; days <= mostMissing; days += 1) {
    const at = tellMs(first.add({ days }).toString(), time);
    if (at !== undefined) return at;
  }
  return undefined;
};

/** The local day that is to be told at an instant, were it not told yet: undefined before its hour. */
export const dayAt = (nowMs: number, time: TellTime): string | undefined => {
  const today = localDay(nowMs, time.zone);
  const at = tellMs(today, time);
  return at !== undefined && at <= nowMs ? today : undefined;
};

/**
 * The first day a new reminder owes: today if its hour is still to come, else tomorrow. Whoever sets a reminder at ten
 * for nine is not told at once.
 */
export const firstDay = (nowMs: number, time: TellTime): string => {
  const today = localDay(nowMs, time.zone);
  return dayAt(nowMs, time) === undefined
    ? today
    : Temporal.PlainDate.from(today).add({ days: 1 }).toString();
};
