import { it as check, fc } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { lotKey } from '../../../core/bench/codes.ts';
import { type BenchEvent, benchEvent } from '../../../core/bench/events.ts';
import { afterBenchEvent } from '../../../core/bench/fold.ts';
import { type Bench, emptyBench } from '../../../core/bench/state.ts';
import { holdersOf, traceOf } from '../../../core/bench/trace.ts';

const benchOf = (events: readonly BenchEvent[]): Bench =>
  events.reduce((state, event, at) => afterBenchEvent(state, benchEvent.parse(event), at + 1), emptyBench);

const day = '2026-11-25';
const bought = (lot: string, ingredient: string): BenchEvent => ({
  kind: 'lot-bought',
  lot,
  ingredient,
  grams: 1000,
  on: day,
});
const infused = (lot: string, draws: { lot: string; grams: number }[]): BenchEvent => ({
  kind: 'oil-infused',
  lot,
  ingredient: 'olive-oil',
  herbs: ['calendula'],
  grams: 260,
  on: day,
  bestBefore: '2027-05-25',
  because: { kind: 'said' },
  draws,
  short: [],
});
const poured = (lot: string, draws: { lot: string; grams: number }[], madeOn = day): BenchEvent => ({
  kind: 'batch-poured',
  lot,
  name: 'Fernlea hand balm',
  lines: [{ ingredient: 'olive-oil', grams: 50, draws }],
  count: 24,
  container: 'tin',
  madeOn,
  bestBefore: '2027-05-25',
  because: { kind: 'said' },
  weighedG: 50,
});
const gone = (
  lot: string,
  count: number,
  to?: string,
  how: 'given' | 'sold' | 'kept' = 'given',
): BenchEvent => ({
  kind: 'tins-gone',
  lot,
  count,
  how,
  on: day,
  ...(to ? { to } : {}),
});

const bench = benchOf([
  bought('O1', 'olive-oil'),
  bought('C2', 'calendula'),
  bought('B3', 'beeswax'),
  infused('26-INFA', [
    { lot: 'O1', grams: 320 },
    { lot: 'C2', grams: 40 },
  ]),
  poured('26-BABA', [{ lot: '26-INFA', grams: 50 }]),
  poured('26-DADA', [{ lot: 'O1', grams: 50 }], '2026-11-20'),
  poured('26-FAFA', [{ lot: 'B3', grams: 50 }]),
  gone('26-BABA', 6, 'Spring fair'),
  gone('26-BABA', 2, 'spring fair', 'sold'),
  gone('26-BABA', 1, undefined, 'kept'),
  gone('26-DADA', 3),
  { kind: 'tins-back', lot: '26-BABA', count: 1, from: 'spring fair', on: day },
]);

describe('a trace', () => {
  it('should lead from a lot to every batch that holds it, through oil infused in the house', () => {
    const trace = traceOf(bench, 'o1');
    expect(trace?.lots.map(({ lot, grams }) => [lot.lot, grams])).toEqual([['26-INFA', 320]]);
    expect(trace?.batches.map(({ batch, from }) => [batch.lot, from])).toEqual([
      ['26-DADA', ['O1']],
      ['26-BABA', ['26-INFA']],
    ]);
    expect([trace?.out, trace?.left]).toEqual([10, 37]);
  });

  it('should lead from a batch back to every lot, one step behind the other', () => {
    const trace = traceOf(bench, '26 baba');
    expect(trace?.lots.map(({ lot, from }) => [lot.lot, from])).toEqual([
      ['26-INFA', ['O1', 'C2']],
      ['O1', []],
      ['C2', []],
    ]);
    expect(trace?.batches).toHaveLength(1);
  });

  it('should say who holds tins, less what came back, places without a name last', () => {
    const trace = traceOf(bench, 'O1');
    expect(trace && holdersOf(trace)).toEqual([
      { to: 'Spring fair', count: 7, lots: ['26-BABA'] },
      { count: 3, lots: ['26-DADA'] },
    ]);
  });

  it('should find nothing for a code the book does not have, and no batch for a lot nobody drew', () => {
    expect(traceOf(bench, 'ZZ')).toBeUndefined();
    expect(traceOf(benchOf([bought('X', 'beeswax')]), 'X')).toMatchObject({ batches: [], out: 0, left: 0 });
  });

  /** Against a plain search: a lot reaches a batch when a chain of draws leads from one to the other. */
  check.prop([
    fc.array(fc.record({ infuse: fc.boolean(), from: fc.array(fc.nat(20), { maxLength: 3 }) }), {
      minLength: 1,
      maxLength: 20,
    }),
  ])('should find exactly what a plain search finds, both ways', (steps) => {
    const events: BenchEvent[] = [bought('L0', 'olive-oil')];
    const sources = new Map<string, string[]>([['L0', []]]);
    const lots = ['L0'];
    const batches: string[] = [];
    for (const [at, { infuse, from }] of steps.entries()) {
      const code = `L${at + 1}`;
      const codes = [...new Set(from.map((index) => lots[index % lots.length] ?? 'L0'))];
      sources.set(code, codes);
      const draws = codes.map((lot) => ({ lot, grams: 1 }));
      events.push(infuse ? infused(code, draws) : poured(code, draws));
      (infuse ? lots : batches).push(code);
    }
    const reaches = (code: string, root: string): boolean =>
      code === root || (sources.get(code) ?? []).some((source) => reaches(source, root));
    const state = benchOf(events);
    for (const lot of lots) {
      const found = traceOf(state, lot)?.batches.map(({ batch }) => batch.lot);
      expect(new Set(found)).toEqual(new Set(batches.filter((batch) => reaches(batch, lot))));
    }
    for (const batch of batches) {
      const found = traceOf(state, batch)?.lots.map(({ lot }) => lotKey(lot.lot));
      expect(new Set(found)).toEqual(new Set(lots.filter((lot) => reaches(batch, lot))));
    }
  });
});
