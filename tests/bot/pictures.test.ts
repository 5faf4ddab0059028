import { afterAll, describe, expect, it } from 'vitest';
import { drawerWith, pixelsPerUnit } from '../../bot/pictures/draw.ts';
import { DrawingThread, usualLimits } from '../../bot/pictures/drawing-thread.ts';
import { fontFiles } from '../../bot/pictures/fonts.ts';
import { closePictures, pngOf } from '../../bot/pictures/picture.ts';
import type { Box } from '../../core/chart/box.ts';
import { balm, candelillaBalm, chartOf, drawn, swapChartOf } from '../core/chart/specs.ts';
import { type Pixels, pixelsOf } from '../helpers/png-pixels.ts';

afterAll(closePictures);

const slow = `<svg xmlns="http://www.w3.org/2000/svg" width="3000" height="3000">${'<circle cx="1500" cy="1500" r="1400" fill="#123" fill-opacity="0.5"/>'.repeat(60)}</svg>`;
const square =
  '<svg xmlns="http://www.w3.org/2000/svg" width="8" height="8"><rect width="8" height="8"/></svg>';

/** Pixels inside a box (of the SVG) that are not the picture's background. */
const inkIn = ({ at, width, height }: Pixels, box: Box): number => {
  const ground = at(0, 0);
  let ink = 0;
  const right = Math.min(width, Math.floor((box.x + box.width) * pixelsPerUnit));
  const floor = Math.min(height, Math.floor((box.y + box.height) * pixelsPerUnit));
  for (let y = Math.ceil(box.y * pixelsPerUnit); y < floor; y++)
    for (let x = Math.ceil(box.x * pixelsPerUnit); x < right; x++) if (at(x, y) !== ground) ink++;
  return ink;
};

describe('pictures', () => {
  it.each([
    ['light', chartOf(balm, 'light')],
    ['dark', chartOf(balm, 'dark')],
    ['swap', swapChartOf(balm, candelillaBalm, 'dark')],
  ])('should draw the %s chart as a PNG with ink where each text is', async (_name, spec) => {
    const { svg, layout } = drawn(spec);
    const pixels = pixelsOf(await pngOf(svg));
    expect([pixels.width, pixels.height]).toEqual([
      layout.width * pixelsPerUnit,
      layout.height * pixelsPerUnit,
    ]);
    const textless = pixelsOf(await pngOf(svg.replace(/<text.*?<\/text>/g, '')));
    for (const { text, box } of layout.texts) {
      const ink = inkIn(pixels, box) - inkIn(textless, box);
      expect(ink, text).toBeGreaterThan(text.length * 10);
    }
  });

  it('should draw no part of a text outside its box', async () => {
    const { svg, layout } = drawn(swapChartOf(balm, candelillaBalm));
    const { width, height } = layout;
    const texts = (svg.match(/<text.*?<\/text>/g) ?? []).join('');
    const bare = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" font-family="DejaVu Sans Condensed"><rect width="${width}" height="${height}" fill="#fff"/>`;
    // A white cover over each box, a unit wider for the blur at its edges: nothing may show around them.
    const covers = layout.texts.map(
      ({ box }) =>
        `<rect x="${box.x - 1}" y="${box.y - 1}" width="${box.width + 2}" height="${box.height + 2}" fill="#fff"/>`,
    );
    const whole = { x: 0, y: 0, width, height };
    expect(inkIn(pixelsOf(await pngOf(`${bare}${texts}</svg>`)), whole)).toBeGreaterThan(1000);
    expect(inkIn(pixelsOf(await pngOf(`${bare}${texts}${covers.join('')}</svg>`)), whole)).toBe(0);
  });

  it('should refuse to draw without its fonts rather than leave the text out', () => {
    expect(() => drawerWith([])).toThrow('no text');
    expect(() => drawerWith(['/nowhere/font.ttf'])).toThrow('no text');
    expect(fontFiles()).toHaveLength(2);
  });

  it('should leave the program running while it draws', async () => {
    const thread = new DrawingThread({ ...usualLimits, milliseconds: 60_000 });
    await thread.draw(square);
    let beats = 0;
    const beat = setInterval(() => {
      beats += 1;
    }, 1);
    await thread.draw(slow);
    clearInterval(beat);
    await thread.close();
    // Drawn on this thread, the picture would have held back every one of them.
    expect(beats).toBeGreaterThan(5);
  });
});

describe('the drawing thread', () => {
  it('should name what is no SVG, and go on', async () => {
    await expect(pngOf('<svg')).rejects.toMatchObject({ code: 'not-drawn' });
    await expect(pngOf(' '.repeat(usualLimits.svgLength + 1))).rejects.toMatchObject({ code: 'not-drawn' });
    expect((await pngOf(square)).length).toBeGreaterThan(50);
  });

  it('should give up a picture that takes too long and draw the next', async () => {
    // Time enough to start a thread and draw a square on a busy machine, and never for so many circles.
    const thread = new DrawingThread({ ...usualLimits, milliseconds: 1500, svgLength: 5_000_000 });
    const circles = slow
      .replace(/^<svg[^>]*>/, '')
      .replace('</svg>', '')
      .repeat(100);
    const first = thread.draw(
      `<svg xmlns="http://www.w3.org/2000/svg" width="8000" height="8000">${circles}</svg>`,
    );
    const second = thread.draw(square);
    await expect(first).rejects.toMatchObject({ code: 'too-slow' });
    expect((await second).length).toBeGreaterThan(50);
    await thread.close();
  });

  it('should turn away what is more than it may keep waiting, and tell those waiting when it closes', async () => {
    const thread = new DrawingThread({ ...usualLimits, waiting: 1 });
    const drawing = thread.draw(square);
    const waiting = thread.draw(square);
    const settled = Promise.allSettled([drawing, waiting]);
    await expect(thread.draw(square)).rejects.toMatchObject({ code: 'busy' });
    await thread.close();
    expect(await settled).toMatchObject([{ reason: { code: 'closed' } }, { reason: { code: 'closed' } }]);
    await expect(thread.draw(square)).rejects.toMatchObject({ code: 'closed' });
  });

  it('should say when the thread cannot run', async () => {
    const thread = new DrawingThread(usualLimits, new URL('file:///nowhere/thread.js'));
    await expect(thread.draw(square)).rejects.toMatchObject({ code: 'no-thread' });
    await thread.close();
  });
});
