import { ingredientById, ingredients } from '../ingredients.ts';
import { treatmentOf } from '../melt/treatment.ts';
import { type Carrier, carriersFor } from './backbones.ts';
import { wantedKeepsMonths } from './clashes.ts';
import { isFreelyAllowed } from './exclusions.ts';
import {
  accentPercents,
  antioxidants,
  butterPercents,
  butterSets,
  leastOilPercent,
  oilOrder,
} from './palette.ts';
import { cheaper, costFor, type PriceWish } from './price.ts';
import { type DesignLine, openPercent, type Sketch } from './sketch.ts';
import { sortWanted, type Wanted } from './wanted.ts';
import type { WantedIngredient, Wishes } from './wishes.ts';

const perKgOf = (wish: PriceWish): PriceWish => ({ ...wish, unit: { kind: 'kg' } });

/** On the shelf and with a price, where that is asked. */
const isAtHand = (id: string, { stock, price }: Wishes): boolean =>
  (stock?.has(id) ?? true) &&
  (!price || costFor([{ ingredient: id, percent: 100 }], perKgOf(price)) !== undefined);

/** What may be used without being asked for: allowed without a question, fit for lips, keeping long enough, priced and on the shelf where that is asked. */
const freelyUsed =
  (wishes: Wishes): ((id: string) => boolean) =>
  (id) => {
    const ingredient = ingredientById(id);
    if (ingredient?.lips !== 'ok' || !isFreelyAllowed(ingredient, wishes)) return false;
    if ((ingredient.shelfLifeMonths?.low ?? Infinity) < (wishes.shelfLifeMonths ?? 0)) return false;
    if (!isAtHand(id, wishes)) return false;
    return treatmentOf(ingredient).kind === 'melts';
  };

/** Soft butters that fill up where there may be no liquid oil. */
const softFillers = ['shea-butter', 'mango-butter', 'coconut-oil', 'cupuacu-butter', 'babassu-oil'];

/** Where the price counts the cheapest comes first; else the order as it is. */
const cheapestFirst = (ids: readonly string[], price: PriceWish | undefined): readonly string[] => {
  if (!price) return ids;
  const cost = new Map(
    ids.map((id) => [id, costFor([{ ingredient: id, percent: 100 }], perKgOf(price))] as const),
  );
  return ids
    .filter((id) => accentPercents[id] === undefined)
    .toSorted((a, b) => cheaper(cost.get(a), cost.get(b)));
};

const fillersFor = (
  wanted: Wanted,
  free: (id: string) => boolean,
  price: PriceWish | undefined,
): Sketch['fillers'] => {
  const own = wanted.fillers;
  const rest = ingredients.filter(({ kind, allergen }) => kind === 'liquid-oil' && allergen.flag === 'none');
  const order = [...oilOrder, ...rest.map(({ id }) => id).filter((id) => accentPercents[id] === undefined)];
  const settled = new Set(wanted.settled.map(({ ingredient }) => ingredient));
  const fit = (id: string): boolean => free(id) && !settled.has(id);
  const oil = own.length > 0 ? own : cheapestFirst(order.filter(fit), price).slice(0, 1);
  const [first, ...others] = oil.length > 0 ? oil : softFillers.filter(fit).slice(0, 1);
  if (first === undefined) return [];
  const infused = wanted.herb === undefined ? {} : { infusedWith: wanted.herb };
  return [{ ingredient: first, ...infused }, ...others.map((ingredient) => ({ ingredient }))];
};

interface Butters {
  readonly lines: readonly DesignLine[];
  readonly key: string;
  readonly cost: number;
}

const split = (ids: readonly string[], percent: number): readonly DesignLine[] => {
  const each = Math.floor(percent / ids.length);
  return ids.map((ingredient, place) => ({
    ingredient,
    percent: place === 0 ? percent - each * (ids.length - 1) : each,
  }));
};

/** Least whole percent of each butter that was asked for without a share. */
const leastButterPercent = 3;

const wantedButters = (
  wanted: readonly WantedIngredient[],
  percents: readonly number[],
): readonly Butters[] => {
  const open = wanted.filter(({ percent }) => percent === undefined).map(({ ingredient }) => ingredient);
  const given = wanted.flatMap(({ ingredient, percent }) =>
    percent === undefined ? [] : [{ ingredient, percent }],
  );
  const givenPercent = given.reduce((all, { percent }) => all + percent, 0);
  const key = wanted.map(({ ingredient }) => ingredient).join('+');
  if (open.length === 0) return [{ lines: given, key, cost: 0 }];
  return percents.map((percent, place) => {
    const left = Math.max(leastButterPercent * open.length, percent - givenPercent);
    return { lines: [...given, ...split(open, left)], key, cost: place / 10 };
  });
};

/** Most sets of butters that are looked at, besides none: the search has to stay short. */
const mostButterSets = 4;

const freeButters = (percents: readonly number[], free: (id: string) => boolean): readonly Butters[] => {
  const [none, ...sets] = butterSets.filter(({ butters }) => butters.every(free));
  return [
    ...sets.slice(0, mostButterSets).flatMap(({ butters, cost }) =>
      percents.map((percent, place) => ({
        lines: split(butters, percent),
        key: butters.join('+'),
        cost: cost + place / 10,
      })),
    ),
    ...(none ? [{ lines: [], key: '', cost: none.cost }] : []),
  ];
};

const buttersFor = (wishes: Wishes, wanted: Wanted, free: (id: string) => boolean): readonly Butters[] => {
  const percents = butterPercents[wishes.form];
  return wanted.butters.length > 0 ? wantedButters(wanted.butters, percents) : freeButters(percents, free);
};

const keepersFor = (wanted: Wanted, free: (id: string) => boolean): readonly DesignLine[] => {
  const own = wanted.settled.some(({ ingredient }) => {
    const known = ingredientById(ingredient);
    return known?.kind === 'additive' && known.additive.group === 'antioxidant';
  });
  return own ? [] : antioxidants.filter(({ ingredient }) => free(ingredient));
};

const sketchOf = (
  carrier: Carrier,
  butters: Butters,
  settled: readonly DesignLine[],
  fillers: Sketch['fillers'],
): Sketch => ({
  main: carrier.main,
  // A butter that carries the balm itself stands in the main line only.
  fixed: [
    ...carrier.partners,
    ...butters.lines.filter(({ ingredient }) => ingredient !== carrier.main.ingredient),
    ...settled,
  ],
  fillers,
  cost: carrier.cost + butters.cost,
  butters: butters.key,
});

/** Leaves room for oil: a wanted oil has to be in, and a balm of wax and butter alone crumbles. */
const withRoom = (sketch: Sketch): readonly Sketch[] => {
  const oil = sketch.fixed.filter(({ ingredient }) => ingredientById(ingredient)?.kind === 'liquid-oil');
  const given = oil.reduce((all, { percent }) => all + percent, 0);
  // Each filler has to be felt: it may be the oil that was asked for, or the one a herb is steeped in.
  const least = Math.max(sketch.fillers.length, leastOilPercent - given);
  const high = Math.min(sketch.main.high, openPercent(sketch) - least);
  return high < sketch.main.low ? [] : [{ ...sketch, main: { ...sketch.main, high } }];
};

const named = ({ main, fixed, fillers }: Sketch): readonly string[] =>
  [main, ...fixed, ...fillers].map(({ ingredient }) => ingredient);

/** An ingredient stands in one line only. */
const once = (sketch: Sketch): boolean => new Set(named(sketch)).size === named(sketch).length;

/** Everything worth looking at for these wishes, with the shares of the main line still open. */
export const sketchesFor = (wishes: Wishes): readonly Sketch[] => {
  if (wantedKeepsMonths(wishes) < (wishes.shelfLifeMonths ?? 0)) return [];
  const wanted = sortWanted(wishes);
  const free = freelyUsed(wishes);
  const asked = new Set(wishes.with.map(({ ingredient }) => ingredient));
  const settled = [...wanted.settled, ...keepersFor(wanted, free)];
  const fillers = fillersFor(wanted, free, wishes.price);
  if (fillers.length === 0) return [];
  const butters = buttersFor(wishes, wanted, free);
  return carriersFor(wishes, (id) => free(id) || asked.has(id)).flatMap((carrier) =>
    butters.flatMap((each) => withRoom(sketchOf(carrier, each, settled, fillers))).filter(once),
  );
};
