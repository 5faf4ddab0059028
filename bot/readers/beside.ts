import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';

/** "I am 42", "see you at 5", "my phone number is 12345": figures of other things, whatever was asked before. */
const ofOthers =
  /^\W*(?:i am|i'm|im|(?:s?he|my [a-z]{2,12})(?:'s| is)) (?:only |just |about |turning )?\d{1,3}(?: years?(?: old)?| today| now)?\W*$|^.{0,20}\bsee you\b.{0,30}$|\b(?:phone|house|room|door|bus) number\b/i;

/** True for a figure that is no answer and no question here. */
export const isOfOthers = ({ text }: Reading): boolean => ofOthers.test(text);

/** How what goes on from a message before begins: "and 36 for the fair". */
const goesOn =
  /^\W*(?:and|what|how|make|for|ok|okay|now|so|only|just|then|with|no|or|but|also|same|could|can|would|if|at|even|say|try|sorry|oh|actually|rather|instead|better|i (?:mean|meant|need|want)|it's|it is|there (?:are|is)|we(?:'re| are| need| have| want| make| only)|give|do|let|use|take|change|count|add|plus|please|pls|up to|maybe|\d+(?! of (?:the|our|my)))\b/i;

/**
 * "Our hall has 3 rooms", after an answer: a message that does not begin as one that goes on, and has words in it that
 * nobody expects.
 */
export const isBeside = ({ text, items }: Reading, isExpected: (item: Item) => boolean): boolean =>
  !goesOn.test(text) && items.some((item) => item.letter === 'w' && !isExpected(item));
