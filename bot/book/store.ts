import type { Keyv } from 'keyv';
import { openLmdbStore } from './lmdb-store.ts';
import { StoreTrouble } from './trouble.ts';

/** One key to be written, or deleted when its value is undefined. */
export interface Change {
  readonly key: string;
  readonly value: unknown;
}

/** Where every group's book lies. Values are sealed with a checksum; a read of a broken one throws BrokenSeal. */
export interface Store {
  /** The store as its owner wrote it, for messages. */
  readonly shown: string;
  /** True when the store can only be read: the disk or folder does not allow writing. */
  readonly readOnly: boolean;
  readonly keyv: Keyv;
  /**
   * Writes all of `changes` (at most 100), or none of them, as one transaction; on disk when it resolves.
   * Rejects with NotRecorded, or RangeError for too many.
   */
  writeAll(changes: readonly Change[]): Promise<void>;
  /**
   * Every key that begins with `prefix`, with its value, in the order of the keys' UTF-8 bytes. Read piece by piece,
   * so memory stays flat; what is written meanwhile may or may not be seen. Throws BrokenSeal.
   */
  scan(prefix: string): AsyncIterable<readonly [key: string, value: unknown]>;
  /** Waits for writes under way, and lets another process have the store. */
  close(): Promise<void>;
}

/** What opens an address of each kind. A further kind of store is one more line here. */
const kinds: Readonly<Record<string, (rest: string, shown: string) => Promise<Store>>> = {
  lmdb: openLmdbStore,
  postgres: async () => notBuilt(),
  postgresql: async () => notBuilt(),
};

const notBuilt = (): never => {
  throw new StoreTrouble(
    'not-built',
    'A PostgreSQL store is not built yet. Give a folder instead, for example STORE_URL=data',
  );
};

/**
 * Opens the store at `url`: a folder ("data", "/var/lib/pipkin"), or the same as "lmdb:data". A missing folder
 * becomes a new, empty store. Throws StoreTrouble: `in-use`, `damaged`, `not-a-store`, `no-access` or `not-built`.
 */
export const openStore = async (url: string): Promise<Store> => {
  const [, scheme, rest] = /^([a-z][a-z0-9+.-]+):(.*)$/s.exec(url) ?? [];
  if (url.trim() === '' || rest === '') {
    throw new StoreTrouble('not-a-store', 'The store has no name. Give a folder, for example STORE_URL=data');
  }
  if (scheme === undefined || rest === undefined) return openLmdbStore(url, url);
  const kind = Object.hasOwn(kinds, scheme) ? kinds[scheme] : undefined;
  if (kind) return kind(rest, url);
  if (!rest.startsWith('//')) return openLmdbStore(url, url);
  throw new StoreTrouble(
    'not-a-store',
    `A store cannot be at a "${scheme}:" address. Give a folder, for example STORE_URL=data`,
  );
};
