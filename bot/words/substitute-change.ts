import { bestSaving } from '../../core/substitute/cheapest.ts';
import { type DoneWithout, doingWithout } from '../../core/substitute/do-without.ts';
import type { Mix } from '../../core/substitute/mix.ts';
import { type RankOptions, rank } from '../../core/substitute/rank.ts';
import { type Part, replace } from '../../core/substitute/replace.ts';
import type { Replaced } from '../../core/substitute/replaced.ts';
import type { Trouble } from '../answer.ts';
import { orList } from '../readers/ask-back.ts';
import type { Tools } from '../topic.ts';
import type { SubstituteWish } from '../topics/substitute.ts';
import { inTurns } from '../turns.ts';
import { noStock, stockOf } from './in-stock.ts';
import { hasPrices } from './substitute-cost.ts';
import type { Changed } from './substitute-figures.ts';
import { swapTrouble } from './swap-problems.ts';
import { shortName } from './warnings.ts';
import { withoutWords } from './without.ts';

interface Swap {
  readonly from: string;
  readonly to: string;
  readonly part?: Part | undefined;
  readonly gramForGram?: boolean | undefined;
}

const isTrouble = (thing: object): thing is Trouble => 'code' in thing;

/** Swaps that were asked for, in their order. */
export const swapsOf = ({ earlier = [], from, to, part, gramForGram }: SubstituteWish): readonly Swap[] =>
  from === undefined || to === undefined ? earlier : [...earlier, { from, to, part, gramForGram }];

const cannotReplace = (done: DoneWithout, withouts: readonly string[], stocked: boolean): Trouble => ({
  code: 'not-found',
  text: `I found nothing${stocked ? ' in stock' : ''} that could stand in for ${done.cannot.map(shortName).join(', ')}${withoutWords(withouts)}, so I leave the recipe as it is. Ask "what can replace ${shortName(done.cannot[0] ?? '')}" to see what is near.`,
});

const notInStock = (mix: Mix, { from, to }: Swap, options: RankOptions): Trouble => {
  const ranking = rank(from, mix.portions, [], options);
  const near = ranking.ok
    ? ranking.value.candidates.slice(0, 3).map(({ ingredient }) => shortName(ingredient))
    : [];
  const instead = near.length > 0 ? ` In stock and near to it: ${orList(near)}.` : '';
  return { code: 'not-found', text: `There is no ${shortName(to)} in stock.${instead}` };
};

const swapAll = (
  before: Mix,
  swaps: readonly Swap[],
  options: RankOptions,
): Omit<Changed, 'done'> | Trouble => {
  const made: Replaced[] = [];
  let mix = before;
  for (const swap of swaps) {
    const { from, to } = swap;
    if (options.only && !options.only.has(to)) return notInStock(mix, swap, options);
    const done = replace(mix, from, to, swap);
    if (!done.ok) return swapTrouble(done.problem, { from, to, portions: mix.portions });
    made.push(done.value);
    mix = done.value.mix;
  }
  return { before, after: mix, swaps: made };
};

const nothingCheaper = (tools: Tools): Trouble => ({
  code: 'not-found',
  text: hasPrices(tools)
    ? 'At the prices noted, no single swap for something alike makes it cheaper. More prices may: "prices" shows what is noted, "sunflower oil 6 per kg" notes one.'
    : 'No prices are noted yet, so I cannot tell what is cheaper. Note some first, for example "olive oil 9 per kg, sunflower oil 4 per kg".',
});

/** The swaps asked for; with "cheaper" and none, the one that saves most. */
const wantedSwaps = async (
  before: Mix,
  wish: SubstituteWish,
  tools: Tools,
  options: RankOptions,
): Promise<readonly Swap[] | Trouble> => {
  const swaps = swapsOf(wish);
  if (wish.by !== 'price' || swaps.length > 0) return swaps;
  const market = { prices: tools.book.state.prices, currency: tools.settings.currency };
  const saving = await inTurns(bestSaving(before, wish.without ?? [], market, options));
  return saving ? [{ from: saving.from, to: saving.candidate.ingredient }] : nothingCheaper(tools);
};

/** Ids in the tin that are not on the shelf. */
const lacking = ({ portions }: Mix, only: ReadonlySet<string> | undefined): readonly string[] =>
  only ? portions.map(({ ingredient }) => ingredient).filter((id) => !only.has(id)) : [];

/**
 * Changes a recipe as the wish says: swaps in their order, then whatever has to go. From stock: what a swap brings in has
 * to be there; where no swap is named, everything. `tooLittle` counts as not there.
 */
export const change = async (
  before: Mix,
  wish: SubstituteWish,
  tools: Tools,
  tooLittle: ReadonlySet<string> = new Set(),
): Promise<Changed | Trouble> => {
  const stock = wish.stocked ? stockOf(tools) : undefined;
  if (stock?.size === 0) return noStock;
  const options: RankOptions = stock
    ? { only: new Set([...stock.keys()].filter((id) => !tooLittle.has(id))) }
    : {};
  const swaps = await wantedSwaps(before, wish, tools, options);
  if (isTrouble(swaps)) return swaps;
  const swapped = swapAll(before, swaps, options);
  if (isTrouble(swapped)) return swapped;
  const named = swapsOf(wish).length > 0;
  const missing = named ? [] : lacking(swapped.after, options.only);
  const withouts = [...new Set([...(wish.without ?? []), ...missing])];
  if (withouts.length === 0 && (!stock || named)) return swapped;
  const done = await inTurns(doingWithout(swapped.after, withouts, options));
  return done.cannot.length > 0
    ? cannotReplace(done, wish.without ?? [], stock !== undefined)
    : { ...swapped, after: done.mix, done };
};
