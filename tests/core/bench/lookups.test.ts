import { it as check, fc } from '@fast-check/vitest';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { lotKey } from '../../../core/bench/codes.ts';
import { daysBetween, plusDays } from '../../../core/bench/days.ts';
import { batchesWithTins, type Due, dueBy, dueIn } from '../../../core/bench/due.ts';
import type { BenchEvent } from '../../../core/bench/events.ts';
import { afterBenchEvent } from '../../../core/bench/fold.ts';
import { latestBatches, latestOf } from '../../../core/bench/latest.ts';
import { type Batch, type Bench, emptyBench, tinsLeft } from '../../../core/bench/state.ts';
import { traceOf } from '../../../core/bench/trace.ts';
import { afterBenchPut, type BenchPut } from '../../../core/parts/put-bench.ts';

const on = '2026-11-25';
const day = fc.integer({ min: -20, max: 40 }).map((days) => plusDays(on, days));
const lots = ['K1', 'K2', '26-LULA'];
const batches = ['26-BABA', '26-DODO', '26-FIFI'];
const lot = fc.constantFrom(...lots);
const batch = fc.constantFrom(...batches);
const grams = fc.integer({ min: 1, max: 60 });
const draws = fc
  .uniqueArray(lot, { maxLength: 2 })
  .map((codes) => codes.map((each) => ({ lot: each, grams: 30 })));

const because = { kind: 'said' } as const;

const event: fc.Arbitrary<BenchEvent> = fc.oneof(
  fc.record({
    kind: fc.constant('lot-bought' as const),
    lot,
    ingredient: fc.constantFrom('beeswax', 'olive-oil'),
    grams,
    on: day,
    bestBefore: day,
  }),
  fc.tuple(fc.constantFrom('K2', '26-LULA'), draws, grams, day).map(
    ([code, from, each, bestBefore]): BenchEvent => ({
      kind: 'oil-infused',
      lot: code,
      ingredient: 'olive-oil',
      herbs: ['calendula'],
      grams: each,
      on,
      bestBefore,
      because,
      draws: from,
      short: [],
    }),
  ),
  fc.record({ kind: fc.constant('lot-dated' as const), lot, bestBefore: fc.option(day, { nil: null }) }),
  fc.record({
    kind: fc.constant('lot-counted' as const),
    lot,
    leftG: fc.constantFrom(0, 20),
    on: day,
  }),
  fc.tuple(batch, draws, day, day).map(
    ([code, from, madeOn, bestBefore]): BenchEvent => ({
      kind: 'batch-poured',
      lot: code,
      name: code === '26-FIFI' ? 'Winter balm' : 'Hall balm',
      lines: [{ ingredient: 'olive-oil', grams: 60, draws: from }],
      count: 3,
      container: 'tin',
      madeOn,
      bestBefore,
      because,
      weighedG: 60,
    }),
  ),
  fc.tuple(batch, draws, day).map(
    ([code, from, madeOn]): BenchEvent => ({
      kind: 'batch-corrected',
      lot: code,
      changes: { madeOn, lines: [{ ingredient: 'olive-oil', grams: 60, draws: from }] },
      why: 'read wrong',
    }),
  ),
  fc
    .tuple(batch, fc.integer({ min: 1, max: 3 }))
    .map(([code, count]): BenchEvent => ({ kind: 'tins-gone', lot: code, count, how: 'given', on })),
  fc
    .tuple(batch, fc.integer({ min: 1, max: 2 }))
    .map(([code, count]): BenchEvent => ({ kind: 'tins-back', lot: code, count, on })),
  fc
    .tuple(
      fc.constantFrom(...lots, ...batches),
      fc.constantFrom('done', 'again', 'used-up'),
      fc.boolean(),
      day,
    )
    .map(
      ([code, answer, dated, until]): BenchEvent => ({
        kind: 'due-answered',
        item: `${lots.includes(code) ? 'lot' : 'batch'}:${lotKey(code)}`,
        answer: answer as 'done',
        ...(answer === 'again' ? { until } : {}),
        ...(dated ? { bestBefore: until } : {}),
      }),
    ),
);

interface PutAsked {
  readonly part: 'lots' | 'batches' | 'answers';
  readonly code: string;
  readonly back: number;
}

/** One thing put back as it stood some steps ago, as an undoing does, or taken away when it was not there. */
const put: fc.Arbitrary<PutAsked> = fc.record({
  part: fc.constantFrom('lots' as const, 'batches' as const, 'answers' as const),
  code: fc.constantFrom(...lots, ...batches),
  back: fc.nat(8),
});

const putFrom = (past: readonly Bench[], { part, code, back }: PutAsked): BenchPut => {
  const before = past.at(-1 - back) ?? emptyBench;
  const key = lotKey(code);
  const id = part === 'answers' ? `${lots.includes(code) ? 'lot' : 'batch'}:${key}` : key;
  const parts = { lots: 'lot', batches: 'batch', answers: 'answer' } as const;
  return { part: parts[part], id, value: before[part].get(id) ?? null } as BenchPut;
};

type PlainDue = Pick<Due, 'kind' | 'what' | 'bestBefore'> & { key: string; done: boolean };

/** What is due, found by looking at everything. */
const plainDue = (bench: Bench): PlainDue[] => {
  const isDone = (item: string, bestBefore: string): boolean => {
    const answer = bench.answers.get(item);
    return answer?.answer === 'done' && (answer.bestBefore ?? bestBefore) === bestBefore;
  };
  const found: PlainDue[] = [];
  for (const [key, { ingredient: what, bestBefore, leftG }] of bench.lots)
    if (bestBefore && leftG > 0)
      found.push({ kind: 'lot' as const, what, bestBefore, key, done: isDone(`lot:${key}`, bestBefore) });
  for (const [key, each] of bench.batches)
    if (tinsLeft(each) > 0) {
      const { name: what, bestBefore } = each;
      found.push({ kind: 'batch' as const, what, bestBefore, key, done: isDone(`batch:${key}`, bestBefore) });
    }
  const orderOf = ({ kind, key, bestBefore }: PlainDue) => `${bestBefore} ${kind}:${key}`;
  return found.sort((a, b) => (orderOf(a) < orderOf(b) ? -1 : 1));
};

const checkDue = (bench: Bench): void => {
  const all = plainDue(bench);
  const open = all.filter(({ done }) => !done);
  const [from, until] = [plusDays(on, -5), plusDays(on, 10)];
  for (const kind of [undefined, 'lot', 'batch'] as const)
    for (const what of [undefined, 'beeswax', 'Hall balm']) {
      const about = (each: PlainDue) =>
        (kind ?? each.kind) === each.kind && (what ?? each.what) === each.what;
      const inside = (each: PlainDue) => each.bestBefore >= from && each.bestBefore <= until;
      const fits = what === undefined ? undefined : (said: string) => said === what;
      const found = dueIn(bench, { on, from, until, kind, fits, most: 2 });
      const listed = open.filter(about).filter(inside);
      expect(found.due.map(({ item }) => item)).toEqual(
        listed.slice(0, 2).map(({ kind: is, key }) => `${is}:${key}`),
      );
      expect([found.count, found.older, found.done]).toEqual([
        listed.length,
        open.filter(about).filter(({ bestBefore }) => bestBefore < from).length,
        all
          .filter(({ done }) => done)
          .filter(about)
          .filter(inside).length,
      ]);
    }
  const put = (item: string) => bench.answers.get(item);
  const off = ({ kind, key, bestBefore }: PlainDue) => {
    const answer = put(`${kind}:${key}`);
    const stands = (answer?.bestBefore ?? bestBefore) === bestBefore && answer?.answer === 'again';
    return stands && (answer?.until ?? '') > on;
  };
  expect(dueBy(bench, on, until).map(({ item }) => item)).toEqual(
    open.filter((each) => each.bestBefore <= until && !off(each)).map(({ kind, key }) => `${kind}:${key}`),
  );
};

const checkLatest = (bench: Bench): void => {
  const sorted = [...bench.batches.values()].sort((a, b) =>
    a.madeOn === b.madeOn ? b.seq - a.seq : a.madeOn < b.madeOn ? 1 : -1,
  );
  expect([...latestBatches(bench)]).toEqual(sorted);
  expect(batchesWithTins(bench)).toBe(sorted.filter((batch) => tinsLeft(batch) > 0).length);
  const isHall = ({ name }: Batch) => name === 'Hall balm';
  const { latest, count } = latestOf(bench, isHall, 1);
  expect([latest, count]).toEqual([sorted.filter(isHall).slice(0, 1), sorted.filter(isHall).length]);
};

const checkTraces = (bench: Bench): void => {
  const drew = (from: readonly { lot: string }[] | undefined, code: string) =>
    from?.some((draw) => lotKey(draw.lot) === lotKey(code)) === true;
  for (const { lot: code } of bench.lots.values()) {
    const reached = new Set([lotKey(code)]);
    for (const each of reached)
      for (const [key, made] of bench.lots) if (drew(made.draws, each)) reached.add(key);
    const holding = [...bench.batches.values()].filter(({ lines }) =>
      lines.some((line) => [...reached].some((each) => drew(line.draws, each))),
    );
    const trace = traceOf(bench, code);
    expect(new Set(trace?.batches.map((each) => each.batch))).toEqual(new Set(holding));
    expect(new Set(trace?.lots.map((each) => lotKey(each.lot.lot)))).toEqual(
      new Set([...reached].slice(1).filter((key) => bench.lots.has(key))),
    );
  }
};

describe('what is looked up by day and by lot', () => {
  check.prop([
    fc.array(fc.oneof({ weight: 5, arbitrary: event }, { weight: 1, arbitrary: put }), {
      minLength: 10,
      maxLength: 40,
      size: 'max',
    }),
  ])('should be what looking at everything finds, after any events and undoings', (steps) => {
    let bench = emptyBench;
    const past = [bench];
    for (const [at, step] of steps.entries()) {
      bench =
        'kind' in step
          ? afterBenchEvent(bench, step, at + 1)
          : afterBenchPut(bench, putFrom(past, step), at + 1);
      past.push(bench);
      checkDue(bench);
      checkLatest(bench);
      checkTraces(bench);
    }
  });
});

describe('days', () => {
  const any = fc
    .date({
      min: new Date('1900-01-01T00:00:00Z'),
      max: new Date('2199-12-31T00:00:00Z'),
      noInvalidDate: true,
    })
    .map((date) => date.toISOString().slice(0, 10));

  check.prop([any, any, fc.integer({ min: -4000, max: 4000 })])(
    'should be counted as the calendar of the Temporal standard counts them',
    (from, to, days) => {
      const date = Temporal.PlainDate.from(from);
      expect(daysBetween(from, to)).toBe(date.until(to, { largestUnit: 'days' }).days);
      expect(plusDays(from, days)).toBe(date.add({ days }).toString());
    },
  );

  it('should not be made of what is no day', () => {
    expect(() => plusDays('next May', 1)).toThrow(RangeError);
    expect(() => daysBetween('2027-02-28', '')).toThrow(RangeError);
  });
});
