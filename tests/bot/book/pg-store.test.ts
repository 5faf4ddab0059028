import { describe, expect, it, onTestFinished } from 'vitest';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { keysOf } from '../../../bot/book/names.ts';
import { type OpenOptions, openStore, type Store } from '../../../bot/book/store.ts';
import { by, saved } from '../../helpers/book.ts';
import { usePostgres } from '../../helpers/use-postgres.ts';

const pg = usePostgres();

const opened = async (url: string, options?: OpenOptions): Promise<Store> => {
  const store = await openStore(url, options);
  onTestFinished(() => store.close());
  return store;
};

describe('a store in PostgreSQL', () => {
  it('should find the same book after closing and opening', async () => {
    const url = await pg.server.database();
    const keeper = openKeeper(await openStore(url));
    const book = await keeper.open('local');
    await Promise.all(
      Array.from({ length: 120 }, (_, at) => book.record(saved(`r${at % 9}`, `B ${at}`), by)),
    );
    await keeper.close();
    expect((await openKeeper(await opened(url)).open('local')).state).toEqual(book.state);
  });

  it('should never show the password, and say what is wrong in plain words', async () => {
    const url = new URL(await pg.server.database());
    const wrong = {
      password: Object.assign(new URL(url), { password: 'Hunter2' }),
      database: Object.assign(new URL(url), { pathname: '/nowhere' }),
      port: Object.assign(new URL(url), { port: '1' }),
    };
    for (const [what, address] of Object.entries(wrong)) {
      const fault = await openStore(address.href).catch((problem) => problem);
      expect([what, fault.code]).toEqual([what, 'no-access']);
      expect(fault.message).not.toMatch(/Hunter2|Beeswax-4/);
      expect(fault.message).toContain('postgres://bench@127.0.0.1:');
    }
    await expect(openStore('postgres://')).rejects.toMatchObject({ code: 'not-a-store' });
  });

  it('should name the damaged entry', async () => {
    const url = await pg.server.database();
    const store = await opened(url);
    const keeper = openKeeper(store);
    const book = await keeper.open('local');
    for (let at = 0; at < 5; at++) await book.record(saved('r', `Balm ${at}`), by);
    await pg.server.ask(
      url,
      `update pipkin_book set value = replace(value, 'Balm 2', 'Palm 2') where key = $1`,
      [keysOf('local').entry(3)],
    );
    const fault = await openKeeper(store)
      .open('local')
      .catch((problem) => problem);
    expect(fault).toMatchObject({ code: 'damaged' });
    expect(fault.message).toContain('entry 3');
  });
});
