import type { Reading } from '../reading.ts';
import { readingWithout } from '../understand.ts';
import { cueWords } from './cues.ts';

interface Clause {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** Sentences and lines of the message; a full stop inside "9.30" or "a.m." ends none. */
const clausesOf = (text: string): readonly Clause[] => {
  const clauses: Clause[] = [];
  let from = 0;
  for (const match of [...text.matchAll(/(?<=[.!?])\s+|\n+/g), undefined]) {
    const to = match?.index ?? text.length;
    if (text.slice(from, to).trim() !== '') clauses.push({ text: text.slice(from, to), from, to });
    from = to + (match?.[0].length ?? 0);
  }
  return clauses;
};

/** The text with what was taken out of it as blanks; places in it stay. */
export const textOf = (reading: Reading): string => reading.text.replaceAll('_', ' ');

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}\p{N}'’-]+/gu) ?? [];

/** Talk asks for nothing: no figure, no cue of any topic, and not a story. */
const isTalk = (clause: string): boolean => {
  const words = wordsOf(clause);
  return words.length <= 14 && !/\d/.test(clause) && !words.some((word) => cueWords.has(word));
};

/**
 * The message with nothing but the one sentence that has a cue, when everything else in it is talk ("Hi! The fair is near.
 * What expires before 12 June? Ta!"). Undefined when two sentences ask, or the rest is more than talk.
 */
export const askingOnly = (reading: Reading, isCue: (clause: string) => boolean): Reading | undefined => {
  const all = clausesOf(textOf(reading));
  const asking = all.filter(({ text }) => isCue(text));
  const [only, second] = asking;
  if (only === undefined || second !== undefined) return undefined;
  const others = all.filter((each) => each !== only);
  return others.every(({ text }) => isTalk(text)) ? readingWithout(reading, others) : undefined;
};

/** Words of a text that are none of `around`, in their order. */
export const strangers = (text: string, isAround: (word: string) => boolean): readonly string[] =>
  wordsOf(text).filter((word) => !isAround(word) && !isAround(word.replace(/['’]s$/, '')));
