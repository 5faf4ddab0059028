import { defined } from '../defined.ts';
import { lotKey } from './codes.ts';
import { daysBetween, laterDay, plusDays } from './days.ts';
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
  /** What a batch is in: tin, jar. */
  readonly container?: string;
  /** What was answered about it, when it is listed all the same. */
  readonly answer?: DueAnswer;
}

/** Answers count as long as the date they were given for stands. Used up is told by what is left, not by the answer. */
const standing = (answer: DueAnswer | undefined, bestBefore: string): DueAnswer | undefined =>
  answer === undefined || (answer.bestBefore ?? bestBefore) !== bestBefore || answer.answer === 'used-up'
    ? undefined
    : answer;

/** Off the list: closed for good, or put off until a later day. */
const isAnswered = (answer: DueAnswer | undefined, on: string): boolean =>
  answer !== undefined && (answer.answer === 'done' || (answer.until ?? '') > on);

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
  // Many things share a date, and calendar arithmetic is the dearest part of a long list.
  const away = new Map<string, number>();
  const daysLeft = (bestBefore: string): number => {
    const days = away.get(bestBefore) ?? daysBetween(on, bestBefore);
    away.set(bestBefore, days);
    return days;
  };
  const add = (each: Pick<Due, 'kind' | 'lot' | 'what' | 'bestBefore' | 'left' | 'container'>): void => {
    const item = `${each.kind}:${lotKey(each.lot)}`;
    const answer = standing(bench.answers.get(item), each.bestBefore);
    if (!options.all && isAnswered(answer, on)) return;
    due.push({ ...each, item, daysLeft: daysLeft(each.bestBefore), ...defined({ answer }) });
  };
  for (const { lot, ingredient, bestBefore, leftG } of bench.lots.values())
    if (leftG > 0 && bestBefore !== undefined && bestBefore <= until)
      add({ kind: 'lot', lot, what: ingredient, bestBefore, left: leftG });
  for (const batch of bench.batches.values()) {
    const { lot, name, bestBefore, container } = batch;
    const left = bestBefore <= until ? tinsLeft(batch) : 0;
    if (left > 0) add({ kind: 'batch', lot, what: name, bestBefore, left, container });
  }
  return due.sort((a, b) =>
    a.bestBefore === b.bestBefore ? (a.item < b.item ? -1 : 1) : a.bestBefore < b.bestBefore ? -1 : 1,
  );
};

/**
 * The day from which one lot or batch is due: `lead` days before its date, or the day it was put off to when that is
 * later. Undefined for what has no date, nothing left, or was answered as done.
 */
const dueDayOf = (
  { answers }: Bench,
  item: string,
  bestBefore: string | undefined,
  left: number,
  lead: number,
): string | undefined => {
  if (bestBefore === undefined || left <= 0) return undefined;
  const answer = standing(answers.get(item), bestBefore);
  if (answer?.answer === 'done') return undefined;
  const first = plusDays(bestBefore, -lead);
  return laterDay(answer?.until ?? first, first);
};

/** The day from which a lot or batch, found by its key, is due; see `firstDueDay`. */
export const dueDayByKey = (bench: Bench, key: string, lead: number): string | undefined => {
  const lot = bench.lots.get(key);
  if (lot) return dueDayOf(bench, `lot:${key}`, lot.bestBefore, lot.leftG, lead);
  const batch = bench.batches.get(key);
  return batch && dueDayOf(bench, `batch:${key}`, batch.bestBefore, tinsLeft(batch), lead);
};

/** The first day on which anything is due, told `lead` days ahead; undefined when nothing ever is. Looks at everything. */
export const firstDueDay = (bench: Bench, lead: number): string | undefined => {
  let first: string | undefined;
  let limit: string | undefined;
  const look = (key: string, bestBefore: string | undefined): void => {
    // Nothing is due before its date less the lead, so most need no more than this comparison.
    if (bestBefore === undefined || (limit !== undefined && bestBefore >= limit)) return;
    const day = dueDayByKey(bench, key, lead);
    if (day === undefined || (first !== undefined && day >= first)) return;
    first = day;
    limit = plusDays(day, lead);
  };
  for (const [key, lot] of bench.lots) look(key, lot.bestBefore);
  for (const [key, batch] of bench.batches) look(key, batch.bestBefore);
  return first;
};
