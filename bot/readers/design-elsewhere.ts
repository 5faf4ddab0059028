import { anyWord, type Reading } from '../reading.ts';
import { otherRequests } from './design-words.ts';
import type { Item } from './item.ts';
import { pointedNames } from './pointed-name.ts';
import { asksForShelf } from './substitute-choice.ts';

/** Words of other requests that are none here: "only from stock"; "swap the shea out" of a design. */
const fineHere = (reading: Reading): readonly string[] => [
  ...(asksForShelf(reading) ? ['stock'] : []),
  ...(reading.last?.topic === 'design' && /\bswap(?:ped)?\b.{1,30}\bout\b/i.test(reading.text)
    ? ['swap', 'swapped']
    : []),
];

const isOtherRequest = (reading: Reading): boolean => {
  const fine = fineHere(reading);
  return (
    anyWord(
      reading,
      otherRequests.filter((word) => !fine.includes(word)),
    ) || pointedNames(reading).reading.items.some(({ letter }) => /[RrM]/.test(letter))
  );
};

/** Lines with grams, or shares that already make a whole, are a recipe and no wish. */
export const isWrittenOut = (items: readonly Item[]): boolean => {
  const percent = items.reduce((sum, item) => sum + (item.letter === '%' ? (item.value ?? 0) : 0), 0);
  const names = items.filter((item) => item.letter === 'i').length;
  return items.some((item) => /[gvd]/.test(item.letter)) || (percent >= 99 && names > 1);
};

/** "Would that survive 40 C?" asks what the proposal does; "make it survive 40 C" wishes for another. */
const asksForecast = (reading: Reading): boolean =>
  reading.last?.topic === 'design' &&
  (/\b(?:heat(?:ing)? plan|water ?bath|chart|graph|pour(?:ing)? (?:temp\w*|at|hot))\b/i.test(reading.text) ||
    /\b(?:would|will|does|do|can|could|how)\b.{0,12}\b(?:that|it|this|they|these)\b.{0,20}\b(?:surviv\w*|melt\w*|hold|stand|soften\w*|cope)\b/i.test(
      reading.text,
    )) &&
  !/\b(?:you|we|i) (?:make|get)\b/i.test(reading.text);

const ceilingWords = 'than spend under below less most max maximum up over within budget cheaper'.split(' ');

/** "What is mango butter?", "is lanolin vegan?": asked about an ingredient, wished for nothing. */
const asksAbout =
  /^\W*(?:what(?:'s| is| are)|whats|tell me about|density of|is|are|does|do) (?!(?:there|not|you|it|that|this|something|best|a good|your|about|we|i)\b)[\w' -]{1,40}\??\s*$/i;

/** "What do people put kokum butter in balms for?" */
const asksWhatFor =
  /^\W*(?:what|why) (?:do|does|did) (?:people|makers?|anyone|anybody|one|they) (?:use|put|take) [\w' -]{1,60}(?:\?|$)/i;

/** Nothing here to design, seen before anything is read. */
export const isElsewhere = (reading: Reading): boolean => {
  const { words } = reading;
  // "what do people use castor oil for" asks about the oil, not for a balm with it.
  if (words.has('what') && (words.has('use') || words.has('used')) && words.has('for')) return true;
  if (/\b(?:upper|legal|safe) limit\b/i.test(reading.text)) return true;
  if (asksAbout.test(reading.text) || asksWhatFor.test(reading.text)) return true;
  if (isOtherRequest(reading) || asksForecast(reading)) return true;
  // "… a tin of 15 ml" under a price is no line of a recipe; any other amount is.
  return isWrittenOut(reading.items) && !anyWord(reading, ceilingWords);
};
