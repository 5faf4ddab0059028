import { lotKey } from '../../core/bench/codes.ts';
import { drawFor, isExpired, lessDrawn } from '../../core/bench/draw.ts';
import type { Draw } from '../../core/bench/event-fields.ts';
import type { BenchEvent } from '../../core/bench/events.ts';
import { sumG } from '../../core/bench/exact.ts';
import type { Bench, Lot } from '../../core/bench/state.ts';
import { type BookState, benchOf } from '../../core/book.ts';
import { defined } from '../../core/defined.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { StockWish } from '../topics/stock.ts';
import { gramsText, text } from './batch-text.ts';
import { dayText, dayTrouble, todayFor } from './bench-dates.ts';
import { toldInstead } from './bench-instead.ts';
import { lowAfter } from './bench-low.ts';
import { writtenDown } from './bench-twice.ts';
import { findLot } from './find-lot.ts';
import { by } from './recipe-table.ts';
import { lotFigures, lotName } from './stock-figures.ts';
import { shortName } from './warnings.ts';

type Decision = Result<{ events: readonly BenchEvent[]; value: readonly Draw[] }, Trouble>;

const tooLittle = (name: string, leftG: number, wanted: number, code: string | undefined): Trouble => ({
  code: 'out-of-range',
  text: `Only ${gramsText(leftG)} of ${name} ${leftG === 1 ? 'is' : 'are'} left, so not ${gramsText(wanted)}. Nothing was written down. If the stock is wrong, count it: "${code ?? 'K12'} is really ${gramsText(wanted)}".`,
});

/** What is taken of one lot or one ingredient. */
type Take = Pick<StockWish, 'lot' | 'ingredient' | 'herb' | 'grams' | 'all' | 'how'>;

const nothingThere = (wish: Take): Trouble => ({
  code: 'not-found',
  text: `There is no ${shortName(wish.ingredient ?? '')} on the shelf to take from. Ask "stock" to see what there is.`,
});

const fromLot = (lot: Lot, wish: Take): Result<readonly Draw[], Trouble> => {
  const grams = wish.all ? lot.leftG : (wish.grams ?? 0);
  if (grams > lot.leftG || grams <= 0) return fail(tooLittle(`lot ${lot.lot}`, lot.leftG, grams, lot.lot));
  return ok([{ lot: lot.lot, grams }]);
};

/** Used: oldest first, and nothing past its date. Thrown away: what is past its date goes first. */
const fromShelf = (bench: Bench, wish: Take, on: string): Result<readonly Draw[], Trouble> => {
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

const drawsOf = (bench: Bench, take: Take, on: string): Result<readonly Draw[], Trouble> => {
  const lot = take.lot === undefined ? undefined : findLot(take.lot, bench);
  if (lot && 'code' in lot) return fail(lot);
  return lot ? fromLot(lot, take) : fromShelf(bench, take, on);
};

const decide = (start: Bench, wish: StockWish, on: string): Decision => {
  const { how = 'used', why, takes = [wish] } = wish;
  let bench = start;
  const draws: Draw[] = [];
  for (const take of takes) {
    const drawn = drawsOf(bench, { ...take, how }, on);
    if (!drawn.ok) return drawn;
    bench = lessDrawn(bench, drawn.value);
    draws.push(...drawn.value);
  }
  return ok({ events: [{ kind: 'stock-taken', draws, how, on, ...defined({ why }) }], value: draws });
};

/** "50 g beeswax, 20 g cocoa butter": what was taken, by its name. */
const takenText = (draws: readonly Draw[], lots: readonly Lot[]): string => {
  const byName = new Map<string, number[]>();
  for (const [at, { grams }] of draws.entries()) {
    const name = lotName(lots[at] as Lot);
    byName.set(name, [...(byName.get(name) ?? []), grams]);
  }
  return [...byName].map(([name, grams]) => `${gramsText(sumG(grams))} ${name}`).join(', ');
};

const verbs = { used: 'Used', wasted: 'Thrown away' } as const;

const answerFor = (draws: readonly Draw[], wish: StockWish, bench: Bench, tools: Tools): Answer => {
  const today = todayFor(tools);
  const lots = draws.map(({ lot }) => bench.lots.get(lotKey(lot)) as Lot);
  const grams = sumG(draws.map((draw) => draw.grams));
  return {
    title: `${verbs[wish.how ?? 'used']}: ${takenText(draws, lots)}`,
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

/** Takes something out of the stock otherwise than by a pour. */
export const recordTaken = async (wish: StockWish, tools: Tools): Promise<Answer | Trouble> => {
  const today = todayFor(tools);
  const on = wish.on ?? today;
  const wrongDay = dayTrouble(on, today);
  if (wrongDay) return wrongDay;
  const { again, instead, ...same } = wish;
  const write = (state: BookState): Decision => decide(benchOf(state), wish, on);
  return writtenDown(
    { tools, what: wish.how === 'wasted' ? 'loss' : 'use', key: same, again: again ?? instead !== undefined },
    () =>
      instead
        ? toldInstead({ kinds: ['stock-taken'], lot: instead === true ? wish.lot : instead }, tools, write)
        : tools.book.change(write, by(tools)),
    ({ value, state }) => answerFor(value, wish, benchOf(state), tools),
  );
};
