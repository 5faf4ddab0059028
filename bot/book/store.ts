import type { Keyv } from 'keyv';
import { openLmdbStore } from './lmdb-store.ts';
import { StoreTrouble } from './trouble.ts';

/** Where every group's book lies. Values are sealed with a checksum; a read of a broken one throws BrokenSeal. */
export interface Store {
  /** The store as its owner wrote it, for messages. */
  readonly shown: string;
  /** True when the store can only be read: the disk or folder does not allow writing. */
  readonly readOnly: boolean;
  readonly keyv: Keyv;
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
