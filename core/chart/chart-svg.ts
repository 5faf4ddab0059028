import { celsiusOf } from './axis.ts';
import { temperatureRows } from './chart-axes.ts';
import type { ChartLayout } from './chart-layout.ts';
import type { MeltChartSpec, Point } from './chart-spec.ts';
import { type LegendItem, sampleWidth } from './legend.ts';
import { type Drawing, labelSvg, legendSignSvg, pointSvg, poleSvg } from './mark-svg.ts';
import { barSvg, lineSvg, n, textSvg } from './svg-parts.ts';
import { type Theme, themes } from './theme.ts';

/** The family the pictures are drawn in; its files come with the program. */
const chartFont = 'DejaVu Sans Condensed';

/** Lines differ in their dashes, not in colour alone. */
const curveLook = (theme: Theme, kind: 'aged' | 'fresh', curve: 0 | 1): string => {
  const colour = theme.curves[curve];
  if (kind === 'fresh')
    return `stroke="${colour}" stroke-width="2.5" stroke-dasharray="0.1 6" stroke-linecap="round"`;
  const dashes = curve === 1 ? ' stroke-dasharray="15 8"' : '';
  return `stroke="${colour}" stroke-width="4.5" stroke-linejoin="round"${dashes}`;
};

const gridSvg = ({ layout: { axes, plot }, theme }: Drawing): string => {
  const right = plot.x + plot.width;
  const floor = plot.y + plot.height;
  const rows = temperatureRows(plot);
  const faint = `stroke="${theme.grid}" stroke-width="1.5"`;
  const quiet = `stroke="${theme.quiet}" stroke-width="2"`;
  return [
    ...axes.percentTicks.map((value) => lineSvg(plot.x, axes.y.at(value), right, axes.y.at(value), faint)),
    lineSvg(plot.x, floor, right, floor, quiet),
    ...axes.celsiusTicks.map((value) => lineSvg(axes.x.at(value), floor, axes.x.at(value), floor + 8, quiet)),
    ...axes.fahrenheitTicks.map((value) => {
      const x = axes.x.at(celsiusOf(value));
      return lineSvg(x, rows.fahrenheit - 6, x, rows.fahrenheit, quiet);
    }),
  ].join('');
};

const pathOf = ({ axes }: ChartLayout, points: readonly Point[]): string =>
  points
    .map(([celsius, percent], at) => {
      const y = axes.y.at(Math.min(axes.y.domain[1], Math.max(0, percent)));
      return `${at === 0 ? 'M' : 'L'}${n(axes.x.at(celsius))} ${n(y)}`;
    })
    .join('');

const curvesSvg = ({ spec, layout, theme }: Drawing): string =>
  spec.curves
    .map(({ aged, fresh }, at) => {
      const path = (points: readonly Point[], kind: 'aged' | 'fresh'): string =>
        `<path d="${pathOf(layout, points)}" fill="none" ${curveLook(theme, kind, at === 0 ? 0 : 1)}/>`;
      return (fresh ? path(fresh, 'fresh') : '') + path(aged, 'aged');
    })
    .join('');

const sampleSvg = (drawing: Drawing, { sample, x, y }: LegendItem): string => {
  const { theme } = drawing;
  if (sample.kind === 'range') return barSvg(x + 2, x + sampleWidth - 2, y, theme.text);
  const line = lineSvg(x, y, x + sampleWidth, y, curveLook(theme, sample.kind, sample.curve));
  const middle = x + sampleWidth / 2;
  return sample.kind === 'aged' ? line + legendSignSvg(drawing, sample.curve, middle, y) : line;
};

/** The picture as SVG, for a layout of the same figures. */
export const svgOf = (spec: MeltChartSpec, layout: ChartLayout): string => {
  const theme = themes[spec.theme];
  const drawing: Drawing = { spec, layout, theme };
  const { width, height, marks, legend, texts } = layout;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"`,
    ` font-family="${chartFont}"><rect width="${width}" height="${height}" fill="${theme.background}"/>`,
    gridSvg(drawing),
    ...marks.map((placed) => poleSvg(drawing, placed)),
    curvesSvg(drawing),
    ...marks.map((placed) => pointSvg(drawing, placed)),
    ...legend.map((item) => sampleSvg(drawing, item)),
    ...marks.map((placed) => labelSvg(drawing, placed)),
    ...texts
      .filter(({ what }) => what !== 'mark')
      .map((text) => textSvg(text, text.what === 'axis' ? theme.quiet : theme.text)),
    '</svg>',
  ].join('');
};
