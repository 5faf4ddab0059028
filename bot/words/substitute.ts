import { defined } from '../../core/defined.ts';
import { forecastOf } from '../../core/melt/forecast.ts';
import { resolveRecipe } from '../../core/resolve.ts';
import { type Comparison, compare } from '../../core/substitute/compare.ts';
import { type Mix, mixOf } from '../../core/substitute/mix.ts';
import type { Answer, Block, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { SubstituteWish } from '../topics/substitute.ts';
import { giveWay } from '../turns.ts';
import { findRecipe } from './find-recipe.ts';
import { capital } from './lists.ts';
import { madeOfMix } from './made.ts';
import { meltCharts } from './melt-charts.ts';
import { troubleOf } from './problems.ts';
import { coverFigures, shortLines, tooLittleLines } from './stock-cover.ts';
import { answerCandidates } from './substitute-candidates.ts';
import { swapsOf } from './substitute-change.ts';
import { changeLines } from './substitute-changes.ts';
import { type CostTold, costTold } from './substitute-cost.ts';
import { type Changed, figuresOf, replacedIn } from './substitute-figures.ts';
import { nextSteps } from './substitute-next.ts';
import { doneLine, noteLines, withoutLines } from './substitute-notes.ts';
import { changeTable } from './substitute-table.ts';
import { changeWarnings, meltNotes } from './substitute-warnings.ts';
import { changeWeighed } from './substitute-weighed.ts';
import { shortName } from './warnings.ts';
import { withoutName } from './without.ts';

interface Subject {
  readonly name?: string;
  readonly mix: Mix;
}

const isTrouble = (thing: object): thing is Trouble => 'code' in thing;

const subjectOf = (wish: SubstituteWish, tools: Tools): Subject | Trouble | undefined => {
  const saved = wish.recipe === undefined ? undefined : findRecipe(wish.recipe, tools.book);
  if (saved && isTrouble(saved)) return saved;
  const lines = saved?.lines ?? wish.lines;
  if (!lines) return undefined;
  const resolved = resolveRecipe(lines, tools.settings.region);
  if (!resolved.ok) return troubleOf(resolved.problem);
  return { mix: mixOf(resolved.value), ...(saved ? { name: saved.name } : {}) };
};

const titleOf = (wish: SubstituteWish, { swaps }: Changed, name: string | undefined): string => {
  const what = name ?? 'Your recipe';
  const swapped = swaps
    .map(
      ({ from, to, leftPercent }) =>
        `${shortName(to)} for ${leftPercent === undefined ? '' : 'some '}${shortName(from)}`,
    )
    .join(', ');
  const none = (wish.without ?? []).map(withoutName).join(', ');
  const parts = [swapped, none ? `without ${none}` : '', wish.stocked ? 'from stock' : ''];
  return `${what}: ${parts.filter(Boolean).join('; ')}`;
};

/** Longest recipe name that leaves room for the change in a chart's title. */
const longestChartName = 50;

const chartName = (name: string | undefined): string | undefined =>
  name !== undefined && name.length > longestChartName
    ? `${name.slice(0, longestChartName).replace(/\s+\S*$/, '')}…`
    : name;

/** A change that is worth a chart though nothing was held to the firmness, in percent of it and in °C. */
const worthDrawing = { firmnessPercent: 10, fullyMeltedC: 2 } as const;

const isWorthDrawing = ({ firmnessPercent = 0, fullyMeltedC = 0 }: Comparison): boolean =>
  Math.abs(firmnessPercent) >= worthDrawing.firmnessPercent ||
  Math.abs(fullyMeltedC) >= worthDrawing.fullyMeltedC;

/** Before and after in one chart, where the firmness had to be held or moved, and the model knows both. */
const chartsFor = async (title: string, wish: SubstituteWish, changed: Changed, comparison: Comparison) => {
  const { before, after } = comparison;
  const held = replacedIn(changed).some(({ way }) => way !== 'gram-for-gram' && way !== 'herb');
  if (!before.blend || !after.blend || !(held || isWorthDrawing(comparison))) return undefined;
  return meltCharts(
    title,
    wish.dark ? 'dark' : 'light',
    { name: 'before', forecast: forecastOf(before.blend) },
    { name: 'after', forecast: forecastOf(after.blend) },
  );
};

const bodyBlocks = (
  wish: SubstituteWish,
  changed: Changed,
  comparison: Comparison,
  cost: CostTold,
): Block[] => {
  const said = [
    ...changed.swaps.map(doneLine),
    ...(wish.by === 'price'
      ? ['Of single swaps for something alike, this one saves the most at the prices noted.']
      : []),
    ...(changed.done ? withoutLines(changed.done, wish.without ?? []) : []),
  ];
  const unknown =
    comparison.firmnessPercent === undefined && replacedIn(changed).length > 0
      ? ['No forecast: something in it has no melting figures, or it does not set.']
      : [];
  return [
    { kind: 'list', items: said.map(capital) },
    changeTable(changed.before, changed.after),
    {
      kind: 'list',
      items: [
        ...changeLines(comparison),
        ...cost.lines,
        ...replacedIn(changed).flatMap(noteLines),
        ...unknown,
      ].map(capital),
    },
    ...meltNotes(changed, comparison),
  ];
};

const answerChange = async (wish: SubstituteWish, subject: Subject, tools: Tools) => {
  const done = await changeWeighed(subject.mix, wish, tools);
  if (isTrouble(done)) return done;
  const { changed, weighed, short, tooLittle } = done;
  await giveWay();
  const comparison = compare(changed.before, changed.after);
  const cost = costTold(changed.before, changed.after, tools);
  const title = titleOf(wish, changed, subject.name);
  await giveWay();
  const charts = await chartsFor(titleOf(wish, changed, chartName(subject.name)), wish, changed, comparison);
  const answer: Answer = {
    title,
    blocks: [
      ...(weighed?.blocks ?? []),
      ...[...shortLines(short), ...tooLittleLines(tooLittle)].map(
        (text) => ({ kind: 'text', text }) as const,
      ),
      ...bodyBlocks(wish, changed, comparison, cost),
      ...(charts && charts.text.length > 0 ? [{ kind: 'chart', lines: charts.text } as const] : []),
    ],
    figures: {
      ...figuresOf(wish, changed, comparison),
      ...cost.figures,
      ...(weighed?.figures ?? {}),
      ...(wish.stocked && weighed ? { short: coverFigures(short) } : {}),
      chart: charts?.files[0]?.name ?? null,
    },
    warnings: changeWarnings(changed, comparison, weighed?.warnings),
    next: nextSteps(subject.name, changed.after, replacedIn(changed).at(-1), weighed ? undefined : wish),
    made: [madeOfMix(title, changed.after, wish.make)],
    ...(charts ? { files: charts.files } : {}),
  };
  return answer;
};

const noRecipe: Trouble = {
  code: 'missing',
  text: 'In which recipe? Name a saved one or write it out: "swap beeswax for candelilla in 20% beeswax, 80% olive oil".',
};

/** Answers what can replace something, a swap, or a recipe done without something. */
export const answerSubstitute = async (wish: SubstituteWish, tools: Tools): Promise<Answer | Trouble> => {
  const subject = subjectOf(wish, tools);
  if (subject && isTrouble(subject)) return subject;
  await giveWay();
  if (wish.replaces !== undefined)
    return answerCandidates(
      {
        old: wish.replaces,
        withouts: wish.without ?? [],
        byPrice: wish.by === 'price',
        stocked: wish.stocked ?? false,
        scores: wish.scores ?? false,
        ...defined({ mix: subject?.mix, name: subject?.name, about: wish.about, make: wish.make }),
      },
      tools,
    );
  if (!subject) return noRecipe;
  const asks =
    swapsOf(wish).length > 0 || (wish.without ?? []).length > 0 || wish.by === 'price' || wish.stocked;
  return asks ? answerChange(wish, subject, tools) : { ...noRecipe, text: nothingAsked };
};

const nothingAsked =
  'What shall I change? For example "swap beeswax for candelilla in Fernlea hand balm" or "nut-free Fernlea mint lip balm".';
