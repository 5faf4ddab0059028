import type { BookEntry, BookEvent } from '../../core/book.ts';
import type { Book } from '../book/keeper.ts';

const piece = 200;

/** Entries the bot writes by itself, and what is gone for good: nothing to undo. */
const notUndone: ReadonlySet<BookEvent['kind']> = new Set([
  'reminder-begun',
  'reminder-sent',
  'reminder-failed',
  'contact-forgotten',
  'forgetting-stopped',
]);

export const isUndoable = ({ event }: BookEntry): boolean => !notUndone.has(event.kind);

/** All the entries of the request that entry `seq` belongs to, in order. None when there is no such entry. */
export const requestAt = async (book: Book, seq: number): Promise<readonly BookEntry[]> => {
  const entry = await book.entry(seq);
  if (!entry) return [];
  const first = entry.first ?? seq;
  const entries: BookEntry[] = [];
  for (let next = first; ; next += piece) {
    const some = await book.entries(next, next + piece - 1);
    const own = some.filter((each) => each.seq === first || each.first === first);
    entries.push(...own);
    if (own.length < piece) return entries;
  }
};

/** The latest entry that fits, looking back from entry `from`. */
export const latestEntry = async (
  book: Book,
  from: number,
  fits: (entry: BookEntry) => boolean,
): Promise<BookEntry | undefined> => {
  for (let to = from; to > 0; to -= piece) {
    const found = (await book.entries(Math.max(1, to - piece + 1), to)).findLast(fits);
    if (found) return found;
  }
  return undefined;
};
