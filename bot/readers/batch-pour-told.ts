import { latestBatches } from '../../core/bench/latest.ts';
import type { Bench } from '../../core/bench/state.ts';
import type { Reading } from '../reading.ts';
import { bodyBefore } from './batch-pour-before.ts';
import { pourWords } from './batch-words.ts';
import type { BenchReading } from './bench-reading.ts';
import { asksOrPlans } from './bench-text.ts';
import { todayOf } from './days.ts';
import { letters } from './lexicon.ts';

/** A recipe, lines, containers or something spoken of before: not a jar that cracked "when I poured". */
const tellsOfBatch = (reading: Reading, rest: Reading): boolean => {
  if (
    /\b(?:(?:when|once|if|after|while|before) (?:(?:it|we|i|they|you) )?|as (?:it|we|i|they|you) )(?:is |was |were |have |had |being )?poured\b/i.test(
      rest.text,
    )
  )
    return false;
  const named = rest.items.some(({ letter }) => /[RciB]/.test(letter));
  return (
    named ||
    (bodyBefore(reading) !== undefined && /\b(?:it|them|that|this|these|those|the)\b/i.test(rest.text))
  );
};

/** "Poured 300 g of K12 away": thrown out, and no batch. */
const pouredAway = ({ text, items }: Reading): boolean =>
  /\bpoured\b.{0,60}\b(?:away|down the (?:sink|drain)|out(?=\W*$|\W*[,;.]))/i.test(text) &&
  !items.some(({ letter }) => letter === 'c');

const pouredCue =
  /\bpoured\b|\b(?:i|we) (?:do|make|pour|fill|finish) (?!1 )(?=\d+ (?:tin|jar|pot|tube|stick)\b)|\bout of (?:the|my|our|this|(?:today|yesterday|this morning|_+)(?:'s|_*'s)?) (?:pot|pan|jug|kettle|melt)\b|^\W*(?:(?:the|my|our) )?(?:pour|batch) of _+\W*:|\b(?:write|put|enter|note|book|record|log|add) (?:it|this|that|them)\b(?: (?:down|in|into|the|my|our|book|log|please))* as (?:a |one |the |my |our )?(?:pour|batch)\b|\b(?:had (?:the |some |a )?(?:time|chance|pleasure) to|managed to|was able to|were able to|got (?:round |around )?to) (?:pour|make|fill)\b|\bspent\b.{0,40}\bpouring\b|\bbatch (?:is |was |all )?(?:done|made|finished|ready)\b|\b(?:finished|completed|made|did|done with) (?:(?:a|an|the|our|another|one|this|today's|new|whole|small|big|double|triple|first|second) )+batch\b|^\W*(?:new |another |one more )?batch\s*:|\b(?:finished|done|been|were|was) (?:with )?pouring\b|\b(?:did|done|had|record|recorded|log|enter|note|add|new|write down|put down)\b(?: (?:a|the|our|another|new|one|this|today's|in))*\s+pour\b(?! the)|^\W*(?:(?:and|then|also|so|ok|right|today|yesterday|oh)\W+)*(?:(?:another|one more|a|a new|new|the|second|a second|third|a third|today's|yesterday's|my|our|a further|a small|a quick|a big)\s+)+pour\b(?! (?:temp|point|the|at\b|point))|\b(?:came|come) out of (?:the|today's|our|this|yesterday's) pour\b|^\W*pour\s*:|\b(?:today|yesterday|tonight|last night|this (?:morning|afternoon|evening)|_+)(?:'s|_*'s)? (?:pour|batch)\b\W*(?:is|was|:|,|-)|^\W*(?:(?:i|we|just|have|also|then)\W+)*(?:did|done|managed|tonight we managed|we managed)\b/i;
/** "Today I make 10 jars, with lot K12": told in the present, as it is done. */
export const doesNow =
  /\b(?:i|we) (?:(?:also|now|just|again|only) )?(?:make|pour|fill|cast|am (?:making|pouring|filling)|are (?:making|pouring|filling))\b/i;

const doing =
  '(?:made|filled|produced|manufactured|compounded|did|done|prepared|managed|(?:turned|knocked|ran|banged|churned|got) (?:out|off)|whipped up|cooked(?: up)?|cast)';
const doneVerb = new RegExp(`\\b${doing}\\b`, 'i');
const doneFirst = new RegExp(
  `^\\W*(?:(?:ok|right|so|and|then|also|just|now|today|hi|hello|pipkin)\\b\\W*)*${doing}\\b`,
  'i',
);

const somebodyDid = new RegExp(
  `\\b(?:we|i|we've|i've|just|they|she|he|hazel)\\s+(?:have\\s+|has\\s+|just\\s+|also\\s+|then\\s+|now\\s+)*(?:${doing}|melted)\\b`,
  'i',
);

const saysDone = /^\s*(?:is |are |was |all |now )*(?:done|made|filled|finished|poured)\b/i;

/** "Winter balm done. 20 tins", "6 tins of Winter balm the day before yesterday": no verb, and no wish for anything either. */
const isBarePour = (
  { last }: Reading,
  { rest, days, lots }: Pick<BenchReading, 'rest' | 'days' | 'lots'>,
): boolean => {
  const name = rest.items.find(({ letter }) => letter === letters.recipe);
  const counted = /nx?B*[,gv-]*o?B*c/.test(rest.items.map(({ letter }) => letter).join(''));
  if (!name || !counted || lots.some(({ kind }) => kind === 'batch')) return false;
  if (saysDone.test(rest.text.slice(name.to))) return true;
  const [day, second] = days;
  if (
    !day ||
    second ||
    day.role !== 'on' ||
    !rest.items.every(({ letter }) => /^[Rncgvoex,.:;()!A-]$/.test(letter))
  )
    return false;
  const goesOn = last?.topic === 'batch' && last.request.action === 'pour';
  return day.past === day.future
    ? day.past < todayOf(rest) || (goesOn && day.past === todayOf(rest))
    : goesOn;
};

const goesOnLead =
  /^\W*(?:(?:and|then|also|plus|later|another|ok|_+|in the (?:morning|afternoon|evening)|at (?:noon|night))\W+)+/i;
const sameBody = /\b(?:the same|same again|again|another|more)\b/i;

/** "And this afternoon 10 tins": may go on with what was poured before. */
export const mayGoOn = ({ text, items, bench }: Reading): boolean =>
  bench.batches.size > 0 && goesOnLead.test(text) && items.some(({ letter }) => letter === letters.container);

const pouredToday = (bench: Bench, today: string): boolean =>
  !latestBatches(bench, { from: today }).next().done;

const isRightAfter = ({ last }: Reading): boolean =>
  last?.topic === 'batch' && last.request.action === 'pour' && last.done === true;

type Said = Pick<BenchReading, 'rest' | 'days' | 'lots'>;

/** A number of containers, and nothing but what a pour is made of. */
const isOfPour = ({ rest: { items }, days, lots }: Said, today: string): boolean =>
  /nx?[gv]?o?c/.test(items.map(({ letter }) => letter).join('')) &&
  !lots.some(({ kind }) => kind === 'batch') &&
  !days.some(({ past }) => past > today) &&
  items.every(({ letter, word }) => /^[Rncgvoexi%,.:;()!ABIW+-]$/.test(letter) || pourWords.has(word));

/** "And this afternoon 10 tins of 10 g, the same 30 % beeswax 70 % olive oil", after a pour of the same day. */
const isNextPour = (reading: Reading, said: Said): boolean => {
  const { text, items } = said.rest;
  const today = todayOf(said.rest);
  if (!goesOnLead.test(text) || !isOfPour(said, today)) return false;
  const isSame = sameBody.test(text);
  const isNamed = items.some(({ letter }) => /[iR]/.test(letter));
  if (isRightAfter(reading))
    return (isSame || said.days.length > 0) && (isNamed || /\bthe same\b/i.test(text));
  return isNamed && isSame && said.days.length > 0 && pouredToday(reading.bench, today);
};

/** "We're pouring 12 tins on Saturday" is still to come. */
const isAhead = ({ text }: Reading, days: BenchReading['days']): boolean =>
  /(?:\b(?:are|am)|'re|'m) (?:pouring|making|filling)\b/i.test(text) &&
  days.some(({ past, future }) => past !== future);

/** "poured …" was done; "made …" only with a number of containers and a day, lots, or somebody who made them. */
export const isPour = (reading: Reading, { rest, days, lots }: BenchReading): boolean => {
  if (asksOrPlans(rest.text) || pouredAway(rest) || isAhead(rest, days)) return false;
  if (pouredCue.test(rest.text)) return tellsOfBatch(reading, rest);
  const withLots = lots.some(({ kind }) => kind === 'lot');
  if (doesNow.test(rest.text) && withLots && rest.items.some(({ letter }) => letter === 'c')) return true;
  if (isBarePour(reading, { rest, days, lots }) || isNextPour(reading, { rest, days, lots })) return true;
  if (!doneVerb.test(rest.text) || !rest.items.some(({ letter }) => letter === 'c')) return false;
  return doneFirst.test(rest.text) || days.length > 0 || lots.length > 0 || somebodyDid.test(reading.text);
};
