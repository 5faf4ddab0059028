import { EventEmitter } from 'node:events';
import { join } from 'node:path';
import type { KeyvStoreAdapter, StoredData } from 'keyv';
import { type Database, open } from 'lmdb';
import { scrubLmdbFile } from './lmdb-scrub.ts';
import { type Room, roomIn } from './room.ts';
import type { SealedChange } from './store-over.ts';
import type { NotRecorded } from './trouble.ts';

/** Longest key in bytes of UTF-8: the library's own limit on 4 KiB pages. */
export const maxKeyBytes = 1978;

// Puts in one transaction at most, unless one write has more; bounds the room a transaction may need.
const maxBatch = 100;

// Entries read in one go by `scan`. Between two goes the reading transaction is let go, so that pages which are freed
// meanwhile can be used again.
const scanPiece = 200;

interface Put {
  readonly key: Buffer;
  /** Undefined deletes the key. */
  readonly value: Buffer | undefined;
}

/** Puts that belong together: all of them are written, or none. */
interface Write {
  readonly puts: readonly Put[];
  /** Given whether each key was there before (a written one counts as there). */
  readonly resolve: (existed: readonly boolean[]) => void;
  readonly reject: (problem: Error) => void;
}

/** What the library tells about its file; its own typings leave it open. */
interface Sizes {
  readonly pageSize: number;
  readonly lastPageNumber: number;
  readonly treeDepth: number;
  readonly free: { readonly treeDepth: number };
}

const keyOf = (key: string): Buffer => {
  const bytes = Buffer.from(key, 'utf8');
  if (bytes.length === 0 || bytes.length > maxKeyBytes) {
    throw new RangeError(`a key is 1 to ${maxKeyBytes} bytes long, not ${bytes.length}`);
  }
  // Half a surrogate pair has no UTF-8: two different keys would become one.
  if (/\p{Surrogate}/u.test(key)) throw new RangeError('a key must be well-formed Unicode');
  return bytes;
};

/** The first key after all those that begin with `prefix`; UTF-8 never contains the byte 0xFF. */
const afterPrefix = (prefix: string): Buffer => Buffer.concat([Buffer.from(prefix), Buffer.from([0xff])]);

/**
 * A keyv storage adapter over one lmdb file in `folder`. An awaited write has been flushed to disk. Writes asked for
 * in the same turn of the event loop share transactions, and so flushes, of up to 100 writes; what was asked for in one
 * call is never parted.
 *
 * Room for a commit is made before it begins. The library must not meet a full disk itself: lmdb 3.5.6 writes its
 * report of a failed page write into 100 bytes that it does not always fit (mdb_page_flush), and the process was
 * seen to be aborted for a corrupted heap.
 *
 * Commits run on the main thread on purpose. The library's background commits print stack traces and leave
 * rejections unhandled when a commit fails; its synchronous transaction throws cleanly, recovers when there is room
 * again, and is no slower, at the price that the process waits for the flush.
 */
export class LmdbAdapter extends EventEmitter implements KeyvStoreAdapter {
  readonly opts = { url: '', dialect: 'sqlite' };
  namespace?: string;
  readonly #db: Database<Buffer, Buffer>;
  readonly #explain: (fault: unknown) => NotRecorded;
  readonly #room: Room | undefined;
  readonly #file: string;
  #queue: Write[] = [];
  #closed = false;

  /** `explain` names the reason when a commit fails. */
  constructor(
    folder: string,
    options: {
      readonly readOnly: boolean;
      readonly explain: (fault: unknown) => NotRecorded;
    },
  ) {
    super();
    this.#explain = options.explain;
    this.#file = join(folder, 'data.mdb');
    this.#db = open<Buffer, Buffer>({
      path: folder,
      noSubdir: false,
      readOnly: options.readOnly,
      encoding: 'binary',
      keyEncoding: 'binary',
      maxDbs: 1,
      // Flush before a commit counts as done, instead of some time after it.
      overlappingSync: false,
      noSync: false,
      noMetaSync: false,
    });
    this.#room = options.readOnly ? undefined : roomIn(folder, this.#file);
  }

  #read(key: string): string | undefined {
    if (this.#closed) throw new Error('the store is closed');
    return this.#db.getBinary(keyOf(key))?.toString('utf8');
  }

  async get<Value>(key: string): Promise<StoredData<Value> | undefined> {
    return this.#read(key) as StoredData<Value> | undefined;
  }

  async getMany<Value>(keys: string[]): Promise<StoredData<Value | undefined>[]> {
    return keys.map((key) => this.#read(key)) as StoredData<Value | undefined>[];
  }

  async has(key: string): Promise<boolean> {
    return this.#db.doesExist(keyOf(key));
  }

  async set(key: string, value: string): Promise<boolean> {
    await this.writeAll([{ key, text: value }]);
    return true;
  }

  async setMany(entries: readonly { readonly key: string; readonly value: string }[]): Promise<void> {
    await this.writeAll(entries.map(({ key, value }) => ({ key, text: value })));
  }

  /** Writes all of these or none, in one transaction; says for each deleted key whether it was there. */
  async writeAll(changes: readonly SealedChange[]): Promise<readonly boolean[]> {
    const puts = changes.map(({ key, text }) => ({
      key: keyOf(key),
      value: text === undefined ? undefined : Buffer.from(text, 'utf8'),
    }));
    return this.#write(puts);
  }

  async delete(key: string): Promise<boolean> {
    const [existed] = await this.writeAll([{ key, text: undefined }]);
    return existed === true;
  }

  async deleteMany(keys: string[]): Promise<boolean> {
    const existed = await Promise.all(keys.map((key) => this.delete(key)));
    return existed.every(Boolean);
  }

  /** Deletes everything of the current namespace, or everything there is when none is set. */
  async clear(): Promise<void> {
    const keys = [...this.#db.getKeys(this.#range(this.namespace))];
    await Promise.all(keys.map((key) => this.#write([{ key: Buffer.from(key), value: undefined }])));
  }

  async *iterator<Value>(namespace?: string): AsyncGenerator<(string | Awaited<Value> | undefined)[], void> {
    for await (const [key, text] of this.scan(namespace ? `${namespace}:` : '')) yield [key, text];
  }

  /** Keys under `prefix` with their values, in the order of their bytes. */
  async *scan(prefix: string): AsyncGenerator<[string, string], void> {
    const end = afterPrefix(prefix);
    let start: Buffer | undefined = Buffer.from(prefix);
    while (start) {
      const piece: [string, string][] = this.#piece(start, end);
      yield* piece;
      const last = piece.length === scanPiece ? piece.at(-1) : undefined;
      // The next key there can be: a zero byte sorts before every other continuation.
      start = last && Buffer.concat([Buffer.from(last[0]), Buffer.from([0])]);
    }
  }

  #piece(start: Buffer, end: Buffer): [string, string][] {
    if (this.#closed) throw new Error('the store is closed');
    const range = this.#db.getRange({ ...(start.length > 0 ? { start } : {}), end, limit: scanPiece });
    return [...range].map(({ key, value }) => [Buffer.from(key).toString('utf8'), value.toString('utf8')]);
  }

  /** Overwrites what is not in use any more. Waits for nothing and lets nothing in between: see scrubLmdbFile. */
  wipe(): void {
    this.#commit();
    // A reader that began before the deletion would look at pages that are about to be overwritten.
    this.#db.resetReadTxn();
    scrubLmdbFile(this.#file);
  }

  async disconnect(): Promise<void> {
    if (this.#closed) return;
    this.#commit();
    this.#closed = true;
    const { pageSize, lastPageNumber } = this.#sizes();
    await this.#db.close();
    // Without the spare room, a file that was cut short while it was closed is known by its length.
    this.#room?.close((lastPageNumber + 1) * pageSize);
  }

  #range(namespace: string | undefined): { start?: Buffer; end?: Buffer } {
    return namespace
      ? {
          start: Buffer.from(`${namespace}:`),
          end: afterPrefix(`${namespace}:`),
        }
      : {};
  }

  #write(puts: readonly Put[]): Promise<readonly boolean[]> {
    return new Promise((resolve, reject) => {
      this.#queue.push({ puts, resolve, reject });
      if (this.#queue.length === 1) setImmediate(() => this.#commit());
    });
  }

  #commit(): void {
    const queue = this.#queue;
    this.#queue = [];
    let batch: Write[] = [];
    let puts = 0;
    for (const write of queue) {
      if (batch.length > 0 && puts + write.puts.length > maxBatch) {
        this.#commitBatch(batch);
        batch = [];
        puts = 0;
      }
      batch.push(write);
      puts += write.puts.length;
    }
    if (batch.length > 0) this.#commitBatch(batch);
  }

  #commitBatch(writes: readonly Write[]): void {
    try {
      const puts = writes.flatMap((write) => write.puts);
      this.#makeRoom(puts);
      const existed = this.#transact(puts);
      let from = 0;
      for (const write of writes) {
        write.resolve(existed.slice(from, from + write.puts.length));
        from += write.puts.length;
      }
    } catch (fault) {
      const problem = this.#explain(fault);
      for (const write of writes) write.reject(problem);
    }
  }

  #sizes(): Sizes {
    return this.#db.getStats() as Sizes;
  }

  // The most pages a transaction can add: each write may copy and split a page on every level of the tree, a
  // long value has pages of its own, and the list of free pages is written anew.
  #makeRoom(puts: readonly Put[]): void {
    if (this.#closed || !this.#room) throw new Error('the store is closed or read-only');
    const { pageSize, lastPageNumber, treeDepth, free } = this.#sizes();
    const ownPages = (put: Put): number => Math.ceil(((put.value?.length ?? 0) + pageSize) / pageSize);
    const tree = puts.reduce((pages, put) => pages + 2 * (treeDepth + 1) + ownPages(put), 0);
    const list = 2 * (free.treeDepth + 1) + 2 * Math.ceil((lastPageNumber + tree) / (pageSize / 8)) + 2;
    this.#room.reach((lastPageNumber + 1 + tree + list) * pageSize);
  }

  #transact(puts: readonly Put[]): boolean[] {
    const existed: boolean[] = [];
    // The callback returns nothing: a returned promise would leave the transaction open.
    this.#db.transactionSync(() => {
      for (const { key, value } of puts) {
        existed.push(value !== undefined || this.#db.doesExist(key));
        if (value === undefined) this.#db.removeSync(key);
        else this.#db.putSync(key, value);
      }
    });
    return existed;
  }
}
