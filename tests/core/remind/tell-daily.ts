import { afterBenchEvent } from '../../../core/bench/fold.ts';
import { type Plan, planFor } from '../../../core/remind/plan.ts';
import { benchAfter } from './bench-after.ts';

export interface Told {
  readonly atMs: number;
  readonly day: string;
}

export interface Daily {
  readonly zone: string;
  /** "09:00". */
  readonly time: string;
  readonly startMs: number;
  readonly endMs: number;
}

/**
 * A group with one lot long past its date, told every day from `startMs` to `endMs` by the same steps the sweep takes: look
 * what is planned, sleep until then, tell, write it down. Steps from instant to instant, so three years take no time.
 */
export const tellDaily = ({ zone, time, startMs, endMs }: Daily): readonly Told[] => {
  const [hour = 0, minute = 0] = time.split(':').map(Number);
  let bench = benchAfter([
    {
      kind: 'lot-bought',
      lot: 'K12',
      ingredient: 'beeswax',
      grams: 100,
      on: '2010-01-01',
      bestBefore: '2010-06-01',
    },
    { kind: 'reminder-set', hour, minute, zone, leadDays: [30, 7, 0], channel: 'hall' },
  ]);
  const told: Told[] = [];
  for (let now = startMs; now < endMs; ) {
    const plan: Plan = planFor(bench, now);
    if (plan.kind === 'wait') {
      if (plan.untilMs === undefined || plan.untilMs <= now)
        throw new Error(`stuck at ${new Date(now).toISOString()}`);
      now = plan.untilMs;
      continue;
    }
    const { day, fresh, open } = plan.message;
    if (fresh.length + open.length === 0) throw new Error('a message about nothing');
    told.push({ atMs: now, day });
    bench = afterBenchEvent(bench, { kind: 'reminder-sent', day, items: ['lot:K12'] }, 1);
  }
  return told;
};
