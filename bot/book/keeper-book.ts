import { afterEntry, type BookEntry, type BookEvent, type BookState, bookEntry } from '../../core/book.ts';
import type { Journal } from './journal.ts';
import type { Book } from './keeper.ts';

/**
 * Entries between two snapshots. Opening reads at most about this many (500 take 3 to 10 ms to check), and a snapshot
 * of a very large book (5,000 recipes) costs about 30 ms, so 500 spreads that to less than 0.1 ms an entry.
 */
export const snapshotEvery = 500;

/** One group's open book: its entries are written one after the other, in the order they were asked for. */
export class OpenBook implements Book {
  readonly group: string;
  readonly #journal: Journal;
  #state: BookState;
  #sinceSnapshot: number;
  #last: Promise<unknown> = Promise.resolve();

  constructor(
    group: string,
    journal: Journal,
    loaded: { readonly state: BookState; readonly sinceSnapshot: number },
  ) {
    this.group = group;
    this.#journal = journal;
    this.#state = loaded.state;
    this.#sinceSnapshot = loaded.sinceSnapshot;
    if (this.#sinceSnapshot >= snapshotEvery) this.#queue(() => this.#snapshot()).catch(() => {});
  }

  get state(): BookState {
    return this.#state;
  }

  record(event: BookEvent, by: { readonly who: string; readonly at: number }): Promise<BookEntry> {
    const written = this.#queue(() => this.#write(event, by));
    // After the entry is acknowledged, and before the next one of this group.
    this.#queue(() => this.#snapshotWhenDue()).catch(() => {});
    return written;
  }

  entry(seq: number): Promise<BookEntry | undefined> {
    return this.#journal.entry(seq);
  }

  /** Resolves when nothing is being written any more. */
  async idle(): Promise<void> {
    await this.#last;
  }

  #queue<T>(task: () => Promise<T>): Promise<T> {
    const done = this.#last.then(task);
    this.#last = done.catch(() => {});
    return done;
  }

  async #write(event: BookEvent, by: { readonly who: string; readonly at: number }): Promise<BookEntry> {
    const draft = {
      v: 1,
      group: this.group,
      seq: this.#state.seq + 1,
      at: new Date(by.at).toISOString(),
      who: by.who,
      event,
    };
    // By way of JSON, so that the book in memory is exactly the one that will be read back.
    const entry = bookEntry.parse(JSON.parse(JSON.stringify(draft)));
    // Folded before it is written: an entry that cannot be folded must not get into the journal.
    const state = afterEntry(this.#state, entry);
    await this.#journal.append(entry);
    this.#state = state;
    this.#sinceSnapshot += 1;
    return entry;
  }

  async #snapshotWhenDue(): Promise<void> {
    if (this.#sinceSnapshot >= snapshotEvery) await this.#snapshot();
  }

  async #snapshot(): Promise<void> {
    // Counted from here whether it works or not: a failure loses nothing and is tried again later.
    this.#sinceSnapshot = 0;
    await this.#journal.snapshot(this.#state);
  }
}
