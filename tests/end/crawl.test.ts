import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, describe, expect, it } from 'vitest';
import type { Place } from '../helpers/chat-stand-in/asked.ts';
import type { Manner } from '../helpers/chat-stand-in/manner.ts';
import { hazel, warden, wren } from '../helpers/chat-stand-in/people.ts';
import { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import { Crawler, type Task } from '../helpers/crawl/crawler.ts';
import { breakOff, breaks, RateLimits } from '../helpers/crawl/weather.ts';
import { type Dice, dice } from '../helpers/dice.ts';
import { startProcess, until } from '../helpers/run-process.ts';

// A crawler that knows only what was registered uses everything there is, and follows what answers offer, while the
// connection breaks in every documented way and requests are refused for coming too fast. The program runs as it is
// shipped. CRAWL_STEPS and CRAWL_BREAKS make a longer run of it, CRAWL_SEED another one.

const steps = Number(process.env.CRAWL_STEPS ?? 160);
const breaksWanted = Number(process.env.CRAWL_BREAKS ?? breaks.length);
const seed = Number(process.env.CRAWL_SEED ?? 1);

const cleanups: (() => unknown)[] = [];
afterEach(async () => {
  for (const each of cleanups.splice(0).reverse()) await each();
});

const start = async (manner: Manner = {}) => {
  const standIn = await StandIn.start({ manner });
  cleanups.push(() => standIn.close());
  const started = startProcess('.build/bot/main.js', [], {
    DISCORD_TOKEN: standIn.token,
    DISCORD_API_URL: standIn.apiUrl,
    STORE_URL: join(await mkdtemp(join(tmpdir(), 'pipkin-crawl-')), 's'),
    MEMBER_PER_MINUTE: '99999',
    BACKUP_DIR: 'none',
  });
  cleanups.push(() => started.child.kill('SIGKILL'));
  await until(() => started.out().includes('ready'), 'the ready line', 60_000);
  return { standIn, ...started };
};

const places: readonly Place[] = [
  { member: warden },
  { member: warden },
  { member: hazel },
  { member: wren, direct: true },
];

/** So much in the hall's book that there is something to pick from. */
const settle = async (standIn: StandIn): Promise<void> => {
  for (let at = 1; at <= 30; at += 1)
    await standIn.mention(`save recipe Fair balm ${at}: ${at} g beeswax, ${100 - at} g olive oil`, {
      member: warden,
    });
  for (let at = 1; at <= 8; at += 1)
    await standIn.mention(`bought 500 g beeswax lot F${at}, best before 2027-03`, { member: warden });
  await standIn.mention('poured 6 tins of 15 g of Fair balm 3 today', { member: warden });
};

/** Several things at a time, as long as there are any. */
const together = 4;

interface Storm {
  readonly standIn: StandIn;
  readonly crawler: Crawler;
  readonly limits: RateLimits;
  readonly chance: Dice;
  broken: number;
}

/** Some tasks at once, in calm weather, through a burst of refusals, or with the connection broken in their middle. */
const round = async (
  storm: Storm,
  tasks: readonly Task[],
  how: 'calm' | 'burst' | 'break',
): Promise<void> => {
  const { crawler, standIn, limits } = storm;
  if (how === 'burst') limits.share = 0.4;
  const all = Promise.all(tasks.map((task) => crawler.do(task)));
  if (how === 'break') {
    const next = breaks[storm.broken % breaks.length] ?? 'cut';
    storm.broken += 1;
    // What is on its way to the bot when a session ends is lost on the platform too, so it is let arrive.
    if (next === 'reconnect' || next === 'cut') await sleep(15);
    else await all;
    await breakOff(standIn, next);
  }
  await all;
  if (how === 'burst') await limits.calm();
};

const crawl = async (storm: Storm): Promise<void> => {
  const { crawler } = storm;
  const first = [...crawler.everything()];
  const rounds = Math.ceil((first.length + steps) / together);
  for (let at = 0; at < rounds; at += 1) {
    const tasks = Array.from({ length: together }, () => first.shift() ?? crawler.next());
    const due = Math.floor(((at + 1) * breaksWanted) / rounds) > storm.broken;
    await round(storm, tasks, due ? 'break' : at % 12 === 5 ? 'burst' : 'calm');
  }
};

const faultsIn = (err: string): readonly string[] =>
  err
    .split('\n')
    .filter((line) => line.includes('"level":"error"') && !line.includes('"event":"chat.gateway-error"'));

describe('a crawler that knows only what was registered', () => {
  it('should be answered once by everything there is, through broken connections and refusals', async () => {
    const { standIn, child, done } = await start();
    await settle(standIn);
    const chance = dice(seed);
    const limits = new RateLimits(chance);
    standIn.trouble = limits.trouble;
    const crawler = new Crawler(standIn, chance, places, { deepest: 6, answerWithinMs: 10_000 });
    const storm = { standIn, crawler, limits, chance, broken: 0 };
    await crawl(storm);
    const { identifies, resumes } = standIn.gateway.seen;
    const acknowledged = crawler.exchanges.flatMap(({ acknowledgedMs }) => acknowledgedMs ?? []);
    const slowest = Math.round(Math.max(...acknowledged));
    process.stderr.write(
      `crawl: ${crawler.exchanges.length} asked (${JSON.stringify(Object.fromEntries(crawler.done))}), slowest acknowledgement ${slowest} ms, ${storm.broken} breaks (${resumes} resumed, ${identifies - 1} identified anew), ${limits.refused} refused for coming too fast\n`,
    );
    child.kill('SIGTERM');
    const ended = await done;
    expect(standIn.problems).toEqual([]);
    expect(crawler.unanswered()).toEqual([]);
    expect(crawler.wrong).toEqual([]);
    expect(crawler.untried()).toEqual([]);
    expect(limits.impatient).toEqual([]);
    expect(faultsIn(ended.err)).toEqual([]);
    expect(ended).toMatchObject({ code: 0, signal: null });
    expect(storm.broken).toBe(breaksWanted);
    for (const kind of ['command', 'choice', 'typing', 'menu-command', 'button', 'option', 'form'])
      expect(crawler.done.get(kind), kind).toBeGreaterThan(0);
  }, 3_600_000);
});
