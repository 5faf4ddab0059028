import { mostFileBytes, mostFileEntries } from '../../core/exchange/file.ts';
import type { Trouble } from '../answer.ts';
import type { ReadProblem } from '../files/read-book.ts';
import { echo } from '../readers/ask-back.ts';

const works = 'The file that "export" gives is one that works.';

const fromFile: {
  readonly [C in ReadProblem['code']]: (
    problem: Extract<ReadProblem, { readonly code: C }>,
    name: string,
  ) => string;
} = {
  'too-big': (_problem, name) =>
    `"${name}" is larger than I take in (${mostFileBytes / 1024 / 1024} MB). ${works}`,
  'not-there': (_problem, name) =>
    `I cannot find "${name}". In the terminal write its path, for example: import data/book/files/book-2026-11-25.json`,
  'not-a-file': (_problem, name) =>
    `"${name}" is no file. Name the file itself, for example: import data/book/files/book-2026-11-25.json`,
  unreadable: (_problem, name) =>
    `I could not read "${name}". Attach it once more, or name another. ${works}`,
  'not-text': (_problem, name) => `"${name}" is not a text file in UTF-8. ${works}`,
  'other-kind': (_problem, name) =>
    `"${name}" is a table, and a table is not the whole record. Import the JSON file that "export" gives.`,
  'too-deep': (_problem, name) => `"${name}" is nested deeper than any book. ${works}`,
  'not-json': ({ line }, name) =>
    `"${name}" is cut short or broken in line ${line}. Fetch it once more. ${works}`,
  'not-a-book': (_problem, name) => `"${name}" is JSON, but not the record of a book. ${works}`,
  'other-version': ({ v }, name) =>
    `"${name}" is written in version ${v} of the format, and I know version 1. Export it once more with a program of this version.`,
  'too-many': ({ count }, name) =>
    `"${name}" has ${count} entries; I take in up to ${mostFileEntries}. ${works}`,
  empty: (_problem, name) => `There is nothing in "${name}": no entries. ${works}`,
  'bad-entry': ({ number, field }, name) =>
    `Entry ${number} of "${name}" is not right: ${echo(field)}. Nothing was taken in. Put that right, or export it once more.`,
  gap: ({ number, seq }, name) =>
    `Entry ${number} of "${name}" is numbered ${seq}: one is missing, or they are out of order. Nothing was taken in. Export it once more.`,
  'does-not-add-up': (_problem, name) => `The entries of "${name}" do not make a book together. ${works}`,
};

const codes: Partial<Record<ReadProblem['code'], Trouble['code']>> = {
  'too-big': 'too-long',
  'too-many': 'too-long',
  'not-there': 'not-found',
  'not-a-file': 'not-found',
  unreadable: 'not-found',
};

/** What is wrong with a file, and where. */
export const fileTrouble = (problem: ReadProblem, said: string): Trouble => ({
  code: codes[problem.code] ?? 'not-understood',
  text: (fromFile[problem.code] as (problem: ReadProblem, name: string) => string)(problem, echo(said)),
});
