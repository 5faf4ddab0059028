import { defined } from '../../core/defined.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { echo, unknownIngredient } from './ask-back.ts';
import { isBackground } from './background-words.ts';
import { takeItem } from './body.ts';
import { isCalledOff, isToldOnly } from './called-off.ts';
import { ouncesBeside } from './in-ounces.ts';
import { claimAgain } from './infuse-again.ts';
import { herbOf, isAmountItem, type RatioRead, readRatio } from './infuse-amounts.ts';
import { readBatch } from './infuse-batch.ts';
import { concerns, elsewhere } from './infuse-concerns.ts';
import { amountsOf, type Fields, lastInfuse } from './infuse-fields.ts';
import { readMix } from './infuse-mix.ts';
import { idOfHerb, idOfOil, type Names, namesOf, withoutReplaced, withSteepedOils } from './infuse-names.ts';
import {
  foodWords,
  forFood,
  infuseExample,
  infuseWords,
  noAmount,
  notInOil,
  otherLiquids,
  ratioOfTwo,
} from './infuse-words.ts';
import { claimOwnYields, claimYield, tellsYield } from './infuse-yield.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { quantityTrouble } from './scale-target.ts';
import { type Board, boardOf, free } from './target.ts';

const people =
  /^\s*(?:friends|people|of us|women|ladies|girls|men|boys|kids|children|students|pupils|makers|guests|sisters|mums|members)\b/i;

/** "We are three friends": how many make it changes nothing. */
const takePeople = (board: Board, text: string): void => {
  for (const item of board.items)
    if (item.letter === 'n' && people.test(text.slice(item.to))) takeItem(board, item);
};

/** How and how long was said; the answer keeps to the usual time and heat. */
const takeTimes = (board: Board): boolean => {
  let said = false;
  for (const [at, item] of board.items.entries()) {
    const next = board.items[at + 1]?.word ?? '';
    const time = item.letter === 'n' && /^(?:h|hrs?|hours?|days?|weeks?|months?|minutes?|mins?)$/.test(next);
    if (item.letter !== 't' && !time) continue;
    takeItem(board, item);
    said = true;
  }
  return said;
};

const wayOf = (reading: Reading): 'cold' | 'melt' | undefined => {
  if (
    /\b(?:straight|direct(?:ly)?|right)\b.*\b(?:melt(?:ed)?|mass|balm|wax|pot|salve)\b|\bin(?:to)? the (?:melt(?:ed)?|molten)\b/i.test(
      reading.text,
    )
  ) {
    return 'melt';
  }
  return /\b(?:cold|slow|solar|windowsill|cupboard)\b/i.test(reading.text) ? 'cold' : undefined;
};

const notDried = /\bfresh\b.{0,12}\b(?:instead of|rather than|not|no longer)\s+dried\b/i;
const isFresh = (reading: Reading): boolean =>
  notDried.test(reading.text) ||
  (/\bfresh(?:ly)?\b|\bjust (?:picked|cut|harvested)\b|\bpicked (?:today|this morning)\b|\bfrom (?:the|my|our) garden\b|\bundried\b/i.test(
    reading.text,
  ) &&
    !/\bdried\b/i.test(reading.text));

const batchClaim = (reading: Reading): Claim | undefined => {
  const way = wayOf(reading) === 'melt' ? ('melt' as const) : undefined;
  const read = readBatch(reading, way === 'melt');
  if (!read || read.blocking.length > 0) return undefined;
  const oil = read.oil?.generic ? {} : idOfOil(read.oil);
  const trouble = read.herbs.trouble ?? oil.trouble ?? read.trouble;
  const fields = {
    batch: read.batch,
    ...read.herbs.fields,
    ...defined({ oil: oil.id, ratio: read.ratio, way }),
  };
  if (trouble) return refuse(trouble, 2.6, fields);
  return claim(fields, 2.9, [...read.assumed, ...read.herbs.assumed]);
};

const joining =
  /\b(?:and|about|instead|with|in|use|using|same|at|for|rather|have|half|not|swap|make|meant|mean|said)\b/i;

const follows = (reading: Reading, before: Fields | undefined, fields: Fields): boolean => {
  if (!before || Object.keys(fields).length === 0) return false;
  const amount = Object.keys(fields).some((key) => /^(?:herbG|oilIn|oilOut|ratio|way|fresh)$/.test(key));
  return amount || (joining.test(reading.text) && !/\bwhat(?:'s|s| is| are)\b/i.test(reading.text));
};

const merged = (before: Fields, fields: Fields): Fields => {
  const amounts = ['herbG', 'oilIn', 'oilOut'];
  const replaced = amounts.some((key) => key in fields);
  const kept = Object.fromEntries(
    Object.entries(before).filter(([key]) => key !== 'got' && !(replaced && amounts.includes(key))),
  );
  return { ...kept, ...fields };
};

const notPlaced = (blocking: readonly Item[]): Trouble => ({
  code: 'not-understood',
  text: `I see an infusion, but not what to do about "${echo(
    blocking
      .map((item) => item.word)
      .slice(0, 4)
      .join(' '),
  )}". Ask for example "${infuseExample}".`,
});

const notHerb = (item: Item): Trouble => ({
  code: 'bad-quantity',
  text: `${ingredientById(item.ingredients?.[0] ?? '')?.name ?? item.word} is no herb to steep in oil. For example "${infuseExample}".`,
});

interface Draft {
  /** Several herbs or oils, whose shares belong to the request. */
  readonly mixed?: true;
  readonly fields: Fields;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

/** What is said beside herbs, oils and amounts. */
const sideFields = (reading: Reading, ratio: RatioRead): Fields =>
  defined({
    ratio: ratio.ratio,
    way: wayOf(reading),
    fresh: isFresh(reading) || undefined,
    units: ouncesBeside(reading),
  });

const mixDraft = (
  reading: Reading,
  items: readonly Item[],
  ratio: RatioRead,
  names: Names,
): Draft | undefined => {
  const mix = readMix(reading, items);
  if (!mix) return undefined;
  const [other] = names.others;
  const trouble = mix.trouble ?? (ratio.bad ? ratioOfTwo : undefined) ?? (other ? notHerb(other) : undefined);
  return {
    mixed: true,
    fields: { ...mix.fields, ...sideFields(reading, ratio) },
    assumed: [...mix.assumed, ...(ratio.said ? [ratio.said] : [])],
    ...defined({ trouble }),
  };
};

const draftOf = (reading: Reading, items: readonly Item[], ratio: RatioRead, names: Names): Draft => {
  const mixed = mixDraft(reading, items, ratio, names);
  if (mixed) return mixed;
  const herb = idOfHerb(names.herb);
  const oil = idOfOil(names.oil);
  const amounts = amountsOf(reading, items, lastInfuse(reading));
  const [other] = names.others;
  const misspelt = [names.herb, names.oil].flatMap((item) =>
    item?.misspelt && !/^(?:fresh|dried|dry)\b/.test(item.misspelt)
      ? [`I read "${item.misspelt}" as ${ingredientById(item.ingredients?.[0] ?? '')?.name ?? ''}.`]
      : [],
  );
  return {
    fields: {
      ...amounts.fields,
      ...defined({
        herb: herb.id,
        oil: oil.id,
      }),
      ...sideFields(reading, ratio),
    },
    assumed: [...misspelt, ...amounts.assumed, ...(ratio.said ? [ratio.said] : [])],
    ...defined({
      trouble:
        names.trouble ??
        herb.trouble ??
        oil.trouble ??
        (ratio.bad ? ratioOfTwo : undefined) ??
        (other ? notHerb(other) : undefined) ??
        amounts.trouble,
    }),
  };
};

/** Asked of any herb: the usual ratio, time and heat. */
const asksUsual = /\bratio\b|\bhow (?:long|hot|warm|much herb)\b/i;

/** A request that has its own herb and amount stands for itself; anything less continues the one before. */
const isWhole = ({ fields }: Draft, weight: number): boolean =>
  weight > 0 && (fields.herb !== undefined || fields.herbs !== undefined);

const settle = (reading: Reading, draft: Draft, weight: number, timed: boolean): Claim | undefined => {
  const before = lastInfuse(reading);
  const joins = follows(reading, before, draft.fields);
  if (weight === 0 && !joins) return undefined;
  const sure = weight || (/\bi (?:meant|mean|said)\b/i.test(reading.text) ? 3.1 : 2.3);
  const trouble = quantityTrouble(reading.items.filter(isAmountItem)) ?? draft.trouble;
  if (trouble) return refuse(trouble, sure);
  const fields = before && joins && !isWhole(draft, weight) ? merged(before, draft.fields) : draft.fields;
  if (Object.keys(fields).every((key) => key === 'way' || key === 'fresh' || key === 'oil')) {
    return asksUsual.test(reading.text) ? claim(fields, sure) : refuse(noAmount, Math.min(sure, 1.4), fields);
  }
  const times = timed ? ['I keep to the usual time and heat below.'] : [];
  return claim(fields, sure, [...draft.assumed, ...times]);
};

/** Requests that look like an infusion and cannot be one: food, and anything but oil. */
const otherUse = (reading: Reading, weight: number): Trouble | undefined => {
  if (weight > 0 && foodWords.test(reading.text)) return forFood;
  return weight > 2.7 && otherLiquids.test(reading.text) ? notInOil : undefined;
};

/** "In plutonium": where the oil should be. */
const strangeOil = ({ items, taken }: Board): Item | undefined =>
  items.find(
    ({ letter, word }, at) =>
      letter === 'w' &&
      !taken[at] &&
      items[at - 1]?.letter === 'I' &&
      /[i]/.test(items[at - 2]?.letter ?? '') &&
      !infuseWords.has(word) &&
      !isBackground(word),
  );

const plainClaim = (reading: Reading, ratio: RatioRead, names: Names, weight: number): Claim | undefined => {
  const board = boardOf(reading.items);
  const timed = takeTimes(board);
  takePeople(board, reading.text);
  const items = free(board).filter((item) => !ratio.items.includes(item));
  const draft = draftOf(reading, items, ratio, names);
  for (const item of board.items) {
    const share = draft.mixed && /[p%n]/.test(item.letter);
    if (share || /[gviH]/.test(item.letter) || ratio.items.includes(item)) takeItem(board, item);
  }
  const { blocking } = leftover(board, infuseWords, weight > 0);
  const strange = draft.fields.oil === undefined && !draft.mixed ? strangeOil(board) : undefined;
  if (strange) return refuse(unknownIngredient(strange.word), 2.8);
  if (blocking.length > 0) return weight > 2.7 ? refuse(notPlaced(blocking), 1.1) : undefined;
  return settle(reading, draft, weight, timed);
};

/** How sure it is that the message is about an infusion; herb into the melt says so by itself. */
const weightOf = (reading: Reading, ratio: RatioRead, names: Names): number => {
  const herb = reading.items.some((item) => item.letter === 'i' && herbOf(item) !== undefined);
  return herb && wayOf(reading) === 'melt' ? 2.8 : concerns(reading, ratio, names);
};

/** "Swap the oil for jojoba" after an infusion. */
const swaps = /\b(?:swap|replace|substitute)\b/gi;

const isElsewhere = (reading: Reading): boolean =>
  elsewhere.test(
    (wayOf(reading) === 'melt' ? reading.text.replace(/\bmelts?\b/gi, '') : reading.text).replace(
      lastInfuse(reading) && !reading.items.some(({ letter }) => letter === 'R') ? swaps : /$^/,
      '',
    ),
  );

const strains = /\b(?:strain(?:ed|ing)?|pressed|pressing|infus\w+|steep\w*|macerat\w+)\b/i;
const leadingNo = /^\W*(?:no|nope|nah|oh no|sorry)\b/i;

/** "Without heating", "no stove": the cold way. */
const noHeat =
  /\b(?:without|no|not using|don't use)(?: any| using| the| a)? (?:heat(?:ing)?(?: it)?|warm(?:th|ing)(?: it)?|stove|hob|cooker|oven)\b|\bunheated\b|\bnot heated\b/i;

/** The message as an infusion reads it: steeped oils for what they are, and without what is to be replaced. */
const asInfusion = (heard: Reading): Reading => {
  const reading = noHeat.test(heard.text) ? readAgain(heard.text.replace(noHeat, 'cold'), heard) : heard;
  const before = lastInfuse(reading);
  const all = withSteepedOils(reading.items, strains.test(reading.text));
  const kept = withoutReplaced(all, reading.text, before);
  const items = before && leadingNo.test(reading.text) && kept[0]?.letter === 'N' ? kept.slice(1) : kept;
  return { ...reading, items };
};

/** What a message would mean as a question about steeping a herb in oil. */
export const claimInfuse = (heard: Reading): Claim | undefined => {
  if (isCalledOff(heard.text)) return undefined;
  const reading = bottled.test(heard.text) ? readAgain(heard.text.replace(bottled, '$1 of'), heard) : heard;
  return claimAgain(reading) ?? claimSteeped(reading);
};

/** "A 1 litre bottle of olive oil": as much as it holds. */
const bottled =
  /\b(?:an?|one|the|my|our|this)\s+(\d[\d.,]{0,6}\s?-?(?:ml|cl|dl|l|litres?|liters?|g|kg|kilos?|oz|pints?|cups?))[\s-](?:bottle|jar|can|jug|tub|bag|pack|packet|canister|flask)s? of\b/i;

const claimSteeped = (heard: Reading): Claim | undefined => {
  const reading = asInfusion(heard);
  const own = claimOwnYields(reading);
  if (own || isElsewhere(reading)) return own;
  if (tellsYield(reading)) return claimYield(reading);
  if (isToldOnly(heard.text)) return undefined;
  const ratio = readRatio(reading.items);
  const names = namesOf(reading.items);
  const weight = weightOf(reading, ratio, names);
  const named = ratio.ratio !== undefined && reading.items.some((item) => item.infusedWith !== undefined);
  if (weight === 0 && !named && !lastInfuse(reading)) return undefined;
  const other = otherUse(reading, weight);
  if (other) return refuse(other, 2.8);
  const batch = weight > 0 || named ? batchClaim(reading) : undefined;
  return batch ?? plainClaim(reading, ratio, names, weight);
};
