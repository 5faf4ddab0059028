import { type Costs, costOf, labourFor } from '../../core/cost/cost.ts';
import { type Prices, priceOf, withSupposed } from '../../core/cost/prices.ts';
import { defined } from '../../core/defined.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import { type Scaled, scaleRecipe } from '../../core/scale.ts';
import type { Target } from '../../core/target.ts';
import type { Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { CostWish } from '../topics/cost.ts';
import { findRecipe } from './find-recipe.ts';
import { troubleOf } from './problems.ts';

/** A batch with its costs. */
export interface Costed {
  readonly name?: string;
  readonly lines: readonly RecipeLine[];
  readonly scaled: Scaled;
  readonly costs: Costs;
  readonly prices: Prices;
  /** What it is reckoned in: the group's currency. */
  readonly currency: string;
  readonly container?: string;
  readonly size?: { readonly amount: number; readonly unit: 'g' | 'ml' };
  readonly labour?: { readonly ratePerHour: string; readonly hours: number };
  readonly assumed: readonly string[];
}

const targetOf = (batch: NonNullable<CostWish['batch']>): Target | undefined => {
  const fill =
    batch.size && (batch.size.unit === 'g' ? { grams: batch.size.amount } : { ml: batch.size.amount });
  const filled = defined({ fill });
  if (batch.limit) return { kind: 'limit', ...batch.limit, ...filled };
  if (batch.count !== undefined && fill) return { kind: 'containers', count: batch.count, fill };
  if (batch.totalG !== undefined) return { kind: 'mass', grams: batch.totalG, ...filled };
  if (batch.totalMl !== undefined) return { kind: 'volume', ml: batch.totalMl, ...filled };
  return batch.factor === undefined ? undefined : { kind: 'multiple', factor: batch.factor, ...filled };
};

const noBatch: Trouble = {
  code: 'missing',
  text: 'The cost of what? For example "cost of Fernlea hand balm for 24 tins of 15 ml".',
};

const containerWords = ['tin', 'jar', 'pot', 'tube', 'stick', 'bottle', 'tub', 'vial'];

/** The one kind of container that has a price, where the message names none. */
const onlyContainer = (prices: Prices): string | undefined => {
  const named = containerWords.filter((word) =>
    Object.keys(prices).some((thing) => thing === word || thing.startsWith(`${word}-`)),
  );
  return named.length === 1 ? named[0] : undefined;
};

interface Container {
  readonly name?: string;
  readonly assumed: readonly string[];
}

const containerOf = (wish: CostWish, prices: Prices, counted: boolean): Container => {
  if (!counted) return { assumed: [] };
  if (wish.container !== undefined) return { name: wish.container, assumed: [] };
  const only = onlyContainer(prices);
  return only === undefined
    ? { name: 'tin', assumed: ['No container was named: I took tins.'] }
    : { name: only, assumed: [`No container was named: I took the ${only}, the only one with a price.`] };
};

/** What goes with each container, counted where it has a price. */
const partWords = ['lid', 'label', 'sticker', 'seal', 'sleeve'];

const partsWithPrice = (prices: Prices): readonly string[] =>
  partWords.filter((word) =>
    Object.keys(prices).some((thing) => thing === word || thing.startsWith(`${word}-`)),
  );

/** Scales these lines to what the wish asks for and reckons them at the group's prices. */
export const costLinesOf = (
  wish: CostWish,
  lines: readonly RecipeLine[],
  tools: Tools,
  name: string | undefined,
): Costed | Trouble => {
  const { batch } = wish;
  const target = batch && targetOf(batch);
  if (!batch || !target) return noBatch;
  const { settings } = tools;
  const scaled = scaleRecipe({
    lines,
    target,
    lossPercent: batch.lossPercent ?? settings.lossPercent,
    stepG: batch.stepG ?? settings.stepG,
    region: settings.region,
  });
  if (!scaled.ok) return troubleOf(scaled.problem);
  const prices = withSupposed(
    tools.book.state.prices ?? {},
    (wish.suppose ?? []).map(({ on: _on, currency: _currency, ...price }) => ({
      ...price,
      currency: settings.currency,
    })),
  );
  const container = containerOf(wish, prices, scaled.value.containers !== undefined);
  const { currency } = settings;
  const labour = wish.one ? undefined : labourFor(tools.book.state.labour, wish.hours, currency);
  const counted =
    container.name === undefined
      ? undefined
      : { name: container.name, parts: partsWithPrice(prices), ...defined({ holds: batch.size }) };
  const costs = costOf({
    scaled: scaled.value,
    prices,
    currency,
    ...defined({ labour, container: counted }),
  });
  return {
    lines,
    scaled: scaled.value,
    costs,
    prices,
    currency,
    assumed: container.assumed,
    ...defined({ name, container: container.name, size: batch.size, labour }),
  };
};

/** The batch a wish asks for, with its costs; or what is missing. */
export const costBatch = (wish: CostWish, tools: Tools): Costed | Trouble => {
  const { batch } = wish;
  if (!batch) return noBatch;
  const recipe = batch.recipe === undefined ? undefined : findRecipe(batch.recipe, tools.book);
  if (recipe && 'code' in recipe) return recipe;
  return costLinesOf(wish, recipe?.lines ?? batch.lines ?? [], tools, recipe?.name);
};

/** True when some of the prices used have VAT in them and some have not. */
export const mixesVat = ({ scaled, prices }: Costed): boolean => {
  const said = new Set(scaled.lines.map(({ ingredient }) => priceOf(prices, ingredient)?.vat));
  return said.has('incl') && (said.has('excl') || said.has(undefined));
};
