import {
  access,
  constants,
  mkdir,
  open,
  readdir,
  readFile,
  rename,
  rm,
  stat,
  writeFile,
} from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { type Claim, claimStore, isClaimFile } from './claim.ts';
import { codeOf, reasonOf } from './disk.ts';
import { checkLmdbFile } from './lmdb-check.ts';
import { BrokenFile } from './lmdb-file.ts';
import type { Store } from './store.ts';
import { type SealedChange, storeOver } from './store-over.ts';
import { damaged, NotRecorded, StoreTrouble } from './trouble.ts';

const dataFile = 'data.mdb';
// Says that the folder is a store whose data file has been written once: without it, an emptied folder would look new.
const markFile = 'store.json';
const mark = JSON.stringify({ kind: 'pipkin-store', v: 1 });

const lockBytes = 16 * 1024;
const trialBytes = 256 * 1024;

const isOurs = (name: string): boolean =>
  [dataFile, 'lock.mdb', markFile, `${markFile}.new`].includes(name) || isClaimFile(name);
const isHarmless = (name: string): boolean => name.startsWith('.') || name === 'lost+found';

/** Length in bytes; 0 for a file that is not there. */
const sizeOf = (path: string): Promise<number> =>
  stat(path).then(
    (about) => about.size,
    () => 0,
  );

// The database library's own error numbers; the system's are positive.
const isLibraryFault = (fault: unknown): boolean => Number(codeOf(fault)) <= -30_000;

const whyNot: Readonly<Record<string, string>> = {
  'disk-full': 'the disk is full',
  'read-only': 'its files may not be read or written',
};

const noAccess = (shown: string, fault: unknown): StoreTrouble => {
  const why = whyNot[reasonOf(fault)] ?? (codeOf(fault) || 'no reason given');
  return new StoreTrouble('no-access', `The store "${shown}" cannot be opened: ${why}.`, { cause: fault });
};

/** Flushes a folder's own entries, so that a file made in it is still there after a power cut. */
const flushFolder = async (folder: string): Promise<void> => {
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
};

const checkFolder = async (folder: string, shown: string): Promise<void> => {
  try {
    await mkdir(folder, { recursive: true });
  } catch (fault) {
    if (codeOf(fault) === 'EEXIST' || codeOf(fault) === 'ENOTDIR') {
      throw new StoreTrouble('not-a-store', `"${shown}" is a file. A store is a folder: give another name.`);
    }
    throw noAccess(shown, fault);
  }
  const names = await readdir(folder);
  const foreign = names.filter((name) => !isOurs(name) && !isHarmless(name));
  if (foreign.length > 0 && !names.includes(dataFile) && !names.includes(markFile)) {
    throw new StoreTrouble(
      'not-a-store',
      `The folder "${shown}" holds other files and no store. Nothing in it was changed: give an empty or new folder.`,
    );
  }
};

interface Found {
  readonly data: boolean;
  readonly marked: boolean;
}

/** What lies in the folder, after looking through it. Throws `damaged`. */
const checkData = async (folder: string, shown: string): Promise<Found> => {
  const size = await sizeOf(join(folder, dataFile));
  const marked = await readFile(join(folder, markFile), 'utf8').catch(() => undefined);
  if (marked !== undefined && marked !== mark) throw damaged(shown, `its file ${markFile} is not as written`);
  if (size === 0 && marked === undefined) return { data: false, marked: false };
  if (size === 0) throw damaged(shown, `its file ${dataFile} is missing or empty`);
  try {
    checkLmdbFile(join(folder, dataFile));
  } catch (fault) {
    if (fault instanceof BrokenFile) throw damaged(shown, `${dataFile}: ${fault.message}`, { cause: fault });
    throw fault;
  }
  return { data: true, marked: marked !== undefined };
};

const writeMark = async (folder: string): Promise<void> => {
  const fresh = join(folder, `${markFile}.new`);
  const handle = await open(fresh, 'w');
  try {
    await handle.writeFile(mark);
    await handle.sync();
  } finally {
    await handle.close();
  }
  await rename(fresh, join(folder, markFile));
  await flushFolder(folder);
  await flushFolder(dirname(folder));
};

const canWrite = async (folder: string): Promise<boolean> => {
  const ways = [folder, join(folder, dataFile), join(folder, 'lock.mdb')].map((path) =>
    access(path, constants.W_OK).then(
      () => true,
      (fault) => codeOf(fault) === 'ENOENT',
    ),
  );
  return (await Promise.all(ways)).every(Boolean);
};

// A full disk is met here, where it can be told, and not by the library: it maps its lock file into memory, and a
// block that cannot be had there ends the process.
const makeRoom = async (folder: string, isNew: boolean): Promise<void> => {
  const lock = join(folder, 'lock.mdb');
  if ((await sizeOf(lock)) === 0) await writeFile(lock, Buffer.alloc(lockBytes), { flush: true });
  if (!isNew) return;
  const trial = join(folder, '.trial');
  await writeFile(trial, Buffer.alloc(trialBytes), { flush: true });
  await rm(trial, { force: true });
};

const openClaimed = async (folder: string, shown: string, claim: Claim): Promise<Store> => {
  const found = await checkData(folder, shown);
  const readOnly = !(await canWrite(folder));
  if (readOnly && !found.data) throw noAccess(shown, { code: 'EROFS' });
  if (!readOnly) await makeRoom(folder, !found.data);
  const { LmdbAdapter } = await import('./lmdb-adapter.ts');
  const explain = (fault: unknown) => new NotRecorded(reasonOf(fault), { cause: fault });
  const adapter = new LmdbAdapter(folder, { readOnly, explain });
  if (!readOnly && !found.marked) await writeMark(folder);
  const close = async (): Promise<void> => {
    await adapter.disconnect();
    await claim.release();
  };
  const writeAll = async (changes: readonly SealedChange[]): Promise<void> => {
    await adapter.writeAll(changes);
  };
  const scan = (prefix: string) => adapter.scan(prefix);
  const wipe = async (): Promise<void> => adapter.wipe();
  return storeOver({ shown, readOnly }, { adapter, writeAll, scan, wipe, close });
};

/**
 * Opens the store in the folder `path`; `shown` is how messages name it. The folder is claimed for this process
 * and looked through before the database library sees it. A folder that cannot be written to is opened for
 * reading: the books can be asked, and recording says that nothing was recorded. Throws StoreTrouble.
 */
export const openLmdbStore = async (path: string, shown: string): Promise<Store> => {
  const folder = resolve(path);
  await checkFolder(folder, shown);
  const claim = await claimStore(folder).catch((fault) => Promise.reject(noAccess(shown, fault)));
  if (!claim) {
    throw new StoreTrouble(
      'in-use',
      `The store "${shown}" is in use by another running copy of the program. Stop that one first, or use another folder.`,
    );
  }
  try {
    return await openClaimed(folder, shown, claim);
  } catch (fault) {
    await claim.release();
    if (isLibraryFault(fault)) throw damaged(shown, `${dataFile} cannot be read`, { cause: fault });
    throw fault instanceof StoreTrouble ? fault : noAccess(shown, fault);
  }
};
