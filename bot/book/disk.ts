import type { RecordReason } from './trouble.ts';

// Node names the system's errors; the database library passes on their numbers, which Linux and macOS share for these.
const reasons: Readonly<Record<string, RecordReason>> = {
  '1': 'read-only',
  '13': 'read-only',
  '27': 'disk-full', // the file may not grow further
  '28': 'disk-full',
  '30': 'read-only',
  EACCES: 'read-only',
  EDQUOT: 'disk-full',
  EFBIG: 'disk-full',
  ENOSPC: 'disk-full',
  EPERM: 'read-only',
  EROFS: 'read-only',
};

/** The system's word or number for what went wrong, or an empty text. */
export const codeOf = (fault: unknown): string =>
  String((fault as { code?: unknown } | undefined)?.code ?? '');

/** Why a write failed, as far as its error tells. */
export const reasonOf = (fault: unknown): RecordReason => reasons[codeOf(fault)] ?? 'failed';
