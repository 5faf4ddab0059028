import { defined } from '../../core/defined.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readPrices } from './cost-prices.ts';
import { readWhen, type WhenRead } from './cost-when.ts';
import { badMoney, costCues, risenBy, whichDay } from './cost-words.ts';

/** A name with a pack and a number with pence, and nothing else: "beeswax 500 g 14.50". */
export const looksPriced = (reading: Reading): boolean => {
  if (anyWord(reading, [...costCues, 'paid', 'pay', 'pays']) || /[€£$]/.test(reading.text)) return true;
  if (
    /\b(?:per|a|an)\s+(?:kg|kilo|litre|liter|100|l|lb|oz|pound|tin|jar|pot|tube)\b|\d\s*\/\s*(?:kg|l|kilo|litre)\b/i.test(
      reading.text,
    )
  )
    return true;
  // "Labels are 12 for 100".
  if (/\d\s+(?:[a-z]+\s+)?for\s+\d/i.test(reading.text) && reading.items.some((item) => item.letter === 'c'))
    return true;
  // "Shea butter is 9 for 500 g".
  if (
    /^\W*[a-z' -]{3,40}\s(?:is|are|was|were|costs?|at)?\s?\d+(?:[.,]\d+)?\s+for\s+(?:an?\s|\d[\d.,]{0,6}\s?)(?:g|kg|kilos?|grams?|ml|l|lit(?:re|er)s?|oz|lb)\W*$/i.test(
      reading.text,
    ) &&
    reading.items.filter((item) => item.letter === 'i').length === 1
  )
    return true;
  // "Vitamin E 50 g for 9": a pack, and what was paid for it.
  if (/\d\s?(?:g|kg|ml|l|oz|lb)\s+for\s+\d+(?:[.,]\d+)?\s*$/i.test(reading.text)) return true;
  // "1 litre of jojoba is 38".
  if (
    /^\W*\d[\d.,]{0,6}\s?(?:g|kg|kilos?|ml|l|lit(?:re|er)s?|oz|lb)\s(?:of\s)?[a-z' -]{3,40}\s(?:is|are|was|were)\s\d+(?:[.,]\d+)?\W*$/i.test(
      reading.text,
    )
  )
    return true;
  const money =
    /\d[.,]\d{2}(?!\d)/.test(reading.text) ||
    /\b(?:each|apiece|cents?|pence|eur|euros?|gbp|usd)\b|\d\s?(?:p|c|ct)\b/i.test(reading.text);
  return money && reading.items.some((item) => /[ic]/.test(item.letter));
};

/** "Could you keep these prices?" asks for no price. */
const noteIt =
  /\b(?:can|could|would|will) you (?:please |kindly |be so kind (?:as to |and ))?(?:keep|note|save|remember|write|record|put|store)\b[^?.]{0,60}\?/gi;

export const asksCost = (reading: Reading): boolean =>
  /\bhow (?:much|expensive|dear|cheap)\b|\bwhat\b|\bcost of\b|\bcosting\b|\bprice of\s+\d|\?/i.test(
    reading.text.replace(noteIt, ' '),
  ) || reading.items.some((item) => item.letter === 'R');

/** "Gone up by 2 euros a kilo": a difference is no price. */
const isDifference = ({ text, items }: Reading): boolean =>
  items.some((item) => /[ic]/.test(item.letter)) &&
  /\b(?:up|down|rose|risen|fell|fallen|dropped|increased|went|more|less|dearer|cheaper)\b.{0,12}\bby\s+[€£$]?\s?(?:\d|an?\b|one|two|three|half)|\b\d+(?:[.,]\d+)?\s*(?:%|percent|euros?|eur|pence|cents?|p)\s+(?:more|less|dearer|cheaper)\b/i.test(
    text,
  );

const perPack =
  /\d\s*(?:€|£|\$|euros?|eur|quid)?\s*(?:an?|per|the|\/)\s?(?:kilo|kg|kilogram|lit(?:re|er))\b/i;

/** What a price is worth as a claim: "New price: shea 19/kg" is no recipe to be saved. */
const weightOf = (reading: Reading): number =>
  anyWord(reading, costCues) || perPack.test(reading.text) ? 3.1 : 2.7;

const undated = (reading: Reading, dated: WhenRead | undefined): Reading =>
  dated ? { ...reading, items: reading.items.filter((item) => !dated.items.includes(item)) } : reading;

const lessThanNothing = /\b(?:costs?|is|are|at|for|now|pay|paid|price)\s+(?:minus|negative)\s+[€£$]?\s?\d/i;

/** Prices to be noted: "shea costs 18 per kg", "tins are 0.35 each, from 2 March". */
export const claimPrices = (reading: Reading): Claim | undefined => {
  if (!looksPriced(reading) || asksCost(reading)) return undefined;
  if (isDifference(reading)) return refuse(risenBy, 2.8);
  if (lessThanNothing.test(reading.text)) return refuse(badMoney, 2.8);
  const dated = readWhen(reading);
  const read = readPrices(undated(reading, dated));
  if (!read) return undefined;
  const { trouble } = read;
  if (trouble) return refuse(trouble, read.prices.length > 0 || anyWord(reading, costCues) ? 2.7 : 1.6);
  const day = dated?.when.day;
  if (dated && day === undefined) return refuse(whichDay, 2.7);
  const prices = read.prices.map((price) => ({ ...price, ...defined({ on: day }) }));
  return claim({ action: 'price', prices }, weightOf(reading), read.assumed);
};
