import { lotKey } from '../../core/bench/codes.ts';
import type { BenchEventOf } from '../../core/bench/events.ts';
import { nextCode } from '../../core/bench/fold.ts';
import { type Pour, pourFrom } from '../../core/bench/pour.ts';
import type { Bench } from '../../core/bench/state.ts';
import { type BookState, benchOf } from '../../core/book.ts';
import { defined } from '../../core/defined.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { BatchWish } from '../topics/batch.ts';
import { earlier, pouredEvent } from './batch-event.ts';
import { pouredAnswer } from './batch-poured.ts';
import { type Basis, batchName, sizedAndScaled, weighedLines } from './batch-weigh.ts';
import { dayTrouble, todayFor } from './bench-dates.ts';
import { writtenDown } from './bench-twice.ts';
import { findRecipe } from './find-recipe.ts';
import { troubleOf } from './problems.ts';
import { by } from './recipe-table.ts';

/** What the answer needs to know besides the batch itself. */
export interface Poured {
  readonly lot: string;
  readonly pour: Pour;
  readonly assumed: readonly string[];
  /** The date that was said, where it was later than what was reckoned. */
  readonly saidLater?: string;
}

type Decision = Result<{ events: readonly BenchEventOf<'batch-poured'>[]; value: Poured }, Trouble>;

const takenTrouble = (code: string): Trouble => ({
  code: 'not-allowed',
  text: `${code} is taken already in this book. Leave the code out and I give the batch one of its own.`,
});

/** The maker's own code if it is free, or the next of the house. */
const codeFor = (bench: Bench, wish: BatchWish, madeOn: string): Result<string, Trouble> => {
  const { lot } = wish;
  if (lot === undefined) return ok(nextCode(bench, madeOn).code);
  const key = lotKey(lot);
  return bench.batches.has(key) || bench.lots.has(key) ? fail(takenTrouble(lot)) : ok(lot);
};

export const expiredTrouble = (
  { lot, bestBefore }: { lot: string; bestBefore: string },
  on: string,
): Trouble => ({
  code: 'out-of-range',
  text: `Lot ${lot} is past its date (${bestBefore}, poured ${on}): do not use it. If it was used all the same, say the pour again with "past its date" and I write it down so.`,
});

const decide = (state: BookState, given: Basis): Decision => {
  const bench = benchOf(state);
  const fresh = given.recipe && state.recipes[given.recipe.id];
  const basis = { ...given, ...defined({ recipe: fresh ?? given.recipe }) };
  const { wish, tools } = basis;
  const madeOn = wish.on ?? todayFor(tools);
  const code = codeFor(bench, wish, madeOn);
  if (!code.ok) return code;
  const { taken, scaled } = sizedAndScaled(bench, basis, batchName(basis), wish.container ?? 'tin');
  if (!scaled.ok) return fail(troubleOf(scaled.problem));
  const { capMonths } = tools.settings;
  const from = wish.lots ?? [];
  const poured = pourFrom(bench, {
    madeOn,
    lines: weighedLines(scaled.value),
    from,
    capMonths,
    expiredToo: wish.expiredToo,
  });
  if (!poured.ok) return fail(expiredTrouble(poured.problem, madeOn));
  const lot = code.value;
  const made = { lot, madeOn, pour: poured.value, scaled: scaled.value, ...defined({ size: taken.size }) };
  const { bestBefore } = wish;
  const later = earlier(bestBefore, poured.value) === undefined ? bestBefore : undefined;
  const value = {
    lot,
    pour: poured.value,
    assumed: taken.assumed ? [taken.assumed] : [],
    ...defined({ saidLater: later }),
  };
  return ok({ events: [pouredEvent(basis, made)], value });
};

/** Writes a pour into the book: one event with all it drew, decided when its turn has come. */
export const recordPour = async (wish: BatchWish, tools: Tools): Promise<Answer | Trouble> => {
  const recipe = wish.recipe === undefined ? undefined : findRecipe(wish.recipe, tools.book);
  if (recipe && 'code' in recipe) return recipe;
  const wrongDay = wish.on === undefined ? undefined : dayTrouble(wish.on, todayFor(tools));
  if (wrongDay) return wrongDay;
  const { again, ...same } = wish;
  const basis = { wish, tools, ...defined({ recipe }) };
  // An edited recipe makes it another pour.
  const key = { ...same, version: recipe?.versions.length };
  return writtenDown(
    { tools, what: 'pour', key, again },
    () => tools.book.change((state) => decide(state, basis), by(tools)),
    ({ value, state }) => pouredAnswer(value, state, tools),
  );
};
