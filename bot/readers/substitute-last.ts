import type { Reading } from '../reading.ts';
import type { Wish } from './scale-wish.ts';

/** The last request to change or replace something, if that is what the member asked last. */
export const lastChange = (reading: Reading): Wish | undefined =>
  reading.last?.topic === 'substitute' ? reading.last.request : undefined;

export interface Swap {
  readonly from: string;
  readonly to: string;
}

export const swapIn = (wish: Wish | undefined): Swap | undefined => {
  const { from, to } = wish ?? {};
  return typeof from === 'string' && typeof to === 'string' ? { from, to } : undefined;
};

export const earlierIn = (wish: Wish | undefined): readonly Swap[] =>
  Array.isArray(wish?.earlier) ? (wish.earlier as readonly Swap[]) : [];
