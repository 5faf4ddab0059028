import { type ChartMark, chartTemperatures, type MeltCurve } from '../../core/chart/chart-spec.ts';
import { meltChart } from '../../core/chart/melt-chart.ts';
import { textChart } from '../../core/chart/text-chart.ts';
import type { ThemeName } from '../../core/chart/theme.ts';
import type { Blend } from '../../core/melt/blend.ts';
import type { MeltForecast } from '../../core/melt/forecast.ts';
import { solidCurve } from '../../core/melt/temperatures.ts';
import type { AnswerFile } from '../answer.ts';
import { giveWay } from '../turns.ts';

export interface Charts {
  readonly text: readonly string[];
  readonly files: readonly AnswerFile[];
}

const none: Charts = { text: [], files: [] };

/** Places a balm gets to, in °C: a room, a hand and a trouser pocket (common practice, no source). */
const places: readonly ChartMark[] = [
  { role: 'place', label: 'room', celsius: 20 },
  { role: 'place', label: 'hand', celsius: 33 },
  { role: 'place', label: 'pocket', celsius: 37 },
];

/** One balm's forecast with the name its curve carries. */
export interface Charted {
  readonly name: string;
  readonly forecast: MeltForecast;
}

const changes = ({ forecast }: Charted, curve: 0 | 1): ChartMark[] => {
  const { softensC, fullyMeltedC, uncertainty } = forecast;
  const mark = (
    label: string,
    celsius: number | undefined,
    rangeC: readonly [number, number] | undefined,
  ): ChartMark[] =>
    celsius === undefined ? [] : [{ role: 'change', label, celsius, curve, ...(rangeC ? { rangeC } : {}) }];
  return [
    ...mark('softens', softensC, uncertainty.softensC),
    ...mark('melted', fullyMeltedC, uncertainty.fullyMeltedC),
  ];
};

const pour = ({ forecast }: Charted): ChartMark[] =>
  forecast.heat ? [{ role: 'pour', label: 'pour', celsius: forecast.heat.pourC }] : [];

const points = (blend: Blend, at: readonly number[], state: 'aged' | 'fresh') => {
  const curve = solidCurve(blend, at, state);
  return curve.ok ? curve.value : [];
};

/** A fresh curve is drawn only where it tells something: a butter that still changes. */
const curveOf = ({ name, forecast }: Charted, at: readonly number[]): MeltCurve => {
  const changing = forecast.warnings.includes('softer-at-first');
  return {
    name,
    aged: points(forecast.blend, at, 'aged'),
    ...(changing ? { fresh: points(forecast.blend, at, 'fresh') } : {}),
  };
};

const words = { solid: 'solid %', fresh: 'freshly poured', range: 'uncertain' };

const picture = async (svg: string, name: string): Promise<AnswerFile[]> => {
  const { pngOf } = await import('../pictures/picture.ts');
  return [{ name, type: 'image/png', bytes: await pngOf(svg) }];
};

/**
 * The chart of solids against temperature, in characters and as a picture; two balms for a swap. A picture that cannot
 * be drawn leaves the characters: the answer does not wait for it or fail with it.
 */
export const meltCharts = async (
  title: string,
  theme: ThemeName,
  first: Charted,
  second?: Charted,
): Promise<Charts> => {
  const swap = second ? changes(second, 1) : [];
  const marks = [...changes(first, 0), ...swap, ...pour(second ?? first), ...places];
  const at = chartTemperatures(marks.map((mark) => mark.celsius));
  const one = curveOf(first, at);
  const curves = second ? ([one, curveOf(second, at)] as const) : ([one] as const);
  await giveWay();
  const drawn = meltChart({ title, curves, marks, words, theme });
  const text = textChart({ curves, marks });
  if (!drawn.ok) return text.ok ? { text: text.value, files: [] } : none;
  const name = second ? 'swap-chart.png' : 'melt-chart.png';
  const files = await picture(drawn.value.svg, name).catch(() => []);
  return { text: text.ok ? text.value : [], files };
};
