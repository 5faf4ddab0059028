import { lotKey } from '../../core/bench/codes.ts';
import { linesOf, pouredAgain } from '../../core/bench/correct.ts';
import type { BenchEventOf } from '../../core/bench/events.ts';
import type { Pour, WeighedLine } from '../../core/bench/pour.ts';
import { type Batch, tinsLeft } from '../../core/bench/state.ts';
import { type BookState, benchOf } from '../../core/book.ts';
import { defined } from '../../core/defined.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import { scaleRecipe } from '../../core/scale.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { BatchWish } from '../topics/batch.ts';
import { earlier } from './batch-event.ts';
import { batchFigures } from './batch-figures.ts';
import { expiredTrouble } from './batch-pour.ts';
import { batchSteps, shelfTexts } from './batch-poured.ts';
import {
  batchWarnings,
  bestBeforeText,
  gramsText,
  linesTable,
  text,
  tinsText,
  yieldText,
} from './batch-text.ts';
import { weighedLines } from './batch-weigh.ts';
import { dayText, dayTrouble, longDayText, todayFor } from './bench-dates.ts';
import { findBatch } from './find-lot.ts';
import { troubleOf } from './problems.ts';
import { by } from './recipe-table.ts';

type Changes = BenchEventOf<'batch-corrected'>['changes'];

interface Corrected {
  readonly before: Batch;
  readonly pour?: Pour;
}
type Decision = Result<{ events: readonly BenchEventOf<'batch-corrected'>[]; value: Corrected }, Trouble>;

const outdated = (batch: Batch): Trouble => {
  const last = batch.corrected.at(-1);
  const what = last === undefined ? '' : ` (last correction: ${last})`;
  return {
    code: 'not-allowed',
    text: `${batch.lot} was changed by somebody else since you looked${what}. It stands at ${tinsText(batch)}, ${tinsLeft(batch)} left. Nothing was written down: look with "batch ${batch.lot}", then say your correction again.`,
  };
};

type RecipeLines = Parameters<typeof scaleRecipe>[0]['lines'];

/** The recipe as it was poured, while it stands: the batch's own lines are rounded, and would drift from it. */
const recipeLines = (state: BookState, batch: Batch): RecipeLines | undefined => {
  const recipe = batch.recipe && Object.values(state.recipes).find(({ id }) => id === batch.recipe?.id);
  if (!recipe || recipe.versions.at(-1) !== batch.recipe?.version) return undefined;
  const own = batch.lines.map(({ ingredient }) => ingredient).toSorted();
  const same = recipe.lines.map(({ ingredient }) => ingredient).toSorted();
  return own.join() === same.join() &&
    batch.lines.every(({ strained, infusedWith }) => !strained && !infusedWith)
    ? recipe.lines
    : undefined;
};

const ownLines = (batch: Batch): RecipeLines =>
  linesOf(batch).map(({ grams, ...line }) => ({
    ...line,
    ...defined({ strained: line.strained, infusedWith: line.infusedWith }),
    amount: grams,
    unit: 'g',
  })) as RecipeLines;

/** The lines at another size or weigh-out: of the recipe, or the batch's own lines in proportion. */
const linesAt = (
  state: BookState,
  batch: Batch,
  wish: BatchWish,
  tools: Tools,
): Result<readonly WeighedLine[] | undefined, Trouble> => {
  if (wish.weighedG === undefined && wish.size === undefined) return ok(undefined);
  const { settings } = tools;
  const size = wish.size ?? { amount: 0, unit: 'g' as const };
  const fill = size.unit === 'g' ? { grams: size.amount } : { ml: size.amount };
  const scaled = scaleRecipe({
    lines: recipeLines(state, batch) ?? ownLines(batch),
    target:
      wish.weighedG === undefined
        ? { kind: 'containers', count: wish.count ?? batch.count, fill }
        : { kind: 'mass', grams: wish.weighedG },
    lossPercent: settings.lossPercent,
    stepG: settings.stepG,
    region: settings.region,
  });
  return scaled.ok ? ok(weighedLines(scaled.value)) : fail(troubleOf(scaled.problem));
};

const weighedBy = (lines: readonly WeighedLine[]): number =>
  Number(
    lines
      .filter(({ strained }) => !strained)
      .reduce((all, { grams }) => all + grams, 0)
      .toFixed(3),
  );

const pouredChanges = (pour: Pour, wish: BatchWish, lines: readonly WeighedLine[] | undefined): Changes => {
  const said = earlier(wish.bestBefore, pour);
  return {
    lines: [...pour.lines],
    bestBefore: said ?? pour.bestBefore,
    because: said === undefined ? pour.because : { kind: 'said' },
    rough: said === undefined && pour.rough,
    ...defined({
      weighedG: wish.weighedG ?? (lines ? weighedBy(lines) : undefined),
      unknownLots: pour.unknown.length > 0 ? [...pour.unknown] : undefined,
    }),
  };
};

const goneTrouble = (batch: Batch, count: number): Trouble => {
  const left = batch.count - tinsLeft(batch);
  return {
    code: 'out-of-range',
    text: `${left} of ${batch.lot} have gone already, so it cannot have been ${count}. "batch ${batch.lot}" shows where they went.`,
  };
};

const wantsPour = (wish: BatchWish): boolean =>
  [wish.on, wish.size, wish.weighedG, wish.lots, wish.bestBefore].some((each) => each !== undefined);

const decide = (state: BookState, wish: BatchWish, tools: Tools): Decision => {
  const bench = benchOf(state);
  const batch = findBatch(wish.lot ?? '', bench);
  if ('code' in batch) return fail(batch);
  if (wish.seen !== undefined && wish.seen !== batch.seq) return fail(outdated(batch));
  if (wish.count !== undefined && wish.count < batch.count - tinsLeft(batch))
    return fail(goneTrouble(batch, wish.count));
  const { count, container, size, bathC, pourC, filledG, on } = wish;
  const plain = defined({ count, container, size, bathC, pourC, filledG, madeOn: on });
  const event = (changes: Changes): BenchEventOf<'batch-corrected'> => ({
    kind: 'batch-corrected',
    lot: batch.lot,
    changes,
    why: wish.why ?? 'corrected',
  });
  if (!wantsPour(wish)) return ok({ events: [event(plain)], value: { before: batch } });
  const lines = linesAt(state, batch, wish, tools);
  if (!lines.ok) return lines;
  const { capMonths } = tools.settings;
  const asked = { madeOn: on, lines: lines.value, from: wish.lots, capMonths, expiredToo: wish.expiredToo };
  const pour = pouredAgain(bench, batch, asked);
  if (!pour.ok) return fail(expiredTrouble(pour.problem, on ?? batch.madeOn));
  const changes = { ...plain, ...pouredChanges(pour.value, wish, lines.value) };
  return ok({ events: [event(changes)], value: { before: batch, pour: pour.value } });
};

const difference = (before: Batch, after: Batch): string[] => {
  const pairs: readonly (readonly [string, string, string])[] = [
    ['Made', tinsText(before), tinsText(after)],
    ['Poured on', longDayText(before.madeOn), longDayText(after.madeOn)],
    ['Best before', dayText(before.bestBefore), dayText(after.bestBefore)],
    ['Weighed out', gramsText(before.weighedG), gramsText(after.weighedG)],
  ];
  return pairs.flatMap(([what, was, is]) => (was === is ? [] : [`${what}: ${is} (was ${was}).`]));
};

const answerFor = ({ before, pour }: Corrected, wish: BatchWish, state: BookState, tools: Tools): Answer => {
  const batch = benchOf(state).batches.get(lotKey(before.lot)) as Batch;
  return {
    title: `${batch.lot} corrected: ${batch.name}`,
    blocks: [
      ...difference(before, batch).map(text),
      text(`${tinsText(batch)}, ${tinsLeft(batch)} left. ${bestBeforeText(batch)}`),
      ...(pour ? [linesTable(batch), ...shelfTexts(pour, state).map(text)] : []),
      ...(wish.filledG === undefined && wish.weighedG === undefined ? [] : yieldText(batch)),
      text(`Reason: ${batch.corrected.at(-1) ?? ''}`),
      text('What it said before stays in the book.'),
    ],
    figures: batchFigures(batch, state),
    warnings: batchWarnings(batch),
    next: batchSteps(batch, tools),
  };
};

/** Puts a batch right by a new event with its reason, unless somebody else changed it in the meantime. */
export const correctBatch = async (wish: BatchWish, tools: Tools): Promise<Answer | Trouble> => {
  const wrongDay = wish.on === undefined ? undefined : dayTrouble(wish.on, todayFor(tools));
  if (wrongDay) return wrongDay;
  const changed = await tools.book.change((state) => decide(state, wish, tools), by(tools));
  return changed.ok ? answerFor(changed.value.value, wish, changed.value.state, tools) : changed.problem;
};
