import type { Store } from '../book/store.ts';
import type { Pipkin } from '../handle.ts';
import type { Sender } from '../remind/sender.ts';

/** How the bot stands in the chat at the moment. */
export interface Standing {
  readonly connected: boolean;
  readonly guilds: number;
  /** Round trip of the last heartbeat in milliseconds; undefined before the first. */
  readonly pingMs: number | undefined;
}

/**
 * Looks on while the bot works: each of the first three gives back what it was given, with counting around it. Counts
 * and durations only, by topic and outcome; never a group, a member or a word.
 */
export interface Watch {
  pipkin(pipkin: Pipkin): Pipkin;
  store(store: Store): Store;
  sender(sender: Sender): Sender;
  /** How many books are in memory, asked whenever somebody looks. */
  books(count: () => number): void;
  /** How the bot stands in the chat, asked whenever somebody looks. A terminal has none. */
  chat(standing: () => Standing): void;
}

/** Counts nothing. */
export const noWatch: Watch = {
  pipkin: (pipkin) => pipkin,
  store: (store) => store,
  sender: (sender) => sender,
  books: () => undefined,
  chat: () => undefined,
};
