import { type Client, Events } from 'discord.js';
import { faultFields } from '../log.ts';
import { guarded } from './faults.ts';
import { type ChatLog, within } from './front.ts';

/** Why the chat was left: `stop` or a signal asked for it, or the platform shut the bot out for good. */
export type Leaving = 'asked' | 'shut-out';

export interface Leaver {
  /** Lets answers under way finish, then leaves. Safe to call twice. */
  stop(): Promise<Leaving>;
  /** Resolves once left, whatever the reason. */
  readonly stopped: Promise<Leaving>;
}

export interface Unfinished {
  /** Answers under way. */
  readonly busy: ReadonlySet<Promise<void>>;
  /** Ends what posts of its own accord. */
  readonly first: () => Promise<void>;
  /** How long both are waited for. */
  readonly finishWithinMs: number;
}

const signals = ['SIGTERM', 'SIGINT', 'SIGHUP'] as const;
const heard = [Events.InteractionCreate, Events.MessageCreate, Events.ShardReconnecting] as const;

/**
 * Leaves once, by `stop`, at a signal, or when the platform closes the connection in a way that no new attempt can
 * mend (a token withdrawn, say). Until then a rejection nobody holds is logged instead of ending the process: that is
 * what a malformed event leads to inside the library.
 *
 * @param unfinished - what is waited for before that
 */
export const leaver = (client: Client, log: ChatLog, { busy, first, finishWithinMs }: Unfinished): Leaver => {
  const stray = (fault: unknown): void => log.error('chat.stray-fault', faultFields(fault, 'info'));
  let begin: (why: Leaving) => void = () => undefined;
  const begun = new Promise<Leaving>((resolve) => {
    begin = resolve;
  });
  const atSignal = (): void => begin('asked');
  const leave = async (): Promise<Leaving> => {
    const why = await begun;
    for (const signal of signals) process.off(signal, atSignal);
    for (const event of heard) client.removeAllListeners(event);
    await within(Promise.allSettled([first(), ...busy]), finishWithinMs, undefined);
    await guarded(log, 'leaving', () => client.destroy());
    process.off('unhandledRejection', stray);
    log.info('chat.stopped', { why });
    return why;
  };
  process.on('unhandledRejection', stray);
  for (const signal of signals) process.once(signal, atSignal);
  client.once(Events.ShardDisconnect, ({ code }) => {
    log.error('chat.shut-out', { code });
    begin('shut-out');
  });
  const stopped = leave();
  const stop = (): Promise<Leaving> => {
    begin('asked');
    return stopped;
  };
  return { stop, stopped };
};
