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

/** A price as the book keeps it; `at` is the ISO day it was noted. */
export const keptPrice = priceNoted.omit({ kind: true, thing: true }).extend({ at: z.string() });
export type KeptPrice = z.output<typeof keptPrice>;
export const pricesSchema = z.record(pricedThing, keptPrice);
export type Prices = Readonly<Record<string, KeptPrice>>;

export const labourSchema = labourSet.omit({ kind: true });
export type Labour = z.output<typeof labourSchema>;

export const priceOf = (prices: Prices | undefined, thing: string): KeptPrice | undefined =>
  prices && Object.hasOwn(prices, thing) ? prices[thing] : undefined;

/** The price list after one more price, or one less; `prices` stays as it was. */
export const afterPrice = (prices: Prices, event: PriceNoted | PriceRemoved, at: string): Prices => {
  if (event.kind === 'price-removed') {
    return Object.fromEntries(Object.entries(prices).filter(([thing]) => thing !== event.thing));
  }
  const { kind: _kind, thing, ...price } = event;
  return { ...prices, [thing]: { ...price, at: at.slice(0, 10) } };
};

/** `tin-15-ml` for a tin of 15 ml, `tin` where no size is said. */
export const containerThing = (
  container: string,
  holds?: { readonly amount: number; readonly unit: 'g' | 'ml' },
): string => (holds ? `${container}-${Number(holds.amount.toFixed(3))}-${holds.unit}` : container);
