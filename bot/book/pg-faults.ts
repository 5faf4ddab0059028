import { codeOf } from './disk.ts';
import { damaged, NotRecorded, type RecordReason, StoreTrouble } from './trouble.ts';

// Five-character codes of the SQL standard and PostgreSQL's own (its manual, appendix "PostgreSQL Error Codes").
const reasons: Readonly<Record<string, RecordReason>> = {
  '25006': 'read-only', // the session, or a standby server, may only read
  '42501': 'read-only', // no right to write to the table
  '53100': 'disk-full',
};

const isSqlState = (code: string): boolean => /^[0-9A-Z]{5}$/.test(code);

// Class 08 is a broken connection; the others: shut down, crashed, starting up, too many connections.
const connectionStates = new Set(['57P01', '57P02', '57P03', '53300']);

/** Whether the connection failed, or the server is away: trying again may help. Anything else is an answer. */
export const isConnectionFault = (fault: unknown): boolean => {
  if (fault instanceof NotRecorded || fault instanceof StoreTrouble) return false;
  const code = codeOf(fault);
  return !isSqlState(code) || code.startsWith('08') || connectionStates.has(code);
};

export const notRecorded = (fault: unknown): NotRecorded =>
  new NotRecorded(reasons[codeOf(fault)] ?? 'failed', { cause: fault });

const whys: Readonly<Record<string, string>> = {
  '28000': 'the name or password in its address was refused',
  '28P01': 'the name or password in its address was refused',
  '3D000': 'there is no database of that name; make it first, as with "createdb"',
  '42501': 'the account in its address may not make or use tables there',
  '53300': 'the database has no free connections',
  '57P03': 'the database is still starting or is shutting down',
  ECONNREFUSED: 'nothing answers at that host and port',
  ECONNRESET: 'the connection was broken off',
  ENOTFOUND: 'there is no such host',
  EAI_AGAIN: 'the name of its host could not be looked up',
  ETIMEDOUT: 'no answer in time',
};

const whyOf = (fault: unknown): string => {
  const code = codeOf(fault);
  // Node tries every address of a name and reports the failures together.
  const inner = fault instanceof AggregateError ? codeOf(fault.errors[0]) : '';
  return whys[code] ?? whys[inner] ?? (code === '' ? 'no answer in time' : `code ${code}`);
};

/** Corrupted pages, as the server itself found them. */
const isDamage = (fault: unknown): boolean => /^XX00[12]$/.test(codeOf(fault));

/** What is told when the store cannot be opened or read. `shown` has no password in it. */
export const accessTrouble = (shown: string, fault: unknown): StoreTrouble => {
  if (fault instanceof StoreTrouble) return fault;
  if (isDamage(fault)) return damaged(shown, 'the database reports corrupted data', { cause: fault });
  return new StoreTrouble('no-access', `The store "${shown}" cannot be used: ${whyOf(fault)}.`, {
    cause: fault,
  });
};
