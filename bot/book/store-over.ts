import { Keyv, type KeyvStoreAdapter } from 'keyv';
import { seal, unseal } from './seal.ts';
import { belongsTo } from './shard.ts';
import type { Change, Store } from './store.ts';
import { NotRecorded } from './trouble.ts';

/** Most changes in one atomic write; bounds the room and the time that one transaction may take. */
export const maxChanges = 100;

/** One change as it is kept: the sealed text, or undefined to delete the key. */
export interface SealedChange {
  readonly key: string;
  readonly text: string | undefined;
}

/** What a kind of store must be able to do below the checksums. */
export interface Raw {
  /** For keyv: single keys. A Map does. */
  readonly adapter: KeyvStoreAdapter | Map<string, string>;
  /** All or none, in one transaction, on disk when it resolves. */
  writeAll(changes: readonly SealedChange[]): Promise<void>;
  /** Keys and sealed texts under `prefix`, in the order of the keys' UTF-8 bytes, read piece by piece. */
  scan(prefix: string): AsyncIterable<readonly [string, string]>;
  /** Overwrites what deleted values have left on the disk. */
  wipe?(): Promise<void>;
  close(): Promise<void>;
}

// As keyv wraps a value before it serialises it, so that both ways of writing give the same text.
const sealedChange = ({ key, value }: Change): SealedChange => ({
  key,
  text: value === undefined ? undefined : seal({ value }),
});

async function* opened(texts: AsyncIterable<readonly [string, string]>): AsyncGenerator<[string, unknown]> {
  for await (const [key, text] of texts) yield [key, unseal<{ value: unknown }>(text).value];
}

/** The store over `raw`, with checksums. */
export const storeOver = (about: Pick<Store, 'shown' | 'readOnly' | 'lost' | 'shard'>, raw: Raw): Store => ({
  owns: (group) => about.shard === undefined || belongsTo(group, about.shard),
  ...about,
  keyv: new Keyv({
    store: raw.adapter,
    useKeyPrefix: false,
    throwOnErrors: true,
    serialize: seal,
    deserialize: (text) => unseal(text),
  }),
  writeAll: async (changes) => {
    if (changes.length > maxChanges)
      throw new RangeError(`one write is at most ${maxChanges} changes, not ${changes.length}`);
    if (about.readOnly) throw new NotRecorded('read-only');
    if (changes.length > 0) await raw.writeAll(changes.map(sealedChange));
  },
  scan: (prefix) => opened(raw.scan(prefix)),
  ...(raw.wipe ? { wipe: () => raw.wipe?.() ?? Promise.resolve() } : {}),
  close: () => raw.close(),
});
