import { setImmediate as turn } from 'node:timers/promises';
import { promisify } from 'node:util';
import { gunzip } from 'node:zlib';
import { afterEntries, type BookEntry, type BookState, emptyBook } from '../../core/book.ts';
import {
  checkedEntry,
  entriesIn,
  type FileEntry,
  type FileProblem,
  mostFileBytes,
} from '../../core/exchange/file.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { FileTrouble, GivenFile } from './given.ts';

export interface BookRead {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly entries: readonly FileEntry[];
  /** The book that the entries make. */
  readonly state: BookState;
}

export type ReadProblem =
  | FileProblem
  | { readonly code: FileTrouble }
  | { readonly code: 'not-text' }
  | { readonly code: 'other-kind' }
  | { readonly code: 'does-not-add-up' };

/** Entries checked before others get their turn. */
const piece = 200;

const unpacked = promisify(gunzip);
const isPacked = (bytes: Uint8Array): boolean => bytes[0] === 0x1f && bytes[1] === 0x8b;

const textOf = async (bytes: Uint8Array): Promise<Result<string, ReadProblem>> => {
  try {
    const plain = isPacked(bytes) ? await unpacked(bytes, { maxOutputLength: mostFileBytes }) : bytes;
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(plain));
  } catch (fault) {
    const tooBig = (fault as NodeJS.ErrnoException).code === 'ERR_BUFFER_TOO_LARGE';
    return fail({ code: tooBig ? 'too-big' : 'not-text' });
  }
};

const checkedAll = async (values: readonly unknown[]): Promise<Result<FileEntry[], ReadProblem>> => {
  const entries: FileEntry[] = [];
  for (const [index, value] of values.entries()) {
    if (index % piece === piece - 1) await turn();
    const checked = checkedEntry(value, index);
    if (!checked.ok) return checked;
    entries.push(checked.value);
  }
  return ok(entries);
};

const folded = (entries: readonly FileEntry[]): BookState | undefined => {
  try {
    return afterEntries(
      emptyBook,
      entries.map((entry): BookEntry => ({ ...entry, v: 1, group: 'file' })),
    );
  } catch {
    return undefined;
  }
};

/** Reads a file that "export" made, checks every entry of it, and reckons the book it makes. Nothing is written. */
export const readBook = async (file: GivenFile): Promise<Result<BookRead, ReadProblem>> => {
  if (/\.(?:csv|txt)$/i.test(file.name)) return fail({ code: 'other-kind' });
  const read = await file.read(mostFileBytes);
  if (!read.ok) return fail({ code: read.problem });
  const text = await textOf(read.value);
  if (!text.ok) return text;
  const values = entriesIn(text.value);
  if (!values.ok) return values;
  const entries = await checkedAll(values.value);
  if (!entries.ok) return entries;
  const state = folded(entries.value);
  return state
    ? ok({ name: file.name, bytes: read.value, entries: entries.value, state })
    : fail({ code: 'does-not-add-up' });
};
