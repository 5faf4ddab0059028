import { celsiusOf, fahrenheit, type Scale, scaleOf, stepFor, ticksOf, whole } from './axis.ts';
import type { Box } from './box.ts';
import { type ChartFigures, highestPercent, temperatureSpan } from './chart-spec.ts';
import { drawable, shortened, textWidth } from './chart-text.ts';
import { lineBox, type PlacedText, placedText, sizes } from './placed-text.ts';

export interface ChartAxes {
  readonly x: Scale;
  readonly y: Scale;
  readonly celsiusTicks: readonly number[];
  readonly fahrenheitTicks: readonly number[];
  readonly percentTicks: readonly number[];
}

/** Most ticks that leave their labels room at the chart's text size. */
const mostTicks = { celsius: 8, fahrenheit: 7, percent: 5 } as const;
const leastSpanC = 10;
const leastPercent = 10;

/** At least 10 °C wide, so that the scale never divides by nothing. */
const widened = ([low, high]: readonly [number, number]): readonly [number, number] => {
  const missing = Math.max(0, leastSpanC - (high - low)) / 2;
  return [low - missing, high + missing];
};

/** The upright axis starts at 0 and ends on the round figure above the highest solids: 20 % must not look like 80 %. */
const percentDomain = (figures: ChartFigures): readonly [number, number] => {
  const highest = Math.min(100, Math.max(leastPercent, highestPercent(figures)));
  const step = stepFor(highest, mostTicks.percent);
  return [0, Math.min(100, Math.ceil(highest / step - 1e-9) * step)];
};

/** The rails of both axes; they do not hang on where the plot stands. */
export const axisDomains = (
  figures: ChartFigures,
): Omit<ChartAxes, 'y'> & { percent: readonly [number, number] } => {
  const celsius = widened(temperatureSpan(figures));
  const degreesF = [fahrenheit(celsius[0]), fahrenheit(celsius[1])] as const;
  const percent = percentDomain(figures);
  return {
    percent,
    x: scaleOf(celsius, [sizes.plotLeft, sizes.plotRight]),
    celsiusTicks: ticksOf(celsius, stepFor(celsius[1] - celsius[0], mostTicks.celsius)),
    fahrenheitTicks: ticksOf(degreesF, stepFor(degreesF[1] - degreesF[0], mostTicks.fahrenheit)),
    percentTicks: ticksOf(percent, stepFor(percent[1], mostTicks.percent)),
  };
};

const temperatureRow = (
  unit: string,
  y: number,
  ticks: readonly { readonly value: number; readonly x: number }[],
): readonly PlacedText[] => [
  placedText('axis', unit, { x: sizes.plotLeft - 34, y, align: 'right' }),
  ...ticks.map(({ value, x }) => placedText('axis', whole(value), { x, y, align: 'middle' })),
];

const turnedTitle = (solid: string, plot: Box): PlacedText => {
  const text = shortened(drawable(solid), sizes.text, plot.height);
  const long = textWidth(text, sizes.text);
  const box: Box = {
    x: sizes.edge / 2,
    y: plot.y + (plot.height - long) / 2,
    width: sizes.text * lineBox,
    height: long,
  };
  return { what: 'axis', text, size: sizes.text, weight: 'regular', turned: true, box };
};

/** Top edges of the two rows of temperatures. */
export const temperatureRows = (plot: Box): { readonly celsius: number; readonly fahrenheit: number } => {
  const celsius = plot.y + plot.height + sizes.axisGap;
  return { celsius, fahrenheit: celsius + sizes.line + 4 };
};

/** All texts of the axes: percent at the left, °C below the plot, °F below that. */
export const axisTexts = (axes: ChartAxes, plot: Box, solid: string): readonly PlacedText[] => {
  const rows = temperatureRows(plot);
  const half = (sizes.text * lineBox) / 2;
  return [
    ...(solid === '' ? [] : [turnedTitle(solid, plot)]),
    ...axes.percentTicks.map((value) =>
      placedText('axis', whole(value), {
        x: sizes.plotLeft - 10,
        y: axes.y.at(value) - half,
        align: 'right',
      }),
    ),
    ...temperatureRow(
      '°C',
      rows.celsius,
      axes.celsiusTicks.map((value) => ({ value, x: axes.x.at(value) })),
    ),
    ...temperatureRow(
      '°F',
      rows.fahrenheit,
      axes.fahrenheitTicks.map((value) => ({ value, x: axes.x.at(celsiusOf(value)) })),
    ),
  ];
};
