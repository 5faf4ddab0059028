import type { Pipkin } from '../handle.ts';
import type { Log } from '../log.ts';
import type { Topic } from '../topic.ts';
import type { Gate } from './gate.ts';
import type { LongIds } from './long-ids.ts';

/** Where the front-end writes what happens to it: ids, counts and codes, no member's words and no token. */
export type ChatLog = Pick<Log, 'info' | 'error'>;

/** What the handlers of events share. */
export interface Front {
  readonly pipkin: Pipkin;
  readonly topics: ReadonlyMap<string, Topic>;
  readonly log: ChatLog;
  readonly pace: Pace;
  /** Where the platform's HTTP API is, if not at its own address. */
  readonly apiUrl?: string | undefined;
  readonly gate: Gate;
  readonly longIds: LongIds;
  /** Now, in epoch milliseconds. */
  readonly clock: () => number;
}

/** How long things may take, in milliseconds. */
export interface Pace {
  /** An answer not there by then is acknowledged as "thinking". The platform gives up on an interaction after 3 s. */
  readonly deferAfterMs: number;
  /** Suggestions not there by then are none: they cannot be deferred, and typing goes on meanwhile. */
  readonly suggestWithinMs: number;
  /** An answer to a message not there by then is announced by the typing sign. */
  readonly typingAfterMs: number;
  /** The platform takes the typing sign away after ten seconds; it is shown again this often. */
  readonly typingAgainMs: number;
  /** At a stop, how long answers under way are waited for. */
  readonly finishWithinMs: number;
}

export const defaultPace: Pace = {
  deferAfterMs: 1000,
  suggestWithinMs: 1500,
  typingAfterMs: 400,
  typingAgainMs: 8000,
  finishWithinMs: 3000,
};

/** What `work` comes to, or `late` when it takes longer than `ms`. `work` goes on either way. */
export const within = async <T, L>(work: Promise<T>, ms: number, late: L): Promise<T | L> => {
  let timer: NodeJS.Timeout | undefined;
  const waited = new Promise<L>((resolve) => {
    timer = setTimeout(() => resolve(late), ms);
  });
  try {
    return await Promise.race([work, waited]);
  } finally {
    clearTimeout(timer);
  }
};
