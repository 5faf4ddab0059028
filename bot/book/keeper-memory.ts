import type { Keeper } from './keeper.ts';
import { openKeeper } from './keeper-open.ts';
import type { Store } from './store.ts';
import { type SealedChange, storeOver } from './store-over.ts';

const byBytes = (a: string, b: string): number => Buffer.compare(Buffer.from(a), Buffer.from(b));

/** A store that is forgotten with the process: the same keyv, checksums and journal over a plain Map. */
export const memoryStore = (map: Map<string, string> = new Map(), readOnly = false): Store => {
  const writeAll = async (changes: readonly SealedChange[]): Promise<void> => {
    for (const { key, text } of changes) {
      if (text === undefined) map.delete(key);
      else map.set(key, text);
    }
  };
  async function* scan(prefix: string): AsyncGenerator<[string, string]> {
    for (const key of [...map.keys()].filter((each) => each.startsWith(prefix)).sort(byBytes)) {
      const text = map.get(key);
      if (text !== undefined) yield [key, text];
    }
  }
  return storeOver({ shown: 'memory', readOnly }, { adapter: map, writeAll, scan, close: async () => {} });
};

/** A keeper for tests, the bench and a trial chat: everything works, nothing is kept. */
export const memoryKeeper = (options: { readonly maxOpen?: number } = {}): Keeper =>
  openKeeper(memoryStore(), options);
