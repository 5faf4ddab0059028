import { z } from 'zod';
import { type BookEntry, bookEntry } from '../book.ts';
import { fail, ok, type Result } from '../result.ts';

/** An entry in a file: the group is whoever reads it in. */
export const fileEntry = bookEntry.omit({ v: true, group: true });
export type FileEntry = z.output<typeof fileEntry>;

export const fileKind = 'pipkin-book';
export const fileVersion = 1;

/** Largest file that is read, in bytes: some 20,000 batches with all their lines. */
export const mostFileBytes = 32 * 1024 * 1024;
/** Most entries in a file. */
export const mostFileEntries = 200_000;
/** Deepest nesting; what is written here needs 8. */
const mostDepth = 24;

export type FileProblem =
  | { readonly code: 'too-deep' }
  | { readonly code: 'not-json'; readonly line: number }
  | { readonly code: 'not-a-book' }
  | { readonly code: 'other-version'; readonly v: number }
  | { readonly code: 'too-many'; readonly count: number }
  | { readonly code: 'empty' }
  /** `line` is the line of the file when it stands as it was written, one entry a line. */
  | { readonly code: 'bad-entry'; readonly number: number; readonly field: string }
  | { readonly code: 'gap'; readonly number: number; readonly seq: number };

/**
 * A whole book as one JSON text, an entry a line. Nothing in it depends on when or where it is written, so the same
 * record gives the same text.
 */
export const bookFile = (entries: readonly BookEntry[]): string => {
  const lines = entries.map(({ v: _v, group: _group, ...entry }) => JSON.stringify(entry));
  const head = `{"kind":${JSON.stringify(fileKind)},"v":${fileVersion},"entries":[`;
  return lines.length === 0 ? `${head}]}\n` : `${head}\n${lines.join(',\n')}\n]}\n`;
};

const [quote, backslash] = ['"'.charCodeAt(0), '\\'.charCodeAt(0)];
const opening = new Set(['[', '{'].map((sign) => sign.charCodeAt(0)));
const closing = new Set([']', '}'].map((sign) => sign.charCodeAt(0)));

/** The first place after a text in quotation marks that begins at `from`. */
const afterText = (text: string, from: number): number => {
  let at = from + 1;
  while (at < text.length && text.charCodeAt(at) !== quote) at += text.charCodeAt(at) === backslash ? 2 : 1;
  return at + 1;
};

/** Nesting is looked at before the text is parsed; brackets in quotation marks do not count. One pass. */
const isTooDeep = (text: string): boolean => {
  let depth = 0;
  for (let at = 0; at < text.length; ) {
    const sign = text.charCodeAt(at);
    if (opening.has(sign)) depth += 1;
    else if (closing.has(sign)) depth -= 1;
    if (depth > mostDepth) return true;
    at = sign === quote ? afterText(text, at) : at + 1;
  }
  return false;
};

const parses = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

/** The first line that is not an entry, where the file was written an entry a line; the last line otherwise. */
const brokenLine = (text: string): number => {
  const lines = text.trimEnd().split('\n');
  const at = lines.findIndex(
    (line, index) => index > 0 && line.trim() !== ']}' && !parses(line.replace(/,\s*$/, '')),
  );
  return at < 0 ? lines.length : at + 1;
};

const header = z.looseObject({ kind: z.string(), v: z.int(), entries: z.array(z.unknown()) });

/** The entries of a file as they stand, unchecked. */
export const entriesIn = (text: string): Result<readonly unknown[], FileProblem> => {
  if (isTooDeep(text)) return fail({ code: 'too-deep' });
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return fail({ code: 'not-json', line: brokenLine(text) });
  }
  const read = header.safeParse(value);
  if (!read.success || read.data.kind !== fileKind) return fail({ code: 'not-a-book' });
  const { v, entries } = read.data;
  if (v !== fileVersion) return fail({ code: 'other-version', v });
  if (entries.length > mostFileEntries) return fail({ code: 'too-many', count: entries.length });
  return entries.length === 0 ? fail({ code: 'empty' }) : ok(entries);
};

/** "event.lines.2.amount" of a faulty entry; unknown fields are named too. */
const fieldOf = (error: z.ZodError): string => {
  const [issue] = error.issues;
  const unknown = issue?.code === 'unrecognized_keys' ? issue.keys.slice(0, 1) : [];
  return [...(issue?.path ?? []), ...unknown].map(String).join('.').slice(0, 80) || 'entry';
};

/** One entry checked: its fields, its number in the row, and that what it belongs to came before it. */
export const checkedEntry = (value: unknown, index: number): Result<FileEntry, FileProblem> => {
  const number = index + 1;
  const read = fileEntry.safeParse(value);
  if (!read.success) return fail({ code: 'bad-entry', number, field: fieldOf(read.error) });
  const { seq, first } = read.data;
  if (seq !== number) return fail({ code: 'gap', number, seq });
  if (first !== undefined && first >= seq) return fail({ code: 'bad-entry', number, field: 'first' });
  return ok(read.data);
};
