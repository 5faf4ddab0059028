import type { BookEntry, BookEvent, BookState } from '../../core/book.ts';
import type { Result } from '../../core/result.ts';

/** Who recorded something, and when (epoch milliseconds). `name` is what they are called, for the history. */
export interface By {
  readonly who: string;
  readonly at: number;
  readonly name?: string | undefined;
}

/** An entry as another book had it: it keeps its day, its member and its number. */
export type PastEntry = Omit<BookEntry, 'v' | 'group'>;

/** What a change comes to: its events, all or none of them written, and what the answer needs to know of them. */
export interface Decided<T> {
  readonly events: readonly BookEvent[];
  readonly value: T;
  /**
   * Instead of events: a whole history, numbered from 1 without a hole, in place of all there is. Only for a book with
   * nothing of its own in it.
   */
  readonly past?: readonly PastEntry[];
  /** Entries of this book, at most 40, that are written again without something that has to be gone for good. */
  readonly rewritten?: readonly BookEntry[];
}

export interface Recorded<T> {
  readonly entries: readonly BookEntry[];
  readonly value: T;
  /** The book right after the change. */
  readonly state: BookState;
}

/** What a topic sees of one group's book. */
export interface Book {
  readonly group: string;
  /** The book as it stands after the last recorded entry. */
  readonly state: BookState;
  /** Writes one event as one atomic write, and returns its entry once it is on disk. Throws NotRecorded. */
  record(event: BookEvent, by: By): Promise<BookEntry>;
  /** Writes all the events of one request, in this order, or none of them. Throws NotRecorded. */
  record(events: readonly BookEvent[], by: By): Promise<readonly BookEntry[]>;
  /**
   * Records what `decide` makes of the book as it stands when its turn has come: between its look and its writing nobody
   * else writes in this group. Whatever depends on the book (what is left of a lot, a free code, a version) is decided
   * here. No events record nothing. A problem is handed back; throws NotRecorded.
   */
  change<T, P>(decide: (state: BookState) => Result<Decided<T>, P>, by: By): Promise<Result<Recorded<T>, P>>;
  /**
   * Deletes everything this group ever recorded, for good; the book is then empty and can be written to again. With
   * `still` only if that says so of the book as it stands when its turn has come, else `kept`. `begun` when the store
   * failed on the way: then the next writing or opening finishes it. Throws NotRecorded when it could not begin, and
   * then nothing has changed.
   */
  forget(still?: (state: BookState) => boolean): Promise<'gone' | 'begun' | 'kept'>;
  /** Reads back one old entry, or undefined when there is none with this number. */
  entry(seq: number): Promise<BookEntry | undefined>;
  /** Reads back the entries numbered `from` to `to`, both included, as far as they are there. */
  entries(from: number, to: number): Promise<readonly BookEntry[]>;
  /** The book as it stood after entry `seq`; 0 gives the empty book. Quick for recent ones, else read from the journal. */
  stateAt(seq: number): Promise<BookState>;
}

/** Opens books by group. One keeper per process and store. */
export interface Keeper {
  open(group: string): Promise<Book>;
  close(): Promise<void>;
}
