import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { drawable, shortened, textWidth, xmlText } from '../../../core/chart/chart-text.ts';
import { fontAdvances } from '../../helpers/font-advances.ts';

const { resolve } = createRequire(import.meta.url);
const faces = [
  ['regular', 'DejaVuSansCondensed'],
  ['bold', 'DejaVuSansCondensed-Bold'],
] as const;

/** Every character that the chart lets through unchanged. */
const shown = Array.from({ length: 0x3000 }, (_, code) => String.fromCharCode(code)).filter(
  (character) => character !== '…' && drawable(`x${character}x`) === `x${character}x`,
);

describe('text widths', () => {
  it.each(faces)('should never fall short of the shipped %s face and match it for ASCII', (weight, file) => {
    const font = fontAdvances(resolve(`dejavu-fonts-ttf/ttf/${file}.ttf`));
    expect(shown.length).toBeGreaterThan(700);
    for (const character of shown) {
      const units = font.of(character.charCodeAt(0));
      expect(units, `the font has ${character}`).toBeDefined();
      const width = textWidth(character, font.unitsPerEm, weight);
      // Accented letters differ from their plain ones by a unit of rounding.
      expect(width, character).toBeGreaterThanOrEqual((units ?? 0) - 2);
      if (character.charCodeAt(0) < 0x7f) expect(width).toBeCloseTo(units ?? 0, 6);
    }
  });
});

describe('drawable text', () => {
  it.each([
    ['Rosehip  &\n <b>balm</b>', 'Rosehip & <b>balm</b>'],
    ['Balm 🌿 for you', 'Balm for you'],
    ['蜂蜜 balm', '… balm'],
    ['a\u202Eb\u0000c\u200Bd', 'abcd'],
    ['cafe\u0301', 'caf\u00e9'],
    ['\uD83C', ''],
    ['Шалфей и мята', 'Шалфей и мята'],
  ])('should show %j as %j', (text, expected) => {
    expect(drawable(text)).toBe(expected);
  });

  it('should shorten to the width asked for and say so with an ellipsis', () => {
    const text = shortened('a very long name of a very long balm', 22, 120);
    expect(text).toMatch(/^a very.*…$/);
    expect(textWidth(text, 22)).toBeLessThanOrEqual(120);
    expect(shortened('short', 22, 120)).toBe('short');
  });

  it('should leave no markup of a person in the XML', () => {
    expect(xmlText(`<a href="x">&'`)).toBe('&lt;a href=&quot;x&quot;&gt;&amp;&apos;');
  });
});
