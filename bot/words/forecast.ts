import type { BlendProblem } from '../../core/melt/blend.ts';
import type { FirmnessBand, Holding } from '../../core/melt/firmness.ts';
import type { MeltForecast, MeltWarning } from '../../core/melt/forecast.ts';
import type { LeftOutReason } from '../../core/melt/treatment.ts';
import type { Interval } from '../../core/melt/uncertainty.ts';
import { convertTemperature } from '../../core/units.ts';
import type { Block, Trouble, Warning } from '../answer.ts';
import type { FigureValue } from '../figures.ts';
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

const warningTexts: Readonly<Record<MeltWarning, string>> = {
  'does-not-set': 'This does not set at room temperature. It needs more wax or hard butter.',
  'liquid-on-a-warm-day': 'It sets in a cool room only; on a warm day it is liquid.',
  'melts-in-a-pocket': 'It dents or slumps in a warm pocket (37 °C).',
  'softer-at-first': 'Softer in its first days: the butter takes time to settle into its hard crystals.',
  'may-grain':
    'Cocoa butter and shea can turn grainy. Cool it fast and evenly; a grainy balm is safe and can be melted again.',
  'carnauba-evidence-conflicts':
    'Carnauba: laboratories find it weak, makers find it the hardest. Make a trial tin.',
  'several-waxes': 'Waxes together can be softer or far harder than their sum. Make a trial tin.',
  'rough-estimate': 'A rough estimate: much of this recipe is outside what the sums know well.',
};

export const forecastWarnings = (forecast: MeltForecast): Warning[] =>
  forecast.warnings.map((code) => ({ code, text: warningTexts[code] }));

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

/** What the sums left out or took by another ingredient's figures. */
export const forecastAssumed = ({ leftOut, takenAs }: MeltForecast): Block[] => {
  const out = leftOut.map((item) => `${shortName(item.ingredient)} (${whyLeftOut[item.why]})`);
  const weak = takenAs.filter((item) => item.by !== 'class').map((item) => shortName(item.ingredient));
  return [
    ...(out.length > 0 ? [`Left out of the forecast: ${out.join(', ')}.`] : []),
    ...(weak.length > 0 ? [`Reckoned from fatty acids or a near relative: ${weak.join(', ')}.`] : []),
  ].map((text) => ({ kind: 'assumed', text }));
};

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
        text: `Nobody I could read has measured how ${names(problem.ingredients)} melts in oil, so I will not guess. I know beeswax, candelilla, carnauba, rice bran and sunflower wax.`,
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
