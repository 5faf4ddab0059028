import type { Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { echo } from './ask-back.ts';
import type { Item } from './item.ts';
import { letters } from './lexicon.ts';
import { matters } from './sentences.ts';

/** A message in which "it" is what was spoken of before, and what is told about that. */
export interface SpokenOf {
  readonly reading: Reading;
  readonly assumed: string;
}

const pointing = /\b(?:it|them|that|this|these|those|one)\b(?!'|\s+(?:is|was|to)\s+\w+ing\b)/gi;
const mostPointing = 4;
const mostCharacters = 1500;
/** Where what is asked may begin. */
const breaks = /[.!?;:]+(?=\s|$)|\n+|,(?=\s)|\s[-–—](?=\s)/g;
const sentenceEnd = /[.!?]+(?=\s|$)|\n/;
const amount = /^[gvd%n]$/;
const counts = /^[gvdprt%nMcL]$/;
const isThing = ({ letter }: Item): boolean => letter === letters.ingredient || letter === letters.recipe;

/** What was spoken of, with its amount where one stands before it: "45 g of dried chamomile". */
interface Thing {
  readonly from: number;
  readonly to: number;
  readonly items: readonly Item[];
}

/** The one thing that was spoken of before a place; undefined where there were several, or amounts of something else. */
const thingBefore = ({ items }: Reading, before: number): Thing | undefined => {
  const said = items.filter(({ to }) => to <= before);
  const things = said.filter(isThing);
  const [thing] = things;
  if (
    !thing ||
    things.some(
      ({ recipe, ingredients }) => (recipe ?? ingredients?.[0]) !== (thing.recipe ?? thing.ingredients?.[0]),
    )
  )
    return undefined;
  const at = said.indexOf(thing);
  const measure = [said[at - 1], said[at - 2]].find((item) => item !== undefined && amount.test(item.letter));
  const mine = measure ? [measure, thing] : [thing];
  const isLost = said.some((item) => counts.test(item.letter) && !mine.includes(item));
  return isLost ? undefined : { from: measure?.from ?? thing.from, to: thing.to, items: mine };
};

const endOf = (text: string, from: number): number => {
  const end = sentenceEnd.exec(text.slice(from));
  return end ? from + end.index + end[0].length : text.length;
};

/** @param at where the word that points stands, @param word the word. */
const resolved = (reading: Reading, at: number, word: string, begins: readonly number[]): SpokenOf[] => {
  const { text } = reading;
  return begins
    .filter((begin) => begin <= at)
    .toReversed()
    .slice(0, 2)
    .flatMap((begin) => {
      const thing = thingBefore(reading, begin);
      const end = endOf(text, at);
      if (!thing || matters(text.slice(0, begin)) || matters(text.slice(end))) return [];
      const rest = reading.items.filter(({ from }) => from >= end);
      if (rest.some((item) => isThing(item) || counts.test(item.letter))) return [];
      const measured = reading.items.some(
        ({ from, to, letter }) => from >= begin && to <= end && amount.test(letter),
      );
      const name = text.slice(measured ? (thing.items.at(-1)?.from ?? thing.from) : thing.from, thing.to);
      const said = `${text.slice(begin, at)}${name}${text.slice(at + word.length, end)}`.trim();
      return [{ reading: readAgain(said, reading), assumed: `I took "${echo(word)}" for ${echo(name)}.` }];
    });
};

/**
 * "I keep reading about arnica. Is it safe on lips?" as "Is arnica safe on lips?": the sentences in which a word points
 * at the one thing spoken of before them. None where something else was said that would be lost.
 */
export const spokenOf = (reading: Reading): readonly SpokenOf[] => {
  if (reading.text.length > mostCharacters) return [];
  const begins = [...reading.text.matchAll(breaks)].map(({ 0: match, index }) => index + match.length);
  if (begins.length === 0) return [];
  return [...reading.text.matchAll(pointing)]
    .slice(0, mostPointing)
    .flatMap(({ 0: word, index }) => resolved(reading, index, word, begins));
};
