import { type Margin, marginAt, priceForMargin } from '../../core/cost/margin.ts';
import { coins, coinsAtLeast, money, ofCoins } from '../../core/cost/money.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { CostWish } from '../topics/cost.ts';
import type { Costed } from './cost-batch.ts';
import { amountText, figure } from './cost-money.ts';
import { missingText } from './cost-table.ts';
import { plain } from './numbers.ts';

export interface MarginTold {
  readonly text: string;
  readonly figures: Answer['figures'];
}

const missing = (text: string): Trouble => ({ code: 'missing', text });
const badMargin: Trouble = {
  code: 'out-of-range',
  text: 'A margin is a share of the price, from 0 to under 100 %. Try "what price for a margin of 40 %".',
};

const lossText = (margin: Margin): string => (margin.profitAll < 0n ? ' That is a loss.' : '');

const told = (margin: Margin, digits: number, currency: string, count: number): MarginTold => ({
  text: `At ${amountText(margin.price, digits, currency)} each the margin is ${plain(margin.percent)} % of the price: ${amountText(margin.profit, digits, currency)} a piece, ${amountText(margin.profitAll, digits, currency)} for all ${count}.${lossText(margin)}`,
  figures: {
    price: figure(margin.price, digits),
    margin_percent: margin.percent,
    profit_per_container: figure(margin.profit, digits),
    profit_total: figure(margin.profitAll, digits),
  },
});

/** What a selling price leaves, or what price leaves the margin asked for; nothing when neither is asked. */
export const marginOf = (
  wish: CostWish,
  costed: Costed,
  currency: string,
): MarginTold | Trouble | undefined => {
  if (wish.sellAt === undefined && wish.marginPercent === undefined) return undefined;
  const { costs, scaled } = costed;
  if (costs.missing.length > 0) {
    return {
      text: `What a price leaves I cannot tell without ${missingText(costs.missing)}.`,
      figures: { margin_percent: null, profit_per_container: null, profit_total: null },
    };
  }
  const count = scaled.containers;
  if (count === undefined || count < 1) {
    return missing(
      'A margin on how many tins? For example "sell 24 tins of 15 ml of Fernlea hand balm at 6.50".',
    );
  }
  const { digits } = costs;
  const total = ofCoins(costs.total, digits);
  if (wish.sellAt !== undefined) {
    const margin = marginAt(money(wish.sellAt), total, count, digits);
    return margin.ok ? told(margin.value, digits, currency, count) : badMargin;
  }
  const price = priceForMargin(wish.marginPercent ?? 0, total, count);
  if (!price.ok) return badMargin;
  const asked = ofCoins(coinsAtLeast(price.value, digits), digits);
  const margin = marginAt(asked, total, count, digits);
  if (!margin.ok) return badMargin;
  const line = told(margin.value, digits, currency, count);
  return {
    text: `For a margin of ${plain(wish.marginPercent ?? 0)} % sell at ${amountText(coins(asked, digits), digits, currency)} or more. ${line.text}`,
    figures: line.figures,
  };
};
