import { it as check, fc } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { lotKey } from '../../../core/bench/codes.ts';
import { drawFor, drawForAll, inStockG } from '../../../core/bench/draw.ts';
import { dueBy, dueIn } from '../../../core/bench/due.ts';
import type { BenchEvent } from '../../../core/bench/events.ts';
import { benchEvent } from '../../../core/bench/events.ts';
import { sumG } from '../../../core/bench/exact.ts';
import { afterBenchEvent } from '../../../core/bench/fold.ts';
import { benchFromKept, keptBench } from '../../../core/bench/keep.ts';
import { pourFrom, type WeighedLine } from '../../../core/bench/pour.ts';
import { type Bench, emptyBench, tinsLeft, tinsOut } from '../../../core/bench/state.ts';

const benchAfter = (events: readonly BenchEvent[], bench: Bench = emptyBench): Bench =>
  events.reduce((state, event, at) => afterBenchEvent(state, benchEvent.parse(event), at + 1), bench);

const bought = (lot: string, grams: number, bestBefore?: string, ingredient = 'beeswax'): BenchEvent => ({
  kind: 'lot-bought',
  lot,
  ingredient,
  grams,
  on: '2026-11-01',
  ...(bestBefore ? { bestBefore } : {}),
});

const poured = (lot: string, draws: { lot: string; grams: number }[]): BenchEvent => ({
  kind: 'batch-poured',
  lot,
  name: 'Fernlea hand balm',
  lines: [{ ingredient: 'beeswax', grams: 10, draws }],
  count: 24,
  container: 'tin',
  madeOn: '2026-11-25',
  bestBefore: '2027-05-14',
  because: { kind: 'said' },
  weighedG: 10,
});

const today = '2026-11-25';
const left = (bench: Bench, code: string) => bench.lots.get(lotKey(code))?.leftG;

describe('draw-down', () => {
  it('should take the oldest best before first and split over lots', () => {
    const bench = benchAfter([
      bought('A', 100, '2027-06-30'),
      bought('B', 30, '2027-01-31'),
      bought('C', 500),
    ]);
    const drawn = drawFor(bench, { ingredient: 'beeswax', grams: 150 }, today);
    expect(drawn.draws).toEqual([
      { lot: 'B', grams: 30 },
      { lot: 'A', grams: 100 },
      { lot: 'C', grams: 20 },
    ]);
    expect(drawn.shortG).toBe(0);
  });

  it('should say what no lot covers', () => {
    const bench = benchAfter([bought('A', 100.1)]);
    expect(drawFor(bench, { ingredient: 'beeswax', grams: 150.3 }, today)).toMatchObject({ shortG: 50.2 });
  });

  it('should leave an expired lot alone and tell of it, unless the maker named it', () => {
    const bench = benchAfter([bought('OLD', 100, '2026-11-24'), bought('NEW', 10, '2027-11-24')]);
    expect(drawFor(bench, { ingredient: 'beeswax', grams: 50 }, today)).toEqual({
      draws: [{ lot: 'NEW', grams: 10 }],
      shortG: 40,
      expired: ['OLD'],
      unfit: [],
    });
    const named = drawFor(bench, { ingredient: 'beeswax', grams: 50, from: ['old'] }, today);
    expect(named).toMatchObject({ draws: [{ lot: 'OLD', grams: 50 }], expired: ['OLD'] });
  });

  it('should draw the lots the maker named before older ones, and name what does not fit', () => {
    const bench = benchAfter([bought('A', 100, '2027-01-31'), bought('B', 100, '2028-01-31')]);
    const drawn = drawFor(bench, { ingredient: 'beeswax', grams: 120, from: ['B', 'ZZ'] }, today);
    expect(drawn.draws).toEqual([
      { lot: 'B', grams: 100 },
      { lot: 'A', grams: 20 },
    ]);
    expect(drawn.unfit).toEqual(['ZZ']);
  });

  const infused: BenchEvent = {
    kind: 'oil-infused',
    lot: '26-KIVO',
    ingredient: 'olive-oil',
    herbs: ['calendula'],
    grams: 260,
    on: '2026-11-20',
    bestBefore: '2027-05-20',
    because: { kind: 'said' },
    draws: [{ lot: 'O1', grams: 320 }],
    short: [],
  };

  it('should keep plain oil and oil infused in the house apart', () => {
    const bench = benchAfter([bought('O1', 500, '2027-12-31', 'olive-oil'), infused]);
    expect(left(bench, 'O1')).toBe(180);
    expect(drawFor(bench, { ingredient: 'olive-oil', grams: 200 }, today).draws).toEqual([
      { lot: 'O1', grams: 180 },
    ]);
    const wanted = { ingredient: 'olive-oil', infusedWith: 'calendula', grams: 200 };
    expect(drawFor(bench, wanted, today).draws).toEqual([{ lot: '26-KIVO', grams: 200 }]);
  });

  it('should draw an infused lot for a plain line where the maker named it, unless another line wants just that', () => {
    const bench = benchAfter([bought('O1', 500, '2027-12-31', 'olive-oil'), infused]);
    const plain = { ingredient: 'olive-oil', grams: 50 };
    const drawsOf = (lines: WeighedLine[]) => {
      const pour = pourFrom(bench, { madeOn: today, lines, from: ['26-KIVO'] });
      return pour.ok ? pour.value.lines.map(({ draws }) => draws) : undefined;
    };
    expect(drawsOf([plain])).toEqual([[{ lot: '26-KIVO', grams: 50 }]]);
    expect(drawsOf([plain, { ...plain, grams: 60, infusedWith: 'calendula' }])).toEqual([
      [{ lot: 'O1', grams: 50 }],
      [{ lot: '26-KIVO', grams: 60 }],
    ]);
  });

  it('should not give the same grams to two lines', () => {
    const bench = benchAfter([bought('A', 100)]);
    const need = { ingredient: 'beeswax', grams: 70 };
    expect(drawForAll(bench, [need, need], today).map(({ shortG }) => shortG)).toEqual([0, 40]);
  });

  check.prop([
    fc.array(fc.tuple(fc.integer({ min: 1, max: 1_000_000 }), fc.option(fc.integer({ min: 0, max: 700 }))), {
      maxLength: 8,
    }),
    fc.integer({ min: 1, max: 3_000_000 }),
  ])('should always draw and miss exactly what is wanted, to the milligram', (lots, wantedMg) => {
    const bench = benchAfter(
      lots.map(([mg, day], at) =>
        bought(
          `L${at}`,
          mg / 1000,
          day === null ? undefined : new Date(Date.UTC(2026, 0, day + 1)).toISOString().slice(0, 10),
        ),
      ),
    );
    const drawn = drawFor(bench, { ingredient: 'beeswax', grams: wantedMg / 1000 }, today);
    expect(sumG([...drawn.draws.map(({ grams }) => grams), drawn.shortG])).toBe(wantedMg / 1000);
    const next = benchAfter(
      [
        poured(
          '26-BABA',
          drawn.draws.map((each) => ({ ...each })),
        ),
      ],
      bench,
    );
    const before = sumG([...bench.lots.values()].map(({ leftG }) => leftG));
    const now = sumG([...next.lots.values()].map(({ leftG }) => leftG));
    expect(sumG([now, ...drawn.draws.map(({ grams }) => grams)])).toBe(before);
  });
});

describe('the fold', () => {
  it('should add what is bought again to what is left of a lot', () => {
    const bench = benchAfter([
      bought('K12', 500),
      poured('26-BABA', [{ lot: 'k12', grams: 100 }]),
      bought('K 12', 250),
    ]);
    expect(bench.lots.size).toBe(1);
    expect(bench.lots.get('K12')).toMatchObject({ gotG: 750, leftG: 650 });
  });

  it('should give back what a corrected pour had drawn', () => {
    const lines = [{ ingredient: 'beeswax', grams: 30, draws: [{ lot: 'B', grams: 30 }] }];
    const bench = benchAfter([
      bought('A', 100),
      bought('B', 100),
      poured('26-BABA', [{ lot: 'A', grams: 10 }]),
      {
        kind: 'batch-corrected',
        lot: '26-BABA',
        changes: { lines, weighedG: 30 },
        why: 'wrong lot written down',
      },
    ]);
    expect([left(bench, 'A'), left(bench, 'B')]).toEqual([100, 70]);
    expect(bench.batches.get('26BABA')).toMatchObject({
      weighedG: 30,
      corrected: ['wrong lot written down'],
    });
  });

  it('should count containers in and out of the house', () => {
    const bench = benchAfter([
      poured('26-BABA', []),
      { kind: 'tins-gone', lot: '26-BABA', count: 6, how: 'given', to: 'spring fair', on: today },
      { kind: 'tins-gone', lot: '26-BABA', count: 1, how: 'kept', on: today },
      { kind: 'tins-back', lot: '26-BABA', count: 2, from: 'spring fair', on: today },
    ]);
    const batch = bench.batches.get('26BABA');
    expect(batch && [tinsLeft(batch), tinsOut(batch)]).toEqual([19, 4]);
  });

  it('should come back from a snapshot as it was', () => {
    const bench = benchAfter([
      bought('A', 100, '2027-01-31'),
      poured('26-BABA', [{ lot: 'A', grams: 10 }]),
      { kind: 'low-mark-set', ingredient: 'beeswax', grams: 200 },
      { kind: 'reminder-set', hour: 9, minute: 0, zone: 'Europe/Lisbon', leadDays: [30, 7, 0], channel: 'c' },
      { kind: 'reaction-noted', id: 'R1', on: today, heardOn: today, signs: 'rash' },
      { kind: 'due-answered', item: 'lot:A', answer: 'again', until: '2026-12-02' },
    ]);
    const again = benchFromKept(JSON.parse(JSON.stringify(keptBench(bench))));
    expect(again && keptBench(again)).toEqual(keptBench(bench));
    expect(benchFromKept({ lots: [] })).toBeUndefined();
  });
});

describe('what is due', () => {
  const bench = benchAfter([
    bought('A', 100, '2026-12-10'),
    bought('B', 100, '2027-12-10'),
    poured('26-BABA', [{ lot: 'A', grams: 100 }]),
    bought('C', 5, '2026-11-20'),
  ]);

  it('should list lots and batches with something left, soonest first', () => {
    expect(dueBy(bench, today, '2027-06-30').map(({ item, daysLeft }) => [item, daysLeft])).toEqual([
      ['lot:C', -5],
      ['batch:26BABA', 170],
    ]);
  });

  it('should leave out what was answered, until it is asked for again', () => {
    const later = benchAfter(
      [{ kind: 'due-answered', item: 'lot:C', answer: 'again', until: '2026-12-02' }],
      bench,
    );
    expect(dueBy(later, today, '2026-12-31')).toEqual([]);
    expect(dueBy(later, '2026-12-02', '2026-12-31').map(({ item }) => item)).toEqual(['lot:C']);
    const { due, count } = dueIn(later, { on: today, until: '2026-12-31', most: 10 });
    expect([due.map(({ answer }) => answer?.until), count]).toEqual([['2026-12-02'], 1]);
  });

  it('should count what may be used on a day', () => {
    expect(inStockG(bench, today)).toEqual(new Map([['beeswax', 100]]));
  });
});
