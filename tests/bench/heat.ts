import { closePictures, pngOf } from '../../bot/pictures/picture.ts';
import { meltChart } from '../../core/chart/melt-chart.ts';
import { design } from '../../core/design/design.ts';
import type { Wishes } from '../../core/design/wishes.ts';
import { blendOf } from '../../core/melt/blend.ts';
import { forecastOf } from '../../core/melt/forecast.ts';
import { swap } from '../../core/melt/swap.ts';
import { solidCurve } from '../../core/melt/temperatures.ts';
import { mixOf } from '../../core/substitute/mix.ts';
import { rank } from '../../core/substitute/rank.ts';
import { median, timed } from './measure.ts';
import { below, type Found, ratio, spread } from './report.ts';

const lines = [
  { ingredient: 'beeswax', weight: 20 },
  { ingredient: 'cocoa-butter', weight: 15 },
  { ingredient: 'shea-butter', weight: 15 },
  { ingredient: 'sweet-almond-oil', weight: 49.5 },
  { ingredient: 'peppermint-essential-oil', weight: 0.5 },
];

const wishes: Wishes = {
  form: 'stick',
  survivesC: 38,
  vegan: true,
  without: ['nuts'],
  with: [{ ingredient: 'shea-butter' }],
};

const hundred = Array.from({ length: 100 }, (_, at) => at * 0.8);

/** A hundred exponentials and a sort: the least that a curve of a hundred points could cost. */
const exponentials = (): number =>
  hundred.map((celsius) => Math.exp(celsius / 100)).sort((a, b) => b - a)[0] ?? 0;

const chartOf = (curve: readonly (readonly [number, number])[]): string => {
  const drawn = meltChart({
    title: 'Fernlea mint lip balm',
    curves: [{ name: 'when set and aged', aged: curve }],
    marks: [{ role: 'place', label: 'pocket', celsius: 37 }],
    words: { solid: 'solid %', fresh: 'freshly poured', range: 'uncertain' },
    theme: 'light',
  });
  return drawn.ok ? drawn.value.svg : '';
};

/** What heat does: the melting model, swaps, the search for a design, and the picture. */
export const heat = async (): Promise<Found> => {
  const blend = blendOf(lines);
  if (!blend.ok)
    return { rows: [], faults: [`the bench recipe has no melting figures: ${blend.problem.code}`] };
  const curve = () => solidCurve(blend.value, hundred);
  const points = curve();
  if (!points.ok) return { rows: [], faults: ['no curve'] };
  const mix = mixOf({ lines, strained: [], volumes: [] });
  const every = () => lines.map(({ ingredient }) => rank(ingredient, mix.portions));
  const swapped = () => swap(lines, 'beeswax', 'candelilla-wax');
  const svg = chartOf(points.value);
  for (const work of [exponentials, curve, every, swapped]) await timed(300, work);
  await pngOf(svg);
  const base = await timed(2000, exponentials);
  const row = (measure: string, times: readonly number[], most: number, aim: string) => ({
    measure,
    ...spread(times),
    ratio: ratio(median(times), median(base)),
    baseline: 'a hundred exponentials, sorted',
    aim: below(median(times), most, aim),
  });
  const found = {
    rows: [
      { measure: 'a hundred exponentials, sorted', ...spread(base) },
      row('curve of 100 points', await timed(2000, curve), 0.15, '< 150 µs'),
      row('forecast with its uncertainty', await timed(500, () => forecastOf(blend.value)), 5, '< 5 ms'),
      row('swap with its range', await timed(500, swapped), 2, '< 2 ms'),
      row('candidates for all five lines', await timed(200, every), 10, '< 10 ms'),
      row('design from wishes', await timed(20, () => design(wishes)), 300, '< 300 ms'),
      row('chart as PNG, on its thread', await timed(60, () => pngOf(svg)), 60, '< 60 ms'),
    ],
  };
  await closePictures();
  return found;
};
