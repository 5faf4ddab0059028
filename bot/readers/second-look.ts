import type { Reading } from '../reading.ts';
import { echo } from './ask-back.ts';
import { isBackground, isMonth } from './background-words.ts';
import { wholeWeekdays } from './day-shapes.ts';
import type { Item } from './item.ts';
import { letters } from './lexicon.ts';
import { isEveryday } from './talk-words.ts';

/** More talk than this is a message about something else. */
const mostTalk = 14;
const mostSaid = 4;

const isNextToFigure = (text: string, { from, to }: Item): boolean =>
  /\d\W{0,2}$/.test(text.slice(Math.max(0, from - 4), from)) || /^\W{0,2}\d/.test(text.slice(to, to + 4));

/** "When will Harbour Lights balm melt": a capital letter inside a sentence is a name's. */
const isCapital = (text: string, { from }: Item): boolean =>
  /[A-Z]/.test(text.charAt(from)) && /[a-z,] $/.test(text.slice(Math.max(0, from - 2), from));

const weekday = new RegExp(`^(?:${wholeWeekdays})$`);
const isDay = (word: string): boolean => weekday.test(word);

const isTalk = (item: Item, text: string): boolean => {
  if (item.letter !== letters.unknown) return false;
  if (isMonth(item.word)) return !isNextToFigure(text, item);
  const plain = item.word.replace(/'s?$/, '');
  return isBackground(plain) && (isDay(plain) || !isCapital(text, item));
};

const amount = /^[gvdp%]$/;
const isMeasured = (items: readonly Item[], at: number): boolean =>
  [items[at - 1], items[at + 1]].some((item) => item !== undefined && amount.test(item.letter));

/** "I'd like a little honey in my balm: 20 % beeswax, 1 % honey": spoken of before it is written down with its amount. */
const isNamedAgain = (items: readonly Item[], at: number): boolean => {
  const [id, second] = items[at]?.ingredients ?? [];
  if (items[at]?.letter !== letters.ingredient || !id || second || isMeasured(items, at)) return false;
  return items.some(
    (other, later) =>
      later > at &&
      other.letter === letters.ingredient &&
      other.ingredients?.[0] === id &&
      isMeasured(items, later),
  );
};

/** "The market balm" may be somebody's name for a recipe. */
const namesProduct = (items: readonly Item[], at: number): boolean => {
  const next = items[at + 1];
  return next?.letter === letters.product && next.from - (items[at]?.to ?? 0) <= 1;
};

const stops = /^[,;.:()!?\n-]$/;
/** What may stand in a clause of talk besides talk: the past, "my", "no hob here", little words, words such as "because". */
const little = /^[ZyAFTIWobN]$/;
const soft = new Set(
  "out such been keeps because who where why which don't dont can't cant cannot didn't didnt haven't isn't isnt wasn't doesn't doesnt".split(
    ' ',
  ),
);

const clausesOf = (items: readonly Item[]): Item[][] => {
  const clauses: Item[][] = [[]];
  for (const item of items) {
    if (stops.test(item.letter)) clauses.push([]);
    else clauses.at(-1)?.push(item);
  }
  return clauses;
};

/** Talk, and what little stands with it in a clause of nothing else: ", my colleagues were wondering". */
const withLittle = (items: readonly Item[], talk: ReadonlySet<Item>): ReadonlySet<Item> => {
  const whole = clausesOf(items).filter(
    (clause) =>
      clause.some((item) => talk.has(item)) &&
      clause.every((item) => talk.has(item) || little.test(item.letter) || soft.has(item.word)),
  );
  return new Set([...talk, ...whole.flat()]);
};

/** "Make Thornbury salve vegan": a balm by a name of its own, and no wish for a new one. */
export const namesOwnBalm = ({ items, text }: Reading): boolean =>
  items.some((_item, at) => {
    // "Brindle Hall salve": every word of the name, up to its product word.
    let end = at;
    while (isNameWord(text, items[end]) && isNameWord(text, items[end + 1]) && isBesideNext(items, end))
      end += 1;
    const name = items.slice(at, end + 1).filter((item) => isNameWord(text, item));
    return name.some(isOwn) && namesProduct(items, end);
  });

const isNameWord = (text: string, item: Item | undefined): boolean =>
  item?.letter === letters.unknown && isCapital(text, item);

const isBesideNext = (items: readonly Item[], at: number): boolean =>
  (items[at + 1]?.from ?? 0) - (items[at]?.to ?? 0) <= 1;

const isOwn = ({ word }: Item): boolean => (!isBackground(word) || isEveryday(word)) && !isMonth(word);

/** A message without the words of talk in it, and which those were. */
export interface SecondLook {
  readonly reading: Reading;
  readonly passedOver: string;
}

/** The message as it reads without talk; undefined where there is none in it, or too much. */
export const secondLook = (reading: Reading): SecondLook | undefined => {
  const { items, text } = reading;
  const talk = items.filter(
    (item, at) => (isTalk(item, text) && !namesProduct(items, at)) || isNamedAgain(items, at),
  );
  if (talk.length === 0 || talk.length > mostTalk) return undefined;
  const gone = withLittle(items, new Set(talk));
  const said = talk.map(({ from, to }) => text.slice(from, to));
  const more = said.length > mostSaid ? ' …' : '';
  return {
    reading: { ...reading, items: items.filter((item) => !gone.has(item)) },
    passedOver: echo(said.slice(0, mostSaid).join(' ')) + more,
  };
};
