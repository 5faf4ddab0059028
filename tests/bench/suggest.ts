import { complete } from '../../bot/complete.ts';
import type { Completion } from '../../bot/topic.ts';
import { topics } from '../../bot/topics.ts';
import { afterEntries, type BookEntry, type BookState, emptyBook } from '../../core/book.ts';
import { lotOf } from '../helpers/reading.ts';
import { recipeSaved } from '../helpers/recipes-saved.ts';
import { cpuTimes, median, quantile } from './measure.ts';
import { type Found, type Row, ratio, time } from './report.ts';

const count = 5000;
const runs = 400;
const aimMs = 50;
const typed = ['', 'h', 'ba', 'balm 4', 'lot', 'zzz', 'beesw', 'l-12', '4999'];

/** CPU time of each of `batches` runs: the machine's other work is not counted. */
const cpuOf = (batches: number, work: (at: number) => unknown): Promise<number[]> =>
  cpuTimes({ batches, size: 1 }, work);

const entryOf = (event: BookEntry['event'], at: number): BookEntry => ({
  v: 1,
  group: 'hall',
  seq: at + 1,
  at: '2026-11-25T09:00:00.000Z',
  who: 'm1',
  event,
});

/** A book of 5,000 recipes and as many lots. */
const bigBook = (): BookState => {
  const recipes = Array.from({ length: count }, (_, at) => recipeSaved(`r${at}`, `Hall balm ${at}`));
  const lots = Array.from({ length: count }, (_, at) => lotOf(`L-${at}`, 'beeswax', 500));
  return afterEntries(emptyBook, [...recipes, ...lots].map(entryOf));
};

/** The least any completion has to do: look once at every name. */
const lookOnce = (names: readonly string[], said: string): number =>
  names.reduce((found, name) => found + (name.includes(said) ? 1 : 0), 0);

/** The same book with one more recipe and lot: what somebody records while another types. */
const changed = (state: BookState, at: number): BookState =>
  afterEntries(
    state,
    [recipeSaved(`s${at}`, `Summer balm ${at}`), lotOf(`S-${at}`, 'beeswax', 500)].map((event, more) =>
      entryOf(event, state.seq + more),
    ),
  );

const row = async (book: BookState, kind: Completion, baseMs: number): Promise<Row> => {
  const opened = (await cpuOf(1, () => complete(book, topics, kind, 'h')))[0] ?? 0;
  const times = await cpuOf(runs, (at) => complete(book, topics, kind, typed[at % typed.length] ?? ''));
  let state = book;
  const after: number[] = [];
  for (let at = 0; at < 30; at += 1) {
    state = changed(state, at);
    after.push(...(await cpuOf(1, () => complete(state, topics, kind, 'h'))));
  }
  const worst = Math.max(opened, quantile(times, 0.99), quantile(after, 0.99));
  return {
    measure: `suggestions, CPU: ${kind} among ${count.toLocaleString('en')} (first ${time(opened)}, after a change ${time(median(after))})`,
    median: time(median(times)),
    p99: time(quantile(times, 0.99)),
    ratio: ratio(median(times), baseMs),
    baseline: `one look at every name ${time(baseMs)}`,
    aim: { text: `< ${aimMs} ms`, met: worst < aimMs },
  };
};

/** Names suggested while somebody types, in a book of many. */
export const suggest = async (): Promise<Found> => {
  const names = Object.values(bigBook().recipes).map(({ name }) => name);
  const base = median(await cpuOf(runs, (at) => lookOnce(names, typed[at % typed.length] ?? '')));
  const rows: Row[] = [];
  for (const kind of ['recipe', 'lot', 'lots', 'recipe-or-ingredient'] as const)
    rows.push(await row(bigBook(), kind, base));
  return { rows };
};
