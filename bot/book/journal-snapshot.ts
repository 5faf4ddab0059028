import type { BookState } from '../../core/book.ts';
import { type GroupKeys, keysOf } from './names.ts';
import {
  restOf,
  type Slot,
  type SnapshotHead,
  type SnapshotPage,
  snapshotHead,
  snapshotPage,
  snapshotPages,
  stateFrom,
  wholeSnapshot,
} from './snapshot.ts';
import type { Store } from './store.ts';
import { maxChanges } from './store-over.ts';

/** One group's snapshot in the store: a head and pages, so that neither writing nor reading it holds up the rest. */
export interface Snapshots {
  /** The state of the last snapshot, or undefined when there is none that can be used. Throws BrokenSeal. */
  read(): Promise<BookState | undefined>;
  /** The steps that write a snapshot of `state`, to be done one after the other; the last one puts it in force. */
  steps(state: BookState): Generator<() => Promise<void>>;
  /** Removes all of them, and what is left of them on the disk. What cannot be removed now is by the next snapshot. Never rejects. */
  drop(): Promise<void>;
}

// Read in one go; between two goes others get their turn.
const pagesAtOnce = 4;

const numbersFrom = (from: number, count: number): number[] =>
  Array.from({ length: count }, (_, at) => from + at);

const turn = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

const readPages = async (
  store: Store,
  keys: GroupKeys,
  { slot, pages }: SnapshotHead,
): Promise<SnapshotPage[] | undefined> => {
  const read: SnapshotPage[] = [];
  for (let from = 0; from < pages; from += pagesAtOnce) {
    const numbers = numbersFrom(from, Math.min(pagesAtOnce, pages - from));
    const values = await Promise.all(numbers.map((page) => store.keyv.get<unknown>(keys.page(slot, page))));
    for (const value of values) {
      const page = snapshotPage.safeParse(value);
      if (!page.success) return undefined;
      read.push(page.data);
    }
    await turn();
  }
  return read;
};

/** Deletes every page there is. */
const clearPages = async (store: Store, keys: GroupKeys): Promise<void> => {
  const old: string[] = [];
  for await (const [key] of store.scan(keys.pages)) old.push(key);
  while (old.length > 0)
    await store.writeAll(old.splice(0, maxChanges).map((key) => ({ key, value: undefined })));
};

/** For one group; `steps` are not to be mixed with those of another snapshot of it. */
export const snapshotsOf = (store: Store, group: string): Snapshots => {
  const keys = keysOf(group);
  const clear = (): Promise<void> => clearPages(store, keys);
  let last: Pick<SnapshotHead, 'slot' | 'pages'> | undefined;

  const read = async (): Promise<BookState | undefined> => {
    const value = await store.keyv.get<unknown>(keys.snapshot);
    const whole = wholeSnapshot.safeParse(value);
    if (whole.success) return whole.data.group === group ? whole.data.state : undefined;
    const head = snapshotHead.safeParse(value);
    if (!head.success || head.data.group !== group) return undefined;
    last = head.data;
    const pages = await readPages(store, keys, head.data);
    return pages && stateFrom(head.data, pages);
  };

  function* removePages({ slot, pages }: Pick<SnapshotHead, 'slot' | 'pages'>) {
    for (let from = 0; from < pages; from += maxChanges) {
      const old = numbersFrom(from, Math.min(maxChanges, pages - from));
      yield () => store.writeAll(old.map((page) => ({ key: keys.page(slot, page), value: undefined })));
    }
  }

  function* steps(state: BookState): Generator<() => Promise<void>> {
    const old = last;
    // Without a head, pages that are there belong to nothing any more.
    if (!old) yield clear;
    const slot: Slot = old?.slot === 'a' ? 'b' : 'a';
    let pages = 0;
    for (const page of snapshotPages(state)) {
      const key = keys.page(slot, pages);
      pages += 1;
      yield () => store.writeAll([{ key, value: page }]);
    }
    const head: SnapshotHead = { v: 2, group, slot, pages, rest: restOf(state) };
    yield async () => {
      await store.writeAll([{ key: keys.snapshot, value: head }]);
      last = head;
    };
    if (old) yield* removePages(old);
  }

  const drop = async (): Promise<void> => {
    last = undefined;
    await store
      .writeAll([{ key: keys.snapshot, value: undefined }])
      .then(clear)
      .then(() => store.wipe?.())
      .catch(() => {});
  };

  return { read, steps, drop };
};
