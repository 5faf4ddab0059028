import { maxIdLength } from '../../core/book.ts';
import { StoreTrouble } from './trouble.ts';

// Any name at all must be safe inside a key: "a/e/1" may not reach the entries of "a". Plain names stay readable,
// everything else is written in base64url of its UTF-16 units, behind a mark that plain names cannot begin with.
const plain = /^[A-Za-z0-9._-]+$/;

const encoded = (group: string): string =>
  plain.test(group) ? group : `~${Buffer.from(group, 'utf16le').toString('base64url')}`;

const seqDigits = 12;

export interface GroupKeys {
  readonly snapshot: string;
  entry(seq: number): string;
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
  const base = `g/${encoded(group)}`;
  return {
    snapshot: `${base}/s`,
    entry: (seq) => `${base}/e/${String(seq).padStart(seqDigits, '0')}`,
  };
};
