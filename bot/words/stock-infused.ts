import { type BestBefore, bestBeforeOf } from '../../core/bench/best-before.ts';
import { lotKey } from '../../core/bench/codes.ts';
import { plusDays } from '../../core/bench/days.ts';
import { drawFor, lessDrawn } from '../../core/bench/draw.ts';
import type { Draw } from '../../core/bench/event-fields.ts';
import type { BenchEventOf } from '../../core/bench/events.ts';
import { sumG } from '../../core/bench/exact.ts';
import { nextCode } from '../../core/bench/fold.ts';
import type { Bench, Lot } from '../../core/bench/state.ts';
import { type BookEvent, benchOf } from '../../core/book.ts';
import { defined } from '../../core/defined.ts';
import { weighedUptake } from '../../core/infuse/yields.ts';
import { ingredientById } from '../../core/ingredients.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Answer, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { StockWish } from '../topics/stock.ts';
import { expiredTrouble } from './batch-pour.ts';
import { bestBeforeText, gramsText, text } from './batch-text.ts';
import { dayTrouble, longDayText, todayFor } from './bench-dates.ts';
import { lowAfter } from './bench-low.ts';
import { writtenDown } from './bench-twice.ts';
import { by } from './recipe-table.ts';
import { lotFigures, lotName } from './stock-figures.ts';
import { localRules, shortName } from './warnings.ts';

type Part = NonNullable<StockWish['parts']>[number];
type Infused = BenchEventOf<'oil-infused'>;

interface Drawn {
  readonly draws: readonly Draw[];
  readonly short: Infused['short'];
  readonly unknown: readonly string[];
}

const drawParts = (start: Bench, parts: readonly Part[], on: string): Drawn => {
  let bench = start;
  const draws: Draw[] = [];
  const short: Infused['short'] = [];
  const unknown: string[] = [];
  for (const { ingredient, grams, lot } of parts) {
    const need = { ingredient, grams, ...defined({ from: lot === undefined ? undefined : [lot] }) };
    const drawn = drawFor(bench, need, plusDays(on, 1));
    bench = lessDrawn(bench, drawn.draws);
    draws.push(...drawn.draws);
    if (drawn.shortG > 0) short.push({ ingredient, grams: drawn.shortG });
    if (lot !== undefined && !start.lots.has(lotKey(lot))) unknown.push(lot);
  }
  return { draws, short: start.lots.size > 0 ? short : [], unknown };
};

interface Jar {
  readonly oil: Part;
  readonly herbs: readonly Part[];
}

const jarOf = (parts: readonly Part[]): Jar | undefined => {
  const isHerb = ({ ingredient }: Part): boolean => ingredientById(ingredient)?.kind === 'herb';
  const oil = parts.find((part) => !isHerb(part));
  const herbs = parts.filter(isHerb);
  return oil && herbs.length > 0 ? { oil, herbs } : undefined;
};

const moreOut = (wish: StockWish, oil: Part): Trouble => ({
  code: 'bad-quantity',
  text: `${gramsText(wish.grams ?? 0)} cannot come out of ${gramsText(oil.grams)} of oil, and the herb keeps some. One of the weights is wrong.`,
});

/** The yield tells how much this herb keeps: noted for the next infusion, where it makes sense. */
const yieldEvent = (wish: StockWish, { oil, herbs }: Jar): BookEvent[] => {
  const [herb, second] = herbs;
  if (!herb || second) return [];
  const weighed = { herbG: herb.grams, oilInG: oil.grams, oilOutG: wish.grams ?? 0 };
  return weighedUptake(weighed).ok ? [{ kind: 'yield-noted', herb: herb.ingredient, ...weighed }] : [];
};

const codeFor = (bench: Bench, wish: StockWish, on: string): Result<string, Trouble> => {
  const { lot } = wish;
  if (lot === undefined) return ok(nextCode(bench, on).code);
  const taken = bench.lots.has(lotKey(lot)) || bench.batches.has(lotKey(lot));
  return taken
    ? fail({ code: 'not-allowed', text: `${lot} is taken already. Leave it out and I make a code.` })
    : ok(lot);
};

interface Made {
  readonly lot: string;
  readonly drawn: Drawn;
  readonly rough: boolean;
}
type Decision = Result<{ events: readonly BookEvent[]; value: Made }, Trouble>;

const dateOf = (bench: Bench, wish: StockWish, tools: Tools, jar: Jar, drawn: Drawn, on: string) => {
  const lots = drawn.draws.flatMap(({ lot }) => bench.lots.get(lotKey(lot)) ?? []);
  const fromLots = drawn.short.length === 0 && lots.length > 0;
  const made = defined({ fresh: wish.fresh, homeDried: wish.homeDried });
  const lines = [{ ingredient: jar.oil.ingredient, percent: 100, fromLots, ...made }];
  return bestBeforeOf({ madeOn: on, lines, lots, capMonths: tools.settings.capMonths });
};

const infusedEvent = (
  wish: StockWish,
  tools: Tools,
  jar: Jar,
  made: Omit<Made, 'rough'>,
  dated: BestBefore,
): Infused => {
  const said =
    wish.bestBefore !== undefined && wish.bestBefore <= dated.bestBefore ? wish.bestBefore : undefined;
  return {
    kind: 'oil-infused',
    lot: made.lot,
    ingredient: jar.oil.ingredient,
    herbs: [...new Set(jar.herbs.map(({ ingredient }) => ingredient))].slice(0, 10),
    grams: wish.grams ?? 0,
    on: wish.on ?? todayFor(tools),
    bestBefore: said ?? dated.bestBefore,
    because: said === undefined ? dated.because : { kind: 'said' },
    draws: [...made.drawn.draws],
    short: [...made.drawn.short],
    ...defined({ by: tools.member.name.trim().slice(0, 80) || undefined, note: wish.note }),
  };
};

const decide = (bench: Bench, wish: StockWish, tools: Tools): Decision => {
  const on = wish.on ?? todayFor(tools);
  const jar = jarOf(wish.parts ?? []);
  if (!jar) return fail(noJar);
  if ((wish.grams ?? 0) > jar.oil.grams) return fail(moreOut(wish, jar.oil));
  const code = codeFor(bench, wish, on);
  if (!code.ok) return code;
  const drawn = drawParts(bench, wish.parts ?? [], on);
  const dated = dateOf(bench, wish, tools, jar, drawn, on);
  if (!dated.ok) return fail(expiredTrouble(dated.problem, on));
  const made = { lot: code.value, drawn };
  const event = infusedEvent(wish, tools, jar, made, dated.value);
  return ok({ events: [event, ...yieldEvent(wish, jar)], value: { ...made, rough: dated.value.rough } });
};

const noJar: Trouble = {
  code: 'missing',
  text: 'An infused oil needs its oil and its herb, each with its weight.',
};

const rough: Warning = {
  code: 'rough-estimate',
  text: 'The date is reckoned from a usual shelf life: note the lots with their dates.',
};

const answerFor = (
  { lot: code, drawn, rough: isRough }: Made,
  wish: StockWish,
  bench: Bench,
  tools: Tools,
): Answer => {
  const lot = bench.lots.get(lotKey(code)) as Lot;
  const today = todayFor(tools);
  const oilIn = sumG(
    (wish.parts ?? []).filter(({ ingredient }) => ingredient === lot.ingredient).map(({ grams }) => grams),
  );
  const kept = Number((oilIn - lot.gotG).toFixed(3));
  const shelf = drawn.draws.map(({ lot: from, grams }) => `${gramsText(grams)} of lot ${from}`);
  const missing = drawn.short.map(({ ingredient, grams }) => `${gramsText(grams)} ${shortName(ingredient)}`);
  return {
    title: `Lot ${lot.lot}: ${gramsText(lot.gotG)} ${lotName(lot)}`,
    blocks: [
      text(`Write ${lot.lot} on the bottle. Strained on ${longDayText(lot.on)}.`),
      ...(lot.because && lot.bestBefore
        ? [text(bestBeforeText({ bestBefore: lot.bestBefore, because: lot.because }))]
        : []),
      ...(shelf.length > 0 ? [text(`Drawn: ${shelf.join(', ')}.`)] : []),
      ...(missing.length > 0 ? [text(`Not covered by the stock: ${missing.join(', ')}.`)] : []),
      ...(drawn.unknown.length > 0
        ? [text(`Not in the stock: ${drawn.unknown.map((each) => `lot ${each}`).join(', ')}.`)]
        : []),
      text(`Herb and cloth kept ${gramsText(kept)}.`),
      ...lowAfter(
        bench,
        today,
        (wish.parts ?? []).map(({ ingredient }) => ingredient),
      ).map(text),
    ],
    figures: {
      lots: [lotFigures(lot, today)],
      lots_used: drawn.draws.map(({ lot: from, grams }) => ({ lot: from, grams })),
      short: drawn.short.map(({ ingredient, grams }) => ({ ingredient, grams })),
      kept_g: kept,
      best_before: lot.bestBefore ?? null,
    },
    warnings: [...(isRough ? [rough] : []), localRules],
    next: [{ label: 'Stock', say: 'stock' }],
  };
};

/** Writes an infused oil made in the house down as a lot, drawn from the lots of its oil and herb. */
export const recordInfused = async (wish: StockWish, tools: Tools): Promise<Answer | Trouble> => {
  const wrongDay = wish.on === undefined ? undefined : dayTrouble(wish.on, todayFor(tools));
  if (wrongDay) return wrongDay;
  const { again, ...same } = wish;
  return writtenDown(
    { tools, what: 'jar', key: same, again },
    () => tools.book.change((state) => decide(benchOf(state), wish, tools), by(tools)),
    ({ value, state }) => answerFor(value, wish, benchOf(state), tools),
  );
};
