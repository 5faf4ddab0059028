import { z } from 'zod';
import { lotCodeText, mostBenchG } from '../../core/bench/event-fields.ts';
import { decimal, packSchema } from '../../core/cost/prices.ts';
import { purchaseForm } from '../forms/bench-forms.ts';
import { ofSpokenLot } from '../readers/of-spoken-lot.ts';
import { sameAgain } from '../readers/same-again.ts';
import { claimStock } from '../readers/stock-claim.ts';
import { claimStockInstead } from '../readers/stock-instead.ts';
import { boughtExample } from '../readers/stock-words.ts';

import { type SlashValues, topic } from '../topic.ts';
import { answerStock } from '../words/stock.ts';

const code = lotCodeText.max(40, 'A lot code has at most 40 characters.');
const ingredient = z.string().min(1).max(60);
const some = z
  .number()
  .gt(0, `An amount has to be more than zero. For example "${boughtExample}".`)
  .max(mostBenchG, `More than a tonne is no small stock. For example "${boughtExample}".`);
const remark = z.string().min(1).max(500, 'A note has at most 500 characters.');
const currency = z.string().regex(/^[A-Z]{3}$/);

const purchase = z.strictObject({
  ingredient,
  herb: ingredient.optional(),
  grams: some,
  lot: code.optional(),
  bestBefore: z.iso.date().optional(),
  on: z.iso.date().optional(),
  supplier: z.string().min(1).max(100).optional(),
  /** The price of the pack, as it was said. */
  price: decimal.optional(),
  /** What the whole purchase came to, where the price was for another pack. */
  paid: decimal.optional(),
  currency: currency.optional(),
  pack: packSchema.optional(),
});
export type Purchase = z.output<typeof purchase>;

const part = z.strictObject({ ingredient, grams: some, lot: code.optional() });

const take = z.strictObject({
  lot: code.optional(),
  ingredient: ingredient.optional(),
  herb: ingredient.optional(),
  grams: some.optional(),
  all: z.boolean().optional(),
});

const request = z.strictObject({
  action: z.enum([
    'bought',
    'infused',
    'taken',
    'counted',
    'opened',
    'dated',
    'priced',
    'note',
    'low',
    'list',
    'show',
  ]),
  purchases: z.array(purchase).min(1).max(60, 'At most 60 purchases at once.').optional(),
  lot: code.optional(),
  ingredient: ingredient.optional(),
  herb: ingredient.optional(),
  /** Grams bought, taken, counted or marked; null forgets a mark. */
  grams: z
    .number()
    .min(0, 'There cannot be less than nothing.')
    .max(mostBenchG, 'That is more than a tonne.')
    .nullable()
    .optional(),
  /** Everything that is left. */
  all: z.boolean().optional(),
  how: z.enum(['used', 'wasted']).optional(),
  /** Several things taken at once, in place of `lot` or `ingredient`. */
  takes: z.array(take).min(1).max(20, 'At most twenty lots at once.').optional(),
  /** Several lots counted or opened at once, in place of `lot`. */
  each: z
    .array(
      z.strictObject({
        lot: code,
        grams: z.number().min(0).max(mostBenchG).optional(),
        on: z.iso.date().optional(),
      }),
    )
    .min(2)
    .max(20, 'At most twenty lots at once.')
    .optional(),
  parts: z.array(part).max(20, 'At most twenty things in one jar.').optional(),
  on: z.iso.date().optional(),
  bestBefore: z.iso.date().optional(),
  /** What a lot cost in all, told later than it was bought. */
  price: decimal.optional(),
  currency: currency.optional(),
  homeDried: z.boolean().optional(),
  fresh: z.boolean().optional(),
  why: remark.optional(),
  note: remark.optional(),
  which: z.enum(['low', 'expired']).optional(),
  /** Further ingredients to list. */
  also: z.array(ingredient).max(10, 'At most ten at once; "stock" lists everything.').optional(),
  /** Only these lots are listed. */
  codes: z.array(code).max(12, 'At most twelve lots at once; "stock" lists everything.').optional(),
  prices: z.boolean().optional(),
  again: z.boolean().optional(),
  /** In place of what was told before, of the same lot or of this one. */
  instead: z.union([z.literal(true), code]).optional(),
});
export type StockWish = z.output<typeof request>;

const bought = ({ ingredient: what, amount, lot, best_before: best, price, from }: SlashValues): string =>
  [
    `bought ${amount ?? ''} ${what ?? ''}`,
    lot === undefined ? '' : ` lot ${lot}`,
    from === undefined ? '' : ` from ${from}`,
    best === undefined ? '' : `, best before ${best}`,
    price === undefined ? '' : `, ${price}`,
  ].join('');

const target = ({ lot, ingredient: what }: SlashValues): string => `${lot ?? what ?? ''}`;

const shown = ({ lot, ingredient: what }: SlashValues): string => {
  if (lot !== undefined) return `lot ${lot}`;
  return what === undefined ? 'stock' : `stock of ${what}`;
};

const claimTold = sameAgain('stock', ofSpokenLot(claimStock));

const commands = {
  show: shown,
  bought,
  used: (values: SlashValues) => `used ${values.amount ?? ''} of ${target(values)}`,
  'threw-away': (values: SlashValues) => `threw away ${values.amount ?? ''} of ${target(values)}`,
  counted: ({ lot, amount }: SlashValues) => `${lot ?? ''} is really ${amount ?? ''}`,
  opened: ({ lot }: SlashValues) => `opened ${lot ?? ''} today`,
  'warn-below': ({ amount, ingredient: what }: SlashValues) => `warn me below ${amount ?? ''} ${what ?? ''}`,
  low: () => 'running low',
} as const;
const commandNames = Object.keys(commands) as (keyof typeof commands)[];

const spoken = (values: SlashValues): string => commands[values.do as keyof typeof commands](values);

export const stock = topic({
  name: 'stock',
  summary: 'Lots on the shelf: bought, used, thrown away, counted, opened, running low.',
  request,
  examples: [
    {
      say: boughtExample,
      means: {
        action: 'bought',
        purchases: [
          { ingredient: 'beeswax', grams: 500, lot: 'K12', bestBefore: '2027-03-31', price: '14.5' },
        ],
      },
      changes: true,
    },
    { say: 'stock', means: { action: 'list' } },
    { say: 'how much beeswax do we have left', means: { action: 'list', ingredient: 'beeswax' } },
    {
      say: 'warn me below 200 g beeswax',
      means: { action: 'low', ingredient: 'beeswax', grams: 200 },
      changes: true,
    },
    { say: 'running low', means: { action: 'list', which: 'low' } },
  ],
  slash: {
    options: z.object({
      do: z.enum(commandNames).describe('What to write down or look up'),
      ingredient: z.string().max(60).optional().describe('For example beeswax'),
      amount: z.string().max(30).optional().describe('For example 500 g'),
      lot: z.string().max(40).optional().describe("The lot's code, for example K12"),
      best_before: z.string().max(30).optional().describe('For example 2027-03 or 14 May 2027'),
      price: z.string().max(20).optional().describe('What it cost in all, for example 14.50'),
      from: z.string().max(100).optional().describe('Where it was bought'),
    }),
    complete: { ingredient: 'ingredient', lot: 'lot' },
    form: purchaseForm,
    say: spoken,
  },
  writes: ({ action }) => action !== 'list' && action !== 'show',
  read: (reading) => claimStockInstead(reading) ?? claimTold(reading),
  answer: answerStock,
});
