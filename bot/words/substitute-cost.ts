import { type CostChange, costChange, type MixCost, mixCost } from '../../core/cost/mix-cost.ts';
import { coins, coinText, type Money, minorDigits } from '../../core/cost/money.ts';
import type { Mix } from '../../core/substitute/mix.ts';
import type { Answer } from '../answer.ts';
import type { Tools } from '../topic.ts';
import { amountText, figure } from './cost-money.ts';
import { shortName } from './warnings.ts';

/** What a change of lines does to the cost, at the prices noted; nothing in a book without prices. */
export interface CostTold {
  readonly lines: readonly string[];
  readonly figures: Answer['figures'];
}

const silent: CostTold = { lines: [], figures: {} };

export const hasPrices = ({ book }: Tools): boolean => Object.keys(book.state.prices ?? {}).length > 0;

/** "1.20 EUR less", "no difference". */
export const moneyMove = (perKg: Money, currency: string): string => {
  const digits = minorDigits(currency);
  const all = coins(perKg, digits);
  if (all === 0n) return 'no difference';
  return `${amountText(all < 0n ? -all : all, digits, currency)} ${all < 0n ? 'less' : 'more'}`;
};

const perKgFigure = (money: Money | undefined, digits: number): number | null =>
  money ? figure(coins(money, digits), digits) : null;

const totals = (was: MixCost, is: MixCost, currency: string): string => {
  if (!was.perKg || !is.perKg) return '';
  const digits = minorDigits(currency);
  return `: ${coinText(coins(is.perKg, digits), digits)} instead of ${coinText(coins(was.perKg, digits), digits)}`;
};

const lineOf = (change: CostChange, was: MixCost, is: MixCost, currency: string): string =>
  change.perKg
    ? `Ingredients for 1 kg cost ${moneyMove(change.perKg, currency)}${totals(was, is, currency)}.`
    : `Cost: no price that fits is noted for ${change.missing.map(({ thing }) => shortName(thing)).join(', ')}.`;

/** The cost of a kilogram before and after a change. */
export const costTold = (before: Mix, after: Mix, tools: Tools): CostTold => {
  if (!hasPrices(tools)) return silent;
  const { prices } = tools.book.state;
  const { currency } = tools.settings;
  const digits = minorDigits(currency);
  const change = costChange(before.portions, after.portions, prices, currency);
  const [was, is] = [before, after].map(({ portions }) => mixCost(portions, prices, currency));
  if (!was || !is) return silent;
  return {
    lines: [lineOf(change, was, is, currency)],
    figures: {
      cost_change_per_kg: perKgFigure(change.perKg, digits),
      cost_per_kg: perKgFigure(is.perKg, digits),
      cost_per_kg_before: perKgFigure(was.perKg, digits),
      currency,
      missing_prices: change.missing.map(({ thing }) => thing),
    },
  };
};
