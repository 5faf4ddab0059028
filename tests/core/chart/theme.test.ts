import { describe, expect, it } from 'vitest';
import { themes } from '../../../core/chart/theme.ts';

/** Relative luminance and contrast ratio as defined in WCAG 2.2 (formulas from memory, checked on its own extremes below). */
const luminance = (colour: string): number => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: string, b: string): number => {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
};

describe('colours', () => {
  it('should be measured as the standard does: 21 for black on white, 4.54 for #767676 on white', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  });

  it.each(Object.entries(themes))('should reach 4.5:1 for every text of the %s theme', (_name, theme) => {
    for (const colour of [theme.text, theme.quiet, ...theme.curves])
      expect(contrast(colour, theme.background), colour).toBeGreaterThanOrEqual(4.5);
  });

  it.each(Object.entries(themes))(
    'should keep gridlines of the %s theme fainter than any line',
    (_name, theme) => {
      expect(contrast(theme.grid, theme.background)).toBeLessThan(3);
    },
  );
});
