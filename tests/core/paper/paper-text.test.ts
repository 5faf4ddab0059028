import { fc, test } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { sizeOfXHeight, takeWords, widthMm, wordsOf, wrapText } from '../../../core/paper/paper-text.ts';

const list = 'Ingredients: Helianthus Annuus Seed Oil, Cera Alba, Butyrospermum Parkii Butter, Tocopherol';

describe('text on paper', () => {
  it('should wrap into lines that fit and lose no word', () => {
    const lines = wrapText(list, 30, 6);
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join(' ')).toBe(list);
    for (const line of lines) expect(widthMm(line, 6)).toBeLessThanOrEqual(30);
  });

  it('should take as many words as there is room for, and say where it stopped', () => {
    const words = wordsOf('one two three');
    const two = widthMm('one two', 10) / (10 * (25.4 / 72));
    expect(takeWords(words, 0, two)).toMatchObject({ text: 'one two', next: 2 });
    expect(takeWords(words, 0, two - 0.01)).toMatchObject({ text: 'one', next: 1 });
    expect(takeWords(words, 0, 0.1)).toMatchObject({ text: '', next: 0 });
  });

  it('should cut a word wider than a whole line', () => {
    const lines = wrapText('Butyrospermum', 8, 6);
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.join('')).toBe('Butyrospermum');
    expect(wrapText('Butyrospermum', 0.1, 6)).toEqual([]);
  });

  it('should reckon an x-height of 1.2 mm as a size a little over 6 points', () => {
    // The small x of the shipped font is 1120 of 2048 units high: 1.2 mm / (0.3528 mm × 0.547).
    expect(sizeOfXHeight(1.2)).toBeCloseTo(6.22, 2);
  });

  test.prop([
    fc.array(fc.string({ minLength: 1, maxLength: 12, unit: fc.constantFrom(...'abcdefgiklmW') }), {
      maxLength: 20,
    }),
    fc.double({ min: 6, max: 40, noNaN: true }),
    fc.double({ min: 4, max: 12, noNaN: true }),
  ])('should fit every line into its room and keep every letter in order', (words, room, sizePt) => {
    const lines = wrapText(words.join(' '), room, sizePt);
    for (const line of lines) expect(widthMm(line, sizePt)).toBeLessThanOrEqual(room + 1e-9);
    expect(lines.join('').replaceAll(' ', '')).toBe(words.join(''));
  });
});
