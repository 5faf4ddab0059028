import type { Weight } from '../../chart/chart-text.ts';
import { type Word, wordsOf } from '../../paper/paper-text.ts';

/** A paragraph on a label. Its type is `ratio` times the label's small print, and never below `leastPt` points. */
export interface Block {
  readonly words: readonly Word[];
  readonly weight: Weight;
  readonly ratio: number;
  readonly leastPt: number;
  /** A rule to write on by hand follows the words, where they leave something out. */
  readonly blank: boolean;
  /** The open jar is drawn before the words. */
  readonly jar: boolean;
}

export interface BlockLook {
  readonly weight?: Weight;
  readonly ratio?: number;
  readonly leastPt: number;
  readonly blank?: boolean;
  readonly jar?: boolean;
}

/** Width the open jar takes up, in font sizes. */
export const jarEms = 1.5;

export const blockOf = (
  text: string,
  { weight = 'regular', ratio = 1, leastPt, blank = false, jar = false }: BlockLook,
): Block => ({
  words: [...(jar ? [{ text: '', ems: jarEms }] : []), ...wordsOf(text, weight)],
  weight,
  ratio,
  leastPt,
  blank,
  jar,
});

export const sizeOf = ({ ratio, leastPt }: Block, basePt: number): number =>
  Math.max(leastPt, basePt * ratio);
