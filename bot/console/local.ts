import { join } from 'node:path';
import type { Region } from '../../core/settings.ts';
import { localFiles } from '../files/local.ts';
import type { Heard } from '../heard.ts';

/** A message longer than this many bytes is not read into memory. What a message may say is capped far below. */
export const mostBytes = 64 * 1024;

/** Whose book, and who asks, where nobody said otherwise. */
export const localGroup = 'local';
export const localMember = 'me';

export interface Asking {
  readonly text: string;
  readonly at: number;
  readonly group?: string | undefined;
  readonly member?: string | undefined;
  readonly region?: Region | undefined;
}

/** A message typed on this machine: whoever sits here manages the book. */
export const heardHere = ({ text, at, group = localGroup, member = localMember, region }: Asking): Heard => ({
  text,
  group,
  channel: 'local',
  member: { id: member, name: member, roles: [], manages: true },
  at,
  files: localFiles,
  ...(region ? { region } : {}),
});

/**
 * The folder for what answers write, as labels, and for the terminal's history: the store's own where that is one of
 * this machine (the program can write there, and both are backed up together), else `data` under the current one.
 */
export const dataFolder = (storeUrl: string): string => {
  const path = storeUrl.replace(/^lmdb:/, '');
  return /^[a-z][a-z\d+.-]+:\/\//i.test(path) || /^postgres(?:ql)?:/.test(path) ? 'data' : path;
};

export const filesFolder = (storeUrl: string): string => join(dataFolder(storeUrl), 'files');

export const backupFolder = (storeUrl: string): string => join(dataFolder(storeUrl), 'backups');

export const historyFile = (storeUrl: string): string => join(dataFolder(storeUrl), 'terminal-history');
