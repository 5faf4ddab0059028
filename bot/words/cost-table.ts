import type { Costs, MissingPrice } from '../../core/cost/cost.ts';
import { coinText } from '../../core/cost/money.ts';
import type { Settings } from '../../core/settings.ts';
import { stepDecimals } from '../../core/steps.ts';
import { gramsIn } from '../../core/units.ts';
import type { Answer, Block } from '../answer.ts';
import type { Costed } from './cost-batch.ts';
import { amountText, containersText, figure, thingName } from './cost-money.ts';
import { atStep, plain } from './numbers.ts';
import { shortName } from './warnings.ts';

const why: Readonly<Record<MissingPrice['why'], string>> = {
  none: '',
  'other-currency': ' (noted in another currency: "currency GBP" and the like changes yours)',
  'no-density': ' (priced by volume, and I know no density: give a price by weight)',
  'wrong-kind': ' (its price is for something else: by weight for ingredients, each for containers)',
};

export const missingText = (missing: readonly MissingPrice[]): string =>
  missing.map((each) => `${thingName(each.thing)}${why[each.why]}`).join(', ');

const ounces = (grams: number): string => (grams / gramsIn('oz')).toFixed(2);

/** Lines with what each costs; a line without a price is left open. */
export const costTable = ({ scaled, costs }: Costed, currency: string, units: Settings['units']): Block => {
  const decimals = stepDecimals(scaled.stepG);
  const oz = (grams: number): string[] => (units === 'oz' ? [ounces(grams)] : []);
  return {
    kind: 'table',
    columns: [
      { title: 'ingredient', align: 'left' },
      { title: 'g', align: 'right' },
      ...(units === 'oz' ? [{ title: 'oz', align: 'right' } as const] : []),
      { title: currency, align: 'right' },
    ],
    rows: costs.lines.map(({ ingredient, grams, coins, strained }) => [
      `${shortName(ingredient)}${strained ? ' (strained)' : ''}`,
      atStep(grams, decimals),
      ...oz(grams),
      coins === undefined ? '?' : coinText(coins, costs.digits),
    ]),
    total: [
      'ingredients',
      atStep(scaled.totalG, decimals),
      ...oz(scaled.totalG),
      coinText(costs.ingredients, costs.digits),
    ],
  };
};

const isOpen = ({ missing }: Costs): boolean => missing.length > 0;

const labourLine = ({ costs, labour }: Costed, currency: string): string[] =>
  labour
    ? [
        `Labour: ${labour.hours} ${labour.hours === 1 ? 'hour' : 'hours'} at ${plain(Number(labour.ratePerHour))} = ${amountText(costs.labour, costs.digits, currency)}.`,
      ]
    : [];

/** ", each with lid and label": what is priced beside the container. */
const withParts = ({ costs }: Costed): string =>
  costs.parts.length === 0 ? '' : `, each with ${costs.parts.map(({ thing }) => thing).join(' and ')}`;

/** Containers, labour, total and per container, in sentences. */
export const costLines = (costed: Costed, currency: string): readonly string[] => {
  const { costs, scaled, container, size } = costed;
  const money = (coins: bigint): string => amountText(coins, costs.digits, currency);
  const count = scaled.containers;
  const containerMissing = costs.missing.some((each) => each.thing === container);
  const each =
    costs.perContainer === undefined
      ? ''
      : ` That is ${money(costs.perContainer)} for each ${container ?? 'container'}.`;
  return [
    ...(count !== undefined && container && !containerMissing
      ? [`${containersText(count, container, size)}${withParts(costed)}: ${money(costs.containers)}.`]
      : []),
    ...labourLine(costed, currency),
    isOpen(costs)
      ? `So far ${money(costs.total)}, without ${missingText(costs.missing)}. I guess no price: note the missing ones, for example "${thingName(costs.missing[0]?.thing ?? 'shea')} ${ingredientOrTin(costed)}".`
      : `In all ${money(costs.total)}, the loss included.${each}`,
  ];
};

const ingredientOrTin = ({ costs, container }: Costed): string =>
  costs.missing[0]?.thing === container ? '0.35 each' : '18 per kg';

const tidyLines = ({ lines, digits }: Costs): Answer['figures'][string] =>
  lines.map(({ ingredient, grams, coins }) => ({
    ingredient,
    grams,
    cost: coins === undefined ? null : figure(coins, digits),
  }));

/** The contract's figures. Sums that a missing price would make wrong are null, never a part of the truth. */
export const costFigures = (costed: Costed, currency: string): Answer['figures'] => {
  const { costs, scaled, container, labour } = costed;
  const lacks = (thing: string): boolean => costs.missing.some((each) => each.thing === thing);
  const known = costs.lines.some((line) => line.coins !== undefined);
  const counted = scaled.containers !== undefined && container !== undefined;
  return {
    lines: tidyLines(costs),
    ingredients_cost: known ? figure(costs.ingredients, costs.digits) : null,
    ingredients_complete: costs.lines.every((line) => line.coins !== undefined),
    containers_cost: counted && !lacks(container) ? figure(costs.containers, costs.digits) : null,
    parts_cost: costs.parts.map(({ thing, coins }) => ({ thing, cost: figure(coins, costs.digits) })),
    labour_cost: labour ? figure(costs.labour, costs.digits) : null,
    total_cost: isOpen(costs) ? null : figure(costs.total, costs.digits),
    per_container: costs.perContainer === undefined ? null : figure(costs.perContainer, costs.digits),
    currency,
    missing_prices: costs.missing.map((each) => each.thing),
    containers: scaled.containers ?? null,
    container: counted ? container : null,
    total_g: scaled.totalG,
    net_g: scaled.netG,
    allowance_g: scaled.allowanceG,
    step_g: scaled.stepG,
  };
};
