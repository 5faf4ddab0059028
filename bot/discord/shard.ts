import { backupPlan } from '../backup-plan.ts';
import type { Shard } from '../book/shard.ts';
import { type Config, loadEnvFile, plainly, readConfig, secretsOf } from '../config.ts';
import { openHouse } from '../house.ts';
import { logTo } from '../log.ts';
import { warmUp } from '../warm.ts';
import { openWatch } from '../watch/open.ts';
import type { RunningChat } from './run.ts';
import { serveChat } from './serve.ts';
import { leaveWord, mayNotReturn, storeWaitMs } from './shard-words.ts';

// One share of the groups, in a process of its own that bot/discord/shards.ts starts. Its number and the count of
// shares come in the environment, under the names that the chat library gives them.

const shardFrom = (env: NodeJS.ProcessEnv) => ({ index: Number(env.SHARDS), count: Number(env.SHARD_COUNT) });

// The one who started it asks it to leave by a word, and when that one has died there is nobody to answer to. Signals
// that reach the whole group of processes are heard as well, and a second one does not cut short what is under way.
const stopWhenTold = (stop: () => void): void => {
  process.on('message', (word) => {
    if (word === leaveWord) stop();
  });
  process.once('disconnect', stop);
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, stop);
};

// SHARDS means something else here: see above.
const settings = (): Config & { readonly token: string } => {
  loadEnvFile();
  const config = readConfig({ ...process.env, SHARDS: undefined });
  if (!config.ok || !config.value.token)
    throw new Error('A shard is started by the bot itself, with its settings.');
  return { ...config.value, token: config.value.token };
};

const serve = async (config: ReturnType<typeof settings>, shard: Shard): Promise<number> => {
  const { token, apiUrl, storeUrl, logLevel = 'info', metricsPort, memberPerMinute } = config;
  let running: RunningChat | undefined;
  let told = false;
  stopWhenTold(() => {
    told = true;
    running?.stop().catch(() => {});
  });
  const log = logTo((line) => process.stderr.write(line), logLevel, Date.now, secretsOf(config));
  // Each share has a port of its own, counted on from the first.
  const { watch, close } = await openWatch(metricsPort && metricsPort + shard.index);
  const backups = backupPlan(config);
  const house = await openHouse(storeUrl, log, logLevel, { shard, waitMs: storeWaitMs, backups, watch });
  void warmUp(Date.now());
  try {
    const ready = (now: RunningChat): void => {
      running = now;
      watch.chat(() => now.standing());
      if (told) now.stop().catch(() => {});
    };
    const why = told
      ? 'asked'
      : await serveChat({ token, apiUrl, house, log, shard, memberPerMinute, ready });
    if (why === 'asked') return 0;
    return why === 'shut-out' ? mayNotReturn : 1;
  } finally {
    await house.close();
    await close();
  }
};

const failed = (sentence: string): number => {
  process.stderr.write(`${sentence}\n`);
  return 1;
};

const start = async (): Promise<number> => {
  const shard = shardFrom(process.env);
  const config = settings();
  return serve(config, shard).catch((fault: unknown) => failed(plainly(fault, config)));
};

process.exitCode = await start().catch((fault: unknown) => failed(String(fault)));
// Nothing more to do: the line to the one who started it must not keep it here.
if (process.connected) process.disconnect();
