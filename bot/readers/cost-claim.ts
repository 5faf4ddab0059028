import { defined } from '../../core/defined.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readAgain, readingWithout } from '../understand.ts';
import { isBackground } from './background-words.ts';
import { isBeside } from './beside.ts';
import { isCalledOff } from './called-off.ts';
import { readCostBatch } from './cost-batch.ts';
import { claimLabour, hasWork, takeHours, takeWork, tellsOfTime } from './cost-labour.ts';
import { asksCost, claimPrices, looksPriced } from './cost-note.ts';
import { withParts } from './cost-parts.ts';
import { claimMissing, claimPast, isPlain, oneThing } from './cost-past.ts';
import { asksMargin, claimSelling, sellingIn } from './cost-selling.ts';
import { claimSupposed } from './cost-suppose.ts';
import { readCostSwap } from './cost-swap.ts';
import { batchCostWords, costCues, lastCost, listWords, payCues, sellCues } from './cost-words.ts';
import { claimUnits } from './in-ounces.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { boardOf } from './target.ts';
import { wordSet } from './word-list.ts';

/** Purchases with a lot, a date or a shop belong to the stock; a price here is only a price. */
const elsewhere = /\b(?:lots?|bought|best before|bbe|expir\w+|stock|batch (?:list|note)|workshop|claim)\b/i;
/** "prices", "price list", "what have we got for prices so far". */
const listing = /\bprices\b|\bprice ?list\b|\bwhat (?:does )?everything costs?\b/i;
const otherListing =
  /\b(?:history|earlier|former|old|past|previous|missing|lack\w*|without|better|cheap\w*|sell\w*|margin)\b/i;

const removing = /\b(?:delete|remove|drop|clear|forget)\b.*\bprices?\b|\bno (?:more )?price\b/i;

const asksList = ({ corrected, items }: Reading): boolean =>
  listing.test(corrected) &&
  !otherListing.test(corrected) &&
  !removing.test(corrected) &&
  items.every((item) => /[wzyZQAFTIWob,.:!?()"\n-]/.test(item.letter)) &&
  leftover(boardOf(items), listWords, false).blocking.length === 0;

/** "A kilo of shea butter", "one tin": what a price is asked for, no amount to make. */
const isOneOf = ({ letter, word, value }: Item): boolean =>
  /[ngv]/.test(letter) && /^(?:an?|one)$/.test(word) && (value ?? 1) === 1;

/** "How much is a kilo of shea", "how much does beeswax cost". */
const asksPrice = /\bhow (?:much|dear|expensive) (?:is|are|for)\b/i;

/** After a batch "one tin" is one of those that were reckoned. */
const hasBatch = ({ last }: Reading): boolean =>
  /^(?:scale|cost|workshop|infuse)$/.test(last?.topic ?? '') &&
  (last?.topic !== 'cost' || last.request.batch !== undefined);

/** "How much is a tablespoon of shea butter in grams" asks for no money. */
const intoUnit = /\bin (?:g|grams?|kg|kilos?|ml|millilit\w+|oz|ounces?|drops?)\b/i;

const claimList = (heard: Reading): Claim | undefined => {
  if (asksList(heard)) return claim({ action: 'prices' }, 2.8);
  const reading = { ...heard, items: heard.items.filter((item) => !isOneOf(item)) };
  const amount = reading.items.some((item) => /[ngvdt%pR]/.test(item.letter)) || intoUnit.test(heard.text);
  const asks = anyWord(reading, [...costCues, ...payCues]) || asksPrice.test(reading.text);
  if (amount || !asks || !isPlain(reading)) return undefined;
  const { thing, trouble } = oneThing(reading);
  if (trouble) return refuse(trouble, 2.5);
  const isContainer = heard.items.some((item) => item.letter === 'c');
  if (thing === undefined || (isContainer && hasBatch(heard))) return undefined;
  return claim({ action: removing.test(reading.text) ? 'remove' : 'prices', thing }, isContainer ? 2.8 : 2.6);
};

const hoursOf = (reading: Reading, said: number | undefined): unknown => said ?? lastCost(reading)?.hours;

const claimCost = (reading: Reading, weight: number): Claim | undefined => {
  const { hours, items } = takeHours(reading, reading.items);
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

/** "Is 4.50 a fair price for a 15 ml tin of R": what does it leave? */
const fairPrice =
  /\bis\s+[€£$]?\s?\d+(?:[.,]\d+)?[^,;?]{0,14}\b(?:(?:fair|good|right|reasonable|decent)\s+price|enough|too (?:much|little|low|high|cheap))\b/i;

/** "And at 7.50?", where a price was tried before. */
const anotherPrice =
  /^\W*(?:(?:and|or|what about|how about|what if|so|ok|then)\s+){0,2}(?:at|for)\s+[€£$]?\s?\d+(?:[.,]\d{1,2})?\s?(?:€|euros?|eur|each|an? (?:tin|jar|pot|stick|tube)|apiece|instead|then)*\W*$/i;

const claimMargin = (reading: Reading): Claim | undefined => {
  const tried = lastCost(reading)?.sellAt !== undefined && anotherPrice.test(reading.text);
  if (tried) return claimSelling(reading, sellingIn(reading));
  if (!anyWord(reading, sellCues) && !fairPrice.test(reading.text)) return undefined;
  const selling = sellingIn(reading);
  return asksMargin(reading, selling) ? claimSelling(reading, selling) : undefined;
};

const anyRecipe = (reading: Reading): boolean => reading.items.some((item) => item.letter === 'R');
const namesThings = (reading: Reading): boolean => reading.items.some((item) => /[Ri]/.test(item.letter));

/** "How much are 24 tins of R", "what do the ingredients come to": asks for money without a word for it. */
const asksMoney =
  /\bset (?:me|us|you) back\b|\bout of pocket\b|\b(?:run|cost|set) (?:me|us)\b|\bthe damage\b|\b(?:do|will|would|should|must) (?:i|we) (?:pay|spend|fork out)\b|^\W*(?:(?:so|and|hi|hello|ok|please)\W+)*how much (?:is|are|would|will) (?:an?|one|each|the|\d+|it|that|two|three|four|five|six|ten|twelve|twenty)\b(?!.{0,40}\b(?:in it|goes|needed|left|stock|wax|butter|oil)\b)|\b(?:ingredients?|materials?|it|that|they|batch|tins?)\b.{0,60}\bcomes? to\b/i;

/** Words that join a message to the cost before: "and …", "same for …". */
const joining = /\b(?:and|same|also|about|instead|now)\b/i;

/** "At a price of 12", "does 12 euros cover it": a sum is no number of tins. */
const sum =
  /[€£$]\s?\d|\d\s?(?:[€£$]|(?:euros?|eur|quid|gbp|dollars?|apiece)\b)|\bprice (?:of|at|tag)\b|\bworking hours\b/i;
const namesSum = ({ text, items, last }: Reading): boolean =>
  last?.topic === 'cost' && sum.test(text) && !items.some(({ letter }) => /[Ric]/.test(letter));

const asking = wordSet('what how which when then if make made do fill need produce pour');
/** "Is the hand balm kosher" after a cost is another question. */
const asksSomethingElse = ({ items, text }: Reading): boolean =>
  /^\W*(?:is|are|does|do|did|what|why|who|where)\b/i.test(text) &&
  items.some(({ letter, word }) => letter === 'w' && !isBackground(word) && !asking.has(word));

const isOfCost = ({ word }: Item): boolean => batchCostWords.has(word);

/** A batch that is costed: asked by a word, or a change to the one before. */
const claimBatch = (reading: Reading): Claim | undefined => {
  if (namesSum(reading)) return undefined;
  if (asksMoney.test(reading.text) && (anyRecipe(reading) || reading.last)) return claimCost(reading, 3.1);
  if (anyWord(reading, costCues)) return claimCost(reading, 2.8);
  if (!lastCost(reading)?.batch || asksSomethingElse(reading)) return undefined;
  if (!reading.items.some(({ letter }) => /[Rci%gvL]/.test(letter)) && isBeside(reading, isOfCost))
    return undefined;
  return claimCost(reading, namesThings(reading) && joining.test(reading.text) ? 2.45 : 1.95);
};

/** Where one request may end and the next begin: "…, tins 0.35. What do 24 tins cost?" */
const seam = /[.;:!?\n]\s+(?=\S)|,?\s+(?:so\s+)?(?=(?:what|how much|how expensive)\b)/gi;
const mostSeams = 4;

const pricesThenCost = (reading: Reading, at: number): Claim | undefined => {
  const left = claimPrices(readingWithout(reading, [{ from: at, to: reading.text.length }]));
  if (left?.kind !== 'request') return undefined;
  const after = readingWithout(reading, [{ from: 0, to: at }]);
  const asked = claimOne(after);
  const right = asked?.kind === 'request' ? asked : claimCost(after, 2.8);
  if (right?.kind !== 'request' || right.request.action !== 'cost') return undefined;
  const { prices } = left.request;
  return claim({ ...right.request, action: 'price', prices }, 3.15, [...left.assumed, ...right.assumed]);
};

/** Prices and then what a batch costs with them, in one message. */
const claimBoth = (reading: Reading): Claim | undefined => {
  if (!looksPriced(reading) || !asksCost(reading)) return undefined;
  const figures = reading.items.filter((item) => item.letter === 'n').length;
  if (figures < 2 || !namesThings(reading)) return undefined;
  for (const { index, 0: said } of [...reading.text.matchAll(seam)].slice(-mostSeams).reverse()) {
    const both = pricesThenCost(reading, index + said.trimEnd().length);
    if (both) return both;
  }
  return undefined;
};

/** "What does 1 kg of this cost?" over a list: so much of what follows. */
const ofThis =
  /^[^\n]{0,60}?\b((?:\d[\d.,]{0,6}|an?|half an?|one|two|three|five|ten)\s?(?:kg|kilos?|grams?|g|litres?|liters?|l|ml|lbs?|pounds?|oz))\s+of\s+(?:this|that|it|these)\b[^\n?]{0,60}\?\s*\n([\s\S]+)$/i;
const wholeOfThis = (reading: Reading): Reading => {
  const [, amount, list] = /\bcosts?\b|\bprice\b/i.test(reading.text)
    ? (ofThis.exec(reading.text) ?? [])
    : [];
  return amount && list ? readAgain(`cost of ${list.trim()}\nfor ${amount}`, reading) : reading;
};

/** What a parcel costs is not known here. */
const byPost = /\b(?:costs?|price|much)\b.{0,20}\bto (?:send|post|ship|mail|deliver)\b|\bpostage\b/i;

/** What a message would mean about money: a price, the price list, labour, the cost of a batch, a margin. */
export const claimMoney = (said: Reading): Claim | undefined => {
  const heard = wholeOfThis(said);
  if (isCalledOff(heard.text) || byPost.test(heard.text) || tellsOfTime(heard)) return undefined;
  if (lastCost(heard)?.batch === undefined && ofThem.test(heard.text) && !priced.test(heard.text))
    return undefined;
  const units = lastCost(heard)?.batch === undefined ? undefined : claimUnits(heard, 'cost');
  if (units) return units;
  const supposed = elsewhere.test(heard.text) ? undefined : claimSupposed(heard, claimOne);
  if (supposed) return supposed;
  // "Shea is 19 a kilo now. What do 24 tins cost?": no price is lost in what follows it.
  const both = elsewhere.test(heard.text) ? undefined : claimBoth(heard);
  return both ?? claimOne(heard);
};

/** "I need labels, 24 of them": how many, and no price. */
export const ofThem = /\b\d{1,5} of (?:them|these|those)\b/i;
const priced =
  /[€£$]|\d[.,]\d\d\b|\b(?:each|per|a piece|apiece|cost|costs|price|prices|paid|euros?|pounds?|dollars?)\b/i;

const claimOne = (heard: Reading): Claim | undefined => {
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
