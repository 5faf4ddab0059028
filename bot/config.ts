import { z } from 'zod';
import { defined } from '../core/defined.ts';
import { fail, ok, type Result } from '../core/result.ts';
import { isShared } from './book/address.ts';
import { type LogLevel, logLevels } from './log.ts';

export interface Config {
  /** Present: the group-chat bot is started. Never printed. */
  readonly token?: string;
  readonly apiUrl?: string;
  readonly storeUrl: string;
  /** Folder of the daily backups; "none" turns them off. Unset, like the two below: `backupPlan` says. */
  readonly backupDir?: string;
  readonly backupKeep?: number;
  readonly backupHour?: number;
  /** Unset: each front-end takes what suits it. */
  readonly logLevel?: LogLevel;
  /** As many processes share the groups; unset: one does. `auto` is as many as the platform advises. */
  readonly shards?: number | 'auto';
  /** How much one member may ask in a minute on the long run; unset: as bot/limit.ts has it. */
  readonly memberPerMinute?: number;
  /** Port on this machine where health and figures can be read; unset: nowhere. */
  readonly metricsPort?: number;
}

export type Environment = Readonly<Record<string, string | undefined>>;

/** Where the books are kept unless STORE_URL says otherwise: a folder under the current one. */
export const defaultStoreUrl = 'data/book';

const isHttp = (text: string): boolean => URL.canParse(text) && /^https?:$/.test(new URL(text).protocol);
const isBareUrl = (text: string): boolean => !/[?#]/.test(text) && !/^https?:\/\/[^/]*@/i.test(text);

/** A whole number in plain digits. */
const wholeBetween = (least: number, most: number, fault: string) =>
  z
    .string()
    .regex(/^\d{1,5}$/, fault)
    .transform(Number)
    .refine((value) => value >= least && value <= most, fault);

/** Values are not quoted in any of these sentences: a token put on the wrong line must not be shown. */
const fields = z.object({
  DISCORD_TOKEN: z
    .string()
    .regex(/^[^\s"']+$/, 'has blanks or quotation marks in it; paste the bare token')
    .optional(),
  DISCORD_API_URL: z
    .string()
    .refine(isHttp, 'must be an http:// or https:// address, as in http://127.0.0.1:8080/api')
    .refine(isBareUrl, 'must have no name, password, ? or # in it')
    .transform((url) => url.replace(/\/+$/, ''))
    .optional(),
  STORE_URL: z.string().max(1000, 'is too long').optional(),
  BACKUP_DIR: z.string().max(1000, 'is too long').optional(),
  BACKUP_KEEP: wholeBetween(1, 3650, 'must be a number of days from 1 to 3650').optional(),
  BACKUP_HOUR: wholeBetween(0, 23, 'must be an hour from 0 to 23').optional(),
  MEMBER_PER_MINUTE: wholeBetween(1, 99_999, 'must be a number from 1 to 99999').optional(),
  METRICS_PORT: wholeBetween(1, 65_535, 'must be a port from 1 to 65535').optional(),
  LOG_LEVEL: z.enum(logLevels, `must be one of ${logLevels.join(', ')}`).optional(),
  SHARDS: z
    .string()
    .regex(/^(auto|[1-9]\d{0,2})$/, 'must be "auto" or a number from 1 to 999')
    .transform((text) => (text === 'auto' ? 'auto' : Number(text)))
    .optional(),
});

const needsDatabase =
  'needs a store that processes can share: set STORE_URL to a postgres:// address, or leave it blank';

/** Faults of single fields are told together with those between fields. */
const schema = fields.superRefine(({ SHARDS, STORE_URL }, context) => {
  if (SHARDS !== undefined && SHARDS !== 1 && !isShared(STORE_URL ?? defaultStoreUrl))
    context.addIssue({ code: 'custom', path: ['SHARDS'], message: needsDatabase });
});

/** Every name that is read from the environment. */
export const settingNames: readonly string[] = Object.keys(fields.shape);

/** An empty value is one left blank in `.env`, so it counts as not set. */
const filledIn = (env: Environment): Record<string, string> =>
  Object.fromEntries(
    settingNames.flatMap((name) => {
      const value = env[name]?.trim();
      return value ? [[name, value]] : [];
    }),
  );

/** The environment as settings, or every fault in it as one plain sentence each. */
export const readConfig = (env: Environment): Result<Config, readonly string[]> => {
  const read = schema.safeParse(filledIn(env));
  if (!read.success)
    return fail(read.error.issues.map(({ path, message }) => `${path.join('.')} ${message}.`));
  const { data } = read;
  return ok({
    storeUrl: data.STORE_URL ?? defaultStoreUrl,
    ...defined({
      token: data.DISCORD_TOKEN,
      apiUrl: data.DISCORD_API_URL,
      logLevel: data.LOG_LEVEL,
      backupDir: data.BACKUP_DIR,
      backupKeep: data.BACKUP_KEEP,
      backupHour: data.BACKUP_HOUR,
      shards: data.SHARDS === 1 ? undefined : data.SHARDS,
      memberPerMinute: data.MEMBER_PER_MINUTE,
      metricsPort: data.METRICS_PORT,
    }),
  });
};

/** A password as it stands in an address and as it is meant. */
const passwordIn = (address: string): readonly string[] => {
  const { password } = URL.canParse(address) ? new URL(address) : { password: '' };
  return [password, decodedOr(password)];
};

const decodedOr = (text: string): string => {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
};

/** Shorter ones would be found in every other word; nobody is kept out by them anyway. */
const leastSecret = 4;

/** What must never be shown or logged: the token, and the password of a database. */
export const secretsOf = ({ token = '', storeUrl }: Config): readonly string[] => [
  ...new Set([token, ...passwordIn(storeUrl)].filter(({ length }) => length >= leastSecret)),
];

/** What went wrong, for the person who starts the bot. Secrets are taken out wherever they may have come in. */
export const plainly = (fault: unknown, config: Config): string =>
  secretsOf(config).reduce(
    (message, secret) => message.replaceAll(secret, '(secret)'),
    fault instanceof Error ? fault.message : String(fault),
  );

/** Reads `.env` of the current folder into the environment, if there is one. What is set already stays. */
export const loadEnvFile = (): void => {
  try {
    process.loadEnvFile();
  } catch (fault) {
    if (!(fault instanceof Error && 'code' in fault && fault.code === 'ENOENT')) throw fault;
  }
};
