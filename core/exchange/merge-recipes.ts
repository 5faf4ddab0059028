import type { BookEvent, SavedRecipe } from '../book.ts';
import { nameKey } from '../name-key.ts';
import type { RecipeLine } from '../recipe.ts';
import { same } from '../same.ts';
import type { FileEntry } from './file.ts';
import { type Conflict, type Merging, noMerge, type PartMerge } from './merge-parts.ts';

/** A recipe of the file in the book: its id there, and the number of the event that will have written each version. */
interface Landed {
  readonly id: string;
  readonly versions: ReadonlyMap<number, number>;
}

export interface MergedRecipes extends PartMerge {
  readonly events: readonly BookEvent[];
  /** By the recipe's id in the file. */
  readonly landed: ReadonlyMap<string, Landed>;
}

/** The file's id where it is free, else the same with a number behind it. */
const freeId = (id: string, taken: ReadonlySet<string>): string => {
  if (!taken.has(id)) return id;
  for (let count = 2; ; count += 1) {
    const next = `${id.slice(0, 70)}-${count}`;
    if (!taken.has(next)) return next;
  }
};

const linesOf = (entries: readonly FileEntry[], seq: number): readonly RecipeLine[] | undefined => {
  const event = entries[seq - 1]?.event;
  return event?.kind === 'recipe-saved' ? event.lines : undefined;
};

/** Recipes are matched by name. A new one comes with all its versions; one that differs becomes a further version. */
export const mergedRecipes = ({ now, file, entries, conflicts: mode }: Merging): MergedRecipes => {
  const ours = new Map(Object.values(now.recipes).map((recipe) => [nameKey(recipe.name), recipe]));
  const taken = new Set(Object.keys(now.recipes));
  const events: BookEvent[] = [];
  const landed = new Map<string, Landed>();
  const added: Conflict[] = [];
  const conflicts: Conflict[] = [];
  let alike = 0;
  const save = (recipe: string, name: string, lines: readonly RecipeLine[]): number => {
    events.push({ kind: 'recipe-saved', recipe, name, lines: [...lines] });
    return now.seq + events.length;
  };
  const add = (theirs: SavedRecipe): void => {
    const id = freeId(theirs.id, taken);
    taken.add(id);
    const versions = new Map<number, number>();
    for (const seq of theirs.versions.slice(0, -1)) {
      const lines = linesOf(entries, seq);
      if (lines) versions.set(seq, save(id, theirs.name, lines));
    }
    versions.set(theirs.versions.at(-1) ?? 0, save(id, theirs.name, theirs.lines));
    landed.set(theirs.id, { id, versions });
    added.push({ part: 'recipe', id: theirs.id });
  };
  const meet = (theirs: SavedRecipe, own: SavedRecipe): void => {
    const latest = theirs.versions.at(-1) ?? 0;
    const equal = same(own.lines, theirs.lines);
    if (equal) alike += 1;
    else conflicts.push({ part: 'recipe', id: theirs.id });
    const seq =
      !equal && mode === 'take'
        ? save(own.id, own.name, theirs.lines)
        : equal
          ? own.versions.at(-1)
          : undefined;
    landed.set(theirs.id, { id: own.id, versions: new Map(seq === undefined ? [] : [[latest, seq]]) });
  };
  for (const theirs of Object.values(file.recipes)) {
    const own = ours.get(nameKey(theirs.name));
    if (own) meet(theirs, own);
    else add(theirs);
  }
  return { ...noMerge, events, landed, added, conflicts, alike };
};
