import { coins, coinText, minorDigits } from '../../core/cost/money.ts';
import { alikeScore, byPrice, type Priced, pricedIn } from '../../core/substitute/cheapest.ts';
import type { Mix } from '../../core/substitute/mix.ts';
import type { Ranking } from '../../core/substitute/rank.ts';
import type { Answer, Block } from '../answer.ts';
import type { Tools } from '../topic.ts';
import { inTurns } from '../turns.ts';
import { figure } from './cost-money.ts';
import { moneyMove } from './substitute-cost.ts';
import { shortName } from './warnings.ts';

export interface PriceTold {
  readonly blocks: readonly Block[];
  readonly figures: Answer['figures'];
  /** Ids in the order of their price. */
  readonly order: readonly string[];
}

const mostShown = 5;
/** Names without a price that are worth saying: the best likenesses. */
const mostMissing = 6;

const row =
  (currency: string) =>
  ({ candidate, change }: Priced): readonly string[] => {
    const digits = minorDigits(currency);
    const told = change.perKg
      ? moneyMove(change.perKg, currency)
      : `${change.comesTo ? coinText(coins(change.comesTo, digits), digits) : ''} ${currency}`;
    return [shortName(candidate.ingredient), told, String(candidate.score)];
  };

/** Things without a price, the candidates most alike first; each once. */
const missingIn = (priced: readonly Priced[]): readonly string[] => [
  ...new Set(priced.flatMap(({ change }) => change.missing.map(({ thing }) => thing))),
];

const missingText = (missing: readonly string[], old: string): Block[] => {
  if (missing.length === 0) return [];
  const names = missing.slice(0, mostMissing).map(shortName).join(', ');
  const more = missing.length > mostMissing ? ` and ${missing.length - mostMissing} more` : '';
  return [
    {
      kind: 'assumed',
      text: `No price that fits is noted for ${names}${more}. Note one: "${shortName(missing.find((id) => id !== old) ?? old)} 12 per kg".`,
    },
  ];
};

const figuresOf = (ordered: readonly Priced[], missing: readonly string[], currency: string) => {
  const digits = minorDigits(currency);
  return {
    by: 'price',
    by_price: ordered.map(({ candidate, change }) => ({
      ingredient: candidate.ingredient,
      score: candidate.score,
      cost_change_per_kg: change.perKg ? figure(coins(change.perKg, digits), digits) : null,
      cost_per_kg: change.comesTo ? figure(coins(change.comesTo, digits), digits) : null,
    })),
    currency,
    missing_prices: [...missing],
  };
};

/** Candidates alike enough, by what they do to the cost of a kilogram; missing prices named. */
export const priceTold = async (
  old: string,
  mix: Mix,
  ranking: Ranking,
  tools: Tools,
): Promise<PriceTold> => {
  const { currency } = tools.settings;
  const alike = ranking.candidates.filter(({ score }) => score >= alikeScore);
  const priced = await inTurns(pricedIn(mix, old, alike, { prices: tools.book.state.prices, currency }));
  const ordered = byPrice(priced);
  const missing = missingIn(priced);
  const told: Block[] =
    ordered.length > 0
      ? [
          {
            kind: 'table',
            columns: [
              { title: 'instead', align: 'left' },
              { title: '1 kg of balm', align: 'right' },
              { title: 'score', align: 'right' },
            ],
            rows: ordered.slice(0, mostShown).map(row(currency)),
          },
          {
            kind: 'assumed',
            text: `Cheapest first, among those with a score of ${alikeScore} or more, each with as much as the recipe needs of it.`,
          },
        ]
      : [
          {
            kind: 'text',
            text: 'I cannot tell the cheapest: of those alike enough none has a price in this book.',
          },
        ];
  return {
    blocks: [...told, ...missingText(missing, old)],
    figures: figuresOf(ordered, missing, currency),
    order: ordered.map(({ candidate }) => candidate.ingredient),
  };
};
