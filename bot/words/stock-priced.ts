import { lotKey } from '../../core/bench/codes.ts';
import type { Lot } from '../../core/bench/state.ts';
import { type BookEvent, type BookState, benchOf } from '../../core/book.ts';
import { minorDigits } from '../../core/cost/money.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { StockWish } from '../topics/stock.ts';
import { gramsText, text } from './batch-text.ts';
import { todayFor } from './bench-dates.ts';
import { typedText } from './cost-money.ts';
import { findLot } from './find-lot.ts';
import { by } from './recipe-table.ts';
import { lotFigures, lotName } from './stock-figures.ts';

interface Priced {
  readonly amount: string;
  readonly currency: string;
}

const said = ({ amount, currency }: Priced): string =>
  `${typedText(amount, minorDigits(currency))} ${currency}`;

/** What the lot cost, and the same in the price list, for as much as was bought and of that day. */
const eventsFor = (lot: Lot, price: Priced): readonly BookEvent[] => [
  { kind: 'lot-priced', lot: lot.lot, price },
  {
    kind: 'price-noted',
    thing: lot.ingredient,
    price: price.amount,
    currency: price.currency,
    pack: { amount: lot.gotG, unit: 'g' },
    on: lot.on,
  },
];

/** Writes down what a lot cost, told later than it was bought; what stood there before is said. */
export const recordPriced = async (wish: StockWish, tools: Tools): Promise<Answer | Trouble> => {
  const price = { amount: wish.price ?? '0', currency: wish.currency ?? tools.settings.currency };
  const changed = await tools.book.change(
    (state: BookState): Result<{ events: readonly BookEvent[]; value: Lot }, Trouble> => {
      const lot = findLot(wish.lot ?? '', benchOf(state));
      return 'code' in lot ? fail(lot) : ok({ events: eventsFor(lot, price), value: lot });
    },
    by(tools),
  );
  if (!changed.ok) return changed.problem;
  const { value: before, state } = changed.value;
  const lot = benchOf(state).lots.get(lotKey(before.lot)) ?? before;
  const was = before.price ? ` (was ${said(before.price)})` : '';
  return {
    title: `Lot ${lot.lot}: ${lotName(lot)}`,
    blocks: [
      text(`Lot ${lot.lot}, ${gramsText(lot.gotG)}, cost ${said(price)}${was}.`),
      text('The price is in the price list too.'),
    ],
    figures: { lots: [lotFigures(lot, todayFor(tools), true)] },
    warnings: [],
    next: [{ label: 'Stock', say: 'stock' }],
    quiet: true,
  };
};
