import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';
import { lotsIn } from './lots.ts';

/** A stretch of a text that ends in a full stop, another such sign or a line break. */
export interface Sentence {
  readonly from: number;
  readonly to: number;
}

const ends = /[.!?]+(?=\s|$)|\n+/g;

/** The sentences of a text; stretches without a letter or a digit are none. */
export const sentencesIn = (text: string): readonly Sentence[] => {
  const stops = [...text.matchAll(ends)].map((match) => match.index + match[0].length);
  if (stops.at(-1) !== text.length) stops.push(text.length);
  return stops
    .map((to, at) => ({ from: stops[at - 1] ?? 0, to }))
    .filter(({ from, to }) => /[\p{L}\d]/u.test(text.slice(from, to)));
};

/**
 * "No, don't" takes a request back; "she has a nut allergy", "my daughter is two" say what to look at. Neither is talk, and
 * no sentence with one is passed over.
 */
const weighty =
  /\b(?:don'?t|cancel|stop|never ?mind|forget|scratch that|wait|not|nuts?|allerg\w{1,3}|vegans?|child|children|kids?|baby|toddlers?|pregnan\w{1,3}|expecting|(?:is|turns|aged|only) (?:one|two|three|four|five|six|\d)\b)/i;

/** "I am not ready at all", "not a great shopper": a no that says no to nothing. */
const idleNo =
  /\b(?:am|are|is|was|were|'m|'re|'s) not (?:(?:at all|yet|quite|very|really|too|that|so|much of) )?(?:ready|sure|certain|clear|good|great|clever|happy|patient|prepared|organised|an? (?:great|good|big|clever|patient)\b)/gi;

/** True where a stretch of a message says something that no reading of it may pass over. */
export const matters = (said: string): boolean => weighty.test(said.replace(idleNo, ' '));

const substance = /[RigvdptrcuMLHS%]/;

const bareLine = /^\W*\p{L}[\p{L}' -]{1,40}[\s:=-]+\d+(?:[.,]\d+)?\s*$/u;
const mostLines = 60;
/** "Goop 8" among "beeswax 22" and "olive oil 70": a line of a list, whatever it is. */
const isListLine = (text: string, said: string): boolean =>
  bareLine.test(said.trim()) &&
  text.split('\n', mostLines).filter((line) => bareLine.test(line.slice(0, mostLines))).length > 2;

/** True where a sentence has something that a request may be made of: a name, an amount, a container, a lot. */
export const holds = (reading: Reading, { from, to }: Sentence): boolean =>
  reading.items.some((item: Item) => item.from >= from && item.to <= to && substance.test(item.letter)) ||
  lotsIn(reading).some((lot) => lot.from >= from && lot.to <= to) ||
  isListLine(reading.text, reading.text.slice(from, to));
