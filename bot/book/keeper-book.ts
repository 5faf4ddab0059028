import {
  afterEntries,
  type BookEntry,
  type BookEvent,
  type BookState,
  bookEntry,
  emptyBook,
} from '../../core/book.ts';
import { ok, type Result } from '../../core/result.ts';
import { entriesAfter } from './entries.ts';
import type { Journal } from './journal.ts';
import type { Book, By, Decided, PastEntry, Recorded } from './keeper.ts';
import { keysOf } from './names.ts';
import { RecentStates } from './recent-states.ts';
import { rowsIn } from './snapshot.ts';
import type { Change } from './store.ts';
import { NotRecorded } from './trouble.ts';

/** Entries between two snapshots of a small book. Opening reads about this many (500 take 3 to 10 ms to check). */
export const snapshotEvery = 500;

/** A whole history is taken into a book with so few entries at most: a demo. */
const mostWrittenOver = 40;

/** The larger the book, the more a snapshot costs, and the seldomer it is: a tenth of its rows, up to this. */
const seldomest = 2000;

const snapshotDue = (state: BookState, since: number): boolean =>
  since >= snapshotEvery && since >= Math.min(seldomest, rowsIn(state) / 10);

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
  /** Counts how often something had to be gone from the book: a snapshot from before must not be written on. */
  #times = 0;
  #snapshotting: Promise<void> | undefined;
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
    this.#snapshotWhenDue();
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
    return changed;
  }

  forget(still: (state: BookState) => boolean = () => true): Promise<'gone' | 'begun' | 'kept'> {
    return this.#queue(async () => {
      if (!still(this.#state)) return 'kept';
      await this.#journal.beginForgetting();
      this.#state = emptyBook;
      this.#recent.clear();
      this.#sinceSnapshot = 0;
      this.#times += 1;
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
    await this.#snapshotting;
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
    return this.#append(entriesAfter(this.#state.seq, this.group, events, by), also);
  }

  async #adopt(past: readonly PastEntry[]): Promise<readonly BookEntry[]> {
    const keys = keysOf(this.group);
    const { seq } = this.#state;
    if (seq > mostWrittenOver)
      throw new RangeError('a history goes into a book with nothing of its own in it');
    const was = await this.#journal.entries(1, seq);
    // What was there is written over, and what would be left behind it goes in the same step.
    const also = Array.from({ length: Math.max(0, seq - past.length) }, (_, at) => ({
      key: keys.entry(past.length + at + 1),
      value: undefined,
    }));
    const drafts = past.map((entry) => ({ ...entry, v: 1, group: this.group }));
    this.#recent.clear();
    const entries = await this.#append(drafts, [...also, { key: keys.snapshot, value: undefined }], {
      onto: emptyBook,
      was,
    });
    await this.#dropSnapshot();
    return entries;
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
    await this.#dropSnapshot();
    return entries;
  }

  async #append(
    drafts: readonly unknown[],
    also: readonly Change[],
    { onto = this.#state, was = [] }: { onto?: BookState; was?: readonly BookEntry[] } = {},
  ): Promise<readonly BookEntry[]> {
    const before = this.#state;
    // By way of JSON, so that the book in memory is exactly the one that will be read back.
    const entries = drafts.map((draft) => bookEntry.parse(JSON.parse(JSON.stringify(draft))));
    // Folded before it is written: an entry that cannot be folded must not get into the journal.
    const state = afterEntries(onto, entries);
    const done = entries.map(({ event }) => event);
    const alongside = this.#alongside({ group: this.group, before, after: state, events: done });
    await this.#journal.append(entries, [...alongside, ...also], was);
    if (onto === before) this.#recent.keep(before);
    this.#state = state;
    this.#sinceSnapshot += entries.length;
    this.#snapshotWhenDue();
    return entries;
  }

  /** What a snapshot holds must be gone too, also one that is being written; the next one is due at once. */
  async #dropSnapshot(): Promise<void> {
    this.#times += 1;
    this.#sinceSnapshot = Number.POSITIVE_INFINITY;
    await this.#journal.dropSnapshot();
    this.#snapshotWhenDue();
  }

  #snapshotWhenDue(): void {
    if (this.#snapshotting || !snapshotDue(this.#state, this.#sinceSnapshot)) return;
    // A failure loses nothing: it is tried again when as many entries have come once more.
    const done = this.#snapshot().catch(() => {});
    this.#snapshotting = done.then(() => {
      this.#snapshotting = undefined;
      this.#snapshotWhenDue();
    });
  }

  // In short steps, between which entries are written: nobody waits for a whole snapshot. The state is what it was when
  // it began, whatever is recorded meanwhile.
  async #snapshot(): Promise<void> {
    const times = this.#times;
    this.#sinceSnapshot = 0;
    for (const step of this.#journal.snapshotSteps(this.#state)) {
      await this.#queue(() => (times === this.#times ? step() : Promise.reject(new Error('forgotten'))));
    }
  }
}
