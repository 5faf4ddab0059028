import type { Heard } from './heard.ts';
import type { Asked, Last } from './reading.ts';

/** How long a follow-up may wait for, in milliseconds: fifteen minutes. */
const keepMs = 15 * 60 * 1000;
/** Conversations remembered at once; the oldest are dropped, so memory stays flat however many members write. */
const mostConversations = 5000;

interface Before {
  readonly last?: Last;
  readonly asked?: Asked;
}

/** What each member asked last in each channel: held in memory only, and only for follow-ups. */
export interface Memory {
  /** What a message may go on from. What was asked back is told to one message only. */
  recall(heard: Heard): Before;
  keep(heard: Heard, last: Last): void;
  /** Keeps what was asked back, beside what was answered before. */
  ask(heard: Heard, asked: Asked | undefined): void;
}

/** One member in one channel of one group. */
export const conversationOf = ({ group, channel, member }: Heard): string =>
  JSON.stringify([group, channel, member.id]);

export const memory = (): Memory => {
  const kept = new Map<string, { readonly before: Before; readonly at: number }>();
  const standing = (heard: Heard): Before => {
    const found = kept.get(conversationOf(heard));
    if (!found || heard.at - found.at > keepMs || heard.at < found.at - keepMs) return {};
    return found.before;
  };
  const put = (heard: Heard, before: Before): void => {
    const key = conversationOf(heard);
    kept.delete(key);
    kept.set(key, { before, at: heard.at });
    const oldest = kept.keys().next();
    if (kept.size > mostConversations && !oldest.done) kept.delete(oldest.value);
  };
  const recall = (heard: Heard): Before => {
    const before = standing(heard);
    const { asked, ...rest } = before;
    const found = kept.get(conversationOf(heard));
    if (asked && found) kept.set(conversationOf(heard), { ...found, before: rest });
    return before;
  };
  return {
    recall,
    keep: (heard, last) => put(heard, { last }),
    ask: (heard, asked) => {
      if (asked) put(heard, { ...standing(heard), asked });
    },
  };
};
