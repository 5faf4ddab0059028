import { it as property } from '@fast-check/vitest';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { widthOf } from '../../../bot/render/width.ts';
import type { Point } from '../../../core/chart/chart-spec.ts';
import { textChart } from '../../../core/chart/text-chart.ts';
import { worked } from '../melt/blends.ts';
import { balm, candelillaBalm, chartOf, places, stick, swapChartOf } from './specs.ts';

const lines = (spec: Parameters<typeof textChart>[0]): readonly string[] => worked(textChart(spec));

/** From 100 % at 0 °C straight down to nothing at 50 °C. */
const slope: readonly Point[] = [
  [0, 100],
  [50, 0],
  [100, 0],
];

describe('the chart in text', () => {
  it('should draw a plain slope as stairs that reach the axis where it does', () => {
    const rows = lines({
      curves: [{ name: 'x', aged: slope }],
      marks: [{ role: 'change', label: 'melted', celsius: 50 }],
    });
    const axis = rows.find((row) => row.includes('└')) ?? '';
    const floor = rows[rows.indexOf(axis) - 1] ?? '';
    expect(rows[0]).toMatch(/^100%│█/);
    // The last column with anything in it is the one before the letter of the mark at 50 °C.
    expect(floor.length).toBe(axis.indexOf('a'));
    const filled = rows.slice(0, rows.indexOf(axis)).map((row) => row.length);
    expect(filled).toEqual([...filled].sort((a, b) => a - b));
  });

  it.each([
    ['a balm', chartOf(balm)],
    ['a stick', chartOf(stick)],
    ['a swap', swapChartOf(balm, candelillaBalm)],
  ])('should name every mark of %s and put its letter on the axis', (_name, spec) => {
    const rows = lines(spec);
    const text = rows.join('\n');
    const axis = rows.find((row) => row.includes('└'));
    spec.marks.forEach(({ label, celsius }, at) => {
      expect(text).toContain(`${label} ${Math.round(celsius)}°`);
      expect(axis).toContain('abcdefghijkl'[at]);
    });
  });

  it('should draw a swap with the figures 1 and 2 and say which is which', () => {
    const text = lines(swapChartOf(balm, candelillaBalm)).join('\n');
    expect(text).toContain('1 before: beeswax');
    expect(text).toContain('2 after: candelilla');
    expect(text).toContain('2 softens 44°');
  });

  it('should name the problem of a curve that is none', () => {
    expect(textChart({ curves: [{ name: 'x', aged: [] }], marks: places })).toMatchObject({ ok: false });
  });

  property.prop([
    fc.array(fc.tuple(fc.integer({ min: -40, max: 150 }), fc.string({ unit: 'grapheme', maxLength: 40 })), {
      maxLength: 12,
    }),
    fc.integer({ min: -40, max: 80 }),
    fc.integer({ min: 1, max: 150 }),
    fc.double({ min: 0, max: 100, noNaN: true }),
    fc.boolean(),
  ])('should fit 40 columns and 12 rows, whatever the figures', (marked, low, span, top, two) => {
    const aged: readonly Point[] = [
      [low, top],
      [low + span, 0],
    ];
    const one = { name: 'before 🌿 蜂蜜 '.repeat(9), aged };
    const rows = lines({
      curves: two ? [one, one] : [one],
      marks: marked.map(([celsius, label]) => ({ role: 'place', label, celsius })),
    });
    expect(rows.length).toBeLessThanOrEqual(12);
    for (const row of rows) expect(widthOf(row), row).toBeLessThanOrEqual(40);
  });
});
