import { minorDigits } from '../../core/cost/money.ts';
import { type DayPrice, type Days, historyOf, priceOf, pricesIn } from '../../core/cost/prices.ts';
import type { Answer, Block, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { CostWish } from '../topics/cost.ts';
import { costBatch } from './cost-batch.ts';
import { priceText, thingName } from './cost-money.ts';
import { missingText } from './cost-table.ts';
import { isoDay } from './day.ts';

type When = NonNullable<CostWish['when']>;

const monthNames =
  'January February March April May June July August September October November December'.split(' ');

interface Stretch extends Days {
  readonly said: string;
}

const two = (value: number): string => String(value).padStart(2, '0');

/** The last day of a month; 1 is January. */
const lastDayOf = (year: number, month: number): string =>
  new Date(Date.UTC(year, month, 0)).toISOString().slice(0, 10);

/** "March" is the last one that has begun. */
const stretchOf = ({ day, month, year }: When, today: string): Stretch => {
  if (day !== undefined) return { from: day, to: day, said: `on ${day}` };
  const [thisYear = 2000, thisMonth = 1] = today.split('-').map(Number);
  if (month === undefined) return { from: `${year}-01-01`, to: `${year}-12-31`, said: `in ${year}` };
  const of = year ?? (month > thisMonth ? thisYear - 1 : thisYear);
  return {
    from: `${of}-${two(month)}-01`,
    to: lastDayOf(of, month),
    said: `in ${monthNames[month - 1]} ${of}`,
  };
};

const rowOf = (price: DayPrice): readonly string[] => [
  price.at,
  priceText(price, minorDigits(price.currency)),
];

const table = (prices: readonly DayPrice[]): Block => ({
  kind: 'table',
  columns: [
    { title: 'from', align: 'left' },
    { title: 'price', align: 'left' },
  ],
  rows: prices.map(rowOf),
});

const figureOf = ({ price, currency, pack, vat, at }: DayPrice) => ({
  price,
  currency,
  pack: { amount: pack.amount, unit: pack.unit },
  vat: vat ?? null,
  noted_on: at,
});

/** What something cost in a month, on a day, or all along. */
export const pastPrices = (wish: CostWish, tools: Tools): Answer => {
  const { thing = '', when } = wish;
  const kept = priceOf(tools.book.state.prices, thing);
  const stretch = when && stretchOf(when, isoDay(tools.at));
  const all = kept ? historyOf(kept) : [];
  const told = kept && stretch ? pricesIn(kept, stretch) : all;
  const [first] = all;
  const none = first
    ? `Nothing was noted by then. The first price is of ${first.at}: ${priceText(first, minorDigits(first.currency))}.`
    : `No price of ${thingName(thing)} is noted yet. Say it like "shea costs 18 per kg", or "shea 16 per kg on 2026-03-02" for an earlier day.`;
  return {
    title: `Price of ${thingName(thing)}${stretch ? ` ${stretch.said}` : ', all that is noted'}`,
    blocks: [told.length > 0 ? table(told) : { kind: 'text', text: none }],
    figures: { thing, prices: told.map(figureOf), from: stretch?.from ?? null, to: stretch?.to ?? null },
    warnings: [],
    next: [{ label: 'Prices', say: 'prices' }],
    quiet: true,
  };
};

/** Enough for every line of a recipe to be weighed; the prices do not depend on it. */
const anyBatchG = 1000;

/** What of a recipe has no price yet. */
export const missingPrices = (wish: CostWish, tools: Tools): Answer | Trouble => {
  const costed = costBatch({ ...wish, action: 'cost', batch: { ...wish.batch, totalG: anyBatchG } }, tools);
  if ('code' in costed) return costed;
  const { missing } = costed.costs;
  const name = costed.name ?? 'your recipe';
  return {
    title: missing.length === 0 ? `Every line of ${name} has a price` : `Prices missing for ${name}`,
    blocks: [
      {
        kind: 'text',
        text:
          missing.length === 0
            ? 'Tins, lids, labels and labour count as well where you note them.'
            : `${missingText(missing)}. Note them like "shea costs 18 per kg".`,
      },
    ],
    figures: { missing_prices: missing.map(({ thing }) => thing), currency: costed.currency },
    warnings: [],
    next: [{ label: 'Prices', say: 'prices' }],
    quiet: true,
  };
};
