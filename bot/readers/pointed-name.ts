import { nameKey } from '../../core/names.ts';
import { oncePerReading, type Reading } from '../reading.ts';
import type { Item } from './item.ts';
import { letters } from './lexicon.ts';
import { isOthersName } from './others-name.ts';

/** A reading in which a saved recipe that was pointed at is named in full, and what was taken for granted. */
export interface Pointed {
  readonly reading: Reading;
  readonly assumed: readonly string[];
}

const mostWords = 6;
/** In a wall of text no name is looked for that way. */
const mostItems = 80;
const lastCharacters = 40;
/** "A mint lip balm", "a nice vegan lip balm": any, and none in particular. */
const anyOne =
  /\b(?:(?:an?|some|any|one|new|another|kind of|sort of)\s+(?:(?!of\b)[a-z-]+\s+){0,2}|(?<!\b(?:ml|g|grams?|oz|tins?|pots?|jars?|sticks?)\s)each\s+)$/i;

const pointing = /\b(?:the|our|my|your|that|this|her|his|their|for|of|in)\s+$/i;

/** "Hand balm = 20% beeswax + 80% olive" is written out, whatever it is called. */
const isWrittenOut = ({ items }: Reading): boolean =>
  items.filter(({ letter }) => /[g%pv]/.test(letter)).length > 1 &&
  items.filter(({ letter }) => letter === 'i').length > 1;

const before = ({ text }: Reading, { from }: Item): string =>
  text.slice(Math.max(0, from - lastCharacters), from);

/** Words a name may be made of, and more in it than "lip balm", which is many a recipe's. */
const canBeName = (items: readonly Item[]): boolean =>
  items.some((item) => item.letter !== letters.product && item.word !== 'lips');

interface Found {
  readonly at: number;
  readonly length: number;
  readonly said: string;
  readonly recipe: string;
}

/** As many words as the name has, or all but one of a longer one: a slip in it does not make it another's. */
const isWholeName = (said: string, name: string): boolean => {
  const [some, all] = [nameKey(said).split(' ').length, nameKey(name).split(' ').length];
  return some > 1 && some >= all;
};

/** "36 tins of 10 ml hand balm", "labels, hand balm, 12 g": after what holds it, or where a clause begins. */
const beginsOrHeld = ({ items }: Reading, run: readonly Item[]): boolean => {
  const at = items.indexOf(run[0] as Item);
  const [last, next] = [items[at - 1], items[at + run.length]];
  // "Hand balm = 20 % …": the name of what is written out.
  if (next !== undefined && /[:=]/.test(next.letter)) return false;
  return last === undefined || /[cve,;:.?!\n-]/.test(last.letter);
};

/** "A pot of hand balm": of one that is known. */
const heldOf = /\b(?:tins?|jars?|pots?|tubes?|sticks?|batch|labels?|recipe) of\s+$/i;
/** "One for the hand balm". */
const certain = /\b(?:the|our|my|your|this|that)\s+$/i;
/** "Do we still have any hand balm": of what is there. */
const askedFor =
  /\b(?:(?:is|are|was|were) there|(?:have|do|did) (?:we|i|you)|has (?:any|some)one|anyone|got|still)\b[^.?!]{0,24}\b(?:any|some)\s+$/i;
const isAnyOne = (text: string): boolean =>
  anyOne.test(text) && !heldOf.test(text) && !certain.test(text) && !askedFor.test(text);

const isMeant = (reading: Reading, items: readonly Item[], said: string, recipe: string): boolean => {
  const [first] = items;
  if (!first || isAnyOne(before(reading, first)) || isOthersName(reading, first, said, recipe)) return false;
  if (isWholeName(said, recipe)) return true;
  const names =
    !isWrittenOut(reading) || pointing.test(before(reading, first)) || beginsOrHeld(reading, items);
  return items.at(-1)?.letter === letters.product && names;
};

/** How many items from `at` on are words of names. */
const runFrom = ({ items, recipes }: Reading, at: number): number => {
  let length = 0;
  while (length < mostWords) {
    const item = items[at + length];
    if (!item || !/[wBZi]/.test(item.letter)) break;
    if (
      !nameKey(item.word)
        .split(' ')
        .every((word) => recipes.hasWord(word))
    )
      break;
    length += 1;
  }
  return length;
};

/** "The mint one": by one word of a name that is in no other recipe's. */
const oneNamed = (reading: Reading, at: number): Found | undefined => {
  const item = reading.items[at];
  if (!item || !/[wZi]/.test(item.letter) || !/^\s+one\b/i.test(reading.text.slice(item.to, item.to + 5)))
    return undefined;
  if (!/\b(?:the|our|my|that)\s+$/i.test(before(reading, item))) return undefined;
  const [only, second] = reading.recipes.near(item.word);
  const isExact = only && nameKey(only.name).split(' ').includes(nameKey(item.word));
  return only && !second && isExact
    ? { at, length: 1, said: `${item.word} one`, recipe: only.name }
    : undefined;
};

const nameAt = (reading: Reading, at: number): Found | undefined => {
  const one = oneNamed(reading, at);
  if (one) return one;
  for (let length = runFrom(reading, at); length > 1; length -= 1) {
    const items = reading.items.slice(at, at + length);
    if (!canBeName(items)) continue;
    const said = items.map((item) => item.word).join(' ');
    const [only, second] = reading.recipes.near(said);
    if (only && !second && isMeant(reading, items, said, only.name))
      return { at, length, said, recipe: only.name };
  }
  return undefined;
};

const onlyWord = /^[\p{L}'-]+$/u;

/** "And the mint one?" after an answer: a recipe by one word of its name. */
const oneAt = (reading: Reading, at: number): Found | undefined => {
  const word = reading.items[at];
  if (!reading.last || !word || !/[wi]/.test(word.letter) || !onlyWord.test(word.word)) return undefined;
  const isOne =
    /\b(?:the|our|my)\s+$/i.test(before(reading, word)) && /^ one\b/i.test(reading.text.slice(word.to));
  const [only, second] = isOne ? reading.recipes.near(word.word) : [];
  return only && !second ? { at, length: 1, said: word.word, recipe: only.name } : undefined;
};

const find = (reading: Reading): Found | undefined => {
  if (reading.items.length > mostItems) return undefined;
  for (const at of reading.items.keys()) {
    const found = nameAt(reading, at) ?? oneAt(reading, at);
    if (found) return found;
  }
  return undefined;
};

const point = (reading: Reading): Pointed => {
  const has = (letter: string): boolean => reading.items.some((item) => item.letter === letter);
  const found = has(letters.recipe) ? undefined : find(reading);
  if (!found) return { reading, assumed: [] };
  const { at, length, said, recipe } = found;
  const from = reading.items[at]?.from ?? 0;
  const to = reading.items[at + length - 1]?.to ?? from;
  const items = [...reading.items];
  items.splice(at, length, { letter: letters.recipe, word: said, from, to, recipe });
  return { reading: { ...reading, items }, assumed: [`I took "${said}" as ${recipe}.`] };
};

/** "The mint lip balm": a saved recipe by part of its name, an ingredient's name in it or not. */
export const pointedNames: (reading: Reading) => Pointed = oncePerReading(point);

/** What a topic makes of a message in which saved recipes are named in full. */
export const readPointed =
  <T extends { readonly kind: string }>(read: (reading: Reading) => T | undefined) =>
  (reading: Reading): T | undefined => {
    const { reading: plain, assumed } = pointedNames(reading);
    const claim = read(plain);
    if (!claim || assumed.length === 0 || !('assumed' in claim)) return claim;
    return { ...claim, assumed: [...(claim.assumed as readonly string[]), ...assumed] };
  };
