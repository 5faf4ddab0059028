import { fork } from 'node:child_process';
import { once } from 'node:events';
import { statSync } from 'node:fs';
import { join } from 'node:path';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { keysOf } from '../../bot/book/names.ts';
import { openStore } from '../../bot/book/store.ts';
import { inFolder, withStore, writeBook } from './books.ts';
import { median, timed } from './measure.ts';
import { below, type Found, megabytes, type Row, ratio, spread, time } from './report.ts';

const events = 100_000;
/** As far behind as a snapshot can be, 499 entries: the most there is to read after it. */
const snapshotAt = events - 499;
const opens = 40;
const colds = 3;
const block = 1000;

/** In a process of its own: the store and the book opened for the first time, in milliseconds. */
export const openOnce = async (folder: string): Promise<void> => {
  const start = performance.now();
  const keeper = openKeeper(await openStore(join(folder, 'store')));
  const there = performance.now();
  const book = await keeper.open('hall');
  const took = { storeMs: there - start, bookMs: performance.now() - there };
  if (book.state.seq !== events) throw new Error(`opened at ${book.state.seq}`);
  await keeper.close();
  process.send?.(took);
};

interface Took {
  readonly storeMs: number;
  readonly bookMs: number;
}

const cold = async (folder: string): Promise<Took> => {
  const child = fork(process.argv[1] ?? '', ['open-once', folder]);
  const [took] = await once(child, 'message');
  await once(child, 'exit');
  return took;
};

const book = async (recipes: number, folder: string): Promise<Row[]> => {
  await withStore(folder, (store) => writeBook(store, 'hall', { events, recipes, snapshotAt }));
  const firsts: Took[] = [];
  for (let at = 0; at < colds; at++) firsts.push(await cold(folder));
  return withStore(folder, async (store) => {
    const raw = await timed(3, async () => {
      const keys = Array.from({ length: events }, (_, at) => keysOf('hall').entry(at + 1));
      for (let from = 0; from < events; from += block)
        await store.keyv.getMany(keys.slice(from, from + block));
    });
    const warm = await timed(opens, () => openKeeper(store).open('hall'));
    const first = firsts.map(({ bookMs }) => bookMs);
    const start = firsts.map(({ storeMs }) => storeMs);
    const base = '100,000 raw entries read';
    const size = megabytes(statSync(join(folder, 'store', 'data.mdb')).size);
    return [
      { measure: `${base}, ${size}`, median: time(median(raw)) },
      {
        measure: `opening that book, ${recipes.toLocaleString('en')} recipes`,
        ...spread(warm),
        ratio: ratio(median(warm), median(raw)),
        baseline: base,
        aim: below(median(warm), 100, '< 100 ms'),
      },
      {
        measure: '… first in a new process',
        median: time(median(first)),
        ratio: ratio(median(first), median(raw)),
        baseline: base,
        aim: below(median(first), 100, '< 100 ms'),
      },
      { measure: '… the store around it, checked at start', median: time(median(start)) },
    ];
  });
};

/** Books of 100,000 events, each in a store of its own. */
export const opening = async (): Promise<Found> => {
  const few = await inFolder((folder) => book(3, folder));
  const many = await inFolder((folder) => book(5000, folder));
  return { rows: [...few, ...many] };
};
