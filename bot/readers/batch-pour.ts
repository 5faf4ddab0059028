import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { takePourFigures } from './batch-figures.ts';
import { whichLot } from './batch-meant.ts';
import { bodyBefore, type Wish } from './batch-pour-before.ts';
import { isPour } from './batch-pour-told.ts';
import { howManyPoured, notInPour, pourWords, whatPoured } from './batch-words.ts';
import type { BenchReading } from './bench-reading.ts';
import { type BenchText, readBenchText, withoutReasons } from './bench-text.ts';
import { takeRemembered } from './body.ts';
import { containerWord } from './cost-prices.ts';
import type { DaySaid } from './days.ts';
import { countsOthers, countsPeople, isGroupNumber } from './group-number.ts';
import { withHouseOils } from './house-oil.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { letters } from './lexicon.ts';
import type { LotSaid } from './lots.ts';
import { isOfLot } from './of-lot.ts';
import { pourPlainly } from './pour-plainly.ts';
import { looseWords, readScale, type ScaleReading } from './scale-reading.ts';
import { unknownRecipe, whichRecipe } from './scale-troubles.ts';
import { boardOf, free, sizeOf, takeShape } from './target.ts';

/** The pour's own code, and the lots that went into it. */
interface Codes {
  readonly lot?: string;
  readonly lots: readonly string[];
  readonly assumed: readonly string[];
}

const fromWords = /\b(?:with|from|using|of|lots|and|used)\W*(?:the\s+)?$/i;

const isOwn = (text: string, said: LotSaid, all: readonly LotSaid[]): boolean => {
  if (/^(?:batch|charge|code)/i.test(text.slice(said.from, said.to))) return true;
  const before = text.slice(Math.max(0, said.from - 20), said.from);
  if (/\b(?:as|called|code|is)\W*$/i.test(before)) return true;
  const alone = all.length === 1 && said.kind === 'new' && /^lot\b/i.test(text.slice(said.from, said.to));
  return alone && !fromWords.test(before);
};

const codesOf = (reading: Reading, { lots }: BenchReading): Codes => {
  const own = lots.find((said) => said.kind !== 'lot' && isOwn(reading.text, said, lots));
  const asWords = own && /^lot/i.test(reading.text.slice(own.from, own.to));
  return {
    lots: lots.filter((said) => said !== own).map(({ code }) => code),
    assumed: own && asWords ? [`I took ${own.code} as this batch's own code.`] : [],
    ...defined({ lot: own?.code }),
  };
};

/** "500 g of Winter balm into 24 tins": what was weighed out, not what a tin holds. */
const takeWeighed = (read: ReturnType<typeof boardOf>, reading: Reading): number | undefined => {
  const items = takeShape(read, /(?<!c[oIWF]?)[gv](?=oR)/);
  const size = items?.[0] && sizeOf(items[0], reading.settings.region);
  return size?.unit === 'g' ? size.amount : undefined;
};

const again = /\b(?:another|again|second batch|one more|once more|\w+ more)\b/i;
/** "20 more tins": the number and its tins belong together. */
const inBetween = new Set([
  'more',
  'another',
  'further',
  'extra',
  'additional',
  'lovely',
  'full',
  'new',
  'fresh',
  'little',
  'small',
]);

/** A recipe may be called "Little moon balm". */
const isInBetween = ({ letter, word }: Item, at: number, all: readonly Item[]): boolean =>
  (letter === letters.unknown && inBetween.has(word)) ||
  // "A double batch: 40 tins" says how many.
  (letter === letters.multiple && all[at + 1]?.letter === letters.batch);

const expiredToo = /\b(?:past (?:its|their|the) date|expired|all the same|even though|knowingly)\b/i;

interface Body {
  readonly wish: Wish;
  readonly assumed: readonly string[];
  readonly trouble?: ReturnType<typeof unknownRecipe>;
}

const remembered = (read: ScaleReading, rest: Reading): Body | undefined => {
  const words = looseWords(read.board, pourWords);
  const near = words === '' ? [] : rest.recipes.near(words);
  if (near.length > 1)
    return { wish: {}, assumed: [], trouble: whichRecipe(near.slice(0, 4).map(({ name }) => name)) };
  const found = takeRemembered(read.board, rest, pourWords);
  if (found?.recipe !== undefined) return { wish: { recipe: found.recipe }, assumed: found.assumed };
  return words === '' ? undefined : { wish: {}, assumed: [], trouble: unknownRecipe(words) };
};

const bodyOf = (read: ScaleReading, reading: Reading, rest: Reading): Body => {
  if (read.recipe !== undefined) return { wish: { recipe: read.recipe }, assumed: read.assumed };
  if (read.lines.length > 0) return { wish: { lines: read.lines }, assumed: read.assumed };
  const before = bodyBefore(reading);
  const points = before !== undefined && /\b(?:it|them|that|this|these|those)\b/i.test(rest.text);
  const near = points ? undefined : remembered(read, rest);
  if (near) return near;
  if (!before) return { wish: {}, assumed: [], trouble: whatPoured };
  return { wish: before.wish, assumed: [`I took ${before.said}, which we spoke of.`] };
};

const dayOf = (days: readonly DaySaid[]): DaySaid | undefined => days.find(({ role }) => role === 'on');

interface Told {
  readonly reading: Reading;
  readonly text: BenchText;
}

const wishOf = ({ reading, text }: Told, read: ScaleReading, body: Body, codes: Codes): Wish => {
  const { bench } = text;
  const { count, size, totalG } = read.target;
  const container = bench.rest.items.find(({ letter }) => letter === 'c')?.word;
  return {
    action: 'pour',
    ...body.wish,
    ...defined({
      count: count ?? body.wish.count,
      size: size ?? body.wish.size,
      totalG: totalG ?? body.wish.totalG,
      container: container === undefined ? undefined : containerWord(container),
      lossPercent: read.lossPercent,
      on: dayOf(bench.days)?.past,
      bestBefore: bench.days.find(({ role }) => role === 'best-before')?.future,
      lot: codes.lot,
      lots: codes.lots.length > 0 ? codes.lots : undefined,
      note: text.note,
      pictures: text.pictures.length > 0 ? text.pictures : undefined,
      again: again.test(reading.text) || undefined,
      expiredToo: expiredToo.test(bench.rest.text) || undefined,
    }),
  };
};

/** "10 tins of Beeswax dream": one ingredient with a word that nobody knows is a recipe's name, not a recipe. */
const namedAlone = (wish: Wish, { board }: ScaleReading, aside: readonly string[]): string | undefined => {
  const lines = Array.isArray(wish.lines) ? wish.lines : [];
  if (lines.length !== 1 || aside.length === 0) return undefined;
  const name = board.items.find(({ letter }) => letter === 'i')?.word;
  return [name, ...aside].flatMap((each) => each ?? []).join(' ');
};

/** "Velvet cream" is not Velvet pot: what was taken for a name has another word right beside it. */
const otherName = (
  { text }: Reading,
  assumed: readonly string[],
  aside: readonly string[],
): string | undefined => {
  const plain = text.toLowerCase().replace(/\s+/g, ' ');
  const said = assumed.flatMap((each) => /^I took "(.+?)" as/.exec(each)?.[1]?.toLowerCase() ?? []);
  const both = said.flatMap((name) => aside.flatMap((word) => [`${name} ${word}`, `${word} ${name}`]));
  return both.find((name) => plain.includes(name));
};

const settle = (told: Told, read: ScaleReading, wish: Wish, assumed: readonly string[]): Claim => {
  const rest = leftover(read.board, pourWords, true);
  if (rest.blocking.length > 0) return refuse(notInPour(rest.blocking.map(({ word }) => word)), 3.3);
  if (wish.count === undefined) return refuse(howManyPoured, 3.3, wish);
  const lone = namedAlone(wish, read, rest.aside);
  if (lone !== undefined) return refuse(unknownRecipe(lone), 3.3, wish);
  const { days } = told.text.bench;
  const other = otherName(told.reading, assumed, rest.aside);
  if (other !== undefined) return refuse(unknownRecipe(other), 3.3, wish);
  const aside = rest.aside.length > 0 ? [`I set aside "${rest.aside.join('", "')}".`] : [];
  return claim(wish, 3.4, [...assumed, ...days.flatMap((day) => day.assumed ?? []), ...aside]);
};

/** "poured 24 tins of R today with lots K12, G7, bath 75, poured at 68, weighed out 371 g, filled 355 g, note: …" */
export const claimPour = (message: Reading): Claim | undefined => {
  const reading = pourPlainly(message);
  const whole = readBenchText(reading);
  const bench = withoutReasons(whole.bench);
  const text = { ...whole, bench };
  if (!isPour(reading, bench)) return undefined;
  const { figures, items } = takePourFigures(bench.rest);
  const { last: _last, ...bare } = bench.rest;
  const left = bench.rest.items.filter(
    (item, at, all) =>
      !isOfLot(item, at, bench, reading) &&
      !items.includes(item) &&
      !isInBetween(item, at, all) &&
      !countsOthers(all, at) &&
      !isGroupNumber(item, bench.rest.text) &&
      !countsPeople(item, bench.rest.text),
  );
  const board = boardOf(withHouseOils(left, reading.bench, bench.lots));
  const weighed = takeWeighed(board, reading);
  const read = readScale({ ...bare, items: free(board) });
  const trouble = bench.trouble ?? read.trouble ?? askedBack(bench) ?? tooLittle(weighed, read);
  if (trouble) return refuse(trouble, 3.3);
  const body = bodyOf(read, reading, bench.rest);
  const codes = codesOf(reading, bench);
  const wish = {
    ...wishOf({ reading, text }, read, body, codes),
    ...defined({ weighedG: weighed }),
    ...figures,
  };
  if (body.trouble) return refuse(body.trouble, 3.3, wish);
  return settle({ reading, text }, read, wish, [...body.assumed, ...codes.assumed]);
};

/** "16 tins of 15 g and one of 10 g of the balm": too little to have been weighed out for all of them. */
const tooLittle = (weighed: number | undefined, { target: { count = 0, size } }: ScaleReading) =>
  weighed !== undefined && size?.unit === 'g' && weighed < 0.5 * count * size.amount
    ? notInPour([`${weighed} g`])
    : undefined;

const askedBack = ({ lots }: BenchReading) => {
  const unclear = lots.find(({ others }) => others);
  return unclear && whichLot(unclear);
};
