import { type BookEvent, type BookState, benchOf } from '../book.ts';
import { putOf } from '../parts/changes.ts';
import { putEvents } from '../parts/put-events.ts';
import { same } from '../same.ts';
import { defaultSettings, type Settings } from '../settings.ts';
import { mergedBench } from './merge-bench.ts';
import { joinedMerge, type Merging, mergedPart, noMerge, type PartMerge } from './merge-parts.ts';
import { mergedRecipes } from './merge-recipes.ts';

export interface Merge extends Omit<PartMerge, 'puts'> {
  readonly events: readonly BookEvent[];
  /** Settings that differ, by name; where the file has the usual value, the book's own stays without a word. */
  readonly settings: readonly (keyof Settings)[];
  /** The file's daily reminder is never taken over: it names a channel of where it came from. */
  readonly reminderLeft: boolean;
}

const settingsThatDiffer = ({ now, file }: Merging): (keyof Settings)[] =>
  (Object.keys(file.settings) as (keyof Settings)[]).filter(
    (name) =>
      !same(now.settings[name], file.settings[name]) && !same(file.settings[name], defaultSettings[name]),
  );

const takenSettings = ({ now, file }: Merging, names: readonly (keyof Settings)[]): PartMerge => {
  const theirs = Object.fromEntries(names.map((name) => [name, file.settings[name]]));
  return { ...noMerge, puts: [putOf('settings', '', { ...now.settings, ...theirs })] };
};

/**
 * A file's record beside the book's own: what only the file has is added, what stands alike on both sides is left, and
 * what differs is a conflict, kept or taken as asked. Recipes are matched by name, lots and batches by code, prices and
 * the like by what they are for.
 */
export const mergeOf = (merging: Merging): Merge => {
  const recipes = mergedRecipes(merging);
  const settings = settingsThatDiffer(merging);
  const taken =
    merging.conflicts === 'take' && settings.length > 0 ? takenSettings(merging, settings) : noMerge;
  const parts = joinedMerge([
    ...(['price', 'labour', 'yield', 'low', 'answer'] as const).map((part) => mergedPart(merging, part)),
    mergedBench(merging, recipes),
    taken,
  ]);
  return {
    events: [...recipes.events, ...putEvents({ why: 'import' }, parts.puts)],
    added: [...recipes.added, ...parts.added],
    conflicts: [...recipes.conflicts, ...parts.conflicts],
    alike: recipes.alike + parts.alike,
    settings,
    reminderLeft: benchOf(merging.file).reminder !== undefined,
  };
};

/** True for a book that a whole history may go into as it stands. */
export const isEmptyBook = (now: BookState): boolean => now.seq === 0;
