import type { Part } from '../../core/substitute/replace.ts';
import type { Reading } from '../reading.ts';
import type { Wish } from './scale-wish.ts';

/** The last request to change or replace something, if that is what the member asked last. */
export const lastChange = (reading: Reading): Wish | undefined =>
  reading.last?.topic === 'substitute' ? reading.last.request : undefined;

export interface Swap {
  readonly from: string;
  readonly to: string;
  readonly part?: Part;
  readonly gramForGram?: true;
}

export const swapIn = (wish: Wish | undefined): Swap | undefined => {
  const { from, to, part, gramForGram } = wish ?? {};
  if (typeof from !== 'string' || typeof to !== 'string') return undefined;
  return { from, to, ...(part ? { part: part as Part } : {}), ...(gramForGram ? { gramForGram: true } : {}) };
};

export const earlierIn = (wish: Wish | undefined): readonly Swap[] =>
  Array.isArray(wish?.earlier) ? (wish.earlier as readonly Swap[]) : [];
