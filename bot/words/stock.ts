import { lotKey } from '../../core/bench/codes.ts';
import { isExpired } from '../../core/bench/draw.ts';
import type { BenchEvent } from '../../core/bench/events.ts';
import type { Bench, Lot } from '../../core/bench/state.ts';
import { type BookState, benchOf } from '../../core/book.ts';
import { defined } from '../../core/defined.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Answer, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { StockWish } from '../topics/stock.ts';
import { gramsText, text } from './batch-text.ts';
import { dayText, dayTrouble, todayFor } from './bench-dates.ts';
import { toldInstead } from './bench-instead.ts';
import { lowAfter, lowIn } from './bench-low.ts';
import { findLot } from './find-lot.ts';
import { by } from './recipe-table.ts';
import { recordBought } from './stock-bought.ts';
import { lotFigures, lotName } from './stock-figures.ts';
import { recordInfused } from './stock-infused.ts';
import { listStock, showLot } from './stock-list.ts';
import { recordPriced } from './stock-priced.ts';
import { recordTaken } from './stock-taken.ts';
import { shortName } from './warnings.ts';

type Action = StockWish['action'];
type Answering = (wish: StockWish, tools: Tools) => Answer | Trouble | Promise<Answer | Trouble>;
type OnLot = Extract<Action, 'counted' | 'opened' | 'dated' | 'note'>;

const eventFor: Readonly<Record<OnLot, (lot: Lot, wish: StockWish, on: string) => BenchEvent>> = {
  counted: ({ lot }, { grams, why }, on) => ({
    kind: 'lot-counted',
    lot,
    leftG: grams ?? 0,
    on,
    ...defined({ why }),
  }),
  opened: ({ lot }, _wish, on) => ({ kind: 'lot-opened', lot, on }),
  dated: ({ lot }, { bestBefore, why }) => ({
    kind: 'lot-dated',
    lot,
    bestBefore: bestBefore ?? null,
    ...defined({ why }),
  }),
  note: ({ lot }, { note }, on) => ({ kind: 'lot-noted', lot, on, text: note ?? '' }),
};

const kindOf = {
  counted: 'lot-counted',
  opened: 'lot-opened',
  dated: 'lot-dated',
  note: 'lot-noted',
} as const satisfies Readonly<Record<OnLot, BenchEvent['kind']>>;

const mostNotes = 200;

const lotTrouble = (lot: Lot, wish: StockWish): Trouble | undefined => {
  if (wish.action === 'note' && lot.notes.length >= mostNotes)
    return {
      code: 'out-of-range',
      text: `Lot ${lot.lot} has ${lot.notes.length} notes already; that is all one lot can hold.`,
    };
  return undefined;
};

const saidOf: Readonly<
  Record<OnLot, (before: Lot, after: Lot, on: string, wish: StockWish) => readonly string[]>
> = {
  counted: (before, after, on, { why }) => [
    `Lot ${after.lot} stands at ${gramsText(after.leftG)} now (was ${gramsText(before.leftG)}), counted on ${dayText(on)}.${why ? ` Reason: ${why}` : ''}`,
    'Batches that drew from it stay as they are.',
  ],
  opened: (_before, after, on) => [
    `Lot ${after.lot} was opened on ${dayText(on)}. Opened oils tire sooner: keep it full, closed, cool and dark.`,
  ],
  dated: (before, after) => [
    `Lot ${after.lot}: ${after.bestBefore ? `best before ${dayText(after.bestBefore)}` : 'no best before'} (was ${before.bestBefore ? dayText(before.bestBefore) : 'none'}).`,
    'Batches poured before keep the date they got: correct them if it was wrong.',
  ],
  note: (_before, after, _on, { note }) => [`Noted for lot ${after.lot}: ${note ?? ''}`],
};

type OnLotWish = StockWish & { action: OnLot };

/** One wish for each lot that was told of. */
const eachOf = ({ each, ...wish }: OnLotWish): readonly OnLotWish[] =>
  each?.map((own) => ({ ...wish, ...defined(own) })) ?? [wish];

type Decided = Result<{ events: readonly BenchEvent[]; value: readonly Lot[] }, Trouble>;

const decideOnLots = (wishes: readonly OnLotWish[], today: string, bench: Bench): Decided => {
  const events: BenchEvent[] = [];
  const lots: Lot[] = [];
  for (const wish of wishes) {
    const lot = findLot(wish.lot ?? '', bench);
    if ('code' in lot) return fail(lot);
    const on = wish.on ?? today;
    const trouble = dayTrouble(on, today) ?? lotTrouble(lot, wish);
    if (trouble) return fail(trouble);
    events.push(eventFor[wish.action](lot, wish, on));
    lots.push(lot);
  }
  return ok({ events, value: lots });
};

/** A purchase is often told later than the day it was made, so a day before it is taken, and said. */
const openedEarly = ({ lot, on, opened }: Lot): readonly Warning[] =>
  opened !== undefined && opened < on
    ? [
        {
          code: 'opened-before-it-came',
          text: `Lot ${lot} is written down as bought on ${dayText(on)}, which is after ${dayText(opened)}. If the day of opening is wrong, say "opened ${lot} on" with the right day.`,
        },
      ]
    : [];

const recordOnLot = async (wish: OnLotWish, tools: Tools): Promise<Answer | Trouble> => {
  const today = todayFor(tools);
  const wishes = eachOf(wish);
  const write = (state: BookState): Decided => decideOnLots(wishes, today, benchOf(state));
  const { instead } = wish;
  const changed = await (instead
    ? toldInstead({ kinds: [kindOf[wish.action]], lot: instead === true ? wish.lot : instead }, tools, write)
    : tools.book.change(write, by(tools)));
  if (!changed.ok) return changed.problem;
  const { value: befores, state } = changed.value;
  const bench = benchOf(state);
  const lots = befores.map(({ lot }) => bench.lots.get(lotKey(lot)) as Lot);
  const said = wishes.flatMap((own, at) =>
    saidOf[own.action](befores[at] as Lot, lots[at] as Lot, own.on ?? today, own),
  );
  return {
    title: lots.map((lot) => `Lot ${lot.lot}: ${lotName(lot)}`).join(', '),
    blocks: [
      ...[...new Set(said)].map(text),
      ...lots
        .filter((lot) => isExpired(lot, today))
        .map((lot) =>
          text(
            `${lots.length > 1 ? `Lot ${lot.lot}` : 'It'} is past its date and will not be drawn by itself.`,
          ),
        ),
      ...lowAfter(
        bench,
        today,
        lots.map(({ ingredient }) => ingredient),
      ).map(text),
    ],
    figures: { lots: lots.map((lot) => lotFigures(lot, today)) },
    warnings: wish.action === 'opened' ? lots.flatMap(openedEarly) : [],
    next: [{ label: 'Stock', say: 'stock' }],
  };
};

const onLot =
  (action: OnLot): Answering =>
  (wish, tools) =>
    recordOnLot({ ...wish, action }, tools);

/** Most marks a group has. */
const mostMarks = 500;

const markLow: Answering = async (wish, tools) => {
  const { ingredient = '', grams = null } = wish;
  const { low } = benchOf(tools.book.state);
  if (grams !== null && !low.has(ingredient) && low.size >= mostMarks)
    return { code: 'out-of-range', text: `This book has ${mostMarks} marks already.` };
  if (grams === null && !low.has(ingredient))
    return {
      code: 'not-found',
      text: `There is no mark for ${shortName(ingredient)}. Set one: "warn me below 200 g beeswax".`,
    };
  await tools.book.record({ kind: 'low-mark-set', ingredient, grams: grams === 0 ? null : grams }, by(tools));
  const bench = benchOf(tools.book.state);
  const said = grams
    ? `I tell you when less than ${gramsText(grams)} ${shortName(ingredient)} are left.`
    : `No mark for ${shortName(ingredient)} any more.`;
  return {
    title: `Mark: ${shortName(ingredient)}`,
    blocks: [text(said), ...lowAfter(bench, todayFor(tools), [ingredient]).map(text)],
    figures: {
      ingredient,
      below_g: grams,
      low: lowIn(bench, todayFor(tools)).map(({ ingredient: what, gramsLeft, belowG }) => ({
        ingredient: what,
        grams_left: gramsLeft,
        below_g: belowG,
      })),
    },
    warnings: [],
    next: [{ label: 'Running low', say: 'running low' }],
  };
};

const answers: Readonly<Record<Action, Answering>> = {
  bought: recordBought,
  infused: recordInfused,
  taken: recordTaken,
  counted: onLot('counted'),
  opened: onLot('opened'),
  dated: onLot('dated'),
  priced: recordPriced,
  note: onLot('note'),
  low: markLow,
  list: listStock,
  show: showLot,
};

/** Answers whatever was said about the stock. */
export const answerStock: Answering = (wish, tools) => answers[wish.action](wish, tools);
