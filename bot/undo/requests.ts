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

/** What an undoing took back: the number of that request's first entry. */
const undoneBy = ({ event }: BookEntry): number | undefined =>
  event.kind === 'parts-put' && event.because.why === 'undo' ? event.because.of : undefined;

async function* backwards(book: Book): AsyncGenerator<BookEntry> {
  for (let to = book.state.seq; to > 0; to -= piece)
    yield* (await book.entries(Math.max(1, to - piece + 1), to)).toReversed();
}

/** The latest change that fits and still stands: undoings are stepped over with what they took back. */
export const latestStanding = async (
  book: Book,
  fits: (entry: BookEntry) => boolean,
): Promise<BookEntry | undefined> => {
  const gone = new Set<number>();
  for await (const entry of backwards(book)) {
    if (gone.has(entry.first ?? entry.seq)) continue;
    const of = undoneBy(entry);
    if (of !== undefined) gone.add(of);
    else if (fits(entry)) return entry;
  }
  return undefined;
};

/** Whether a request that wrote the entries `first` to `last` stands: not undone since, or undone and done again. */
export const standsSince = async (
  book: Book,
  { first, last }: { readonly first: number; readonly last: number },
): Promise<boolean> => {
  // What each request of the chain left: the first one stands, its undoing does not, the undoing of that does.
  const left = new Map([[first, true]]);
  let stands = true;
  for (let from = last + 1; from <= book.state.seq; from += piece)
    for (const entry of await book.entries(from, from + piece - 1)) {
      const was = left.get(undoneBy(entry) ?? -1);
      if (was === undefined) continue;
      stands = !was;
      left.set(entry.first ?? entry.seq, stands);
    }
  return stands;
};

/** The latest undoing that fits and was not taken back itself, if no other change that fits came after it. */
export const latestUndoing = async (
  book: Book,
  fits: (entry: BookEntry) => boolean,
): Promise<BookEntry | undefined> => {
  const gone = new Set<number>();
  for await (const entry of backwards(book)) {
    if (gone.has(entry.first ?? entry.seq) || !fits(entry)) continue;
    const of = undoneBy(entry);
    const target = of === undefined ? undefined : await book.entry(of);
    if (of === undefined || !target) return undefined;
    if (undoneBy(target) === undefined) return entry;
    gone.add(of);
  }
  return undefined;
};
