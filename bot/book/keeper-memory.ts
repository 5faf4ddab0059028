import { Keyv } from 'keyv';
import type { Keeper } from './keeper.ts';
import { openKeeper } from './keeper-open.ts';
import { seal, unseal } from './seal.ts';
import type { Store } from './store.ts';

/** A store that is forgotten with the process: the same keyv, checksums and journal over a plain Map. */
export const memoryStore = (map: Map<string, string> = new Map()): Store => ({
  shown: 'memory',
  readOnly: false,
  keyv: new Keyv({
    store: map,
    useKeyPrefix: false,
    throwOnErrors: true,
    serialize: seal,
    deserialize: (text) => unseal(text),
  }),
  close: async () => {},
});

/** A keeper for tests, the bench and a trial chat: everything works, nothing is kept. */
export const memoryKeeper = (options: { readonly maxOpen?: number } = {}): Keeper =>
  openKeeper(memoryStore(), options);
