import { scaleOf, whole } from './axis.ts';
import type { Box } from './box.ts';
import { axisDomains, axisTexts, type ChartAxes } from './chart-axes.ts';
import type { ChartMark, MeltChartSpec } from './chart-spec.ts';
import { drawable, shortened, textWidth } from './chart-text.ts';
import { type Flag, flagGap, lanesOf, type PlacedFlag, placeFlags } from './flags.ts';
import { type LegendItem, legendOf } from './legend.ts';
import { lineBox, type PlacedText, placedText, sizes } from './placed-text.ts';

/** A mark where it is drawn: its pole at `x` reaches from the plot's floor up to `top`. */
export interface PlacedMark {
  readonly mark: ChartMark;
  readonly x: number;
  readonly top: number;
  readonly text: PlacedText;
  /** Label and, when there are two curves, the curve's dot before it. */
  readonly box: Box;
  readonly badge?: { readonly x: number; readonly y: number };
}

export interface ChartLayout {
  readonly width: number;
  readonly height: number;
  readonly plot: Box;
  readonly axes: ChartAxes;
  /** Every text of the picture with its box. */
  readonly texts: readonly PlacedText[];
  readonly marks: readonly PlacedMark[];
  readonly legend: readonly LegendItem[];
}

const widestLabel = 300;
/** Keeps the lowest labels clear of the figure at the top of the upright axis. */
const lanesToPlot = 16;
/** Width of the dot before a label that tells which curve it belongs to. */
const badgeWidth = 20;
/** Free at the top of a lane, so that a pole does not touch the label above. */
const poleGap = 3;

const titleWidth = sizes.width - 2 * sizes.edge;
const mostTitleLines = 2;

/** A long title in two lines, as what changed stands at its end; what is longer still is cut. */
const titleLines = (title: string): readonly string[] => {
  const lines = [''];
  for (const word of title.split(' ')) {
    const last = lines.at(-1) ?? '';
    const longer = last === '' ? word : `${last} ${word}`;
    const fits = textWidth(longer, sizes.title, 'bold') <= titleWidth;
    if (fits || last === '' || lines.length === mostTitleLines) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines.map((line) => shortened(line, sizes.title, titleWidth, 'bold')).filter((line) => line !== '');
};

const titleTexts = (title: string): readonly PlacedText[] =>
  titleLines(drawable(title)).map((text, row) =>
    placedText(
      'title',
      text,
      { x: sizes.edge, y: sizes.edge + row * sizes.titleLine },
      { size: sizes.title, weight: 'bold' },
    ),
  );

/** What it is, then whole degrees Celsius; the narrow space keeps figure and unit together. */
const labelOf = (label: string, celsius: number): string => {
  const degrees = `${whole(celsius)}\u202F°C`;
  const room = widestLabel - textWidth(` ${degrees}`, sizes.text);
  return `${shortened(drawable(label), sizes.text, room)} ${degrees}`.trim();
};

interface LabelFlag extends Flag {
  readonly mark: ChartMark;
  readonly text: string;
  readonly badge: number;
}

const flagsOf = (
  { marks, curves }: MeltChartSpec,
  placeOf: (celsius: number) => number,
): readonly LabelFlag[] =>
  marks
    .map((mark) => {
      const { label, celsius, curve } = mark;
      const text = labelOf(label, celsius);
      const badge = curves.length > 1 && curve !== undefined ? badgeWidth : 0;
      return { mark, text, badge, x: placeOf(celsius), width: badge + textWidth(text, sizes.text) };
    })
    .sort((a, b) => a.x - b.x);

const placedMark = (flag: LabelFlag, { left, lane }: PlacedFlag, floor: number): PlacedMark => {
  const top = floor - (lane + 1) * sizes.line;
  const y = top + (sizes.line - sizes.text * lineBox) / 2;
  const text = placedText('mark', flag.text, { x: left + flag.badge, y });
  const box = { ...text.box, x: left, width: flag.width };
  const badge = { x: left + flag.badge / 2 - 2, y: y + box.height / 2 };
  // At the picture's edge a label may hang over its own pole: the pole then ends below it.
  const hangsOver = flag.x > left && flag.x < left + flag.width;
  const end = hangsOver ? top + sizes.line : top + poleGap;
  return { mark: flag.mark, x: flag.x, top: end, text, box, ...(flag.badge > 0 ? { badge } : {}) };
};

/**
 * Where everything stands: title, what the lines mean, lanes for the labels of marks, the plot, degrees Celsius and
 * Fahrenheit. The picture grows downward when the marks need more lanes. The figures must have been checked.
 */
export const layoutOf = (spec: MeltChartSpec): ChartLayout => {
  const title = titleTexts(spec.title);
  const titled = sizes.line + (title.length - 1) * sizes.titleLine + 8;
  const legendTop = sizes.edge + (title.length > 0 ? titled : 0);
  const legend = legendOf(spec, legendTop);
  const domains = axisDomains(spec);
  const flags = flagsOf(spec, domains.x.at);
  const placed = placeFlags(flags, { left: sizes.edge / 2, right: sizes.width - sizes.edge / 2 });
  const floorOfLanes = legendTop + legend.height + lanesOf(placed) * sizes.line;
  const plot: Box = {
    x: sizes.plotLeft,
    y: floorOfLanes + lanesToPlot,
    width: sizes.plotRight - sizes.plotLeft,
    height: sizes.plotHeight,
  };
  const marks = flags.map((flag, at) =>
    placedMark(flag, placed[at] ?? { left: flag.x + flagGap, lane: at }, floorOfLanes),
  );
  const axes: ChartAxes = { ...domains, y: scaleOf(domains.percent, [plot.y + plot.height, plot.y]) };
  return {
    width: sizes.width,
    height: Math.ceil(plot.y + plot.height + sizes.axisGap + 2 * sizes.line + sizes.edge),
    plot,
    axes,
    texts: [
      ...title,
      ...legend.items.map(({ text }) => text),
      ...marks.map(({ text }) => text),
      ...axisTexts(axes, plot, spec.words.solid),
    ],
    marks,
    legend: legend.items,
  };
};
