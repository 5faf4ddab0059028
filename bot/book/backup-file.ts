import { createHash, type Hash } from 'node:crypto';
import { once } from 'node:events';
import { createReadStream } from 'node:fs';
import { type FileHandle, open, rename, rm } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import { createGunzip, createGzip, type Gzip } from 'node:zlib';
import { z } from 'zod';
import { type BookEntry, bookEntry } from '../../core/book.ts';

// A backup is gzip over lines of JSON: a head, one line for each entry of each group in their order, and a last line
// with the number of entries and the SHA-256 of everything before it. A file that was cut short has no last line.

const head = z.strictObject({ kind: z.literal('pipkin-backup'), v: z.literal(1), at: z.iso.datetime() });
const tail = z.strictObject({
  kind: z.literal('pipkin-backup-end'),
  entries: z.int(),
  groups: z.int(),
  sha256: z.string(),
});
export type BackupEnd = z.output<typeof tail>;

/** Why a file is no backup that can be restored. The message is for whoever runs the bot. */
export class BackupTrouble extends Error {
  override readonly name = 'BackupTrouble';
}

const folderOf = (path: string): string => path.replace(/[^/\\]*$/, '') || '.';

const flushFolder = async (path: string): Promise<void> => {
  const handle = await open(folderOf(path), 'r');
  await handle.sync().finally(() => handle.close());
};

/** Characters packed at a time. */
const pieceLength = 64 * 1024;

/** Lines packed into a file that has its name only once it is whole and on disk. */
class PackedFile {
  readonly #path: string;
  readonly #file: FileHandle;
  readonly #zip: Gzip = createGzip();
  readonly #hash: Hash = createHash('sha256');
  readonly #written: Promise<void>;
  #waiting = '';

  constructor(path: string, file: FileHandle) {
    this.#path = path;
    this.#file = file;
    this.#written = this.#drain();
    this.#written.catch(() => {});
  }

  async #drain(): Promise<void> {
    for await (const piece of this.#zip) await this.#file.write(piece as Buffer);
  }

  async line(value: unknown): Promise<void> {
    const text = `${JSON.stringify(value)}\n`;
    this.#hash.update(text);
    this.#waiting += text;
    if (this.#waiting.length >= pieceLength) await this.#pack();
  }

  /** In large pieces: packing takes a turn of the event loop for each, and whoever writes must not outrun it. */
  async #pack(): Promise<void> {
    const text = this.#waiting;
    this.#waiting = '';
    if (!this.#zip.write(text)) await Promise.race([once(this.#zip, 'drain'), this.#written]);
  }

  sum(): string {
    return this.#hash.copy().digest('hex');
  }

  async finish(): Promise<void> {
    await this.#pack();
    this.#zip.end();
    await this.#written;
    await this.#file.sync();
    await this.#file.close();
    await rename(`${this.#path}.new`, this.#path);
    await flushFolder(this.#path);
  }

  async drop(): Promise<void> {
    this.#zip.destroy();
    await this.#file.close().catch(() => {});
    await rm(`${this.#path}.new`, { force: true });
  }
}

/**
 * Writes entries, those of a group together and in their order, into a backup file at `path`. The file appears under
 * its name only when it is whole and on disk. Rejects with the system's error, or with the fault of `entries`, and
 * then there is no file.
 */
export const writeBackup = async (
  path: string,
  at: number,
  entries: AsyncIterable<BookEntry>,
): Promise<BackupEnd> => {
  const file = new PackedFile(path, await open(`${path}.new`, 'w', 0o600));
  try {
    await file.line({ kind: 'pipkin-backup', v: 1, at: new Date(at).toISOString() });
    let count = 0;
    const groups = new Set<string>();
    for await (const entry of entries) {
      groups.add(entry.group);
      await file.line(entry);
      count += 1;
    }
    const end: BackupEnd = {
      kind: 'pipkin-backup-end',
      entries: count,
      groups: groups.size,
      sha256: file.sum(),
    };
    await file.line(end);
    await file.finish();
    return end;
  } catch (fault) {
    await file.drop();
    throw fault;
  }
};

const parsed = (line: string): unknown => {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
};

const notWhole = (why: string): BackupTrouble =>
  new BackupTrouble(`This backup file is not whole (${why}). Take another day's file.`);

async function* linesOf(path: string): AsyncGenerator<string> {
  const input = createReadStream(path);
  const unpacked = input.pipe(createGunzip());
  input.on('error', (fault) => unpacked.destroy(fault));
  try {
    yield* createInterface({ input: unpacked, crlfDelay: Number.POSITIVE_INFINITY });
    if (unpacked.errored) throw unpacked.errored;
  } catch (fault) {
    const code = String((fault as NodeJS.ErrnoException).code ?? '');
    if (/^Z_|^ERR_/.test(code)) throw notWhole('it cannot be unpacked');
    throw fault;
  } finally {
    input.destroy();
  }
}

const entryIn = (line: string, number: number): BookEntry => {
  const entry = bookEntry.safeParse(parsed(line));
  if (entry.success) return entry.data;
  throw new BackupTrouble(`Line ${number} of this backup file is no entry this version can read.`);
};

const checkEnd = (end: BackupEnd, count: number, sum: string): void => {
  if (end.entries !== count) throw notWhole(`${count} entries instead of ${end.entries}`);
  if (end.sha256 !== sum) throw notWhole('its checksum does not match');
};

/** Takes a backup's lines one by one and gives the entries among them; keeps count and checksum on the way. */
class BackupReader {
  readonly #hash: Hash = createHash('sha256');
  #number = 0;
  #ended = false;

  take(line: string): BookEntry | undefined {
    if (this.#ended) throw notWhole('something stands after its end');
    this.#number += 1;
    const end = line.startsWith('{"kind":"pipkin-backup-end"') ? tail.safeParse(parsed(line)) : undefined;
    if (end?.success) {
      checkEnd(end.data, this.#number - 2, this.#hash.digest('hex'));
      this.#ended = true;
      return undefined;
    }
    this.#hash.update(`${line}\n`);
    return this.#number === 1 ? this.#head(line) : entryIn(line, this.#number);
  }

  #head(line: string): undefined {
    if (head.safeParse(parsed(line)).success) return;
    throw new BackupTrouble('This is no backup file of Pipkin, or one of a newer version.');
  }

  finish(): void {
    if (!this.#ended) throw notWhole('its end is missing');
  }
}

/**
 * The entries of a backup file, in their order. Only when it comes to its end is it known to be whole: read it once
 * before anything is written. Throws BackupTrouble, or the system's error.
 */
export async function* readBackup(path: string): AsyncGenerator<BookEntry> {
  const reader = new BackupReader();
  for await (const line of linesOf(path)) {
    const entry = reader.take(line);
    if (entry) yield entry;
  }
  reader.finish();
}
