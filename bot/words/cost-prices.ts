import { minorDigits } from '../../core/cost/money.ts';
import { type KeptPrice, priceOf } from '../../core/cost/prices.ts';
import { defined } from '../../core/defined.ts';
import type { Answer, Block, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { CostWish } from '../topics/cost.ts';
import { priceText, thingName, typedText } from './cost-money.ts';
import { isoDay } from './day.ts';
import { by } from './recipe-table.ts';

const figuresOf = (entries: readonly (readonly [string, KeptPrice])[]): Answer['figures'] => ({
  prices: entries.map(([thing, { price, currency, pack, vat, at }]) => ({
    thing,
    price,
    currency,
    pack: { amount: pack.amount, unit: pack.unit },
    vat: vat ?? null,
    noted_on: at,
  })),
});

const noPrices =
  'No prices yet. Note some: "shea costs 18 per kg", "beeswax 500 g 14.50", "tins are 0.35 each".';

const table = (entries: readonly (readonly [string, KeptPrice])[]): Block => ({
  kind: 'table',
  columns: [
    { title: 'of', align: 'left' },
    { title: 'price', align: 'left' },
    { title: 'noted', align: 'left' },
  ],
  rows: entries.map(([thing, price]) => [
    thingName(thing),
    priceText(price, minorDigits(price.currency)),
    price.at,
  ]),
});

const labourText = (tools: Tools): Block[] => {
  const { labour } = tools.book.state;
  if (!labour || labour.ratePerHour === null) return [];
  const hours = labour.hours === undefined ? '' : `, ${labour.hours} hours a batch`;
  const rate = typedText(labour.ratePerHour, minorDigits(labour.currency));
  return [{ kind: 'text', text: `Labour: ${rate} ${labour.currency} an hour${hours}.` }];
};

/** Most prices told in one answer. */
const mostListed = 60;

/** The group's price list, or one price of it. */
export const listPrices = (wish: CostWish, tools: Tools): Answer | Trouble => {
  const all = Object.entries(tools.book.state.prices ?? {}).toSorted(([a], [b]) => a.localeCompare(b, 'en'));
  const { thing } = wish;
  const entries =
    thing === undefined ? all : all.filter(([key]) => key === thing || key.startsWith(`${thing}-`));
  if (thing !== undefined && entries.length === 0) {
    return {
      code: 'not-found',
      text: `No price of ${thingName(thing)} is noted yet. Say it like "shea costs 18 per kg" or "tins are 0.35 each".`,
    };
  }
  return {
    title: thing === undefined ? 'Prices' : `Price of ${thingName(thing)}`,
    blocks: [
      ...(entries.length === 0
        ? [{ kind: 'text', text: noPrices } as const]
        : [table(entries.slice(0, mostListed))]),
      ...(thing === undefined ? labourText(tools) : []),
    ],
    figures: { ...figuresOf(entries.slice(0, mostListed)), currency: tools.settings.currency },
    warnings: [],
    quiet: true,
  };
};

/** Most prices one book holds: far more than a group buys. */
const mostPrices = 2000;

const notYet = (on: string): Trouble => ({
  code: 'bad-quantity',
  text: `${on} is still to come. Note a price when it is paid, for example "shea costs 18 per kg".`,
});

/** What the price was; or that an older one went to its place in the past. */
const changeText = (
  thing: string,
  on: string | undefined,
  old: KeptPrice | undefined,
  now: KeptPrice | undefined,
): string[] => {
  if (!old || !now) return [];
  const digits = minorDigits(old.currency);
  return on !== undefined && on < now.at
    ? [
        `Kept as an earlier price of ${thingName(thing)} (${on}); since ${now.at} it is ${priceText(now, digits)}.`,
      ]
    : [`${thingName(thing)} was ${priceText(old, digits)} (${old.at}).`];
};

/** A price in another currency is kept as typed, and changes nothing for sums in the group's own. */
const foreignText = (entries: readonly (readonly [string, KeptPrice])[], own: string): string[] => {
  const foreign = entries.find(([, { currency }]) => currency !== own)?.[1].currency;
  return foreign === undefined
    ? []
    : [
        `Kept in ${foreign} as typed. I reckon in ${own} and change no money: ask "currency ${foreign}" to reckon in that.`,
      ];
};

/** Writes prices into the book, each as an event of its own. */
export const notePrices = async (wish: CostWish, tools: Tools): Promise<Answer | Trouble> => {
  const { prices = [] } = wish;
  if (prices.length === 0)
    return { code: 'missing', text: 'Which price? For example "shea costs 18 per kg".' };
  const before = tools.book.state.prices ?? {};
  if (Object.keys(before).length + prices.length > mostPrices) {
    return { code: 'out-of-range', text: `This book holds ${mostPrices} prices already.` };
  }
  const { currency } = tools.settings;
  const today = isoDay(tools.at);
  const late = prices.find(({ on }) => on !== undefined && on > today);
  if (late) return notYet(late.on ?? '');
  await tools.book.record(
    prices.map(({ thing, price, pack, vat, on, currency: said }) => {
      const noted = { thing, price, currency: said ?? currency, pack, ...defined({ vat, on }) };
      return { kind: 'price-noted' as const, ...noted };
    }),
    by(tools),
  );
  const now = tools.book.state.prices;
  const entries = prices.flatMap(({ thing }) => {
    const kept = priceOf(now, thing);
    return kept ? [[thing, kept] as const] : [];
  });
  const changed = prices.flatMap(({ thing, on }) =>
    changeText(thing, on, priceOf(before, thing), priceOf(now, thing)),
  );
  return {
    title: entries.length === 1 ? 'Price noted' : `${entries.length} prices noted`,
    blocks: [
      {
        kind: 'list',
        items: entries.map(
          ([thing, kept]) => `${thingName(thing)}: ${priceText(kept, minorDigits(kept.currency))}`,
        ),
      },
      ...[...changed, ...foreignText(entries, currency)].map((text) => ({ kind: 'text', text }) as const),
    ],
    figures: { ...figuresOf(entries), currency },
    warnings: [],
    next: [{ label: 'Prices', say: 'prices' }],
    quiet: true,
  };
};

/** Takes a price off the list; the events keep what it was. */
export const removePrice = async (wish: CostWish, tools: Tools): Promise<Answer | Trouble> => {
  const { thing = '' } = wish;
  const old = priceOf(tools.book.state.prices, thing);
  if (!old) {
    return {
      code: 'not-found',
      text: `No price of ${thingName(thing)} is noted. Ask "prices" to see the list.`,
    };
  }
  await tools.book.record({ kind: 'price-removed', thing }, by(tools));
  return {
    title: `Price removed: ${thingName(thing)}`,
    blocks: [{ kind: 'text', text: `It was ${priceText(old, minorDigits(old.currency))}, noted ${old.at}.` }],
    figures: { removed: thing },
    warnings: [],
    quiet: true,
  };
};
