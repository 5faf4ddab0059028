import type { Reading } from '../reading.ts';
import type { FoundAt } from './settings-bench.ts';
import { none } from './settings-words.ts';

const sign = '(commas?|points?|dots?|full stops?)';
const decimals = '(?:decimals?|numbers?|figures?)';
/** Between the two: "decimal sign is a", "numbers written with". No other words, so that a melting point is none. */
const between =
  '(?:[\\s:=-]|\\b(?:sign|signs|separator|mark|marks|written|shown|with|as|by|is|are|to|the|a|an|in|for|of|use|using|decimal|our|all|my)\\b){1,12}';
const cues = [
  /\b(commas?|points?|dots?) (?:instead of|not|rather than) (?:commas?|points?|dots?)\b/i,
  new RegExp(`\\b${decimals}${between}${sign}\\b`, 'i'),
  new RegExp(
    `(?<!\\b(?:melting|melt|slip|drop|flash|freezing|setting) )\\b${sign}${between}${decimals}\\b`,
    'i',
  ),
];

/** "decimal comma", "write numbers with a point": how the group reads numbers. */
export const readDecimal = ({ text }: Reading): FoundAt => {
  if (!/\b(?:comma|point|dot|full stop)s?\b/i.test(text)) return none;
  const match = cues.map((cue) => cue.exec(text)).find((found) => found !== null);
  if (!match) return none;
  const decimal = /^comma/i.test(match[1] ?? '') ? 'comma' : 'point';
  return { wish: { decimal }, place: { from: match.index, to: match.index + match[0].length } };
};
