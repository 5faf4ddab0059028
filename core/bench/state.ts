import { Map as Immutable } from 'immutable';
import type { PouredLine } from './batch-events.ts';
import type { DateLimit, Draw } from './event-fields.ts';
import type { BenchEventOf } from './events.ts';

/** A lot on the shelf as it stands now. Dates are ISO days. */
export interface Lot {
  readonly lot: string;
  readonly ingredient: string;
  /** Herbs steeped in it, for an oil infused in the house. */
  readonly herbs?: readonly string[] | undefined;
  /** All that was ever bought or made of it. */
  readonly gotG: number;
  readonly leftG: number;
  readonly on: string;
  readonly bestBefore?: string | undefined;
  readonly supplier?: string | undefined;
  readonly price?: { readonly amount: string; readonly currency: string } | undefined;
  readonly opened?: string | undefined;
  /** Lots it was made from, for an oil infused in the house. */
  readonly draws?: readonly Draw[] | undefined;
  readonly because?: DateLimit | undefined;
  readonly by?: string | undefined;
  readonly notes: readonly string[];
}

export type Gone = Omit<BenchEventOf<'tins-gone'>, 'kind' | 'lot'>;
export type Back = Omit<BenchEventOf<'tins-back'>, 'kind' | 'lot'>;
export type Note = Omit<BenchEventOf<'batch-noted'>, 'kind' | 'lot'>;
export type Look = Omit<BenchEventOf<'batch-looked'>, 'kind' | 'lot'>;

/** A poured batch as it stands now. */
export interface Batch extends Omit<BenchEventOf<'batch-poured'>, 'kind' | 'note' | 'pictures' | 'lines'> {
  readonly lines: readonly PouredLine[];
  readonly notes: readonly Note[];
  readonly gone: readonly Gone[];
  readonly back: readonly Back[];
  readonly looks: readonly Look[];
  /** Corrections so far, with their reasons. */
  readonly corrected: readonly string[];
  /** Number of the last event about it: an edit that started from an older one is told so. */
  readonly seq: number;
}

export interface Reaction extends Omit<BenchEventOf<'reaction-noted'>, 'kind'> {
  readonly followed: readonly Omit<BenchEventOf<'reaction-followed'>, 'kind' | 'id' | 'contact'>[];
  readonly closed: boolean;
}

export interface Reminder extends Omit<BenchEventOf<'reminder-set'>, 'kind'> {
  /** A daily message that was begun, at an ISO instant, and is not yet known to be sent. */
  readonly begun?: { readonly day: string; readonly nonce: string; readonly at: string };
  /** The local day on which the message could not be sent. */
  readonly failedDay?: string;
  /** The owner was told that the channel cannot be written to. */
  readonly toldOwner?: boolean;
}

/** The last daily message: its local day and what it told. It outlives a reminder that is stopped and set again. */
export interface Told {
  readonly day: string;
  readonly items: readonly string[];
}

/** An answer to something due: put off until a day, or closed for good; void once the date is another one. */
export interface DueAnswer {
  readonly answer: 'done' | 'used-up' | 'again';
  readonly until?: string;
  readonly bestBefore?: string;
}

/**
 * Everything a group records at the bench. Maps are immutable and share what they have in common, so one more event costs
 * microseconds however many batches there are. Lots and batches are found by `lotKey` of their code and share one name
 * space; `made` counts the house's own codes ever given.
 */
export interface Bench {
  readonly lots: Immutable<string, Lot>;
  readonly batches: Immutable<string, Batch>;
  readonly reactions: Immutable<string, Reaction>;
  readonly low: Immutable<string, number>;
  /** Answers by item: `lot:K12`, `batch:26KIVO`. */
  readonly answers: Immutable<string, DueAnswer>;
  readonly made: number;
  readonly reminder?: Reminder;
  /** The hour, zone and lead days of a reminder that was stopped, for when it is switched on again. */
  readonly stopped?: Pick<Reminder, 'hour' | 'minute' | 'zone' | 'leadDays'>;
  readonly told?: Told;
}

export const emptyBench: Bench = {
  lots: Immutable(),
  batches: Immutable(),
  reactions: Immutable(),
  low: Immutable(),
  answers: Immutable(),
  made: 0,
};

const sumOf = (parts: readonly { readonly count: number }[]): number => {
  let sum = 0;
  for (const { count } of parts) sum += count;
  return sum;
};

/** Containers of a batch that are still in the house; the retention sample is not for giving out. */
export const tinsLeft = ({ count, gone, back }: Batch): number => count + sumOf(back) - sumOf(gone);

/** Containers outside the house: given or sold, less what came back. */
export const tinsOut = ({ gone, back }: Batch): number => {
  let out = 0;
  for (const { how, count } of gone) if (how === 'given' || how === 'sold') out += count;
  return out - sumOf(back);
};

export const isLotOut = ({ leftG }: Lot): boolean => leftG <= 0;
