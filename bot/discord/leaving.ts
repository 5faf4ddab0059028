import { type Client, Events } from 'discord.js';
import { guarded } from './faults.ts';
import { type ChatLog, within } from './front.ts';
import { shutOutSentence } from './shut-out.ts';
import { holdStray } from './stray.ts';

/**
 * Why the chat was left: `stop` or a signal asked for it, the platform shut the bot out for good, or there were faults
 * without end.
 */
export type Leaving = 'asked' | 'shut-out' | 'faults';

export interface Leaver {
  /** Lets answers under way finish, then leaves. Safe to call twice. */
  stop(): Promise<Leaving>;
  /** Resolves once left, whatever the reason. */
  readonly stopped: Promise<Leaving>;
  /** What to tell whoever runs the bot when nobody asked for the leaving. */
  reason(): string | undefined;
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
const heard = [
  Events.InteractionCreate,
  Events.MessageCreate,
  Events.GuildCreate,
  Events.ShardReconnecting,
] as const;

/**
 * Leaves once, by `stop`, at a signal, or when the platform closes the connection in a way that no new attempt can
 * mend (a token withdrawn, say). Until then a fault nobody holds is logged instead of ending the process.
 *
 * @param unfinished - what is waited for before that
 */
export const leaver = (client: Client, log: ChatLog, { busy, first, finishWithinMs }: Unfinished): Leaver => {
  let reason: string | undefined;
  let begin: (why: Leaving) => void = () => undefined;
  const begun = new Promise<Leaving>((resolve) => {
    begin = resolve;
  });
  const giveUp = (why: Exclude<Leaving, 'asked'>, sentence: string): void => {
    reason ??= sentence;
    begin(why);
  };
  const letGo = holdStray(log, () => giveUp('faults', 'One fault followed the other; the log has them.'));
  const atSignal = (): void => begin('asked');
  const leave = async (): Promise<Leaving> => {
    const why = await begun;
    for (const signal of signals) process.off(signal, atSignal);
    for (const event of heard) client.removeAllListeners(event);
    await within(Promise.allSettled([first(), ...busy]), finishWithinMs, undefined);
    await guarded(log, 'leaving', () => client.destroy());
    letGo();
    log.info('chat.stopped', { why });
    return why;
  };
  for (const signal of signals) process.once(signal, atSignal);
  client.once(Events.ShardDisconnect, ({ code }) => {
    log.error('chat.shut-out', { code });
    giveUp('shut-out', shutOutSentence(code));
  });
  const stopped = leave();
  const stop = (): Promise<Leaving> => {
    begin('asked');
    return stopped;
  };
  return { stop, stopped, reason: () => reason };
};
