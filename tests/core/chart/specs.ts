import { type ChartMark, chartTemperatures, type MeltChartSpec } from '../../../core/chart/chart-spec.ts';
import { type MeltChart, meltChart } from '../../../core/chart/melt-chart.ts';
import type { ThemeName } from '../../../core/chart/theme.ts';
import { forecastOf, type MeltForecast } from '../../../core/melt/forecast.ts';
import { solidCurve } from '../../../core/melt/temperatures.ts';
import { blended, type Recipe, worked } from '../melt/blends.ts';

export const words = { solid: 'solid %', fresh: 'freshly poured', range: 'uncertain' } as const;

export const places: readonly ChartMark[] = [
  { role: 'place', label: 'room', celsius: 20 },
  { role: 'place', label: 'hand', celsius: 33 },
  { role: 'place', label: 'pocket', celsius: 37 },
];

const changes = (forecast: MeltForecast, curve: 0 | 1): readonly ChartMark[] => [
  ...(forecast.softensC === undefined
    ? []
    : [{ role: 'change' as const, label: 'softens', celsius: forecast.softensC, curve }]),
  ...(forecast.fullyMeltedC === undefined
    ? []
    : [{ role: 'change' as const, label: 'melted', celsius: forecast.fullyMeltedC, curve }]),
  ...(forecast.heat ? [{ role: 'pour' as const, label: 'pour', celsius: forecast.heat.pourC, curve }] : []),
];

/** The chart of one balm, as an answer would ask for it. */
export const chartOf = (recipe: Recipe, theme: ThemeName = 'light', title = 'A balm'): MeltChartSpec => {
  const forecast = forecastOf(blended(recipe));
  const marks = [...places, ...changes(forecast, 0)];
  const celsius = chartTemperatures(marks.map((mark) => mark.celsius));
  const aged = worked(solidCurve(forecast.blend, celsius));
  const fresh = worked(solidCurve(forecast.blend, celsius, 'fresh'));
  return { title, words, theme, marks, curves: [{ name: 'when set and aged', aged, fresh }] };
};

/** Before and after a swap. */
export const swapChartOf = (before: Recipe, after: Recipe, theme: ThemeName = 'light'): MeltChartSpec => {
  const [first, second] = [forecastOf(blended(before)), forecastOf(blended(after))];
  const marks = [...places, ...changes(first, 0), ...changes(second, 1)];
  const celsius = chartTemperatures(marks.map((mark) => mark.celsius));
  return {
    title: 'Before and after',
    words,
    theme,
    marks,
    curves: [
      { name: 'before: beeswax', aged: worked(solidCurve(first.blend, celsius)) },
      { name: 'after: candelilla', aged: worked(solidCurve(second.blend, celsius)) },
    ],
  };
};

export const balm: Recipe = { beeswax: 20, 'cocoa-butter': 15, 'shea-butter': 15, 'sunflower-oil': 50 };
export const candelillaBalm: Recipe = {
  'candelilla-wax': 12,
  'cocoa-butter': 16.5,
  'shea-butter': 16.5,
  'sunflower-oil': 55,
};
export const stick: Recipe = { beeswax: 30, 'carnauba-wax': 5, 'shea-butter': 10, 'sunflower-oil': 55 };

export const drawn = (spec: MeltChartSpec): MeltChart => worked(meltChart(spec));
