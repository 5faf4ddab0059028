import { ingredientById } from '../../core/ingredients.ts';
import type { BlendProblem } from '../../core/melt/blend.ts';
import type { FirmnessBand, Holding } from '../../core/melt/firmness.ts';
import type { MeltForecast, MeltWarning, Taken } from '../../core/melt/forecast.ts';
import type { LeftOutReason } from '../../core/melt/treatment.ts';
import type { Interval } from '../../core/melt/uncertainty.ts';
import { convertTemperature } from '../../core/units.ts';
import type { Block, Trouble, Warning } from '../answer.ts';
import type { FigureValue } from '../figures.ts';
import { andList } from './lists.ts';
import { brief } from './numbers.ts';
import { shortName } from './warnings.ts';

/** Whole degrees: the model claims no more. */
export const degrees = (celsius: number): string => `${Math.round(celsius)} °C`;

/** Both scales, the Fahrenheit from the whole degrees shown, so that the two agree. */
export const both = (celsius: number): string => {
  const whole = Math.round(celsius);
  return `${whole} °C (${Math.round(convertTemperature(whole, 'C', 'F'))} °F)`;
};

/** Solids to the nearest 5 %, as far as the model can be trusted. */
export const nearestFive = (percent: number): number => Math.round(percent / 5) * 5;

const span = (interval: Interval | undefined): string =>
  interval ? ` (${Math.round(interval[0])} to ${Math.round(interval[1])})` : '';

/** Firmness as a maker would say it (bands: common practice, no source). */
export const bandWords: Readonly<Record<FirmnessBand, string>> = {
  'does-not-set': 'does not set: it stays a liquid',
  ointment: 'a soft ointment for a jar or tube',
  tin: 'a balm for a tin, soft under the finger',
  stick: 'firm enough for a stick',
  hard: 'very hard: it drags on the skin',
};

export const holdingWords: Readonly<Record<Holding, string>> = {
  'stays-firm': 'keeps its shape',
  soft: 'dents easily: keep it upright and cool',
  slumps: 'slumps',
};

const warningTexts: Readonly<Record<Exclude<MeltWarning, 'rough-estimate'>, string>> = {
  'does-not-set': 'This does not set at room temperature. It needs more wax or hard butter.',
  'liquid-on-a-warm-day': 'It sets in a cool room only; on a warm day it is liquid.',
  'melts-in-a-pocket': 'It dents or slumps in a warm pocket (37 °C).',
  'softer-at-first': 'Softer in its first days: the butter takes time to settle into its hard crystals.',
  'may-grain':
    'Cocoa butter and shea can turn grainy. Cool it fast and evenly; a grainy balm is safe and can be melted again.',
  'carnauba-evidence-conflicts':
    'Carnauba: laboratories find it weak, makers find it the hardest. Make a trial tin.',
  'several-waxes': 'Waxes together can be softer or far harder than their sum. Make a trial tin.',
};

/** Most names in one sentence. */
const mostNames = 4;

/** Says what makes a forecast rough: at least one ingredient's id. */
export const roughText = (because: readonly string[]): string => {
  const named = because.slice(0, mostNames).map(shortName);
  const all = because.length > mostNames ? [...named, 'others'] : named;
  return `A rough estimate: the sums know little of how ${andList(all)} behave${all.length > 1 ? '' : 's'} in so large a share. Make a trial.`;
};

export const forecastWarnings = (forecast: MeltForecast): Warning[] =>
  forecast.warnings.map((code) => ({
    code,
    text: code === 'rough-estimate' ? roughText(forecast.rough.because) : warningTexts[code],
  }));

export const solidsTable = (forecast: MeltForecast): Block => ({
  kind: 'table',
  columns: [
    { title: '°C', align: 'left' },
    ...forecast.solidPercent.map(([celsius]) => ({ title: String(celsius), align: 'right' as const })),
  ],
  rows: [['solid %', ...forecast.solidPercent.map(([, percent]) => `~${nearestFive(percent)}`)]],
});

/** One line: when it softens and melts, each with its own uncertainty. */
export const meltLine = ({ softensC, fullyMeltedC, uncertainty }: MeltForecast): string => {
  if (fullyMeltedC === undefined) return 'Nothing in it sets, so it has no melting point.';
  const soft =
    softensC === undefined
      ? ''
      : `Softens at about ${degrees(softensC)}${span(uncertainty.softensC)}, fully `;
  const melted = `melted at about ${degrees(fullyMeltedC)}${span(uncertainty.fullyMeltedC)}.`;
  return soft === '' ? `Fully ${melted}` : `${soft}${melted}`;
};

export const firmnessLine = ({ firmness, uncertainty }: MeltForecast): string =>
  `At 25 °C: ${bandWords[firmness.band]} (firmness about ${brief(Number(firmness.at25.toPrecision(2)))}, ${brief(Number(uncertainty.firmness[0].toPrecision(2)))} to ${brief(Number(uncertainty.firmness[1].toPrecision(2)))}; 100 is one part of beeswax in four of oil at 20 °C).`;

const whyLeftOut: Readonly<Record<LeftOutReason, string>> = {
  powder: 'a powder',
  herb: 'a herb',
  'water-based': 'brings water',
  'not-dissolved': 'does not dissolve in oil',
};

/** From this percent on it is said how much of the recipe the figures are for. */
const worthSayingPercent = 5;

type Assumed = Pick<MeltForecast, 'leftOut' | 'takenAs'>;

const leftOutText = ({ leftOut }: Assumed): string[] => {
  if (leftOut.length === 0) return [];
  const out = [...new Set(leftOut.map((item) => `${shortName(item.ingredient)} (${whyLeftOut[item.why]})`))];
  const percent = leftOut.reduce((sum, item) => sum + item.percent, 0);
  const rest =
    percent < worthSayingPercent
      ? ''
      : ` The figures are those of the other ${Math.round(100 - percent)} %${leftOut.some(({ why }) => why === 'powder') ? '; powder makes it stiffer than told' : ''}.`;
  return [`Left out of the forecast: ${out.join(', ')}.${rest}`];
};

const takenText = ({ takenAs }: Assumed): string[] => {
  const by = (way: Taken['by'], like?: string): string =>
    [...new Set(takenAs.filter((item) => item.by === way && (like === undefined || item.like === like)))]
      .map(({ ingredient }) => shortName(ingredient))
      .join(', ');
  const acids = by('fatty-acid-rule');
  const scents = by('stand-in', 'essential-oil');
  const oily = by('stand-in', 'vitamin-e');
  return [
    ...(acids ? [`Reckoned from fatty acids: ${acids}.`] : []),
    ...(scents ? [`Taken as scent oil, which never sets: ${scents}.`] : []),
    ...(oily ? [`Taken as a liquid that never sets: ${oily}.`] : []),
  ];
};

/** What the sums left out or took by another ingredient's figures. */
export const forecastAssumed = (forecast: Assumed): Block[] =>
  [...leftOutText(forecast), ...takenText(forecast)].map((text) => ({ kind: 'assumed', text }));

const degreesFigure = (value: number | undefined): FigureValue =>
  value === undefined ? null : Number(value.toFixed(2));

/** The forecast's figures as the contract names them, unrounded to two decimals. */
export const forecastFigures = (forecast: MeltForecast): Record<string, FigureValue> => ({
  softens_c: degreesFigure(forecast.softensC),
  fully_melted_c: degreesFigure(forecast.fullyMeltedC),
  solid_percent: forecast.solidPercent.map(([celsius, percent]) => [celsius, Number(percent.toFixed(2))]),
  firmness: forecast.firmness.band,
  firmness_index: Number(forecast.firmness.at25.toFixed(1)),
  survives_pocket: forecast.survives.pocket,
  bath_c: forecast.heat ? forecast.heat.bathC.map((celsius) => Number(celsius.toFixed(1))) : null,
  pour_c: degreesFigure(forecast.heat?.pourC),
  add_aroma_below_c: degreesFigure(forecast.heat?.addAromaBelowC),
  uncertainty: {
    softens_c: forecast.uncertainty.softensC?.map((value) => Number(value.toFixed(1))) ?? null,
    fully_melted_c: forecast.uncertainty.fullyMeltedC?.map((value) => Number(value.toFixed(1))) ?? null,
  },
  melts_in_order: forecast.order.map((step) => ({
    ingredients: [...step.carriedBy],
    gone_above_c: Number(step.goneAboveC.toFixed(1)),
  })),
});

const names = (ids: readonly string[]): string => ids.map(shortName).join(', ');

/** A thing without figures in a blend may have a melting range of its own. */
const ownRange = (ids: readonly string[]): string => {
  const known = ids.find((id) => ingredientById(id)?.meltC);
  return known ? ` By itself: "melting point of ${shortName(known)}".` : '';
};

/** Why a forecast cannot be made. */
export const blendTrouble = (problem: BlendProblem): Trouble => {
  switch (problem.code) {
    case 'unknown-ingredient':
      return {
        code: 'unknown-ingredient',
        text: `I do not know the ingredient "${problem.ingredient}". Try one I know, for example "shea butter".`,
      };
    case 'no-melting-data':
      return {
        code: 'missing',
        text: `Nobody I could read has measured how ${andList(problem.ingredients.map(shortName))} melt${problem.ingredients.length > 1 ? '' : 's'} in oil, so I will not guess. I know beeswax, candelilla, carnauba, rice bran and sunflower wax.${ownRange(problem.ingredients)}`,
      };
    case 'nothing-melts':
      return {
        code: 'missing',
        text: `There is nothing in it that melts: ${names(problem.leftOut.map((item) => item.ingredient))}. Add the oil, butter or wax.`,
      };
    case 'no-lines':
    case 'bad-weight':
      return {
        code: 'bad-quantity',
        text: 'There is nothing to weigh in that recipe. Try "melt 20% beeswax, 80% olive oil".',
      };
  }
};
