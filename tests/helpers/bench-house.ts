import type { BenchEvent } from '../../core/bench/events.ts';
import { now, type TestHouse, testHouse } from './house.ts';
import { lotOf } from './reading.ts';

const poured = (
  lot: string,
  name: string,
  madeOn: string,
  draws: readonly { readonly lot: string; readonly grams: number }[],
): BenchEvent => ({
  kind: 'batch-poured',
  lot,
  name,
  lines: [{ ingredient: 'beeswax', grams: 60, draws: draws.map((each) => ({ ...each })) }],
  count: 24,
  container: 'tin',
  madeOn,
  bestBefore: '2027-05-14',
  because: { kind: 'said' },
  weighedG: 60,
});

/** What the Fernlea Makers' Circle has on its bench in these tests: three lots, one infused here, and three batches. */
export const benchEventsHere: readonly BenchEvent[] = [
  lotOf('K12', 'beeswax', 500),
  lotOf('G7', 'grapeseed-oil', 1000),
  lotOf('C2', 'calendula', 100),
  {
    kind: 'oil-infused',
    lot: '26-ZIRO',
    ingredient: 'grapeseed-oil',
    herbs: ['calendula'],
    grams: 260,
    on: '2026-11-10',
    bestBefore: '2027-05-10',
    because: { kind: 'said' },
    draws: [
      { lot: 'G7', grams: 320 },
      { lot: 'C2', grams: 40 },
    ],
    short: [],
  },
  poured('26-BAFO', 'Fernlea hand balm', '2026-11-12', [{ lot: 'K12', grams: 60 }]),
  poured('26-KIVO', 'Fernlea hand balm', '2026-11-14', [{ lot: 'K12', grams: 60 }]),
  poured('26-MULE', 'Fernlea mint lip balm', '2026-11-20', [{ lot: '26-ZIRO', grams: 60 }]),
  { kind: 'tins-gone', lot: '26-KIVO', count: 6, how: 'given', to: 'spring fair', on: '2026-11-15' },
  { kind: 'tins-gone', lot: '26-KIVO', count: 2, how: 'sold', to: 'village shop', on: '2026-11-16' },
  { kind: 'tins-gone', lot: '26-MULE', count: 5, how: 'given', on: '2026-11-21' },
];

/** A whole bot whose group has these on its bench. */
export const benchHouse = async (group = 'local'): Promise<TestHouse> => {
  const house = await testHouse(group);
  const book = await house.keeper.open(group);
  await book.record([...benchEventsHere], { who: 'm1', at: now });
  return house;
};
