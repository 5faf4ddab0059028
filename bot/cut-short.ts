import type { Log } from './log.ts';

/** Supervisors usually wait ten seconds before they kill. What is not on disk by then was not told to anybody as done. */
const withinMs = 9000;

/** At the first signal to stop the process has this long; then it ends, whatever still holds it up. */
export const cutShort = (log: Log): void => {
  const end = (): void => {
    log.error('stop.cut-short', { afterMs: withinMs });
    process.exit(1);
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const)
    process.once(signal, () => setTimeout(end, withinMs).unref());
};
