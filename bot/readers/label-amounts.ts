import { defined } from '../../core/defined.ts';
import { gramsIn, isMassUnit } from '../../core/units.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';
import { quantityTrouble, takeCountOrMultiple } from './scale-target.ts';
import { type Board, free, sizeOf, take } from './target.ts';

interface Net {
  readonly amount: number;
  readonly unit: 'g' | 'oz' | 'ml';
}

const netOf = (item: Item, reading: Reading): Net | undefined => {
  if (item.unit === 'oz' && item.value !== undefined) return { amount: item.value, unit: 'oz' };
  if (isMassUnit(item.unit ?? '') && item.value !== undefined)
    return { amount: Number((item.value * gramsIn(item.unit as 'g')).toFixed(6)), unit: 'g' };
  return sizeOf(item, reading.settings.region);
};

/** What a container holds, in ounces where it was said so: "1 oz tins" declare one ounce, not 0.99. */
const asSaid = (
  size: { readonly amount: number; readonly unit: 'g' | 'ml' } | undefined,
  items: readonly Item[],
): Net | undefined => {
  const ounces = items.find(
    ({ unit, value }) =>
      unit === 'oz' && value !== undefined && Math.abs(value * gramsIn('oz') - (size?.amount ?? 0)) < 1e-6,
  );
  return ounces?.value === undefined ? size : { amount: ounces.value, unit: 'oz' };
};

const isAmount = (item: Item | undefined): item is Item =>
  item !== undefined && (item.letter === 'g' || item.letter === 'v');

/** "…, 12 g", "net 12 g", "12 g each": an amount that stands beside no ingredient is what one tin holds. */
const isNegative = (board: Board, at: number, text: string): boolean => {
  const item = board.items[at];
  const before = board.items[at - 1];
  return (
    before?.letter === '-' && before.to === item?.from && /(?:^|[\s,(])-$/.test(text.slice(0, before.to))
  );
};

const takeNet = (board: Board, reading: Reading): Net | undefined => {
  const list = board.items;
  const at = list.findIndex((item, index) => {
    if (!isAmount(item) || board.taken[index]) return false;
    const next = list.slice(index + 1).find(({ letter }) => !/[oyB]/.test(letter));
    const before = list[index - 1];
    return next?.letter !== 'i' && before?.letter !== 'i';
  });
  const item = list[at];
  if (!item) return undefined;
  take(board, at, at + 1);
  const net = netOf(item, reading);
  return net && isNegative(board, at, reading.text) ? { ...net, amount: -net.amount } : net;
};

/** "24 round lids", "24 labels", "60 stickers": a number of what is printed. */
const printedThing = /^(?:labels?|stickers?|lids?|strips?|bands?|wraps?|copies|circles?|tops?|rounds?)$/;
const between =
  /^(?:round|small|big|little|paper|lid|tin|top|side|circular|self|adhesive|printed|new|more|of|x)$/;

const takeLabelCount = (board: Board): Item | undefined => {
  const at = board.items.findIndex((item, index) => {
    if (item.letter !== 'n' || board.taken[index]) return false;
    const next = board.items.slice(index + 1, index + 5).find(({ word }) => !between.test(word));
    const isRound = /^(?:round|circular)$/.test(board.items[index + 1]?.word ?? '');
    return next !== undefined && (printedThing.test(next.word) || (isRound && next.letter === ','));
  });
  const item = board.items[at];
  if (item) take(board, at, at + 1);
  return item;
};

/** "12 miles", "12 people", "at 12 o'clock": no number of tins. */
const countsOther =
  /^ (?!(?:please|pls|plz|thanks|thank|ta|cheers|in|on|of|for|and|x|with|region|no|then|now|if|this|we|i|as|at|or|to|all|by|from|us|uk|eu|au|ca|british|american|canadian|australian|letter|lot|best|bb|tins?|each|only|altogether|total|pieces?|pcs|copies|ones?|times|units?|more|a4|size|is|are|should|will|would|needed|required|again|so|when|because|have|need|here|there)\b)\p{L}{2,}/iu;

/** "Labels for R, two dozen": the one number nobody else claimed. */
const takeLoneNumber = (board: Board, text: string): Item | undefined => {
  const [only, second] = free(board).filter(({ letter }) => letter === 'n');
  // A year is no number of tins.
  const year = (only?.value ?? 0) >= 1990 && (only?.value ?? 0) <= 2100;
  if (!only || second || year || countsOther.test(text.slice(only.to))) return undefined;
  const at = board.items.indexOf(only);
  return take(board, at, at + 1)[0];
};

/** "In one tin is 10 g", "each tin has 10 g": what one of them holds, and no number of labels. */
const holdsSo =
  /\b(?:in (?:one|1|each|every|an?)|one|1|each|every|an?|per)\s+(?:[a-z]+\s+)?(?:tin|jar|pot|tube|stick|container)s?\s+(?:(?:it|there)\s+)?(?:is|are|has|have|holds?|weighs?|contains?|takes?|comes? to|goes|will (?:hold|have|weigh|contain))\b/i;

const wholeTins: Trouble = {
  code: 'bad-quantity',
  text: 'Labels come in whole numbers, at least one: "24 round labels 40 mm".',
};

export interface Amounts {
  readonly tins?: number;
  readonly net?: Net;
  readonly trouble?: Trouble;
}

/** How many tins, and what one of them holds. */
export const takeLabelAmounts = (board: Board, reading: Reading): Amounts => {
  const range = quantityTrouble(free(board).filter(({ letter }) => letter !== 'w'));
  const counted = takeLabelCount(board);
  const whole = counted?.value;
  const { target, trouble } = takeCountOrMultiple(board, reading.settings);
  const net = asSaid(target.size, board.items) ?? takeNet(board, reading);
  const count = target.count === 1 && holdsSo.test(reading.text) ? undefined : target.count;
  const tins =
    whole ?? count ?? (target.count === undefined ? takeLoneNumber(board, reading.text)?.value : undefined);
  const wrong = tins !== undefined && (!Number.isInteger(tins) || tins < 1) ? wholeTins : undefined;
  return defined({ tins, net, trouble: range ?? wrong ?? trouble });
};
