import { type Prices, priceOf } from '../cost/prices.ts';
import { ingredientById } from '../ingredients.ts';
import type { ScaleStep } from '../settings.ts';
import { gramsOfSteps, stepsNearest } from '../steps.ts';
import type { Ahead, InMelt } from './ahead.ts';
import type { SetAside } from './set-aside.ts';

/** One thing to buy. `gramsToBuy` is whole packs where the pack is known, else whole grams. */
export interface ToBuy {
  readonly ingredient: string;
  readonly needG: number;
  /** What the stock has of it; missing where no stock is kept. */
  readonly stockG?: number;
  readonly gramsToBuy: number;
  readonly packG?: number;
  readonly packs?: number;
}

export interface ShoppingRequest {
  readonly lines: readonly SetAside[];
  readonly ahead: readonly Ahead[];
  readonly inMelt: readonly InMelt[];
  readonly stepG: ScaleStep;
  readonly prices?: Prices | undefined;
  /** Grams in stock by ingredient, where the group keeps stock. */
  readonly stockG?: Readonly<Record<string, number>> | undefined;
}

interface Need {
  readonly ingredient: string;
  readonly grams: number;
}

/** Of an infused oil the base oil is bought, enough even if the herb keeps the most it is known to, and its herb. */
const needsOf = ({ lines, ahead, inMelt }: ShoppingRequest): Need[] => {
  const steeped = (line: SetAside): Ahead[] =>
    ahead.filter(
      ({ oil, herb, lineInfused }) =>
        oil === line.ingredient && line.infusedWith === (lineInfused ? herb : undefined),
    );
  const plain = lines.map((line) => {
    const own = steeped(line);
    const extra = own.reduce((sum, { infusion }) => sum + infusion.oilInSureG - infusion.oilOutG, 0);
    return { ingredient: line.ingredient, grams: line.grams + extra };
  });
  const herbs = [
    ...ahead.map(({ herb, infusion }) => ({ ingredient: herb, grams: infusion.herbG })),
    ...inMelt.map(({ herb, herbG }) => ({ ingredient: herb, grams: herbG })),
  ];
  return [...plain, ...herbs];
};

const summed = (needs: readonly Need[], stepG: ScaleStep): Need[] => {
  const steps = new Map<string, number>();
  for (const { ingredient, grams } of needs) {
    steps.set(ingredient, (steps.get(ingredient) ?? 0) + stepsNearest(grams, stepG));
  }
  return [...steps].map(([ingredient, count]) => ({ ingredient, grams: gramsOfSteps(count, stepG) }));
};

/** Grams in the pack this group buys, if it noted one; a volume through the density. */
const packOf = (ingredient: string, prices: Prices | undefined): number | undefined => {
  const pack = priceOf(prices, ingredient)?.pack;
  if (!pack || pack.unit === 'each') return undefined;
  if (pack.unit === 'g') return pack.amount;
  const density = ingredientById(ingredient)?.densityGMl?.value;
  return density === undefined ? undefined : pack.amount * density;
};

const tidy = (grams: number): number => Number(grams.toFixed(3));

/** Fewest packs that hold so much; none, and not minus none, for nothing. */
const wholePacks = (lacking: number, pack: number): number => Math.max(0, Math.ceil(lacking / pack - 1e-9));

const inStock = (stock: ShoppingRequest['stockG'], ingredient: string): number =>
  stock && Object.hasOwn(stock, ingredient) ? Math.max(0, stock[ingredient] ?? 0) : 0;

const toBuy = ({ ingredient, grams }: Need, { prices, stockG }: ShoppingRequest): ToBuy => {
  const there = inStock(stockG, ingredient);
  const lacking = Math.max(0, tidy(grams - there));
  const packG = packOf(ingredient, prices);
  const own = { ingredient, needG: grams, ...(stockG ? { stockG: tidy(there) } : {}) };
  if (packG === undefined) return { ...own, gramsToBuy: wholePacks(lacking, 1) };
  const packs = wholePacks(lacking, packG);
  return { ...own, gramsToBuy: tidy(packs * packG), packG: tidy(packG), packs };
};

/** What to buy of each ingredient: what is needed, less what is in stock, rounded up to whole packs or grams. */
export const shoppingList = (request: ShoppingRequest): readonly ToBuy[] =>
  summed(needsOf(request), request.stepG).map((need) => toBuy(need, request));

/** Containers to buy: for everybody and the spare, in whole packs where the price names how many come together. */
export interface ContainersToBuy {
  readonly container: string;
  readonly need: number;
  readonly toBuy: number;
  readonly pack?: number;
}

/** @param thing the priced thing, `tin-15-ml`; its plain word is looked up too. */
export const containersToBuy = (
  container: string,
  thing: string,
  need: number,
  prices: Prices | undefined,
): ContainersToBuy => {
  const pack = (priceOf(prices, thing) ?? priceOf(prices, container))?.pack;
  if (pack?.unit !== 'each' || pack.amount <= 1) return { container, need, toBuy: need };
  return {
    container,
    need,
    toBuy: Math.ceil(wholePacks(need, pack.amount) * pack.amount),
    pack: pack.amount,
  };
};
