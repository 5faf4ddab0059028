/** Chance with a seed: the same seed gives the same throws. */
export interface Dice {
  /** A whole number from 0 to below `count`. */
  below(count: number): number;
  pick<T>(list: readonly T[]): T;
  /** True in `share` of the throws. */
  chance(share: number): boolean;
}

/** Small fast generator of 32 bits (Mulberry32, public domain; from memory). Good enough to choose what is asked next. */
export const dice = (seed: number): Dice => {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const below = (count: number): number => Math.floor(next() * count);
  return {
    below,
    pick: (list) => {
      if (list.length === 0) throw new Error('nothing to pick from');
      return list[below(list.length)] as (typeof list)[number];
    },
    chance: (share) => next() < share,
  };
};
