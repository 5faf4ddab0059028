import { maxIdLength } from '../../core/book.ts';
import { StoreTrouble } from './trouble.ts';

// Any name at all must be safe inside a key: "a/e/1" may not reach the entries of "a". Plain names stay readable,
// everything else is written in base64url of its UTF-16 units, behind a mark that plain names cannot begin with.
const plain = /^[A-Za-z0-9._-]+$/;

const encoded = (group: string): string =>
  plain.test(group) ? group : `~${Buffer.from(group, 'utf16le').toString('base64url')}`;

const decoded = (name: string): string =>
  name.startsWith('~') ? Buffer.from(name.slice(1), 'base64url').toString('utf16le') : name;

/** The group that a key belongs to: the other way round of `keysOf`. Undefined for a key of another shape. */
export const groupOfKey = (key: string): string | undefined => {
  const [, name] = /^[gmwx]\/([^/]+)(?:\/|$)/.exec(key) ?? [];
  return name === undefined ? undefined : decoded(name);
};

const seqDigits = 12;
const pageDigits = 6;

/** Further small keys a group may have, each kind in a row of its own, so that one scan finds every group that has it. */
export const indexKinds = {
  /** What the daily reminders need to know of a group without opening its book. */
  waiting: 'w',
  /** Groups that asked for everything to be forgotten, and when. */
  forgetting: 'x',
  /** Words too long for the ids of buttons; see bot/discord/long-ids.ts. */
  'long-ids': 'l',
  /** That the group was welcomed. */
  welcomed: 'h',
} as const;
export type IndexKind = keyof typeof indexKinds;

/** All keys of one kind begin with this: `store.scan(indexPrefix('waiting'))`. */
export const indexPrefix = (kind: IndexKind): string => `${indexKinds[kind]}/`;

/** Marks of changes too long for one write; see journal-long.ts. */
export const markPrefix = 'm/';

export interface GroupKeys {
  /** Everything in the group's book begins with this. */
  readonly book: string;
  readonly snapshot: string;
  readonly mark: string;
  /** All entries begin with this. */
  readonly entries: string;
  entry(seq: number): string;
  /** All pages of snapshots begin with this. */
  readonly pages: string;
  /** A page of the snapshot; two snapshots may be there at a time. */
  page(slot: string, number: number): string;
  index(kind: IndexKind): string;
}

/**
 * Where one group's book lies in the store. Group ids come from outside: different ids never share a key. Throws
 * StoreTrouble `bad-group` when the id is empty or longer than 200 characters.
 */
export const keysOf = (group: string): GroupKeys => {
  if (group.length === 0 || group.length > maxIdLength) {
    throw new StoreTrouble(
      'bad-group',
      `A group's name has 1 to ${maxIdLength} characters, not ${group.length}.`,
    );
  }
  const name = encoded(group);
  const base = `g/${name}`;
  return {
    book: `${base}/`,
    snapshot: `${base}/s`,
    mark: `${markPrefix}${name}`,
    entries: `${base}/e/`,
    entry: (seq) => `${base}/e/${String(seq).padStart(seqDigits, '0')}`,
    pages: `${base}/s/`,
    page: (slot, number) => `${base}/s/${slot}/${String(number).padStart(pageDigits, '0')}`,
    index: (kind) => `${indexPrefix(kind)}${name}`,
  };
};
