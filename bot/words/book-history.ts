import type { BookEntry } from '../../core/book.ts';
import type { Answer, Trouble } from '../answer.ts';
import { changeKinds } from '../readers/book-words.ts';
import type { Tools } from '../topic.ts';
import type { BookWish } from '../topics/book.ts';
import { isAbout } from '../undo/about.ts';
import { EntryNames } from './book-names.ts';
import { sayEntry } from './book-say.ts';
import { dayOf, shortDay, whoOf } from './book-who.ts';

/** Entries on one page: about a phone's screen and a half. */
const pageLength = 15;
/** Entries read at a time, so that others get their turn in between. */
const piece = 1000;

interface Line {
  readonly entry: BookEntry;
  readonly said: string;
}

const byName = (entry: BookEntry, member: string): boolean => {
  const wanted = member.toLowerCase();
  const name = whoOf(entry).toLowerCase();
  return name === wanted || name.split(/\s+/).includes(wanted) || entry.who.toLowerCase() === wanted;
};

/** The day is reckoned only when it is asked about: that is the dearest part of a long journal. */
const isThen = (entry: BookEntry, { from, to }: BookWish, tools: Tools): boolean => {
  if (from === undefined && to === undefined) return true;
  const day = dayOf(entry, tools);
  return (from === undefined || day >= from) && (to === undefined || day <= to);
};

const isTheirs = ({ event, ...entry }: BookEntry, { member, kind }: BookWish): boolean =>
  (kind === undefined || (changeKinds[kind] as readonly string[]).includes(event.kind)) &&
  (member === undefined || byName({ event, ...entry }, member));

/** Reminders are sent every day; they are told only to somebody who asks about a lot or a day. */
const isTold = ({ event }: BookEntry, wish: BookWish): boolean =>
  wish.about !== undefined || !['reminder-begun', 'reminder-sent'].includes(event.kind);

/** The entry in words where it fits. Looked at under the names of before and after it: a renaming is found by both. */
const lineOf = (entry: BookEntry, wish: BookWish, names: EntryNames, tools: Tools): Line | undefined => {
  if (!isTold(entry, wish)) {
    names.read(entry);
    return undefined;
  }
  if (!isTheirs(entry, wish) || !isThen(entry, wish, tools)) {
    names.read(entry);
    return undefined;
  }
  const said = sayEntry(entry, names);
  const { about } = wish;
  const before = about === undefined || isAbout(entry.event, about, names);
  names.read(entry);
  return before || isAbout(entry.event, about, names) ? { entry, said } : undefined;
};

/** All entries that fit, oldest first. Names are known from what came before, so the journal is read from its start. */
const linesOf = async (wish: BookWish, tools: Tools): Promise<readonly Line[]> => {
  const { book } = tools;
  const names = new EntryNames(book.state);
  const lines: Line[] = [];
  for (let from = 1; from <= book.state.seq; from += piece)
    for (const entry of await book.entries(from, from + piece - 1))
      lines.push(...[lineOf(entry, wish, names, tools) ?? []].flat());
  return lines;
};

const kindNames: Partial<Record<NonNullable<BookWish['kind']>, string>> = {
  pour: 'pours',
  purchase: 'purchases',
  gift: 'tins that went',
};

const aboutText = ({ about, kind, member, from, to }: BookWish): string =>
  [
    kind && kindNames[kind],
    about?.recipe ?? about?.lot ?? about?.reaction,
    member && `by ${member}`,
    from && (from === to || to === undefined ? from : `${from} to ${to}`),
  ]
    .filter(Boolean)
    .join(', ');

const none = (wish: BookWish): Trouble => ({
  code: 'not-found',
  text: `Nothing is recorded in this book${aboutText(wish) ? ` (${aboutText(wish)})` : ''}. Try "history" for all of it.`,
});

/** Who wrote what and when, newest first, a page at a time. */
export const showHistory = async (wish: BookWish, tools: Tools): Promise<Answer | Trouble> => {
  const lines = (await linesOf(wish, tools)).toReversed();
  if (lines.length === 0) return none(wish);
  const pages = Math.ceil(lines.length / pageLength);
  const page = wish.page ?? 1;
  if (page > pages)
    return {
      code: 'not-found',
      text: `There ${pages === 1 ? 'is 1 page' : `are ${pages} pages`} of it. Say "history page ${pages}".`,
    };
  const shown = lines.slice((page - 1) * pageLength, page * pageLength);
  const today = dayOf({ at: new Date(tools.at).toISOString() }, tools);
  const items = shown.map(
    ({ entry, said }) => `${entry.seq} · ${shortDay(dayOf(entry, tools), today)}, ${whoOf(entry)}: ${said}`,
  );
  const about = aboutText(wish);
  return {
    title: `History${about ? `: ${about}` : ''}${pages > 1 ? `, page ${page} of ${pages}` : ''}`,
    blocks: [
      { kind: 'list', items },
      ...(page < pages ? [{ kind: 'text', text: 'Say "older" for what came before.' } as const] : []),
    ],
    figures: {
      count: lines.length,
      page,
      pages,
      entries: shown.map(({ entry, said }) => ({
        seq: entry.seq,
        at: entry.at,
        who: entry.who,
        name: entry.name ?? null,
        kind: entry.event.kind,
        what: said,
        ...('lot' in entry.event && typeof entry.event.lot === 'string' ? { lot: entry.event.lot } : {}),
      })),
    },
    warnings: [],
    next: page < pages ? [{ label: 'Older', say: `history page ${page + 1}` }] : [],
  };
};
