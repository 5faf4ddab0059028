import type { Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';

const aJar =
  /,?\s*(\d[\d.,]{0,6}\s?(?:g|grams?|ml|oz))\s+(?:an?|per|to (?:an?|each|the)|in an?)\s+(?:tin|jar|pot|stick|tube|tub)\b(?!\s+of\b)/i;

const everyJar =
  /[,.;:]?\s*(?:and )?\b(?:every|each) (?:tin|jar|pot|stick|tube)s? (?:have|has|had|holds?|held|is|was|contains?|gets?|got|weighs?|takes?|took|with)\s+(\d[\d.,]{0,6}\s?(?:g|grams?|ml|oz))\b/i;

/** "20 jars of it, 40 g a jar", "every jar holds 40 g": how much goes in each, and no jar more. */
export const perJar = (reading: Reading): Reading => {
  const text = reading.text.replace(aJar, ', $1 in each').replace(everyJar, ', $1 in each');
  return text === reading.text ? reading : readAgain(text, reading);
};
