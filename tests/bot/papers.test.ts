import { afterAll, describe, expect, it } from 'vitest';
import { closePapers, pdfOf } from '../../bot/papers/paper.ts';
import { type Mark, type Paper, paperMm } from '../../core/paper/paper.ts';
import { widthMm } from '../../core/paper/paper-text.ts';
import { readPdf } from '../helpers/read-pdf.ts';

afterAll(closePapers);

const at = Date.UTC(2026, 10, 25);
const line = { colour: '#000000', widthMm: 0.2 };

const paperOf = (marks: readonly Mark[], [widthMm, heightMm] = paperMm.a4): Paper => ({
  title: 'A paper',
  pages: [{ widthMm, heightMm, marks }],
});

const only = async (marks: readonly Mark[]) => {
  const [page] = await readPdf(await pdfOf(paperOf(marks), at));
  if (!page) throw new Error('no page');
  return page;
};

describe('papers', () => {
  it.each([
    ['A4 after ISO 216', 'a4', 210, 297],
    ['Letter, 8.5 by 11 inches', 'letter', 215.9, 279.4],
  ] as const)('should be as large as %s', async (_name, size, width, height) => {
    const [page] = await readPdf(await pdfOf(paperOf([], paperMm[size]), at));
    expect(page?.widthMm).toBeCloseTo(width, 3);
    expect(page?.heightMm).toBeCloseTo(height, 3);
  });

  it('should place texts in millimetres by their beginning, middle or end', async () => {
    const text = 'Baume à lèvres 1,25 €';
    const { texts } = await only(
      (['left', 'middle', 'right'] as const).map((align, row) => ({
        kind: 'text',
        text,
        at: [100, 50 + 10 * row],
        sizePt: 9,
        align,
      })),
    );
    expect(texts.map((each) => each.text)).toEqual([text, text, text]);
    for (const [row, { x, y, width, sizePt }] of texts.entries()) {
      expect(sizePt).toBeCloseTo(9, 3);
      expect(y).toBeCloseTo(50 + 10 * row, 2);
      expect(x).toBeCloseTo(100 - (width * row) / 2, 2);
    }
  });

  it.each([
    'Helianthus Annuus Seed Oil, Cera Alba',
    'AVATAR To Wa Ty.',
    'œuvre naïve à lèvres · 12 g',
    'Őrség ß',
  ])('should measure no less than is printed: %s', async (text) => {
    for (const weight of ['regular', 'bold'] as const) {
      const { texts } = await only([{ kind: 'text', text, at: [10, 10], sizePt: 20, weight }]);
      const right = Math.max(...texts.map(({ x, width }) => x + width));
      expect(right - 10).toBeLessThanOrEqual(widthMm(text, 20, weight) + 0.01);
      expect(right - 10).toBeGreaterThan(widthMm(text, 20, weight) * 0.75);
    }
  });

  it('should draw circles, boxes, lines and paths where and as large as they are asked', async () => {
    const { outlines } = await only([
      { kind: 'circle', at: [60, 100], radiusMm: 20, stroke: { ...line, dashMm: [1, 1] } },
      { kind: 'box', at: [100, 80], widthMm: 50, heightMm: 15, stroke: line },
      { kind: 'line', from: [5, 6], to: [5, 9], stroke: line },
      { kind: 'path', at: [100, 150], unitMm: 2, path: 'M0 0H10V5Z', stroke: line },
    ]);
    const near = (box: readonly number[]) => box.map((value) => expect.closeTo(value, 2));
    expect(outlines.map(({ x, y, width, height }) => [x, y, width, height])).toEqual([
      near([40, 80, 40, 40]),
      near([100, 80, 50, 15]),
      near([5, 6, 0, 3]),
      near([100, 150, 20, 10]),
    ]);
    expect(outlines.map(({ curved }) => curved)).toEqual([true, false, false, false]);
    expect(outlines.map(({ dashed }) => dashed)).toEqual([true, false, false, false]);
  });

  it('should give the same bytes for the same paper and instant, and carry that instant', async () => {
    const paper = paperOf([{ kind: 'text', text: 'Same', at: [10, 10], sizePt: 9 }]);
    const [one, two, later] = await Promise.all([pdfOf(paper, at), pdfOf(paper, at), pdfOf(paper, at + 1e9)]);
    expect(Buffer.compare(one, two)).toBe(0);
    expect(Buffer.compare(one, later)).not.toBe(0);
    expect(Buffer.from(one).toString('latin1')).toContain('(D:20261125000000Z)');
  });

  it('should leave the program running while it writes', async () => {
    const many: Mark[] = Array.from({ length: 4000 }, (_, n) => ({
      kind: 'text',
      text: `Label number ${n}`,
      at: [10 + (n % 7) * 28, 5 + (n % 290)],
      sizePt: 6,
    }));
    await pdfOf(paperOf([]), at);
    let beats = 0;
    const beat = setInterval(() => {
      beats += 1;
    }, 1);
    await pdfOf(paperOf(many), at);
    clearInterval(beat);
    // Written on this thread, the paper would have held back every one of them.
    expect(beats).toBeGreaterThan(5);
  });

  it('should refuse a paper past all measure, and what is no picture, and go on', async () => {
    const dots: Mark[] = Array.from({ length: 60_001 }, () => ({ kind: 'circle', at: [1, 1], radiusMm: 1 }));
    await expect(pdfOf(paperOf(dots), at)).rejects.toMatchObject({ code: 'not-drawn' });
    const png = new Uint8Array([1, 2, 3]);
    const bad: Mark = { kind: 'image', at: [1, 1], widthMm: 5, heightMm: 5, png };
    await expect(pdfOf(paperOf([bad]), at)).rejects.toMatchObject({ code: 'not-drawn' });
    expect((await pdfOf(paperOf([]), at)).length).toBeGreaterThan(100);
  });
});
