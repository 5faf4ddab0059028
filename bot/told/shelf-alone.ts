import { lotKey } from '../../core/bench/codes.ts';
import { readBench } from '../readers/bench-reading.ts';
import { withHeldNames } from '../readers/held-names.ts';
import type { Item } from '../readers/item.ts';
import { isAmount } from '../readers/stock-amount.ts';
import { isVague } from '../readers/stock-told.ts';
import { oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { tellsPlainly } from './guards.ts';
import type { Told } from './told.ts';

// One amount of one thing on the shelf, and that something was done with it: in whatever words, it went.

const mostTokens = 60;

/** Came in, is there, or is only spoken of: none of what went. */
const otherwise =
  /\b(?:bought|buy|brought|purchased|received|delivered|arrived|came|come|new|another(?= (?:\d|half|bag|bottle|tub|jar|kilo|block|pack|lot))|found|(?<=^\W*|\b(?:i|we|just|have|also|and) )got|gave (?:me|us)|given (?:me|us|to (?:me|us))|sold (?:me|us)|more|added?|adding|weigh\w*|scales?|balance|count\w*|left|remain\w*|there (?:is|are|was|were)|is really|stands|costs?|paid|price|contains?|holds?|recipe|save|parts?|poured|batch|balms?|salves?|tins|jars|pots|per|each|below|under|warn\w*|label|best before|strained|infused|steep\w*|maceration|fits?|enough)\b/i;

/** Something was done: by its ending, or a verb that has none. */
const done =
  /\b(?:\p{L}{3,}(?:ed|ied)|took|taken|went|gone|gave|given|lent|put|made|spread|spent|ate|eaten|drank|burnt|fed|cut|had to (?:use|take|give)|was|were|got through|let (?:him|her|them) have|wiped|got|blew|ran|fell|broke|tore|swept|stole|stolen|sank|flew|shook|sat|stood|bit|chewed|licked)\b/iu;
const wasted =
  /\b(?:spil\w+|lost|leak\w+|drip\w+|ran (?:out|away|down|over|on)|fell|dropp?ed|dropped|broke|binned|thrown|threw|rancid|mould\w*|spoilt|spoiled|ruined|floor|drain|bin|compost|burnt|burned|melted away|mice|mouse|moths?|rats?|knocked|tipped|contaminated|dirty|discarded|wasted|evaporated|smashed|stole|stolen|chewed|licked|washed away)\b/i;

const toWhat = /\b(?:into|onto|on|for|to|in|as|with|at|over|by|from|while|when|because)\b/i;

const heldOf = ({ bench }: Reading, item: Item): boolean =>
  !item.generic &&
  item.ingredients?.length === 1 &&
  [...bench.lots.values()].some(({ ingredient, leftG }) => ingredient === item.ingredients?.[0] && leftG > 0);

/** The one thing a message is of: a lot of the shelf, or an ingredient there is some of. */
const thingIn = (reading: Reading): string | undefined => {
  const { lots, rest } = readBench(reading);
  const codes = [...new Set(lots.map(({ code }) => code))];
  const names = rest.items.filter(({ letter, generic }) => letter === 'i' && !generic);
  if (codes.length > 1 || lots.some(({ kind }) => kind !== 'lot')) return undefined;
  const [code] = codes;
  if (code !== undefined) {
    const own = reading.bench.lots.get(lotKey(code))?.ingredient;
    return names.every(({ ingredients }) => own !== undefined && ingredients?.includes(own))
      ? code
      : undefined;
  }
  const [name, ...more] = names;
  if (!name || more.some(({ ingredients }) => ingredients?.join() !== name.ingredients?.join()))
    return undefined;
  return heldOf(reading, name) ? name.word : undefined;
};

const isOther = ({ letter }: Item, at: number, all: readonly Item[]): boolean =>
  /[RM%tn]/.test(letter) || (letter === 'c' && /[nx]/.test(all[at - 1]?.letter ?? ''));

/** Still to come, not done, or only supposed, anywhere in a message. */
const ahead =
  /\b(?:will|would|shall|should|might|may|could|can|tomorrow|tonight|if|unless|maybe|perhaps|probably|plan\w*|going to|want\w*|wish\w*|hop(?:e|ing)|suppose\w*|imagine|joke|joking|not|never|no|undo|mistake|wrong|cancel|almost|nearly|it is said|it's said|they say|people say|(?:is|are) said|rumou?r|next|every|always|usually)\b|n['’]t\b|['’]ll\b/i;

/** The clause an amount stands in. */
const clauseOf = (text: string, { from, to }: Item): string => {
  const stops = [...text.matchAll(/[,.;:!](?=\s)|\b(?:so|because|but|and then)\b/gi)].map(
    ({ index }) => index,
  );
  const start = stops.filter((stop) => stop < from).at(-1) ?? 0;
  return text.slice(start, stops.find((stop) => stop >= to) ?? text.length);
};

/** "And another 20 g of shea for my lips", right after some was used. */
const goesOn = ({ last }: Reading, text: string): boolean =>
  last?.topic === 'stock' &&
  last.request.action === 'taken' &&
  /^\W*(?:(?:oh|ah|ok|and|then|plus|also)\W+)*(?:another|and|also|plus)\b/i.test(text);

/** "Another young mother got 15 g". */
const otherGot = /^\W*(?!(?:i|we)\b)\p{L}[^,.;\d]{1,40}\b(?:got|took|had|received|ate|drank)\s*\d/iu;

const isGone = (text: string, amount: Item, goes: boolean): boolean => {
  const plain = (goes ? text.replace(/\b(?:another|more|also|plus)\b/i, '') : text).replace(
    /\bhad to\b/gi,
    '',
  );
  const clause = clauseOf(text, amount).replace(/\bhad to\b/gi, '');
  return (
    !otherwise.test(plain) &&
    !ahead.test(plain) &&
    (goes || done.test(text)) &&
    (toWhat.test(plain) || otherGot.test(plain)) &&
    tellsPlainly(clause)
  );
};

/** "A cup with 30 g of it": the cup is what it was in. */
const amountsIn = ({ items, text }: Reading): readonly Item[] => {
  const all = items.filter(isAmount);
  const weighed = all.filter(({ letter }) => letter === 'g');
  const isVessel = ({ letter, from }: Item): boolean =>
    letter === 'v' && /^(?:an?|the|one)\b/i.test(text.slice(from));
  return weighed.length > 0 ? all.filter((item) => !isVessel(item)) : all;
};

const went = (reading: Reading, thing: string): string | undefined => {
  const { rest, days } = readBench(reading);
  const { text } = rest;
  const [amount, second] = amountsIn(rest);
  if (!amount || second || isVague(amount, text) || rest.items.some(isOther)) return undefined;
  const goes = goesOn(reading, text);
  if (!isGone(text, amount, goes)) return undefined;
  const before = goes && reading.last?.request.how === 'wasted';
  const verb = wasted.test(text) || before ? 'threw away' : 'used';
  const on = days[0] ? ` on ${days[0].past}` : '';
  const of = reading.bench.lots.has(lotKey(thing)) ? 'of ' : '';
  return `${verb} ${goes ? 'another ' : ''}${text.slice(amount.from, amount.to)} ${of}${thing}${on}`;
};

const dateWord =
  /\b(?:date|dated|best|bbe?|expir\w*|exp|label|keeps?|good|until|till|use by|lasts?|stamped|printed)\b/i;
/** A lot with a day ahead and a word of dates: what its best before is, or should have been. */
const dated = (reading: Reading): string | undefined => {
  const { rest, days, lots, today } = readBench(reading);
  const [day, second] = days.filter(({ past, role }) => role === 'best-before' || past > today);
  const isBare = !rest.items.some((item) => isAmount(item) || isOther(item, 0, []));
  if (!day || second || days.length > 1 || !isBare || !dateWord.test(rest.text + day.said)) return undefined;
  const [lot] = lots;
  const isAhead =
    /\b(?:will|would|shall|might|may|could|if|unless|maybe|perhaps|probably|plan\w*|pour\w*|use [^b]|warn|remind|ask|wait)\b/i;
  return lot && !isAhead.test(rest.text) ? `${lot.code} is best before ${day.future}` : undefined;
};

const readAlone = (message: Reading): Told | undefined => {
  if (message.bench.lots.size === 0 || message.tokens.length > mostTokens || message.text.includes('?'))
    return undefined;
  const { reading } = withHeldNames(message);
  const { days, today, trouble, lots } = readBench(reading);
  const thing = trouble ? undefined : thingIn(reading);
  if (thing === undefined || days.length > 1) return undefined;
  const isAhead = days.some(({ past, role }) => role === 'best-before' || past > today);
  const plain = isAhead ? (lots.length > 0 ? dated(reading) : undefined) : went(reading, thing);
  if (plain === undefined) return undefined;
  return { plain, reading: readAgain(plain, reading), besides: [], verb: '', slots: [] };
};

/** What went of one thing on the shelf, in any words; undefined where it may be otherwise. */
export const shelfAlone: (message: Reading) => Told | undefined = oncePerReading(readAlone);
