import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { takeItem } from './body.ts';
import { comesOut, isAmountItem } from './infuse-amounts.ts';
import { type Amounts, amountsOf, type Fields, lastInfuse } from './infuse-fields.ts';
import { idOfHerb, idOfOil, namesOf } from './infuse-names.ts';
import { infuseWords, noHerbKnown, oneHerb, oneHerbYield, yieldOf } from './infuse-words.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { boardOf, type Size, sizeOf } from './target.ts';

const gotWords =
  /\b(?:got|came|gave|yielded|yield (?:was|is)|yield:|result (?:was|is)|yield of\b.{0,60}\b(?:was|is|came to)|ended up|was left|were left|after (?:straining|pressing)|strained (?:it|out|my|our|the)|(?:i|we|she|he|they) (?:have )?(?:strained|pressed|squeezed|filtered)|(?:pressed|squeezed|strained|filtered) out)(?=\W|$)/i;
/** A wish or a question tells of no yield: "got 90 g lavender, want to infuse it". */
const notYet =
  /\bhow\b|\bif\b|\bwould\b|\bwhat (?:will|do|does|can)\b|\b(?:want|wants|wanna|going|plan(?:ning)?|like|need|could|can|should|shall)\b/i;
/** True for a message that tells of a weighed yield and asks nothing. */
export const tellsYield = (reading: Reading): boolean =>
  gotWords.test(reading.text) && !notYet.test(reading.text);

/** "260 g out of the calendula" is no calendula that has run out: a weight that came out says so. */
const surest = 3.2;

/** "285 g of oil from 40 g chamomile …". */
const outOf = /^\W*(?:of\s+(?:\w+\s+){1,3})?(?:from|out of)\b/i;

/** "The yield of … was 262 g", "strained my plantain oil: 210 g". */
const isThat = /\b(?:yield|result|strained|pressed|filtered)\b[^.;]{0,50}(?:\bwas|\bis|\bcame to|:)\s*$/i;

/** "50 g rosemary, 400 g olive oil, got 330 g". */
const gotThis = /\b(?:got|gave|yielded|out came)\s*$/i;

const gotItem = (reading: Reading, amounts: readonly Item[]): Item | undefined =>
  amounts.find(({ from }) => gotThis.test(reading.text.slice(Math.max(0, from - 16), from))) ??
  amounts.find(({ to }) => outOf.test(reading.text.slice(to, to + 30))) ??
  amounts.find(({ from }) => isThat.test(reading.text.slice(Math.max(0, from - 60), from))) ??
  amounts.find((item) => comesOut(reading, item)) ??
  (amounts.length === 1 ? amounts[0] : undefined);

/** What went in: said with the yield, or in the request before if that was about the same herb. */
const baseOf = (own: Fields, before: Fields | undefined, herb: string | undefined): Fields => {
  const other = herb !== undefined && before?.herb !== undefined && before.herb !== herb;
  return Object.keys(own).length > 0 || other || !before ? own : before;
};

const isTold = (fields: Fields): boolean =>
  ['batch', 'herbG', 'oilIn', 'oilOut'].some((key) => key in fields);

/** What came out is told apart, so any other amount of oil is what went in. */
const asIn = (read: Amounts): Amounts => {
  const { oilOut, ...fields } = read.fields;
  return oilOut === undefined || fields.oilIn !== undefined
    ? read
    : { fields: { ...fields, oilIn: oilOut }, assumed: [] };
};

/** "from 40 g in 320 g": of two bare amounts the smaller one is the herb. */
const bareAmounts = (reading: Reading, others: readonly Item[]): Amounts => {
  const read = asIn(amountsOf(reading, others));
  const [a, b, ...more] = others
    .filter(isAmountItem)
    .map((item) => sizeOf(item, reading.settings.region))
    .toSorted((x, y) => (x?.amount ?? 0) - (y?.amount ?? 0));
  const told = !read.trouble && read.fields.herbG !== undefined;
  if (told || !a || !b || more.length > 0 || a.unit !== 'g') return read;
  return { fields: { herbG: a.amount, oilIn: b }, assumed: [`I took ${a.amount} g as the herb.`] };
};

const settle = (reading: Reading, got: Item, size: Size, before: Fields | undefined): Claim | undefined => {
  const names = namesOf(reading.items);
  if (names.trouble === oneHerb) return refuse(oneHerbYield, surest);
  if (!before && !names.herb) return undefined;
  const others = reading.items.filter((item) => item !== got);
  const rest = bareAmounts(reading, others);
  const herb = idOfHerb(names.herb);
  const oil = idOfOil(names.oil);
  const trouble = names.trouble ?? herb.trouble ?? oil.trouble ?? rest.trouble;
  if (trouble) return refuse(trouble, surest);
  const base = baseOf(rest.fields, before, herb.id);
  const fields: Fields = { ...base, ...defined({ herb: herb.id, oil: oil.id }), got: size };
  if (fields.herb === undefined) return refuse(noHerbKnown, surest);
  return isTold(base) ? claim(fields, surest, rest.assumed) : refuse(yieldOf, surest);
};

/** "I got 260 g out of the calendula": the strained oil was weighed. */
export const claimYield = (reading: Reading): Claim | undefined => {
  const board = boardOf(reading.items);
  const amounts = reading.items.filter(isAmountItem);
  const got = gotItem(reading, amounts);
  const size = got && sizeOf(got, reading.settings.region);
  if (!got || !size) return undefined;
  for (const item of reading.items) if (isAmountItem(item) || item.letter === 'i') takeItem(board, item);
  if (leftover(board, infuseWords, true).blocking.length > 0) return undefined;
  return settle(reading, got, size, lastInfuse(reading));
};

const yields = /\byields?\b/i;
const forgetting = /\b(?:forget|delete|remove|clear|drop|reset)\b/i;
const listing = /\b(?:my|our|own|show|list|all|what)\b/i;

/** "Our yields", "forget our yield of calendula". */
export const claimOwnYields = (reading: Reading): Claim | undefined => {
  if (!yields.test(reading.text) || reading.items.some((item) => /[gvnr%R]/.test(item.letter)))
    return undefined;
  const herb = idOfHerb(namesOf(reading.items).herb);
  if (forgetting.test(reading.text))
    return herb.trouble
      ? refuse(herb.trouble, surest)
      : claim({ yields: 'forget', ...defined({ herb: herb.id }) }, surest);
  const named = reading.items.some((item) => item.letter === 'i');
  return listing.test(reading.text) && !named ? claim({ yields: 'list' }, 2.9) : undefined;
};
