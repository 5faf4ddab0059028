import { createRequire } from 'node:module';
import type { Logger, pino } from 'pino';

export const logLevels = ['silent', 'error', 'info', 'debug'] as const;
export type LogLevel = (typeof logLevels)[number];
type Severity = Exclude<LogLevel, 'silent'>;

export type LogFields = Readonly<Record<string, string | number | boolean>>;

/** One JSON object a line. Fields are ids, counts and durations; a member's words never go in. */
export interface Log {
  debug(event: string, fields?: LogFields): void;
  info(event: string, fields?: LogFields): void;
  error(event: string, fields?: LogFields): void;
}

/** Names under which a member's words or a secret could be handed on by mistake: their values are never written. */
const unwelcome = ['token', 'password', 'authorization', 'text', 'content', 'say', 'request', 'answer'];

/** Characters JSON leaves as they are and a terminal may obey: controls, line ends of Unicode, changes of direction. */
const obeyed = /[\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;
const escaped = (character: string): string => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;

/** The line as it may be written: no secret in it, nothing in it that a terminal obeys. */
const harmless = (line: string, secrets: readonly string[]): string =>
  secrets
    .flatMap((secret) => [secret, JSON.stringify(secret).slice(1, -1)])
    .reduce((rest, secret) => (secret === '' ? rest : rest.replaceAll(secret, '(secret)')), line)
    .replace(obeyed, escaped);

// Loaded with the first line that is written: a one-shot command that logs nothing need not wait for it.
const loaded = (): typeof pino => createRequire(import.meta.url)('pino') as typeof pino;

const loggerTo = (write: (line: string) => void, clock: () => number, secrets: readonly string[]): Logger =>
  loaded()(
    {
      level: 'debug',
      base: null,
      messageKey: 'event',
      timestamp: () => `,"at":"${new Date(clock()).toISOString()}"`,
      formatters: { level: (label) => ({ level: label }) },
      redact: { paths: unwelcome.flatMap((name) => [name, `*.${name}`]), censor: '(left out)' },
      hooks: { streamWrite: (line) => harmless(line, secrets) },
    },
    { write },
  );

/**
 * `write` takes one line with its line break. Events quieter than `level` are dropped.
 *
 * @param secrets - what is taken out of every line wherever it may have come in: a token, a password
 */
export const logTo = (
  write: (line: string) => void,
  level: LogLevel,
  clock: () => number,
  secrets: readonly string[] = [],
): Log => {
  let logger: Logger | undefined;
  const at = (severity: Severity) => {
    if (logLevels.indexOf(severity) > logLevels.indexOf(level)) return () => {};
    return (event: string, fields: LogFields = {}) => {
      logger ??= loggerTo(write, clock, secrets);
      logger[severity](fields, event);
    };
  };
  return { debug: at('debug'), info: at('info'), error: at('error') };
};

/**
 * An error as log fields: its name, code and where it happened. Its message is left out because it may quote what a
 * member wrote; `LOG_LEVEL=debug` adds it for the person at the keyboard.
 */
export const faultFields = (fault: unknown, level: LogLevel): LogFields => {
  if (!(fault instanceof Error)) return { name: typeof fault };
  const frames = (fault.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line));
  return {
    name: fault.name,
    ...('code' in fault ? { code: String(fault.code) } : {}),
    where: frames
      .slice(0, 8)
      .map((line) => line.trim())
      .join(' | '),
    ...(level === 'debug' ? { message: fault.message } : {}),
  };
};
