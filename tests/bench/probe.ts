// Loaded before the bot's own program, so that what is measured is what `npm start` runs and nothing else.

/** What the process says about itself when asked. Bytes; `heapUsed` right after a full collection when one was asked for. */
export interface Probed {
  readonly rss: number;
  readonly heapUsed: number;
  readonly external: number;
  readonly cpuMs: number;
}

process.on('message', (what: 'as it is' | 'collected') => {
  if (what === 'collected') (globalThis as { gc?: () => void }).gc?.();
  const { rss, heapUsed, external } = process.memoryUsage();
  const { user, system } = process.cpuUsage();
  process.send?.({ rss, heapUsed, external, cpuMs: (user + system) / 1000 } satisfies Probed);
});
// Nor is it to go on by itself when whoever measured it has gone.
process.on('disconnect', () => process.exit(1));
// Waiting for questions must not keep the bot from ending.
process.channel?.unref();
