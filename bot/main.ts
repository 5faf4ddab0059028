import { backupPlan } from './backup-plan.ts';
import { type Config, loadEnvFile, plainly, readConfig, secretsOf } from './config.ts';
import { filesFolder, historyFile, localGroup } from './console/local.ts';
import { cutShort } from './cut-short.ts';
import type { RunningChat } from './discord/run.ts';
import { storeWaitMs } from './discord/shard-words.ts';
import { ShutOutError } from './discord/start-error.ts';
import { type House, openHouse, openHouseHere } from './house.ts';
import { type Log, type LogLevel, logTo } from './log.ts';
import { warmUp } from './warm.ts';
import { openWatch } from './watch/open.ts';
import type { Watch } from './watch/watch.ts';

/** Aborts at the first SIGINT, SIGTERM or SIGHUP; a second one ends the process as ever. */
const untilSignal = (): AbortSignal => {
  const stopping = new AbortController();
  for (const name of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(name, () => stopping.abort());
  return stopping.signal;
};

const inTerminal = async (config: Config, house: House): Promise<void> => {
  const { runChat } = await import('./terminal/chat.ts');
  await runChat({
    input: process.stdin,
    output: process.stdout,
    env: process.env,
    pipkin: house.pipkin,
    clock: Date.now,
    filesFolder: filesFolder(config.storeUrl),
    historyFile: historyFile(config.storeUrl),
    signal: untilSignal(),
    remind: (sender) => house.remind({ sender, owns: (group) => group === localGroup, clock: Date.now }),
  });
};

const sayReady = (): void => {
  process.stdout.write('Pipkin is ready in the group chat.\n');
};

interface Tools {
  readonly house: House;
  readonly log: Log;
  readonly watch: Watch;
}

const inGroupChat = async (
  token: string,
  { apiUrl, memberPerMinute }: Config,
  { house, log, watch }: Tools,
): Promise<void> => {
  const { serveChat } = await import('./discord/serve.ts');
  let inside: RunningChat | undefined;
  const ready = (running: RunningChat): void => {
    inside = running;
    watch.chat(() => running.standing());
    sayReady();
    process.stdout.write(`To take it into a server: ${running.invite}\n`);
  };
  cutShort(log);
  const why = await serveChat({ token, apiUrl, house, log, memberPerMinute, ready });
  // The supervisor may start it again; it then waits until the other one has gone.
  if (why === 'taken-over') throw new Error('Another running copy of the program has taken over the store.');
  const reason = inside?.reason() ?? 'The chat was left unasked.';
  if (why === 'shut-out') throw new ShutOutError(reason);
  if (why !== 'asked') throw new Error(reason);
};

/** As several processes; this one only starts them and holds no store. */
const inShards = async (token: string, { apiUrl, shards = 'auto' }: Config, log: Log): Promise<void> => {
  const { runShards } = await import('./discord/shards.ts');
  await runShards({ token, apiUrl, shards, log, stop: untilSignal(), ready: sayReady });
};

const withHouse = async (config: Config, log: Log, level: LogLevel): Promise<void> => {
  void warmUp(Date.now());
  const { token, storeUrl } = config;
  const { watch, close } = await openWatch(config.metricsPort);
  const options = { backups: backupPlan(config), watch };
  const open = token
    ? openHouse(storeUrl, log, level, { ...options, waitMs: storeWaitMs })
    : openHouseHere(storeUrl, log, level, options);
  const house = await open;
  try {
    await (token ? inGroupChat(token, config, { house, log, watch }) : inTerminal(config, house));
  } finally {
    await house.close();
    await close();
  }
};

const start = async (config: Config): Promise<void> => {
  const level = config.logLevel ?? (config.token ? 'info' : 'error');
  const log = logTo((line) => process.stderr.write(line), level, Date.now, secretsOf(config));
  const { token, shards } = config;
  await (token && shards ? inShards(token, config, log) : withHouse(config, log, level));
};

const fail = (code: number, sentence: string): void => {
  process.stderr.write(`${sentence}\n`);
  process.exitCode = code;
};

/** 2: the settings are wrong. 3: the platform does not let the bot in. Neither mends itself by starting again; 1 may. */
const failed = (fault: unknown, config: Config): void =>
  fail(fault instanceof ShutOutError ? 3 : 1, plainly(fault, config));

loadEnvFile();
const config = readConfig(process.env);
if (config.ok) await start(config.value).catch((fault: unknown) => failed(fault, config.value));
else fail(2, config.problem.join('\n'));
