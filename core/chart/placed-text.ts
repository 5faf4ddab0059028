import type { Box } from './box.ts';
import { textWidth, type Weight } from './chart-text.ts';

/** A text and the box it fills. `turned` texts run upward; their box is the one they fill after turning. */
export interface PlacedText {
  readonly what: 'title' | 'legend' | 'mark' | 'axis';
  readonly text: string;
  readonly box: Box;
  readonly size: number;
  readonly weight: Weight;
  readonly turned?: boolean;
}

/** Sizes in the picture's own units: 22 of 720 are 11 pixels on a phone that shows the picture 360 wide. */
export const sizes = {
  width: 720,
  edge: 16,
  text: 22,
  title: 26,
  /** Height given to a line of text. */
  line: 30,
  titleLine: 34,
  plotLeft: 90,
  plotRight: 696,
  plotHeight: 250,
  /** From the plot's floor to the top of the first row of temperatures. */
  axisGap: 14,
} as const;

/** From the top of a line of text to its baseline, and to its lower edge, in font sizes (from the font's tables). */
export const ascent = 0.93;
export const lineBox = 1.17;

export interface TextPlace {
  readonly x: number;
  readonly y: number;
  readonly align?: 'left' | 'middle' | 'right';
}

export interface TextLook {
  readonly size?: number;
  readonly weight?: Weight;
}

const shares = { left: 0, middle: 0.5, right: 1 } as const;

/** A text whose box has its upper left (or upper middle, or upper right) corner at `x`, `y`. */
export const placedText = (
  what: PlacedText['what'],
  text: string,
  { x, y, align = 'left' }: TextPlace,
  { size = sizes.text, weight = 'regular' }: TextLook = {},
): PlacedText => {
  const width = textWidth(text, size, weight);
  return {
    what,
    text,
    size,
    weight,
    box: { x: x - shares[align] * width, y, width, height: size * lineBox },
  };
};
