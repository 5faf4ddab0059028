import { createHash, type Hash } from 'node:crypto';
import { groupOfKey } from './names.ts';
import type { Change, Store } from './store.ts';
import { maxChanges } from './store-over.ts';
import { StoreTrouble } from './trouble.ts';

// While this key is there, a copy into the store was begun and not finished.
const copying = 'c/copying';
const maxBytes = 1024 * 1024;

export interface Copied {
  readonly groups: number;
  readonly keys: number;
  /** SHA-256 in hexadecimal over all groups' digests: the same for stores that hold the same. */
  readonly digest: string;
}

/** What has been copied so far, now and then. */
export type Progress = (keys: number) => void;

/** Refuses a store that a copy was begun into and not finished: it may lack any book. Throws `unfinished`. */
export const checkWhole = async (store: Store): Promise<void> => {
  if (!(await store.keyv.has(copying))) return;
  throw new StoreTrouble(
    'unfinished',
    `The store "${store.shown}" is an unfinished copy. Copy the books into it once more with: npm run store:copy`,
  );
};

const write = async (store: Store, batch: Change[]): Promise<void> => store.writeAll(batch.splice(0));

/** Deletes whatever an earlier, unfinished copy has left, or refuses a store that holds anything else. */
const makeEmpty = async (store: Store): Promise<void> => {
  const unfinished = await store.keyv.has(copying);
  const batch: Change[] = [];
  for await (const [key] of store.scan('')) {
    if (!unfinished) {
      throw new StoreTrouble(
        'not-a-store',
        `The store "${store.shown}" already holds something. Nothing in it was changed: copy into a new one.`,
      );
    }
    if (key !== copying) batch.push({ key, value: undefined });
    if (batch.length === maxChanges) await write(store, batch);
  }
  await write(store, batch);
};

/** SHA-256 of every group's keys and values; what is of no group goes by the name of ''. */
const digests = async (store: Store): Promise<{ groups: Map<string, string>; keys: number }> => {
  const hashes = new Map<string, Hash>();
  let keys = 0;
  for await (const [key, value] of store.scan('')) {
    if (key === copying) continue;
    const group = groupOfKey(key) ?? '';
    const hash = hashes.get(group) ?? createHash('sha256');
    hashes.set(group, hash.update(JSON.stringify([key, value])));
    keys += 1;
  }
  return { groups: new Map([...hashes].map(([group, hash]) => [group, hash.digest('hex')])), keys };
};

const copyKeys = async (from: Store, to: Store, progress: Progress): Promise<void> => {
  const batch: Change[] = [];
  let bytes = 0;
  let keys = 0;
  for await (const [key, value] of from.scan('')) {
    batch.push({ key, value });
    bytes += JSON.stringify(value).length;
    keys += 1;
    if (batch.length < maxChanges && bytes < maxBytes) continue;
    await write(to, batch);
    bytes = 0;
    progress(keys);
  }
  await write(to, batch);
};

const compare = (from: ReadonlyMap<string, string>, to: ReadonlyMap<string, string>, shown: string): void => {
  const differs = [...from].filter(([group, digest]) => to.get(group) !== digest).length;
  const extra = [...to.keys()].filter((group) => !from.has(group)).length;
  if (differs + extra === 0) return;
  throw new StoreTrouble(
    'unfinished',
    `The copy in "${shown}" is not the same as what was copied (${differs + extra} books differ), so it is not used. Run the command once more.`,
  );
};

/**
 * Copies every book from one store into an empty one, then reads both and compares a digest of every group. All or
 * nothing: until both agree, the copy is marked as unfinished and nobody opens it; the same command starts it anew.
 * `from` stays as it is. Throws StoreTrouble or NotRecorded.
 */
export const copyStore = async (from: Store, to: Store, progress: Progress = () => {}): Promise<Copied> => {
  await checkWhole(from);
  await makeEmpty(to);
  await to.writeAll([{ key: copying, value: { v: 1 } }]);
  await copyKeys(from, to, progress);
  const [source, target] = [await digests(from), await digests(to)];
  compare(source.groups, target.groups, to.shown);
  await to.writeAll([{ key: copying, value: undefined }]);
  const all = createHash('sha256').update(JSON.stringify([...source.groups].sort()));
  return { groups: source.groups.size, keys: source.keys, digest: all.digest('hex') };
};
