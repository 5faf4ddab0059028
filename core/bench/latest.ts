import { type Days, daysIn } from './lookup.ts';
import { madeDays } from './lookups.ts';
import type { Batch, Bench } from './state.ts';

/** The latest made comes first; of one day the one that was last told of. */
const laterFirst = (a: Batch, b: Batch): number =>
  a.madeOn === b.madeOn ? b.seq - a.seq : a.madeOn < b.madeOn ? 1 : -1;

/** Batches one by one, the latest first, of all days or of a stretch of them. Whoever stops early pays for what was seen. */
export function* latestBatches(bench: Bench, made: Days = {}): Generator<Batch> {
  const days = madeDays.of(bench);
  for (const day of daysIn(days, made).reverse())
    yield* [...(days.get(day) ?? [])].flatMap((key) => bench.batches.get(key) ?? []).sort(laterFirst);
}

export interface Latest {
  /** The latest of them, the latest first. */
  readonly latest: readonly Batch[];
  /** How many fit in all. */
  readonly count: number;
}

/** The latest `most` of the batches that fit, and the number of all of them. One look at each, nothing is sorted. */
export const latestOf = (bench: Bench, fits: (batch: Batch) => boolean, most: number): Latest => {
  const latest: Batch[] = [];
  let count = 0;
  for (const batch of bench.batches.values()) {
    if (!fits(batch)) continue;
    count += 1;
    const last = latest.at(-1);
    if (latest.length === most && last && laterFirst(last, batch) < 0) continue;
    const place = latest.findIndex((each) => laterFirst(batch, each) < 0);
    latest.splice(place < 0 ? latest.length : place, 0, batch);
    if (latest.length > most) latest.pop();
  }
  return { latest, count };
};
