export const logLevels = ['silent', 'error', 'info', 'debug'] as const;
export type LogLevel = (typeof logLevels)[number];

export type LogFields = Readonly<Record<string, string | number | boolean>>;

/** One JSON object a line. Fields are ids, counts and durations; a member's words never go in. */
export interface Log {
  debug(event: string, fields?: LogFields): void;
  info(event: string, fields?: LogFields): void;
  error(event: string, fields?: LogFields): void;
}

/** `write` takes one line with its line break. Events quieter than `level` are dropped. */
export const logTo = (write: (line: string) => void, level: LogLevel, clock: () => number): Log => {
  const at = (severity: Exclude<LogLevel, 'silent'>) => {
    if (logLevels.indexOf(severity) > logLevels.indexOf(level)) return () => {};
    return (event: string, fields: LogFields = {}) =>
      write(
        `${JSON.stringify({ at: new Date(clock()).toISOString(), level: severity, event, ...fields })}\n`,
      );
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
