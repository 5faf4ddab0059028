import { createHash } from 'node:crypto';
import { z } from 'zod';
import type { Notes } from '../book/notes.ts';
import type { ChatMessage, ChatReply } from '../render/discord.ts';
import { longestId, type NextButton } from './buttons.ts';
import { maxIdLength } from './ids.ts';

const prefix = 'long1:';

/** Ids kept for a group; the oldest make room. With the longest id that bounds what a group can take up: 150 kB. */
const mostKept = 120;
/** How long an id is kept: thirty days, in milliseconds. */
const keptMs = 30 * 86_400_000;

const keptId = z.strictObject({ key: z.string(), id: z.string().max(longestId), at: z.number() });
const keptIds = z.strictObject({ v: z.literal(1), ids: z.array(keptId).max(mostKept) });
type KeptId = z.output<typeof keptId>;

/** 96 bits are more than anybody could guess, and guessing would lead to words that could be typed anyway. */
const keyOf = (id: string): string => createHash('sha256').update(id).digest('base64url').slice(0, 16);

export interface LongIds {
  /** The reply with every id inside the platform's limit. What was too long is kept, before the reply is sent. */
  fitted(reply: ChatReply, group: string, at: number): Promise<ChatReply>;
  /** The id that a short one stands for in this group; itself where it is not one of these; undefined when it is gone. */
  whole(id: string, group: string, at: number): Promise<string | undefined>;
}

const isLong = ({ id }: NextButton): boolean => id.length > maxIdLength;

const allOf = (reply: ChatReply): readonly NextButton[] =>
  reply.messages.flatMap(({ buttons, menu }) => [...buttons, ...(menu?.options ?? [])]);

const withIds = (
  message: ChatMessage,
  change: (list: readonly NextButton[]) => NextButton[],
): ChatMessage => {
  const options = change(message.menu?.options ?? []);
  return {
    ...message,
    buttons: change(message.buttons),
    menu: message.menu && options.length > 0 ? { ...message.menu, options } : undefined,
  };
};

const changed = (reply: ChatReply, change: (list: readonly NextButton[]) => NextButton[]): ChatReply => {
  const [first, ...more] = reply.messages;
  return {
    ...reply,
    messages: [withIds(first, change), ...more.map((message) => withIds(message, change))],
  };
};

/** The long ids of each group, under short keys, in the group's own notes. */
class Kept {
  readonly #notes: Notes;
  readonly #turns = new Map<string, Promise<void>>();

  constructor(notes: Notes) {
    this.#notes = notes;
  }

  async read(group: string): Promise<readonly KeptId[]> {
    const kept = keptIds.safeParse(await this.#notes.read(group, 'long-ids'));
    return kept.success ? kept.data.ids : [];
  }

  /** One writing at a time for each group: two at once would lose one of them. */
  add(group: string, ids: readonly string[], at: number): Promise<void> {
    const done = (this.#turns.get(group) ?? Promise.resolve()).then(() => this.#add(group, ids, at));
    const settled = done
      .catch(() => undefined)
      .finally(() => {
        if (this.#turns.get(group) === settled) this.#turns.delete(group);
      });
    this.#turns.set(group, settled);
    return done;
  }

  async #add(group: string, ids: readonly string[], at: number): Promise<void> {
    const fresh = ids.map((id) => ({ key: keyOf(id), id, at }));
    const before = await this.read(group);
    const known = new Map(before.map((one) => [one.key, one.at]));
    // The same answer again needs no writing while what it says is kept for long enough.
    if (fresh.every(({ key }) => at - (known.get(key) ?? Number.NEGATIVE_INFINITY) < keptMs / 2)) return;
    const keys = new Set(fresh.map(({ key }) => key));
    const old = before.filter((one) => at - one.at < keptMs && !keys.has(one.key));
    await this.#notes.write(group, 'long-ids', { v: 1, ids: [...old, ...fresh].slice(-mostKept) });
  }
}

/** Ids longer than the platform takes, kept in the group's own notes under a short one. `onFault` hears why one was not. */
export const longIds = (notes: Notes, onFault: (fault: unknown) => void): LongIds => {
  const kept = new Kept(notes);
  return {
    async fitted(reply, group, at) {
      const long = allOf(reply).filter(isLong);
      if (long.length === 0) return reply;
      try {
        const ids = [...new Set(long.map(({ id }) => id))];
        await kept.add(group, ids, at);
      } catch (fault) {
        onFault(fault);
        return changed(reply, (list) => list.filter((one) => !isLong(one)));
      }
      return changed(reply, (list) =>
        list.map((one) => (isLong(one) ? { ...one, id: prefix + keyOf(one.id) } : one)),
      );
    },
    async whole(id, group, at) {
      if (!id.startsWith(prefix)) return id;
      const key = id.slice(prefix.length);
      const found = (await kept.read(group)).find((one) => one.key === key);
      return found && at - found.at < keptMs ? found.id : undefined;
    },
  };
};
