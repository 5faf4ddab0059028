import type { Shard } from '../book/shard.ts';
import type { House } from '../house.ts';
import { limitsFor } from '../limit.ts';
import type { Log } from '../log.ts';
import { topics } from '../topics.ts';
import { isChatGroup } from './daily-sender.ts';
import type { Leaving } from './leaving.ts';
import { type RunningChat, startDiscord } from './run.ts';

export interface Serving {
  readonly token: string;
  readonly apiUrl?: string | undefined;
  readonly house: House;
  readonly log: Log;
  readonly shard?: Shard;
  /** How much one member may ask in a minute; the usual when left out. */
  readonly memberPerMinute?: number | undefined;
  /** Called once, when the bot is in the chat. */
  readonly ready?: (running: RunningChat) => void;
}

/** Why the bot is not in the chat any more. `taken-over`: another process has its groups now. */
export type Served = Leaving | 'taken-over';

/**
 * Enters the chat and answers until asked to stop, shut out by the platform, or until another process has taken over
 * the groups of this one. Rejects with ChatStartError when it cannot enter.
 */
export const serveChat = async ({ house, ready, memberPerMinute, ...about }: Serving): Promise<Served> => {
  const running = await startDiscord({
    ...about,
    pipkin: house.pipkin,
    notes: house.notes,
    limits: limitsFor(memberPerMinute),
    topics,
    remind: (sender) => house.remind({ sender, owns: isChatGroup, clock: Date.now }),
  });
  ready?.(running);
  const takenOver = house.lost?.then(() => 'taken-over' as const) ?? new Promise<never>(() => {});
  const why = await Promise.race([running.stopped, takenOver]);
  if (why === 'taken-over') {
    about.log.error('store.taken-over');
    await running.stop();
  }
  return why;
};
