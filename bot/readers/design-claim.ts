import { defined } from '../../core/defined.ts';
import type { Form, WantedIngredient } from '../../core/design/wishes.ts';
import type { Trouble } from '../answer.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { formOfWord, takeForm, takeHottest, takeShelfLife } from './design-figures.ts';
import { type PriceLimit, takePrice } from './design-price.ts';
import { takeWith } from './design-with.ts';
import { takeWithout } from './design-without.ts';
import {
  bodyWords,
  designWords,
  followWords,
  groupOf,
  inventingWords,
  otherRequests,
  suggestingWords,
  veganWords,
  wantingWords,
} from './design-words.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { pointedNames } from './pointed-name.ts';
import { namesOwnBalm } from './second-look.ts';
import { asksForShelf, takeStocked } from './substitute-choice.ts';
import { type Board, boardOf } from './target.ts';

export const designExample = 'vegan stick that survives 38 C, no nuts, with shea and mango';

/** The wishes as a request carries them; what was not said is missing. */
export interface DesignRequest {
  readonly form?: Form;
  readonly survivesC?: number;
  readonly vegan?: boolean;
  readonly without?: readonly string[];
  readonly with?: readonly WantedIngredient[];
  readonly shelfLifeMonths?: number;
  readonly price?: boolean;
  readonly priceLimit?: PriceLimit;
  readonly stocked?: boolean;
  /** Place, from 0, of the proposal that is to be told in full. */
  readonly show?: number;
}

interface WishesRead {
  readonly wishes: DesignRequest;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

const unlessEmpty = <T>(list: readonly T[]): readonly T[] | undefined => (list.length > 0 ? list : undefined);

/** "It needn't be vegan": a wish taken back. */
const notVegan =
  /\b(?:needn't|not|n't|no need (?:for it )?to|non)[ -](?:(?:have|need|necessarily|be|to|it|strictly) ){0,4}vegan\b/i;

const readWishes = (board: Board, reading: Reading, veganBefore: boolean): WishesRead => {
  const { price, limit, assumed: tinAssumed } = takePrice(board, reading);
  const { stocked } = takeStocked(board, reading);
  const hottest = takeHottest(board, reading);
  const shelfLifeMonths = takeShelfLife(board);
  const form = takeForm(board, reading) ?? (limit?.container ? formOfWord(limit.container) : undefined);
  const out = takeWithout(board);
  const animal = out.without.includes('animal');
  const vegan = (anyWord(reading, veganWords) && !notVegan.test(reading.corrected)) || animal;
  const wanted = takeWith(board, vegan || veganBefore);
  const trouble = out.trouble ?? wanted.trouble;
  return {
    wishes: defined({
      form,
      survivesC: hottest.value,
      vegan: vegan || undefined,
      without: unlessEmpty(out.without.filter((word) => word !== 'animal')),
      with: unlessEmpty(wanted.with),
      shelfLifeMonths,
      price,
      priceLimit: limit,
      stocked,
    }),
    assumed: [hottest.assumed, tinAssumed, ...wanted.assumed].filter((text) => text !== undefined),
    ...(trouble ? { trouble } : {}),
  };
};

const comesUpWith = (reading: Reading): boolean =>
  /\b(?:come|coming|came|dream|think|make) up\b|\bthink of an?\b/.test(reading.text.toLowerCase());

/** Words of other requests that are none here: "only from stock"; "swap the shea out" of a design. */
const fineHere = (reading: Reading): readonly string[] => [
  ...(asksForShelf(reading) ? ['stock'] : []),
  ...(reading.last?.topic === 'design' && /\bswap(?:ped)?\b.{1,30}\bout\b/i.test(reading.text)
    ? ['swap', 'swapped']
    : []),
];

const isOtherRequest = (reading: Reading): boolean => {
  const fine = fineHere(reading);
  return (
    anyWord(
      reading,
      otherRequests.filter((word) => !fine.includes(word)),
    ) || pointedNames(reading).reading.items.some(({ letter }) => /[RrM]/.test(letter))
  );
};

/** Lines with grams, or shares that already make a whole, are a recipe and no wish. */
const isWrittenOut = (items: readonly Item[]): boolean => {
  const percent = items.reduce((sum, item) => sum + (item.letter === '%' ? (item.value ?? 0) : 0), 0);
  const names = items.filter((item) => item.letter === 'i').length;
  return items.some((item) => /[gvd]/.test(item.letter)) || (percent >= 99 && names > 1);
};

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

/** How surely it asks for a design: a word for it, a wanted product with a wish, or a product with two wishes. */
const sureness = (reading: Reading, read: WishesRead): number => {
  const { wishes } = read;
  const kinds = kindsOf(read);
  if (asksForDesign(reading, read, kinds)) return 2.8;
  // "Something vegan and firm for hot weather": whatever it is, it is to have these properties.
  const something = kinds > 1 && isHard(wishes) && reading.words.has('something');
  const body = something || anyWord(reading, bodyWords);
  if (kinds === 0 || (!body && wishes.form === undefined)) return 0;
  if (anyWord(reading, wantingWords) || /\b(?:you|we|i) do (?:a|an|me|us)\b/i.test(reading.text)) return 2.7;
  return wishes.priceLimit ? 2.85 : listed(wishes, kinds, body);
};

const before = (reading: Reading): DesignRequest | undefined =>
  reading.last?.topic === 'design' ? (reading.last.request as DesignRequest) : undefined;

const order: readonly Form[] = ['tube', 'tin', 'stick'];

const firmer = /\b(?:firmer|harder|stiffer|more wax|less oil)\b/i;
const softer =
  /\b(?:softer|creamier|less wax|more oil|less (?:hard|firm|stiff)|(?:too|so) (?:hard|firm|stiff))\b/i;

/** "make it softer" is the next softer form: what a balm is for decides how firm it is. */
const shifted = ({ corrected }: Reading, form: Form): Form => {
  const up = firmer.test(corrected) ? 1 : 0;
  const down = softer.test(corrected) ? 1 : 0;
  const at = order.indexOf(form) + up - down;
  return order[Math.min(order.length - 1, Math.max(0, at))] ?? form;
};

const joined = (old: DesignRequest, more: DesignRequest): DesignRequest => {
  const named = new Set(more.with?.map(({ ingredient }) => ingredient));
  const without = [...new Set([...(old.without ?? []), ...(more.without ?? [])])];
  const kept = (old.with ?? []).filter(
    ({ ingredient }) => !named.has(ingredient) && !more.without?.includes(ingredient),
  );
  const wanted = [...kept, ...(more.with ?? [])];
  return defined({
    ...old,
    ...more,
    without: unlessEmpty(without.filter((word) => !named.has(word))),
    with: unlessEmpty(wanted),
  });
};

const continued = (reading: Reading, old: DesignRequest, read: WishesRead): Claim | undefined => {
  const { show: _show, ...before } = old;
  const wished = notVegan.test(reading.corrected) ? defined({ ...before, vegan: undefined }) : before;
  const shape = shifted(reading, old.form ?? 'stick');
  const form = read.wishes.form ?? (shape === (old.form ?? 'stick') ? old.form : shape);
  const wishes = { ...joined(wished, read.wishes), ...defined({ form }) };
  const changed = wished !== before || Object.keys(read.wishes).length > 0 || form !== old.form;
  return changed ? claim(wishes, 2.75, read.assumed) : undefined;
};

const nothingWished: Trouble = {
  code: 'missing',
  text: `What should it be like? Say at least one wish: stick, tin or soft, the hottest day, vegan, what to leave out or put in. For example "${designExample}".`,
};

const defaultForm = (reading: Reading, wishes: DesignRequest): { form: Form; assumed: readonly string[] } => {
  if (wishes.form) return { form: wishes.form, assumed: [] };
  const stick = reading.words.has('lip') || reading.words.has('lips') || wishes.survivesC !== undefined;
  return stick
    ? { form: 'stick', assumed: ['I took it as a stick; say "in a tin" for a softer one.'] }
    : { form: 'tin', assumed: ['I took it as a balm for a tin; say "a stick" for a firmer one.'] };
};

const isPlaced = (
  board: Board,
  words: ReadonlySet<string>,
  tolerant = true,
): { blocked: boolean; aside: readonly string[] } => {
  const { blocking, aside } = leftover(board, words, tolerant);
  const hard = blocking.filter((item) => groupOf(item.word) === undefined);
  return { blocked: hard.length > 0, aside };
};

const fresh = (reading: Reading, board: Board, read: WishesRead): Claim | undefined => {
  const weight = sureness(reading, read);
  if (weight === 0) return undefined;
  if (read.trouble) return refuse(read.trouble, weight);
  // "Design us a poster for the summer fair": with no balm and no ingredient in it, every word counts.
  const ours = anyWord(reading, bodyWords) || (read.wishes.form ?? read.wishes.with) !== undefined;
  const { blocked, aside } = isPlaced(board, designWords, ours);
  if (blocked) return undefined;
  if (Object.keys(read.wishes).length === 0)
    return refuse(nothingWished, 1.4, read.wishes as Readonly<Record<string, unknown>>);
  const { form, assumed } = defaultForm(reading, read.wishes);
  const said = aside.length > 0 ? [`I set aside "${aside.join('", "')}".`] : [];
  return claim({ ...read.wishes, form }, weight, [...assumed, ...read.assumed, ...said]);
};

/** Words around "the second one" that ask for no more than to see it. */
const showing = new Set(
  `show see tell give details detail more about full whole open like take prefer want pick choose go with that sounds good look at number
  what whats is how forecast explain please up looks look nice lovely best better promising interesting third second first`.split(
    /\s+/,
  ),
);

const proposals = 3;

/** "Something else?", "another one": the next proposal in full. */
const claimNext = (reading: Reading, old: DesignRequest): Claim | undefined => {
  if (
    !/\b(?:something|anything|what|any) (?:else|different|other)\b|\banother(?: one)?\b|\bothers?\b|\bnext\b/i.test(
      reading.text,
    )
  )
    return undefined;
  const words = new Set([
    ...showing,
    ...'something anything what any else different other others another next'.split(' '),
  ]);
  if (leftover(boardOf(reading.items), words, false).blocking.length > 0) return undefined;
  return reading.items.some(({ letter }) => /[inRct%gv]/.test(letter))
    ? undefined
    : claim({ ...old, show: ((old.show ?? 0) + 1) % proposals }, 2.75);
};

/** "The second one", "more about number 3": a proposal told in full. */
const claimShown = (reading: Reading, old: DesignRequest): Claim | undefined => {
  const { picked } = reading.last ?? {};
  if (picked === undefined) return undefined;
  const { blocking } = leftover(boardOf(reading.items), showing, false);
  return blocking.length > 0 ? undefined : claim({ ...old, show: picked }, 2.9);
};

/** "Would that survive 40 C?" asks what the proposal does; "make it survive 40 C" wishes for another. */
const asksForecast = (reading: Reading): boolean =>
  reading.last?.topic === 'design' &&
  (/\b(?:heat(?:ing)? plan|water ?bath|chart|graph|pour(?:ing)? (?:temp\w*|at|hot))\b/i.test(reading.text) ||
    /\b(?:would|will|does|do|can|could|how)\b.{0,12}\b(?:that|it|this|they|these)\b.{0,20}\b(?:surviv\w*|melt\w*|hold|stand|soften\w*|cope)\b/i.test(
      reading.text,
    )) &&
  !/\b(?:you|we|i) (?:make|get)\b/i.test(reading.text);

const ceilingWords = 'than spend under below less most max maximum up over within budget cheaper'.split(' ');

/** "What is mango butter?", "is lanolin vegan?": asked about an ingredient, wished for nothing. */
const asksAbout =
  /^\W*(?:what(?:'s| is| are)|whats|tell me about|density of|is|are|does|do) (?!(?:there|you|it|that|this|something|best|a good|your|about|we|i)\b)[\w' -]{1,40}\??\s*$/i;

/** Nothing here to design, seen before anything is read. */
const isElsewhere = (reading: Reading): boolean => {
  const { words } = reading;
  // "what do people use castor oil for" asks about the oil, not for a balm with it.
  if (words.has('what') && words.has('use') && words.has('for')) return true;
  if (asksAbout.test(reading.text)) return true;
  if (isOtherRequest(reading) || asksForecast(reading)) return true;
  // "… a tin of 15 ml" under a price is no line of a recipe; any other amount is.
  return isWrittenOut(reading.items) && !anyWord(reading, ceilingWords);
};

/** What a message would mean as wishes for a new recipe. */
export const claimDesign = (reading: Reading): Claim | undefined => {
  const old = before(reading);
  const shown = old && claimShown(reading, old);
  if (shown || isElsewhere(reading)) return shown;
  const next = old && claimNext(reading, old);
  if (next) return next;
  if (namesOwnBalm(reading)) return undefined;
  const board = boardOf(reading.items);
  const read = readWishes(board, reading, old?.vegan === true);
  if (isWrittenOut(board.items.filter((item, at) => item.letter === 'i' || !board.taken[at])))
    return undefined;
  const anew = fresh(reading, board, read);
  if (anew || !old) return anew;
  if (isPlaced(board, followWords).blocked) return undefined;
  return read.trouble ? refuse(read.trouble, 2) : continued(reading, old, read);
};
