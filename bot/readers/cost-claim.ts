import { defined } from '../../core/defined.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readCostBatch } from './cost-batch.ts';
import { claimLabour, hasWork, takeHours, takeWork } from './cost-labour.ts';
import { withParts } from './cost-parts.ts';
import { claimMissing, claimPast, isPlain, oneThing } from './cost-past.ts';
import { readPrices } from './cost-prices.ts';
import { asksMargin, claimSelling, sellingIn } from './cost-selling.ts';
import { readCostSwap } from './cost-swap.ts';
import { readWhen } from './cost-when.ts';
import { costCues, lastCost, payCues, sellCues, whichDay } from './cost-words.ts';

/** Purchases with a lot, a date or a shop belong to the stock; a price here is only a price. */
const elsewhere = /\b(?:lots?|bought|best before|bbe|expir\w+|stock|batch (?:list|note)|workshop|claim)\b/i;
/** "prices", "price list", "show our prices". */
const listing =
  /^\W*(?:(?:please|pls|hi|hello|hey|pipkin|show|list|see|what|what's|whats|are|is|our|the|my|all|me|us|current|can|could|you|i|we|get|give|do|have|noted|saved|price)\b[\s,'!]*)*(?:prices|price list|pricelist)\W*(?:please|pls|thanks|do we have|have we|noted|so far|we have|list|thank you|\W)*$/i;

const removing = /\b(?:delete|remove|drop|clear|forget)\b.*\bprices?\b|\bno (?:more )?price\b/i;

const claimList = (reading: Reading): Claim | undefined => {
  if (listing.test(reading.corrected)) return claim({ action: 'prices' }, 2.8);
  const amount = reading.items.some((item) => /[ngvdt%pR]/.test(item.letter));
  if (amount || !anyWord(reading, [...costCues, ...payCues]) || !isPlain(reading)) return undefined;
  const { thing, trouble } = oneThing(reading);
  if (trouble) return refuse(trouble, 2.5);
  if (thing === undefined) return undefined;
  return claim({ action: removing.test(reading.text) ? 'remove' : 'prices', thing }, 2.6);
};

/** A name with a pack and a number with pence, and nothing else: "beeswax 500 g 14.50". */
const looksPriced = (reading: Reading): boolean => {
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
  // "Vitamin E 50 g for 9": a pack, and what was paid for it.
  if (/\d\s?(?:g|kg|ml|l|oz|lb)\s+for\s+\d+(?:[.,]\d+)?\s*$/i.test(reading.text)) return true;
  const money =
    /\d[.,]\d{2}(?!\d)/.test(reading.text) ||
    /\b(?:each|apiece|cents?|pence|eur|euros?|gbp|usd)\b|\d\s?(?:p|c|ct)\b/i.test(reading.text);
  return money && reading.items.some((item) => /[ic]/.test(item.letter));
};

const asksCost = (reading: Reading): boolean =>
  /\bhow (?:much|expensive|dear|cheap)\b|\bwhat\b|\bcost of\b|\bcosting\b|\bprice of\s+\d|\?/i.test(
    reading.text,
  ) || reading.items.some((item) => item.letter === 'R');

const claimPrices = (reading: Reading): Claim | undefined => {
  if (!looksPriced(reading) || asksCost(reading)) return undefined;
  const dated = readWhen(reading);
  const read = readPrices(
    dated ? { ...reading, items: reading.items.filter((item) => !dated.items.includes(item)) } : reading,
  );
  if (!read) return undefined;
  const { trouble } = read;
  if (trouble) return refuse(trouble, read.prices.length > 0 || anyWord(reading, costCues) ? 2.7 : 1.6);
  // "New price: shea 19/kg" is no recipe to be saved.
  const weight = anyWord(reading, costCues) ? 3.1 : 2.7;
  const day = dated?.when.day;
  if (dated && day === undefined) return refuse(whichDay, 2.7);
  const prices = read.prices.map((price) => ({ ...price, ...defined({ on: day }) }));
  return claim({ action: 'price', prices }, weight, read.assumed);
};

const hoursOf = (reading: Reading, said: number | undefined): unknown => said ?? lastCost(reading)?.hours;

const claimCost = (reading: Reading, weight: number): Claim | undefined => {
  const { hours, items } = takeHours(reading.items);
  const exchange = readCostSwap(reading.items.filter((item) => !items.includes(item)));
  const used = [...items, ...exchange.items];
  const asked = readCostBatch(
    reading,
    reading.items.filter((item) => !used.includes(item)),
  );
  if (asked.blocking.length > 0) return undefined;
  const { batch, container, one } = asked;
  const perOne = reading.items.some((item) => item.letter === 'e');
  const says = asked.own || perOne || hours !== undefined || exchange.items.length > 0;
  if (weight < 2.5 && !says) return undefined;
  const fields = {
    action: 'cost',
    ...defined({ batch, container, one, hours: hoursOf(reading, hours), swap: exchange.swap }),
  };
  const sure = exchange.swap ? 3.1 : weight;
  const trouble = exchange.trouble ?? asked.trouble;
  if (trouble) return refuse(trouble, Math.min(sure, 2.6), batch ? fields : undefined);
  return claim(fields, sure, asked.assumed);
};

/** "Cost of R for 24 tins, labour 15 an hour, 2 hours": the rate is kept and counted for that batch. */
const claimWithWork = (reading: Reading): Claim | undefined => {
  const work = takeWork(reading);
  if (!work) return undefined;
  const asked = readCostBatch(
    reading,
    reading.items.filter((item) => !work.items.includes(item)),
  );
  if (asked.blocking.length > 0 || asked.trouble || !asked.batch) return undefined;
  const { batch, container } = asked;
  const { rate, hours } = work;
  return claim({ action: 'labour', batch, ...defined({ rate, hours, container }) }, 3.1, asked.assumed);
};

const claimMargin = (reading: Reading): Claim | undefined => {
  if (!anyWord(reading, sellCues)) return undefined;
  const selling = sellingIn(reading);
  return asksMargin(reading, selling) ? claimSelling(reading, selling) : undefined;
};

const anyRecipe = (reading: Reading): boolean => reading.items.some((item) => item.letter === 'R');
const namesThings = (reading: Reading): boolean => reading.items.some((item) => /[Ri]/.test(item.letter));

/** "How much are 24 tins of R", "what do the ingredients come to": asks for money without a word for it. */
const asksMoney =
  /^\W*(?:(?:so|and|hi|hello|ok|please)\W+)*how much (?:is|are|would|will) (?:an?|one|each|the|\d+|it|that|two|three|four|five|six|ten|twelve|twenty)\b(?!.{0,40}\b(?:in it|goes|needed|left|stock|wax|butter|oil)\b)|\b(?:ingredients?|materials?|it|that|they|batch|tins?)\b.{0,60}\bcomes? to\b/i;

/** Words that join a message to the cost before: "and …", "same for …". */
const joining = /\b(?:and|same|also|about|instead|now)\b/i;

/** A batch that is costed: asked by a word, or a change to the one before. */
const claimBatch = (reading: Reading): Claim | undefined => {
  if (asksMoney.test(reading.text) && (anyRecipe(reading) || reading.last)) return claimCost(reading, 3.1);
  if (anyWord(reading, costCues)) return claimCost(reading, 2.8);
  if (!lastCost(reading)?.batch) return undefined;
  return claimCost(reading, namesThings(reading) && joining.test(reading.text) ? 2.45 : 1.95);
};

/** What a message would mean about money: a price, the price list, labour, the cost of a batch, a margin. */
export const claimMoney = (heard: Reading): Claim | undefined => {
  if (elsewhere.test(heard.text)) return undefined;
  const reading = withParts(heard);
  if (!reading) return undefined;
  if (hasWork(reading) && !namesThings(reading)) return claimLabour(reading);
  return (
    claimMargin(reading) ??
    claimWithWork(reading) ??
    claimPast(reading) ??
    claimMissing(reading) ??
    claimList(reading) ??
    claimPrices(reading) ??
    claimBatch(reading)
  );
};
