import type { BookEvent } from '../../core/book.ts';
import type { Member } from '../heard.ts';
import type { Book, By } from './keeper.ts';

/** The book as this member writes in it: what they are called goes into the history with each entry. */
export const writtenBy = (book: Book, { id, name }: Member): Book => {
  const named = (by: By): By => (by.who === id && name !== id ? { ...by, name } : by);
  return {
    group: book.group,
    get state() {
      return book.state;
    },
    record: ((what: BookEvent, by: By) => book.record(what, named(by))) as Book['record'],
    change: (decide, by) => book.change(decide, named(by)),
    forget: (still) => book.forget(still),
    entry: (seq) => book.entry(seq),
    entries: (from, to) => book.entries(from, to),
    stateAt: (seq) => book.stateAt(seq),
  };
};
