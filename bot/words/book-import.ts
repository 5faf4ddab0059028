import { crc32 } from 'node:zlib';
import type { BookState } from '../../core/book.ts';
import { type Merge, mergeOf } from '../../core/exchange/merge.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Decided, PastEntry } from '../book/keeper.ts';
import { isOnlyDemo } from '../demo.ts';
import type { GivenFile } from '../files/given.ts';
import { asGiven } from '../files/held.ts';
import { type BookRead, readBook } from '../files/read-book.ts';
import { importWhat } from '../readers/book-words.ts';
import type { Tools } from '../topic.ts';
import type { BookWish } from '../topics/book.ts';
import { fileTrouble } from './book-file-problems.ts';
import { type Confirming, mergedAnswer, mergePreview, takenAnswer, takePreview } from './book-import-text.ts';
import { confirmWord } from './confirm-word.ts';

const isBookFile = ({ name }: GivenFile): boolean => /\.json(?:\.gz)?$/i.test(name);

/** The attached file, the one at the path that was named, or the one that was shown before. */
const fileFor = (wish: BookWish, { files, held, book, member, at }: Tools): GivenFile | Trouble => {
  const attached = files.attached.find(isBookFile) ?? files.attached[0];
  if (attached) return attached;
  if (wish.path !== undefined && files.at) return files.at(wish.path);
  const before = held.find(book.group, member.id, at);
  if (before && (wish.path === undefined || before.name === wish.path)) return asGiven(before);
  return wish.path === undefined
    ? importWhat
    : {
        code: 'missing',
        text: `I open no files by name here. Attach "${wish.path}" to the message that says "import".`,
      };
};

const by = ({ member, at }: Tools) => ({ who: member.id, at });

/**
 * The history as it goes into an empty book: as it stands, but for what would act on the group unasked. A reminder would
 * be sent to a channel that may belong to others, and a forgetting would begin at once.
 */
const pastOf = ({ entries, state }: BookRead, { member, at, channel }: Tools): readonly PastEntry[] => {
  const stops: PastEntry['event'][] = [];
  const { reminder } = state.bench ?? {};
  if (reminder && reminder.channel !== channel) stops.push({ kind: 'reminder-stopped' });
  if (state.forgetting) stops.push({ kind: 'forgetting-stopped' });
  const added = stops.map((event, index) => ({
    seq: entries.length + 1 + index,
    at: new Date(at).toISOString(),
    who: member.id,
    event,
  }));
  return [...entries, ...added];
};

/** Changes with the file and with the book, so that what was shown is what is done. */
const wordFor = (read: BookRead, state: BookState, group: string): string =>
  confirmWord('import', group, state.seq, crc32(read.bytes), read.bytes.byteLength);

const takeOver = async (read: BookRead, word: string, tools: Tools): Promise<Answer | undefined> => {
  const past = pastOf(read, tools);
  const done = await tools.book.change(
    (state): Result<Decided<undefined>, 'other-word'> =>
      word === wordFor(read, state, tools.book.group)
        ? ok({ events: [], past, value: undefined })
        : fail('other-word'),
    by(tools),
  );
  return done.ok ? takenAnswer(read, past.length - read.entries.length) : undefined;
};

const mergeIn = async (read: BookRead, wish: BookWish, tools: Tools): Promise<Answer | undefined> => {
  const { state: file, entries } = read;
  const conflicts = wish.conflicts ?? 'keep';
  const done = await tools.book.change((now): Result<Decided<Merge>, 'other-word'> => {
    if (wish.code !== wordFor(read, now, tools.book.group)) return fail('other-word');
    const merge = mergeOf({ now, file, entries, conflicts });
    return ok({ events: merge.events, value: merge });
  }, by(tools));
  return done.ok ? mergedAnswer(read, done.value.value, conflicts) : undefined;
};

const shown = (read: BookRead, empty: boolean, confirming: Confirming, tools: Tools): Answer => {
  if (empty) return takePreview(read, confirming);
  const { state: now } = tools.book;
  return mergePreview(
    read,
    mergeOf({ now, file: read.state, entries: read.entries, conflicts: 'keep' }),
    confirming,
    now,
  );
};

const taken = (read: BookRead, wish: BookWish, empty: boolean, tools: Tools): Promise<Answer | undefined> =>
  empty ? takeOver(read, wish.code ?? '', tools) : mergeIn(read, wish, tools);

/** A file of this machine is named again to go on; an attached one is kept for a while. */
const pathAgain = (wish: BookWish, { files }: Tools): string | undefined =>
  files.at !== undefined && files.attached.length === 0 ? wish.path : undefined;

/** Shows what a file would bring; with the word that was given then, takes it in: all of it or nothing. */
export const importBook = async (wish: BookWish, tools: Tools): Promise<Answer | Trouble> => {
  const file = fileFor(wish, tools);
  if ('code' in file) return file;
  const read = await readBook(file);
  if (!read.ok) return fileTrouble(read.problem, file.said);
  const { book, held, member, at } = tools;
  const empty = book.state.seq === 0 || (await isOnlyDemo(book));
  const done = wish.code === undefined ? undefined : await taken(read.value, wish, empty, tools);
  if (done) {
    held.drop(book.group, member.id);
    return done;
  }
  const path = pathAgain(wish, tools);
  if (path === undefined) held.keep(book.group, member.id, { name: file.name, bytes: read.value.bytes, at });
  const word = wordFor(read.value, book.state, book.group);
  return shown(read.value, empty, { word, path, again: wish.code !== undefined }, tools);
};
