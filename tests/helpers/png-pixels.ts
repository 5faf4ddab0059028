import { Resvg } from '@resvg/resvg-js';

export interface Pixels {
  readonly width: number;
  readonly height: number;
  /** Colour of a pixel as 0xRRGGBBAA. */
  readonly at: (x: number, y: number) => number;
}

/** The signature every PNG starts with (W3C PNG, section 5.2). */
const signature = '89504e470d0a1a0a';

/** Size of a PNG from its header, and its pixels as a viewer shows them; throws for what is no PNG. */
export const pixelsOf = (png: Uint8Array): Pixels => {
  const bytes = Buffer.from(png);
  if (bytes.toString('hex', 0, 8) !== signature) throw new Error('no PNG');
  const [width, height] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
  const href = `data:image/png;base64,${bytes.toString('base64')}`;
  const shown = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><image width="${width}" height="${height}" href="${href}"/></svg>`;
  const pixels = new Resvg(shown, { font: { loadSystemFonts: false } }).render().pixels;
  return { width, height, at: (x, y) => pixels.readUInt32BE(4 * (y * width + x)) };
};
