import { coinText } from '../../core/cost/money.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { CostWish } from '../topics/cost.ts';
import { type Costed, costLinesOf } from './cost-batch.ts';
import { amountText, figure } from './cost-money.ts';
import { missingText } from './cost-table.ts';
import { shortName } from './warnings.ts';

export interface SwapTold {
  readonly text: string;
  readonly figures: Answer['figures'];
}

const swapped = (lines: readonly RecipeLine[], from: string, to: string): readonly RecipeLine[] =>
  lines.map((line) => (line.ingredient === from ? { ...line, ingredient: to } : line));

/** What the batch costs with one ingredient bought instead of another; gram for gram, the rest as it was. */
export const swapEffect = (wish: CostWish, before: Costed, tools: Tools): SwapTold | Trouble | undefined => {
  const { swap } = wish;
  if (!swap) return undefined;
  const { from, to } = swap;
  if (!before.lines.some((line) => line.ingredient === from)) {
    return {
      code: 'not-found',
      text: `${shortName(from)} is not in this recipe, so nothing is saved by buying something else. Name a line of it.`,
    };
  }
  const after = costLinesOf(wish, swapped(before.lines, from, to), tools, before.name);
  if ('code' in after) return after;
  const { currency } = before;
  const missing = [...before.costs.missing, ...after.costs.missing];
  const names = `${shortName(to)} instead of ${shortName(from)}`;
  if (missing.length > 0) {
    const open = [...new Map(missing.map((each) => [each.thing, each])).values()];
    return {
      text: `What ${names} would change I cannot tell without ${missingText(open)}.`,
      figures: {
        swap: {
          from,
          to,
          total_cost: null,
          difference: null,
          missing_prices: open.map(({ thing }) => thing),
        },
      },
    };
  }
  const { digits } = after.costs;
  const difference = after.costs.total - before.costs.total;
  const size = difference < 0n ? -difference : difference;
  const change =
    difference === 0n ? 'no difference' : `${coinText(size, digits)} ${difference < 0n ? 'less' : 'more'}`;
  return {
    text: `With ${names}, gram for gram: ${amountText(after.costs.total, digits, currency)} in all, ${change}. The balm itself may change: ask "swap ${shortName(from)} for ${shortName(to)}".`,
    figures: {
      swap: {
        from,
        to,
        total_cost: figure(after.costs.total, digits),
        difference: figure(difference, digits),
      },
    },
  };
};
