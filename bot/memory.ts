import type { Heard } from './heard.ts';
import type { Last } from './reading.ts';

/** How long a follow-up may wait for, in milliseconds: fifteen minutes. */
const keepMs = 15 * 60 * 1000;
/** Conversations remembered at once; the oldest are dropped, so memory stays flat however many members write. */
const mostConversations = 5000;

interface Kept {
  readonly last: Last;
  readonly at: number;
}

/** What each member asked last in each channel: held in memory only, and only for follow-ups. */
export interface Memory {
  recall(heard: Heard): Last | undefined;
  keep(heard: Heard, last: Last): void;
}

/** One member in one channel of one group. */
export const conversationOf = ({ group, channel, member }: Heard): string =>
  JSON.stringify([group, channel, member.id]);

export const memory = (): Memory => {
  const kept = new Map<string, Kept>();
  const recall = (heard: Heard): Last | undefined => {
    const found = kept.get(conversationOf(heard));
    if (!found || heard.at - found.at > keepMs || heard.at < found.at - keepMs) return undefined;
    return found.last;
  };
  const keep = (heard: Heard, last: Last): void => {
    const key = conversationOf(heard);
    kept.delete(key);
    kept.set(key, { last, at: heard.at });
    const oldest = kept.keys().next();
    if (kept.size > mostConversations && !oldest.done) kept.delete(oldest.value);
  };
  return { recall, keep };
};
