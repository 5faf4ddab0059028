import { followLookups } from '../bench/lookups.ts';
import type { Bench } from '../bench/state.ts';
import type { PartPut } from './part.ts';

type BenchPart = 'lot' | 'batch' | 'reaction' | 'low' | 'answer' | 'reminder';
export type BenchPut = Extract<PartPut, { readonly part: BenchPart }>;

export const benchMaps = {
  lot: 'lots',
  batch: 'batches',
  reaction: 'reactions',
  low: 'low',
  answer: 'answers',
} as const;

const withReminder = ({ reminder: _old, ...rest }: Bench, value: unknown): Bench =>
  value === null ? rest : { ...rest, reminder: value as NonNullable<Bench['reminder']> };

/** The bench with one thing as given, or without it. A batch takes the number of the entry that put it. */
export const afterBenchPut = (bench: Bench, { part, id, value }: BenchPut, seq: number): Bench => {
  if (part === 'reminder') return withReminder(bench, value);
  const name = benchMaps[part];
  const map = bench[name] as unknown as {
    set(id: string, value: unknown): unknown;
    delete(id: string): unknown;
  };
  const kept = part === 'batch' && value !== null ? { ...value, seq } : value;
  const after = { ...bench, [name]: kept === null ? map.delete(id) : map.set(id, kept) };
  // Lots and batches are known by their keys, answers by `lot:` or `batch:` and the key.
  followLookups(bench, after, () =>
    part === 'reaction' || part === 'low' ? [] : [id.slice(id.indexOf(':') + 1)],
  );
  return after;
};

/** The bench without what it knew of how to reach somebody who reacted. */
export const withoutContact = (bench: Bench, id: string): Bench => {
  const reaction = bench.reactions.get(id);
  if (!reaction) return bench;
  const { contact: _gone, ...rest } = reaction;
  return { ...bench, reactions: bench.reactions.set(id, rest) };
};
