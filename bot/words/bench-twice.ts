import type { Result } from '../../core/result.ts';
import type { Answer, Trouble, Warning } from '../answer.ts';
import type { Book, Recorded } from '../book/keeper.ts';
import type { Tools } from '../topic.ts';
import { standsSince } from '../undo/requests.ts';

/** The same said again within this time, by the same member, may be a slip. */
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

/** Whether something said is being written just now or was written, and has not been undone since. */
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

const forget = (tools: Tools, now: Said): void => {
  if (saidIn(tools.book).get(tools.member.id) === now) saidIn(tools.book).delete(tools.member.id);
};

const saidTwice = (what: string): Warning => ({
  code: 'said-twice',
  text: `You told me the same a moment ago, and I wrote it down again. If it was one ${what}, say "undo".`,
});

const withWarning = (answer: Answer, what: string): Answer => ({
  ...answer,
  warnings: [saidTwice(what), ...answer.warnings],
  next: [{ label: 'Undo this one', say: 'undo' }, ...(answer.next ?? [])],
});

/** What is written down: named in the warning, and what makes two messages the same. */
export interface ToldBy {
  readonly tools: Tools;
  /** "pour", "purchase": how the warning calls it. */
  readonly what: string;
  readonly key: unknown;
  /** True when it was said to be a second one. */
  readonly again: boolean | undefined;
}

/**
 * Writes down what a member told, and answers. Two true pours of one kind in a row are two; a slip is one too: when the
 * member said the very same a moment ago and it stands, the answer warns and offers to undo.
 * @param answer what is said when it is written.
 */
export const writtenDown = async <T>(
  { tools, what, key: said, again }: ToldBy,
  write: () => Promise<Result<Recorded<T>, Trouble>>,
  answer: (done: Recorded<T>) => Answer,
): Promise<Answer | Trouble> => {
  const key = JSON.stringify(said);
  const before = again ? undefined : sameBefore(tools, key);
  const now = note(tools, key);
  const twice = before !== undefined && (await stands(before, tools.book));
  const done = await write();
  if (!done.ok) {
    // Nothing came of it: what stands is what was said before.
    if (before && saidIn(tools.book).get(tools.member.id) === now)
      saidIn(tools.book).set(tools.member.id, before);
    else forget(tools, now);
    return done.problem;
  }
  const { entries } = done.value;
  const [first, last] = [entries[0]?.seq, entries.at(-1)?.seq];
  if (first === undefined || last === undefined) forget(tools, now);
  else now.written = { first, last };
  const told = answer(done.value);
  return twice ? withWarning(told, what) : told;
};
