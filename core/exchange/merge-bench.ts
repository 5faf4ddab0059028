import type { Batch, Reaction } from '../bench/state.ts';
import { type BookState, benchOf } from '../book.ts';
import { defined } from '../defined.ts';
import { putOf } from '../parts/changes.ts';
import { same } from '../same.ts';
import { joinedMerge, type Merging, mergedValue, noMerge, type PartMerge } from './merge-parts.ts';
import type { MergedRecipes } from './merge-recipes.ts';

/** The batch as it belongs to the book's own recipes; without a recipe where that version is not in the book. */
const rehomed = ({ recipe, ...batch }: Batch, { landed }: MergedRecipes): Batch => {
  const home = recipe && landed.get(recipe.id);
  const version = recipe && home?.versions.get(recipe.version);
  return { ...batch, ...defined({ recipe: home && version ? { id: home.id, version } : undefined }) };
};

const sameBatch = (a: unknown, b: unknown): boolean => {
  const plain = ({ seq: _seq, recipe: _recipe, ...rest }: Batch) => rest;
  return same(plain(a as Batch), plain(b as Batch));
};

/** Lots and batches share one name space: a code that is the other kind here cannot be taken over. */
const clashes = (now: BookState, part: 'lot' | 'batch', id: string): boolean =>
  (part === 'lot' ? benchOf(now).batches : benchOf(now).lots).has(id);

const blocked = (part: 'lot' | 'batch', id: string): PartMerge => ({
  ...noMerge,
  conflicts: [{ part, id }],
});

/** The same report told twice, however it was followed up since. */
const sameReport = (a: Reaction, b: Reaction): boolean =>
  a.lot === b.lot && a.on === b.on && a.signs === b.signs;

/** Two reports that carry one number are both kept: the file's gets the next that is free in both. */
const mergedReactions = (merging: Merging): PartMerge => {
  const ours = benchOf(merging.now).reactions;
  const theirs = benchOf(merging.file).reactions;
  const taken = new Set([...ours.keys(), ...theirs.keys()]);
  const freeNumber = (): string => {
    let count = 1;
    while (taken.has(`R${count}`)) count += 1;
    taken.add(`R${count}`);
    return `R${count}`;
  };
  const merged = (report: Reaction): PartMerge => {
    const { id } = report;
    const own = ours.get(id);
    if (!own || sameReport(own, report)) return mergedValue(merging, 'reaction', id, report);
    if (ours.some((each) => sameReport(each, report))) return { ...noMerge, alike: 1 };
    const next = freeNumber();
    const puts = [putOf('reaction', next, { ...report, id: next })];
    return { ...noMerge, puts, added: [{ part: 'reaction', id }] };
  };
  return joinedMerge([...theirs.values()].map(merged));
};

/** Lots, batches and reactions of the file beside the book's own. */
export const mergedBench = (merging: Merging, recipes: MergedRecipes): PartMerge => {
  const { now, file } = merging;
  const lots = [...benchOf(file).lots].map(([id, lot]) =>
    clashes(now, 'lot', id) ? blocked('lot', id) : mergedValue(merging, 'lot', id, lot),
  );
  const batches = [...benchOf(file).batches].map(([id, batch]) =>
    clashes(now, 'batch', id)
      ? blocked('batch', id)
      : mergedValue(merging, 'batch', id, rehomed(batch, recipes), sameBatch),
  );
  return joinedMerge([...lots, ...batches, mergedReactions(merging)]);
};
