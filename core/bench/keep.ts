import { Map as Immutable } from 'immutable';
import { defined } from '../defined.ts';
import type { Bench } from './state.ts';

/** The bench as plain JSON, for a snapshot. */
export interface KeptBench {
  readonly lots: readonly unknown[];
  readonly batches: readonly unknown[];
  readonly reactions: readonly unknown[];
  readonly low: readonly unknown[];
  readonly answers: readonly unknown[];
  readonly made: number;
  readonly reminder?: unknown;
  readonly stopped?: unknown;
  readonly told?: unknown;
}

const parts = ['lots', 'batches', 'reactions', 'low', 'answers'] as const;

/** The bench as plain JSON: each map as a list of [key, value] pairs. */
export const keptBench = (bench: Bench): KeptBench => ({
  lots: [...bench.lots],
  batches: [...bench.batches],
  reactions: [...bench.reactions],
  low: [...bench.low],
  answers: [...bench.answers],
  made: bench.made,
  ...defined({ reminder: bench.reminder, stopped: bench.stopped, told: bench.told }),
});

const isPair = (value: unknown): value is [string, unknown] =>
  Array.isArray(value) && value.length === 2 && typeof value[0] === 'string';

/**
 * The bench again, or undefined when this is no bench. Values were checked event by event before they were written, and
 * snapshots carry a checksum, so only the shape is looked at.
 */
export const benchFromKept = (kept: unknown): Bench | undefined => {
  if (typeof kept !== 'object' || kept === null) return undefined;
  const { made, reminder, stopped, told, ...maps } = kept as Record<string, unknown>;
  const lists = parts.map((part) => maps[part]);
  const fits = lists.every((list) => Array.isArray(list) && list.every(isPair));
  if (!fits || typeof made !== 'number') return undefined;
  const [lots, batches, reactions, low, answers] = lists.map((list) => Immutable(list as [string, never][]));
  return {
    lots,
    batches,
    reactions,
    low,
    answers,
    made,
    ...defined({ reminder, stopped, told }),
  } as unknown as Bench;
};
