import { journalOf } from './journal.ts';
import type { Book, Keeper } from './keeper.ts';
import { type Alongside, OpenBook } from './keeper-book.ts';
import type { Store } from './store.ts';
import { StoreTrouble } from './trouble.ts';

/** Books kept in memory when nobody is using them. */
export const defaultMaxOpen = 1000;
/** And for how long at most, in milliseconds: half an hour. Reading a small book anew takes less than a millisecond. */
export const defaultIdleMs = 30 * 60 * 1000;

interface Shelved {
  readonly book: OpenBook;
  /** When it was last asked for, by the keeper's clock. */
  readonly usedAt: number;
}

/** How many books are kept in memory when nobody uses them, and for how long. */
interface Kept {
  readonly maxOpen?: number;
  readonly idleMs?: number;
  /** Milliseconds from any beginning; the process's own when left out. */
  readonly clock?: () => number;
}

/**
 * The books that are open. A group never has two: entries would get the same number. So a book that was put away
 * is found again for as long as anybody still holds it, and is read anew only after that.
 */
class Shelf {
  readonly #max: number;
  readonly #idleMs: number;
  readonly #clock: () => number;
  /** By when they were last asked for, the longest ago first. */
  readonly #recent = new Map<string, Shelved>();
  readonly #held = new Map<string, WeakRef<OpenBook>>();
  readonly #gone = new FinalizationRegistry<string>((group) => {
    if (this.#held.get(group)?.deref() === undefined) this.#held.delete(group);
  });

  constructor({
    maxOpen = defaultMaxOpen,
    idleMs = defaultIdleMs,
    clock = performance.now.bind(performance),
  }: Kept) {
    this.#max = Math.max(1, maxOpen);
    this.#idleMs = idleMs;
    this.#clock = clock;
  }

  find(group: string): OpenBook | undefined {
    const book = this.#recent.get(group)?.book ?? this.#held.get(group)?.deref();
    if (book) this.#use(book);
    return book;
  }

  add(book: OpenBook): void {
    this.#held.set(book.group, new WeakRef(book));
    this.#gone.register(book, book.group);
    this.#use(book);
  }

  get size(): number {
    return this.#recent.size;
  }

  all(): OpenBook[] {
    return [...this.#held.values()].flatMap((held) => held.deref() ?? []);
  }

  #use(book: OpenBook): void {
    const now = this.#clock();
    this.#recent.delete(book.group);
    this.#recent.set(book.group, { book, usedAt: now });
    for (const [group, { usedAt }] of this.#recent) {
      if (this.#recent.size <= this.#max && now - usedAt <= this.#idleMs) break;
      this.#recent.delete(group);
    }
  }
}

export interface KeeperOptions extends Kept {
  /** Index keys that go with the entries, written in the same transaction. */
  readonly alongside?: Alongside;
}

export interface CountedKeeper extends Keeper {
  /** How many books are kept in memory. */
  books(): number;
}

/**
 * Keeps the books of every group in `store`, at most `maxOpen` of them in memory beyond those in use, none longer than
 * `idleMs` after it was last asked for (they go when another book is asked for). Opening
 * reads a book once however many ask at the same time; recording queues per group and resolves when the entry is
 * on disk.
 *
 * `open` throws StoreTrouble (`damaged`, `bad-group`, `closed`, `no-access`); `record` throws NotRecorded, and the
 * book then stands as before. `close` waits for what is being written and closes the store.
 */
export const openKeeper = (store: Store, options: KeeperOptions = {}): CountedKeeper => {
  const shelf = new Shelf(options);
  const loading = new Map<string, Promise<OpenBook>>();
  let closing: Promise<void> | undefined;

  const load = async (group: string): Promise<OpenBook> => {
    const journal = journalOf(store, group);
    const book = new OpenBook(group, journal, await journal.load(), options.alongside);
    shelf.add(book);
    return book;
  };

  const open = async (group: string): Promise<Book> => {
    if (closing) throw new StoreTrouble('closed', 'The store is closed.');
    const there = shelf.find(group) ?? loading.get(group);
    if (there) return there;
    const fresh = load(group).finally(() => loading.delete(group));
    loading.set(group, fresh);
    return fresh;
  };

  const finish = async (): Promise<void> => {
    await Promise.allSettled(loading.values());
    await Promise.all(shelf.all().map((book) => book.idle()));
    await store.close();
  };

  const close = (): Promise<void> => {
    closing ??= finish();
    return closing;
  };

  return { open, books: () => shelf.size, close };
};
