import { type IndexKind, keysOf } from './names.ts';
import type { Store } from './store.ts';

/** What a front-end keeps for a group beside its book. It is no record: it may be lost, and goes when the book is forgotten. */
export type NoteKind = Extract<IndexKind, 'long-ids' | 'welcomed'>;

export interface Notes {
  /** What was noted last, as it was; not trusted to be of any shape. Rejects when the store cannot be read. */
  read(group: string, kind: NoteKind): Promise<unknown>;
  /** Rejects when it could not be written. */
  write(group: string, kind: NoteKind, value: unknown): Promise<void>;
}

export const notesIn = (store: Store): Notes => ({
  read: (group, kind) => store.keyv.get<unknown>(keysOf(group).index(kind)),
  write: (group, kind, value) => store.writeAll([{ key: keysOf(group).index(kind), value }]),
});

/** Notes for as long as the process lives. */
export const memoryNotes = (): Notes => {
  const kept = new Map<string, string>();
  const keyOf = (group: string, kind: NoteKind): string => `${kind} ${group}`;
  return {
    read: async (group, kind) => {
      const text = kept.get(keyOf(group, kind));
      return text === undefined ? undefined : JSON.parse(text);
    },
    write: async (group, kind, value) => void kept.set(keyOf(group, kind), JSON.stringify(value)),
  };
};
