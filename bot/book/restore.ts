import type { BookEntry } from '../../core/book.ts';
import { afterEntries, emptyBook } from '../../core/book.ts';
import { BackupTrouble, readBackup } from './backup-file.ts';
import { journalOf } from './journal.ts';
import type { Alongside } from './keeper-book.ts';
import { keysOf } from './names.ts';
import { seal } from './seal.ts';
import type { Store } from './store.ts';
import { maxChanges } from './store-over.ts';

/** Set while a restore is under way: a store that has it is not whole. */
const restoringKey = 'r/restoring';

/** True for a store in which a restore was begun and not finished. */
export const isHalfRestored = async (store: Store): Promise<boolean> =>
  (await store.keyv.get(restoringKey)) !== undefined;

export interface Restored {
  readonly groups: number;
  readonly entries: number;
}

/** The entries of a file, those of a group together. */
async function* booksOf(path: string): AsyncGenerator<readonly BookEntry[]> {
  let book: BookEntry[] = [];
  for await (const entry of readBackup(path)) {
    if (book[0] !== undefined && book[0].group !== entry.group) {
      yield book;
      book = [];
    }
    book.push(entry);
  }
  if (book.length > 0) yield book;
}

/** Reads all of it once: that it is whole, and that every book in it begins at 1 and has no hole. */
const checkFile = async (path: string): Promise<Restored> => {
  const seen = new Set<string>();
  let entries = 0;
  for await (const book of booksOf(path)) {
    const group = book[0]?.group ?? '';
    const broken = book.findIndex(({ seq }, at) => seq !== at + 1);
    if (seen.has(group) || broken >= 0) throw new BackupTrouble('A book in this backup file has a hole.');
    seen.add(group);
    entries += book.length;
  }
  return { groups: seen.size, entries };
};

const isEmpty = async (store: Store): Promise<boolean> => {
  for await (const [key] of store.scan('')) if (key !== restoringKey) return false;
  return true;
};

/** What a restore that was cut off left behind. */
const clear = async (store: Store): Promise<void> => {
  const keys: string[] = [];
  for await (const [key] of store.scan('')) if (key !== restoringKey) keys.push(key);
  while (keys.length > 0)
    await store.writeAll(keys.splice(0, maxChanges).map((key) => ({ key, value: undefined })));
};

/** Writes one book with its index keys, and reads it back. */
const restoreBook = async (store: Store, book: readonly BookEntry[], alongside: Alongside): Promise<void> => {
  const group = book[0]?.group ?? '';
  const journal = journalOf(store, group);
  const after = afterEntries(emptyBook, book);
  const events = book.map(({ event }) => event);
  await journal.append(book, alongside({ group, before: emptyBook, after, events }));
  const back = await journal.entries(1, book.length + 1);
  if (seal(back) !== seal(book)) throw new Error(`the book "${group}" did not come back as it was written`);
  if ((await store.keyv.get(keysOf(group).mark)) !== undefined)
    throw new Error('a change was left half-done');
};

/**
 * Puts every book of a backup file into an empty store, with the index keys that go `alongside`. The file is read whole before the first write, and each book
 * read back after it was written. Cut off on the way, the store stays marked, and the same call begins anew. Throws
 * BackupTrouble when the file or the store will not do, and then nothing has changed; NotRecorded when writing failed.
 */
export const restore = async (store: Store, path: string, alongside: Alongside): Promise<Restored> => {
  const found = await checkFile(path);
  const again = await isHalfRestored(store);
  if (!again && !(await isEmpty(store)))
    throw new BackupTrouble(
      `The store "${store.shown}" has something in it. Restore into a new, empty folder, then point STORE_URL at it.`,
    );
  await store.writeAll([{ key: restoringKey, value: true }]);
  if (again) await clear(store);
  for await (const book of booksOf(path)) await restoreBook(store, book, alongside);
  await store.writeAll([{ key: restoringKey, value: undefined }]);
  return found;
};
