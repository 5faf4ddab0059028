import type { GivenFile } from './given.ts';

/** How long a file that came with one message waits to be confirmed in a later one, in milliseconds. */
const keepMs = 15 * 60 * 1000;
/** Bytes of all waiting files together; the oldest go first. */
const mostBytes = 64 * 1024 * 1024;

interface Kept {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly at: number;
}

/** Attached files between the look at them and the word to go on. In memory only. */
export interface HeldFiles {
  keep(group: string, member: string, file: Kept): void;
  find(group: string, member: string, at: number): Kept | undefined;
  drop(group: string, member: string): void;
}

const keyOf = (group: string, member: string): string => JSON.stringify([group, member]);

export const heldFiles = (): HeldFiles => {
  const files = new Map<string, Kept>();
  const total = (): number => [...files.values()].reduce((sum, { bytes }) => sum + bytes.byteLength, 0);
  return {
    keep: (group, member, file) => {
      files.delete(keyOf(group, member));
      files.set(keyOf(group, member), file);
      for (const [key, { at }] of files) if (file.at - at > keepMs || total() > mostBytes) files.delete(key);
    },
    find: (group, member, at) => {
      const file = files.get(keyOf(group, member));
      return file && Math.abs(at - file.at) <= keepMs ? file : undefined;
    },
    drop: (group, member) => void files.delete(keyOf(group, member)),
  };
};

/** The held file as one given again. */
export const asGiven = ({ name, bytes }: Kept): GivenFile => ({
  name,
  said: name,
  read: async () => ({ ok: true, value: bytes }),
});
