import { afterAll, describe, expect, it } from 'vitest';
import { closePapers, pdfOf } from '../../../bot/papers/paper.ts';
import { readPdf } from '../../helpers/read-pdf.ts';

afterAll(closePapers);

// Signs that end a string or an object in a PDF file, and what would run there (ISO 32000-1, 7.3.4 and 12.6.4.16, from memory).
const nasty = ') Tj ET endstream endobj /OpenAction << /S /JavaScript /JS (app.alert(1)) >> (\\';

describe('text in a printed paper', () => {
  it('should stand there as text and be nothing else to the file', async () => {
    const text = { kind: 'text', text: nasty, at: [10, 10], sizePt: 6, weight: 'regular' } as const;
    const pages = [{ widthMm: 210, heightMm: 297, marks: [text] }];
    const bytes = await pdfOf({ title: nasty, pages }, Date.UTC(2026, 10, 25));
    const [page] = await readPdf(bytes);
    const said = page?.texts.map((each) => each.text).join('') ?? '';
    expect(said.replaceAll(' ', '')).toBe(nasty.replaceAll(' ', ''));
    // In the file's own structure no such key; in the title it can only stand inside a string.
    const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
    const document = await getDocument({ data: new Uint8Array(bytes) }).promise;
    expect(await document.getJSActions()).toBeNull();
    expect(await document.getOpenAction()).toBeNull();
    expect((await document.getMetadata()).info).toMatchObject({ Title: nasty });
    await document.destroy();
  });
});
