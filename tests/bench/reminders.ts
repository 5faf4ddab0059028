import { journalOf } from '../../bot/book/journal.ts';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { indexPrefix, keysOf } from '../../bot/book/names.ts';
import { restOf, snapshotPages } from '../../bot/book/snapshot.ts';
import type { Change, Store } from '../../bot/book/store.ts';
import { Agenda } from '../../bot/remind/agenda.ts';
import { deliver } from '../../bot/remind/deliver.ts';
import { waitingAlongside, waitingGroups } from '../../bot/remind/index-key.ts';
import type { Sender } from '../../bot/remind/sender.ts';
import { plusDays } from '../../core/bench/days.ts';
import { dueBy } from '../../core/bench/due.ts';
import {
  afterEntries,
  type BookEntry,
  type BookEvent,
  type BookState,
  benchOf,
  emptyBook,
} from '../../core/book.ts';
import { follow, nextTellMs } from '../../core/remind/next.ts';
import { inFolder, withStore } from './books.ts';
import { median, timed } from './measure.ts';
import { below, type Found, megabytes, type Row, ratio, spread, time } from './report.ts';

const groups = 10_000;
const batchesEach = 100;
const firstDay = '2026-11-26';
const nine = Date.UTC(2026, 10, 26, 9);
const by = { who: 'wren', at: nine };

const zones = ['Europe/Lisbon', 'Europe/Berlin', 'America/New_York', 'Asia/Tokyo', 'Australia/Sydney'];

const set = (at: number): BookEvent => ({
  kind: 'reminder-set',
  hour: at % 24,
  minute: 0,
  zone: zones[at % zones.length] ?? 'Europe/Lisbon',
  leadDays: [30, 7, 0],
  channel: 'hall',
  from: firstDay,
});

const poured = (at: number): BookEvent => ({
  kind: 'batch-poured',
  lot: `26-B${at}`,
  name: 'Hall balm',
  lines: [{ ingredient: 'beeswax', percent: 20, grams: 72.4, draws: [{ lot: 'K12', grams: 72.4 }] }],
  count: 24,
  container: 'tin',
  size: { amount: 15, unit: 'ml' },
  madeOn: plusDays('2026-01-10', at % 300),
  bestBefore: plusDays(firstDay, 1 + ((at * 37) % 360)),
  because: { kind: 'said' },
  weighedG: 362,
});

const bookOf = (
  group: string,
  events: readonly BookEvent[],
): { readonly state: BookState; readonly last: BookEntry } => {
  const entries = events.map(
    (event, index): BookEntry => ({
      v: 1,
      group,
      seq: index + 1,
      at: new Date(nine).toISOString(),
      who: 'wren',
      event,
    }),
  );
  return { state: afterEntries(emptyBook, entries), last: entries.at(-1) as BookEntry };
};

/** A book as its snapshot, the entry it ends with, and its index key: what opening and sweeping read. */
const keysFor = (at: number, batches: readonly BookEvent[]): Change[] => {
  const group = `guild:${1_000_000 + at}`;
  const { state, last } = bookOf(group, [...batches, set(at)]);
  const keys = keysOf(group);
  const pages = [...snapshotPages(state)].map((value, at) => ({ key: keys.page('a', at), value }));
  const head = { v: 2, group, slot: 'a', pages: pages.length, rest: restOf(state) };
  return [
    ...pages,
    { key: keys.snapshot, value: head },
    { key: keys.entry(last.seq), value: last },
    { key: keys.index('waiting'), value: { v: 1, group, at: nextTellMs(benchOf(state)) } },
  ];
};

const fill = async (store: Store): Promise<void> => {
  const batches = Array.from({ length: batchesEach }, (_, at) => poured(at));
  const atOnce = 24;
  for (let first = 0; first < groups; first += atOnce)
    await store.writeAll(
      Array.from({ length: Math.min(atOnce, groups - first) }, (_, at) =>
        keysFor(first + at, batches),
      ).flat(),
    );
};

/** Reading the same keys and nothing else. */
const bare = async (store: Store): Promise<void> => {
  let seen = 0;
  for await (const _each of store.scan(indexPrefix('waiting'))) seen += 1;
  if (seen !== groups) throw new Error(`${seen} keys instead of ${groups}`);
};

/** From nothing to the list of every group that is due by an instant. */
const sweep = async (store: Store, now: number): Promise<number> => {
  const agenda = new Agenda();
  for await (const { group, at } of waitingGroups(store)) agenda.set(group, at);
  let due = 0;
  while (agenda.take(now) !== undefined) due += 1;
  return due;
};

const silent: Sender = {
  send: async () => 'sent',
  wasSent: async () => false,
  tellOwner: async () => true,
};

const sweeping = async (store: Store): Promise<Row[]> => {
  await bare(store);
  const read = await timed(5, () => bare(store));
  globalThis.gc?.();
  const before = process.memoryUsage().heapUsed;
  let found = 0;
  const swept = await timed(5, async () => {
    found = await sweep(store, nine + 86_400_000);
  });
  globalThis.gc?.();
  const grown = Math.max(0, process.memoryUsage().heapUsed - before);
  const base = `bare reading of ${groups.toLocaleString('en')} index keys`;
  return [
    { measure: base, median: time(median(read)) },
    {
      measure: `sweep of ${(groups * batchesEach).toLocaleString('en')} batches, ${found.toLocaleString('en')} groups due`,
      median: time(median(swept)),
      ratio: ratio(median(swept), median(read)),
      baseline: base,
      aim: below(median(swept), 2000, 'under 2 s'),
    },
    {
      measure: 'memory left by five sweeps',
      median: megabytes(grown),
      aim: below(grown, 16 * 1024 * 1024, 'under 16 MB'),
    },
  ];
};

const telling = async (store: Store): Promise<Row[]> => {
  // Every 120th is told at nine in Lisbon.
  const journals = Array.from({ length: 80 }, (_, at) => `guild:${1_000_000 + 105 + at * 120}`);
  const opened = await timed(40, (at) => journalOf(store, journals[at] ?? '').load());
  const keeper = openKeeper(store, { alongside: waitingAlongside() });
  const told = await timed(40, async (at) => {
    const book = await keeper.open(journals[40 + at] ?? '');
    const { did } = await deliver({ clock: () => nine, sender: silent }, book);
    if (did !== 'sent') throw new Error(`told nothing: ${did}`);
  });
  return [
    { measure: 'opening a book of 100 batches', ...spread(opened) },
    { measure: 'telling a group: open, begin, record', ...spread(told) },
  ];
};

const large = (): Row[] => {
  const { state } = bookOf('hall', [...Array.from({ length: 10_000 }, (_, at) => poured(at)), set(0)]);
  const bench = benchOf(state);
  const runs = 200;
  const listed = Array.from({ length: runs }, () => {
    const start = performance.now();
    dueBy(bench, firstDay, plusDays(firstDay, 30));
    return performance.now() - start;
  });
  nextTellMs(bench);
  const pours = Array.from({ length: runs }, (_, at) => {
    const event = poured(20_000 + at);
    const entry: BookEntry = {
      v: 1,
      group: 'hall',
      seq: state.seq + 1,
      at: new Date(nine).toISOString(),
      who: by.who,
      event,
    };
    const after = benchOf(afterEntries(state, [entry]));
    const start = performance.now();
    follow(bench, after, [event as never]);
    nextTellMs(after);
    return performance.now() - start;
  });
  return [
    {
      measure: 'due list at 10,000 batches',
      ...spread(listed),
      aim: below(median(listed), 50, 'under 50 ms'),
    },
    {
      measure: 'index key of a pour at 10,000 batches',
      ...spread(pours),
      aim: below(median(pours), 1, 'under 1 ms'),
    },
  ];
};

/** What the daily reminders cost: by groups that are due, not by what is in the books. */
export const reminders = (): Promise<Found> =>
  inFolder((folder) =>
    withStore(folder, async (store) => {
      await fill(store);
      return { rows: [...(await sweeping(store)), ...(await telling(store)), ...large()] };
    }),
  );
