import { Resvg, type ResvgRenderOptions } from '@resvg/resvg-js';

/** A picture of 720 units becomes 1080 pixels: sharp on a phone that shows it 360 points wide at three pixels each. */
export const pixelsPerUnit = 1.5;

/** Fonts of the machine are left out: every machine draws the same picture. */
export const drawOptions = (files: string[]): ResvgRenderOptions => ({
  font: { loadSystemFonts: false, fontFiles: files, defaultFontFamily: 'DejaVu Sans Condensed' },
  fitTo: { mode: 'zoom', value: pixelsPerUnit },
  logLevel: 'off',
});

const probe =
  '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="40"><text x="4" y="30" font-size="20">M</text></svg>';

/** Draws SVG as PNG, blocking. Throws at once when the fonts given do not draw text. */
export const drawerWith = (files: string[]): ((svg: string) => Uint8Array) => {
  const options = drawOptions(files);
  if (!new Resvg(probe, options).getBBox()) throw new Error('the fonts draw no text');
  return (svg) => new Uint8Array(new Resvg(svg, options).render().asPng());
};
