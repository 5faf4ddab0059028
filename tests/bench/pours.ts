import { join } from 'node:path';
import { journalOf } from '../../bot/book/journal.ts';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { openStore, type Store } from '../../bot/book/store.ts';
import { pipkin } from '../../bot/handle.ts';
import type { Member } from '../../bot/heard.ts';
import { plusDays } from '../../core/bench/days.ts';
import type { BenchEvent } from '../../core/bench/events.ts';
import { afterEntries, type BookEntry, emptyBook } from '../../core/book.ts';
import { inFolder } from './books.ts';
import { alternating, median, type Times, timed } from './measure.ts';
import { below, type Found, type Row, ratio, spread } from './report.ts';

const batches = 10_000;
const lots = 300;
const noon = Date.UTC(2026, 10, 25, 12);
const member: Member = { id: 'm1', name: 'Ada', roles: [], manages: true };

const lotEvent = (at: number): BenchEvent => ({
  kind: 'lot-bought',
  lot: `K${at}`,
  ingredient: ['beeswax', 'shea-butter', 'olive-oil'][at % 3] ?? 'beeswax',
  grams: 500_000,
  on: '2024-01-05',
  bestBefore: plusDays('2027-01-01', at),
});

const batchEvent = (at: number): BenchEvent => ({
  kind: 'batch-poured',
  lot: `B${at}`,
  name: `Hall balm ${at % 20}`,
  lines: [{ ingredient: 'beeswax', grams: 80, draws: [{ lot: `K${(at * 3) % lots}`, grams: 80 }] }],
  count: 24,
  container: 'tin',
  madeOn: plusDays('2024-01-06', at % 1000),
  bestBefore: plusDays('2025-01-06', at % 1000),
  because: { kind: 'said' },
  weighedG: 80,
});

const goneEvent = (at: number): BenchEvent => ({
  kind: 'tins-gone',
  lot: `B${at}`,
  count: 6,
  how: 'given',
  to: `Fair ${at % 50}`,
  on: '2026-11-01',
});

const writeBench = async (store: Store): Promise<void> => {
  const events = [
    ...Array.from({ length: lots }, (_, at) => lotEvent(at)),
    ...Array.from({ length: batches }, (_, at) => batchEvent(at)),
    ...Array.from({ length: batches / 2 }, (_, at) => goneEvent(at * 2)),
  ];
  const entries = events.map(
    (event, at): BookEntry => ({
      v: 1,
      group: 'hall',
      seq: at + 1,
      at: new Date(noon).toISOString(),
      who: 'm1',
      event,
    }),
  );
  const journal = journalOf(store, 'hall');
  for (let from = 0; from < entries.length; from += 2000)
    await journal.append(entries.slice(from, from + 2000));
  for (const step of journal.snapshotSteps(afterEntries(emptyBook, entries))) await step();
};

/** A question from its message to its answer. */
const answered = (measure: string, times: Times): Row => ({
  measure,
  ...spread(times),
  aim: below(median(times), 50, '< 50 ms'),
});

/** Pours and questions in a group of ten thousand batches: read, decided, and on disk where something was written. */
export const pours = (): Promise<Found> =>
  inFolder(async (folder) => {
    const store = await openStore(join(folder, 'store'));
    await writeBench(store);
    const keeper = openKeeper(store);
    const faults: unknown[] = [];
    const house = pipkin({ keeper, onFault: (_id, fault) => faults.push(fault) });
    const say = async (text: string, at: number) => {
      const reply = await house.hear({ text, group: 'hall', channel: 'c', member, at: noon + at * 61_000 });
      if ('error' in reply) faults.push(`${text}: ${reply.error.text}`);
    };
    const book = await keeper.open('hall');
    const append = (at: number) =>
      book.record({ ...batchEvent(batches + at), lot: `X${at}` } as BenchEvent, { who: 'm1', at: noon });
    const pour = (at: number) =>
      say(`poured ${1 + (at % 40)} tins of 15 g: 20 g beeswax, 30 g shea butter, 50 g olive oil`, at);
    await timed(20, append);
    const empty = await keeper.open('empty');
    const appendEmpty = (at: number) =>
      empty.record({ ...batchEvent(at), lot: `E${at}` } as BenchEvent, { who: 'm1', at: noon });
    let done = 20;
    // Block by block, so that whatever else the machine does meets both alike.
    const { first: inEmpty, second: appended } = await alternating(
      15,
      (block) => timed(20, (at) => appendEmpty(block * 20 + at)),
      () => timed(20, () => append(done++)),
    );
    await timed(20, pour);
    const poured = await timed(200, pour);
    const stock = await timed(60, (at) => say('stock', at));
    const list = await timed(60, (at) => say('list batches', at));
    const traced = await timed(60, (at) => say(`which batches used lot K${at}`, at));
    const due = await timed(60, (at) => say(`what expires in ${30 + at} days`, at));
    const month = await timed(60, (at) => say('what expires this month', at));
    const overdue = await timed(60, (at) => say('what is out of date', at));
    const open = await timed(60, (at) => say('which batches have something left', at));
    const out = await timed(30, (at) => say('what is out of the house', at));
    const recalled = await timed(10, (at) => say(`recall sheet for K${at * 3}`, at));
    await keeper.close();
    return {
      rows: [
        {
          measure: 'append of a pour at 10,000 batches, on disk',
          ...spread(appended),
          ratio: ratio(median(appended), median(inEmpty)),
          baseline: 'the same in an empty book',
          aim: below(median(appended), 1, '< 1 ms'),
        },
        { measure: '… a pour from its message to its answer', ...spread(poured) },
        answered('stock, 300 lots beside 10,000 batches', stock),
        answered('trace of a lot among 10,000 batches', traced),
        answered('what expires in the next days, 10,000 batches', due),
        answered('what expires this month', month),
        answered('what is out of date, 7,000 of them', overdue),
        {
          measure: 'recall sheet of a lot in 100 batches, PDF and all',
          ...spread(recalled),
          aim: below(median(recalled), 1000, '< 1 s'),
        },
        answered('list batches, 10,000', list),
        answered('which of them have something left', open),
        answered('what is out of the house, tins of 5,000 batches', out),
      ],
      faults: faults.map(String).slice(0, 5),
    };
  });
