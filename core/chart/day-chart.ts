import type { Box } from './box.ts';
import { drawable, shortened } from './chart-text.ts';
import { type PlacedText, placedText, sizes } from './placed-text.ts';
import { lineSvg, n, textSvg } from './svg-parts.ts';
import { type Theme, type ThemeName, themes } from './theme.ts';

/** A step of a day: its words and its place in minutes. */
export interface DayStep {
  readonly text: string;
  readonly atMin: number;
  readonly minutes: number;
  /** Drawn in the colour of heat. */
  readonly hot?: boolean;
}

export interface DaySpec {
  readonly title: string;
  /** Lines above the bars: what is done on the days before. */
  readonly before: readonly string[];
  readonly steps: readonly DayStep[];
  /** Words of a tick: a clock time, or minutes from the start. */
  tick(atMin: number): string;
  readonly theme: ThemeName;
}

export interface PlacedStep {
  readonly label: PlacedText;
  /** The whole row's track, and the part of it that the step fills. */
  readonly track: Box;
  readonly bar: Box;
  readonly hot: boolean;
}

/** Where everything stands, in the picture's own units: 720 wide, as high as it needs to be. */
export interface DayLayout {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly PlacedText[];
  readonly steps: readonly PlacedStep[];
  readonly ticks: readonly { readonly x: number; readonly label: PlacedText }[];
  readonly axisY: number;
}

const barHeight = 14;
const rowGap = 16;
const rowHeight = sizes.line + barHeight + rowGap;
/** A bar is never too short to be seen. */
const shortestBar = 6;
const inner = sizes.width - 2 * sizes.edge;
/** Blank between the words of neighbouring ticks. */
const tickGap = 16;

/** Text of one line, cut to the picture's width. */
const lineOf = (
  what: PlacedText['what'],
  text: string,
  y: number,
  size: number,
  bold = false,
): PlacedText => {
  const weight = bold ? 'bold' : 'regular';
  return placedText(
    what,
    shortened(drawable(text), size, inner, weight),
    { x: sizes.edge, y },
    { size, weight },
  );
};

interface Span {
  readonly from: number;
  readonly to: number;
}

const spanOf = (steps: readonly DayStep[]): Span => {
  const from = Math.min(...steps.map(({ atMin }) => atMin));
  const to = Math.max(...steps.map(({ atMin, minutes }) => atMin + minutes));
  return { from, to: Math.max(to, from + 1) };
};

const xAt = ({ from, to }: Span, atMin: number): number =>
  sizes.edge + (inner * (atMin - from)) / (to - from);

const placedStep = (step: DayStep, y: number, span: Span): PlacedStep => {
  const left = Math.min(xAt(span, step.atMin), sizes.width - sizes.edge - shortestBar);
  const right = xAt(span, step.atMin + step.minutes);
  const at = { y: y + sizes.line, height: barHeight };
  return {
    label: lineOf('mark', step.text, y, sizes.text),
    track: { x: sizes.edge, width: inner, ...at },
    bar: { x: left, width: Math.max(shortestBar, right - left), ...at },
    hot: step.hot ?? false,
  };
};

const tickSteps = [15, 30, 60, 120, 240, 480, 960, 1920, 3840] as const;

type Tick = DayLayout['ticks'][number];

const ticksEvery = (stepMin: number, spec: DaySpec, span: Span, y: number): Tick[] => {
  const ticks: Tick[] = [];
  for (let at = Math.ceil(span.from / stepMin) * stepMin; at <= span.to; at += stepMin) {
    const x = xAt(span, at);
    const label = placedText('axis', drawable(spec.tick(at)), { x, y, align: 'middle' });
    const left = Math.min(Math.max(label.box.x, sizes.edge), sizes.width - sizes.edge - label.box.width);
    ticks.push({ x, label: { ...label, box: { ...label.box, x: left } } });
  }
  return ticks;
};

const apart = (ticks: readonly Tick[]): boolean =>
  ticks.every(({ label: { box } }, at) => {
    const next = ticks[at + 1]?.label.box;
    return !next || box.x + box.width + tickGap <= next.x;
  });

/** The finest ticks whose words stand apart. */
const ticksOf = (spec: DaySpec, span: Span, y: number): readonly Tick[] => {
  for (const stepMin of tickSteps) {
    if ((span.to - span.from) / stepMin > 40) continue;
    const ticks = ticksEvery(stepMin, spec, span, y);
    if (apart(ticks)) return ticks;
  }
  return [];
};

const layoutOf = (spec: DaySpec): DayLayout => {
  const title = lineOf('title', spec.title, sizes.edge, sizes.title, true);
  const top = sizes.edge + sizes.line + 10;
  const before = spec.before.map((text, at) => lineOf('legend', text, top + at * sizes.line, sizes.text));
  const first = top + before.length * sizes.line + (before.length > 0 ? rowGap : 0);
  const span = spanOf(spec.steps);
  const steps = spec.steps.map((step, at) => placedStep(step, first + at * rowHeight, span));
  const axisY = first + steps.length * rowHeight;
  const ticks = ticksOf(spec, span, axisY + sizes.axisGap);
  return {
    width: sizes.width,
    height: Math.ceil(axisY + sizes.axisGap + sizes.line + sizes.edge),
    texts: [title, ...before],
    steps,
    ticks,
    axisY,
  };
};

const boxSvg = ({ x, y, width, height }: Box, colour: string): string =>
  `<rect x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}" rx="4" fill="${colour}"/>`;

const stepSvg = ({ label, track, bar, hot }: PlacedStep, theme: Theme): string =>
  textSvg(label, theme.text) +
  boxSvg(track, theme.grid) +
  boxSvg(bar, hot ? theme.curves[0] : theme.curves[1]);

const svgOf = ({ width, height, texts, steps, ticks, axisY }: DayLayout, theme: Theme): string =>
  [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"`,
    ` font-family="DejaVu Sans Condensed"><rect width="${width}" height="${height}" fill="${theme.background}"/>`,
    ...texts.map((text) => textSvg(text, text.what === 'legend' ? theme.quiet : theme.text)),
    ...steps.map((step) => stepSvg(step, theme)),
    lineSvg(sizes.edge, axisY, width - sizes.edge, axisY, `stroke="${theme.quiet}" stroke-width="2"`),
    ...ticks.map(
      ({ x, label }) =>
        lineSvg(x, axisY, x, axisY + 8, `stroke="${theme.quiet}" stroke-width="2"`) +
        textSvg(label, theme.quiet),
    ),
    '</svg>',
  ].join('');

export interface DayChart {
  readonly svg: string;
  readonly layout: DayLayout;
}

/** Most steps one picture shows. */
export const mostDaySteps = 40;

/**
 * A day as a picture: each step's words above a bar at its place in time, clock times below. Nothing for no steps, more
 * than forty, or times that are no numbers. Texts are shortened to the width and escaped for XML.
 */
export const dayChart = (spec: DaySpec): DayChart | undefined => {
  const sound = spec.steps.every(
    ({ atMin, minutes }) => Number.isFinite(atMin) && Number.isFinite(minutes) && minutes >= 0,
  );
  if (!sound || spec.steps.length === 0 || spec.steps.length > mostDaySteps) return undefined;
  const layout = layoutOf(spec);
  return { svg: svgOf(layout, themes[spec.theme]), layout };
};
