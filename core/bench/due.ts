import { lotKey } from './codes.ts';
import { daysBetween } from './days.ts';
import type { Bench, DueAnswer } from './state.ts';
import { tinsLeft } from './state.ts';

export interface Due {
  readonly kind: 'lot' | 'batch';
  /** `lot:K12`, `batch:26KIVO`: what an answer to it names. */
  readonly item: string;
  readonly lot: string;
  /** The ingredient's id for a lot, the recipe's name for a batch. */
  readonly what: string;
  readonly bestBefore: string;
  /** Days from the day asked about; negative once it is past. */
  readonly daysLeft: number;
  /** Grams of a lot or containers of a batch that are left. */
  readonly left: number;
}

/** Off the list: closed for good, or put off until a later day. */
const isAnswered = (answer: DueAnswer | undefined, on: string): boolean =>
  answer !== undefined && (answer.answer !== 'again' || (answer.until ?? '') > on);

/**
 * Lots with something left and batches with containers left whose best-before date falls on or before `until`, soonest
 * first. What was answered as done or put off to a later day is left out; `all` lists it too.
 */
export const dueBy = (
  bench: Bench,
  on: string,
  until: string,
  options: { readonly all?: boolean } = {},
): readonly Due[] => {
  const due: Due[] = [];
  const add = (kind: Due['kind'], lot: string, what: string, bestBefore: string, left: number): void => {
    const item = `${kind}:${lotKey(lot)}`;
    if (!options.all && isAnswered(bench.answers.get(item), on)) return;
    due.push({ kind, item, lot, what, bestBefore, daysLeft: daysBetween(on, bestBefore), left });
  };
  for (const { lot, ingredient, bestBefore, leftG } of bench.lots.values())
    if (leftG > 0 && bestBefore !== undefined && bestBefore <= until)
      add('lot', lot, ingredient, bestBefore, leftG);
  for (const batch of bench.batches.values()) {
    const left = batch.bestBefore <= until ? tinsLeft(batch) : 0;
    if (left > 0) add('batch', batch.lot, batch.name, batch.bestBefore, left);
  }
  return due.sort((a, b) =>
    a.bestBefore === b.bestBefore ? (a.item < b.item ? -1 : 1) : a.bestBefore < b.bestBefore ? -1 : 1,
  );
};
