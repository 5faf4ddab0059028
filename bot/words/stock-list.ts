import { lotKey } from '../../core/bench/codes.ts';
import { byDate, isExpired } from '../../core/bench/draw.ts';
import { sumG } from '../../core/bench/exact.ts';
import type { Lot } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import { minorDigits } from '../../core/cost/money.ts';
import { defined } from '../../core/defined.ts';
import { type Answer, type Block, type Column, mostChoices, type Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { StockWish } from '../topics/stock.ts';
import { gramsText, text } from './batch-text.ts';
import { dayText, fromNow, todayFor } from './bench-dates.ts';
import { lowIn, lowText } from './bench-low.ts';
import { typedText } from './cost-money.ts';
import { findLot } from './find-lot.ts';
import { plain } from './numbers.ts';
import { lotFigures, lotName } from './stock-figures.ts';

/** Most lots told in one answer. */
const mostListed = 60;

const isAsked = (lot: Lot, wish: StockWish, today: string): boolean => {
  if (wish.codes) return wish.codes.some((code) => lotKey(code) === lotKey(lot.lot));
  if (lot.leftG <= 0) return false;
  if (wish.which === 'expired') return isExpired(lot, today);
  if (wish.ingredient === undefined) return true;
  if (wish.herb !== undefined && lot.herbs?.includes(wish.herb) === true) return true;
  if (wish.herb !== undefined && lot.ingredient === wish.ingredient) return false;
  return lot.ingredient === wish.ingredient || wish.also?.includes(lot.ingredient) === true;
};

const priceCell = ({ price }: Lot): string =>
  price ? `${typedText(price.amount, minorDigits(price.currency))} ${price.currency}` : '';

const lotsTable = (lots: readonly Lot[], today: string, prices: boolean): Block => {
  const columns: (Column & { cell: (lot: Lot) => string })[] = [
    { title: 'what', align: 'left', cell: lotName },
    { title: 'lot', align: 'left', cell: ({ lot }) => lot },
    { title: 'g left', align: 'right', cell: ({ leftG }) => plain(leftG, 1) },
    {
      title: 'best before',
      align: 'left',
      cell: (lot) => `${lot.bestBefore ?? '–'}${isExpired(lot, today) ? ' (over)' : ''}`,
    },
    ...(prices ? [{ title: 'paid', align: 'right', cell: priceCell } as const] : []),
  ];
  return {
    kind: 'table',
    columns: columns.map(({ title, align }) => ({ title, align })),
    rows: lots.map((lot) => columns.map(({ cell }) => cell(lot))),
  };
};

const nameAsked = ({ ingredient, herb, also = [] }: StockWish): string => {
  const first = lotName({
    ingredient: ingredient ?? '',
    ...defined({ herbs: herb === undefined ? undefined : [herb] }),
  });
  return [first, ...also.map((id) => lotName({ ingredient: id }))].join(' and ');
};

const emptyText = (wish: StockWish): string => {
  if (wish.which === 'expired') return 'Nothing on the shelf is past its date.';
  const of = wish.ingredient === undefined ? 'on the shelf' : `of ${nameAsked(wish)} in the stock`;
  return `Nothing ${of}. Write a purchase down: "bought 500 g beeswax lot K12, best before 2027-03, 14.50".`;
};

const totals = (lots: readonly Lot[], today: string) => {
  const usable = sumG(lots.filter((lot) => !isExpired(lot, today)).map(({ leftG }) => leftG));
  return { all: sumG(lots.map(({ leftG }) => leftG)), usable };
};

const totalText = (lots: readonly Lot[], wish: StockWish, today: string): Block[] => {
  if (wish.ingredient === undefined || wish.also) return [];
  const { all, usable } = totals(lots, today);
  const over =
    all > usable
      ? ` ${gramsText(Number((all - usable).toFixed(3)))} more are past their date and are not counted.`
      : '';
  return [text(`${gramsText(usable)} ${nameAsked(wish)} left.${over}`)];
};

const byKind = (a: Lot, b: Lot): number =>
  a.ingredient === b.ingredient ? byDate(a, b) : a.ingredient < b.ingredient ? -1 : 1;

const askedLots = (wish: StockWish, tools: Tools, today: string): readonly Lot[] => {
  const lots: Lot[] = [];
  for (const lot of benchOf(tools.book.state).lots.values()) if (isAsked(lot, wish, today)) lots.push(lot);
  return lots.sort(byKind);
};

const titleOf = (wish: StockWish): string => {
  if (wish.codes) return `Stock of ${wish.codes.join(' and ')}`;
  if (wish.which === 'expired') return 'Past their date';
  return wish.ingredient === undefined ? 'Stock' : `Stock of ${nameAsked(wish)}`;
};

const lowBlocks = (wish: StockWish, tools: Tools, today: string): Block[] => {
  if ((wish.ingredient ?? wish.which ?? wish.codes) !== undefined) return [];
  const low = lowIn(benchOf(tools.book.state), today);
  return low.length > 0 ? [text(`Running low: ${low.map(lowText).join('; ')}.`)] : [];
};

const shownBlocks = (lots: readonly Lot[], wish: StockWish, today: string): Block[] => {
  if (lots.length === 0) return [text(emptyText(wish))];
  const more = lots.length - mostListed;
  const over = more > 0 ? [text(`And ${more} more: ask for one ingredient, "stock of shea".`)] : [];
  return [lotsTable(lots.slice(0, mostListed), today, wish.prices === true), ...over];
};

/** What is on the shelf, oldest best before first within each ingredient. */
export const listStock = (wish: StockWish, tools: Tools): Answer => {
  if (wish.which === 'low') return listLow(wish, tools);
  const today = todayFor(tools);
  const lots = askedLots(wish, tools, today);
  const { all, usable } = totals(lots, today);
  const of =
    wish.ingredient === undefined || wish.also
      ? {}
      : { ingredient: wish.ingredient, total_g: all, usable_g: usable };
  return {
    title: titleOf(wish),
    blocks: [
      ...totalText(lots, wish, today),
      ...shownBlocks(lots, wish, today),
      ...lowBlocks(wish, tools, today),
    ],
    figures: {
      lots: lots.slice(0, mostListed).map((lot) => lotFigures(lot, today, wish.prices === true)),
      count: lots.length,
      ...of,
    },
    warnings: [],
    choices: {
      label: 'Show a lot',
      steps: lots
        .slice(0, mostChoices)
        .map((lot) => ({ label: `${lot.lot} ${lotName(lot)}`, say: `lot ${lot.lot}` })),
    },
    ...(wish.prices ? { quiet: true } : {}),
  };
};

const noMarks = 'No marks are set. Set one: "warn me below 200 g beeswax".';

const listLow = (wish: StockWish, tools: Tools): Answer => {
  const bench = benchOf(tools.book.state);
  const low = lowIn(bench, todayFor(tools)).filter(
    ({ ingredient }) =>
      wish.ingredient === undefined || ingredient === wish.ingredient || wish.also?.includes(ingredient),
  );
  const none = bench.low.size === 0 ? noMarks : 'Nothing is below its mark.';
  return {
    title: 'Running low',
    blocks: low.length === 0 ? [text(none)] : [{ kind: 'list', items: low.map(lowText) }],
    figures: {
      low: low.map(({ ingredient, gramsLeft, belowG }) => ({
        ingredient,
        grams_left: gramsLeft,
        below_g: belowG,
      })),
      marks: bench.low.size,
    },
    warnings: [],
    next: [{ label: 'Stock', say: 'stock' }],
  };
};

/** Everything the book has of one lot; with its price, so privately. */
export const showLot = (wish: StockWish, tools: Tools): Answer | Trouble => {
  const lot = findLot(wish.lot ?? '', benchOf(tools.book.state));
  if ('code' in lot) return lot;
  const today = todayFor(tools);
  const over = isExpired(lot, today) ? ' It is past its date: do not use it.' : '';
  const date = lot.bestBefore
    ? `Best before ${dayText(lot.bestBefore)} (${fromNow(today, lot.bestBefore)}).${over}`
    : 'No best before is noted.';
  const got = lot.draws ? 'Strained' : 'Bought';
  const drawn = (lot.draws ?? []).map(({ lot: from, grams }) => `${gramsText(grams)} of lot ${from}`);
  return {
    title: `Lot ${lot.lot}: ${lotName(lot)}`,
    blocks: [
      text(`${gramsText(lot.leftG)} left of ${gramsText(lot.gotG)}. ${date}`),
      text(
        `${got} on ${dayText(lot.on)}${lot.supplier ? `, from ${lot.supplier}` : ''}${lot.opened ? `; opened on ${dayText(lot.opened)}` : ''}.`,
      ),
      ...(drawn.length > 0 ? [text(`Made from ${drawn.join(', ')}.`)] : []),
      ...(lot.price ? [text(`Paid: ${priceCell(lot)}.`)] : []),
      ...(lot.notes.length > 0 ? [{ kind: 'list', items: lot.notes } as const] : []),
    ],
    figures: { lots: [lotFigures(lot, today, true)] },
    warnings: [],
    next: [{ label: 'Stock', say: 'stock' }],
    ...(lot.price ? { quiet: true } : {}),
  };
};
