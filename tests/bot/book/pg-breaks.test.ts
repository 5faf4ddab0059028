import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, it, onTestFinished } from 'vitest';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { openStore } from '../../../bot/book/store.ts';
import { by, saved } from '../../helpers/book.ts';
import { usePostgres } from '../../helpers/use-postgres.ts';

const pg = usePostgres();

/** Reads all entries of a book through a connection of its own. */
const entriesIn = async (url: string, group: string): Promise<number> =>
  (await pg.server.ask(url, 'select key from pipkin_book where key like $1', [`g/${group}/e/%`])).length;

describe('a database whose connections break', () => {
  it('should lose nothing that was acknowledged, and record each event once', async () => {
    const url = await pg.server.database();
    const keeper = openKeeper(await openStore(url));
    onTestFinished(() => keeper.close());
    const books = await Promise.all(['a', 'b', 'c'].map((group) => keeper.open(group)));
    let over = false;
    const breaking = (async () => {
      while (!over) {
        await sleep(40);
        await pg.server.ask(
          url,
          `select pg_terminate_backend(pid) from pg_stat_activity
           where application_name = 'pipkin' and datname = current_database()`,
        );
      }
    })();
    for (let at = 0; at < 60; at++)
      await Promise.all(books.map((book) => book.record(saved(`r${at % 5}`, `B ${at}`, 1), by)));
    over = true;
    await breaking;
    for (const book of books) {
      expect(book.state.seq).toBe(60);
      expect(await entriesIn(url, book.group)).toBe(60);
      for (let seq = 1; seq <= 60; seq += 7)
        expect((await book.entry(seq))?.event).toMatchObject({ name: `B ${seq - 1}` });
    }
  });

  it('should be waited for while it restarts after a crash', { timeout: 90_000 }, async () => {
    const url = await pg.server.database();
    const keeper = openKeeper(await openStore(url, { patienceMs: 60_000 }));
    onTestFinished(() => keeper.close());
    const book = await keeper.open('local');
    for (let at = 0; at < 20; at++) await book.record(saved('r', `B ${at}`, 1), by);
    const many = Array.from({ length: 300 }, (_, at) => book.record(saved('r', `B ${20 + at}`, 1), by));
    await many[30];
    await pg.server.crash();
    await pg.server.start();
    const entries = await Promise.all(many);
    expect(entries.map(({ seq }) => seq)).toEqual(entries.map((_, at) => 21 + at));
    expect(await entriesIn(url, 'local')).toBe(320);
    expect((await keeper.open('local')).state).toBe(book.state);
  });

  it('should not be written past when it stays away, and be read again when it is back', {
    timeout: 90_000,
  }, async () => {
    const url = await pg.server.database();
    const keeper = openKeeper(await openStore(url, { patienceMs: 500 }));
    onTestFinished(() => keeper.close());
    const book = await keeper.open('local');
    await book.record(saved('r', 'One', 1), by);
    await pg.server.crash();
    const lost = await Promise.allSettled([
      book.record(saved('r', 'Two', 1), by),
      book.record(saved('r', 'Two', 1), by),
    ]);
    for (const each of lost)
      expect(each).toMatchObject({ status: 'rejected', reason: { code: 'not-recorded' } });
    expect(book.state.seq).toBe(1);
    await pg.server.start();
    expect((await book.record(saved('r', 'Three', 1), by)).seq).toBe(2);
    expect(await entriesIn(url, 'local')).toBe(2);
  });

  // The statement was committed, but nobody heard so: the book must find it there and go on after it.
  it('should find out what became of a write nobody can say anything about', async () => {
    const url = await pg.server.database();
    const store = await openStore(url);
    const { NotRecorded } = await import('../../../bot/book/trouble.ts');
    let deaf = true;
    const keeper = openKeeper({
      ...store,
      writeAll: async (changes) => {
        await store.writeAll(changes);
        if (deaf) throw new NotRecorded('uncertain');
      },
    });
    onTestFinished(() => keeper.close());
    const book = await keeper.open('local');
    await expect(book.record([saved('a', 'A', 1), saved('b', 'B', 1)], by)).rejects.toMatchObject({
      reason: 'uncertain',
      message: 'Perhaps nothing was recorded: the database went away.',
    });
    deaf = false;
    expect((await book.record(saved('c', 'C', 1), by)).seq).toBe(3);
    expect(Object.keys(book.state.recipes)).toEqual(['a', 'b', 'c']);
    deaf = true;
    await expect(book.forget()).rejects.toMatchObject({ reason: 'uncertain' });
    deaf = false;
    expect((await book.record(saved('d', 'D', 1), by)).seq).toBe(1);
    expect(await entriesIn(url, 'local')).toBe(1);
  });
});

describe('a database that cannot keep its word', () => {
  it('should be refused with another encoding', async () => {
    const url = await pg.server.database(`template template0 encoding 'SQL_ASCII'`);
    await expect(openStore(url)).rejects.toMatchObject({ code: 'not-a-store' });
  });

  it('should say so when it may only be read', async () => {
    const url = await pg.server.database();
    const keeper = openKeeper(await openStore(url));
    onTestFinished(() => keeper.close());
    const book = await keeper.open('local');
    await book.record(saved('r', 'One', 1), by);
    const name = new URL(url).pathname.slice(1);
    await pg.server.ask(url, `alter database ${name} set default_transaction_read_only = on`);
    await pg.server.ask(
      url,
      `select pg_terminate_backend(pid) from pg_stat_activity where application_name = 'pipkin'`,
    );
    await sleep(100);
    await expect(book.record(saved('r', 'Two', 1), by)).rejects.toMatchObject({ reason: 'read-only' });
    expect(book.state.seq).toBe(1);
    await pg.server.ask(
      url,
      `begin read write; alter database ${name} reset default_transaction_read_only; commit`,
    );
    await pg.server.ask(
      url,
      `select pg_terminate_backend(pid) from pg_stat_activity where application_name = 'pipkin'`,
    );
    expect((await book.record(saved('r', 'Three', 1), by)).seq).toBe(2);
  });

  it('should answer only when it is on disk, even where the account is set otherwise', async () => {
    const url = await pg.server.database();
    const name = new URL(url).pathname.slice(1);
    await pg.server.ask(url, `alter database ${name} set synchronous_commit = off`);
    const { connectTo } = await import('../../../bot/book/pg-connect.ts');
    const client = await connectTo(url);
    onTestFinished(() => client.end());
    expect((await client.query('show synchronous_commit')).rows[0].synchronous_commit).toBe('on');
  });
});
