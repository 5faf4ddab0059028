import { afterEntry, type BookEntry, type BookEvent, type BookState } from '../../core/book.ts';
import { partValue } from '../../core/parts/changes.ts';
import type { PartName, PartPut } from '../../core/parts/part.ts';
import { putEvents } from '../../core/parts/put-events.ts';
import { type Undone, type UndoProblem, undoOf } from '../../core/parts/undo.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Book, By, Decided, Recorded } from '../book/keeper.ts';

/** Somebody may write between the look at the book and the undoing; then it is looked at again, so often at most. */
const mostTries = 8;

export interface UndoDone extends Undone {
  readonly state: BookState;
}

export interface UndoRefused {
  readonly problem: UndoProblem | { readonly code: 'busy' | 'not-yours' };
  /** The last entry that stands in the way, if it is one. */
  readonly since?: BookEntry;
}

/** The last of some later entries that changed one thing. */
const lastChange = (
  start: BookState,
  later: readonly BookEntry[],
  part: PartName,
  id: string,
): BookEntry | undefined => {
  let state = start;
  let last: BookEntry | undefined;
  for (const entry of later) {
    const next = afterEntry(state, entry);
    if (partValue(next, part, id) !== partValue(state, part, id)) last = entry;
    state = next;
  }
  return last;
};

const sinceOf = (
  problem: UndoProblem,
  after: BookState,
  later: readonly BookEntry[],
): BookEntry | undefined => {
  if (problem.code === 'changed-since') return lastChange(after, later, problem.part, problem.id);
  if (problem.code !== 'poured-since') return undefined;
  return later.find(({ event }) => event.kind === 'batch-poured' && event.recipe?.id === problem.id);
};

/** What is to be undone, by whom, and what may be put back. */
interface Undoing {
  readonly book: Book;
  readonly entries: readonly BookEntry[];
  readonly by: By;
  readonly allowed: (put: PartPut) => boolean;
}

/** What is written in place of what is undone, decided with the book as that leaves it. */
type InPlace<T, P> = (state: BookState, undone: Undone) => Result<Decided<T>, P>;

const afterPuts = (state: BookState, events: readonly BookEvent[], { who, at }: By): BookState =>
  events.reduce(
    (now, event) =>
      afterEntry(now, {
        v: 1,
        group: '',
        seq: now.seq + 1,
        at: new Date(at).toISOString(),
        who,
        event,
      }),
    state,
  );

const tried = async <T, P>(
  { book, entries, by, allowed }: Undoing,
  inPlace: InPlace<T, P>,
): Promise<Result<Recorded<T>, P | UndoRefused | 'moved'>> => {
  const first = entries[0]?.seq ?? 0;
  const of = entries[0]?.first ?? first;
  const last = entries.at(-1)?.seq ?? 0;
  const { seq } = book.state;
  const before = await book.stateAt(first - 1);
  const after = entries.reduce(afterEntry, before);
  const later = await book.entries(last + 1, seq);
  return book.change((now): Result<Decided<T>, P | UndoRefused | 'moved'> => {
    if (now.seq !== seq) return fail('moved');
    const undone = undoOf({ before, after, now, later });
    if (!undone.ok) {
      const since = sinceOf(undone.problem, after, later);
      return fail({ problem: undone.problem, ...(since ? { since } : {}) });
    }
    if (!undone.value.puts.every(allowed)) return fail({ problem: { code: 'not-yours' } });
    const puts = putEvents({ why: 'undo', of }, undone.value.puts);
    const placed = inPlace(afterPuts(now, puts, by), undone.value);
    return placed.ok ? ok({ ...placed.value, events: [...puts, ...placed.value.events] }) : placed;
  }, by);
};

const triedOften = async <T, P>(
  undoing: Undoing,
  inPlace: InPlace<T, P>,
): Promise<Result<Recorded<T>, P | UndoRefused>> => {
  for (let count = 0; count < mostTries; count += 1) {
    const done = await tried(undoing, inPlace);
    if (done.ok || done.problem !== 'moved') return done as Result<Recorded<T>, P | UndoRefused>;
  }
  return fail({ problem: { code: 'busy' } });
};

/** Undoes the entries of one request, decided while nobody else writes. Throws NotRecorded. */
export const undoRequest = async (
  book: Book,
  entries: readonly BookEntry[],
  by: By,
  allowed: (put: PartPut) => boolean,
): Promise<Result<UndoDone, UndoRefused>> => {
  const done = await triedOften<Undone, never>({ book, entries, by, allowed }, (_state, value) =>
    ok({ events: [], value }),
  );
  return done.ok ? ok({ ...done.value.value, state: done.value.state }) : done;
};

/**
 * Writes something in place of the entries of one request: what they did is undone and the new told in one write, so that
 * one "undo" brings back what stood before. Throws NotRecorded.
 */
export const insteadOf = <T, P>(
  book: Book,
  entries: readonly BookEntry[],
  by: By,
  decide: (state: BookState) => Result<Decided<T>, P>,
): Promise<Result<Recorded<T>, P | UndoRefused>> =>
  triedOften({ book, entries, by, allowed: ({ part }) => part !== 'settings' }, decide);
