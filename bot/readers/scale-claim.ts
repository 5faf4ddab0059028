import { ingredientById } from '../../core/ingredients.ts';
import type { Trouble } from '../answer.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { takeOwnIngredients } from './body.ts';
import { claimUnits } from './in-ounces.ts';
import { type Leftover, leftover } from './leftover.ts';
import { askedAgain, asksForPour, pourWords } from './scale-jug.ts';
import { looseWords, readScale, type ScaleReading } from './scale-reading.ts';
import { noRecipe, notPlaced, targetTrouble, unknownRecipe, whichRecipe } from './scale-troubles.ts';
import {
  changesSomething,
  continued,
  hasTarget,
  lastScale,
  said,
  sameFor,
  shownBefore,
  type Wish,
} from './scale-wish.ts';
import { boardOf } from './target.ts';

export { scaleExample } from './scale-troubles.ts';

/** Words around a scale request that ask for nothing more. */
export const scaleWords = new Set(
  `scale scaling rescale upscale downscale make making prepare prepared preparing produce fill fills filling use used pour pouring weigh weighing
  calculate compute work out up down resize adjust yield enough everything all list table total totals blend mix mixture version gram grams
  what whats what's weigh-out how much many should may size sized cover makes factor about only got left using fit fits suit mass weight instruction instructions
  weights sheet allow allows target limiting limit phase name reduce increase scaling-up people kits kit max maximum most equals next
  jug jugs big large fit fits`.split(/\s+/),
);
const pouringWords = new Set([...scaleWords, ...pourWords]);
const followWords = new Set([...scaleWords, 'instead', 'same', 'but', 'go', 'back', 'wait', 'change']);

/** Words that join a message to the one before: "and for …", "same for …", "what about …". */
const joining = ['and', 'same', 'also', 'about', 'instead', 'now'];

/** Words that ask for a scaling by themselves. */
const cues =
  `scale scaling rescale upscale downscale resize weigh make making fill pour need want prepare do`.split(
    ' ',
  );

/** Verbs that come with the name of what they are about. */
const namingCues = ['scale', 'scaling', 'rescale', 'resize', 'upscale', 'downscale'];

interface Draft {
  readonly wish: Wish;
  readonly assumed: readonly string[];
  readonly weight: number;
  readonly trouble?: Trouble;
}

const takeWords = (read: ScaleReading, words: string): void => {
  for (const [index, item] of read.board.items.entries()) {
    if (/[wBib]/.test(item.letter) && words.includes(item.word)) read.board.taken[index] = true;
  }
};

/** "And if I have 100 g?" after "with my 80 g of beeswax": so much of that ingredient, and no batch of 100 g. */
const ofWhatIsHad = (last: Wish, read: ScaleReading, text: string): ScaleReading => {
  const before = last.limit as ScaleReading['limit'];
  const grams = read.target.totalG;
  const had =
    /\b(?:if (?:i|we)(?: only)?(?:'ve)?|(?:i|we)(?:'ve)?(?: only)?) (?:have|had|got|find|found)\b|\bwith (?:my|our)\b/i;
  if (!before || read.limit || grams === undefined || !had.test(text)) return read;
  return { ...read, target: {}, limit: { ...before, grams } };
};

/** No recipe in the message: one half remembered, the one spoken of before, or none. */
const bodyless = (reading: Reading, read: ScaleReading): Draft => {
  const wish = said(read);
  const words = looseWords(read.board, scaleWords);
  const [near, second, ...more] = words ? reading.recipes.near(words) : [];
  if (near && second) {
    const names = [near, second, ...more].slice(0, 4).map((recipe) => recipe.name);
    return { wish, assumed: [], weight: 1, trouble: whichRecipe(names) };
  }
  if (near) {
    takeWords(read, words);
    return {
      wish: { ...wish, recipe: near.name },
      assumed: [`I took "${words}" as ${near.name}.`],
      weight: 2,
    };
  }
  const last = lastScale(reading);
  // "scale Winter balm to …" names a recipe, known or not: that ends what was spoken of before.
  const names = words !== '' && anyWord(reading, namingCues);
  if (last && changesSomething(read) && !names)
    return { wish: continued(last, ofWhatIsHad(last, read, reading.text)), assumed: [], weight: 2 };
  const shown = words === '' && hasTarget(read) ? shownBefore(reading) : undefined;
  if (shown) return { wish: { ...shown, ...wish }, assumed: [], weight: 2 };
  return {
    wish,
    assumed: [],
    weight: 1,
    trouble: words ? unknownRecipe(words) : noRecipe,
  };
};

const isCountOnly = ({ target, limit }: ScaleReading): boolean =>
  limit === undefined && Object.keys(target).join() === 'count';

const draft = (reading: Reading, read: ScaleReading): Draft => {
  if (read.recipe === undefined && read.lines.length === 0) return bodyless(reading, read);
  const body = read.recipe === undefined ? { lines: read.lines } : { recipe: read.recipe };
  const last = lastScale(reading);
  if (last && !hasTarget(read))
    return {
      wish: sameFor(last, body, read),
      assumed: read.assumed,
      weight: 2.6,
    };
  // "And for the mint one, 10 tins": as large as those before.
  const size =
    last?.size !== undefined && isCountOnly(read) && anyWord(reading, joining) ? { size: last.size } : {};
  return { wish: { ...body, ...size, ...said(read) }, assumed: read.assumed, weight: 2 };
};

const hasBody = (read: ScaleReading): boolean => read.recipe !== undefined || read.lines.length > 0;

/** A recipe after a scaling: the one that was missing, or another one for the same amounts. */
const takesUp = (reading: Reading, read: ScaleReading): boolean => {
  const last = lastScale(reading);
  if (!last || !hasBody(read)) return false;
  return (last.recipe ?? last.lines) === undefined || anyWord(reading, joining);
};

/** "1:8 by weight, 60 g calendula into sunflower oil": herb and oil by a ratio are steeped, and no recipe. */
const isInfusion = ({ lines }: ScaleReading): boolean =>
  lines.length === 2 &&
  lines.every(({ unit }) => unit === 'part') &&
  lines.some(({ ingredient }) => ingredientById(ingredient)?.kind === 'herb');

const concerns = (reading: Reading, read: ScaleReading, cue: boolean): boolean => {
  const follows = lastScale(reading) !== undefined;
  const again = takesUp(reading, read);
  if (!changesSomething(read) && !cue && !read.trouble && !again) return false;
  const shown = shownBefore(reading) !== undefined && hasTarget(read);
  return (
    hasBody(read) || cue || follows || shown || read.target.count !== undefined || read.limit !== undefined
  );
};

/** Words that may be the real question: without a word that asks for a scaling, anything unknown may be. */
const blockingWords = (rest: Leftover, reading: Reading, cue: boolean): readonly string[] => {
  const hard = rest.blocking.map((item) => item.word);
  return cue || rest.aside.every((words) => isReason(words, reading)) ? hard : [...hard, ...rest.aside];
};

const wordsFor = (reading: Reading): ReadonlySet<string> => {
  if (lastScale(reading)) return followWords;
  return asksForPour(reading) ? pouringWords : scaleWords;
};

/** "How much is the first pour of …" is no question of money. */
const surenessOf = (reading: Reading, weight: number, cue: boolean): number => {
  if (asksForPour(reading)) return 3.2;
  return cue ? weight + 0.5 : weight;
};

const settle = (read: ScaleReading, drafted: Draft, reading: Reading, cue: boolean): Claim => {
  const { wish, assumed, weight, trouble } = drafted;
  const rest = leftover(read.board, wordsFor(reading), weight > 1);
  const missing = trouble?.code === 'missing' ? wish : undefined;
  if (trouble) return refuse(trouble, rest.blocking.length > 0 ? 0.3 : 1, missing);
  const blocking = blockingWords(rest, reading, cue);
  if (blocking.length > 0) return refuse(notPlaced(blocking), 0.8);
  const lacking = targetTrouble(wish);
  if (lacking) return refuse(lacking, cue ? 1.2 : 1, wish);
  const aside = rest.aside.length > 0 ? [`I set aside "${rest.aside.join('", "')}".`] : [];
  return claim(wish, surenessOf(reading, weight, cue), [...assumed, ...aside]);
};

/** "for the spring fair": why it is made changes nothing. */
const isReason = (words: string, reading: Reading): boolean => {
  const at = reading.items.findIndex((item) => item.word === words.split(' ')[0]);
  return /[FWyI]/.test(reading.items[at - 1]?.letter ?? '');
};

const moreWords = new Set([
  ...followWords,
  ...'more extra additional another add fewer less than no of them'.split(' '),
]);

/** "Five more", "two fewer tins than that": counted from the last. */
const moreThan = (reading: Reading, last: Wish): Claim | undefined => {
  const { count } = last;
  const up = /\b(?:more|extra|additional|another|add)\b/i.test(reading.text);
  const down = /\b(?:fewer|less)\b/i.test(reading.text);
  if (
    typeof count !== 'number' ||
    up === down ||
    !/\b(?:\w+) (?:more|extra|additional|fewer|less)\b|\b(?:another|add) \w/i.test(reading.text)
  )
    return undefined;
  const board = boardOf(reading.items);
  const [number, second] = board.items.filter(({ letter }) => letter === 'n');
  const counted = count + (up ? 1 : -1) * (number?.value ?? 0);
  if (!number || second || board.items.some(({ letter }) => /[gvRi%tpdrM]/.test(letter))) return undefined;
  for (const [at, item] of board.items.entries()) if (/[ncN]/.test(item.letter)) board.taken[at] = true;
  if (leftover(board, moreWords, false).blocking.length > 0) return undefined;
  return counted >= 1 && Number.isInteger(counted) ? claim({ ...last, count: counted }, 2.7) : undefined;
};

const hasTargetSaid = (last: Wish): boolean => targetTrouble(last) === undefined;

const fromLast = (reading: Reading, last: Wish): Claim | undefined =>
  (hasTargetSaid(last) ? askedAgain(reading, last) : undefined) ?? moreThan(reading, last);

/** "Pour temperature for R" after a weigh-out of it. */
const ofHeat = /\btemperatures?\b|\bhow (?:hot|warm)\b/i;

/** What a message would mean as a scale request. */
export const claimScale = (reading: Reading): Claim | undefined => {
  const units = claimUnits(reading, 'scale');
  if (units) return units;
  const last = lastScale(reading);
  const again = last ? fromLast(reading, last) : undefined;
  if (again) return again;
  const cue = anyWord(reading, cues) || asksForPour(reading);
  const read = readScale(reading);
  if (!concerns(reading, read, cue) || isInfusion(read)) return undefined;
  if (!hasTarget(read) && ofHeat.test(reading.text)) return undefined;
  if (read.trouble) return refuse(read.trouble, hasBody(read) || cue ? 2 : 0.5);
  const drafted = draft(reading, read);
  takeOwnIngredients(read.board, reading, drafted.wish.recipe);
  return settle(read, drafted, reading, cue);
};
