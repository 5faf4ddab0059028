import type { Weight } from '../chart/chart-text.ts';
import type { Region } from '../settings.ts';

/**
 * A printed paper as plain data: millimetres from the upper left corner of the page, y downward. Laid out by pure code,
 * so that its geometry can be checked without a printer; one writer in the bot turns it into PDF.
 */
export interface Paper {
  readonly title: string;
  /** BCP 47 language of the text. */
  readonly language?: string;
  readonly pages: readonly Page[];
}

export interface Page {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marks: readonly Mark[];
}

/** A point on the page, in mm. */
export type Point = readonly [x: number, y: number];

/** A line's look. Colours are #rrggbb; `dashMm` is dash and gap. */
export interface Stroke {
  readonly colour: string;
  readonly widthMm: number;
  readonly dashMm?: readonly [dash: number, gap: number];
}

interface Shape {
  readonly stroke?: Stroke;
  readonly fill?: string;
}

export type Align = 'left' | 'middle' | 'right';

export interface TextMark {
  readonly kind: 'text';
  readonly text: string;
  /** Where the text begins, has its middle or ends, on its baseline. */
  readonly at: Point;
  readonly sizePt: number;
  readonly align?: Align;
  readonly weight?: Weight;
  readonly colour?: string;
}

export type Mark =
  | TextMark
  | ({ readonly kind: 'line'; readonly from: Point; readonly to: Point } & { readonly stroke: Stroke })
  | ({
      readonly kind: 'box';
      readonly at: Point;
      readonly widthMm: number;
      readonly heightMm: number;
    } & Shape)
  | ({ readonly kind: 'circle'; readonly at: Point; readonly radiusMm: number } & Shape)
  /** An SVG path of which one unit is `unitMm` and whose origin is at `at`. */
  | ({ readonly kind: 'path'; readonly at: Point; readonly unitMm: number; readonly path: string } & Shape)
  | {
      readonly kind: 'image';
      readonly at: Point;
      readonly widthMm: number;
      readonly heightMm: number;
      readonly png: Uint8Array;
    }
  /** The same marks at several places: their own coordinates count from each of them. */
  | { readonly kind: 'stamp'; readonly marks: readonly Mark[]; readonly at: readonly Point[] };

export const paperSizes = ['a4', 'letter'] as const;
export type PaperSize = (typeof paperSizes)[number];

/** Width and height upright: ISO 216 A4; Letter is 8½ by 11 inches (ANSI/ASME Y14.1). */
export const paperMm: Readonly<Record<PaperSize, readonly [width: number, height: number]>> = {
  a4: [210, 297],
  letter: [215.9, 279.4],
};

/** The paper a region's printers hold. */
export const usualPaper = (region: Region): PaperSize =>
  region === 'us' || region === 'ca' ? 'letter' : 'a4';
