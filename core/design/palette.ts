import type { Form } from './wishes.ts';

/**
 * What the search draws from. Shares of butters and oils, and which go first, are common practice without a source;
 * shares of waxes, aroma and additives are the usual ranges of the library.
 */

/** The structure of a balm: one ingredient whose share is searched, and a second one at a fixed share beside it. */
export interface Backbone {
  readonly main: string;
  readonly partner?: { readonly ingredient: string; readonly percent: number };
  /** Added to a candidate's cost: how far it is from what makers reach for first. */
  readonly cost: Readonly<Record<Form, number>>;
}

const costs = (stick: number, tin: number, tube: number): Backbone['cost'] => ({ stick, tin, tube });

/**
 * Carnauba only as a partner at 3 %: laboratories and makers disagree about it. Rice bran wax alone is a weak stick.
 * Two waxes cost a little, because pairs may come out softer or harder than the sum.
 */
export const waxBackbones: readonly Backbone[] = [
  { main: 'beeswax', cost: costs(0, 0, 0) },
  { main: 'candelilla-wax', cost: costs(0.2, 0.2, 0.8) },
  { main: 'sunflower-wax', cost: costs(0.8, 0.6, 0.9) },
  { main: 'rice-bran-wax', cost: costs(1.4, 0.7, 1) },
  { main: 'beeswax', partner: { ingredient: 'candelilla-wax', percent: 5 }, cost: costs(0.7, 0.9, 1.2) },
  { main: 'beeswax', partner: { ingredient: 'carnauba-wax', percent: 3 }, cost: costs(0.8, 1, 1.3) },
  { main: 'candelilla-wax', partner: { ingredient: 'carnauba-wax', percent: 3 }, cost: costs(0.8, 1, 1.3) },
  { main: 'candelilla-wax', partner: { ingredient: 'rice-bran-wax', percent: 4 }, cost: costs(1, 1.1, 1.4) },
  { main: 'beeswax', partner: { ingredient: 'sunflower-wax', percent: 3 }, cost: costs(1, 1.2, 1.5) },
  { main: 'candelilla-wax', partner: { ingredient: 'sunflower-wax', percent: 3 }, cost: costs(1, 1.2, 1.5) },
  { main: 'sunflower-wax', partner: { ingredient: 'carnauba-wax', percent: 3 }, cost: costs(1.3, 1.3, 1.6) },
  { main: 'rice-bran-wax', partner: { ingredient: 'carnauba-wax', percent: 3 }, cost: costs(1.5, 1.4, 1.7) },
];

/** Never proposed alone unless it is asked for and nothing else fits. */
export const carnaubaAlone: Backbone = { main: 'carnauba-wax', cost: costs(3, 2, 2) };

/**
 * Balms without any wax, carried by a hard butter: for the finger only, because a stick of butters goes soft in the hand
 * that pushes it up. They melt on a hot day, so a wax is always preferred.
 */
export const butterBackbones: readonly Backbone[] = [
  { main: 'cocoa-butter', cost: costs(4, 3, 3) },
  { main: 'kokum-butter', cost: costs(4, 3.2, 3.2) },
  { main: 'mango-butter', cost: costs(4, 3.4, 3.4) },
  { main: 'illipe-butter', cost: costs(4, 3.6, 3.6) },
  { main: 'shea-butter', cost: costs(4, 3.6, 3.2) },
];

/** Share in percent of a hard butter that carries a balm alone. */
export const butterBackbonePercent = { low: 10, high: 70 } as const;

export interface ButterSet {
  readonly butters: readonly string[];
  readonly cost: number;
}

/** Butters that go together, none first, then the best known; the first of a set gets the odd percent. */
export const butterSets: readonly ButterSet[] = [
  { butters: [], cost: 0.6 },
  { butters: ['shea-butter'], cost: 0 },
  { butters: ['cocoa-butter'], cost: 0.05 },
  { butters: ['mango-butter'], cost: 0.1 },
  { butters: ['shea-butter', 'cocoa-butter'], cost: 0.1 },
  { butters: ['coconut-oil'], cost: 0.3 },
  { butters: ['kokum-butter', 'shea-butter'], cost: 0.3 },
  { butters: ['cupuacu-butter'], cost: 0.5 },
  { butters: ['babassu-oil'], cost: 0.5 },
];

/** Percent of butters all together, by form, the usual amount first. */
export const butterPercents: Readonly<Record<Form, readonly number[]>> = {
  stick: [25, 15],
  tin: [30, 20],
  tube: [15, 8],
};

/** Usual share in percent of one butter that was asked for by name. */
export const butterRangePercent = { low: 3, high: 60 } as const;

/** Liquid oils in the order in which they are taken: how long they keep, feel and price (common practice). */
export const oilOrder: readonly string[] = [
  'olive-oil',
  'jojoba-oil',
  'high-oleic-sunflower-oil',
  'meadowfoam-oil',
  'castor-oil',
  'moringa-oil',
  'fractionated-coconut-oil',
  'sunflower-oil',
  'rice-bran-oil',
  'canola-oil',
  'avocado-oil',
  'camellia-seed-oil',
  'apricot-kernel-oil',
  'baobab-oil',
  'safflower-oil',
  'grapeseed-oil',
  'corn-oil',
];

/** Oils that are used in a small share: quick to go rancid, strongly coloured, sticky or dear. In percent. */
export const accentPercents: Readonly<Record<string, number>> = {
  'castor-oil': 15,
  'rosehip-oil': 5,
  'hemp-seed-oil': 5,
  'evening-primrose-oil': 5,
  'borage-oil': 5,
  'flaxseed-oil': 3,
  'walnut-oil': 5,
  'pumpkin-seed-oil': 5,
  'wheat-germ-oil': 3,
  'raspberry-seed-oil': 5,
  'black-cumin-seed-oil': 2,
  'tamanu-oil': 3,
  'argan-oil': 10,
  'sea-buckthorn-fruit-oil': 1,
  'sea-buckthorn-seed-oil': 3,
};

/** Slows rancidity; goes in wherever it may. */
export const antioxidants: readonly { readonly ingredient: string; readonly percent: number }[] = [
  { ingredient: 'vitamin-e', percent: 0.5 },
];

/** Least liquid oil in percent, so that a balm glides and does not crumble; a hard one may drag. */
export const leastOilPercent = 10;
