import { backupPlan } from './backup-plan.ts';
import { type Config, loadEnvFile, readConfig, secretsOf } from './config.ts';
import { filesFolder, historyFile, localGroup } from './console/local.ts';
import { storeWaitMs } from './discord/shard-words.ts';
import { type House, openHouse, openHouseHere } from './house.ts';
import { type Log, type LogLevel, logTo } from './log.ts';
import { warmPictures } from './pictures/warm.ts';

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

const inGroupChat = async (token: string, { apiUrl }: Config, house: House, log: Log): Promise<void> => {
  const { serveChat } = await import('./discord/serve.ts');
  const why = await serveChat({ token, apiUrl, house, log, ready: sayReady });
  // The supervisor may start it again; it then waits until the other one has gone.
  if (why === 'taken-over') throw new Error('Another running copy of the program has taken over the store.');
};

/** As several processes; this one only starts them and holds no store. */
const inShards = async (token: string, { apiUrl, shards = 'auto' }: Config, log: Log): Promise<void> => {
  const { runShards } = await import('./discord/shards.ts');
  await runShards({ token, apiUrl, shards, log, stop: untilSignal(), ready: sayReady });
};

const withHouse = async (config: Config, log: Log, level: LogLevel): Promise<void> => {
  warmPictures();
  const backups = backupPlan(config);
  const open = config.token
    ? openHouse(config.storeUrl, log, level, { backups, waitMs: storeWaitMs })
    : openHouseHere(config.storeUrl, log, level, { backups });
  const house = await open;
  try {
    await (config.token ? inGroupChat(config.token, config, house, log) : inTerminal(config, house));
  } finally {
    await house.close();
  }
};

const start = async (config: Config): Promise<void> => {
  const level = config.logLevel ?? (config.token ? 'info' : 'error');
  const log = logTo((line) => process.stderr.write(line), level, Date.now, secretsOf(config));
  const { token, shards } = config;
  await (token && shards ? inShards(token, config, log) : withHouse(config, log, level));
};

/** What went wrong, for the person who starts the bot. Secrets are taken out wherever they may have come in. */
const said = (fault: unknown, config: Config): string =>
  secretsOf(config).reduce(
    (message, secret) => message.replaceAll(secret, '(secret)'),
    fault instanceof Error ? fault.message : String(fault),
  );

const fail = (code: number, sentence: string): void => {
  process.stderr.write(`${sentence}\n`);
  process.exitCode = code;
};

loadEnvFile();
const config = readConfig(process.env);
if (config.ok) await start(config.value).catch((fault: unknown) => fail(1, said(fault, config.value)));
else fail(2, config.problem.join('\n'));
