import { describe, expect, it, onTestFinished } from 'vitest';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { belongsTo, type Shard, shardOf } from '../../../bot/book/shard.ts';
import { openStore, type Store } from '../../../bot/book/store.ts';
import { by, runChild, saved } from '../../helpers/book.ts';
import { usePostgres } from '../../helpers/use-postgres.ts';

const pg = usePostgres();

const first: Shard = { index: 0, count: 2 };
const second: Shard = { index: 1, count: 2 };

const opened = async (url: string, shard?: Shard, waitMs = 0): Promise<Store> => {
  const store = await openStore(url, shard ? { shard, waitMs } : { waitMs });
  onTestFinished(() => store.close());
  return store;
};

/** As if the holders had given no sign of life for long enough. */
const runOut = (url: string) => pg.server.ask(url, 'update pipkin_lease set until = clock_timestamp()');

const fences = async (url: string): Promise<number[]> =>
  (
    await pg.server.ask<{ fence: string }>(
      url,
      `select fence from pipkin_book where key like 'g/%/e/%' order by key`,
    )
  ).map(({ fence }) => Number(fence));

describe('which shard a group belongs to', () => {
  // The platform's documentation, "Sharding": shard_id = (guild_id >> 22) % num_shards. The ids are invented; the sums
  // were done by hand.
  it.each([
    ['guild:197038439483310086', 2, 0],
    ['guild:197038439483310086', 16, 2],
    ['guild:1', 16, 0],
    ['guild:4194304', 16, 1],
    ['dm:197038439483310086', 16, 0],
    ['local', 16, 0],
  ])('should be for %s of %i: %i', (group, count, index) => {
    expect(shardOf(group, count)).toBe(index);
    const owners = Array.from({ length: count }, (_, at) => at).filter((at) =>
      belongsTo(group, { index: at, count }),
    );
    expect(owners).toEqual([index]);
  });
});

describe('the lease of a shard', () => {
  it('should refuse a second holder, and another number of shards while one is held', async () => {
    const url = await pg.server.database();
    await opened(url, first);
    await opened(url, second);
    await expect(openStore(url, { shard: first })).rejects.toMatchObject({ code: 'in-use' });
    await expect(openStore(url)).rejects.toThrow(/in use by another running copy .* Stop that one first/);
    await expect(openStore(url, { shard: { index: 2, count: 3 } })).rejects.toMatchObject({ code: 'in-use' });
  });

  it('should go to exactly one of many who ask at once', async () => {
    const url = await pg.server.database();
    await (await openStore(url)).close();
    const tries = await Promise.allSettled(Array.from({ length: 8 }, () => opened(url)));
    expect(tries.filter(({ status }) => status === 'fulfilled')).toHaveLength(1);
  });

  it('should be free at once after closing, and after its holder was killed', async () => {
    const url = await pg.server.database();
    await (await openStore(url)).close();
    const child = runChild('hold', url);
    expect(await child.next()).toEqual({ open: true });
    await expect(openStore(url)).rejects.toMatchObject({ code: 'in-use' });
    child.process.kill('SIGKILL');
    await child.ended;
    // The server notices a closed connection in its own time, well before the lease runs out.
    await opened(url, undefined, 3_000);
  });

  it('should refuse to write a group of another shard', async () => {
    const url = await pg.server.database();
    const keeper = openKeeper(await opened(url, second));
    const other = await keeper.open('guild:8388608');
    expect(belongsTo('guild:8388608', first)).toBe(true);
    await expect(other.record(saved('r', 'Balm'), by)).rejects.toMatchObject({ reason: 'failed' });
    await expect((await keeper.open('dm:7')).record(saved('r', 'Balm'), by)).rejects.toThrow();
    expect((await (await keeper.open('guild:4194304')).record(saved('r', 'Balm'), by)).seq).toBe(1);
    expect(await pg.server.ask(url, 'select key from pipkin_book')).toHaveLength(1);
  });
});

describe('a holder that slept while its shard was taken over', () => {
  it('should write nothing any more, and be told so', async () => {
    const url = await pg.server.database();
    const old = await opened(url);
    const sleeper = await openKeeper(old).open('local');
    await sleeper.record(saved('r', 'Before'), by);
    await runOut(url);
    const fresh = await openKeeper(await opened(url)).open('local');
    await fresh.record(saved('r', 'After'), by);
    const late = Array.from({ length: 5 }, (_, at) => sleeper.record(saved('r', `Late ${at}`), by));
    for (const each of await Promise.allSettled(late))
      expect(each).toMatchObject({ status: 'rejected', reason: { code: 'not-recorded', reason: 'failed' } });
    await old.lost;
    expect((await fresh.entry(2))?.event).toMatchObject({ name: 'After' });
    const [before, after] = await fences(url);
    expect(after).toBeGreaterThan(before ?? 0);
    expect(await fences(url)).toHaveLength(2);
  });

  it('should not write when it is a process that was stopped and goes on', { timeout: 30_000 }, async () => {
    const url = await pg.server.database();
    const child = runChild('save', url);
    for (let at = 0; at < 10; at++) await child.next();
    child.process.kill('SIGSTOP');
    await runOut(url);
    const store = await opened(url, undefined, 5_000);
    const book = await openKeeper(store).open('local');
    const taken = book.state.seq;
    child.process.kill('SIGCONT');
    const { said, exit } = await child.ended;
    expect([exit, said.at(-1)?.problem]).toEqual([3, 'not-recorded']);
    const acknowledged = Math.max(...said.map(({ saved: seq = 0 }) => seq));
    expect(acknowledged).toBeLessThanOrEqual(taken);
    await book.record(saved('r', 'After'), by);
    const [lease] = await pg.server.ask<{ token: string }>(url, 'select token from pipkin_lease');
    const all = await fences(url);
    expect(all).toHaveLength(taken + 1);
    expect(all.filter((fence) => fence === Number(lease?.token))).toHaveLength(1);
  });

  // The old holder's statement has begun and hangs on a row that is locked here; the newcomer has to wait for it.
  it('should have a write that had begun either wholly before or not at all', async () => {
    const url = await pg.server.database();
    const sleeper = await openKeeper(await opened(url)).open('local');
    await sleeper.record(saved('r', 'One'), by);
    const { default: driver } = await import('pg');
    const blocker = new driver.Client(url);
    await blocker.connect();
    onTestFinished(() => blocker.end());
    await runOut(url);
    await blocker.query(`begin; insert into pipkin_book values ('g/local/e/000000000002', 'x', 0)`);
    const late = sleeper.record(saved('r', 'Two'), by);
    await new Promise((resolve) => setTimeout(resolve, 200));
    const taking = opened(url, undefined, 10_000);
    await new Promise((resolve) => setTimeout(resolve, 300));
    await blocker.query('rollback');
    expect((await late).seq).toBe(2);
    const book = await openKeeper(await taking).open('local');
    expect(book.state.seq).toBe(2);
  });
});
