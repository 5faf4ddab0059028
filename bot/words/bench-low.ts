import { inStockG } from '../../core/bench/draw.ts';
import type { Bench } from '../../core/bench/state.ts';
import { plain } from './numbers.ts';
import { shortName } from './warnings.ts';

export interface Low {
  readonly ingredient: string;
  readonly gramsLeft: number;
  readonly belowG: number;
}

/** Ingredients below the group's mark, the emptiest first. What is past its date does not count. */
export const lowIn = (bench: Bench, today: string): readonly Low[] => {
  if (bench.low.size === 0) return [];
  const left = inStockG(bench, today);
  return [...bench.low]
    .map(([ingredient, belowG]) => ({ ingredient, gramsLeft: left.get(ingredient) ?? 0, belowG }))
    .filter(({ gramsLeft, belowG }) => gramsLeft < belowG)
    .sort(
      (a, b) => a.gramsLeft / a.belowG - b.gramsLeft / b.belowG || (a.ingredient < b.ingredient ? -1 : 1),
    );
};

export const lowText = ({ ingredient, gramsLeft, belowG }: Low): string =>
  `${shortName(ingredient)}: ${plain(gramsLeft, 1)} g left (mark ${plain(belowG, 1)} g)`;

/** "Running low: beeswax …", for the ingredients that were just drawn from. */
export const lowAfter = (bench: Bench, today: string, touched: readonly string[]): readonly string[] => {
  const low = lowIn(bench, today).filter(({ ingredient }) => touched.includes(ingredient));
  return low.length === 0 ? [] : [`Running low: ${low.map(lowText).join('; ')}.`];
};
