import { decimalText } from '../../core/cost/money.ts';
import { anyWord, type Reading } from '../reading.ts';
import { priceWords } from './design-words.ts';
import { type Board, take } from './target.ts';

/** A ceiling as the request carries it: decimal text in the group's currency. */
export interface PriceLimit {
  readonly amount: string;
  readonly per: 'kg' | 'container';
  readonly container?: string;
  readonly size?: { readonly amount: number; readonly unit: 'g' | 'ml' };
}

export interface PriceRead {
  readonly price?: true;
  readonly limit?: PriceLimit;
  readonly assumed?: string;
}

const number = '(?<amount>\\d{1,6}(?:[.,]\\d{1,4})?)';
const coin = '(?<coin>€|£|\\$|eur(?:os?)?|gbp|quid|usd|dollars?|pounds?|pence|p|cents?|cts?|c)?';
const measure = '(?<size>\\d{1,4}(?:[.,]\\d{1,2})?) ?(?<unit>ml|g)';
const box = '(?<box>tin|jar|pot|tube|stick|tub|bottle|vial|container|balm|piece|one)s?';
const most =
  '(?:under|below|less than|cheaper than|at most|at the most|max(?:imum)?(?: of)?|up to|no more than|not more than|not over|within|for|<|budget(?: of| is)?:?)';

/** "under 0.60 a tin of 15 ml", "at most 12 per kg", "for 60p each in 15 ml tins". */
const shapes: readonly RegExp[] = [
  new RegExp(
    `${most} ?(?:[€£$] ?)?${number} ?${coin} ?(?:per|a|an|for each|each|every|/) ?(?<kilo>kg|kilos?|kilograms?)\\b`,
    'i',
  ),
  new RegExp(
    `${most} ?(?:[€£$] ?)?${number} ?${coin} ?(?:per|a|an|for each|for a|each|every|/) ?${measure} ?${box}\\b`,
    'i',
  ),
  new RegExp(
    `${most} ?(?:[€£$] ?)?${number} ?${coin} ?(?:per|a|an|for each|for a|each|every|/) ?${box}(?: ?(?:of|with|at|,)? ?${measure}\\b)?`,
    'i',
  ),
  new RegExp(
    `${most} ?(?:[€£$] ?)?${number} ?${coin} ?each\\b(?: ?(?:in|for|,) ${measure} ?${box}\\b)?`,
    'i',
  ),
  new RegExp(
    `(?:[€£$] ?)?${number} ?${coin} ?(?:per|a|/) ?(?<kilo>kg|kilo)\\b ?(?:max(?:imum)?|at most|or less|tops)`,
    'i',
  ),
  new RegExp(`${most} ?[€£$] ?${number}(?![\\d.,%])`, 'i'),
  new RegExp(`${most} ?${number} ?(?<coin>€|£|\\$|eur(?:os?)?|gbp|quid|usd|dollars?|pence)(?![\\w])`, 'i'),
];

/** A tin is taken to hold this much where nobody says: the house's usual tin. */
const usualMl = 15;

const decimalOf = (text: string, sign: string | undefined): string | undefined => {
  const plain = text.replace(',', '.');
  const cents = /^(?:pence|p|cents?|cts?|c)$/i.test(sign ?? '');
  const amount = cents ? String(Number((Number(plain) / 100).toFixed(6))) : plain;
  return decimalText.test(amount) && Number(amount) > 0 ? amount : undefined;
};

type Groups = Readonly<Record<string, string | undefined>>;

const limitOf = (groups: Groups): PriceRead => {
  const amount = decimalOf(groups.amount ?? '', groups.coin);
  if (amount === undefined) return { price: true };
  if (groups.kilo) return { price: true, limit: { amount, per: 'kg' } };
  const container = /^(?:tin|jar|pot|tube|stick|tub|bottle|vial)$/i.test(groups.box ?? '')
    ? (groups.box ?? '').toLowerCase()
    : undefined;
  const unit = groups.unit?.toLowerCase() === 'g' ? 'g' : 'ml';
  const size = groups.size
    ? ({ amount: Number(groups.size.replace(',', '.')), unit } as const)
    : ({ amount: usualMl, unit: 'ml' } as const);
  const named = container === undefined ? {} : { container };
  return {
    price: true,
    limit: { amount, per: 'container', size, ...named },
    ...(groups.size ? {} : { assumed: `I took that as the price of one that holds ${usualMl} ml.` }),
  };
};

const takeStretch = (board: Board, from: number, to: number): void => {
  for (const [at, item] of board.items.entries())
    if (item.from >= from && item.to <= to && item.letter !== '\n') take(board, at, at + 1);
};

/** "No more than 50p a tin, vegan, 15 ml": how much one holds, said apart. */
const sized = (read: PriceRead, board: Board): PriceRead => {
  const at = board.items.findIndex((item, index) => /[gv]/.test(item.letter) && !board.taken[index]);
  const { value, unit } = board.items[at] ?? {};
  if (!read.assumed || !read.limit || value === undefined || (unit !== 'ml' && unit !== 'g')) return read;
  take(board, at, at + 1);
  return { price: true, limit: { ...read.limit, size: { amount: value, unit } } };
};

/** Takes what a message says about the price off the board: a ceiling, or that it has to be cheap. */
export const takePrice = (board: Board, reading: Reading): PriceRead => {
  for (const shape of shapes) {
    const match = shape.exec(reading.text);
    if (!match?.groups) continue;
    takeStretch(board, match.index, match.index + match[0].length);
    return sized(limitOf(match.groups), board);
  }
  const said = anyWord(reading, priceWords) || board.items.some((item) => /^[€£$]$/.test(item.word));
  if (!said) return {};
  for (const [at, item] of board.items.entries()) {
    if (/^[€£$]$/.test(item.word) || priceWords.includes(item.word)) take(board, at, at + 1);
  }
  return { price: true };
};
