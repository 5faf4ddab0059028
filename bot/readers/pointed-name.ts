import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';
import { letters } from './lexicon.ts';

/** A reading in which a saved recipe that was pointed at is named in full, and what was taken for granted. */
export interface Pointed {
  readonly reading: Reading;
  readonly assumed: readonly string[];
}

const mostWords = 6;
const lastCharacters = 12;
const pointing = /\b(?:the|our|my|your|that|this)\s+$/i;

const isPointedAt = ({ text }: Reading, { from }: Item): boolean =>
  pointing.test(text.slice(Math.max(0, from - lastCharacters), from));

/** Words a name may be made of, and more in it than "lip balm", which is many a recipe's. */
const canBeName = (items: readonly Item[]): boolean =>
  items.at(-1)?.letter === letters.product &&
  items.every((item) => /[wBZi]/.test(item.letter)) &&
  items.some((item) => item.letter !== letters.product && item.word !== 'lips');

interface Found {
  readonly at: number;
  readonly length: number;
  readonly said: string;
  readonly recipe: string;
}

const nameAt = (reading: Reading, at: number): Found | undefined => {
  for (let length = mostWords; length > 1; length -= 1) {
    const items = reading.items.slice(at, at + length);
    if (items.length < length || !canBeName(items)) continue;
    const said = items.map((item) => item.word).join(' ');
    const [only, second] = reading.recipes.near(said);
    if (only && !second) return { at, length, said, recipe: only.name };
  }
  return undefined;
};

const find = (reading: Reading): Found | undefined => {
  for (const [at, item] of reading.items.entries()) {
    const found = isPointedAt(reading, item) ? nameAt(reading, at) : undefined;
    if (found) return found;
  }
  return undefined;
};

const point = (reading: Reading): Pointed => {
  const has = (letter: string): boolean => reading.items.some((item) => item.letter === letter);
  const found = has(letters.product) && !has(letters.recipe) ? find(reading) : undefined;
  if (!found) return { reading, assumed: [] };
  const { at, length, said, recipe } = found;
  const from = reading.items[at]?.from ?? 0;
  const to = reading.items[at + length - 1]?.to ?? from;
  const items = [...reading.items];
  items.splice(at, length, { letter: letters.recipe, word: said, from, to, recipe });
  return { reading: { ...reading, items }, assumed: [`I took "${said}" as ${recipe}.`] };
};

const known = new WeakMap<Reading, Pointed>();

/** "The mint lip balm": a saved recipe by part of its name, an ingredient's name in it or not. */
export const pointedNames = (reading: Reading): Pointed => {
  const before = known.get(reading);
  if (before) return before;
  const pointed = point(reading);
  known.set(reading, pointed);
  return pointed;
};

/** What a topic makes of a message in which saved recipes are named in full. */
export const readPointed =
  <T extends { readonly kind: string }>(read: (reading: Reading) => T | undefined) =>
  (reading: Reading): T | undefined => {
    const { reading: plain, assumed } = pointedNames(reading);
    const claim = read(plain);
    if (!claim || assumed.length === 0 || !('assumed' in claim)) return claim;
    return { ...claim, assumed: [...(claim.assumed as readonly string[]), ...assumed] };
  };
