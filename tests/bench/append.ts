import { open } from 'node:fs/promises';
import { join } from 'node:path';
import pg from 'pg';
import type { Book } from '../../bot/book/keeper.ts';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { seal } from '../../bot/book/seal.ts';
import { openStore } from '../../bot/book/store.ts';
import { Postgres } from '../helpers/postgres.ts';
import { entryAt, inFolder } from './books.ts';
import { alternating, median, timed } from './measure.ts';
import { below, type Found, type Row, rate, ratio, spread } from './report.ts';

const blocks = 20;
const each = 60;
/** Groups that write at the same moment, and how often each of them does. */
const groups = 200;
const rounds = 15;

const { event } = entryAt('hall', 1, 3);
const by = () => ({ who: 'member-1', at: Date.now() });
const bytes = Buffer.from(seal(entryAt('hall', 1, 3)));

/** One event after the other, each awaited, against the bare write in turn with it. */
const against = async (
  base: string,
  bare: () => Promise<unknown>,
  measure: string,
  book: Book,
): Promise<Row[]> => {
  const write = () => timed(each, bare);
  const record = () => timed(each, () => book.record(event, by()));
  await record();
  await write();
  const { first: written, second: recorded } = await alternating(blocks, write, record);
  return [
    { measure: base, ...spread(written) },
    {
      measure,
      ...spread(recorded),
      ratio: ratio(median(recorded), median(written)),
      baseline: base,
      aim: below(median(recorded), 1, 'median under 1 ms'),
    },
  ];
};

const together = async (measure: string, books: readonly Book[]): Promise<Row> => {
  const start = performance.now();
  for (let round = 0; round < rounds; round++)
    await Promise.all(books.map((book) => book.record(event, by())));
  return { measure, perSecond: rate((1000 * rounds * books.length) / (performance.now() - start)) };
};

const names = Array.from({ length: groups }, (_, at) => `g${at}`);

const inLmdb = (folder: string): Promise<Row[]> =>
  withStore(join(folder, 'store'), 'a folder', async (book) => {
    const file = await open(join(folder, 'plain'), 'a');
    const bare = async (): Promise<void> => {
      await file.write(bytes);
      await file.datasync();
    };
    const base = `write + fdatasync of ${bytes.length} bytes`;
    const rows = await against(base, bare, 'append in a folder, on disk', book);
    await file.close();
    return rows;
  });

const inPostgres = async (): Promise<Row[]> => {
  const server = new Postgres({ onDisk: true });
  try {
    await server.start();
    const url = await server.database();
    return await withStore(url, 'PostgreSQL', async (book) => {
      const client = new pg.Client(url);
      await client.connect();
      await client.query('create table plain (key bigserial primary key, value text)');
      const text = bytes.toString();
      const bare = () => client.query('insert into plain (value) values ($1)', [text]);
      const base = `bare insert of ${bytes.length} bytes, committed`;
      const rows = await against(base, bare, 'append in PostgreSQL, committed', book);
      await client.end();
      return rows;
    });
  } finally {
    await server.remove();
  }
};

const withStore = async (
  url: string,
  what: string,
  measure: (book: Book) => Promise<Row[]>,
): Promise<Row[]> => {
  const keeper = openKeeper(await openStore(url));
  const rows = await measure(await keeper.open('hall'));
  const books = await Promise.all(names.map((name) => keeper.open(name)));
  rows.push(await together(`${groups} groups at once in ${what}`, books));
  await keeper.close();
  return rows;
};

/** Recording one event and waiting until it is safe, in each kind of store, against the same bytes written bare. */
export const append = async (): Promise<Found> => ({
  rows: [...(await inFolder(inLmdb)), ...(await inPostgres())],
});
