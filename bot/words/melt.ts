import { hazardsOf } from '../../core/hazards.ts';
import { blendOf } from '../../core/melt/blend.ts';
import { holdsAt } from '../../core/melt/firmness.ts';
import { forecastOf, type MeltForecast } from '../../core/melt/forecast.ts';
import type { HeatPlan, HeatStage } from '../../core/melt/heat.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import { type Resolved, resolveRecipe } from '../../core/resolve.ts';
import { mixOf } from '../../core/substitute/mix.ts';
import type { Answer, AnswerFile, Block, NextStep, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { MeltWish } from '../topics/melt.ts';
import { giveWay } from '../turns.ts';
import { findRecipe } from './find-recipe.ts';
import {
  blendTrouble,
  both,
  degrees,
  firmnessLine,
  forecastAssumed,
  forecastFigures,
  forecastWarnings,
  holdingWords,
  meltLine,
  solidsTable,
} from './forecast.ts';
import { meltCharts } from './melt-charts.ts';
import { answerOne, answerSeveral } from './melt-ranges.ts';
import { troubleOf } from './problems.ts';
import { localRules, potCautions, shortName, warningOf } from './warnings.ts';

const stageWords: Readonly<Record<HeatStage, string>> = {
  waxes: 'First the wax',
  butters: 'Then the butters',
  oils: 'Then the oils',
  'stir-in': 'Stir in',
  'cool-down': 'Last, off the bath',
};

const stageLines = ({ stages }: HeatPlan): string[] =>
  stages.map(({ stage, ingredients }) => `${stageWords[stage]}: ${ingredients.map(shortName).join(', ')}.`);

const hasSensitive = (plan: HeatPlan): boolean => plan.sensitive.length > 0;

const heatLines = (plan: HeatPlan): string[] => [
  ...stageLines(plan),
  `Water bath ${both(plan.bathC[0])} to ${both(plan.bathC[1])}: never to the boil, never unwatched, no water or steam into the melt.`,
  `Pour at about ${both(plan.pourC)}. If it was strained, warm it again first: it sets in the cloth.`,
  ...(hasSensitive(plan)
    ? [
        `Scent and vitamin E go in below ${both(plan.addAromaBelowC)}, just before pouring: heat drives scent off.`,
      ]
    : []),
  ...plan.tooHotFor.map(
    ({ ingredient, maxC }) =>
      `${shortName(ingredient)} suffers above ${degrees(maxC)}, and this balm is poured hotter.`,
  ),
];

const coolingLines = ({ mayGrain, firmness }: MeltForecast): string[] => {
  if (mayGrain.length === 0) return [];
  const later = firmness.softerAtFirstPercent > 20 ? ' It firms up over some days to weeks.' : '';
  return [`Cool it fast and evenly, away from draughts, and leave it alone for a day.${later}`];
};

const heatWarnings = (plan: HeatPlan | undefined): Warning[] => {
  if (plan?.lowestFlashPointC === undefined) return [];
  return [
    {
      code: 'aroma-near-flame',
      text: `The scent can catch fire from about ${degrees(plan.lowestFlashPointC)} (from memory): no flame near the melt.`,
    },
  ];
};

/** Of the hazards of a recipe those that belong to making it; who gets it is told with the label and the weigh-out. */
const makingCodes = new Set(['aroma-too-high', 'not-for-lips', 'brings-water']);

const makingWarnings = (resolved: Resolved): Warning[] => {
  const { portions, strained } = mixOf(resolved);
  return hazardsOf({ lines: portions, strained, tooSmall: [] })
    .map(warningOf)
    .filter(({ code }) => makingCodes.has(code));
};

interface Asked {
  readonly text: string;
  readonly figures: { readonly celsius: number; readonly holds: string };
}

const survivesText = (forecast: MeltForecast, celsius: number): Asked | undefined => {
  const holds = holdsAt(forecast.blend, celsius);
  if (!holds.ok) return undefined;
  const soft = forecast.fullyMeltedC !== undefined && celsius >= forecast.fullyMeltedC;
  const text = soft ? 'it is fully melted' : `it ${holdingWords[holds.value]}`;
  return { text: `At ${both(celsius)} ${text}.`, figures: { celsius, holds: soft ? 'melted' : holds.value } };
};

const survivesLines = ({ survives }: MeltForecast): string =>
  `In a warm pocket (37 °C) it ${holdingWords[survives.pocket]}. In a parked car (50 °C and above) no balm keeps its shape.`;

interface Subject {
  readonly name?: string;
  readonly lines: readonly RecipeLine[];
}

const subjectOf = (wish: MeltWish, tools: Tools): Subject | Trouble => {
  if (wish.recipe !== undefined) return findRecipe(wish.recipe, tools.book);
  return { lines: wish.lines ?? [] };
};

const blocksOf = (
  forecast: MeltForecast,
  wish: MeltWish,
  asked: Asked | undefined,
  chart: readonly string[],
): Block[] => {
  const { heat } = forecast;
  // Who asks whether it survives a day does not ask how to make it.
  const wanted = wish.survivesC === undefined || wish.ask === 'heat';
  const plan: Block[] =
    heat && wanted ? [{ kind: 'list', items: [...heatLines(heat), ...coolingLines(forecast)] }] : [];
  const forecastBlocks: Block[] = [
    { kind: 'text', text: meltLine(forecast) },
    { kind: 'text', text: firmnessLine(forecast) },
    { kind: 'text', text: survivesLines(forecast) },
    solidsTable(forecast),
    ...(chart.length > 0 ? [{ kind: 'chart', lines: chart } as const] : []),
  ];
  return [
    ...(asked ? [{ kind: 'text', text: asked.text } as const] : []),
    ...(wish.ask === 'heat' ? [...plan, ...forecastBlocks] : [...forecastBlocks, ...plan]),
    ...forecastAssumed(forecast),
    {
      kind: 'assumed',
      text: 'Settled crystals, weeks after pouring. Reckoned from what each fat and wax does alone; figures in brackets are how far off that may be.',
    },
  ];
};

const next = (name: string | undefined): NextStep[] =>
  name
    ? [
        { label: 'Heat plan', say: `heat plan for "${name}"` },
        { label: '24 × 15 ml', say: `scale "${name}" to 24 tins of 15 ml` },
      ]
    : [];

const answerRecipeMelt = async (wish: MeltWish, tools: Tools): Promise<Answer | Trouble> => {
  const subject = subjectOf(wish, tools);
  if ('code' in subject) return subject;
  const resolved = resolveRecipe(subject.lines, tools.settings.region);
  if (!resolved.ok) return troubleOf(resolved.problem);
  const blend = blendOf(resolved.value.lines);
  if (!blend.ok) return blendTrouble(blend.problem);
  await giveWay();
  const forecast = forecastOf(blend.value);
  const title = subject.name ?? 'Your recipe';
  const asked = wish.survivesC === undefined ? undefined : survivesText(forecast, wish.survivesC);
  const charts = await meltCharts(title, wish.dark ? 'dark' : 'light', {
    name: 'when set and aged',
    forecast,
  });
  const files: readonly AnswerFile[] = charts.files;
  return {
    title: asked ? `${title} at ${degrees(wish.survivesC ?? 0)}` : `${title}: what heat does to it`,
    blocks: blocksOf(forecast, wish, asked, charts.text),
    figures: {
      ...forecastFigures(forecast),
      ...(asked ? { survives: asked.figures } : {}),
      chart: files[0]?.name ?? null,
    },
    warnings: [
      ...forecastWarnings(forecast),
      ...makingWarnings(resolved.value),
      ...heatWarnings(forecast.heat),
      ...potCautions,
      localRules,
    ],
    next: next(subject.name),
    files,
  };
};

/** Answers what heat does to a recipe, or the published melting range of one ingredient or several. */
export const answerMelt = (wish: MeltWish, tools: Tools): Answer | Trouble | Promise<Answer | Trouble> => {
  if (wish.ingredient === undefined) return answerRecipeMelt(wish, tools);
  return wish.others?.length ? answerSeveral([wish.ingredient, ...wish.others]) : answerOne(wish.ingredient);
};
