import { minusG, sumG } from '../../core/bench/exact.ts';
import type { Lot } from '../../core/bench/state.ts';
import type { BookEntry } from '../../core/book.ts';
import type { PartChange } from '../../core/parts/changes.ts';
import { ok, type Result } from '../../core/result.ts';
import type { Answer, Trouble } from '../answer.ts';
import { changeKinds } from '../readers/book-words.ts';
import type { Tools } from '../topic.ts';
import type { BookWish } from '../topics/book.ts';
import { isAbout } from '../undo/about.ts';
import { isUndoable, latestEntry, latestStanding, latestUndoing, requestAt } from '../undo/requests.ts';
import { type UndoDone, type UndoRefused, undoRequest } from '../undo/undo.ts';
import { keepEverything } from './book-forget.ts';
import { EntryNames } from './book-names.ts';
import { partLines } from './book-parts.ts';
import { sayEntry, sayRequest } from './book-say.ts';
import { whoWhen } from './book-who.ts';
import { readable } from './numbers.ts';
import { localRules } from './warnings.ts';

type Entries = readonly BookEntry[];

const nothing = (text: string): Trouble => ({ code: 'not-found', text });

/** The member's own last change, or the one they described or numbered. */
const target = async (wish: BookWish, tools: Tools): Promise<Result<Entries, Trouble>> => {
  const { book, member } = tools;
  if (wish.entry !== undefined) return numbered(wish.entry, tools);
  const kinds: readonly string[] | undefined = wish.kind && changeKinds[wish.kind];
  const names = new EntryNames(book.state);
  const fits = (entry: BookEntry): boolean =>
    entry.who === member.id &&
    isUndoable(entry) &&
    (kinds === undefined || kinds.includes(entry.event.kind)) &&
    (wish.about === undefined || isAbout(entry.event, wish.about, names));
  const plain = kinds === undefined && wish.about === undefined;
  // "undo" said twice takes back two changes; the change that is named may be an undoing.
  const found = plain ? await latestStanding(book, fits) : await latestEntry(book, book.state.seq, fits);
  if (found) return ok(await requestAt(book, found.seq));
  const what = wish.kind === undefined && wish.about === undefined ? 'nothing' : 'no such change';
  const problem = nothing(
    `There is ${what} of yours in this book to undo. Ask "history" to see what was recorded and by whom.`,
  );
  return { ok: false, problem };
};

const numbered = async (seq: number, { book, member }: Tools): Promise<Result<Entries, Trouble>> => {
  const entries = await requestAt(book, seq);
  const [first] = entries;
  if (!first || !entries.every(isUndoable))
    return {
      ok: false,
      problem: nothing(`There is no change number ${seq} to undo. Ask "history" for the numbers.`),
    };
  if (first.who === member.id || member.manages) return ok(entries);
  const text = `Number ${seq} was recorded by ${first.name ?? 'somebody else'}. They can undo it, or whoever manages this group.`;
  return { ok: false, problem: { code: 'not-allowed', text } };
};

/** What an undoing undid, and what that had undone …; `again` is true where the end of it is a change made once more. */
const root = async (entries: Entries, tools: Tools): Promise<{ entries: Entries; again: boolean }> => {
  let [now, again] = [entries, false];
  for (let count = 0; count < 100; count += 1) {
    const event = now.every((entry) => entry.event.kind === 'parts-put') ? now[0]?.event : undefined;
    if (event?.kind !== 'parts-put' || event.because.why !== 'undo') break;
    now = await requestAt(tools.book, event.because.of);
    again = !again;
  }
  return { entries: now, again };
};

const gramsBack = (changes: readonly PartChange[]): readonly number[] =>
  changes.flatMap(({ part, before, after }) => {
    if (part !== 'lot' || before === undefined || after === undefined) return [];
    const back = minusG((before as Lot).leftG, (after as Lot).leftG);
    return back === 0 ? [] : [back];
  });

/** "; its 371.2 g went back to 3 lots". */
const wentBack = ({ changes, weighedSince }: UndoDone): string => {
  const grams = gramsBack(changes.filter(({ id }) => !weighedSince.includes(id)));
  if (grams.length === 0) return '';
  const sum = sumG(grams);
  const lots = grams.length === 1 ? '1 lot' : `${grams.length} lots`;
  return sum > 0
    ? `; its ${readable(sum)} g went back to ${lots}`
    : `; ${readable(-sum)} g came out of ${lots} again`;
};

const doneAnswer = (done: UndoDone, said: string, again: boolean, of: BookEntry): Answer => {
  const weighed = done.weighedSince.map(
    (id) =>
      `Lot ${done.state.bench?.lots.get(id)?.lot ?? id} was weighed since, so what the scale said stands.`,
  );
  return {
    title: `${again ? 'Done again' : 'Undone'}: ${said}${wentBack(done)}`,
    blocks: [
      { kind: 'list', items: [...partLines(done.puts), ...weighed] },
      { kind: 'text', text: 'It stays in the history. To take this back, say "redo".' },
    ],
    figures: {
      undone: said,
      again,
      entry: of.seq,
      kind: of.event.kind,
      changed: done.puts.map(({ part, id }) => ({ part, id })),
    },
    warnings: [localRules],
    next: [{ label: 'Redo', say: 'redo' }],
  };
};

const stuck = ({ problem, since }: UndoRefused, said: string, tools: Tools): Trouble => {
  const text = (why: string): Trouble => ({
    code: 'not-allowed',
    text: `I cannot undo this: ${said}. ${why}`,
  });
  const later = since && `${sayEntry(since, new EntryNames(tools.book.state))} (${whoWhen(since, tools)})`;
  switch (problem.code) {
    case 'nothing-left':
      return text(
        'Nothing of it stands any more, so there is nothing to put back. Ask "history" for what came after.',
      );
    case 'busy':
      return text('Others keep writing at this moment. Say "undo" once more.');
    case 'not-yours':
      return text('It changes the settings, and only those who manage this group do that. Ask one of them.');
    case 'name-taken':
      return text(
        `Another recipe is called ${problem.name} by now. Rename that one first, then say "undo" with the number in "history".`,
      );
    case 'poured-since':
      return text(
        `The batch ${problem.lot} was poured from it since${later ? `: ${later}` : ''}. Undo that first${since ? `, "undo ${since.seq}"` : ''}, or save the recipe as it should be: that makes a new version.`,
      );
    case 'changed-since':
      return text(
        `Something later builds on it${later ? `: ${later}` : ''}. Undo that first${since ? `, "undo ${since.seq}"` : ''}, or put it right by saying how it is now.`,
      );
  }
};

const by = ({ member, at }: Tools) => ({ who: member.id, at });

/** Says what was undone by its name, or why it cannot be. What it says is recorded is on disk. */
export const undoLast = async (wish: BookWish, tools: Tools): Promise<Answer | Trouble> => {
  const found = await target(wish, tools);
  if (!found.ok) return found.problem;
  const entries = found.value;
  const [first] = entries;
  if (first?.event.kind === 'forgetting-asked' && tools.book.state.forgetting) return keepEverything(tools);
  const original = await root(entries, tools);
  const names = new EntryNames(await tools.book.stateAt((original.entries[0]?.seq ?? 1) - 1));
  const told = original.entries.filter(({ event }) => event.kind !== 'parts-put');
  const said = sayRequest(told.length > 0 ? told : original.entries, names);
  const allowed = tools.member.manages ? () => true : ({ part }: { part: string }) => part !== 'settings';
  const done = await undoRequest(tools.book, entries, by(tools), allowed);
  if (!done.ok) return stuck(done.problem, said, tools);
  const of = original.entries[0] ?? first;
  return of ? doneAnswer(done.value, said, original.again, of) : nothing('There is nothing to undo.');
};

/** Takes back the member's last undoing, if nothing of theirs came after it. */
export const redoLast = async (tools: Tools): Promise<Answer | Trouble> => {
  const { book, member } = tools;
  const last = await latestUndoing(book, (entry) => entry.who === member.id && isUndoable(entry));
  if (last) return undoLast({ action: 'undo', entry: last.seq }, tools);
  return nothing(
    'Your last change was not an undoing, so there is nothing to do again. "undo" takes back a change.',
  );
};
