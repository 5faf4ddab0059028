import type { Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';

const aJar =
  /,?\s*(\d[\d.,]{0,6}\s?(?:g|grams?|ml|oz))\s+(?:an?|per|to (?:an?|each|the)|in an?)\s+(?:tin|jar|pot|stick|tube|tub)\b(?!\s+of\b)/i;

/** "20 jars of it, 40 g a jar": how much goes in each, and no jar more. */
export const perJar = (reading: Reading): Reading =>
  aJar.test(reading.text) ? readAgain(reading.text.replace(aJar, ', $1 in each'), reading) : reading;
