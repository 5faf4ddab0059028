import { coins, coinText } from '../../core/cost/money.ts';
import { priceOf } from '../../core/cost/prices.ts';
import type { Design, Proposal } from '../../core/design/design.ts';
import { waxBackbones } from '../../core/design/palette.ts';
import type { PriceWish } from '../../core/design/price.ts';
import type { Answer, Block } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { DesignWish } from '../topics/design.ts';
import { figure } from './cost-money.ts';
import { unpriced } from './design-wishes.ts';
import { hasPrices } from './substitute-cost.ts';
import { shortName } from './warnings.ts';

const unitText = ({ unit, currency }: PriceWish): string =>
  unit.kind === 'kg' ? `${currency} for 1 kg` : `${currency} each`;

/** A row of the proposals' table: what each costs. */
export const priceRow = ({ proposals, wishes }: Design): readonly (readonly string[])[] => {
  const { price } = wishes;
  if (!price) return [];
  const cell = (proposal: Proposal): string =>
    proposal.price ? coinText(coins(proposal.price, price.digits), price.digits) : '–';
  return [[unitText(price), ...proposals.map(cell)]];
};

const text = (said: string): Block => ({ kind: 'text', text: said });
const assumed = (said: string): Block => ({ kind: 'assumed', text: said });

/** Waxes and oils of the palette that could not be used for want of a price. */
const unused = (tools: Tools): readonly string[] => {
  const ids = [
    ...new Set([...waxBackbones.map(({ main }) => main), 'shea-butter', 'olive-oil', 'vitamin-e']),
  ];
  return ids.filter((id) => priceOf(tools.book.state.prices, id)?.currency !== tools.settings.currency);
};

const counted = ({ unit }: PriceWish): string => {
  if (unit.kind === 'kg') return 'The cost is that of the ingredients.';
  const { amount, unit: measure } = unit.fill;
  const box = unit.container ? 'and the empty container' : 'without the container: no price of one is noted';
  return `The cost is that of the ingredients for ${amount} ${measure}, ${unit.lossPercent} % loss included, ${box}.`;
};

/** What was minded about the price, and which prices are missing. */
export const priceBlocks = (made: Design, wish: DesignWish, tools: Tools): readonly Block[] => {
  if (!wish.price) return [];
  const example = `Note prices first, for example "shea 18 per kg, olive oil 9 per kg, beeswax 500 g 14.50".`;
  if (!hasPrices(tools)) return [text(`No prices are noted, so I could not mind the cost. ${example}`)];
  const asked = unpriced(wish, tools);
  if (asked.length > 0)
    return [
      text(
        `No price is noted for ${asked.map(shortName).join(', ')}, so I could not mind the cost. Note it: "${shortName(asked[0] ?? '')} 18 per kg".`,
      ),
    ];
  const { price } = made.wishes;
  if (!price) return [];
  const missing = unused(tools).filter((id) => !made.wishes.without.includes(id));
  return [
    ...(made.proposals.length === 0
      ? [text(`From what has a price in this book nothing fits these wishes. ${example}`)]
      : []),
    assumed(counted(price)),
    ...(missing.length > 0
      ? [
          assumed(
            `Used only what has a price. None is noted for ${missing.slice(0, 5).map(shortName).join(', ')}.`,
          ),
        ]
      : []),
  ];
};

const amountOf = (proposal: Proposal | undefined, { digits }: PriceWish): number | null =>
  proposal?.price ? figure(coins(proposal.price, digits), digits) : null;

/** The price wish in figures: what was asked, what the first proposal costs, what has no price. */
export const priceFigures = (made: Design, wish: DesignWish, tools: Tools): Answer['figures'] => {
  if (!wish.price) return {};
  const { price } = made.wishes;
  const own = { missing_prices: [...(price ? unused(tools) : unpriced(wish, tools))] };
  const limit = wish.priceLimit
    ? { ceiling: Number(wish.priceLimit.amount), ceiling_per: wish.priceLimit.per }
    : {};
  return {
    ...own,
    ...limit,
    currency: tools.settings.currency,
    cost_unit: price?.unit.kind ?? null,
    cost: price ? amountOf(made.proposals[0], price) : null,
    costs: price ? made.proposals.map((proposal) => amountOf(proposal, price)) : [],
  };
};
