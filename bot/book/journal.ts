import { afterEntries, type BookEntry, type BookState, bookEntry, emptyBook } from '../../core/book.ts';
import { longChanges } from './journal-long.ts';
import { type Snapshots, snapshotsOf } from './journal-snapshot.ts';
import { keysOf } from './names.ts';
import { BrokenSeal } from './seal.ts';
import type { Change, Store } from './store.ts';
import { damaged, NotRecorded, StoreTrouble } from './trouble.ts';

/** One group's entries in the store. It does not queue: see the keeper for that. */
export interface Journal {
  /** The book as it stands, and how many entries came after the snapshot. Throws StoreTrouble `damaged`. */
  load(): Promise<{
    readonly state: BookState;
    readonly sinceSnapshot: number;
  }>;
  /** One old entry, or undefined when there is none. Throws StoreTrouble `damaged`. */
  entry(seq: number): Promise<BookEntry | undefined>;
  /** Entries `from` to `to`, both included, up to the first that is not there. Throws StoreTrouble `damaged`. */
  entries(from: number, to: number): Promise<readonly BookEntry[]>;
  /**
   * Writes entries, and further small keys with them, all or nothing; on disk when it resolves. Throws NotRecorded,
   * and then none of them is there. `alongside` is at most 50 changes, and
   * `was` at most 40 entries that these are written over.
   */
  append(
    entries: readonly BookEntry[],
    alongside?: readonly Change[],
    was?: readonly BookEntry[],
  ): Promise<void>;
  /**
   * Decides that everything of the group is deleted: from here on the book is empty. Throws NotRecorded when it could
   * not be decided, and then nothing has changed.
   */
  beginForgetting(): Promise<void>;
  /** Deletes it. False when that could not be finished now; the next writing or opening goes on with it. */
  finishForgetting(): Promise<boolean>;
  /**
   * The steps that write a snapshot, each a short write of its own; entries may be written between them. One that
   * rejects ends the snapshot, which loses nothing.
   */
  snapshotSteps(state: BookState): Generator<() => Promise<void>>;
  /** Removes whatever snapshots have left; what cannot be removed now is by the next snapshot. Never rejects. */
  dropSnapshot(): Promise<void>;
}

const blockSize = 250;

// Whatever goes wrong while reading becomes one clear trouble; a broken entry is never passed over.
const reading = async <T>(store: Store, read: () => Promise<T>): Promise<T> => {
  try {
    return await read();
  } catch (fault) {
    if (fault instanceof StoreTrouble) throw fault;
    if (fault instanceof BrokenSeal) throw damaged(store.shown, fault.message, { cause: fault });
    throw new StoreTrouble('no-access', `The store "${store.shown}" could not be read.`, { cause: fault });
  }
};

/** Whatever goes wrong while writing, nothing was recorded. */
const writing = async (write: () => Promise<void>): Promise<void> => {
  try {
    await write();
  } catch (fault) {
    throw fault instanceof NotRecorded ? fault : new NotRecorded('failed', { cause: fault });
  }
};

const brokenAt = (store: Store, seq: number, cause: unknown): never => {
  if (!(cause instanceof BrokenSeal)) throw cause;
  throw damaged(store.shown, `entry ${seq} of a book does not match its checksum`, { cause });
};

const checked = (store: Store, group: string, seq: number, value: unknown): BookEntry => {
  const entry = bookEntry.safeParse(value);
  if (entry.success && entry.data.group === group && entry.data.seq === seq) return entry.data;
  throw damaged(store.shown, `entry ${seq} of a book is not one this version can read`);
};

const numbersFrom = (first: number): number[] => Array.from({ length: blockSize }, (_, at) => first + at);

/** Finds the entry that does not match its checksum, and throws damage that names it; `fault` when there is none. */
const nameBroken = async (store: Store, group: string, numbers: readonly number[], fault: unknown) => {
  if (!(fault instanceof BrokenSeal)) throw fault;
  for (const seq of numbers)
    await store.keyv.get(keysOf(group).entry(seq)).catch((cause) => brokenAt(store, seq, cause));
  throw fault;
};

/** The entries from `first` on, up to the first number there is none for; none may come after such a hole. */
const block = async (store: Store, group: string, first: number): Promise<BookEntry[]> => {
  const keys = keysOf(group);
  const numbers = numbersFrom(first);
  const values = await store.keyv
    .getMany<unknown>(numbers.map(keys.entry))
    .catch((fault) => nameBroken(store, group, numbers, fault));
  const end = values.indexOf(undefined);
  const there = end === -1 ? values : values.slice(0, end);
  if (values.slice(there.length).some((value) => value !== undefined)) {
    throw damaged(store.shown, `entry ${first + there.length} of a book is missing`);
  }
  return there.map((value, at) => checked(store, group, first + at, value));
};

const load = async (
  store: Store,
  group: string,
  snapshots: Snapshots,
): Promise<{ state: BookState; sinceSnapshot: number }> => {
  const start = (await snapshots.read()) ?? emptyBook;
  let state = start;
  let sinceSnapshot = 0;
  // Begins with the snapshot's own last entry: it must be there too.
  let next = Math.max(1, start.seq);
  let more = true;
  while (more) {
    const entries = await block(store, group, next);
    if (next === start.seq && entries.length === 0)
      throw damaged(store.shown, `entry ${start.seq} of a book is missing`);
    const fresh = next === start.seq ? entries.slice(1) : entries;
    state = afterEntries(state, fresh);
    sinceSnapshot += fresh.length;
    next += entries.length;
    more = entries.length === blockSize;
    // A long journal is read and folded piece by piece, and others get their turn in between.
    if (more) await new Promise((resolve) => setImmediate(resolve));
  }
  return { state, sinceSnapshot };
};

const entriesFrom = async (store: Store, group: string, from: number, to: number): Promise<BookEntry[]> => {
  const found: BookEntry[] = [];
  for (let next = Math.max(1, from); next <= to; ) {
    const entries = await block(store, group, next);
    for (const entry of entries) if (entry.seq <= to) found.push(entry);
    if (entries.length < blockSize) break;
    next += blockSize;
  }
  return found;
};

/** The journal of `group` in `store`. Throws StoreTrouble `bad-group`. */
export const journalOf = (store: Store, group: string): Journal => {
  const keys = keysOf(group);
  const long = longChanges(store, group);
  const snapshots = snapshotsOf(store, group);
  const entry = async (seq: number): Promise<BookEntry | undefined> => {
    if (!Number.isSafeInteger(seq) || seq < 1) return undefined;
    const value = await store.keyv
      .get<unknown>(keys.entry(seq))
      .catch((fault) => brokenAt(store, seq, fault));
    return value === undefined ? undefined : checked(store, group, seq, value);
  };
  return {
    load: () =>
      reading(store, async () => {
        await long.settle();
        return load(store, group, snapshots);
      }),
    entry: (seq) => reading(store, () => entry(seq)),
    entries: (from, to) => reading(store, () => entriesFrom(store, group, from, to)),
    append: (entries, alongside = [], was = []) => writing(() => long.append(entries, alongside, was)),
    beginForgetting: () => writing(() => long.beginForgetting()),
    finishForgetting: () =>
      long.settle().then(
        () => true,
        () => false,
      ),
    snapshotSteps: (state) => snapshots.steps(state),
    dropSnapshot: () => snapshots.drop(),
  };
};
