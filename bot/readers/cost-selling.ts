import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { type BatchAsked, readCostBatch } from './cost-batch.ts';
import { currencyTrouble, type MoneyRead, moneyAt } from './cost-money.ts';
import { badMoney, isCurrencySign, lastCost, noSellBatch, sellCues } from './cost-words.ts';
import type { Item } from './item.ts';

/** A selling price, or the margin one should leave. */
export interface Selling {
  readonly sellAt?: string;
  readonly marginPercent?: number;
  readonly items: readonly Item[];
  readonly trouble?: MoneyRead['trouble'];
}

const marginWords = /^(?:margin|margins|profit|profits|markup|earn)$/;
/** "A markup of 100 %": on the cost, where a margin is of the price. */
const markup = /\bmark-? ?up\b|\bon top of (?:the |my |our )?costs?\b/i;
const breakEven =
  /\bbreak[- ]?even\b|\b(?:lowest|least|minimum|smallest) (?:price|i (?:can|could|should)|we (?:can|could|should))\b|\b(?:charge|ask|take|sell)\b.{0,12}\bat least\b|\bat least\b.{0,20}\b(?:charge|ask|take)\b|\bcover (?:my|our|the) costs?\b|\bwithout (?:a )?loss on it\b/i;

/** True for a number that counts containers or stands in a size: no money. */
const counts = (next: Item | undefined): boolean => /[cxoB]/.test(next?.letter ?? '');

const euros = /^(?:€|£|\$|euros?|eur|gbp|quid|dollars?|each|apiece)$/;

/** A number that is money by what stands beside it: "at 5 euros each". */
const isTold = (items: readonly Item[], at: number): boolean =>
  euros.test(items[at + 1]?.word ?? '') ||
  euros.test(items[at - 1]?.word ?? '') ||
  items[at + 1]?.letter === 'e';

const priceIn = (reading: Reading): Selling => {
  const { items } = reading;
  const cue = items.findIndex((item) => sellCues.includes(item.word));
  const prices = items.flatMap((item, at) => {
    const read =
      item.letter === 'g' || counts(items[at + 1])
        ? undefined
        : moneyAt(items, at, reading.settings.currency);
    return read && (at > cue || isTold(items, at)) ? [{ at, read }] : [];
  });
  const found = (prices.find(({ at }) => at > cue) ?? prices[0])?.read;
  return found
    ? { ...defined({ sellAt: found.price, trouble: found.trouble }), items: found.items }
    : { items: [] };
};

/** A markup as the margin it comes to. */
const asMargin = (percent: number, isMarkup: boolean): number =>
  isMarkup ? Number(((100 * percent) / (100 + percent)).toFixed(4)) : percent;

/** "sell at 6.50", "a margin of 40 %". */
export const sellingIn = (reading: Reading): Selling => {
  const percent = reading.items.find((item) => item.letter === '%' && item.value !== undefined);
  const isMarkup = markup.test(reading.text);
  const margin =
    isMarkup ||
    reading.items.some((item) => marginWords.test(item.word)) ||
    /\b(?:keep|left over|clear)\b[^,;]{0,12}\d+(?:[.,]\d+)?\s*(?:%|percent|per cent)/i.test(reading.text);
  if (percent && margin) return { marginPercent: asMargin(percent.value ?? 0, isMarkup), items: [percent] };
  const price = priceIn(reading);
  return price.items.length === 0 && breakEven.test(reading.text) ? { marginPercent: 0, items: [] } : price;
};

export const asksMargin = (reading: Reading, selling: Selling): boolean =>
  selling.items.length > 0 ||
  selling.marginPercent !== undefined ||
  reading.items.some((item) => marginWords.test(item.word));

const troubleOf = (reading: Reading, selling: Selling, asked: BatchAsked): Claim | undefined => {
  const own = asked.batch && asked.own ? asked.trouble : undefined;
  const trouble = selling.trouble ?? currencyTrouble(reading) ?? own;
  if (trouble) return refuse(trouble, 2.6);
  if (!asked.batch || asked.trouble) return refuse(noSellBatch, 2.4);
  const nothing = selling.sellAt === undefined && selling.marginPercent === undefined;
  return nothing ? refuse(badMoney, 1.8) : undefined;
};

/** "4.50 a tin" says what one is sold at, not that one is made. */
const withoutArticle = (items: readonly Item[]): readonly Item[] =>
  items.filter((item, at) => {
    const article = (each: Item | undefined): boolean => each?.letter === 'n' && /^an?$/.test(each.word);
    return !article(item) && !(item.letter === 'c' && article(items[at - 1]));
  });

/** "What margin if I sell at 6.50" says all of it: it is no wording for a label and no scaling. */
const surest = 3.2;

/** What a price leaves, or which price leaves so much, for the batch in the message or the one before. */
export const claimSelling = (reading: Reading, selling: Selling): Claim | undefined => {
  const rest = withoutArticle(reading.items).filter(
    (item) => !selling.items.includes(item) && !isCurrencySign(item),
  );
  const asked = readCostBatch(reading, rest);
  if (asked.blocking.length > 0) return undefined;
  const trouble = troubleOf(reading, selling, asked);
  if (trouble) return trouble;
  const { sellAt, marginPercent } = selling;
  const hours = lastCost(reading)?.hours;
  const { batch, container } = asked;
  return claim({ action: 'cost', ...defined({ batch, container, hours, sellAt, marginPercent }) }, surest, [
    ...asked.assumed,
    ...(marginPercent !== undefined && markup.test(reading.text)
      ? [
          `A markup is on the cost: as a share of the price it is a margin of ${Number(marginPercent.toFixed(1))} %.`,
        ]
      : []),
  ]);
};
