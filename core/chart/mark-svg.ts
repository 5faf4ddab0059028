import type { ChartLayout, PlacedMark } from './chart-layout.ts';
import { type ChartMark, type MeltChartSpec, percentAt } from './chart-spec.ts';
import { barSvg, lineSvg, n, signSvg, textSvg } from './svg-parts.ts';
import type { Theme } from './theme.ts';

/** One picture's spec, layout and colours, as the drawing functions share them. */
export interface Drawing {
  readonly spec: MeltChartSpec;
  readonly layout: ChartLayout;
  readonly theme: Theme;
}

const signRadius = { onCurve: 6.5, inText: 5 } as const;

const colourOf = (theme: Theme, { role, curve }: ChartMark): string => {
  if (role === 'place') return theme.quiet;
  return curve === undefined ? theme.text : theme.curves[curve];
};

const dashes = { place: ' stroke-dasharray="2 5"', change: '', pour: ' stroke-dasharray="9 5"' } as const;

/** The upright line from the plot's floor to the label. */
export const poleSvg = ({ layout, theme }: Drawing, { mark, x, top }: PlacedMark): string => {
  const look = `stroke="${colourOf(theme, mark)}" stroke-width="2"${dashes[mark.role]}`;
  return lineSvg(x, top, x, layout.plot.y + layout.plot.height, look);
};

/** Height at which a mark sits: on its curve, or on the floor when it belongs to none. */
const heightOf = ({ spec, layout }: Drawing, { curve, celsius }: ChartMark): number => {
  const aged = curve === undefined ? undefined : spec.curves[curve]?.aged;
  const percent = aged ? percentAt(aged, celsius) : 0;
  const { y } = layout.axes;
  return y.at(Math.min(y.domain[1], Math.max(0, percent)));
};

const inPlot = ({ plot }: ChartLayout, x: number): number =>
  Math.min(plot.x + plot.width, Math.max(plot.x, x));

/** What a mark shows inside the plot: how far off it may be, and its curve's sign. */
export const pointSvg = (drawing: Drawing, { mark, x }: PlacedMark): string => {
  const { layout, theme } = drawing;
  const y = heightOf(drawing, mark);
  const [low, high] = (mark.rangeC ?? []).map((celsius) => inPlot(layout, layout.axes.x.at(celsius)));
  const bar = low === undefined || high === undefined ? '' : barSvg(low, high, y, colourOf(theme, mark));
  const signed = mark.role === 'change' && mark.curve !== undefined;
  return bar + (signed ? signSvg(theme, mark.curve, x, y, signRadius.onCurve) : '');
};

/** The label, on a ground of its own so that nothing shines through. */
export const labelSvg = ({ theme }: Drawing, { mark, text, box, badge }: PlacedMark): string => {
  const size = `width="${n(box.width)}" height="${n(box.height)}"`;
  const ground = `<rect x="${n(box.x)}" y="${n(box.y)}" ${size} fill="${theme.background}"/>`;
  const sign =
    badge && mark.curve !== undefined ? signSvg(theme, mark.curve, badge.x, badge.y, signRadius.inText) : '';
  return ground + sign + textSvg(text, colourOf(theme, mark));
};

export const legendSignSvg = ({ spec, theme }: Drawing, curve: 0 | 1, x: number, y: number): string =>
  spec.curves.length > 1 ? signSvg(theme, curve, x, y, signRadius.onCurve) : '';
