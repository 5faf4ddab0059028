import { EventEmitter } from 'node:events';
import type { KeyvStoreAdapter, StoredData } from 'keyv';
import type pg from 'pg';
import { patiently } from './pg-connect.ts';
import type { PgWriter } from './pg-writer.ts';
import type { SealedChange } from './store-over.ts';

const scanPiece = 200;

/** Longest key in bytes of UTF-8, as in the embedded store, so that whatever one keeps the other keeps too. */
const maxKeyBytes = 1978;

const checkKey = (key: string): void => {
  const bytes = Buffer.byteLength(key);
  if (bytes === 0 || bytes > maxKeyBytes)
    throw new RangeError(`a key is 1 to ${maxKeyBytes} bytes long, not ${bytes}`);
  // The database's text has no zero character, and half a surrogate pair has no UTF-8.
  if (/\p{Surrogate}|\0/u.test(key)) throw new RangeError('a key must be well-formed Unicode without zeros');
};

/** The first text after all those that begin with `prefix`, in the order of bytes. */
const afterPrefix = (prefix: string): string => `${prefix}\u{10FFFF}`;

/**
 * A keyv storage adapter over one PostgreSQL table: reads through a pool, writes through one writer that holds a
 * lease.
 *
 * Of our own because @keyv/postgres 2.2.3 cannot carry a journal: it has no transaction over several keys that also
 * checks a lease; one pool serves the whole process, so a second address takes the first one's place; a connection
 * that the server closes ends the process by an event nobody can listen to; and a walk through the keys that fails
 * half-way ends as if there were no more.
 */
export class PgAdapter extends EventEmitter implements KeyvStoreAdapter {
  readonly opts = { url: '', dialect: 'postgres' };
  namespace?: string;
  readonly #pool: pg.Pool;
  readonly #writer: PgWriter;
  readonly #patienceMs: number;

  constructor(pool: pg.Pool, writer: PgWriter, patienceMs: number) {
    super();
    this.#patienceMs = patienceMs;
    this.#pool = pool;
    this.#writer = writer;
  }

  async #rows(sql: string, parameters: readonly unknown[]): Promise<{ key: string; value: string }[]> {
    return patiently(async () => (await this.#pool.query(sql, [...parameters])).rows, this.#patienceMs);
  }

  async get<Value>(key: string): Promise<StoredData<Value> | undefined> {
    const [value] = await this.getMany<Value>([key]);
    return value as StoredData<Value> | undefined;
  }

  async getMany<Value>(keys: string[]): Promise<StoredData<Value | undefined>[]> {
    for (const key of keys) checkKey(key);
    const rows = await this.#rows('select key, value from pipkin_book where key = any($1::text[])', [keys]);
    const values = new Map(rows.map(({ key, value }) => [key, value]));
    return keys.map((key) => values.get(key)) as StoredData<Value | undefined>[];
  }

  async has(key: string): Promise<boolean> {
    checkKey(key);
    return (await this.#rows('select key from pipkin_book where key = $1', [key])).length > 0;
  }

  async set(key: string, value: string): Promise<boolean> {
    await this.writeAll([{ key, text: value }]);
    return true;
  }

  async setMany(entries: readonly { readonly key: string; readonly value: string }[]): Promise<void> {
    await this.writeAll(entries.map(({ key, value }) => ({ key, text: value })));
  }

  /** All or none, in one transaction; says for each deleted key whether it was there. */
  async writeAll(changes: readonly SealedChange[]): Promise<readonly boolean[]> {
    for (const { key } of changes) checkKey(key);
    return this.#writer.write(changes);
  }

  async delete(key: string): Promise<boolean> {
    const [existed] = await this.writeAll([{ key, text: undefined }]);
    return existed === true;
  }

  async deleteMany(keys: string[]): Promise<boolean> {
    const existed = await Promise.all(keys.map((key) => this.delete(key)));
    return existed.every(Boolean);
  }

  async clear(): Promise<void> {
    for await (const [key] of this.scan(this.namespace ? `${this.namespace}:` : '')) await this.delete(key);
  }

  async *iterator<Value>(namespace?: string): AsyncGenerator<(string | Awaited<Value> | undefined)[], void> {
    for await (const [key, text] of this.scan(namespace ? `${namespace}:` : '')) yield [key, text];
  }

  /** Keys under `prefix` with their values, in the order of their bytes; rejects when the database fails half-way. */
  async *scan(prefix: string): AsyncGenerator<[string, string], void> {
    const end = afterPrefix(prefix);
    let after: string | undefined;
    for (;;) {
      const from = after === undefined ? 'key >= $1' : 'key > $1';
      const rows = await this.#rows(
        `select key, value from pipkin_book where ${from} and key < $2 order by key limit ${scanPiece}`,
        [after ?? prefix, end],
      );
      for (const { key, value } of rows) yield [key, value];
      if (rows.length < scanPiece) return;
      after = rows.at(-1)?.key;
    }
  }
}
