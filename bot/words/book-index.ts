import { lotKey } from '../../core/bench/codes.ts';
import type { BookEntry } from '../../core/book.ts';
import { nameKey } from '../../core/names.ts';
import type { Book } from '../book/keeper.ts';
import { type ChangeKind, changeKindNames, changeKinds } from '../readers/book-words.ts';
import type { BookWish } from '../topics/book.ts';
import { aboutKeys } from '../undo/about.ts';
import { EntryNames } from './book-names.ts';
import { whoOf } from './book-who.ts';

/** Entries read at a time, so that others get their turn in between. */
const piece = 1000;

/**
 * Which entries of a journal are about what, by their numbers. A journal is read through once, when first asked about; after
 * that only what came since is, so that what is asked of one lot costs by the entries about it.
 */
interface Index {
  readonly byKey: Map<string, number[]>;
  /** Instants of the entries, epoch milliseconds, from number 1 on. */
  readonly instants: number[];
  /** What a recipe was called before an entry that names it. */
  readonly before: Map<number, readonly (readonly [id: string, name: string])[]>;
  readonly names: EntryNames;
  last?: BookEntry;
}

const kindOf = new Map<string, ChangeKind>(
  changeKindNames.flatMap((name) => changeKinds[name].map((kind) => [kind, name] as const)),
);

const memberKeys = (entry: BookEntry): readonly string[] => {
  const name = whoOf(entry).toLowerCase();
  return [name, entry.who.toLowerCase(), ...name.split(/\s+/)].map((each) => `who:${each}`);
};

/** Reminders are sent every day; they are told only to somebody who asks about a lot. */
const isTold = ({ event }: BookEntry): boolean => !['reminder-begun', 'reminder-sent'].includes(event.kind);

const recipeIds = ({ event }: BookEntry): readonly string[] => {
  if (event.kind === 'parts-put')
    return event.puts.flatMap(({ part, id }) => (part === 'recipe' ? [id] : []));
  return event.kind !== 'batch-poured' && 'recipe' in event && typeof event.recipe === 'string'
    ? [event.recipe]
    : [];
};

const note = (index: Index, entry: BookEntry): void => {
  const { names, byKey } = index;
  const was = aboutKeys(entry.event, names);
  const ids = recipeIds(entry);
  if (ids.length > 0)
    index.before.set(
      entry.seq,
      ids.map((id) => [id, names.recipe(id)] as const),
    );
  names.read(entry);
  const told = isTold(entry) ? ['told', ...memberKeys(entry), `kind:${kindOf.get(entry.event.kind)}`] : [];
  for (const key of new Set([...was, ...aboutKeys(entry.event, names), ...told])) {
    const known = byKey.get(key);
    if (known) known.push(entry.seq);
    else byKey.set(key, [entry.seq]);
  }
  index.instants.push(Date.parse(entry.at));
  index.last = entry;
};

const empty = (): Index => ({ byKey: new Map(), instants: [], before: new Map(), names: new EntryNames() });

/** False after everything was forgotten, or another history was put in its place. */
const isOf = async ({ last, instants }: Index, book: Book): Promise<boolean> => {
  if (!last) return true;
  const now = last.seq <= book.state.seq ? await book.entry(last.seq) : undefined;
  return now?.at === last.at && now.who === last.who && instants.length === last.seq;
};

const indexes = new WeakMap<Book, Promise<Index>>();

const broughtUp = async (before: Index, book: Book): Promise<Index> => {
  const index = (await isOf(before, book)) ? before : empty();
  for (let from = index.instants.length + 1; from <= book.state.seq; from += piece)
    for (const entry of await book.entries(from, from + piece - 1)) note(index, entry);
  return index;
};

/** The index of a book as it stands now. Who asks at the same time waits, so that no entry is noted twice. */
const indexOf = (book: Book): Promise<Index> => {
  const before = indexes.get(book)?.catch(empty) ?? Promise.resolve(empty());
  const now = before.then((index) => broughtUp(index, book));
  indexes.set(book, now);
  return now;
};

const keysOf = ({ about, member, kind }: BookWish): readonly string[] => [
  ...(about?.lot === undefined ? [] : [`lot:${lotKey(about.lot)}`]),
  ...(about?.recipe === undefined ? [] : [`recipe:${nameKey(about.recipe)}`]),
  ...(about?.reaction === undefined ? [] : [`reaction:${about.reaction}`]),
  ...(member === undefined ? [] : [`who:${member.toLowerCase()}`]),
  ...(kind === undefined ? [] : [`kind:${kind}`]),
];

const inAll = (lists: readonly (readonly number[])[]): readonly number[] => {
  const [first = [], ...others] = lists.toSorted((a, b) => a.length - b.length);
  const sets = others.map((list) => new Set(list));
  return first.filter((seq) => sets.every((set) => set.has(seq)));
};

/** A local day is at most so far from one in UTC. */
const aroundMs = 36 * 60 * 60 * 1000;

const within = ({ instants }: Index, seqs: readonly number[], { from, to }: BookWish): readonly number[] => {
  const least = from === undefined ? -Infinity : Date.parse(from) - aroundMs;
  const most = to === undefined ? Infinity : Date.parse(to) + aroundMs + 24 * 60 * 60 * 1000;
  return seqs.filter((seq) => {
    const at = instants[seq - 1] ?? Number.NaN;
    return at >= least && at <= most;
  });
};

/** Entries that a question about the past may mean, oldest first: their days are still to be looked at. */
export interface PastEntries {
  readonly seqs: readonly number[];
  /** What recipes were called when an entry was written, for wording it. */
  namesAt(seq: number): EntryNames;
}

/** What a question about the past may mean, without reading through the journal again. */
export const pastEntries = async (wish: BookWish, book: Book): Promise<PastEntries> => {
  const index = await indexOf(book);
  const keys = keysOf(wish);
  const seqs = inAll((keys.length === 0 ? ['told'] : keys).map((key) => index.byKey.get(key) ?? []));
  return {
    seqs: within(index, seqs, wish),
    namesAt: (seq) => {
      const names = new EntryNames(book.state);
      for (const [recipe, name] of index.before.get(seq) ?? []) names.called(recipe, name);
      return names;
    },
  };
};
