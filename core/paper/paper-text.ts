import { textWidth, type Weight } from '../chart/chart-text.ts';

/** A point of type is 1/72 inch. */
export const mmPerPt = 25.4 / 72;

/** Heights of the shipped font in ems: small x and capitals from its glyphs, the reach of lines from its `hhea` table. */
export const fontEms = { xHeight: 0.547, capHeight: 0.729, ascent: 0.93, descent: 0.24 } as const;

/** Width on paper in mm; never less than what is printed (kerning only draws letters together). */
export const widthMm = (text: string, sizePt: number, weight: Weight = 'regular'): number =>
  textWidth(text, sizePt * mmPerPt, weight);

/** Largest type in points whose small x is at most this high: to go from an x-height in mm to a size. */
export const sizeOfXHeight = (mm: number): number => mm / mmPerPt / fontEms.xHeight;

export interface Wrapped {
  readonly lines: readonly string[];
  /** Words that did not get a line any more. Empty when all is placed. */
  readonly left: readonly string[];
}

/** A word too wide for every line is cut where it has to be. */
const cutWord = (word: string, room: number, sizePt: number, weight: Weight): [string, string] => {
  let kept = '';
  for (const character of word) {
    if (widthMm(kept + character, sizePt, weight) > room) break;
    kept += character;
  }
  return [kept, word.slice(kept.length)];
};

const words = (text: string): string[] => text.split(/ +/).filter((word) => word !== '');

interface Type {
  readonly sizePt: number;
  readonly weight: Weight;
}

/** As many whole words from the front of `left` as fit side by side. */
const wholeWords = (left: string[], room: number, { sizePt, weight }: Type): string => {
  let line = '';
  for (let word = left[0]; word !== undefined; word = left[0]) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (widthMm(longer, sizePt, weight) > room) break;
    line = longer;
    left.shift();
  }
  return line;
};

/** Fills one line from the front of `left`; empty when nothing fits. Words over `widest` are cut. */
const fillLine = (left: string[], room: number, widest: number, type: Type): string => {
  const line = wholeWords(left, room, type);
  const word = left[0];
  if (line !== '' || word === undefined || widthMm(word, type.sizePt, type.weight) <= widest) return line;
  const [kept, rest] = cutWord(word, room, type.sizePt, type.weight);
  left[0] = rest;
  return kept;
};

/**
 * Words of a text set into lines of given widths in mm, one after another: the same everywhere, or a chord of a circle
 * at each height. A line too narrow for its next word stays empty; only a word wider than every line is cut.
 */
export const wrapInto = (
  text: string,
  rooms: readonly number[],
  sizePt: number,
  weight: Weight = 'regular',
): Wrapped => {
  const left = words(text);
  const widest = Math.max(0, ...rooms);
  const lines: string[] = [];
  for (const room of rooms) {
    if (left.length === 0) break;
    lines.push(fillLine(left, room, widest, { sizePt, weight }));
  }
  return { lines, left };
};

/** Words set into as many lines of one width as they need. */
export const wrapText = (
  text: string,
  roomMm: number,
  sizePt: number,
  weight: Weight = 'regular',
): readonly string[] => {
  const left = words(text);
  const lines: string[] = [];
  while (left.length > 0) {
    const line = fillLine(left, roomMm, roomMm, { sizePt, weight });
    if (line === '') break;
    lines.push(line);
  }
  return lines;
};
