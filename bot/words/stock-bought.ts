import { lotKey } from '../../core/bench/codes.ts';
import { isExpired } from '../../core/bench/draw.ts';
import type { BenchEventOf } from '../../core/bench/events.ts';
import { afterBenchEvent, nextCode } from '../../core/bench/fold.ts';
import type { Bench, Lot } from '../../core/bench/state.ts';
import { type BookEvent, type BookState, benchOf } from '../../core/book.ts';
import { minorDigits } from '../../core/cost/money.ts';
import { defined } from '../../core/defined.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Answer, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { Purchase, StockWish } from '../topics/stock.ts';
import { gramsText, text } from './batch-text.ts';
import { dayText, dayTrouble, todayFor } from './bench-dates.ts';
import { toldInstead } from './bench-instead.ts';
import { writtenDown } from './bench-twice.ts';
import { typedText } from './cost-money.ts';
import { by } from './recipe-table.ts';
import { lotFigures, lotName } from './stock-figures.ts';

type Bought = BenchEventOf<'lot-bought'>;

/** Most lots one book holds. */
const mostLots = 100_000;

const clash = (before: Lot, purchase: Purchase): Trouble | undefined => {
  const herbs = purchase.herb === undefined ? undefined : [purchase.herb];
  const same = before.ingredient === purchase.ingredient && before.herbs?.join() === herbs?.join();
  if (same) return undefined;
  const bought = lotName({ ingredient: purchase.ingredient, herbs });
  return {
    code: 'not-allowed',
    text: `Lot ${before.lot} is ${lotName(before)} in this book, not ${bought}. Give the new one a code of its own, for example "bought 500 g ${bought} lot ${before.lot}-2".`,
  };
};

const codeFor = (bench: Bench, purchase: Purchase, on: string): Result<string, Trouble> => {
  const { lot } = purchase;
  if (lot === undefined) return ok(nextCode(bench, on).code);
  const key = lotKey(lot);
  const batch = bench.batches.get(key);
  if (batch)
    return fail({
      code: 'not-allowed',
      text: `${batch.lot} is the code of a batch of ${batch.name}. Give the lot another one.`,
    });
  const before = bench.lots.get(key);
  const trouble = before && clash(before, purchase);
  return trouble ? fail(trouble) : ok(before?.lot ?? lot);
};

const boughtEvent = (purchase: Purchase, lot: string, on: string, wish: StockWish, tools: Tools): Bought => {
  const { ingredient, herb, grams, bestBefore, supplier } = purchase;
  const price = purchase.paid ?? purchase.price;
  const currency = purchase.currency ?? tools.settings.currency;
  return {
    kind: 'lot-bought',
    lot,
    ingredient,
    grams,
    on,
    ...defined({
      herbs: herb === undefined ? undefined : [herb],
      bestBefore,
      supplier,
      price: price === undefined ? undefined : { amount: price, currency },
      note: wish.note,
    }),
  };
};

/** The same price in the group's price list, by the pack as it was said. */
const priceEvent = (purchase: Purchase, on: string, tools: Tools): BookEvent[] => {
  const { price, pack, ingredient } = purchase;
  if (price === undefined || pack === undefined) return [];
  const currency = purchase.currency ?? tools.settings.currency;
  return [
    {
      kind: 'price-noted',
      thing: ingredient,
      price,
      currency,
      pack,
      ...(on === todayFor(tools) ? {} : { on }),
    },
  ];
};

interface Written {
  readonly lot: string;
  /** What was left of it before, where it was there already. */
  readonly before?: Lot;
}
type Decision = Result<{ events: readonly BookEvent[]; value: readonly Written[] }, Trouble>;

const decide = (start: Bench, wish: StockWish, tools: Tools): Decision => {
  let bench = start;
  const events: BookEvent[] = [];
  const written: Written[] = [];
  for (const purchase of wish.purchases ?? []) {
    const on = purchase.on ?? todayFor(tools);
    const code = codeFor(bench, purchase, on);
    if (!code.ok) return code;
    const event = boughtEvent(purchase, code.value, on, wish, tools);
    const before = bench.lots.get(lotKey(code.value));
    bench = afterBenchEvent(bench, event, 0);
    events.push(event, ...priceEvent(purchase, on, tools));
    written.push({ lot: code.value, ...defined({ before }) });
  }
  if (bench.lots.size > mostLots)
    return fail({ code: 'out-of-range', text: `This book holds ${mostLots} lots already.` });
  return ok({ events, value: written });
};

const priceWords = ({ price }: Lot): string =>
  price ? ` ${typedText(price.amount, minorDigits(price.currency))} ${price.currency}.` : '';

const lineFor = (lot: Lot, { before }: Written, purchase: Purchase): string => {
  const date = lot.bestBefore ? `best before ${dayText(lot.bestBefore)}` : 'no best before given';
  const from = lot.supplier ? `, from ${lot.supplier}` : '';
  const more = before ? ` (${gramsText(before.leftG)} of it were left: now ${gramsText(lot.leftG)})` : '';
  const money = purchase.price === undefined ? '' : priceWords(lot);
  return `Lot ${lot.lot}: ${gramsText(purchase.grams)} ${lotName(lot)}${more}, ${date}${from}.${money}`;
};

const noDate =
  'Look on the pack for a best before: without one I can only go by a usual shelf life. Say it like "K12 best before 2027-03".';

const warningsFor = (lots: readonly Lot[], today: string): Warning[] => [
  ...lots
    .filter((lot) => isExpired(lot, today))
    .map((lot) => ({
      code: 'past-date',
      text: `Lot ${lot.lot} is past its date (${dayText(lot.bestBefore ?? '')}): it will not be drawn by itself.`,
    })),
  ...(lots.some(({ bestBefore }) => bestBefore === undefined)
    ? [{ code: 'rough-estimate', text: noDate }]
    : []),
];

const answerFor = (written: readonly Written[], wish: StockWish, bench: Bench, tools: Tools): Answer => {
  const today = todayFor(tools);
  const lots = written.map(({ lot }) => bench.lots.get(lotKey(lot)) as Lot);
  const purchases = wish.purchases ?? [];
  const priced = purchases.some(({ price }) => price !== undefined);
  const given = written.filter((_, at) => purchases[at]?.lot === undefined).map(({ lot }) => lot);
  const named =
    given.length > 0
      ? [text(`No lot was given, so I made a code: write ${given.join(', ')} on the pack.`)]
      : [];
  return {
    title: written.length === 1 ? `Bought: ${lotName(lots[0] as Lot)}` : `${written.length} lots bought`,
    blocks: [
      {
        kind: 'list',
        items: lots.map((lot, at) => lineFor(lot, written[at] as Written, purchases[at] as Purchase)),
      },
      ...named,
      ...(priced ? [text('The price is in the price list too.')] : []),
    ],
    figures: { lots: lots.map((lot) => lotFigures(lot, today, true)) },
    warnings: warningsFor(lots, today),
    next: [{ label: 'Stock', say: 'stock' }],
    quiet: priced,
  };
};

/** Writes purchases into the book, with their prices: all of them or none. */
export const recordBought = async (wish: StockWish, tools: Tools): Promise<Answer | Trouble> => {
  const today = todayFor(tools);
  const days = (wish.purchases ?? []).flatMap(({ on }) => on ?? []);
  const wrongDay = days.map((on) => dayTrouble(on, today)).find(Boolean);
  if (wrongDay) return wrongDay;
  const { again, instead, ...same } = wish;
  const write = (state: BookState): Decision => decide(benchOf(state), wish, tools);
  return writtenDown(
    { tools, what: 'purchase', key: same, again: again ?? instead !== undefined },
    () =>
      instead
        ? toldInstead(
            { kinds: ['lot-bought'], lot: instead === true ? wish.purchases?.[0]?.lot : instead },
            tools,
            write,
          )
        : tools.book.change(write, by(tools)),
    ({ value, state }) => answerFor(value, wish, benchOf(state), tools),
  );
};
