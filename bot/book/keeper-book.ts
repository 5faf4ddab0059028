import {
  afterEntries,
  type BookEntry,
  type BookEvent,
  type BookState,
  bookEntry,
  emptyBook,
} from '../../core/book.ts';
import { ok, type Result } from '../../core/result.ts';
import type { Journal } from './journal.ts';
import type { Book, By, Decided, Recorded } from './keeper.ts';
import type { Change } from './store.ts';
import { NotRecorded } from './trouble.ts';

/**
 * Entries between two snapshots. Opening reads at most about this many (500 take 3 to 10 ms to check), and a snapshot
 * of a very large book (5,000 recipes) costs about 30 ms, so 500 spreads that to less than 0.1 ms an entry.
 */
export const snapshotEvery = 500;

/**
 * Further small keys to be written in the same transaction as the entries that lead from `before` to `after`, so that
 * they never disagree with the journal. Only those that change: an empty list costs nothing.
 */
export type Alongside = (change: {
  readonly group: string;
  readonly before: BookState;
  readonly after: BookState;
  /** The events that lead from one to the other. */
  readonly events: readonly BookEvent[];
}) => readonly Change[];

/** One group's open book: its entries are written one after the other, in the order they were asked for. */
export class OpenBook implements Book {
  readonly group: string;
  readonly #journal: Journal;
  readonly #alongside: Alongside;
  #state: BookState;
  #sinceSnapshot: number;
  #inDoubt = false;
  #last: Promise<unknown> = Promise.resolve();

  constructor(
    group: string,
    journal: Journal,
    loaded: { readonly state: BookState; readonly sinceSnapshot: number },
    alongside: Alongside = () => [],
  ) {
    this.group = group;
    this.#journal = journal;
    this.#alongside = alongside;
    this.#state = loaded.state;
    this.#sinceSnapshot = loaded.sinceSnapshot;
    if (this.#sinceSnapshot >= snapshotEvery) this.#queue(() => this.#snapshot()).catch(() => {});
  }

  get state(): BookState {
    return this.#state;
  }

  record(event: BookEvent, by: By): Promise<BookEntry>;
  record(events: readonly BookEvent[], by: By): Promise<readonly BookEntry[]>;
  async record(
    what: BookEvent | readonly BookEvent[],
    by: By,
  ): Promise<BookEntry | readonly BookEntry[] | undefined> {
    const events: readonly BookEvent[] = 'kind' in what ? [what] : what;
    const written = this.#queue(() => this.#write(events, by));
    // After the entries are acknowledged, and before the next ones of this group.
    this.#queue(() => this.#snapshotWhenDue()).catch(() => {});
    const entries = await written;
    return 'kind' in what ? entries[0] : entries;
  }

  async change<T, P>(
    decide: (state: BookState) => Result<Decided<T>, P>,
    by: By,
  ): Promise<Result<Recorded<T>, P>> {
    const changed = this.#queue(async () => {
      const decided = decide(this.#state);
      if (!decided.ok) return decided;
      const { events, value } = decided.value;
      const entries = events.length === 0 ? [] : await this.#write(events, by);
      return ok({ entries, value, state: this.#state });
    });
    this.#queue(() => this.#snapshotWhenDue()).catch(() => {});
    return changed;
  }

  forget(): Promise<'gone' | 'begun'> {
    return this.#queue(async () => {
      await this.#journal.beginForgetting();
      this.#state = emptyBook;
      this.#sinceSnapshot = 0;
      return (await this.#journal.finishForgetting()) ? 'gone' : 'begun';
    });
  }

  entry(seq: number): Promise<BookEntry | undefined> {
    return this.#journal.entry(seq);
  }

  /** Resolves when nothing is being written any more. */
  async idle(): Promise<void> {
    await this.#last;
  }

  #queue<T>(task: () => Promise<T>): Promise<T> {
    const done = this.#last.then(() => this.#settled(task));
    this.#last = done.catch(() => {});
    return done;
  }

  // When nobody can say whether something was recorded, only the store itself can: it is read again before anything
  // else is written.
  async #settled<T>(task: () => Promise<T>): Promise<T> {
    try {
      if (this.#inDoubt) await this.#readAgain();
      return await task();
    } catch (fault) {
      if (fault instanceof NotRecorded && fault.reason === 'uncertain') this.#inDoubt = true;
      throw fault;
    }
  }

  async #readAgain(): Promise<void> {
    const { state, sinceSnapshot } = await this.#journal.load().catch((cause) => {
      throw new NotRecorded('failed', { cause });
    });
    this.#state = state;
    this.#sinceSnapshot = sinceSnapshot;
    this.#inDoubt = false;
  }

  async #write(events: readonly BookEvent[], by: By): Promise<readonly BookEntry[]> {
    const before = this.#state;
    const at = new Date(by.at).toISOString();
    const entries = events.map((event, index) => {
      const draft = { v: 1, group: this.group, seq: before.seq + 1 + index, at, who: by.who, event };
      // By way of JSON, so that the book in memory is exactly the one that will be read back.
      return bookEntry.parse(JSON.parse(JSON.stringify(draft)));
    });
    // Folded before it is written: an entry that cannot be folded must not get into the journal.
    const state = afterEntries(before, entries);
    await this.#journal.append(
      entries,
      this.#alongside({ group: this.group, before, after: state, events: entries.map(({ event }) => event) }),
    );
    this.#state = state;
    this.#sinceSnapshot += entries.length;
    return entries;
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
