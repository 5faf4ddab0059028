import { mkdir, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { setImmediate as turn } from 'node:timers/promises';
import type { BookEntry } from '../../core/book.ts';
import { type BackupEnd, writeBackup } from './backup-file.ts';
import { journalOf } from './journal.ts';
import { groupOfKey, keysOf } from './names.ts';
import type { Store } from './store.ts';

/** Entries read in one go, so that whoever writes meanwhile is answered in between. */
const piece = 100;

/** Every group that has a book, in the order of their keys. */
const groupsIn = async (store: Store): Promise<readonly string[]> => {
  const groups = new Set<string>();
  let count = 0;
  for await (const [key] of store.scan('g/')) {
    count += 1;
    if (count % piece === 0) await turn();
    const group = groupOfKey(key);
    if (group !== undefined) groups.add(group);
  }
  return [...groups];
};

/** How often a group that is in the middle of a long change is looked at again, and after how many milliseconds. */
const mostLooks = 200;
const lookAgainMs = 50;

/**
 * Whether the entries before `next` are whole changes: no change in several writes is under way, and none that was is cut
 * by it. A change in one write is seen whole or not at all.
 */
const isWhole = async (store: Store, group: string, next: number): Promise<'at-end' | 'more' | 'between'> => {
  if ((await store.keyv.get(keysOf(group).mark)) !== undefined) return 'between';
  const after = await journalOf(store, group).entry(next);
  if (!after) return 'at-end';
  return after.first !== undefined && after.first < next ? 'between' : 'more';
};

/**
 * One group's entries as of a moment at which no change was half-done: a change in several writes is waited for. A group
 * that keeps writing is followed for a second look and no further.
 */
async function* entriesOf(store: Store, group: string): AsyncGenerator<BookEntry> {
  const journal = journalOf(store, group);
  let next = 1;
  for (let looks = 0; looks < mostLooks; looks += 1) {
    for (let more = true; more; ) {
      const entries = await journal.entries(next, next + piece - 1);
      yield* entries;
      next += entries.length;
      more = entries.length === piece;
      await turn();
    }
    const whole = await isWhole(store, group, next);
    if (whole === 'at-end' || (whole === 'more' && looks > 0)) return;
    if (whole === 'between') await new Promise((resolve) => setTimeout(resolve, lookAgainMs));
  }
  throw new Error('a book was in the middle of a change all the time');
}

async function* everyEntry(store: Store): AsyncGenerator<BookEntry> {
  for (const group of await groupsIn(store)) yield* entriesOf(store, group);
}

const nameFor = (day: string): string => `pipkin-${day}.backup.gz`;
const isBackup = (name: string): boolean => /^pipkin-\d{4}-\d{2}-\d{2}\.backup\.gz$/.test(name);

export interface BackupPlan {
  /** Folder for the files, made if need be. */
  readonly folder: string;
  /** Days of which a file is kept. */
  readonly keep: number;
  /** Not before this hour of the day, in UTC. */
  readonly hour: number;
}

/** Removes all but the newest files, and what an interrupted backup left behind. */
const prune = async ({ folder, keep }: BackupPlan): Promise<void> => {
  const names = await readdir(folder);
  const old = names.filter(isBackup).sort().slice(0, -keep);
  const halves = names.filter((name) => name.endsWith('.backup.gz.new'));
  for (const name of [...old, ...halves]) await rm(join(folder, name), { force: true });
};

/**
 * Writes today's backup of all groups, unless it is there already or its hour has not come; undefined then. Older ones
 * than are to be kept go afterwards. Rejects with the system's error or StoreTrouble; yesterday's file is still there.
 */
export const backUp = async (
  store: Store,
  plan: BackupPlan,
  at: number,
): Promise<(BackupEnd & { readonly path: string }) | undefined> => {
  const now = new Date(at);
  if (now.getUTCHours() < plan.hour) return undefined;
  await mkdir(plan.folder, { recursive: true });
  const name = nameFor(now.toISOString().slice(0, 10));
  if ((await readdir(plan.folder)).includes(name)) return undefined;
  await prune(plan);
  const path = join(plan.folder, name);
  const end = await writeBackup(path, at, everyEntry(store));
  await prune(plan);
  return { ...end, path };
};
