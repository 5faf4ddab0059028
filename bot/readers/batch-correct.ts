import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readingWithout } from '../understand.ts';
import { isAnew, sizeAnew } from './batch-anew.ts';
import { askedToPutRight, countRight, dayRight, inTheEnd } from './batch-count-right.ts';
import { takePourFigures } from './batch-figures.ts';
import { isTaking } from './batch-gone-places.ts';
import { howIn } from './batch-gone-verbs.ts';
import { batchMeant } from './batch-meant.ts';
import { pourWords, whatWrong, whichBatch } from './batch-words.ts';
import type { BenchReading } from './bench-reading.ts';
import { asksOrPlans, longestNote, readBenchText } from './bench-text.ts';
import { containerWord } from './cost-prices.ts';
import { lotsIn } from './lots.ts';
import { boardOf, sizeOf, takeContainers } from './target.ts';

const cue =
  /\b(?:correct|correction|correcting|fix|amend|put right)\b|^\W*(?:(?:please|pls|ok|and|hi|hello|now|pipkin|(?:can|could|would|will) you(?: please)?)\b\W*)*(?:change|update|edit)\b/i;

/** "26-KIVO was 28 tins, I miscounted": a count or a day of a batch that is named, and nothing that happened to it. */
const numberSoon =
  '(?=.{0,16}(?:\\d|\\b(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\w+teen|twenty|thirty|forty|fifty|a dozen)\\b))';
const toldAnew = new RegExp(
  [
    `_\\W{0,2}(?:had|has|have|made|gave|came (?:out )?(?:to|at|as)|turned out (?:to be |as )?|ended up (?:as |with |being )?|yielded)\\b${numberSoon}`,
    '\\brecounted\\b|\\bcounted\\b.{0,24}\\b(?:again|twice|once more)\\b|\\bin the end\\b',
    `\\b(?:we|i|it|there) (?:only |really |actually )?(?:had|have|has)\\b(?! (?:just |also |now )?(?:to|\\w+ed|set|put|kept|given|sold|taken|got|left|sent|brought|thrown|broken|lost)\\b)${numberSoon}`,
    '(?:_\\W{0,2}|\\b(?:it|that|there|they|these|those|date|day|count|number|total|pour|tins|jars|pots|tubes|sticks|really|only) )(?:was|were)\\b|\\b(?:should (?:be|have been)|actually|really|only|miscounted|counted (?:wrong|again)|recounted|short|wrong|mistake|(?:poured|made) (?:it|this|that|them) (?:on\\b|(?=_))|not on\\b)\\b',
  ].join('|'),
  'i',
);
/** "26-KIVO was 38 pots, two broke while filling": the count of the batch itself, whatever became of the others. */
const countedAnew =
  /^[^_]{0,30}_+\W{0,2}(?:was|were|had|made|came (?:out )?(?:to|as)|turned out (?:to be )?)\s+(?:(?:only|really|actually|just|in fact)\s+)*[\w-]{1,16}\s+(?:tins?|jars?|pots?|sticks?|tubes?)\b(?!\s+(?:sold|given|returned|lost|gone|broken|back|short))/i;

/** "It was 17 tins of 26-KIVO, one was dented". */
const countedOf =
  /^[^_]{0,30}\b(?:it|that|there) (?:was|were) (?:(?:only|really|actually|just|in fact) )*[\w-]{1,16} (?:tins?|jars?|pots?|sticks?|tubes?) (?:of|in) (?:the |batch )*_+\W*(?:$|[,;.] ?(?:one|two|three|\d|(?:i|we) (?:had )?(?:mis|counted)))/i;

/** "27-KUFE: 22 tins, not 24": the code and the count, and nothing else. */
const bareCount = /^[^\p{L}_]*_+[\s:,-]*[\w-]+ (?:tins?|jars?|pots?|sticks?|tubes?)\W*$/iu;

/** "Only 20 tins left" tells what is here, and not how many were poured. */
const here =
  /\b(?:left|remaining|remain|on the shelf|in stock|in the (?:cupboard|box|house|drawer))\b(?!.*\b(?:poured|miscounted|recounted)\b)/i;

/** "26-KIVO was 16". */
const wasSoMany = /^[^_]{0,20}_[_\s,:;-]*(?:was|were|had|made) (?:only |really |actually )?[\w-]{1,12}\W*$/i;

const isToldAnew = (reading: Reading, { rest, lots, days }: BenchReading): boolean =>
  lots.some(({ kind }) => kind === 'batch') &&
  !here.test(rest.text) &&
  (toldAnew.test(rest.text) || (reading.denies === true && bareCount.test(rest.text))) &&
  (/\bpour(?:ed)?\b|\b(?:was|were|is) (?:\w+ )?(?:made|dated)\b|\bmade (?:it|this|that|them) on\b|\bdate\b.{0,24}\bwrong\b|\bwrong date\b/i.test(
    rest.text,
  )
    ? days.length > 0 && !rest.items.some(({ letter }) => /[nciR]/.test(letter))
    : (rest.items.some(({ letter }) => letter === 'c') ||
        /\bcount\b/i.test(rest.text) ||
        wasSoMany.test(rest.text)) &&
      rest.items.some(({ letter }) => letter === 'n') &&
      (countedAnew.test(rest.text) ||
        countedOf.test(rest.text) ||
        howIn(rest.text, isTaking(rest.text)) === undefined)) &&
  !asksOrPlans(reading.text.replace(notThat, ' ').split(/[,;]/)[0] ?? '');

/** "26-KIVO: weighed out 640 g, filled 612 g": figures that were not told with the pour. */
const isFigureTold = (reading: Reading, bench: BenchReading): boolean => {
  const { lots, rest } = bench;
  if (lots.length !== 1 || lots[0]?.kind !== 'batch' || asksOrPlans(reading.text)) return false;
  const { items } = takePourFigures(rest);
  const others = rest.items.filter((item) => !items.includes(item));
  return (
    items.length > 0 &&
    others.every((item) => isAnew(item) || /^[uFAI]$/.test(item.letter) || pourWords.has(item.word)) &&
    !others.some(({ letter }) => /[ngvR]/.test(letter))
  );
};

/** "26-KIVO: best before should be 31 December": its date alone. */
const isDateTold = (reading: Reading, { lots, days, rest }: BenchReading): boolean =>
  lots.length === 1 &&
  lots[0]?.kind === 'batch' &&
  days.length === 1 &&
  days[0]?.role === 'best-before' &&
  rest.items.every(
    (item) =>
      isAnew(item) || /^(?:best|before|bb|bbe|expiry|expires|use|by|keeps|until|set)$/.test(item.word),
  ) &&
  !rest.items.some(({ letter }) => /[ngvc]/.test(letter)) &&
  !asksOrPlans(reading.text);

/** "The tins of 26-KIVO hold 17 g": what one holds, of a batch that is named. */
const isSizeTold = (reading: Reading, bench: BenchReading): boolean =>
  bench.lots.length === 1 &&
  bench.lots[0]?.kind === 'batch' &&
  bench.rest.items.every(isAnew) &&
  !bench.rest.items.some(({ letter }) => letter === 'n') &&
  sizeAnew(bench, reading.settings.region) !== undefined &&
  !asksOrPlans(reading.text);

/** "… not 30", "not on 3 May": what it was not. */
const notThat =
  /\b(?:it|that|there) (?:wasn'?t|weren'?t|was not|were not) (?:\d{1,3}|\w+)(?: tins?| jars?| pots?| tubes?| sticks?)?(?: (?:that )?(?:i|we) (?:poured|made|filled))?,?|\b(?:was|were|is)(?:n'?t| not) (?:made |poured )?(?:on )?(?:the )?_[^,;.!?]{0,20}|,?\s*\b(?:and )?(?:not|instead of|rather than)\s+(?:on\s+)?(?:the\s+)?(?:\d|_)[^,;.!?]{0,20}/gi;

/** Why, in the maker's own words: what stands after the code, with the figures in it. */
const reasonOf = (reading: Reading, from: number): string => {
  const after = reading.text.slice(from).replace(/^[\s:,;.-]+/, '');
  const before = reading.text.slice(0, from);
  const said = after === '' ? before.replace(cue, '') : after;
  return said.trim().slice(0, longestNote);
};

/** The number of the last event about the batch that this member has seen: shown just before, or now. */
const seenOf = (reading: Reading, lot: string): number | undefined => {
  const { last } = reading;
  const shown = last?.topic === 'batch' && last.request.action === 'show' ? last.request : undefined;
  const same = typeof shown?.lot === 'string' && lotKey(shown.lot) === lotKey(lot);
  if (same && typeof shown.seen === 'number') return shown.seen;
  return reading.bench.batches.get(lotKey(lot))?.seq;
};

type Changes = Readonly<Record<string, unknown>>;

/** "The tins hold 17 g" is said of one of them, unless that is nearer to what all of them held. */
const isPerTin = (reading: Reading, bench: BenchReading, lot: string): boolean => {
  const batch = reading.bench.batches.get(lotKey(lot));
  const held = sizeAnew(bench, reading.settings.region);
  return (
    held !== undefined && batch !== undefined && held.amount * 2 < (batch.size?.amount ?? 0) * batch.count
  );
};

/** "Pots of 26-KIVO was 22": a number by itself, after what it was. */
const loneCount = ({ rest }: BenchReading): number | undefined => {
  const [number, second] = rest.items.filter(({ letter }) => letter === 'n');
  const before = rest.text.slice(Math.max(0, (number?.from ?? 0) - 30), number?.from ?? 0);
  const isSaid = /\b(?:was|were|is|are|be|been|only|actually|really|made|counted|to|no,)\s+$/i.test(before);
  const isWhole = Number.isInteger(number?.value) && !rest.items.some(({ letter }) => /[gv]/.test(letter));
  return number && !second && isSaid && isWhole ? number.value : undefined;
};

/** "26-KIVO was 1 October": its day alone. */
const isDayTold = ({ lots, days, rest }: BenchReading): boolean =>
  lots.length === 1 &&
  lots[0]?.kind === 'batch' &&
  days.length === 1 &&
  days[0]?.role === 'on' &&
  /^\W*_+\W{0,2}(?:was|is|should be)(?: from| of| on)?[\s_.]*$/i.test(rest.text);

const changesIn = (reading: Reading, bench: BenchReading, lot: string): Changes => {
  const held = isPerTin(reading, bench, lot) ? sizeAnew(bench, reading.settings.region) : undefined;
  const { figures, items } = held ? { figures: {}, items: [] } : takePourFigures(bench.rest);
  const board = boardOf(bench.rest.items.filter((item) => !items.includes(item)));
  const { count, size, container } = takeContainers(board);
  const lots = bench.lots.filter(({ code }) => lotKey(code) !== lotKey(lot)).map(({ code }) => code);
  return defined({
    ...figures,
    count: count?.value ?? loneCount(bench),
    size: held ?? (size && sizeOf(size, reading.settings.region)),
    container: container === undefined ? undefined : containerWord(container),
    on: bench.days.find(({ role }) => role === 'on')?.past,
    bestBefore: bench.days.find(({ role }) => role === 'best-before')?.future,
    lots: lots.length > 0 ? lots : undefined,
    expiredToo:
      /\b(?:past (?:its|their|the) date|all the same|even though)\b/i.test(reading.text) || undefined,
  });
};

/** "update recipe Winter balm: …" changes a recipe, not a batch of it. */
const isElsewhere = ({ text, items }: Reading): boolean =>
  !/\b(?:correct|correction)\b/i.test(text) ||
  /\brecipe\b/i.test(text) ||
  items.some(({ letter }) => /[%p]/.test(letter));

/** No batch is named: asked back about where the message speaks of one. */
const unnamed = ({ text }: Reading, { rest }: BenchReading, trouble: Trouble): Claim | undefined =>
  /\bbatch\b/i.test(text) && !rest.items.some(({ letter }) => letter === 'i')
    ? refuse(trouble, 2.7)
    : undefined;

const withoutNot = (reading: Reading): ReturnType<typeof readBenchText> => {
  const { text } = readBenchText(reading).bench.rest;
  const places = [...text.matchAll(notThat)].map((match) => ({
    from: match.index + (/^[\s,]/.test(match[0]) ? 1 : 0),
    to: match.index + match[0].length,
  }));
  return readBenchText(places.length === 0 ? reading : readingWithout(reading, places));
};

const whyOf = (said: Reading, from = lotsIn(said)[0]?.to ?? said.text.length): string => reasonOf(said, from);

const putsRight = (reading: Reading, bench: BenchReading): boolean =>
  cue.test(reading.text) ||
  isToldAnew(reading, bench) ||
  isSizeTold(reading, bench) ||
  isFigureTold(reading, bench) ||
  isDateTold(reading, bench) ||
  isDayTold(bench);

/** "correct 26-KIVO: it was 22 tins, two spilled" */
export const claimCorrect = (heard: Reading): Claim | undefined => {
  const said = askedToPutRight(heard, cue);
  if (/\?/.test(said.text)) return undefined;
  const reading = inTheEnd(said) ?? countRight(said) ?? dayRight(said) ?? said;
  const { bench } = withoutNot(reading);
  if (!putsRight(reading, bench)) return undefined;
  const meant = batchMeant(reading, bench, true);
  if (meant.said ? meant.said.kind === 'lot' : isElsewhere(reading)) return undefined;
  if (meant.lot === undefined) return unnamed(reading, bench, meant.trouble ?? whichBatch);
  const trouble = bench.trouble ?? meant.trouble;
  if (trouble) return refuse(trouble, 3.4);
  const changes = changesIn(reading, bench, meant.lot);
  if (Object.keys(changes).length === 0) return refuse(whatWrong, 3.4);
  const why = whyOf(said, reading === said ? meant.said?.to : undefined);
  const seen = seenOf(reading, meant.lot);
  return claim(
    { action: 'correct', lot: meant.lot, why, ...changes, ...defined({ seen }) },
    3.5,
    meant.assumed,
  );
};
