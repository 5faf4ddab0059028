import { fc, it as prop } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { clean, cleanLine } from '../../bot/render/clean.ts';
import { graphemes, padTo, widthFor, widthOf } from '../../bot/render/width.ts';
import { wrap } from '../../bot/render/wrap.ts';

describe('the columns a text takes', () => {
  // East Asian Width classes of Unicode's annex 11 and emoji presentation of UTS 51, both from memory.
  it.each([
    ['a', 1],
    ['½ × 15 °C – ok…', 15],
    ['é', 1],
    ['e\u0301', 1],
    ['Ж', 1],
    ['蜜', 2],
    ['ﾊ', 1],
    ['Ａ', 2],
    ['한', 2],
    ['🌿', 2],
    ['👩‍🌾', 2],
    ['👍🏽', 2],
    ['🇵🇹', 2],
    ['1️⃣', 2],
    ['⚠', 1],
    ['⚠️', 2],
    ['\u200b', 0],
    ['', 0],
    ['a\nlonger', 6],
  ])('should count %j as %i', (text, columns) => {
    expect(widthOf(text)).toBe(columns);
  });

  it('should keep an accent and a joined emoji together', () => {
    expect(graphemes('e\u0301👩‍🌾x')).toEqual(['e\u0301', '👩‍🌾', 'x']);
  });

  it('should pad by columns and leave a wider text alone', () => {
    expect(padTo('蜜', 4, 'right')).toBe('  蜜');
    expect(padTo('蜜', 4, 'left')).toBe('蜜  ');
    expect(padTo('beeswax', 4, 'left')).toBe('beeswax');
  });

  it.each([
    [undefined, 80],
    [0, 80],
    [20, 40],
    [64, 64],
    [300, 100],
  ])('should set text in a window of %s to %i columns', (columns, width) => {
    expect(widthFor(columns)).toBe(width);
  });
});

describe('wrapping', () => {
  it('should break between words, keep the indent, and hang what follows', () => {
    expect(wrap('- melt the wax before the butter', 16, '  ')).toEqual([
      '- melt the wax',
      '  before the',
      '  butter',
    ]);
    expect(wrap('  indented line that is long', 14)).toEqual(['  indented', '  line that is', '  long']);
  });

  it('should leave a line that fits as it is, inner blanks and all', () => {
    expect(wrap('a   b\n\nc', 10)).toEqual(['a   b', '', 'c']);
  });

  it('should break inside a word only when the word is longer than a line', () => {
    expect(wrap('abcdefghij kl', 4)).toEqual(['abcd', 'efgh', 'ij', 'kl']);
  });

  prop.prop([
    fc.string({ unit: 'grapheme', maxLength: 200 }),
    fc.integer({ min: 6, max: 60 }),
    fc.constantFrom('', '  '),
  ])('should keep to the width and lose nothing but blanks', (text, width, hang) => {
    const cleaned = clean(text);
    const lines = wrap(cleaned, width, hang);
    for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(width);
    expect(lines.join('').replace(/\s/g, '')).toBe(cleaned.replace(/\s/g, ''));
  });
});

describe('cleaning', () => {
  it('should take out what steers a terminal or turns the reading order', () => {
    expect(clean('\u001b[2Jbalm\u0007\u009b31m \u202egnihtyna\u2066\u200b')).toBe('[2Jbalm31m gnihtyna');
  });

  it('should keep accents, emoji and line breaks, and make every kind of break the same', () => {
    expect(clean('crème\r\n👩‍🌾\u2028x\ty\rz')).toBe('crème\n👩‍🌾\nx y\nz');
    expect(cleanLine(' two\n\nlines ')).toBe('two lines');
  });

  it('should replace half a surrogate pair', () => {
    expect(clean('a\ud83c')).toBe('a\uFFFD');
  });

  prop.prop([fc.string({ unit: 'binary' })])(
    'should leave no control character but the line break',
    (text) => {
      expect(clean(text).replaceAll('\n', '')).not.toMatch(
        /[\p{Control}\p{Surrogate}\u202A-\u202E\u2066-\u2069]/u,
      );
    },
  );
});
