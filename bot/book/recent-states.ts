import { type BookState, emptyBook } from '../../core/book.ts';

/** States remembered for each open book; they share what did not change, so one more costs little. */
const mostStates = 40;

/** What a book looked like before its latest changes, for undoing one without reading the journal from its start. */
export class RecentStates {
  #states: BookState[] = [];

  keep(state: BookState): void {
    this.#states.push(state);
    if (this.#states.length > mostStates) this.#states.shift();
  }

  /** The latest remembered state that has no entry after `seq`; the empty book when none is old enough. */
  nearest(seq: number): BookState {
    return this.#states.findLast((state) => state.seq <= seq) ?? emptyBook;
  }

  clear(): void {
    this.#states = [];
  }
}
