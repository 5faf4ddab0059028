import { lotKey } from '../../core/bench/codes.ts';
import { drawFor, isExpired } from '../../core/bench/draw.ts';
import type { BenchEvent, Draw } from '../../core/bench/events.ts';
import { sumG } from '../../core/bench/exact.ts';
import type { Bench, Lot } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import { defined } from '../../core/defined.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { StockWish } from '../topics/stock.ts';
import { gramsText, text } from './batch-text.ts';
import { dayText, dayTrouble, todayFor } from './bench-dates.ts';
import { lowAfter } from './bench-low.ts';
import { writtenOnce } from './bench-twice.ts';
import { findLot } from './find-lot.ts';
import { by } from './recipe-table.ts';
import { lotFigures, lotName } from './stock-figures.ts';
import { shortName } from './warnings.ts';

type Decision = Result<{ events: readonly BenchEvent[]; value: readonly Draw[] }, Trouble>;

const tooLittle = (name: string, leftG: number, wanted: number, code: string | undefined): Trouble => ({
  code: 'out-of-range',
  text: `Only ${gramsText(leftG)} of ${name} ${leftG === 1 ? 'is' : 'are'} left, so not ${gramsText(wanted)}. Nothing was written down. If the stock is wrong, count it: "${code ?? 'K12'} is really ${gramsText(wanted)}".`,
});

const nothingThere = (wish: StockWish): Trouble => ({
  code: 'not-found',
  text: `There is no ${shortName(wish.ingredient ?? '')} on the shelf to take from. Ask "stock" to see what there is.`,
});

const fromLot = (lot: Lot, wish: StockWish): Result<readonly Draw[], Trouble> => {
  const grams = wish.all ? lot.leftG : (wish.grams ?? 0);
  if (grams > lot.leftG || grams <= 0) return fail(tooLittle(`lot ${lot.lot}`, lot.leftG, grams, lot.lot));
  return ok([{ lot: lot.lot, grams }]);
};

/** Used: oldest first, and nothing past its date. Thrown away: what is past its date goes first. */
const fromShelf = (bench: Bench, wish: StockWish, on: string): Result<readonly Draw[], Trouble> => {
  const of = { ingredient: wish.ingredient ?? '', infusedWith: wish.herb };
  const lots = [...bench.lots.values()].filter(
    (lot) =>
      lot.leftG > 0 &&
      lot.ingredient === of.ingredient &&
      (of.infusedWith === undefined || lot.herbs?.includes(of.infusedWith)),
  );
  if (lots.length === 0) return fail(nothingThere(wish));
  const over = wish.how === 'wasted' ? lots.filter((lot) => isExpired(lot, on)).map(({ lot }) => lot) : [];
  const grams = wish.all ? sumG(lots.map(({ leftG }) => leftG)) : (wish.grams ?? 0);
  const from = wish.all ? lots.map(({ lot }) => lot) : over;
  const drawn = drawFor(bench, { ...of, grams, from }, on);
  if (drawn.shortG > 0)
    return fail(
      tooLittle(shortName(of.ingredient), sumG(drawn.draws.map((draw) => draw.grams)), grams, lots[0]?.lot),
    );
  return ok(drawn.draws);
};

const decide = (bench: Bench, wish: StockWish, on: string): Decision => {
  const lot = wish.lot === undefined ? undefined : findLot(wish.lot, bench);
  if (lot && 'code' in lot) return fail(lot);
  const draws = lot ? fromLot(lot, wish) : fromShelf(bench, wish, on);
  if (!draws.ok) return draws;
  const { how = 'used', why } = wish;
  return ok({
    events: [{ kind: 'stock-taken', draws: [...draws.value], how, on, ...defined({ why }) }],
    value: draws.value,
  });
};

const verbs = { used: 'Used', wasted: 'Thrown away' } as const;

const answerFor = (draws: readonly Draw[], wish: StockWish, bench: Bench, tools: Tools): Answer => {
  const today = todayFor(tools);
  const lots = draws.map(({ lot }) => bench.lots.get(lotKey(lot)) as Lot);
  const grams = sumG(draws.map((draw) => draw.grams));
  return {
    title: `${verbs[wish.how ?? 'used']}: ${gramsText(grams)} ${lotName(lots[0] as Lot)}`,
    blocks: [
      {
        kind: 'list',
        items: draws.map(
          ({ lot, grams: each }, at) =>
            `lot ${lot}: ${gramsText(each)}, ${gramsText(lots[at]?.leftG ?? 0)} left`,
        ),
      },
      text(`Written down for ${dayText(wish.on ?? today)}.${wish.why ? ` Reason: ${wish.why}` : ''}`),
      ...lowAfter(
        bench,
        today,
        lots.map(({ ingredient }) => ingredient),
      ).map(text),
    ],
    figures: {
      taken: draws.map(({ lot, grams: each }) => ({ lot, grams: each })),
      taken_g: grams,
      how: wish.how ?? 'used',
      lots: lots.map((lot) => lotFigures(lot, today)),
    },
    warnings: [],
    next: [{ label: 'Stock', say: 'stock' }],
  };
};

const twice: Trouble = {
  code: 'not-allowed',
  text: 'You told me that a moment ago, and I wrote it down. If it happened twice, say it with "another": "used another 50 g of K12".',
};

/** Takes something out of the stock otherwise than by a pour. */
export const recordTaken = async (wish: StockWish, tools: Tools): Promise<Answer | Trouble> => {
  const today = todayFor(tools);
  const on = wish.on ?? today;
  const wrongDay = dayTrouble(on, today);
  if (wrongDay) return wrongDay;
  const { again, ...same } = wish;
  const changed = await writtenOnce(tools, same, again, () =>
    tools.book.change((state) => decide(benchOf(state), wish, on), by(tools)),
  );
  if (!changed) return twice;
  return changed.ok
    ? answerFor(changed.value.value, wish, benchOf(changed.value.state), tools)
    : changed.problem;
};
