import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { sizeOfXHeight, widthMm, wrapInto, wrapText } from '../../../core/paper/paper-text.ts';

const list = 'Ingredients: Helianthus Annuus Seed Oil, Cera Alba, Butyrospermum Parkii Butter, Tocopherol';

describe('text on paper', () => {
  it('should wrap into lines that fit and lose no word', () => {
    const lines = wrapText(list, 30, 6);
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join(' ')).toBe(list);
    for (const line of lines) expect(widthMm(line, 6)).toBeLessThanOrEqual(30);
  });

  it('should leave a line empty where the next word does not fit, and go on below', () => {
    const { lines, left } = wrapInto('Butyrospermum Parkii', [5, 30, 30], 6);
    expect(lines).toEqual(['', 'Butyrospermum Parkii']);
    expect(left).toEqual([]);
  });

  it('should tell the words that got no line', () => {
    expect(wrapInto('one two three', [8], 10).left).toEqual(['two', 'three']);
  });

  it('should cut a word wider than every line', () => {
    const lines = wrapText('Butyrospermum', 8, 6);
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.join('')).toBe('Butyrospermum');
  });

  it('should reckon an x-height of 1.2 mm as a size a little over 6 points', () => {
    // The small x of the shipped font is 1120 of 2048 units high: 1.2 mm / (0.3528 mm × 0.547).
    expect(sizeOfXHeight(1.2)).toBeCloseTo(6.22, 2);
  });

  test.prop([
    fc.array(fc.string({ minLength: 1, maxLength: 12, unit: fc.constantFrom(...'abcdefgiklmW') }), {
      maxLength: 20,
    }),
    fc.array(fc.double({ min: 0, max: 40, noNaN: true }), { maxLength: 12 }),
    fc.double({ min: 4, max: 12, noNaN: true }),
  ])('should fit every line into its room and keep every letter in order', (words, rooms, sizePt) => {
    const { lines, left } = wrapInto(words.join(' '), rooms, sizePt);
    for (const [row, line] of lines.entries())
      expect(widthMm(line, sizePt)).toBeLessThanOrEqual(rooms[row] ?? 0);
    expect([...lines, ...left].join('').replaceAll(' ', '')).toBe(words.join(''));
  });
});
