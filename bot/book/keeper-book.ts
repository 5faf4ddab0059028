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
import type { Book, By, Decided, PastEntry, Recorded } from './keeper.ts';
import { keysOf } from './names.ts';
import { RecentStates } from './recent-states.ts';
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
  readonly #recent = new RecentStates();
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
      const { events, past, rewritten, value } = decided.value;
      const entries = past ? await this.#adopt(past) : await this.#writeSome(events, by, rewritten);
      return ok({ entries, value, state: this.#state });
    });
    this.#queue(() => this.#snapshotWhenDue()).catch(() => {});
    return changed;
  }

  forget(still: (state: BookState) => boolean = () => true): Promise<'gone' | 'begun' | 'kept'> {
    return this.#queue(async () => {
      if (!still(this.#state)) return 'kept';
      await this.#journal.beginForgetting();
      this.#state = emptyBook;
      this.#recent.clear();
      this.#sinceSnapshot = 0;
      return (await this.#journal.finishForgetting()) ? 'gone' : 'begun';
    });
  }

  entry(seq: number): Promise<BookEntry | undefined> {
    return this.#journal.entry(seq);
  }

  entries(from: number, to: number): Promise<readonly BookEntry[]> {
    return this.#journal.entries(from, to);
  }

  async stateAt(seq: number): Promise<BookState> {
    const now = this.#state;
    if (seq === now.seq) return now;
    const start = this.#recent.nearest(seq);
    if (start.seq === seq) return start;
    return afterEntries(start, await this.#journal.entries(start.seq + 1, seq));
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
    this.#recent.clear();
    this.#sinceSnapshot = sinceSnapshot;
    this.#inDoubt = false;
  }

  #writeSome(
    events: readonly BookEvent[],
    by: By,
    rewritten: readonly BookEntry[] = [],
  ): Promise<readonly BookEntry[]> {
    if (rewritten.length > 0) return this.#writeAgain(events, by, rewritten);
    return events.length === 0 ? Promise.resolve([]) : this.#write(events, by);
  }

  #write(events: readonly BookEvent[], by: By, also: readonly Change[] = []): Promise<readonly BookEntry[]> {
    const { seq } = this.#state;
    const at = new Date(by.at).toISOString();
    const name = by.name?.trim().slice(0, 100);
    const about = { v: 1, group: this.group, at, who: by.who, ...(name ? { name } : {}) };
    const drafts = events.map((event, index) => ({
      ...about,
      seq: seq + 1 + index,
      ...(index > 0 ? { first: seq + 1 } : {}),
      event,
    }));
    return this.#append(drafts, also);
  }

  #adopt(past: readonly PastEntry[]): Promise<readonly BookEntry[]> {
    const keys = keysOf(this.group);
    const over = this.#state.seq - past.length;
    if (over > 40) throw new RangeError('a history goes into a book with nothing of its own in it');
    // What was there is written over, and what would be left behind it goes in the same step.
    const also = Array.from({ length: Math.max(0, over) }, (_, at) => ({
      key: keys.entry(past.length + at + 1),
      value: undefined,
    }));
    const drafts = past.map((entry) => ({ ...entry, v: 1, group: this.group }));
    this.#recent.clear();
    return this.#append(drafts, [...also, { key: keys.snapshot, value: undefined }], emptyBook);
  }

  /** What must be gone for good goes from the entries, the snapshot and the memory in one step. */
  async #writeAgain(
    events: readonly BookEvent[],
    by: By,
    rewritten: readonly BookEntry[],
  ): Promise<readonly BookEntry[]> {
    const keys = keysOf(this.group);
    const changes = rewritten.map((entry) => ({ key: keys.entry(entry.seq), value: bookEntry.parse(entry) }));
    const entries = await this.#write(events, by, [...changes, { key: keys.snapshot, value: undefined }]);
    this.#recent.clear();
    this.#sinceSnapshot = snapshotEvery;
    return entries;
  }

  async #append(
    drafts: readonly unknown[],
    also: readonly Change[],
    onto: BookState = this.#state,
  ): Promise<readonly BookEntry[]> {
    const before = this.#state;
    // By way of JSON, so that the book in memory is exactly the one that will be read back.
    const entries = drafts.map((draft) => bookEntry.parse(JSON.parse(JSON.stringify(draft))));
    // Folded before it is written: an entry that cannot be folded must not get into the journal.
    const state = afterEntries(onto, entries);
    const done = entries.map(({ event }) => event);
    const alongside = this.#alongside({ group: this.group, before, after: state, events: done });
    await this.#journal.append(entries, [...alongside, ...also]);
    if (onto === before) this.#recent.keep(before);
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
