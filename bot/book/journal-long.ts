import { z } from 'zod';
import { type BookEntry, bookEntry } from '../../core/book.ts';
import { type IndexKind, indexKinds, keysOf, markPrefix } from './names.ts';
import type { Change, Store } from './store.ts';
import { maxChanges } from './store-over.ts';
import { damaged } from './trouble.ts';

// A change that does not fit into one write is made in several, between a first one that also sets a mark and a last
// one that takes it away. A mark that is found later says what has to be undone (entries) or finished (forgetting).
const mark = z.discriminatedUnion('doing', [
  z.strictObject({
    v: z.literal(1),
    group: z.string(),
    doing: z.literal('append'),
    from: z.int().min(1),
    /** Entries that are being written over, to be put back. */
    was: z.array(bookEntry).optional(),
  }),
  z.strictObject({ v: z.literal(1), group: z.string(), doing: z.literal('forget') }),
]);
type Mark = z.output<typeof mark>;

/** Changes of one group of any length, all or nothing. */
export interface LongChanges {
  /** `was` are entries that these are written over: they stand again when it comes to nothing. */
  append(
    entries: readonly BookEntry[],
    alongside: readonly Change[],
    was?: readonly BookEntry[],
  ): Promise<void>;
  /** From here on the group is forgotten; `settle` deletes what it had. */
  beginForgetting(): Promise<void>;
  /** Undoes or finishes what was left half-done. Must come before the group is read. */
  settle(): Promise<void>;
}

const gone = (key: string): Change => ({ key, value: undefined });

const keysUnder = async (store: Store, prefix: string): Promise<string[]> => {
  const keys: string[] = [];
  for await (const [key] of store.scan(prefix)) keys.push(key);
  return keys;
};

/** Deletes keys from the last to the first, with the last of them `last`: what remains at any time is a whole shorter book. */
const deleteAll = async (store: Store, keys: readonly string[], last: readonly Change[]): Promise<void> => {
  const left = [...keys].reverse().map(gone);
  while (left.length + last.length > maxChanges) await store.writeAll(left.splice(0, maxChanges));
  await store.writeAll([...left, ...last]);
};

const finishForgetting = async (store: Store, group: string): Promise<void> => {
  const keys = keysOf(group);
  const indexes = (Object.keys(indexKinds) as IndexKind[]).map((kind) => keys.index(kind));
  await deleteAll(store, [...(await keysUnder(store, keys.book)), ...indexes], []);
  // The mark goes last, so that what a crash has left is wiped by the next opening.
  await store.wipe?.();
  await store.writeAll([gone(keys.mark)]);
};

const undoAppend = async (
  store: Store,
  { group, from, was = [] }: Extract<Mark, { doing: 'append' }>,
): Promise<void> => {
  const keys = keysOf(group);
  const first = keys.entry(from);
  const back = was.map((entry) => ({ key: keys.entry(entry.seq), value: entry }));
  const kept = new Set(back.map(({ key }) => key));
  const entries = (await keysUnder(store, keys.entries)).filter((key) => key >= first && !kept.has(key));
  await deleteAll(store, entries, [...back, gone(keys.mark)]);
};

const settle = async (store: Store, found: Mark): Promise<void> =>
  found.doing === 'forget' ? finishForgetting(store, found.group) : undoAppend(store, found);

const checkedMark = (store: Store, value: unknown): Mark => {
  const found = mark.safeParse(value);
  if (found.success) return found.data;
  throw damaged(store.shown, 'the mark of an unfinished change is not one this version can read');
};

/** Settles the unfinished changes of every group that is ours, so that what was to be forgotten goes even if nobody opens that book. */
export const settleAll = async (store: Store): Promise<void> => {
  const found: Mark[] = [];
  for await (const [, value] of store.scan(markPrefix)) found.push(checkedMark(store, value));
  for (const each of found.filter(({ group }) => store.owns(group))) await settle(store, each);
};

/** For one group; not to be called twice at the same time. */
export const longChanges = (store: Store, group: string): LongChanges => {
  const keys = keysOf(group);
  let unsettled = false;

  const settleOwn = async (): Promise<void> => {
    const value = await store.keyv.get<unknown>(keys.mark);
    if (value !== undefined) await settle(store, checkedMark(store, value));
    unsettled = false;
  };

  const appendInPieces = async (
    changes: readonly Change[],
    last: readonly Change[],
    { from, was }: { readonly from: number; readonly was: readonly BookEntry[] },
  ) => {
    const over = was.length > 0 ? { was: [...was] } : {};
    const begun: Mark = { v: 1, group, doing: 'append', from, ...over };
    const left = [...changes];
    unsettled = true;
    await store.writeAll([{ key: keys.mark, value: begun }, ...left.splice(0, maxChanges - 1)]);
    while (left.length + last.length + 1 > maxChanges) await store.writeAll(left.splice(0, maxChanges));
    await store.writeAll([...left, ...last, gone(keys.mark)]);
    unsettled = false;
  };

  return {
    settle: settleOwn,
    append: async (entries, alongside, was = []) => {
      if (unsettled) await settleOwn();
      const changes = entries.map((entry) => ({ key: keys.entry(entry.seq), value: entry }));
      const [first] = entries;
      if (first === undefined || changes.length + alongside.length <= maxChanges)
        return store.writeAll([...changes, ...alongside]);
      try {
        await appendInPieces(changes, alongside, { from: first.seq, was });
      } catch (fault) {
        // On a full disk this may fail too: then the next writing or opening does it.
        await settleOwn().catch(() => {});
        throw fault;
      }
    },
    beginForgetting: async () => {
      const begun: Mark = { v: 1, group, doing: 'forget' };
      await store.writeAll([{ key: keys.mark, value: begun }]);
      unsettled = true;
    },
  };
};
