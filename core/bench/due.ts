import { defined } from '../defined.ts';
import { daysBetween, earlierDay, laterDay, plusDays } from './days.ts';
import { countIn, type Days, daysIn, type Groups } from './lookup.ts';
import { type DueDays, type DueKind, dueDays, standing } from './lookups.ts';
import { type Bench, type DueAnswer, tinsLeft } from './state.ts';

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

/** Off the list: closed for good, or put off until a later day. */
const isAnswered = (answer: DueAnswer | undefined, on: string): boolean =>
  answer !== undefined && (answer.answer === 'done' || (answer.until ?? '') > on);

/** The lot or batch with a key as something due, asked on a day; undefined without a date or with nothing left. */
export const dueOf = (bench: Bench, kind: DueKind, key: string, on: string): Due | undefined => {
  const lot = kind === 'lot' ? bench.lots.get(key) : undefined;
  const batch = kind === 'batch' ? bench.batches.get(key) : undefined;
  const { bestBefore } = lot ?? batch ?? {};
  const left = lot ? lot.leftG : batch ? tinsLeft(batch) : 0;
  if (bestBefore === undefined || left <= 0) return undefined;
  const item = `${kind}:${key}`;
  const answer = standing(bench.answers.get(item), bestBefore);
  const about = { item, bestBefore, left, daysLeft: daysBetween(on, bestBefore), ...defined({ answer }) };
  if (lot) return { kind: 'lot', lot: lot.lot, what: lot.ingredient, ...about };
  return batch && { kind: 'batch', lot: batch.lot, what: batch.name, container: batch.container, ...about };
};

const bothKinds: readonly DueKind[] = ['batch', 'lot'];

/** Keys of a stretch of days, soonest first; on the same day batches before lots, each by their keys. */
function* keysIn(
  due: DueDays,
  part: 'open' | 'done',
  kinds: readonly DueKind[],
  stretch: Days,
): Generator<readonly [DueKind, string]> {
  const days = new Set(kinds.flatMap((kind) => daysIn(due[kind][part], stretch)));
  for (const day of [...days].sort())
    for (const kind of kinds)
      for (const key of [...(due[kind][part].get(day) ?? [])].sort()) yield [kind, key];
}

/**
 * Lots with something left and batches with containers left whose best-before date falls on or before `until`, soonest
 * first. What was answered as done or put off to a later day is left out.
 */
export const dueBy = (bench: Bench, on: string, until: string): readonly Due[] => {
  const due: Due[] = [];
  for (const [kind, key] of keysIn(dueDays.of(bench), 'open', bothKinds, { until })) {
    const each = dueOf(bench, kind, key, on);
    if (each && !isAnswered(each.answer, on)) due.push(each);
  }
  return due;
};

/** How many batches have something left: each of them has a date. */
export const batchesWithTins = (bench: Bench): number => {
  const { open, done } = dueDays.of(bench).batch;
  return countIn(open, {}) + countIn(done, {});
};

export interface DueAsked {
  /** The day of the question. */
  readonly on: string;
  /** Days asked about; without `from` it reaches back as far as there is anything. */
  readonly from?: string | undefined;
  readonly until: string;
  /** Lots or batches alone. */
  readonly kind?: DueKind | undefined;
  /** Only these ingredients of lots, or names of batches. */
  readonly fits?: ((what: string) => boolean) | undefined;
  /** Most that are told; the others are counted. */
  readonly most: number;
}

export interface DueFound {
  /** The soonest, at most as many as were asked for. What was put off is among them, what is done is not. */
  readonly due: readonly Due[];
  /** How many there are in all. */
  readonly count: number;
  /** Out of date, and before the days asked about. */
  readonly older: number;
  /** In the days asked about, and answered as done. */
  readonly done: number;
}

const whatIs = ({ lots, batches }: Bench, kind: DueKind, key: string): string | undefined =>
  kind === 'lot' ? lots.get(key)?.ingredient : batches.get(key)?.name;

const fitsKey = (bench: Bench, { fits }: DueAsked, kind: DueKind, key: string): boolean =>
  fits === undefined || fits(whatIs(bench, kind, key) ?? '');

/** How many things of a stretch fit. */
const counted = (bench: Bench, groups: Groups, kind: DueKind, stretch: Days, asked: DueAsked): number => {
  if (!asked.fits) return countIn(groups, stretch);
  let count = 0;
  for (const day of daysIn(groups, stretch))
    for (const key of groups.get(day) ?? []) if (fitsKey(bench, asked, kind, key)) count += 1;
  return count;
};

/**
 * What is due in a stretch of days. Costs by what is told and by the days of the calendar that have something; with
 * `fits` by what is in those days.
 */
export const dueIn = (bench: Bench, asked: DueAsked): DueFound => {
  const { on, from, until, most } = asked;
  const kinds = asked.kind ? [asked.kind] : bothKinds;
  const days = dueDays.of(bench);
  const due: Due[] = [];
  for (const [kind, key] of keysIn(days, 'open', kinds, { from, until })) {
    if (due.length >= most) break;
    const each = fitsKey(bench, asked, kind, key) ? dueOf(bench, kind, key, on) : undefined;
    if (each) due.push(each);
  }
  const count = (part: 'open' | 'done', stretch: Days): number =>
    kinds.reduce((all, kind) => all + counted(bench, days[kind][part], kind, stretch, asked), 0);
  return {
    due,
    count: count('open', { from, until }),
    older: from === undefined ? 0 : count('open', { until: plusDays(earlierDay(from, on), -1) }),
    done: count('done', { from, until }),
  };
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
