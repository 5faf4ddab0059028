import type { BookState } from '../book.ts';
import { idsOf, partValue, putOf } from '../parts/changes.ts';
import type { PartName, PartPut } from '../parts/part.ts';
import { same } from '../same.ts';
import type { FileEntry } from './file.ts';

/** A file to be merged into a book that has something in it. */
export interface Merging {
  readonly now: BookState;
  readonly file: BookState;
  readonly entries: readonly FileEntry[];
  /** What stands on both sides and differs: keep the book's, or take the file's. */
  readonly conflicts: 'keep' | 'take';
}

/** Something that stands on both sides and differs. */
export interface Conflict {
  readonly part: PartName;
  readonly id: string;
}

/** What comes of merging one part. */
export interface PartMerge {
  readonly puts: readonly PartPut[];
  readonly added: readonly Conflict[];
  readonly conflicts: readonly Conflict[];
  readonly alike: number;
}

export const noMerge: PartMerge = { puts: [], added: [], conflicts: [], alike: 0 };

export const joinedMerge = (all: readonly PartMerge[]): PartMerge => ({
  puts: all.flatMap(({ puts }) => puts),
  added: all.flatMap(({ added }) => added),
  conflicts: all.flatMap(({ conflicts }) => conflicts),
  alike: all.reduce((sum, { alike }) => sum + alike, 0),
});

/** One thing of the file beside what the book has under the same id. */
export const mergedValue = (
  { now, conflicts }: Merging,
  part: PartName,
  id: string,
  value: unknown,
  isSame = same,
): PartMerge => {
  const ours = partValue(now, part, id);
  if (ours === undefined) return { ...noMerge, puts: [putOf(part, id, value)], added: [{ part, id }] };
  if (isSame(ours, value)) return { ...noMerge, alike: 1 };
  const puts = conflicts === 'take' ? [putOf(part, id, value)] : [];
  return { ...noMerge, puts, conflicts: [{ part, id }] };
};

/** A part whose things are found by an id that means the same in every book: an ingredient, a herb. */
export const mergedPart = (merging: Merging, part: PartName): PartMerge =>
  joinedMerge(
    idsOf(merging.file, part).map((id) => mergedValue(merging, part, id, partValue(merging.file, part, id))),
  );
