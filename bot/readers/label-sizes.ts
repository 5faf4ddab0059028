import type { PaperSize } from '../../core/paper/paper.ts';
import type { Trouble } from '../answer.ts';
import { cover } from './check-parts.ts';
import { flatLabel } from './label-words.ts';
import { digits } from './number.ts';
import type { Board } from './target.ts';

export interface StripSaid {
  readonly tinMm?: number;
  readonly heightMm?: number;
  readonly overlapMm?: number;
}

export interface SizesSaid {
  readonly roundMm?: number;
  readonly strip?: StripSaid;
  readonly paper?: PaperSize;
  readonly trouble?: Trouble;
}

const number = '(-?\\d{1,5}(?:[.,]\\d{1,3})?)';
const unit =
  '(mm|millimet(?:re|er)s?|cm|centimet(?:re|er)s?|inch(?:es)?|in\\b(?!\\s+(?:the|a|my|our|region|eu|uk|us))|")';
const bareUnit = unit.replace(/^\(/, '(?:');
const by = '\\s*(?:x|by|\\*|×)\\s*';

const perUnit = (said: string | undefined): number => {
  if (said === undefined || said.startsWith('m')) return 1;
  return said.startsWith('c') ? 10 : 25.4;
};

const mm = (value: string | undefined, said: string | undefined): number =>
  Number((digits(value ?? '0') * perUnit(said)).toFixed(3));

interface Text {
  /** In lower case; what was read is blanked out, so that nothing is read twice. */
  text: string;
  readonly board: Board;
}

const takeIn = (from: Text, pattern: RegExp): RegExpExecArray | undefined => {
  const match = pattern.exec(from.text);
  if (!match) return undefined;
  const to = match.index + match[0].length;
  cover(from.board, match.index, to);
  from.text = from.text.slice(0, match.index) + ' '.repeat(match[0].length) + from.text.slice(to);
  return match;
};

const overlapPattern = new RegExp(
  `\\b(?:with\\s+)?(?:an?\\s+)?(?:overlap\\s*(?:of|:)?\\s*${number}\\s*-?\\s*${unit}|${number}\\s*-?\\s*${unit}\\s*(?:of\\s+)?overlap)`,
);
const noOverlap = /\b(?:no|without(?:\s+an?)?|zero)\s+overlap\b/;
const pairPattern = new RegExp(
  `\\b(?:tins?\\s+(?:of\\s+)?)?${number}\\s*-?\\s*(?:${unit})?\\s*(?:wide|across|diameter|dia)?(?:${by}${number}\\s*-?\\s*${unit}\\s*(?:high|tall|height)?|(?:\\s*,|\\s+and)\\s*${number}\\s*-?\\s*${unit}\\s*(?:high|tall))`,
);
const highPattern = new RegExp(
  `${number}\\s*-?\\s*${unit}\\s*-?\\s*(?:high|tall|in\\s+height|height)\\b|\\b(?:height|high)\\s*(?:of|:)?\\s*${number}\\s*-?\\s*${unit}`,
);
const tinPattern = new RegExp(
  `\\b(?:tins?|jars?|pots?)\\s+(?:of\\s+|that\\s+(?:is|are)\\s+|which\\s+(?:is|are)\\s+)?${number}\\s*-?\\s*${unit}\\s*(?:wide|across|in\\s+diameter|diameter|dia)?|${number}\\s*-?\\s*${unit}\\s*(?:wide\\s+|diameter\\s+|dia\\s+)?(?:tins?|jars?|pots?)\\b`,
);
const wrapsTin =
  /\b(?:round|around)\s+(?:a|the|my|our|each|every)\s+(?:tins?|jars?|pots?)\b|\bwraps?\b|\bbands?\b/;
const roundPattern = new RegExp(
  `(?:\\b(?:diameters?|dia|across|size|ø)\\s*(?:of|:)?\\s*)?${number}\\s*-?\\s*${unit}(?:\\s*-?\\s*(?:round|circles?|circular|diameters?|dia|across|wide|lids?|labels?|stickers?))*`,
);

/** "letter" is a word as well: it is a paper only with one of these, or after a comma, or at the end. */
const letterPattern =
  /\b(?:on\s+)?(?:us\s+)?letter(?:\s+(?:paper|size|sized|sheets?|format|pages?))?(?=\s*(?:$|[,.;?!)\n]|please|pls|thanks))|\b(?:on\s+(?:us\s+)?letter|(?:us\s+)?letter\s+(?:sticky\s+)?(?:paper|size|sized|sheets?|format|pages?|labels?|stickers?))\b|\b(?:page|paper|sheets?)\s+letter\b/;
const a4Pattern = /\b(?:on\s+)?(?:din\s+)?a4(?:\s+(?:paper|size|sized|sheets?|format))?\b/;

const takePaper = (from: Text): PaperSize | undefined => {
  if (takeIn(from, a4Pattern)) return 'a4';
  return takeIn(from, letterPattern) ? 'letter' : undefined;
};

const takeOverlap = (from: Text): number | undefined => {
  if (takeIn(from, noOverlap)) return 0;
  const match = takeIn(from, overlapPattern);
  return match ? mm(match[1] ?? match[3], match[2] ?? match[4]) : undefined;
};

const takePair = (from: Text): StripSaid | undefined => {
  const match = takeIn(from, pairPattern);
  const [high, said] = [match?.[3] ?? match?.[5], match?.[4] ?? match?.[6]];
  return match ? { tinMm: mm(match[1], match[2] ?? said), heightMm: mm(high, said) } : undefined;
};

const takeHeight = (from: Text): number | undefined => {
  const match = takeIn(from, highPattern);
  return match ? mm(match[1] ?? match[3], match[2] ?? match[4]) : undefined;
};

const takeTin = (from: Text): number | undefined => {
  const match = takeIn(from, tinPattern);
  return match ? mm(match[1] ?? match[3], match[2] ?? match[4]) : undefined;
};

const takeRound = (from: Text): number | undefined => {
  const match = takeIn(from, roundPattern);
  return match ? mm(match[1], match[2]) : undefined;
};

const stripWord = /\bstrips?\b/;
const roundWord = /\b(?:round|lids?|circles?|circular|diameters?)\b/;

const takeStrip = (from: Text): StripSaid | undefined => {
  const overlapMm = takeOverlap(from);
  const pair = takePair(from);
  const heightMm = pair?.heightMm ?? takeHeight(from);
  const tinMm = pair?.tinMm ?? takeTin(from) ?? (heightMm === undefined ? undefined : takeRound(from));
  const said = {
    ...(tinMm === undefined ? {} : { tinMm }),
    ...(heightMm === undefined ? {} : { heightMm }),
    ...(overlapMm === undefined ? {} : { overlapMm }),
  };
  return Object.keys(said).length > 0 ? said : undefined;
};

const flatPattern = new RegExp(`${number}\\s*(?:${bareUnit})?${by}${number}\\s*${bareUnit}`);

/**
 * Sizes of labels and paper, taken off the board: "round lids 40 mm", "strips for a tin 48 mm x 15 mm", "letter".
 * @param strips true when the last request was about strips, so that a pair of sizes means a tin.
 */
export const takeSizes = (board: Board, text: string, strips: boolean): SizesSaid => {
  const from: Text = { text: text.toLowerCase(), board };
  const paper = takePaper(from);
  const papers = paper ? { paper } : {};
  const asksStrip = stripWord.test(from.text) || wrapsTin.test(from.text) || strips;
  if (!asksStrip && takeIn(from, flatPattern)) return { ...papers, trouble: flatLabel };
  const strip = asksStrip ? takeStrip(from) : undefined;
  const wantsRound = roundWord.test(from.text.replace(wrapsTin, '')) || !strip;
  const roundMm = wantsRound ? takeRound(from) : undefined;
  return {
    ...papers,
    ...(strip ? { strip } : {}),
    ...(roundMm === undefined ? {} : { roundMm }),
  };
};
