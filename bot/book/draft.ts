import { afterEntries, type BookEntry, type BookEvent, type BookState } from '../../core/book.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { entriesAfter } from './entries.ts';
import type { Book, By, Decided, Recorded } from './keeper.ts';
import { NotRecorded } from './trouble.ts';

/**
 * A book in which several requests are tried one after the other, to be written all together or not at all: what was
 * tried is to be seen in it, and the group's own book stays as it is before `commit`.
 */
export class DraftBook implements Book {
  readonly group: string;
  readonly #book: Book;
  readonly #base: BookState;
  readonly #events: BookEvent[] = [];
  #state: BookState;
  #by: By | undefined;

  constructor(book: Book) {
    this.group = book.group;
    this.#book = book;
    this.#base = book.state;
    this.#state = book.state;
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
    return 'kind' in what ? this.#take([what], by)[0] : this.#take(what, by);
  }

  async change<T, P>(
    decide: (state: BookState) => Result<Decided<T>, P>,
    by: By,
  ): Promise<Result<Recorded<T>, P>> {
    const decided = decide(this.#state);
    if (!decided.ok) return decided;
    const { events, past, rewritten, value } = decided.value;
    // What puts another history in place of this one stands by itself.
    if (past || rewritten) throw new NotRecorded('failed');
    const entries = this.#take(events, by);
    return ok({ entries, value, state: this.#state });
  }

  async forget(): Promise<'kept'> {
    return 'kept';
  }

  entry(seq: number): Promise<BookEntry | undefined> {
    return this.#book.entry(seq);
  }

  entries(from: number, to: number): Promise<readonly BookEntry[]> {
    return this.#book.entries(from, to);
  }

  stateAt(seq: number): Promise<BookState> {
    return this.#book.stateAt(seq);
  }

  /** Writes all that was tried; false, with nothing written, where somebody else wrote meanwhile. Throws NotRecorded. */
  async commit(): Promise<boolean> {
    if (!this.#by) return true;
    const written = await this.#book.change(
      (now) => (now === this.#base ? ok({ events: this.#events, value: undefined }) : fail('moved' as const)),
      this.#by,
    );
    return written.ok;
  }

  #take(events: readonly BookEvent[], by: By): readonly BookEntry[] {
    const entries = entriesAfter(this.#state.seq, this.group, events, by);
    this.#by ??= by;
    this.#events.push(...events);
    this.#state = afterEntries(this.#state, entries);
    return entries;
  }
}
