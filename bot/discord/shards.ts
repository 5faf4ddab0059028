import type { ChildProcess } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { type APIGatewayBotInfo, REST, Routes, type Shard, ShardingManager } from 'discord.js';
import { faultFields, type Log } from '../log.ts';
import { within } from './front.ts';
import { leaveWord, mayNotReturn } from './shard-words.ts';
import { ShutOutError, startError } from './start-error.ts';

export interface ShardsOptions {
  readonly token: string;
  readonly apiUrl?: string | undefined;
  readonly shards: number | 'auto';
  readonly log: Log;
  /** Aborts when the bot is to stop. */
  readonly stop: AbortSignal;
  /** Called once, when all are in the chat. */
  readonly ready: (count: number) => void;
}

// The platform lets `max_concurrency` connections begin in five seconds.
const identifyMs = 5_500;
const readyWithinMs = 60_000;
/** At a stop: shards finish within this, or are ended. With the time their end takes it stays under ten seconds. */
const leaveWithinMs = 9_000;
const firstPauseMs = 500;
const longestPauseMs = 60_000;
/** A shard that ran this long was well: the next pause is a short one again. */
const wellAfterMs = 60_000;

const askGateway = async ({ token, apiUrl }: ShardsOptions): Promise<APIGatewayBotInfo> => {
  const rest = new REST(apiUrl ? { api: apiUrl } : {}).setToken(token);
  try {
    return (await rest.get(Routes.gatewayBot())) as APIGatewayBotInfo;
  } catch (fault) {
    throw startError(fault, apiUrl);
  }
};

const pause = (ms: number, stop: AbortSignal): Promise<void> =>
  new Promise((resolve) => {
    const timer = setTimeout(resolve, ms);
    stop.addEventListener('abort', () => {
      clearTimeout(timer);
      resolve();
    });
  });

/** Keeps one shard's process going until all are to stop. */
class Keeping {
  readonly #shard: Shard;
  readonly #options: ShardsOptions;
  readonly #giveUp: (why: Error) => void;
  #pauseMs = firstPauseMs;
  #startedAt = 0;
  #process: ChildProcess | undefined;
  #ended: Promise<unknown> = Promise.resolve();

  constructor(shard: Shard, options: ShardsOptions, giveUp: (why: Error) => void) {
    this.#shard = shard;
    this.#options = options;
    this.#giveUp = giveUp;
    // Not by the library's own respawning: that one comes back at once, however often it fails.
    shard.on('death', (process) => void this.#again(process as ChildProcess));
    shard.on('error', (fault) =>
      options.log.error('shard.error', { shard: shard.id, ...faultFields(fault, 'info') }),
    );
    shard.on('spawn', (process) => this.#began(process as ChildProcess));
  }

  /** Starts it; resolves when it is in the chat. */
  async start(): Promise<void> {
    await this.#shard.spawn(readyWithinMs);
    this.#options.log.info('shard.ready', { shard: this.#shard.id });
  }

  /** Asks it to finish and leave, and ends it when it does not. */
  async leave(): Promise<void> {
    const process = this.#process;
    if (!process) return;
    process.send(leaveWord, () => {});
    const late = await within(this.#ended, leaveWithinMs, 'late' as const);
    if (late !== 'late') return;
    this.#options.log.error('shard.ended', { shard: this.#shard.id });
    process.kill('SIGKILL');
  }

  #began(process: ChildProcess): void {
    this.#process = process;
    this.#startedAt = performance.now();
    this.#ended = new Promise((resolve) => process.once('exit', resolve));
    this.#options.log.info('shard.started', { shard: this.#shard.id, pid: process.pid ?? 0 });
  }

  async #again(process: ChildProcess): Promise<void> {
    this.#process = undefined;
    const { stop, log } = this.#options;
    if (stop.aborted) return;
    const code = process.exitCode ?? -1;
    log.error('shard.gone', { shard: this.#shard.id, code, signal: process.signalCode ?? 'none' });
    if (code === mayNotReturn) {
      this.#giveUp(new ShutOutError('The chat platform has shut the bot out. See the log for its code.'));
      return;
    }
    if (performance.now() - this.#startedAt > wellAfterMs) this.#pauseMs = firstPauseMs;
    await pause(this.#pauseMs, stop);
    this.#pauseMs = Math.min(longestPauseMs, this.#pauseMs * 2);
    if (!stop.aborted) await this.start().catch(() => {});
  }
}

const inTurn = async (all: readonly Keeping[], delayMs: number, stop: AbortSignal): Promise<void> => {
  for (const [at, keeping] of all.entries()) {
    if (stop.aborted) return;
    if (at > 0) await pause(delayMs, stop);
    await keeping.start();
  }
};

/**
 * Runs the bot as several processes, each with its share of the groups, until `stop` aborts; then lets every one
 * finish and leave. A process that dies is started again, after a pause that grows while it keeps dying. Rejects when
 * the first start fails or the platform shuts the bot out; all of them have left by then.
 */
export const runShards = async (options: ShardsOptions): Promise<void> => {
  const { token, log } = options;
  const gateway = await askGateway(options);
  const ending = new AbortController();
  const stop = AbortSignal.any([options.stop, ending.signal]);
  const count = options.shards === 'auto' ? gateway.shards : options.shards;
  const manager = new ShardingManager(fileURLToPath(new URL('./shard.js', import.meta.url)), {
    token,
    totalShards: count,
    respawn: false,
    execArgv: process.execArgv,
  });
  let giveUp: (why: Error) => void = () => {};
  const over = new Promise<void>((resolve, reject) => {
    giveUp = reject;
    stop.addEventListener('abort', () => resolve());
  });
  const all = Array.from(
    { length: count },
    (_, id) => new Keeping(manager.createShard(id), { ...options, stop }, giveUp),
  );
  try {
    const delayMs = Math.ceil(identifyMs / gateway.session_start_limit.max_concurrency);
    await Promise.race([over, inTurn(all, delayMs, stop)]);
    if (!stop.aborted) {
      log.info('shards.ready', { count });
      options.ready(count);
    }
    await over;
  } finally {
    ending.abort();
    over.catch(() => {});
    await Promise.all(all.map((keeping) => keeping.leave()));
  }
};
