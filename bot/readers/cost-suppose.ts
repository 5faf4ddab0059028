import { type Claim, claim, type Reading } from '../reading.ts';
import { readingWithout } from '../understand.ts';
import { looksPriced } from './cost-note.ts';
import { type PriceRead, readPrices } from './cost-prices.ts';
import { lastCost } from './cost-words.ts';

/** "… if shea were 24 per kg": a price that is only supposed. */
const supposing = /\b(?:if|suppose|supposing|assume|assuming|imagine)\b/i;
/** "What about beeswax at 30 per kg?", "and with shea at 24 a kilo?": after a cost, and asked. */
const whatAbout = /^\W*(?:and\s+(?:with|for)|what about|how about|and)\b(?=[^?]{3,80}\?\s*$)/i;
/** What is asked behind it: "if shea were 24 per kg, what would it cost?" */
const asksAfter = /[,;.]\s*(?:what|how|would|does|will|do)\b.*$/is;

/** Words around such a price that say nothing else of it. */
const around =
  /^(?:what|if|suppose|supposing|assume|assuming|imagine|was|were|is|would|be|had|i|we|they|to|that|then|the|had|instead|only|just|really|should|cost|costs|costed|rose|went|up)$/;

const pricesIn = (part: Reading): readonly PriceRead[] | undefined => {
  if (!looksPriced(part)) return undefined;
  const items = part.items.filter(({ letter, word }) => letter !== '?' && !around.test(word));
  const read = readPrices({ ...part, items });
  return read && !read.trouble && read.prices.every(({ currency }) => currency === undefined)
    ? read.prices
    : undefined;
};

type Fields = Readonly<Record<string, unknown>>;

/** The batch that is meant: the one said beside it, else the one of the cost before. */
const baseOf = (
  beside: Reading,
  reading: Reading,
  costOf: (r: Reading) => Claim | undefined,
): Fields | undefined => {
  if (!beside.items.some(({ letter }) => /[Ricgv]/.test(letter))) return lastCost(reading);
  const asked = costOf(beside);
  return asked?.kind === 'request' && asked.request.action === 'cost' ? asked.request : undefined;
};

interface Split {
  readonly supposed: Reading;
  readonly beside: Reading;
}

const splitAt = (reading: Reading): Split | undefined => {
  const { text } = reading;
  const found = supposing.exec(text) ?? (lastCost(reading) ? whatAbout.exec(text) : null);
  if (!found) return undefined;
  const from = found.index + found[0].length;
  const asked = asksAfter.exec(text.slice(from));
  // What is cut off leaves its mark: the comma stays between it and the price.
  const to = asked ? from + asked.index + 1 : text.length;
  const rest = { from: to, to: text.length };
  return {
    supposed: readingWithout(reading, [{ from: 0, to: from }, rest]),
    beside: readingWithout(reading, [{ from: found.index, to }]),
  };
};

/**
 * "And if shea were 24 per kg?": the cost with that price in the place of the noted one. Nothing is noted.
 * @param costOf reads what stands beside the supposed price.
 */
export const claimSupposed = (
  reading: Reading,
  costOf: (beside: Reading) => Claim | undefined,
): Claim | undefined => {
  const split = splitAt(reading);
  const prices = split && pricesIn(split.supposed);
  if (!split || !prices) return undefined;
  const base = baseOf(split.beside, reading, costOf);
  return base?.batch === undefined
    ? undefined
    : claim({ ...base, action: 'cost', suppose: prices.map(({ currency: _own, ...price }) => price) }, 3.2);
};
