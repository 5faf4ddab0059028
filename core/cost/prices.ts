import { z } from 'zod';
import { decimalText } from './money.ts';

/** A price as typed, in the currency's whole units. */
export const decimal = z.string().regex(decimalText);

const currency = z.string().regex(/^[A-Z]{3}$/);

/** What one pack holds: grams, millilitres, or a number of pieces. Under a thousandth it is a slip, and no divisor. */
export const packSchema = z.strictObject({
  amount: z
    .number()
    .min(0.001, 'A pack has to hold at least 0.001 g or ml. For example "shea costs 18 per kg".')
    .max(1_000_000, 'A pack can hold at most 1,000,000 g or ml. For example "shea costs 18 per kg".'),
  unit: z.enum(['g', 'ml', 'each']),
});
export type Pack = z.output<typeof packSchema>;

/** An ingredient's id, or a container's: `tin`, `tin-15-ml`. */
export const pricedThing = z
  .string()
  .regex(/^[a-z0-9]+(?:[-.][a-z0-9]+)*$/)
  .max(80);

export const priceNoted = z.strictObject({
  kind: z.literal('price-noted'),
  thing: pricedThing,
  price: decimal,
  currency,
  pack: packSchema,
  /** Whether VAT or sales tax is in the price, as it was said; nothing is ever added or taken off. */
  vat: z.enum(['incl', 'excl']).optional(),
  /** The day the price is of, where it is not the day it was noted. */
  on: z.iso.date().optional(),
});
export type PriceNoted = z.output<typeof priceNoted>;

export const priceRemoved = z.strictObject({ kind: z.literal('price-removed'), thing: pricedThing });
export type PriceRemoved = z.output<typeof priceRemoved>;

/** The hourly rate, and the hours a batch usually takes; a rate of null counts no labour. */
export const labourSet = z.strictObject({
  kind: z.literal('labour-set'),
  ratePerHour: decimal.nullable(),
  currency,
  hours: z.number().positive().max(1000).optional(),
});
export type LabourSet = z.output<typeof labourSet>;

/** A price of a day; `at` is the ISO day it was noted for. */
const dayPrice = priceNoted.omit({ kind: true, thing: true, on: true }).extend({ at: z.string() });
export type DayPrice = z.output<typeof dayPrice>;

/** A price as the book keeps it, with the ones before it, oldest first. */
export const keptPrice = dayPrice.extend({ before: z.array(dayPrice).readonly().optional() });
export type KeptPrice = z.output<typeof keptPrice>;
export const pricesSchema = z.record(pricedThing, keptPrice);
export type Prices = Readonly<Record<string, KeptPrice>>;

export const labourSchema = labourSet.omit({ kind: true });
export type Labour = z.output<typeof labourSchema>;

export const priceOf = (prices: Prices | undefined, thing: string): KeptPrice | undefined =>
  prices && Object.hasOwn(prices, thing) ? prices[thing] : undefined;

/** Kinds of one thing that are bought under its name. */
const boughtAs: Readonly<Record<string, string>> = { 'beeswax-white': 'beeswax' };

/** What an ingredient is priced as: itself, or what it is a kind of where only that has a price. */
export const pricedAs = (prices: Prices | undefined, ingredient: string): string => {
  const other = Object.hasOwn(boughtAs, ingredient) ? boughtAs[ingredient] : undefined;
  return other !== undefined && !priceOf(prices, ingredient) && priceOf(prices, other) ? other : ingredient;
};

/** The price a sum takes for an ingredient. */
export const priceFor = (prices: Prices | undefined, ingredient: string): KeptPrice | undefined =>
  priceOf(prices, pricedAs(prices, ingredient));

/** Earlier prices kept of one thing: years of them. */
const mostBefore = 60;

/** All prices known of a thing, oldest first. */
export const historyOf = (price: KeptPrice): readonly DayPrice[] => {
  const { before = [], ...now } = price;
  return [...before, now];
};

/** The newest by its day counts; of one day the one noted last. A price noted late goes to its place in the past. */
const withEarlier = (old: KeptPrice | undefined, fresh: DayPrice): KeptPrice => {
  const all = [...(old ? historyOf(old) : []), fresh].sort((a, b) =>
    a.at < b.at ? -1 : a.at > b.at ? 1 : 0,
  );
  const now = all.at(-1) ?? fresh;
  const before = all.slice(0, -1).slice(-mostBefore);
  return before.length > 0 ? { ...now, before } : now;
};

/** The price list after one more price, or one less; `prices` stays as it was. */
export const afterPrice = (prices: Prices, event: PriceNoted | PriceRemoved, at: string): Prices => {
  if (event.kind === 'price-removed') {
    return Object.fromEntries(Object.entries(prices).filter(([thing]) => thing !== event.thing));
  }
  const { kind: _kind, thing, on, ...price } = event;
  return { ...prices, [thing]: withEarlier(priceOf(prices, thing), { ...price, at: on ?? at.slice(0, 10) }) };
};

/** A day after every other, so that a supposed price stands before all that are noted. */
const lastDay = '9999-12-31';

/** The price list as it would be with these prices; `prices` stays as it was. */
export const withSupposed = (
  prices: Prices,
  supposed: readonly Pick<PriceNoted, 'thing' | 'price' | 'pack' | 'vat' | 'currency'>[],
): Prices =>
  supposed.reduce<Prices>(
    (all, price) => afterPrice(all, { kind: 'price-noted', ...price }, lastDay),
    prices,
  );

/** A stretch of days, both ends in it, as ISO days. */
export interface Days {
  readonly from: string;
  readonly to: string;
}

/** What was paid in a stretch of days: the price that stood when it began, and every new one within it. */
export const pricesIn = (price: KeptPrice, { from, to }: Days): readonly DayPrice[] => {
  const known = historyOf(price).filter(({ at }) => at <= to);
  const within = known.filter(({ at }) => at >= from);
  const standing = known.filter(({ at }) => at < from).at(-1);
  return standing && within[0]?.at !== from ? [standing, ...within] : within;
};

/** `tin-15-ml` for a tin of 15 ml, `tin` where no size is said. */
export const containerThing = (
  container: string,
  holds?: { readonly amount: number; readonly unit: 'g' | 'ml' },
): string => (holds ? `${container}-${Number(holds.amount.toFixed(3))}-${holds.unit}` : container);
