import { ingredientById } from '../ingredients.ts';
import type { Scaled } from '../scale.ts';
import { coins, type Money, minorDigits, money, ofCoins, plus, portion, shareCoins, sumOf } from './money.ts';
import { containerThing, type KeptPrice, type Labour, type Prices, priceFor, priceOf } from './prices.ts';

/** A millionth of a gram or millilitre: exact for every pack and every step of a scale. */
const perUnit = 1_000_000;
const micro = (amount: number): bigint => BigInt(Math.round(amount * perUnit));

/** Why a price is missing: nobody noted one, it is in another currency, or a volume has no density to weigh it by. */
export type MissingPrice = {
  readonly thing: string;
  readonly why: 'none' | 'other-currency' | 'no-density' | 'wrong-kind';
};

export interface CostLine {
  readonly ingredient: string;
  readonly grams: number;
  /** Smallest coins; missing where there is no price. The lines' coins sum to the ingredients' coins. */
  readonly coins?: bigint;
  readonly strained?: boolean;
}

export interface CostRequest {
  readonly scaled: Pick<Scaled, 'lines' | 'strained' | 'containers'>;
  readonly prices: Prices | undefined;
  readonly currency: string;
  /** The container's word ("tin"), what it holds, and what each has beside ("lid", "label"), if they are counted at all. */
  readonly container?: {
    readonly name: string;
    readonly holds?: { readonly amount: number; readonly unit: 'g' | 'ml' };
    readonly parts?: readonly string[];
  };
  readonly labour?: { readonly ratePerHour: string; readonly hours: number };
}

export interface Costs {
  readonly lines: readonly CostLine[];
  readonly missing: readonly MissingPrice[];
  readonly ingredients: bigint;
  /** Containers with their lids and labels. */
  readonly containers: bigint;
  /** What of that each lid and label makes; they sum to the containers with the container itself. */
  readonly parts: readonly { readonly thing: string; readonly coins: bigint }[];
  readonly labour: bigint;
  /** All that is known, in smallest coins: the sum of the three above. */
  readonly total: bigint;
  /** The total shared over the containers, rounded half up; missing when a price is missing or nothing is counted. */
  readonly perContainer?: bigint;
  readonly digits: number;
  /** Exact total, for margins. */
  readonly exact: Money;
  /** Things whose volume price was weighed through the density. */
  readonly byDensity: readonly { readonly ingredient: string; readonly densityGMl: number }[];
}

type LineCost =
  | { readonly cost: Money; readonly densityGMl?: number }
  | { readonly missing: MissingPrice['why'] };

/** Cost of some grams at a pack's price, exactly. */
const lineCost = (
  ingredient: string,
  grams: number,
  price: KeptPrice | undefined,
  currency: string,
): LineCost => {
  if (!price) return { missing: 'none' };
  if (price.currency !== currency) return { missing: 'other-currency' };
  const { amount, unit } = price.pack;
  if (unit === 'each') return { missing: 'wrong-kind' };
  const density = unit === 'ml' ? ingredientById(ingredient)?.densityGMl?.value : 1;
  if (density === undefined) return { missing: 'no-density' };
  const packG = amount * density;
  return {
    cost: portion(money(price.price), micro(grams), micro(packG)),
    ...(unit === 'ml' ? { densityGMl: density } : {}),
  };
};

/** What some grams of an ingredient cost at the noted price, exactly; or why there is no telling. */
export const priceOfGrams = (
  ingredient: string,
  grams: number,
  prices: Prices | undefined,
  currency: string,
): { readonly cost: Money } | { readonly missing: MissingPrice } => {
  const line = lineCost(ingredient, grams, priceFor(prices, ingredient), currency);
  return 'missing' in line ? { missing: { thing: ingredient, why: line.missing } } : { cost: line.cost };
};

const weighed = ({ scaled }: CostRequest): { ingredient: string; grams: number; strained?: boolean }[] => [
  ...scaled.lines.map(({ ingredient, grams }) => ({ ingredient, grams })),
  ...scaled.strained.map(({ ingredient, grams }) => ({ ingredient, grams, strained: true })),
];

interface PieceCost {
  readonly thing: string;
  readonly cost: Money;
  readonly missing?: MissingPrice;
}

/** So many pieces at a pack's price. */
const pieceCost = (
  thing: string,
  count: number,
  price: KeptPrice | undefined,
  currency: string,
): PieceCost => {
  const none = { thing, cost: ofCoins(0n, 0) };
  if (!price) return { ...none, missing: { thing, why: 'none' } };
  if (price.currency !== currency) return { ...none, missing: { thing, why: 'other-currency' } };
  if (price.pack.unit !== 'each') return { ...none, missing: { thing, why: 'wrong-kind' } };
  return { thing, cost: portion(money(price.price), micro(count), micro(price.pack.amount)) };
};

/** The container first, then a lid, a label and so on for each. */
const pieceCosts = ({ scaled, container, prices, currency }: CostRequest): readonly PieceCost[] => {
  const count = scaled.containers;
  if (!container || count === undefined) return [];
  const priced = (thing: string): KeptPrice | undefined =>
    priceOf(prices, containerThing(thing, container.holds)) ?? priceOf(prices, thing);
  return [container.name, ...(container.parts ?? [])].map((thing) =>
    pieceCost(thing, count, priced(thing), currency),
  );
};

const labourCost = ({ labour }: CostRequest): Money =>
  labour ? portion(money(labour.ratePerHour), micro(labour.hours), micro(1)) : ofCoins(0n, 0);

const missingOf = (things: readonly MissingPrice[]): MissingPrice[] => [
  ...new Map(things.map((each) => [each.thing, each])).values(),
];

/** Lids and labels without the container itself, which is the rest. */
const pieceShares = (pieces: readonly PieceCost[], sum: bigint): Costs['parts'] => {
  const shares = shareCoins(
    pieces.map(({ cost }) => cost),
    sum,
  );
  return pieces.map(({ thing }, at) => ({ thing, coins: shares[at] ?? 0n })).slice(1);
};

/**
 * What a weigh-out costs at the noted prices. Every sum is exact and rounded half up once; the lines are shared so
 * that they sum to the ingredients' rounded cost. A missing price is named and never guessed.
 */
export const costOf = (request: CostRequest): Costs => {
  const digits = minorDigits(request.currency);
  const all = weighed(request).map((line) => ({
    line,
    at: lineCost(line.ingredient, line.grams, priceFor(request.prices, line.ingredient), request.currency),
  }));
  const known = all.map(({ at }) => ('cost' in at ? at.cost : ofCoins(0n, 0)));
  const ingredients = coins(sumOf(known), digits);
  const shares = shareCoins(known, ingredients);
  const pieces = pieceCosts(request);
  const pieceSum = sumOf(pieces.map(({ cost }) => cost));
  const labour = labourCost(request);
  const missing = missingOf([
    ...all.flatMap(({ line, at }) => ('missing' in at ? [{ thing: line.ingredient, why: at.missing }] : [])),
    ...pieces.flatMap((piece) => piece.missing ?? []),
  ]);
  const sums = [ingredients, coins(pieceSum, digits), coins(labour, digits)] as const;
  const total = sums[0] + sums[1] + sums[2];
  const count = request.scaled.containers;
  const each =
    missing.length === 0 && count !== undefined && count > 0
      ? coins(portion(ofCoins(total, digits), 1n, BigInt(count)), digits)
      : undefined;
  return {
    lines: all.map(({ line, at }, index) => ({
      ...line,
      ...('cost' in at ? { coins: shares[index] ?? 0n } : {}),
    })),
    missing,
    ingredients: sums[0],
    containers: sums[1],
    parts: pieceShares(pieces, sums[1]),
    labour: sums[2],
    total,
    ...(each === undefined ? {} : { perContainer: each }),
    digits,
    exact: plus(plus(sumOf(known), pieceSum), labour),
    byDensity: all.flatMap(({ line, at }) =>
      'cost' in at && at.densityGMl !== undefined
        ? [{ ingredient: line.ingredient, densityGMl: at.densityGMl }]
        : [],
    ),
  };
};

/** Labour that counts: the set rate for the hours said, or for the hours a batch usually takes. */
export const labourFor = (
  labour: Labour | undefined,
  hours: number | undefined,
  currency: string,
): { readonly ratePerHour: string; readonly hours: number } | undefined => {
  if (!labour || labour.ratePerHour === null || labour.currency !== currency) return undefined;
  const counted = hours ?? labour.hours;
  return counted === undefined ? undefined : { ratePerHour: labour.ratePerHour, hours: counted };
};
