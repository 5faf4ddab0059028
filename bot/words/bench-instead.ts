import type { BookEvent, BookState } from '../../core/book.ts';
import { fail, type Result } from '../../core/result.ts';
import type { Trouble } from '../answer.ts';
import type { Decided, Recorded } from '../book/keeper.ts';
import type { Tools } from '../topic.ts';
import { isAbout } from '../undo/about.ts';
import { latestStanding, requestAt } from '../undo/requests.ts';
import { insteadOf } from '../undo/undo.ts';
import { EntryNames } from './book-names.ts';
import { by } from './recipe-table.ts';

/** What was told before and is put right: the kinds of its entries, and the lot or batch it was of, where that is known. */
export interface ToldBefore {
  readonly kinds: readonly BookEvent['kind'][];
  readonly lot?: string | undefined;
}

const nothingThere: Trouble = {
  code: 'not-found',
  text: 'What you told me before does not stand in the book any more, so there is nothing to put right. Tell me the whole of it: "gave 4 tins of 26-KIVO to the school".',
};

const builtOn: Trouble = {
  code: 'not-allowed',
  text: 'Something later builds on what you told me before, so I left it as it is. Ask "history" for it, and undo the later one first.',
};

/** "No, it was 4": writes what is told now in place of what the same member told before, all of it or nothing. */
export const toldInstead = async <T>(
  { kinds, lot }: ToldBefore,
  tools: Tools,
  decide: (state: BookState) => Result<Decided<T>, Trouble>,
): Promise<Result<Recorded<T>, Trouble>> => {
  const { book, member } = tools;
  const names = new EntryNames(book.state);
  const entry = await latestStanding(
    book,
    ({ who, event }) =>
      who === member.id &&
      kinds.includes(event.kind) &&
      (lot === undefined || isAbout(event, { lot }, names)),
  );
  if (!entry) return fail(nothingThere);
  // What was put right before stands in one request with what that took back.
  const entries = (await requestAt(book, entry.seq)).filter(({ event }) => event.kind !== 'parts-put');
  const done = await insteadOf(book, entries, by(tools), decide);
  if (done.ok) return done;
  return fail('text' in done.problem ? done.problem : builtOn);
};
