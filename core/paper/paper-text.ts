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

/** A word with its width in ems, so that trying many sizes measures it once. */
export interface Word {
  readonly text: string;
  readonly ems: number;
}

export const wordsOf = (text: string, weight: Weight = 'regular'): readonly Word[] =>
  text
    .split(/ +/)
    .filter((word) => word !== '')
    .map((word) => ({ text: word, ems: textWidth(word, 1, weight) }));

const spaceEms = { regular: textWidth(' ', 1, 'regular'), bold: textWidth(' ', 1, 'bold') } as const;

export interface Taken {
  readonly text: string;
  readonly ems: number;
  /** The first word that found no room any more. */
  readonly next: number;
}

/** As many whole words from `from` on as fit side by side into `roomEms`; none when the first one is too wide. */
export const takeWords = (
  words: readonly Word[],
  from: number,
  roomEms: number,
  weight: Weight = 'regular',
): Taken => {
  let ems = 0;
  let next = from;
  for (let word = words[next]; word; word = words[next]) {
    const wider = next === from ? word.ems : ems + spaceEms[weight] + word.ems;
    if (wider > roomEms) break;
    ems = wider;
    next += 1;
  }
  const text = words
    .slice(from, next)
    .map((word) => word.text)
    .join(' ');
  return { text, ems, next };
};

/** A word wider than a whole line is cut where it has to be; at least one character stays on each line. */
const cutToRoom = (word: Word, roomEms: number, weight: Weight): readonly Word[] => {
  if (word.ems <= roomEms) return [word];
  const parts: Word[] = [];
  let part = '';
  for (const character of word.text) {
    if (part !== '' && textWidth(part + character, 1, weight) > roomEms) {
      parts.push({ text: part, ems: textWidth(part, 1, weight) });
      part = '';
    }
    part += character;
  }
  return [...parts, { text: part, ems: textWidth(part, 1, weight) }];
};

/** Words set into as many lines of one width in mm as they need. A room narrower than a character gives no lines. */
export const wrapText = (
  text: string,
  roomMm: number,
  sizePt: number,
  weight: Weight = 'regular',
): readonly string[] => {
  const roomEms = roomMm / (sizePt * mmPerPt);
  const words = wordsOf(text, weight).flatMap((word) => cutToRoom(word, roomEms, weight));
  const lines: string[] = [];
  for (let at = 0; at < words.length; ) {
    const taken = takeWords(words, at, roomEms, weight);
    if (taken.next === at) return [];
    lines.push(taken.text);
    at = taken.next;
  }
  return lines;
};
