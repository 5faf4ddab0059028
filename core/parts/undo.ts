import { lotKey } from '../bench/codes.ts';
import { minusG, plusG } from '../bench/exact.ts';
import { type Batch, tinsLeft, tinsOut } from '../bench/state.ts';
import type { BookEntry, BookState, SavedRecipe } from '../book.ts';
import { nameKey } from '../name-key.ts';
import { fail, ok, type Result } from '../result.ts';
import { same } from '../same.ts';
import { changesBetween, type PartChange, partValue, putOf } from './changes.ts';
import type { PartName, PartPut } from './part.ts';

/** What is undone, and what has happened since. */
export interface ToUndo {
  readonly before: BookState;
  readonly after: BookState;
  readonly now: BookState;
  /** Every entry after the undone ones, in order. */
  readonly later: readonly BookEntry[];
}

export interface Undone {
  readonly puts: readonly PartPut[];
  readonly changes: readonly PartChange[];
  /** Lots that were weighed since: what the scale said stands. */
  readonly weighedSince: readonly string[];
}

export type UndoProblem =
  | { readonly code: 'nothing-left' }
  /** The thing is no longer as the undone change left it. */
  | { readonly code: 'changed-since'; readonly part: PartName; readonly id: string }
  /** A batch was poured from the recipe since. */
  | { readonly code: 'poured-since'; readonly id: string; readonly lot: string }
  /** Another recipe has taken the name. */
  | { readonly code: 'name-taken'; readonly name: string };

type Fields = Readonly<Record<string, unknown>>;

/** Fields that the book itself keeps count with, and that say nothing a member decided. */
const ownFields: Partial<Record<PartName, readonly string[]>> = {
  batch: ['seq'],
  reminder: ['begun', 'failedDay', 'toldOwner'],
};

const grams = new Set(['gotG', 'leftG']);

const without = (value: unknown, names: readonly string[]): unknown =>
  typeof value !== 'object' || value === null || Array.isArray(value)
    ? value
    : Object.fromEntries(Object.entries(value).filter(([name]) => !names.includes(name)));

/** What was added to the list is taken out again, whatever others added meanwhile; undefined where it is not there. */
const listWithout = (before: unknown, after: unknown, now: unknown): unknown => {
  if (!Array.isArray(before) || !Array.isArray(after) || !Array.isArray(now)) return undefined;
  if (!same(after.slice(0, before.length), before)) return undefined;
  const left = [...now];
  for (const added of after.slice(before.length)) {
    const at = left.findLastIndex((each) => same(each, added));
    if (at < 0) return undefined;
    left.splice(at, 1);
  }
  return left;
};

/** One field put back; undefined where it cannot be. Grams are taken back by as much as they changed. */
const fieldBack = (name: string, change: PartChange, now: unknown): { value: unknown } | undefined => {
  const [before, after] = [(change.before as Fields)[name], (change.after as Fields)[name]];
  if (same(now, after)) return { value: before };
  if (change.part === 'lot' && grams.has(name)) {
    const value = plusG(Number(now), minusG(Number(before), Number(after)));
    return value >= 0 ? { value } : undefined;
  }
  const list = listWithout(before, after, now);
  return list === undefined ? undefined : { value: list };
};

/** The fields that the undone change touched as they were before; all others as they are now. */
const merged = (change: PartChange, now: Fields, keep: ReadonlySet<string>): Fields | undefined => {
  const own = ownFields[change.part] ?? [];
  const [before, after] = [change.before as Fields, change.after as Fields];
  const result: Record<string, unknown> = { ...now };
  for (const name of new Set([...Object.keys(before), ...Object.keys(after)])) {
    if (own.includes(name) || keep.has(name) || same(before[name], after[name])) continue;
    const back = fieldBack(name, change, now[name]);
    if (!back) return undefined;
    if (back.value === undefined) delete result[name];
    else result[name] = back.value;
  }
  return result;
};

const isPlain = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const mergedParts: ReadonlySet<PartName> = new Set(['lot', 'batch', 'reaction', 'settings', 'reminder']);

/** One thing as it has to stand; undefined where something later is in the way. */
const valueBack = (
  change: PartChange,
  now: unknown,
  keep: ReadonlySet<string>,
): { value: unknown } | undefined => {
  const { part, before, after } = change;
  const own = ownFields[part] ?? [];
  if (mergedParts.has(part) && isPlain(before) && isPlain(after) && isPlain(now)) {
    const value = merged(change, now, keep);
    return value && { value };
  }
  // What the book had begun by itself back then is long over.
  const value = part === 'reminder' ? without(before, own) : before;
  return same(without(now, own), without(after, own)) ? { value } : undefined;
};

const tinsAddUp = (part: PartName, value: unknown): boolean => {
  if (part !== 'batch' || value === undefined) return true;
  return tinsLeft(value as Batch) >= 0 && tinsOut(value as Batch) >= 0;
};

const pouredFrom = (recipe: string, later: readonly BookEntry[]): string | undefined => {
  for (const { event } of later)
    if (event.kind === 'batch-poured' && event.recipe?.id === recipe) return event.lot;
  return undefined;
};

/** Why a recipe cannot be as it was: a batch was poured from it, or its name went to another. */
const recipeInTheWay = (change: PartChange, { now, later }: ToUndo): UndoProblem | undefined => {
  if (change.part !== 'recipe') return undefined;
  const [before, after] = [change.before as SavedRecipe | undefined, change.after as SavedRecipe | undefined];
  const lot = after && !same(before?.lines, after.lines) ? pouredFrom(change.id, later) : undefined;
  if (lot !== undefined) return { code: 'poured-since', id: change.id, lot };
  const taken =
    before !== undefined &&
    Object.values(now.recipes).some(
      ({ id, name }) => id !== change.id && nameKey(name) === nameKey(before.name),
    );
  return taken ? { code: 'name-taken', name: before.name } : undefined;
};

const weighedIn = (later: readonly BookEntry[]): ReadonlySet<string> =>
  new Set(later.flatMap(({ event }) => (event.kind === 'lot-counted' ? [lotKey(event.lot)] : [])));

const noFields: ReadonlySet<string> = new Set();
const leftOnly: ReadonlySet<string> = new Set(['leftG']);

/** One change as it has to be put back; undefined where it stands so already. */
const putBack = (
  change: PartChange,
  asked: ToUndo,
  weighed: ReadonlySet<string>,
): Result<PartPut | undefined, UndoProblem> => {
  const { part, id } = change;
  const blocked = recipeInTheWay(change, asked);
  if (blocked) return fail(blocked);
  const now = partValue(asked.now, part, id);
  const back = valueBack(change, now, part === 'lot' && weighed.has(id) ? leftOnly : noFields);
  if (!back || !tinsAddUp(part, back.value)) return fail({ code: 'changed-since', part, id });
  return ok(same(back.value, now) ? undefined : putOf(part, id, back.value));
};

/**
 * What has to stand so that some entries count no more, and everything written since still does. Grams are taken back by
 * as much as they changed and additions to a list one by one, so that a later pour from the same lot is no hindrance;
 * what was set anew since is.
 */
export const undoOf = (asked: ToUndo): Result<Undone, UndoProblem> => {
  const changes = changesBetween(asked.before, asked.after);
  const weighed = weighedIn(asked.later);
  const puts: PartPut[] = [];
  for (const change of changes) {
    const put = putBack(change, asked, weighed);
    if (!put.ok) return put;
    if (put.value) puts.push(put.value);
  }
  if (puts.length === 0) return fail({ code: 'nothing-left' });
  const weighedSince = changes
    .filter(({ part, id }) => part === 'lot' && weighed.has(id))
    .map(({ id }) => id);
  return ok({ puts, changes, weighedSince });
};
