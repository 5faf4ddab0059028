import { z } from 'zod';
import { benchOf } from '../../core/book.ts';
import { follow, nextTellMs } from '../../core/remind/next.ts';
import type { Alongside } from '../book/keeper-book.ts';
import { indexPrefix, keysOf } from '../book/names.ts';
import type { Store } from '../book/store.ts';
import { damaged } from '../book/trouble.ts';

/** What lies beside a group's book while something is to be told: the instant (epoch ms) from which it is owed. */
const waiting = z.strictObject({ v: z.literal(1), group: z.string().min(1), at: z.number() });
export type Waiting = z.output<typeof waiting>;

/**
 * The key that goes with a change of a book, when it changes. `noticed` hears of it before it is on disk: whoever looks at
 * the book then waits its turn, so a change that fails is seen as not made.
 */
export const waitingAlongside =
  (noticed: (group: string, at: number | undefined) => void = () => {}): Alongside =>
  ({ group, before, after, events }) => {
    const [old, now] = [benchOf(before), benchOf(after)];
    if (old === now) return [];
    follow(old, now, events);
    const at = nextTellMs(now);
    if (at === nextTellMs(old)) return [];
    noticed(group, at);
    const value = at === undefined ? undefined : ({ v: 1, group, at } satisfies Waiting);
    return [{ key: keysOf(group).index('waiting'), value }];
  };

/** Every group something is to be told to, read once at the start. Throws StoreTrouble `damaged`. */
export async function* waitingGroups(store: Store): AsyncGenerator<Waiting> {
  for await (const [, value] of store.scan(indexPrefix('waiting'))) {
    const read = waiting.safeParse(value);
    if (!read.success) throw damaged(store.shown, 'a note of what is due is not one this version can read');
    yield read.data;
  }
}
