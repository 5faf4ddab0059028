import { afterEntry, type BookEntry, type BookState } from '../../core/book.ts';
import { partValue } from '../../core/parts/changes.ts';
import type { PartName, PartPut } from '../../core/parts/part.ts';
import { putEvents } from '../../core/parts/put-events.ts';
import { type Undone, type UndoProblem, undoOf } from '../../core/parts/undo.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Book, By } from '../book/keeper.ts';

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

const tried = async (
  book: Book,
  entries: readonly BookEntry[],
  by: By,
  allowed: (put: PartPut) => boolean,
): Promise<Result<UndoDone, UndoRefused | 'moved'>> => {
  const first = entries[0]?.seq ?? 0;
  const last = entries.at(-1)?.seq ?? 0;
  const { seq } = book.state;
  const before = await book.stateAt(first - 1);
  const after = entries.reduce(afterEntry, before);
  const later = await book.entries(last + 1, seq);
  const changed = await book.change(
    (now): Result<{ events: ReturnType<typeof putEvents>; value: Undone }, UndoRefused | 'moved'> => {
      if (now.seq !== seq) return fail('moved');
      const undone = undoOf({ before, after, now, later });
      if (!undone.ok) {
        const since = sinceOf(undone.problem, after, later);
        return fail({ problem: undone.problem, ...(since ? { since } : {}) });
      }
      if (!undone.value.puts.every(allowed)) return fail({ problem: { code: 'not-yours' } });
      return ok({ events: putEvents({ why: 'undo', of: first }, undone.value.puts), value: undone.value });
    },
    by,
  );
  return changed.ok ? ok({ ...changed.value.value, state: changed.value.state }) : changed;
};

/** Undoes the entries of one request, decided while nobody else writes. Throws NotRecorded. */
export const undoRequest = async (
  book: Book,
  entries: readonly BookEntry[],
  by: By,
  allowed: (put: PartPut) => boolean,
): Promise<Result<UndoDone, UndoRefused>> => {
  for (let count = 0; count < mostTries; count += 1) {
    const done = await tried(book, entries, by, allowed);
    if (done.ok) return done;
    if (done.problem !== 'moved') return fail(done.problem);
  }
  return fail({ problem: { code: 'busy' } });
};
