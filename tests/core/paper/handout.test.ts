import { it as property } from '@fast-check/vitest';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Handout, handoutPage, paperFor, paperSizes } from '../../../core/paper/handout.ts';
import type { TextMark } from '../../../core/paper/paper.ts';
import { widthMm } from '../../../core/paper/paper-text.ts';

const list = (count: number) => ({
  kind: 'list' as const,
  heading: 'What to mind',
  items: Array.from({ length: count }, (_, at) => `Sentence number ${at + 1}, which is not a long one.`),
});

const handout = (left: number, right: number): Handout => ({
  title: 'A workshop',
  subtitle: '12 people',
  left: [list(left)],
  right: [list(right)],
  footer: 'Follow the rules where you live.',
});

const textsOf = (of: Handout, paper = paperSizes.a4 as { widthMm: number; heightMm: number }): TextMark[] =>
  handoutPage(of, paper)?.marks.filter((mark) => mark.kind === 'text') ?? [];

describe('a handout', () => {
  it('should be on A4 of 210 × 297 mm (ISO 216), Letter of 8.5 × 11 inches in the United States and Canada', () => {
    expect(paperFor('eu')).toEqual({ widthMm: 210, heightMm: 297 });
    expect(paperFor('us').widthMm).toBeCloseTo(8.5 * 25.4, 6);
    expect(paperFor('us').heightMm).toBeCloseTo(11 * 25.4, 6);
    expect(paperFor('ca')).toEqual(paperFor('us'));
  });

  it('should take smaller type for more, down to 6.5 points', () => {
    const sizeOf = (count: number) =>
      textsOf(handout(count, 3)).find(({ text }) => text.startsWith('Sentence'))?.sizePt;
    expect(sizeOf(5)).toBe(10.5);
    expect(sizeOf(60)).toBeLessThan(10.5);
    expect(sizeOf(60)).toBeGreaterThanOrEqual(6.5);
  });

  it('should not be made when it cannot be read any more', () => {
    expect(handoutPage(handout(200, 3), paperSizes.a4)).toBeUndefined();
  });

  property.prop([
    fc.integer({ min: 0, max: 45 }),
    fc.integer({ min: 0, max: 45 }),
    fc.constantFrom('a4', 'letter'),
  ])('should keep every text inside its paper, and leave none out', (left, right, size) => {
    const paper = paperSizes[size as 'a4' | 'letter'];
    const texts = textsOf(handout(left, right), paper);
    expect(texts.filter(({ text }) => text.startsWith('Sentence'))).toHaveLength(left + right);
    for (const { text, at, sizePt, weight, align } of texts) {
      const width = widthMm(text, sizePt, weight);
      const from = align === 'right' ? at[0] - width : at[0];
      expect(from).toBeGreaterThan(5);
      expect(from + width).toBeLessThan(paper.widthMm - 5);
      expect(at[1]).toBeLessThan(paper.heightMm - 5);
    }
  });
});
