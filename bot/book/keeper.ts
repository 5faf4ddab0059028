import type { BookEntry, BookEvent, BookState } from '../../core/book.ts';

/** Why nothing was recorded. The bot tells the maker so; an append that returns `ok` is on disk. */
export type RecordProblem = {
  readonly code: 'not-recorded';
  readonly reason: 'disk-full' | 'read-only' | 'failed';
};

/** Who recorded something, and when (epoch milliseconds). */
export interface By {
  readonly who: string;
  readonly at: number;
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
