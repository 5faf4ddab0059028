import { decimalText } from '../../core/cost/money.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { badMoney, otherCurrency } from './cost-words.ts';
import type { Item } from './item.ts';

/** Currencies that go by a sign or word; the first is what it means where nothing else says. */
const signs: readonly (readonly [RegExp, readonly string[]])[] = [
  [/€|\beur(?:os?)?\b/i, ['EUR']],
  [/£|\bgbp\b|\bquid\b|\bsterling\b|\bpence\b|\d\s*pounds?\s*(?:per|an?|each|\/)\s/i, ['GBP']],
  [/\busd\b/i, ['USD']],
  [/\bcad\b/i, ['CAD']],
  [/\baud\b/i, ['AUD']],
  [/\bchf\b/i, ['CHF']],
  [/\$|\bdollars?\b/i, ['USD', 'CAD', 'AUD', 'NZD', 'SGD', 'HKD']],
];

const saidIn = (text: string): readonly string[] | undefined =>
  signs.find(([pattern]) => pattern.test(text))?.[1];

/** The currency a text names, where it is not the group's own: a bare $ is the group's dollar if it has one. */
export const otherSaid = (text: string, own: string): string | undefined => {
  const said = saidIn(text);
  return !said || said.includes(own) ? undefined : said[0];
};

/** A currency that was said and is not the group's. */
export const currencyTrouble = (reading: Reading): Trouble | undefined => {
  const other = otherSaid(reading.text, reading.settings.currency);
  return other === undefined ? undefined : otherCurrency(other, reading.settings.currency);
};

const isCents = (next: Item | undefined): boolean => /^(?:p|pence|penny|cents?|cts?)$/.test(next?.word ?? '');

/** A number as decimal text, exactly as typed: shortest form, no float noise; cents become a hundredth. */
const textOf = (value: number, cents: boolean): string | undefined => {
  const text = cents ? (value / 100).toFixed(6) : String(value);
  const plain = text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
  return decimalText.test(plain) && Number(plain) > 0 ? plain : undefined;
};

export interface MoneyRead {
  readonly price?: string;
  readonly items: readonly Item[];
  readonly trouble?: Trouble;
}

/** "35 cents", "35p", and "35c", which reads as a temperature elsewhere. */
const inCents = (item: Item, next: Item | undefined): boolean =>
  item.letter === 't' ? item.unit === 'C' : item.letter === 'n' && isCents(next);

/** "18 pounds per kg": pounds are money where that is the currency, or where a pack follows. */
const inPounds = (item: Item, next: Item | undefined, currency: string): boolean => {
  if (item.letter !== 'g' || item.unit !== 'lb') return false;
  return currency === 'GBP' || /^(?:per|each|\/)$/.test(next?.word ?? '') || next?.letter === 'g';
};

/** The money in `at`: a plain number, "35 cents", "35c", or "18 pounds" where pounds are the currency. */
export const moneyAt = (items: readonly Item[], at: number, currency: string): MoneyRead | undefined => {
  const item = items[at];
  // "A tin": an article counts things, never money.
  if (item?.value === undefined || item.upTo !== undefined || /^an?$/.test(item.word)) return undefined;
  const next = items[at + 1];
  const cents = inCents(item, next);
  if (item.letter !== 'n' && !cents && !inPounds(item, next, currency)) return undefined;
  const price = textOf(item.value, cents);
  const taken = cents && next && item.letter === 'n' ? [item, next] : [item];
  return price === undefined ? { items: taken, trouble: badMoney } : { price, items: taken };
};

const coin = /^(?:€|eur|euros?|quid|pence|cents?|pounds?|dollars?)$/;

/** "Labels are 12 for 100": of two numbers after the thing the first is the money, unless only the second has pence. */
const firstForMany = (segment: readonly Item[]): number | undefined => {
  // "Lids: 100 for 9 euros" says which of the two is money.
  const at = segment.findIndex(
    (item, index) =>
      item.letter === 'n' &&
      segment[index + 1]?.word === 'for' &&
      segment[index + 2]?.letter === 'n' &&
      !coin.test(segment[index + 3]?.word ?? ''),
  );
  const named = segment.findIndex((item) => item.letter === 'c');
  if (at < 0 || named < 0 || named > at || packWord.test(segment[at - 2]?.word ?? '')) return undefined;
  const whole = (item: Item | undefined): boolean => Number.isInteger(item?.value);
  return whole(segment[at]) && !whole(segment[at + 2]) ? undefined : at;
};

const packWord =
  /^(?:packs?|packets?|bags?|box(?:es)?|sheets?|rolls?|cartons?|cases?|trays?|bundles?|sets?)$/;

/** Which number is the money: beside a sign, after "for"/"costs"/"at", else the last one. */
export const moneyIn = (segment: readonly Item[], currency: string): MoneyRead | undefined => {
  const places = segment.flatMap((_, at) => {
    const read = moneyAt(segment, at, currency);
    return read ? [{ at, read }] : [];
  });
  const many = firstForMany(segment);
  const bought = places.find(({ at }) => at === many);
  if (bought) return bought.read;
  const telling = (at: number): boolean =>
    /^(?:€|\$|£|costs?|for|paid|pay|is|are|at)$/.test(segment[at - 1]?.word ?? '') ||
    /^(?:€|\$|£|eur|euros?)$/.test(segment[at + 1]?.word ?? '');
  // "50 tins for 17.50": a number right before the container counts; so does "boxes of 100".
  const counting = (at: number): boolean =>
    (segment[at - 1]?.letter === 'o' && packWord.test(segment[at - 2]?.word ?? '')) ||
    (/^[cov]/.test(segment[at + 1]?.letter ?? '') &&
      segment.slice(at + 1, at + 4).some((item) => item.letter === 'c'));
  // "Price 24 tins of 15 ml" asks what they come to.
  const sized = (at: number): boolean =>
    segment[at + 1]?.letter === 'c' &&
    Number.isInteger(segment[at]?.value) &&
    segment.slice(at + 2, at + 4).some(({ letter }) => /[gv]/.test(letter));
  const free = places.filter(({ at }) => (places.length === 1 && !sized(at)) || !counting(at));
  return (free.find(({ at }) => telling(at)) ?? free.at(-1))?.read;
};
