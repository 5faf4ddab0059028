import type { BookEntry } from '../../core/book.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { BookWish } from '../topics/book.ts';
import { pastEntries } from './book-index.ts';
import { sayEntry } from './book-say.ts';
import { dayOf, shortDay, whoOf } from './book-who.ts';

/** Entries on one page: about a phone's screen and a half. */
const pageLength = 15;
/** Days are looked at so many entries at a time. */
const piece = 200;

/** The day is reckoned only when it is asked about: that is the dearest part of a long journal. */
const isThen = (entry: BookEntry, { from, to }: BookWish, tools: Tools): boolean => {
  const day = dayOf(entry, tools);
  return (from === undefined || day >= from) && (to === undefined || day <= to);
};

const readAll = async (book: Tools['book'], seqs: readonly number[]): Promise<readonly BookEntry[]> =>
  (await Promise.all(seqs.map((seq) => book.entry(seq)))).flatMap((entry) => entry ?? []);

/** Numbers of all entries that fit, newest first. */
const fitting = async (seqs: readonly number[], wish: BookWish, tools: Tools): Promise<readonly number[]> => {
  const newest = seqs.toReversed();
  if (wish.from === undefined && wish.to === undefined) return newest;
  const found: number[] = [];
  for (let at = 0; at < newest.length; at += piece)
    for (const entry of await readAll(tools.book, newest.slice(at, at + piece)))
      if (isThen(entry, wish, tools)) found.push(entry.seq);
  return found;
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
  const past = await pastEntries(wish, tools.book);
  const fit = await fitting(past.seqs, wish, tools);
  if (fit.length === 0) return none(wish);
  const pages = Math.ceil(fit.length / pageLength);
  const page = wish.page ?? 1;
  if (page > pages)
    return {
      code: 'not-found',
      text: `There ${pages === 1 ? 'is 1 page' : `are ${pages} pages`} of it. Say "history page ${pages}".`,
    };
  const onPage = await readAll(tools.book, fit.slice((page - 1) * pageLength, page * pageLength));
  const shown = onPage.map((entry) => ({ entry, said: sayEntry(entry, past.namesAt(entry.seq)) }));
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
      count: fit.length,
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
