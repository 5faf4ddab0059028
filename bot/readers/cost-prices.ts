import { containerThing } from '../../core/cost/prices.ts';
import { defined } from '../../core/defined.ts';
import { ingredientById } from '../../core/ingredients.ts';
import { isMassUnit, isVolumeUnit } from '../../core/units.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { askWhich, unknownIngredient } from './ask-back.ts';
import { type MoneyRead, moneyIn, otherSaid } from './cost-money.ts';
import { isThing, priceSegments } from './cost-segments.ts';
import { noMoney, noPack, priceWords } from './cost-words.ts';
import type { Item } from './item.ts';
import { sizeOf } from './target.ts';

export interface PriceRead {
  readonly thing: string;
  readonly price: string;
  readonly pack: { readonly amount: number; readonly unit: 'g' | 'ml' | 'each' };
  readonly vat?: 'incl' | 'excl';
  /** As typed, where it is not the group's own. */
  readonly currency?: string;
}

export interface PricesRead {
  readonly prices: readonly PriceRead[];
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

/** `pots` is a pot, `boxes` a box: the container's own word. */
export const containerWord = (word: string): string =>
  word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;

interface Pack {
  readonly pack?: PriceRead['pack'];
  readonly size?: { readonly amount: number; readonly unit: 'g' | 'ml' };
  readonly items: readonly Item[];
}

const perUnit = (segment: readonly Item[], reading: Reading): Pack | undefined => {
  const item = segment.find((each) => each.letter === 'u' && each.unit !== undefined);
  if (!item?.unit || (!isMassUnit(item.unit) && !isVolumeUnit(item.unit))) return undefined;
  const size = sizeOf({ ...item, value: 1 }, reading.settings.region);
  return size ? { pack: size, items: [item] } : undefined;
};

/** What an ingredient's price is for: "500 g", "per kg", "a litre". */
const ingredientPack = (segment: readonly Item[], reading: Reading, money: readonly Item[]): Pack => {
  const amounts = segment.filter((each) => /[gv]/.test(each.letter) && !money.includes(each));
  const [item, second] = amounts;
  const size = item && sizeOf(item, reading.settings.region);
  if (item && size && !second) return { pack: size, items: [item] };
  return item ? { items: [] } : (perUnit(segment, reading) ?? { items: [] });
};

/** What a container's price is for: one, or "50 tins"; with what it holds if that was said. */
const containerPack = (
  segment: readonly Item[],
  reading: Reading,
  thing: Item,
  money: readonly Item[],
): Pack => {
  const numbers = segment.filter((each) => each.letter === 'n' && !money.includes(each));
  const [count, second] = numbers;
  const holding = segment.find((each) => /[gv]/.test(each.letter) && !money.includes(each));
  const size = holding && sizeOf(holding, reading.settings.region);
  const eachSaid = segment.some((each) => each.letter === 'e');
  if (second || (count && eachSaid) || thing.value !== undefined) return { items: [] };
  return {
    pack: { amount: count?.value ?? 1, unit: 'each' },
    items: [...(count ? [count] : []), ...(holding ? [holding] : [])],
    ...defined({ size }),
  };
};

const vatOf = (segment: readonly Item[]): 'incl' | 'excl' | undefined => {
  const words = segment.map((item) => item.word);
  if (!words.some((word) => /^(?:vat|tax|gst)$/.test(word))) return undefined;
  return words.some((word) => /^(?:ex|excl|excluding|exclusive|without|plus|before|net|\+|no)$/.test(word))
    ? 'excl'
    : 'incl';
};

const ingredientOf = (item: Item): { readonly id?: string; readonly trouble?: Trouble } => {
  const [id, ...more] = item.ingredients ?? [];
  if (item.infusedWith) return { id: 'infused-oil' };
  return id === undefined || more.length > 0 || item.because ? { trouble: askWhich(item) } : { id };
};

const looseOf = (segment: readonly Item[], used: readonly Item[]): readonly Item[] =>
  segment.filter(
    (item) =>
      !used.includes(item) &&
      !priceWords.has(item.word) &&
      /[wzZRgvn%dptr]/.test(item.letter) &&
      !/^[€$£]$/.test(item.word),
  );

interface One {
  readonly price?: PriceRead;
  readonly trouble?: Trouble;
  readonly assumed?: string;
}

const nameless = (segment: readonly Item[], used: readonly Item[]): One => {
  const loose = looseOf(segment, used);
  const unknown = loose.length > 0 && loose.every((item) => item.letter === 'w');
  return unknown ? { trouble: unknownIngredient(loose.map((item) => item.word).join(' ')) } : {};
};

interface Thing {
  readonly id?: string;
  readonly name: string;
  readonly trouble?: Trouble;
}

const thingOf = (item: Item, pack: Pack): Thing => {
  if (item.letter === 'c')
    return { id: containerThing(containerWord(item.word), pack.size), name: item.word };
  const found = ingredientOf(item);
  return { ...found, name: ingredientById(found.id ?? '')?.name ?? item.word };
};

const finished = (
  item: Item,
  { id, name, trouble }: Thing,
  pack: Pack,
  money: MoneyRead,
  more: Pick<PriceRead, 'vat' | 'currency'>,
): One => {
  const problem = trouble ?? money.trouble ?? (pack.pack ? undefined : noPack(name));
  if (problem) return { trouble: problem };
  if (id === undefined || money.price === undefined || !pack.pack) return {};
  const price = { thing: id, price: money.price, pack: pack.pack, ...defined({ ...more }) };
  return item.misspelt ? { price, assumed: `I read "${item.misspelt}" as ${name}.` } : { price };
};

/** "each tin costs 35 cents": read as one item, whose last word is the container. */
const eachContainer = (segment: readonly Item[], reading: Reading): Item | undefined => {
  const item = segment.find((each) => each.letter === 'e');
  const word = item && /(?:per|each)\s+([a-z]+)$/i.exec(reading.text.slice(item.from, item.to))?.[1];
  return item && word ? { ...item, letter: 'c', word: word.toLowerCase() } : undefined;
};

/** "A 10 ml bottle of lavender oil": what it is sold in. */
const isPackOf = (segment: readonly Item[], { letter }: Item, at: number): boolean =>
  letter === 'c' && segment[at + 1]?.letter === 'o' && segment[at + 2]?.letter === 'i';

/** The one thing of a segment: a generic word beside a name is only its kind, a bag or tub only how it is sold. */
const oneThing = (
  segment: readonly Item[],
  reading: Reading,
): { readonly thing?: Item; readonly several: boolean } => {
  const named = segment.filter((item, at) => !isPackOf(segment, item, at));
  const exact = named.filter((item) => isThing(item) && !item.generic);
  const [thing, second] = exact.length > 0 ? exact : named.filter(isThing);
  if (!thing) return { several: false, ...defined({ thing: eachContainer(segment, reading) }) };
  const several = second !== undefined && !(thing?.letter === 'i' && second.letter === 'c');
  return { several, ...defined({ thing }) };
};

/** One thing's price, a trouble with it, or nothing at all when the words are about something else. */
const readOne = (segment: readonly Item[], reading: Reading): One | undefined => {
  const { thing, several } = oneThing(segment, reading);
  const money = moneyIn(segment, reading.settings.currency);
  if (!thing) return nameless(segment, money?.items ?? []);
  if (several) return undefined;
  if (!money) return { trouble: noMoney };
  const pack =
    thing.letter === 'i'
      ? ingredientPack(segment, reading, money.items)
      : containerPack(segment, reading, thing, money.items);
  if (looseOf(segment, [...money.items, ...pack.items, thing]).length > 0) return undefined;
  const [first] = segment;
  const said = reading.text.slice(first?.from, segment.at(-1)?.to);
  // A sign before the first word read ("$9.99 for …") belongs to it.
  const sign = first ? reading.text.slice(Math.max(0, first.from - 1), first.from) : '';
  const currency = otherSaid(`${sign}${said}`, reading.settings.currency);
  return finished(thing, thingOf(thing, pack), pack, money, defined({ vat: vatOf(segment), currency }));
};

const isPackless = (one: One | undefined): boolean =>
  one?.trouble?.code === 'missing' && one.trouble !== noMoney;

/** "Per kg", "a kilo". */
const isPackUnit = ({ letter, unit, word }: Item): boolean =>
  (letter === 'u' && unit !== undefined) || (/[gv]/.test(letter) && /^an?$/.test(word));

/** "Beeswax 20, shea 18 and olive oil 9 a kilo": the unit that is said once, after it or before. */
const unitBeside = (segments: readonly (readonly Item[])[], at: number): Item | undefined => {
  const units = segments.map((segment) => segment.find(isPackUnit));
  return units.slice(at + 1).find(Boolean) ?? units.slice(0, at).findLast(Boolean);
};

const borrowed = 'I took a price without a pack to be for as much as the one beside it.';

/** The price in one segment, with the pack of the one beside it where it has none of its own. */
const readAmong = (segments: readonly (readonly Item[])[], at: number, reading: Reading): One | undefined => {
  const segment = segments[at] ?? [];
  const alone = readOne(segment, reading);
  const unit = isPackless(alone) ? unitBeside(segments, at) : undefined;
  const one = unit ? readOne([...segment, unit], reading) : alone;
  return unit && one?.price ? { ...one, assumed: borrowed } : one;
};

/** "A tube that holds at 38 C": no cents, which are written "35c". */
const hasDegrees = ({ items, text }: Reading): boolean =>
  items.some(({ letter, from, to }) => letter === 't' && /°|C$|\sc$|degree/.test(text.slice(from, to)));

/** Reads prices out of a message: "shea costs 18 per kg", "beeswax 500 g 14.50", "tins are 0.35 each", or several. */
export const readPrices = (reading: Reading): PricesRead | undefined => {
  if (hasDegrees(reading)) return undefined;
  const prices: PriceRead[] = [];
  const assumed = new Set<string>();
  const segments = priceSegments(reading.items);
  for (const at of segments.keys()) {
    const one = readAmong(segments, at, reading);
    if (one?.trouble) return { prices, assumed: [...assumed], trouble: one.trouble };
    if (!one?.price) return undefined;
    if (one.assumed) assumed.add(one.assumed);
    prices.push(one.price);
  }
  return prices.length > 0 ? { prices, assumed: [...assumed] } : undefined;
};
