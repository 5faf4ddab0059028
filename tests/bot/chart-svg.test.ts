import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { drawOptions } from '../../bot/pictures/draw.ts';
import { fontFiles } from '../../bot/pictures/fonts.ts';
import { type Box, overlap } from '../../core/chart/box.ts';
import { chartTemperatures, percentAt } from '../../core/chart/chart-spec.ts';
import { forecastOf } from '../../core/melt/forecast.ts';
import { solidCurve } from '../../core/melt/temperatures.ts';
import { balm, candelillaBalm, chartOf, drawn, stick, swapChartOf } from '../core/chart/specs.ts';
import { blended, type Recipe, worked } from '../core/melt/blends.ts';

// The boxes here are measured by the library that draws, from the SVG as it is: not those the layout reckoned.

const options = drawOptions(fontFiles());

interface Inked extends Box {
  readonly text: string;
  /** The mark's label has this colour as its pole has; grey texts are the axes'. */
  readonly fill: string;
}

const headOf = (svg: string): string => /^<svg[^>]*>/.exec(svg)?.[0] ?? '';
const unescaped = (text: string): string =>
  text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');

/** Every text of a picture with the box its ink fills. */
const inkOf = (svg: string): readonly Inked[] =>
  (svg.match(/<text.*?<\/text>/g) ?? []).map((element) => {
    const box = new Resvg(`${headOf(svg)}${element}</svg>`, options).getBBox();
    const text = unescaped(element.replace(/<[^>]*>/g, ''));
    if (!box) throw new Error(`no ink: ${text}`);
    const { x, y, width, height } = box;
    return { x, y, width, height, text, fill: /fill="([^"]*)"/.exec(element)?.[1] ?? '' };
  });

const attribute = (element: string, name: string): number =>
  Number(new RegExp(` ${name}="([^"]*)"`).exec(element)?.[1]);

/** Upright lines longer than a tick: the poles of the marks. */
const polesOf = (
  svg: string,
): readonly { readonly x: number; readonly top: number; readonly floor: number }[] =>
  (svg.match(/<line[^>]*>/g) ?? []).flatMap((element) => {
    const [x1, x2, y1, y2] = ['x1', 'x2', 'y1', 'y2'].map((name) => attribute(element, name));
    const [top, floor] = [Math.min(y1 ?? 0, y2 ?? 0), Math.max(y1 ?? 0, y2 ?? 0)];
    return x1 !== undefined && x1 === x2 && floor - top > 60 ? [{ x: x1, top, floor }] : [];
  });

const clashes = (texts: readonly Inked[]): readonly string[] =>
  texts.flatMap((a, at) =>
    texts.slice(at + 1).flatMap((b) => (overlap(a, b) ? [`${a.text} / ${b.text}`] : [])),
  );

const crossed = (svg: string, texts: readonly Inked[]): readonly string[] =>
  polesOf(svg).flatMap(({ x, top, floor }) =>
    texts
      .filter((text) => x > text.x && x < text.x + text.width)
      .filter((text) => top < text.y && floor > text.y + text.height)
      .map(({ text }) => `line at ${x} through ${text}`),
  );

const long = "The Fernlea Makers' Circle's long-named midwinter hand balm: carnauba wax for beeswax";
const solid: Recipe = { 'carnauba-wax': 100 };
const wax: Recipe = { beeswax: 100 };
const liquid: Recipe = { 'sunflower-oil': 100 };
const nearlyLiquid: Recipe = { beeswax: 1, 'sunflower-oil': 99 };
const fats: Recipe = { 'coconut-oil': 60, 'cocoa-butter': 40 };

const titled = (spec: ReturnType<typeof chartOf>, title: string) => ({ ...spec, title });

describe.each(['light', 'dark'] as const)('the picture, %s, as it is drawn', (theme) => {
  it.each([
    ['a balm', chartOf(balm, theme)],
    ['a stick of two waxes', chartOf(stick, theme)],
    ['an oil that never sets', chartOf(liquid, theme)],
    ['hardly any wax', chartOf(nearlyLiquid, theme)],
    ['beeswax alone', chartOf(wax, theme)],
    ['carnauba alone', chartOf(solid, theme)],
    ['soft fats', chartOf(fats, theme)],
    ['a long name', chartOf(balm, theme, long)],
    ['a name without a space', chartOf(balm, theme, 'Handbalsam'.repeat(20))],
    ['a name in signs', chartOf(balm, theme, '<&"> Ærøskøbing’s balm №1, 100 % <b>')],
    ['a swap', swapChartOf(balm, candelillaBalm, theme)],
    ['a swap with a long name', titled(swapChartOf(balm, candelillaBalm, theme), long)],
    ['a swap of what is the same', swapChartOf(balm, balm, theme)],
    ['a swap of waxes alone', swapChartOf(wax, solid, theme)],
    ['a swap from nothing solid', swapChartOf(liquid, solid, theme)],
    ['a swap to nothing solid', swapChartOf(balm, liquid, theme)],
    ['a swap of fats', swapChartOf(fats, { 'shea-butter': 100 }, theme)],
  ])('should keep every text of %s inside and apart, and no line through one', (_name, spec) => {
    const { svg, layout } = drawn(spec);
    const texts = inkOf(svg);
    expect(texts.length).toBeGreaterThan(12);
    expect(clashes(texts)).toEqual([]);
    expect(crossed(svg, texts)).toEqual([]);
    const outside = texts.filter(
      ({ x, y, width, height }) => x < 0 || y < 0 || x + width > layout.width || y + height > layout.height,
    );
    expect(outside).toEqual([]);
  });
});

describe('a long title', () => {
  const titleOf = (title: string): readonly string[] =>
    drawn(chartOf(balm, 'light', title))
      .layout.texts.filter(({ what }) => what === 'title')
      .map(({ text }) => text);

  it('should stand in two lines, so that what changed can be read', () => {
    const lines = titleOf(long);
    expect(lines).toHaveLength(2);
    expect(lines.join(' ')).toBe(long);
  });

  it('should be cut where two lines do not hold it', () => {
    const lines = titleOf('winter balm '.repeat(20));
    expect(lines).toHaveLength(2);
    expect(lines[1]?.endsWith('…')).toBe(true);
    expect(titleOf('Winter balm')).toEqual(['Winter balm']);
    expect(titleOf('')).toEqual([]);
  });
});

describe('a mark on its curve', () => {
  it.each([
    ['carnauba alone', solid],
    ['beeswax alone', wax],
    ['a balm', balm],
  ])('should stand at the solids of its temperature: %s', (_name, recipe) => {
    const { blend, fullyMeltedC = Number.NaN, softensC = Number.NaN } = forecastOf(blended(recipe));
    const curve = worked(solidCurve(blend, chartTemperatures([20, 33, 37, softensC, fullyMeltedC])));
    expect(percentAt(curve, fullyMeltedC)).toBeLessThan(0.01);
    expect(percentAt(curve, softensC)).toBeCloseTo(5, 1);
  });
});
