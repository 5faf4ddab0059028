import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, describe, expect, it } from 'vitest';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { keysOf } from '../../bot/book/names.ts';
import { openStore } from '../../bot/book/store.ts';
import type { Exchange } from '../helpers/chat-stand-in/exchange.ts';
import { annexId, guildId } from '../helpers/chat-stand-in/people.ts';
import { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import { startProcess, until } from '../helpers/run-process.ts';
import { usePostgres } from '../helpers/use-postgres.ts';

// The bot as `npm start` runs it, in two processes over one database. The hall belongs to shard 1 of 2, the annexe to
// shard 0: (id >> 22) % 2.
const pg = usePostgres();
const hall = `guild:${guildId}`;
const annexe = `guild:${annexId}`;

const cleanups: (() => unknown)[] = [];
afterEach(async () => {
  for (const each of cleanups.splice(0).reverse()) await each();
});

interface Logged {
  readonly event: string;
  readonly shard?: number;
  readonly pid?: number;
}

/** Keeps what every lease was ever held under, so that afterwards it is known whose hand wrote each row. */
const keepTokens = async (url: string): Promise<void> => {
  await (await openStore(url)).close();
  await pg.server.ask(
    url,
    `create table lease_log (name text, token bigint);
     create function keep_token() returns trigger language plpgsql as
       $$ begin insert into lease_log values (new.name, new.token); return new; end $$;
     create trigger keep_token after insert or update on pipkin_lease for each row execute function keep_token();`,
  );
};

/** Which shards' tokens are on the rows of a group. */
const writersOf = async (url: string, group: string): Promise<string[]> => {
  const rows = await pg.server.ask<{ name: string }>(
    url,
    `select distinct l.name from pipkin_book b left join lease_log l on l.token = b.fence where b.key like $1`,
    [`${keysOf(group).book}%`],
  );
  return rows.map(({ name }) => name);
};

const start = async (shards: string) => {
  const url = await pg.server.database();
  await keepTokens(url);
  const standIn = await StandIn.start({ shards: 2 });
  cleanups.push(() => standIn.close());
  const env = {
    DISCORD_TOKEN: standIn.token,
    DISCORD_API_URL: standIn.apiUrl,
    STORE_URL: url,
    SHARDS: shards,
  };
  const bot = startProcess('.build/bot/main.js', [], env);
  cleanups.push(() => bot.child.kill('SIGKILL'));
  const logged = (): Logged[] =>
    bot
      .err()
      .split('\n')
      .filter((line) => line.startsWith('{') && line.endsWith('}'))
      .map((line) => JSON.parse(line));
  const events = (event: string, shard: number) =>
    logged().filter((each) => each.event === event && each.shard === shard);
  const pidOf = (shard: number): number => events('shard.started', shard).at(-1)?.pid ?? 0;
  await until(() => bot.out().includes('ready'), `the bot: ${bot.err()}`, 120_000);
  return { url, standIn, bot, events, pidOf };
};

/** Saves recipes one after the other until told to stop; the names whose saving was acknowledged. */
const saving = (standIn: StandIn, where: { annexe: boolean }) => {
  const acknowledged: string[] = [];
  let over = false;
  const saved = ({ shown }: Exchange): boolean => shown.some(({ content }) => content.includes('Saved'));
  const run = async (): Promise<void> => {
    for (let at = 0; !over; at++) {
      const name = `Hall balm ${at}`;
      const lines = `${at + 1} g beeswax, 80 g olive oil`;
      const exchange = standIn.slashSent('recipe', { do: 'save', name, lines }, where);
      await exchange.until(1, 1_500).catch(() => {});
      if (saved(exchange)) acknowledged.push(name);
    }
  };
  const running = run();
  return {
    acknowledged,
    stop: async () => {
      over = true;
      await running;
    },
  };
};

describe('two shards over one database', () => {
  it('should lose nothing acknowledged when one is killed, and write only their own groups', {
    timeout: 400_000,
  }, async () => {
    const { url, standIn, bot, events, pidOf } = await start('auto');
    const inHall = saving(standIn, { annexe: false });
    const inAnnexe = saving(standIn, { annexe: true });
    await until(() => inHall.acknowledged.length > 8 && inAnnexe.acknowledged.length > 8, 'saves', 90_000);
    const before = inAnnexe.acknowledged.length;
    process.kill(pidOf(1), 'SIGKILL');
    await until(() => events('shard.ready', 1).length === 2, `shard 1 again: ${bot.err()}`, 120_000);
    const back = inHall.acknowledged.length;
    await until(() => inHall.acknowledged.length > back + 5, 'saves in the hall again', 90_000);
    expect(inAnnexe.acknowledged.length).toBeGreaterThan(before);
    await Promise.all([inHall.stop(), inAnnexe.stop()]);

    const stopAt = performance.now();
    bot.child.kill('SIGTERM');
    const ended = await bot.done;
    expect([ended.code, ended.signal]).toEqual([0, null]);
    expect(performance.now() - stopAt).toBeLessThan(10_000);

    const keeper = openKeeper(await openStore(url, { waitMs: 10_000 }));
    for (const [group, { acknowledged }] of [
      [hall, inHall],
      [annexe, inAnnexe],
    ] as const) {
      const { state } = await keeper.open(group);
      const names = new Set(Object.values(state.recipes).map(({ name }) => name));
      expect(acknowledged.filter((name) => !names.has(name))).toEqual([]);
    }
    await keeper.close();
    expect(await writersOf(url, hall)).toEqual(['shard 1 of 2']);
    expect(await writersOf(url, annexe)).toEqual(['shard 0 of 2']);
    // Killed on the way it may have been, but no interaction was answered twice.
    expect(standIn.problems.filter((problem) => !problem.includes('too late'))).toEqual([]);
  });

  it('should leave by themselves when the process that started them is killed', {
    timeout: 300_000,
  }, async () => {
    const { url, standIn, bot, pidOf } = await start('2');
    expect((await standIn.slash('recipe', { do: 'list' }, { annexe: true })).shown).toHaveLength(1);
    const pids = [pidOf(0), pidOf(1)];
    bot.child.kill('SIGKILL');
    await bot.done;
    const alive = (): boolean => pids.some((pid) => isAlive(pid));
    for (let at = 0; at < 200 && alive(); at++) await sleep(50);
    expect(alive()).toBe(false);
    await (await openStore(url)).close();
    expect(standIn.problems).toEqual([]);
  });
});

const isAlive = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
};
