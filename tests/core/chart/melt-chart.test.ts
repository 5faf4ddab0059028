import { it as property } from '@fast-check/vitest';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Box, overlap } from '../../../core/chart/box.ts';
import type { ChartLayout } from '../../../core/chart/chart-layout.ts';
import type { ChartMark, MeltChartSpec, Point } from '../../../core/chart/chart-spec.ts';
import { meltChart } from '../../../core/chart/melt-chart.ts';
import type { Recipe } from '../melt/blends.ts';
import { balm, candelillaBalm, chartOf, drawn, places, stick, swapChartOf, words } from './specs.ts';

const boxesOf = ({ texts, marks }: ChartLayout): readonly (Box & { readonly name: string })[] => [
  ...texts.filter(({ what }) => what !== 'mark').map(({ box, text }) => ({ ...box, name: text })),
  // A mark's box holds its text and the sign of its curve.
  ...marks.map(({ box, text }) => ({ ...box, name: text.text })),
];

const clashes = (layout: ChartLayout): readonly string[] => {
  const boxes = boxesOf(layout);
  return boxes.flatMap((a, at) =>
    boxes.slice(at + 1).flatMap((b) => (overlap(a, b) ? [`${a.name} / ${b.name}`] : [])),
  );
};

const outside = ({ width, height, ...layout }: ChartLayout): readonly string[] =>
  boxesOf({ width, height, ...layout })
    .filter((box) => box.x < 0 || box.y < 0 || box.x + box.width > width || box.y + box.height > height)
    .map(({ name }) => name);

/** Labels that the upright line of another mark runs through. */
const crossed = ({ marks }: ChartLayout): readonly string[] =>
  marks.flatMap((mark) =>
    marks
      .filter(({ x, top }) => x > mark.box.x && x < mark.box.x + mark.box.width && top < mark.box.y)
      .map((pole) => `${pole.text.text} through ${mark.text.text}`),
  );

const crowd: readonly ChartMark[] = [
  ...places,
  { role: 'place', label: 'warm room', celsius: 28 },
  { role: 'place', label: 'hot day', celsius: 35 },
  { role: 'place', label: 'fever', celsius: 39 },
  { role: 'change', label: 'softens', celsius: 49.5, curve: 0 },
  { role: 'change', label: 'melted', celsius: 54.8, curve: 0, rangeC: [50.9, 58] },
  { role: 'place', label: 'warm car', celsius: 50 },
  { role: 'change', label: 'aroma goes in', celsius: 58 },
  { role: 'pour', label: 'pour', celsius: 60.3, curve: 0 },
];

const usual: readonly (readonly [string, MeltChartSpec])[] = [
  ['a balm', chartOf(balm)],
  ['a butter alone', chartOf({ 'cocoa-butter': 100 }, 'dark')],
  ['a wax-rich stick', chartOf(stick)],
  ['a swap', swapChartOf(balm, candelillaBalm)],
  ['an oil alone', chartOf({ 'sunflower-oil': 100 })],
  ['marks close together', { ...chartOf(balm), marks: crowd }],
  ['a long name', chartOf(balm, 'dark', 'Very <long> & "winter" balm '.repeat(8))],
];

const wax = fc.constantFrom('beeswax', 'candelilla-wax', 'carnauba-wax', 'rice-bran-wax', 'sunflower-wax');
const butter = fc.constantFrom('cocoa-butter', 'shea-butter', 'mango-butter', 'coconut-oil', 'kokum-butter');
const shares = fc.tuple(fc.integer({ min: 3, max: 35 }), fc.integer({ min: 0, max: 45 }));

/** A balm of one wax, one butter and oil. */
const anyBalm: fc.Arbitrary<Recipe> = fc
  .tuple(wax, butter, shares)
  .map(([firm, soft, [w, b]]) => ({ [firm]: w, [soft]: b, 'sunflower-oil': 100 - w - b }));

const theme = fc.constantFrom('light' as const, 'dark' as const);

describe('the chart of any two balms', () => {
  property.prop([anyBalm, anyBalm, theme], { numRuns: 150 })(
    'should keep its texts apart and inside, in light and in dark',
    (before, after, shade) => {
      for (const spec of [swapChartOf(before, after, shade), chartOf(after, shade)]) {
        const { layout } = drawn(spec);
        expect(layout.texts.length).toBeGreaterThan(10);
        expect(clashes(layout)).toEqual([]);
        expect(outside(layout)).toEqual([]);
        expect(crossed(layout)).toEqual([]);
      }
    },
  );
});

describe('the chart of solids', () => {
  it.each(usual)(
    'should keep all texts of %s apart and inside, with no line through a label',
    (_name, spec) => {
      const { layout } = drawn(spec);
      expect(clashes(layout)).toEqual([]);
      expect(outside(layout)).toEqual([]);
      expect(crossed(layout)).toEqual([]);
    },
  );

  it('should have no text smaller than 11 pixels where a phone shows it 360 wide', () => {
    const { layout, svg } = drawn(chartOf(balm));
    const sizes = [...svg.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size));
    expect(sizes).toHaveLength(layout.texts.length);
    expect((Math.min(...sizes) * 360) / layout.width).toBeGreaterThanOrEqual(11);
  });

  it('should put °F where the same °C stand', () => {
    const { layout } = drawn(chartOf(balm));
    const centre = (text: string, row: number): number => {
      const found = layout.texts.filter(
        ({ what, text: own, box }) => what === 'axis' && own === text && box.y > row,
      )[0];
      return found ? found.box.x + found.box.width / 2 : Number.NaN;
    };
    const floor = layout.plot.y + layout.plot.height;
    // 60 °C are 140 °F, by definition of the scales.
    expect(centre('140', floor)).toBeCloseTo(centre('60', floor), 6);
  });

  it('should tell the curves apart without colour: dashes on the second, ring and diamond at its marks', () => {
    const { svg, layout } = drawn(swapChartOf(balm, candelillaBalm));
    expect(svg.match(/stroke-width="4.5"[^>]*stroke-dasharray="15 8"/g)).toHaveLength(2);
    expect(svg).toContain('<circle');
    expect(layout.marks.filter(({ badge }) => badge)).toHaveLength(6);
  });

  it('should show names as text, never as markup', () => {
    const spec = chartOf(balm, 'light', '</text><image href="file:///etc/passwd"/>');
    const { svg } = drawn({ ...spec, marks: [{ role: 'place', label: '<g>&"', celsius: 30 }] });
    expect(svg).not.toContain('<image');
    expect(svg).toContain('&lt;g&gt;&amp;&quot; 30');
  });

  it('should draw the same picture for the same figures', () => {
    expect(drawn(chartOf(balm)).svg).toBe(drawn(chartOf(balm)).svg);
  });

  it.each([
    ['too-few-points', { curves: [{ name: 'x', aged: [[20, 10]] }] }],
    [
      'not-a-number',
      {
        curves: [
          {
            name: 'x',
            aged: [
              [20, Number.NaN],
              [30, 0],
            ],
          },
        ],
      },
    ],
    [
      'temperatures-not-rising',
      {
        curves: [
          {
            name: 'x',
            aged: [
              [30, 1],
              [20, 2],
            ],
          },
        ],
      },
    ],
    ['too-many-marks', { marks: Array.from({ length: 13 }, () => places[0]) }],
    ['not-a-number', { marks: [{ role: 'place', label: 'x', celsius: Number.POSITIVE_INFINITY }] }],
  ])('should name the problem %s', (code, change) => {
    const result = meltChart({ ...chartOf(balm), ...change } as MeltChartSpec);
    expect(result).toMatchObject({ ok: false, problem: { code } });
  });
});

const celsius = fc.double({ min: -40, max: 150, noNaN: true });
const mark: fc.Arbitrary<ChartMark> = fc.record(
  {
    role: fc.constantFrom('place', 'change', 'pour'),
    label: fc.string({ unit: 'grapheme', maxLength: 40 }),
    celsius,
    curve: fc.constantFrom(0 as const, 1 as const),
    rangeC: fc.tuple(celsius, celsius),
  },
  { requiredKeys: ['role', 'label', 'celsius'] },
);
const points: fc.Arbitrary<readonly Point[]> = fc
  .tuple(
    fc.uniqueArray(fc.integer({ min: -40, max: 150 }), { minLength: 2, maxLength: 40 }),
    fc.double({ min: 0.1, max: 100, noNaN: true }),
  )
  .map(([at, top]) =>
    at.sort((a, b) => a - b).map((value, index) => [value, (top * (at.length - index)) / at.length] as const),
  );
const curve = fc.record({ name: fc.string({ unit: 'grapheme', maxLength: 80 }), aged: points });
const spec: fc.Arbitrary<MeltChartSpec> = fc.record({
  title: fc.string({ unit: 'grapheme', maxLength: 120 }),
  curves: fc.oneof(fc.tuple(curve), fc.tuple(curve, curve)),
  marks: fc.array(mark, { maxLength: 12 }),
  words: fc.constant(words),
  theme: fc.constantFrom('light', 'dark'),
});

describe('any chart', () => {
  property.prop([spec], { numRuns: 300 })('should keep all texts apart and inside the picture', (any) => {
    const { layout } = drawn(any);
    expect(clashes(layout)).toEqual([]);
    expect(outside(layout)).toEqual([]);
    expect(layout.marks).toHaveLength(any.marks.length);
  });
});
