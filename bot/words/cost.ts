import { minorDigits } from '../../core/cost/money.ts';
import { pricedAs, priceOf } from '../../core/cost/prices.ts';
import { defined } from '../../core/defined.ts';
import type { Answer, Block, NextStep, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { CostWish } from '../topics/cost.ts';
import { type Costed, costBatch, mixesVat } from './cost-batch.ts';
import { marginOf } from './cost-margin.ts';
import { containersText, priceText, thingName } from './cost-money.ts';
import { missingPrices, pastPrices } from './cost-past.ts';
import { listPrices, notePrices, removePrice } from './cost-prices.ts';
import { swapEffect } from './cost-swap.ts';
import { costFigures, costLines, costTable } from './cost-table.ts';
import { plain } from './numbers.ts';
import { by } from './recipe-table.ts';
import { localRules, shortName } from './warnings.ts';

/** What was only supposed. */
const supposedText = ({ prices }: Costed, { suppose = [] }: CostWish): string[] =>
  suppose.flatMap(({ thing }) => {
    const kept = priceOf(prices, thing);
    const said = kept && priceText(kept, minorDigits(kept.currency));
    return said ? [`Reckoned as if ${thingName(thing)} were ${said}; nothing was noted.`] : [];
  });

const assumedOf = (costed: Costed, tools: Tools, wish: CostWish): string[] => {
  const one = wish.one === true;
  const { costs, assumed, labour } = costed;
  const rate = tools.book.state.labour?.ratePerHour;
  const infused = costed.scaled.lines.some((line) => line.infusedWith !== undefined);
  return [
    ...assumed,
    ...supposedText(costed, wish),
    ...costs.byDensity.map(
      ({ ingredient, densityGMl }) =>
        `${shortName(ingredient)} is priced by volume: weighed at ${densityGMl} g/ml.`,
    ),
    ...costed.scaled.lines
      .map(({ ingredient }) => [ingredient, pricedAs(tools.book.state.prices, ingredient)] as const)
      .filter(([ingredient, as]) => ingredient !== as)
      .map(
        ([ingredient, as]) =>
          `${shortName(ingredient)} has no price of its own: reckoned as ${shortName(as)}.`,
      ),
    ...(rate && !labour
      ? [
          one
            ? 'One container is reckoned without labour: that depends on how many you make.'
            : 'Your hourly rate is not counted: say how long it takes, for example "2 hours".',
        ]
      : []),
    ...(infused
      ? [
          'The oil that stays in the infused herb is not in this; nor is the herb, unless the recipe has it as a line.',
        ]
      : []),
    ...(mixesVat(costed)
      ? ['Some prices have VAT in them and others do not say so: I added them as they are.']
      : []),
    'Each sum is exact and rounded once, half up, to the smallest coin.',
  ];
};

const nextOf = (costed: Costed): NextStep[] =>
  costed.costs.missing.length > 0
    ? [{ label: 'Prices', say: 'prices' }]
    : [
        { label: 'Price for 50 %', say: 'what price for a margin of 50 %' },
        { label: 'Prices', say: 'prices' },
      ];

const titleOf = ({ name, scaled, container, size }: Costed): string => {
  const what = name ?? 'Your recipe';
  if (scaled.containers === undefined) return `Cost of ${what}: ${plain(scaled.totalG, 1)} g`;
  return `Cost of ${what}: ${containersText(scaled.containers, container, size)}`;
};

const warningsOf = ({ costs }: Costed): Warning[] => [
  ...(costs.missing.length > 0
    ? [{ code: 'missing-price', text: 'Prices are missing, so this is not the whole cost.' }]
    : []),
  localRules,
];

const answerBatch = (wish: CostWish, tools: Tools, first: readonly Block[] = []): Answer | Trouble => {
  const costed = costBatch(wish, tools);
  if ('code' in costed) return costed;
  const { currency } = costed;
  const margin = marginOf(wish, costed, currency);
  if (margin && 'code' in margin) return margin;
  const effect = swapEffect(wish, costed, tools);
  if (effect && 'code' in effect) return effect;
  return {
    title: titleOf(costed),
    blocks: [
      ...first,
      ...(margin ? [{ kind: 'text', text: margin.text } as const] : []),
      ...(effect ? [{ kind: 'text', text: effect.text } as const] : []),
      costTable(costed, currency, wish.units ?? tools.settings.units),
      ...costLines(costed, currency).map((text) => ({ kind: 'text', text }) as const),
      ...assumedOf(costed, tools, wish).map((text) => ({ kind: 'assumed', text }) as const),
    ],
    figures: { ...costFigures(costed, currency), ...(margin?.figures ?? {}), ...(effect?.figures ?? {}) },
    warnings: warningsOf(costed),
    next: nextOf(costed),
    quiet: true,
  };
};

const rateText = (rate: string | null, hours: number | undefined, currency: string): string => {
  if (rate === null) return 'Labour is no longer counted.';
  const usual = hours === undefined ? '' : `, ${plain(hours)} hours a batch unless you say otherwise`;
  return `Labour noted: ${rate} ${currency} an hour${usual}.`;
};

/** Keeps the hourly rate; after a cost was asked for, that batch is reckoned again with it. */
const setLabour = async (wish: CostWish, tools: Tools): Promise<Answer | Trouble> => {
  const { rate = null, hours, batch } = wish;
  const { currency } = tools.settings;
  await tools.book.record(
    { kind: 'labour-set', ratePerHour: rate, currency, ...defined({ hours }) },
    by(tools),
  );
  const text = rateText(rate, hours, currency);
  if (batch) return answerBatch({ ...wish, action: 'cost' }, tools, [{ kind: 'text', text }]);
  return {
    title: text,
    blocks: [],
    figures: { rate_per_hour: rate === null ? null : Number(rate), hours: hours ?? null, currency },
    warnings: [],
    quiet: true,
  };
};

/** Prices are noted first, and the batch is reckoned with them. */
const noteThenCost = async (wish: CostWish, tools: Tools): Promise<Answer | Trouble> => {
  const noted = await notePrices(wish, tools);
  if ('code' in noted) return noted;
  const text = `${noted.title}.`;
  return answerBatch({ ...wish, action: 'cost' }, tools, [{ kind: 'text', text }, ...noted.blocks]);
};

/** Answers everything about money. What it says is noted is on disk. */
export const answerCost = (wish: CostWish, tools: Tools): Answer | Trouble | Promise<Answer | Trouble> => {
  switch (wish.action) {
    case 'price':
      return wish.batch ? noteThenCost(wish, tools) : notePrices(wish, tools);
    case 'prices':
      return listPrices(wish, tools);
    case 'history':
      return pastPrices(wish, tools);
    case 'missing':
      return missingPrices(wish, tools);
    case 'remove':
      return removePrice(wish, tools);
    case 'labour':
      return setLabour(wish, tools);
    case 'cost':
      return answerBatch(wish, tools);
  }
};
