import type { BookState } from '../../core/book.ts';
import type { Keeper } from './keeper.ts';
import type { Alongside } from './keeper-book.ts';
import { indexPrefix, keysOf } from './names.ts';
import { belongsTo } from './shard.ts';
import type { Store } from './store.ts';

/** The index of groups that are to be forgotten, kept in step with their books. */
export const forgettingIndex: Alongside = ({ group, before, after }) => {
  if (before.forgetting?.due === after.forgetting?.due) return [];
  const due = after.forgetting?.due;
  return [{ key: keysOf(group).index('forgetting'), value: due === undefined ? undefined : { group, due } }];
};

/** True once the waiting time of a book that is to be forgotten is over; `at` is epoch milliseconds. */
export const isForgettingDue = ({ forgetting }: BookState, at: number): boolean => isDue(forgetting?.due, at);

const isDue = (due: unknown, at: number): boolean => typeof due === 'string' && Date.parse(due) <= at;

/**
 * Forgets every group whose waiting time is over, for good; resolves to how many. A book whose members thought better of
 * it in the meantime is kept: its own word counts, not the index. Throws StoreTrouble or NotRecorded.
 */
export const forgetDue = async (keeper: Keeper, store: Store, at: number): Promise<number> => {
  const due: string[] = [];
  for await (const [, value] of store.scan(indexPrefix('forgetting'))) {
    const asked = value as { readonly group?: unknown; readonly due?: unknown };
    const { group } = asked;
    if (typeof group !== 'string' || !isDue(asked.due, at)) continue;
    // Where several processes share the store, each forgets its own groups.
    if (!store.shard || belongsTo(group, store.shard)) due.push(group);
  }
  let gone = 0;
  for (const group of due) {
    const book = await keeper.open(group);
    const done = await book.forget((state) => isForgettingDue(state, at));
    if (done !== 'kept') gone += 1;
  }
  return gone;
};
