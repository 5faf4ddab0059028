import type { BookEvent } from '../../core/book.ts';
import type { Member } from '../heard.ts';
import type { Book, By } from './keeper.ts';

/** Members remembered for each open book; so many that write in a group by turns, and memory stays flat in a big one. */
const mostMembers = 100;

const made = new WeakMap<Book, Map<string, Book>>();

/**
 * The book as this member writes in it: what they are called goes into the history with each entry. The same member gets
 * the same one again, for as long as the book is open.
 */
export const writtenBy = (book: Book, member: Member): Book => {
  const ofBook = made.get(book) ?? new Map<string, Book>();
  made.set(book, ofBook);
  const key = JSON.stringify([member.id, member.name]);
  const before = ofBook.get(key);
  if (before) return before;
  const written = wrapped(book, member);
  ofBook.set(key, written);
  const oldest = ofBook.keys().next();
  if (ofBook.size > mostMembers && !oldest.done) ofBook.delete(oldest.value);
  return written;
};

const wrapped = (book: Book, { id, name }: Member): Book => {
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
