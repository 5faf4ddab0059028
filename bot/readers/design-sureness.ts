import { anyWord, type Reading } from '../reading.ts';
import type { DesignRequest, WishesRead } from './design-wishes.ts';
import { bodyWords, inventingWords, suggestingWords, wantingWords } from './design-words.ts';

const comesUpWith = (reading: Reading): boolean =>
  /\b(?:come|coming|came|dream|think|make|made)(?: me| us| her| him| them)? up\b|\bthink of an?\b/.test(
    reading.text.toLowerCase(),
  );

/** Kinds of wishes besides the form. A wish that was not understood is one too. */
const kindsOf = ({ wishes, trouble }: WishesRead): number =>
  Object.keys(wishes).filter((key) => key !== 'form' && key !== 'priceLimit').length + (trouble ? 1 : 0);

/** A word that asks for something to be made up; "recommend" and the like need to say that it is a balm. */
const asksForDesign = (reading: Reading, read: WishesRead, kinds: number): boolean => {
  const makes = anyWord(reading, inventingWords) || comesUpWith(reading);
  if (!makes && !anyWord(reading, suggestingWords)) return false;
  const body = anyWord(reading, bodyWords);
  return kinds > 0 || body || (makes && read.wishes.form !== undefined);
};

/** Wishes with which a bare list of them is surely a design. */
const sureWishes = 4;
const sureBody = 3;

/** A wish that only a new recipe can be asked for. */
const isHard = ({ vegan, without, survivesC, shelfLifeMonths }: DesignRequest): boolean =>
  vegan === true || without !== undefined || survivesC !== undefined || shelfLifeMonths !== undefined;

/** How surely a bare list of wishes is one: each more makes it surer, nobody lists four for anything else. */
const listed = (wishes: DesignRequest, kinds: number, body: boolean): number => {
  const told = kinds + (wishes.form ? 1 : 0);
  if (!isHard(wishes) || told < (body ? 2 : sureWishes)) return 0;
  return told >= (body ? sureBody : sureWishes) ? 2.75 : 2.4;
};

/** "Stick with castor oil", "hard tin balm without nuts, with olive oil": what it is, and what goes in or stays out. */
const isNamedWith =
  /^\W*(?:(?:an?|one|some|my|hard|firm|soft|softer|simple|plain|new|nice|good|vegan|unscented|lip|hand|body|nut-free|palm-free)\s+){0,4}(?:(?:stick|tin balm|tube balm|squeeze tube balm|balm stick|balm|salve)s?|(?:balm|salve) (?:in|for) (?:an? )?(?:tin|tube|pot|jar)s?)(?:,| for (?:an?|the|my|our) \w{2,20},?)?\s+(?:made |that has |that is made )?(?:with|without|from|out of|containing|has|having)\b/i;
const asksMore =
  /\b(?:ok|okay|allowed|safe|legal|cost|price|label|melts?|survives?|recipe|instead|what|how|is|are|does|do|can|will|should)\b/i;

/** "Lip balm with 2 % peppermint" may ask whether that is allowed. */
const leastShare = 5;

const isNamed = ({ text, items }: Reading, { wishes }: WishesRead): boolean =>
  (wishes.with ?? wishes.without) !== undefined &&
  isNamedWith.test(text) &&
  !asksMore.test(text) &&
  !items.some(({ letter }) => /[gvdRt]/.test(letter)) &&
  !(wishes.with ?? []).some(({ percent }) => percent !== undefined && percent < leastShare);

/** How surely it asks for a design: a word for it, a wanted product with a wish, or a product with two wishes. */
export const sureness = (reading: Reading, read: WishesRead): number => {
  const { wishes } = read;
  const kinds = kindsOf(read);
  if (asksForDesign(reading, read, kinds)) return 2.8;
  // "Something vegan and firm for hot weather": whatever it is, it is to have these properties.
  const something = kinds > 1 && isHard(wishes) && reading.words.has('something');
  const body = something || anyWord(reading, bodyWords);
  if (kinds === 0 || (!body && wishes.form === undefined)) return 0;
  if (isNamed(reading, read)) return 2.85;
  if (anyWord(reading, wantingWords) || /\b(?:you|we|i) do (?:a|an|me|us)\b/i.test(reading.text)) return 2.7;
  return wishes.priceLimit ? 2.85 : listed(wishes, kinds, body);
};
