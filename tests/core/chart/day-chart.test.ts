import { it as property } from '@fast-check/vitest';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Box, overlap } from '../../../core/chart/box.ts';
import { type DayChart, type DaySpec, dayChart } from '../../../core/chart/day-chart.ts';

const clock = (atMin: number): string =>
  `${String(Math.floor((840 + atMin) / 60)).padStart(2, '0')}:${String((840 + atMin + 6000) % 60).padStart(2, '0')}`;

const day: DaySpec = {
  title: 'Workshop for 12 people',
  before: ['1 week before: ask about allergies', 'the day before: wash and dry everything'],
  steps: [
    { text: '12:45 set up and disinfect, 30 min', atMin: -75, minutes: 30 },
    { text: '14:00 welcome, 15 min', atMin: 0, minutes: 15 },
    { text: '14:35 melt, 30 min', atMin: 35, minutes: 30, hot: true },
    { text: '15:05 pour, 10 min', atMin: 65, minutes: 10, hot: true },
    { text: '15:15 set, 30 min', atMin: 75, minutes: 30 },
    { text: '15:50 hand out, 10 min', atMin: 110, minutes: 10 },
  ],
  tick: clock,
  theme: 'light',
};

const chartOf = (spec: DaySpec): DayChart => {
  const chart = dayChart(spec);
  if (!chart) throw new Error('no chart');
  return chart;
};

interface Named extends Box {
  readonly name: string;
}

/** Boxes of bars and places of texts, read from the SVG itself; a text's box is as wide as the layout says. */
const boxesIn = ({ svg, layout }: DayChart): Named[] => {
  const rects = [...svg.matchAll(/<rect x="([\d.-]+)" y="([\d.-]+)" width="([\d.]+)" height="([\d.]+)" rx/g)];
  const bars = rects
    .map(([, x, y, width, height]) => ({
      x: Number(x),
      y: Number(y),
      width: Number(width),
      height: Number(height),
      name: 'bar',
    }))
    // A bar lies on its own row's track, so one of the two is enough.
    .filter((_, at) => at % 2 === 0);
  const placed = [
    ...layout.texts,
    ...layout.steps.map(({ label }) => label),
    ...layout.ticks.map(({ label }) => label),
  ];
  const texts = [...svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)" font-size="(\d+)"/g)].map(
    ([, x, y, size], at) => ({
      x: Number(x),
      y: Number(y) - 0.93 * Number(size),
      width: placed[at]?.box.width ?? Number.NaN,
      height: 1.17 * Number(size),
      name: placed[at]?.text ?? '?',
    }),
  );
  expect(texts).toHaveLength(placed.length);
  return [...bars, ...texts];
};

const faults = (chart: DayChart): string[] => {
  const boxes = boxesIn(chart);
  const { width, height } = chart.layout;
  const clashing = boxes.flatMap((a, at) =>
    boxes.slice(at + 1).flatMap((b) => (overlap(a, b) ? [`${a.name} / ${b.name}`] : [])),
  );
  const outside = boxes.filter(
    (box) => box.x < 0 || box.y < 0 || box.x + box.width > width + 0.1 || box.y + box.height > height,
  );
  return [...clashing, ...outside.map(({ name }) => `outside: ${name}`)];
};

describe('the picture of a day', () => {
  it('should keep all words and bars apart and inside', () => {
    expect(faults(chartOf(day))).toEqual([]);
  });

  it('should be legible on a phone that shows it 360 points wide: no letter under 11 points', () => {
    const { svg, layout } = chartOf(day);
    const sizes = [...svg.matchAll(/font-size="(\d+)"/g)].map(([, size]) => Number(size));
    expect((Math.min(...sizes) * 360) / layout.width).toBeGreaterThanOrEqual(11);
  });

  it('should put a step where its time is', () => {
    const { layout } = chartOf(day);
    const at = (minute: number) => layout.ticks.find(({ label }) => label.text === clock(minute))?.x;
    expect(layout.steps[1]?.bar.x).toBeCloseTo(at(0) ?? Number.NaN, 6);
  });

  it('should show words as text, never as markup', () => {
    const { svg } = chartOf({ ...day, title: '</text><image href="x"/>' });
    expect(svg).not.toContain('<image');
  });

  it('should not be drawn for no steps, too many, or times that are no numbers', () => {
    const step = { text: 'x', atMin: 0, minutes: 5 };
    expect(dayChart({ ...day, steps: [] })).toBeUndefined();
    expect(dayChart({ ...day, steps: Array.from({ length: 41 }, () => step) })).toBeUndefined();
    expect(dayChart({ ...day, steps: [{ ...step, atMin: Number.NaN }] })).toBeUndefined();
  });
});

const anyDay: fc.Arbitrary<DaySpec> = fc.record({
  title: fc.string({ unit: 'grapheme', maxLength: 120 }),
  before: fc.array(fc.string({ unit: 'grapheme', maxLength: 120 }), { maxLength: 5 }),
  steps: fc.array(
    fc.record({
      text: fc.string({ unit: 'grapheme', maxLength: 80 }).map((text) => `x${text}`),
      atMin: fc.integer({ min: -120, max: 3000 }),
      minutes: fc.integer({ min: 0, max: 600 }),
      hot: fc.boolean(),
    }),
    { minLength: 1, maxLength: 40 },
  ),
  tick: fc.constant(clock),
  theme: fc.constantFrom('light', 'dark'),
});

describe('any day', () => {
  property.prop([anyDay], { numRuns: 200 })('should keep all words and bars apart and inside', (spec) => {
    expect(faults(chartOf(spec))).toEqual([]);
  });
});
