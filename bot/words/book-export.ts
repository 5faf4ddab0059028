import { gzipSync } from 'node:zlib';
import { localDay } from '../../core/bench/days.ts';
import type { BookEntry } from '../../core/book.ts';
import { bookFile } from '../../core/exchange/file.ts';
import { type TableName, tableNames, tableText } from '../../core/exchange/tables.ts';
import { withoutContacts } from '../../core/exchange/without-contacts.ts';
import type { Answer, AnswerFile, Block } from '../answer.ts';
import { mayWrite, type Tools } from '../topic.ts';
import type { BookWish } from '../topics/book.ts';
import { bookCounts, countsTable } from './book-counts.ts';

/** A larger JSON file is packed, so that it can still be attached; it is read in as it is. */
const packFromBytes = 8 * 1024 * 1024;

const today = ({ at, settings }: Tools): string => localDay(at, settings.zone ?? 'UTC');

/** Contacts of people who reacted are for those who write; in a channel where writers are few they stay out. */
const showsContacts = (tools: Tools): boolean =>
  mayWrite(tools) && (!tools.openly || tools.settings.writerRole === null);

const contactNote = (tools: Tools): Block[] =>
  showsContacts(tools)
    ? []
    : [
        {
          kind: 'text',
          text: 'Contacts of people who reacted are left out: they are for those who write in this book. Whoever does can export them in a direct message or with /book.',
        },
      ];

const encoded = (text: string): Uint8Array => new TextEncoder().encode(text);

const jsonFile = (entries: readonly BookEntry[], tools: Tools): AnswerFile => {
  const shown = showsContacts(tools) ? entries : entries.map((entry) => withoutContacts(entry));
  const bytes = encoded(bookFile(shown));
  const name = `book-${today(tools)}.json`;
  if (bytes.byteLength <= packFromBytes) return { name, type: 'application/json', bytes };
  return { name: `${name}.gz`, type: 'application/gzip', bytes: gzipSync(bytes) };
};

const wholeFile = async (tools: Tools): Promise<Answer> => {
  const { book } = tools;
  const entries = await book.entries(1, book.state.seq);
  const file = jsonFile(entries, tools);
  const counts = bookCounts(book.state);
  return {
    title: 'Export of this book',
    blocks: [
      countsTable(counts),
      {
        kind: 'text',
        text: `All of it, with its history (${entries.length} ${entries.length === 1 ? 'entry' : 'entries'}), is in ${file.name}. Keep it where you keep your papers: it holds all that was told in this group. To take it in again, say "import" with the file.`,
      },
      ...contactNote(tools),
    ],
    figures: {
      entries: entries.length,
      counts: { ...counts },
      file: file.name,
      contacts: showsContacts(tools),
    },
    warnings: [],
    files: [file],
    quiet: true,
    next: [{ label: 'As tables', say: 'export as csv' }],
  };
};

const asTables = (names: readonly TableName[], tools: Tools): Answer => {
  const made = names.map((name) => ({ name, ...tableText(tools.book.state, name, showsContacts(tools)) }));
  // An empty table is only worth a file when it was asked for by name.
  const kept = names.length === tableNames.length ? made.filter(({ rows }) => rows > 0) : made;
  const files = kept.map(({ name, text }) => ({
    name: `${name}-${today(tools)}.csv`,
    type: 'text/csv; charset=utf-8',
    bytes: encoded(text),
  }));
  return {
    title: kept.length === 1 ? `1 table: ${kept[0]?.name}` : `${kept.length} tables`,
    blocks: [
      {
        kind: 'table',
        columns: [
          { title: 'table', align: 'left' },
          { title: 'rows', align: 'right' },
        ],
        rows: kept.map(({ name, rows }) => [name, String(rows)]),
      },
      {
        kind: 'text',
        text: 'Comma-separated, for any spreadsheet: what stands in the book now. Only the JSON file of "export" can be taken in again.',
      },
      ...contactNote(tools),
    ],
    figures: { tables: kept.map(({ name, rows }) => ({ name, rows })), contacts: showsContacts(tools) },
    warnings: [],
    files,
    quiet: true,
  };
};

/** The whole record as one file, or what stands in it as tables. */
export const exportBook = async (wish: BookWish, tools: Tools): Promise<Answer> => {
  if (wish.tables === undefined) return wholeFile(tools);
  return asTables(wish.tables === 'all' ? tableNames : wish.tables, tools);
};
