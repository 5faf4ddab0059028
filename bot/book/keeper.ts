import type { BookEntry, BookEvent, BookState } from '../../core/book.ts';
import type { Result } from '../../core/result.ts';

/** Who recorded something, and when (epoch milliseconds). */
export interface By {
  readonly who: string;
  readonly at: number;
}

/** What a change comes to: its events, all or none of them written, and what the answer needs to know of them. */
export interface Decided<T> {
  readonly events: readonly BookEvent[];
  readonly value: T;
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
   * Deletes everything this group ever recorded, for good; the book is then empty and can be written to again.
   * `begun` when the store failed on the way: then the next writing or opening finishes it. Throws NotRecorded when it
   * could not begin, and then nothing has changed.
   */
  forget(): Promise<'gone' | 'begun'>;
  /** Reads back one old entry, or undefined when there is none with this number. */
  entry(seq: number): Promise<BookEntry | undefined>;
}

/** Opens books by group. One keeper per process and store. */
export interface Keeper {
  open(group: string): Promise<Book>;
  close(): Promise<void>;
}
