import type { Result } from '../../core/result.ts';
import type { Book, Recorded } from '../book/keeper.ts';
import type { Tools } from '../topic.ts';
import { standsSince } from '../undo/requests.ts';

/** The same said again within this time, by the same member, is asked back about. */
const twiceMs = 60_000;
const mostKept = 2000;

interface Said {
  readonly at: number;
  readonly key: string;
  /** Numbers of the first and the last entry that came of it; missing while it is being written. */
  written?: { readonly first: number; readonly last: number };
}

// One process owns a store, so what was said within the last minute is known to it; a restart takes longer than that.
const said = new WeakMap<Book, Map<string, Said>>();

const saidIn = (book: Book): Map<string, Said> => {
  const before = said.get(book) ?? new Map<string, Said>();
  said.set(book, before);
  return before;
};

/** What this member said a moment ago, if it was the same. */
const sameBefore = (tools: Tools, key: string): Said | undefined => {
  const before = saidIn(tools.book).get(tools.member.id);
  return before?.key === key && Math.abs(tools.at - before.at) <= twiceMs ? before : undefined;
};

/** Whether something said is being written just now, or was written and not undone since. */
const stands = async ({ written }: Said, book: Book): Promise<boolean> =>
  written === undefined || (book.state.seq >= written.last && (await standsSince(book, written)));

const note = (tools: Tools, key: string): Said => {
  const kept = saidIn(tools.book);
  const now: Said = { at: tools.at, key };
  // The eldest is the first of the map, so a member who says more goes to its end.
  kept.delete(tools.member.id);
  kept.set(tools.member.id, now);
  const eldest = kept.keys().next();
  if (kept.size > mostKept && !eldest.done) kept.delete(eldest.value);
  return now;
};

/**
 * Writes unless this member said the very same a moment ago and it stands. When nothing came of it, or it was undone, it
 * may be said again at once. Of two messages at the same moment one goes through.
 * @param again true when it was said to be a second one.
 * @returns undefined for what was said twice.
 */
export const writtenOnce = async <T, P>(
  tools: Tools,
  what: unknown,
  again: boolean | undefined,
  write: () => Promise<Result<Recorded<T>, P>>,
): Promise<Result<Recorded<T>, P> | undefined> => {
  const key = JSON.stringify(what);
  const before = again ? undefined : sameBefore(tools, key);
  if (before && (await stands(before, tools.book))) return undefined;
  // While the book was looked at, the same may have come in once more.
  if (before && sameBefore(tools, key) !== before) return undefined;
  const now = note(tools, key);
  const release = (): void => {
    if (saidIn(tools.book).get(tools.member.id) === now) saidIn(tools.book).delete(tools.member.id);
  };
  try {
    const done = await write();
    const entries = done.ok ? done.value.entries : [];
    const [first, last] = [entries[0]?.seq, entries.at(-1)?.seq];
    if (first === undefined || last === undefined) release();
    else now.written = { first, last };
    return done;
  } catch (fault) {
    release();
    throw fault;
  }
};
