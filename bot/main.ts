import type { BackupPlan } from './book/backup.ts';
import { type Config, loadEnvFile, readConfig, secretsOf } from './config.ts';
import { backupFolder, filesFolder, historyFile, localGroup } from './console/local.ts';
import { type House, openHouse, openHouseHere } from './house.ts';
import { type Log, logTo } from './log.ts';
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

const inGroupChat = async (token: string, { apiUrl }: Config, house: House, log: Log): Promise<void> => {
  const [{ startDiscord }, { isChatGroup }, { topics }] = await Promise.all([
    import('./discord/run.ts'),
    import('./discord/daily-sender.ts'),
    import('./topics.ts'),
  ]);
  const running = await startDiscord({
    token,
    apiUrl,
    pipkin: house.pipkin,
    topics,
    log,
    remind: (sender) => house.remind({ sender, owns: isChatGroup, clock: Date.now }),
  });
  process.stdout.write('Pipkin is ready in the group chat.\n');
  await running.stopped;
};

/** Where the daily backups go: beside the books, two weeks of them, from three in the morning on, unless set otherwise. */
const backupPlan = ({
  storeUrl,
  backupDir,
  backupKeep = 14,
  backupHour = 3,
}: Config): BackupPlan | undefined =>
  backupDir === 'none'
    ? undefined
    : { folder: backupDir ?? backupFolder(storeUrl), keep: backupKeep, hour: backupHour };

const start = async (config: Config): Promise<void> => {
  warmPictures();
  const level = config.logLevel ?? (config.token ? 'info' : 'error');
  const log = logTo((line) => process.stderr.write(line), level, Date.now, secretsOf(config));
  const house = await (config.token ? openHouse : openHouseHere)(
    config.storeUrl,
    log,
    level,
    backupPlan(config),
  );
  try {
    await (config.token ? inGroupChat(config.token, config, house, log) : inTerminal(config, house));
  } finally {
    await house.close();
  }
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
