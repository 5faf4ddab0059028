import type { Result } from '../../core/result.ts';
import type { Book } from '../book/keeper.ts';
import type { Tools } from '../topic.ts';

/** The same said again within this time, by the same member, is asked back about. */
const twiceMs = 60_000;
const mostKept = 2000;

interface Said {
  readonly at: number;
  readonly key: string;
}

// One process owns a store, so what was said within the last minute is known to it; a restart takes longer than that.
const said = new WeakMap<Book, Map<string, Said>>();

const saidIn = (book: Book): Map<string, Said> => {
  const before = said.get(book) ?? new Map<string, Said>();
  said.set(book, before);
  return before;
};

/** A record that is being written. `release` when nothing came of it, so that it can be said again. */
export interface Once {
  readonly twice: boolean;
  release(): void;
}

/**
 * Whether this member said the very same a moment ago. Looked up and noted in one step, so that of two messages at once
 * only one goes through.
 * @param again true when it was said to be a second one.
 */
export const once = (tools: Tools, what: unknown, again: boolean | undefined): Once => {
  const kept = saidIn(tools.book);
  const key = JSON.stringify(what);
  const { id } = tools.member;
  const before = kept.get(id);
  const twice = !again && before?.key === key && Math.abs(tools.at - before.at) <= twiceMs;
  if (twice) return { twice, release: () => {} };
  kept.delete(id);
  kept.set(id, { at: tools.at, key });
  const eldest = kept.keys().next();
  if (kept.size > mostKept && !eldest.done) kept.delete(eldest.value);
  return { twice, release: () => void kept.delete(id) };
};

/**
 * Writes unless the very same was said a moment ago; when nothing came of it, it may be said again at once. Undefined for
 * what was said twice.
 */
export const writtenOnce = async <T, P>(
  guard: Once,
  write: () => Promise<Result<T, P>>,
): Promise<Result<T, P> | undefined> => {
  if (guard.twice) return undefined;
  try {
    const written = await write();
    if (!written.ok) guard.release();
    return written;
  } catch (fault) {
    guard.release();
    throw fault;
  }
};
