import type { FormSpec } from './form.ts';

const joined = (parts: readonly (readonly [before: string, value: string | undefined])[]): string =>
  parts.flatMap(([before, value]) => (value === undefined ? [] : [`${before}${value}`])).join('');

/** A pour to be written down. */
export const pourForm: FormSpec = {
  name: 'batch',
  title: 'Write down a pour',
  fields: [
    { name: 'recipe', label: 'Recipe', about: 'A saved recipe', required: true, most: 120 },
    {
      name: 'make',
      label: 'How many, and of what size',
      about: 'For example 24 tins of 15 ml',
      required: true,
      most: 60,
    },
    { name: 'lots', label: 'Lots used', about: 'For example K12, G7. Empty: the oldest first', most: 200 },
    { name: 'on', label: 'Day', about: 'For example yesterday or 2027-05-03. Empty: today', most: 30 },
    { name: 'say', label: 'Note', about: 'How it went', long: true, most: 400 },
  ],
  opens: ({ do: action, recipe, tins }) =>
    action === 'poured' && (recipe === undefined || tins === undefined),
  say: ({ recipe, make, lots, on = 'today', say: note }) =>
    joined([
      ['poured ', make ?? ''],
      [' of ', recipe ?? ''],
      [/^\d/.test(on) ? ' on ' : ' ', on],
      [' with lots ', lots],
      [', note: ', note?.replace(/\s+/g, ' ')],
    ]),
};

/** A purchase for the shelf. */
export const purchaseForm: FormSpec = {
  name: 'stock',
  title: 'Write down a purchase',
  fields: [
    { name: 'ingredient', label: 'Ingredient', about: 'For example beeswax', required: true, most: 60 },
    { name: 'amount', label: 'How much', about: 'For example 500 g', required: true, most: 30 },
    { name: 'lot', label: 'Lot', about: "The supplier's code. Empty: I make one", most: 40 },
    { name: 'best_before', label: 'Best before', about: 'For example 2027-03 or 14 May 2027', most: 30 },
    { name: 'price', label: 'Price of all of it', about: 'For example 14.50', most: 20 },
  ],
  opens: ({ do: action, ingredient, amount }) =>
    action === 'bought' && (ingredient === undefined || amount === undefined),
  say: ({ ingredient, amount, lot, best_before: best, price }) =>
    joined([
      ['bought ', amount ?? ''],
      [' ', ingredient ?? ''],
      [' lot ', lot],
      [', best before ', best],
      [', ', price],
    ]),
};
