import type { BookEntry, BookEvent, BookState } from '../../core/book.ts';

/** Why nothing was recorded. The bot tells the maker so; an append that returns `ok` is on disk. */
export type RecordProblem = {
  readonly code: 'not-recorded';
  readonly reason: 'disk-full' | 'read-only' | 'failed';
};

/** What a topic sees of one group's book. */
export interface Book {
  readonly group: string;
  /** The book as it stands after the last recorded entry. */
  readonly state: BookState;
  /** Writes one event as one atomic write, and returns its entry once it is on disk. */
  record(event: BookEvent, by: { readonly who: string; readonly at: number }): Promise<BookEntry>;
  /** Reads back one old entry, or undefined when there is none with this number. */
  entry(seq: number): Promise<BookEntry | undefined>;
}

/** Opens books by group. One keeper per process and store. */
export interface Keeper {
  open(group: string): Promise<Book>;
  close(): Promise<void>;
}
