import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { tellsPlainly } from '../told/guards.ts';
import { readingWithout } from '../understand.ts';
import { isBackground } from './background-words.ts';
import { type BenchReading, lotsWithin } from './bench-reading.ts';
import type { BenchText } from './bench-text.ts';
import { clausesAt } from './clauses.ts';
import type { Item } from './item.ts';
import { gramsRead, isAmount, nameRead } from './stock-amount.ts';
import { dayIn, isVague, isWhatIs, reasonIn } from './stock-told.ts';
import { howMuchTaken, whichStock } from './stock-words.ts';

const wasteCue =
  /\b(?:threw|thrown(?! in\b)|throw|(?:dripped|dribbled|seeped|oozed) (?:away|out|off|down)|evaporated|toss(?:ed)?|chuck|dump|discard|spillages?|breakages?|wastage|loss(?:es)? (?:through|by|of|on|from|due)|out it (?:goes|went)|lose|lost|missing|bin(?= (?:\d|the |all |_))|(?:wrote|write|written) off|(?:knocked|tipped|fell|kicked) (?:it |them |_+ )?over|leaked|ruined|spoilt|spoiled|fell (?:on|off|down|out|in)|(?:on|over|across|under) the (?:floor|carpet|ground|lino|rug|worktop|hob|table|tiles|stairs)|(?<!\b(?:label|sticker|tag|paper|lid)\b.{0,24})got wet|(?<=\d ?(?:k?g|kilos?|grams?|ml|l|oz)(?: of _+| _+)? )(?:(?:is|are|was|were|went|has|have) )?(?:all )?gone|(?:bottle|tub|jar|tin|can|canister|bag) (?:fell|slipped|dropped|tipped|broke|burst|split|leaked)\b|binned|wasted|waste|discarded|spilled|spilt|chucked|dumped|dispos(?:e|ed|ing)|scrap(?:ped)?|ditch(?:ed)?|tipped|got rid of|(?:mouse|mice|rats?|ants|dog|cat|moths) (?:has |have |had )?(?:ate|eaten|got at|nibbled)|(?:gone|went|turned) (?:mouldy|rancid|off|bad)(?!.{0,60}\b(?:left|remain|still))|(?:in|into|to|on) the (?:bin|rubbish|trash|garbage|compost|compost heap|skip)|down the (?:drain|sink)|poured\b(?:(?!\bweigh).){0,60}\b(?:away|out))\b/i;
const useCue =
  /\b(?:used|took(?! in\b| (?:the )?(?:lid|cap|top|seal|cork) off)|taken(?! in\b)|use up|gave away|(?:internal|own|private|other) use|went into|needed|required|borrowed|minus|melted(?= \d)|(?:take|took|knock|subtract|deduct|remove)\b(?! (?:the )?(?:lid|cap|top|seal|cork) off)(?=.{1,30}\b(?:off|from|out)\b)|made (?:some |a few |[a-z]+ )?(?:candles?|soaps?|polish|wraps?|firelighters)\b)\b|(?:^\W*|\b(?:i|we|i've|we've|just|also|and|then|have) )(?:gave|given|lent|sold|donated|swapped)(?! (?:me|us)\b)|\d ?(?:k?g|grams?|ml|oz)(?: of)? [^\d,.;]{2,24} (?:gone|spent) (?:on|for|into)\b/i;
/** A share of a lot is no amount, and not all of it. */
const shareOf =
  /\b(?:half|third|quarter|part|some|most|bit|little|lots|much|few) (?:of|the)\b|\b(?:partly|half-?way)\b/i;
const allOf =
  /\b(?:all|the rest|the whole|whole|entire|the lot|everything|what(?:ever)?(?:'s| is| was)? left|remaining|the last|the remains?)\b/gi;

/** "The sunflower oil is used up" says all of it, where that is one lot. */
const emptied =
  /\b(?:is|are|was|were|it's|now|all|has been)\b.{0,12}\b(?:used up|finished|empty|gone)\b|\bused up (?:all |the last of )?(?:the|our)\b|\b(?:ran|have run|'ve run|has run) out of\b|\b(?:there(?:'s| is| are)|(?:we|i)(?:'ve| have)(?: got)?|that leaves(?: us)?) no more\b/i;

/** "20 g of K12 for the candle lesson" */
const takenFor =
  /^\W*\d[\d.,]* ?(?:k?g|grams?|kilos?|ml|oz) (?:out )?(?:of )?_+ (?:(?:for|into|in) (?:the|my|our|an?|\w+ing)|for \p{L}{2,})\b/iu;
const notQuite = /\b(?:nearly|almost|not|soon|half|about to|will be|from the (?:shop|market|list))\b/i;

/** Of an ingredient; "K12 is empty" is a count. */
const isEmptied = ({ rest, lots }: BenchReading): boolean =>
  emptied.test(rest.text) &&
  !notQuite.test(rest.text) &&
  (lots.length === 0 ||
    (/\bused up\b/i.test(rest.text) && rest.items.some(({ letter }) => letter === 'i'))) &&
  !rest.items.some(({ letter }) => /[Rcgvn]/.test(letter));

const isOnlyLot = (reading: Reading, ingredient: string | undefined): boolean =>
  [...reading.bench.lots.values()].filter((lot) => lot.ingredient === ingredient && lot.leftG > 0).length ===
  1;

const isShelf = ({ lots }: BenchReading): boolean => lots.some(({ kind }) => kind === 'lot');

/** "2 litres of lye went into K12": an amount of something else. */
const isOfOther = ({ rest: { items, text } }: BenchReading): boolean =>
  items.some((item, at) => {
    const [of, what] = items.slice(at + 1);
    if (!isAmount(item) || of?.letter !== 'o' || what?.letter !== 'w') return false;
    return !isBackground(what.word) && !text.slice(of.to, what.from).includes('_');
  });

/** "31 g of K12", "50 g out of it": some of a lot, unless it says that it is what is there. */
const ofLot =
  /^ ?(?:worth )?(?:out )?(?:of|from|off|out of) (?:(?:the|my|our|lot|it|that|this)\b ?)*(?:_|[,;.]|(?:is|was|went|has|have|are|were|got|for|into|all)\b)/i;
const isThere =
  /\b(?:bought|received|arrived|came|count\w*|restock\w*|scales?|stocktake|(?:i|we)(?:'ve)? got)\b/i;
const thereBefore =
  /\b(?:have|has|had|there(?:'s| is| are| were| was)|only|still|holds?|contains?|weigh\w*|really|is|are|down to)\s+(?:(?:only|still|just|now|about|exactly|got)\s+)*$/i;
const thereAfter = /\b(?:left|remain\w*|on the shelf|in stock|in total)\b/i;
const saysThere = ({ from, to }: Item, text: string): boolean =>
  isThere.test(text) ||
  thereBefore.test(text.slice(Math.max(0, from - 40), from)) ||
  thereAfter.test(text.slice(to));

/** "Half of K12, 195 g". */
const shareBefore =
  /\b(?:half|third|quarter|some|part|most|bit|lump|piece|chunk) (?:of|from|off) (?:the )?_+[\s,(]*(?:about )?$/i;

export const isPartOf = (item: Item, { rest: { text }, lots }: BenchReading): boolean => {
  const { from, to } = item;
  return (
    (ofLot.test(text.slice(to, to + 40)) || shareBefore.test(text.slice(Math.max(0, from - 40), from))) &&
    (lots.some((lot) => lot.kind === 'lot' && lot.from >= to && lot.from - to < 24) ||
      lots.some((lot) => lot.to < to)) &&
    !saysThere(item, text)
  );
};

const clauseEnd = /[,.;:](?=\s)|\b(?:so|because|and|but|since)\b|$/gi;

/** Some of one lot went, in whatever words. */
const wentSomehow = (bench: BenchReading): boolean => {
  const [amount, second] = bench.rest.items.filter(isAmount);
  if (!amount || second || !isPartOf(amount, bench)) return false;
  const stops = [...bench.rest.text.matchAll(clauseEnd)].map(({ index }) => index);
  const from = stops.findLast((at) => at <= amount.from) ?? 0;
  return tellsPlainly(
    bench.rest.text.slice(
      from,
      stops.find((at) => at >= amount.to),
    ),
  );
};

/** "SAO-1: -150 g (for the visitors)". */
const takesOff = ({ items, text }: Reading): boolean =>
  items.some(
    (item) =>
      isAmount(item) &&
      /_\W{0,3}[-]\s?$/.test(
        text.slice(Math.max(0, item.from - 8), item.from + ((item.value ?? 0) < 0 ? 1 : 0)),
      ),
  );

/** "The case of an old clock" counts no cases. */
const isElsewhere = ({ letter, word }: Item, at: number, all: readonly Item[]): boolean =>
  letter === 'R' ||
  (letter === 'c' &&
    (/[nxd]/.test(all[at - 1]?.letter ?? '') || /s$/.test(word) || !/[oi]/.test(all[at + 1]?.letter ?? 'o')));

/** "The label got wet, but it is best before June" tells of the date. */
const tellsDate = ({ days, rest }: BenchReading): boolean =>
  days.some(({ role }) => role === 'best-before') && !rest.items.some(isAmount);

const howTaken = (bench: BenchReading): 'wasted' | 'used' | undefined => {
  const { rest, lots } = bench;
  if (lots.some(({ kind }) => kind === 'batch') || isOfOther(bench)) return undefined;
  if (!isShelf(bench) && rest.items.some(isElsewhere)) return undefined;
  if (tellsDate(bench)) return undefined;
  if (wasteCue.test(rest.text)) return 'wasted';
  if (takesOff(rest)) return 'used';
  if (isEmptied(bench) || takenFor.test(rest.text)) return 'used';
  if (rest.items.some(isElsewhere)) return undefined;
  return useCue.test(rest.text) || wentSomehow(bench) ? 'used' : undefined;
};

/** What was taken of one lot, or of one ingredient from its oldest lots on. */
interface Take {
  readonly lot?: string;
  readonly ingredient?: string;
  readonly herb?: string;
  readonly grams?: number;
  readonly all?: true;
}

interface TakeRead {
  readonly take: Take;
  readonly assumed?: string;
  readonly trouble?: Trouble;
}

type Clause = ReturnType<typeof clausesAt>[number];

const within = <T extends { readonly from: number }>(
  list: readonly T[],
  { from, to }: Clause,
): readonly T[] => list.filter((each) => each.from >= from && each.from < to);

const targetIn = (bench: BenchReading, clause: Clause): Take | undefined => {
  const [lot] = lotsWithin(
    bench.lots.filter(({ kind }) => kind !== 'batch'),
    clause,
  );
  if (lot) return { lot: lot.code };
  const all = within(
    bench.rest.items.filter(({ letter }) => letter === 'i'),
    clause,
  );
  // "Walnut oil to oil a clock" names one thing.
  const named = all.filter(({ generic }) => !generic);
  const [item, second] = named.length > 0 ? named : all;
  const read = second || !item ? undefined : nameRead(item);
  return read?.id === undefined ? undefined : { ingredient: read.id, ...defined({ herb: read.herb }) };
};

/** Without an amount: all of it, where that is said, or where a whole lot was thrown out. */
const takeWhole = (
  reading: Reading,
  bench: BenchReading,
  text: string,
  target: Take,
  how: string,
): TakeRead => {
  if (shareOf.test(bench.rest.text)) return { take: target };
  const whole = how === 'wasted' && target.lot !== undefined && !said(allOf, text);
  const gone = isEmptied(bench) && (target.lot !== undefined || isOnlyLot(reading, target.ingredient));
  const all = whole || gone || said(allOf, text) ? (true as const) : undefined;
  return {
    take: { ...target, ...defined({ all }) },
    ...(whole ? { assumed: `I took all that was left of ${target.lot ?? ''}.` } : {}),
  };
};

const takeIn = (reading: Reading, bench: BenchReading, clause: Clause, how: string): TakeRead | undefined => {
  const target = targetIn(bench, clause);
  if (!target) return undefined;
  const [amount] = within(bench.rest.items.filter(isAmount), clause);
  if (!amount) return takeWhole(reading, bench, clause.text, target, how);
  const known = target.lot === undefined ? undefined : reading.bench.lots.get(lotKey(target.lot));
  const read = gramsRead(amount, known?.ingredient ?? target.ingredient ?? '', reading.settings.region);
  return {
    take: { ...target, ...defined({ grams: read.grams && Math.abs(read.grams) }) },
    ...defined({ assumed: read.assumed, trouble: read.trouble }),
  };
};

const said = (pattern: RegExp, text: string): boolean => new RegExp(pattern.source, 'i').test(text);

/** Where each take begins: at its amount; at its code where there are several and no amounts. */
const marksIn = (bench: BenchReading): readonly number[] => {
  const amounts = bench.rest.items.filter(isAmount).map(({ from }) => from);
  const alls = [...bench.rest.text.matchAll(allOf)].map(({ index }) => index);
  const marks = [...amounts, ...alls].toSorted((a, b) => a - b);
  return marks.length > 0 ? marks : bench.lots.map(({ from }) => from);
};

const readTakes = (reading: Reading, bench: BenchReading, how: string): readonly TakeRead[] => {
  const clauses = clausesAt(bench.rest.text, marksIn(bench));
  const read = clauses.flatMap((clause) => takeIn(reading, bench, clause, how) ?? []);
  if (read.length === clauses.length) return read;
  // One amount and one name, wherever they stand.
  const whole = { from: 0, to: bench.rest.text.length, text: bench.rest.text, mark: 0 };
  const amounts = bench.rest.items.filter(isAmount);
  return amounts.length > 1 || bench.lots.length > 1 ? [] : [takeIn(reading, bench, whole, how) ?? []].flat();
};

const isTold = ({ take: { grams = 0, all } }: TakeRead): boolean => grams > 0 || all === true;

const why =
  /(?:[,;]| -)\s+(?:there (?:was|were|had)|it (?:had|got)|some(?:body|one) had|i (?:found|saw)) [^_]*$/i;

/** "…, there was a drop of water in the jug": no amount of what was thrown out. */
const withoutWhy = (bench: BenchReading): BenchReading => {
  const from = bench.rest.text.search(why);
  const isFirst = from < 0 || bench.lots.some((lot) => lot.from > from);
  return isFirst || !bench.rest.items.some((item) => isAmount(item) && item.to <= from)
    ? bench
    : { ...bench, rest: readingWithout(bench.rest, [{ from: from + 1, to: bench.rest.text.length }]) };
};

/** "There was 30 g left, threw it away". */
const allThrown =
  /\b(?:threw|thrown?|bin(?:ned)?|chuck(?:ed)?|toss(?:ed)?|poured|tipped|dumped|used|gave)\b[^.;_]{0,12}\b(?:it|that|them|all|the lot)\b/i;

/** "Used 20 g, 480 g left": what there is besides; undefined where that is all there is. */
const withoutLeft = (bench: BenchReading): BenchReading | undefined => {
  const amounts = bench.rest.items.filter(isAmount);
  const left = amounts.filter(
    (item) => isWhatIs(item, bench.rest.text) && !allThrown.test(bench.rest.text.slice(item.to)),
  );
  if (left.length === 0) return bench;
  // "Half a cup ran out; it weighs 610 g now": what the scale says is surer.
  const isSurer = amounts.every((item) => left.includes(item) || isVague(item, bench.rest.text));
  return isSurer ? undefined : { ...bench, rest: readingWithout(bench.rest, left) };
};

const nothingTold = (how: string, bench: BenchReading): Claim | undefined =>
  how === 'wasted' && bench.rest.items.some(isAmount) ? refuse(whichStock, 2.6) : undefined;

/** "threw away 50 g of K12, rancid", "used 30 g beeswax for a test", "binned 50 g of K12 and 20 g of G7". */
export const claimTaken = (reading: Reading, text: BenchText): Claim | undefined => {
  const { note } = text;
  const bench = withoutLeft(withoutWhy(text.bench));
  const how = bench && howTaken(bench);
  if (!how) return undefined;
  const read = readTakes(reading, bench, how);
  const [first] = read;
  if (!first) return nothingTold(how, bench);
  const trouble = read.find((each) => each.trouble)?.trouble;
  if (trouble) return refuse(trouble, 3.3);
  if (!read.every(isTold)) return first.take.lot === undefined ? undefined : refuse(howMuchTaken, 3.1);
  const more = defined({
    on: dayIn(bench),
    why: note ?? reasonIn(text.bench.rest.text),
    again: /\banother\b/i.test(bench.rest.text) || undefined,
  });
  const takes = read.map(({ take }) => take);
  const what = takes.length === 1 ? takes[0] : { takes };
  return claim(
    { action: 'taken', how, ...what, ...more },
    3.45,
    read.flatMap(({ assumed }) => assumed ?? []),
  );
};
