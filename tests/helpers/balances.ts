import { expect } from 'vitest';
import { lotKey } from '../../core/bench/codes.ts';
import { sumG } from '../../core/bench/exact.ts';
import type { Bench } from '../../core/bench/state.ts';

/** No batch without its draw-down: what was bought is what is left and what the batches drew, to the milligram. */
export const balances = (bench: Bench): void => {
  for (const lot of bench.lots.values()) {
    const drawn = [...bench.batches.values()].flatMap(({ lines }) => lines.flatMap(({ draws }) => draws));
    const ours = drawn.filter((draw) => lotKey(draw.lot) === lotKey(lot.lot)).map(({ grams }) => grams);
    expect(sumG([lot.leftG, ...ours])).toBe(lot.gotG);
  }
  for (const { lines } of bench.batches.values())
    for (const { grams, draws, shortG = 0 } of lines)
      expect(sumG([...draws.map((draw) => draw.grams), shortG])).toBe(grams);
};
