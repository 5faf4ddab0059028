import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readingWithout } from '../understand.ts';
import { withHolders } from './batch-gone-anew.ts';
import { byWeight, politelyKept } from './batch-gone-asked.ts';
import { type Part, partsOf, sameLot } from './batch-gone-clauses.ts';
import { isCount } from './batch-gone-counts.ts';
import { isTaking } from './batch-gone-places.ts';
import { gonePlainly } from './batch-gone-plainly.ts';
import { howIn } from './batch-gone-verbs.ts';
import { batchMeant, type Meant } from './batch-meant.ts';
import { goesWords, howManyGone, whichBatch } from './batch-words.ts';
import { type BenchReading, readBench } from './bench-reading.ts';
import { asksOrPlans, nameAfter, withoutMoney, withoutReasons } from './bench-text.ts';
import { leftover } from './leftover.ts';
import { boardOf } from './target.ts';

const badCount = (parts: readonly Part[]): Trouble | undefined =>
  parts.some(({ count }) => count !== undefined && !(Number.isInteger(count) && count >= 1))
    ? {
        code: 'bad-quantity',
        text: 'Containers go out whole, at least one of them. For example "gave 6 tins of 26-KIVO to the spring fair".',
      }
    : undefined;

/** "Sell R at 6, 24 tins: what margin" has sold none yet. */
const asksOfMoney = /\b(?:margin|profit|mark-?up|break even)\b/i;

/** "6 g of 26-KIVO": a batch is counted in containers. */
const weighs = ({ items }: Reading): boolean =>
  items.some(
    ({ letter }, at) =>
      /[gvd%]/.test(letter) &&
      !/^c?[o(,]?c?$/.test(
        items
          .slice(Math.max(0, at - 2), at)
          .map((each) => each.letter)
          .join(''),
      ),
  );

const dayIn = ({ days }: BenchReading): string | undefined => days.find(({ role }) => role === 'on')?.past;

/** "5 of the latest Meadow salve": a number right before the recipe. */
const countedOf = /n(?:o?[wBZx]?)R/;

/** Whether the containers are what the message is about: a batch's code, or a recipe with containers. */
const isAboutBatch = (bench: BenchReading, meant: Meant): boolean =>
  meant.said
    ? meant.said.kind !== 'lot'
    : (meant.lot ?? meant.trouble) !== undefined &&
      (bench.rest.items.some(({ letter }) => letter === 'c') ||
        countedOf.test(bench.rest.items.map(({ letter }) => letter).join('')) ||
        /\b(?:of|from) (?:them|those|these)\b/i.test(bench.rest.text));

/** "One kilo of beeswax has landed here, lot B4": a new code with what it is of, and no containers. */
const isOfShelf = ({ rest: { items } }: BenchReading, { said }: Meant): boolean =>
  said?.kind === 'new' &&
  items.some(({ letter }) => letter === 'i') &&
  !items.some(({ letter }) => letter === 'c');

/** The request: what all parts share is said once. */
const requestOf = (parts: ReturnType<typeof partsOf>, on: string | undefined, again: true | undefined) => {
  const [first] = parts;
  const lot = first?.lot ?? '';
  const how = first?.how ?? 'given';
  const own = parts.map(({ how: way, lot: code, ...part }) => ({
    ...part,
    ...(way === how ? {} : { how: way }),
    ...(sameLot(code, lot) ? {} : { lot: code }),
  }));
  const action = how === 'back' ? { action: 'back' } : { action: 'gone', how };
  return { ...action, lot, parts: own, ...defined({ on, again }) };
};

const some =
  '(?:\\d|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty|a dozen|half a dozen)';
/** "About 10 tins", "all but two": nothing that could be counted. */
const unsure = new RegExp(
  `\\b(?:about|around|roughly|approximately|approx\\.?|circa|nearly|almost|at least|up to|more than|over|less than|under|maybe|perhaps) ${some}\\w*\\b(?! ?(?:days?|weeks?|months?|hours?|minutes?|o'clock|am|pm|euros?|pounds?))|${some}\\w* (?:or so|ish|odd)\\b|\\ball (?:but|except)\\b|\\b(?:except|apart from|other than) (?:for )?${some}`,
  'i',
);

/** "They sold 3", "the shop has sold 3 of 27-KUFE". */
const soldBy =
  /^\W*(?:_+\W+)?(they|he|she|(?:the|our|my) [\p{L}'’-]+(?: [\p{L}'’-]+)?|(?!(?:i|we|just|also|then|and|so|today|yesterday)\b)[\p{L}'’-]+) (?:have |has |had |just |only |already |now )*sold\b(?! out\b)/iu;

const outAlready = (place: string, lot: string): Trouble => ({
  code: 'missing',
  text: `${place} has had tins of ${lot} before, so what was sold there has left the house already. If it was from what is here, say "sold 3 of ${lot} at …".`,
});

/** What somebody sells who was given some is out of the house already. */
const soldThereBefore = (
  reading: Reading,
  bench: BenchReading,
  lot: string | undefined,
): Trouble | undefined => {
  const who = soldBy.exec(bench.rest.text)?.[1];
  const batch = lot === undefined ? undefined : reading.bench.batches.get(lotKey(lot));
  if (who === undefined || !batch) return undefined;
  const bare = (name: string): string => name.toLowerCase().replace(/^(?:the|our|my) /, '');
  const place = batch.gone.findLast(
    ({ to }) => to !== undefined && (/^(?:they|he|she)$/i.test(who) || bare(to) === bare(who)),
  )?.to;
  return place === undefined ? undefined : outAlready(place, batch.lot);
};

const claimParts = (reading: Reading, bench: BenchReading, meant: Meant): Claim => {
  const parts = withHolders(partsOf(bench, meant.lot ?? ''), reading);
  const trouble = bench.trouble ?? meant.trouble ?? badCount(parts);
  if (trouble) return refuse(trouble, 3.3);
  if (meant.lot === undefined) return refuse(whichBatch, 2.6);
  if (
    unsure.test(bench.rest.text) ||
    bench.rest.items.some((item) => isCount(item) && item.upTo !== undefined)
  )
    return refuse(howManyGone, 3.2);
  // "Both of them got a jar" is one jar or two.
  if (/\bboth\b/i.test(bench.rest.text) && parts.some(({ count }) => count === 1))
    return refuse(howManyGone, 3.2);
  if (parts.some(({ count, all }) => count === undefined && !all)) return refuse(howManyGone, 3.2);
  const again = /\b(?:another|again|more)\b/i.test(bench.rest.text) || undefined;
  return claim(requestOf(parts, dayIn(bench), again), 3.4, meant.assumed);
};

const upWords =
  /\b(?:used up(?! (?:one|an?|another|two|three|four|five|six|\d))|all gone|finished|is empty|sold out|ran out|run out|none (?:is |are )?left|(?:is|are|was|were|has|have)? ?gone(?=\W*(?:$|[,;.!?\n_])|\s+(?:now|already|all|today|yesterday|then|too|again)\b))\b/i;

/** "26-KIVO is used up": every container that is left. */
const claimUsedUp = (bench: BenchReading, meant: Meant): Claim | undefined => {
  const { text } = bench.rest;
  if (
    !upWords.test(text) ||
    /\b(?:where|who|whom|how|when|why|whether|what|if|nearly|almost|soon)\b/i.test(text) ||
    bench.rest.items.some(isCount) ||
    meant.lot === undefined
  )
    return undefined;
  if (meant.trouble) return refuse(meant.trouble, 3.3);
  const how = /\bsold out\b/i.test(text) ? 'sold' : 'used';
  const request = {
    action: 'gone',
    lot: meant.lot,
    how,
    parts: [{ all: true }],
    ...defined({ on: dayIn(bench) }),
  };
  return claim(request, 3.4, meant.assumed);
};

const goal =
  /(?:\b(?:to|for)\s+(?!an? (?:year|month|week|day|while|bit|start|change)\b)|\s[-=]*>\s*)(?=(?:the|our|my|a|an|mrs?|ms|dr|st)\b|\p{L}{3})/iu;

/** What is left without the places named: "to the bakery … to the inn". */
const withoutPlaces = (rest: Reading, tries = 6): Reading => {
  const said = nameAfter(rest.text, goal);
  return said && tries > 0 ? withoutPlaces(readingWithout(rest, [said.place]), tries - 1) : rest;
};

/** "4 tins of LOT to the farmers' market": no verb, and nothing else in it. */
const goesTo = ({ rest, lots }: BenchReading): boolean => {
  if (!goal.test(rest.text) || !rest.items.some(isCount)) return false;
  const around = withoutPlaces(rest).items.filter(({ letter }) => !/[nR]/.test(letter));
  const counted = lots.length > 0 || around.some(({ letter }) => letter === 'c');
  return counted && leftover(boardOf(around), goesWords, false).blocking.length === 0;
};

/** "5 tins for sale", "bought 12 tins of it at the market": nothing of ours that went. */
const forSale = /\bfor sale\b|\bon sale\b(?! or)|^\W*(?:(?:i|we|just|also|today|yesterday)\W+)*bought\b/i;
/** "There are 5 tins left": what is here, and nothing that went. */
const stillHere =
  /^\W*(?:(?:so|ok|and|now|today|there (?:are|is)|we(?:'ve| have| still have)?(?: got)?|still|only|just|exactly|i have|i've)\W+)*(?:_+\W+)*(?:has |have )?(?:(?:still|only|just|exactly|now)\W+)*(?:\d{1,4}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?: tins?| jars?| pots?| tubes?| sticks?)?(?: of)?(?: _+)?(?: (?:are|is|still|now))* (?:left(?! over\b.*\b(?:back|returned)\b)|remaining|remain|on the shelf|in (?:the (?:cupboard|box|house|drawer)|stock))\b/i;
const hereNow = (lot: string): Trouble => ({
  code: 'missing',
  text: `What became of the others? Tell me what was sold, given or lost ("sold 3 of ${lot} at the fair"), or put the pour right: "correct ${lot}: it was 22 tins".`,
});

/** "27-KUFE has kept well". */
const keepsWell =
  /\b(?:has|have|had|still|it|they|_)\W{0,2}(?:keeps?|kept) (?:very |really |quite )?(?:well|nicely|fine|good|fresh|perfectly|its|their|smooth|firm)\b/i;

const isOfPour = ({ lots, rest }: BenchReading): boolean =>
  lots.length === 0 &&
  /\b(?:pour(?:s|ed|ing)?|made|filled|(?:finished|completed|did) (?:\w+ ){1,2}batch)\b/i.test(rest.text);

/** Questions, plans, weights, money, pours, and tins that are only here. */
const isNoneGone = (reading: Reading, bench: BenchReading): boolean => {
  const { text } = bench.rest;
  return (
    asksOrPlans(text) ||
    weighs(bench.rest) ||
    asksOfMoney.test(reading.text) ||
    isOfPour(bench) ||
    keepsWell.test(text) ||
    forSale.test(text)
  );
};

const stillHereOr = (reading: Reading, bench: BenchReading, meant: Meant): Claim | undefined => {
  const isKept = howIn(bench.rest.text, false) === 'kept';
  if (!isKept && meant.lot !== undefined && meant.said?.kind !== 'new' && stillHere.test(bench.rest.text))
    return refuse(hereNow(meant.lot), 3.3);
  const before = soldThereBefore(reading, bench, meant.lot);
  return before && refuse(before, 3.4);
};

/** Containers that left the house, came back, or are kept as a sample. */
export const claimGone = (message: Reading, found: BenchReading): Claim | undefined => {
  const reading = politelyKept(message) ?? gonePlainly(message);
  const said = reading === message ? found : readBench(reading);
  const bench = withoutMoney(withoutReasons(said));
  if (isNoneGone(reading, bench)) return byWeight(bench);
  const meant = batchMeant(reading, bench, bench.lots.length === 0);
  if (!isAboutBatch(bench, meant) || isOfShelf(bench, meant)) return undefined;
  const here = stillHereOr(reading, bench, meant);
  if (here) return here;
  const { text } = bench.rest;
  const how = howIn(text, isTaking(text));
  const up = how === 'given' || how === 'back' ? undefined : claimUsedUp(bench, meant);
  return up ?? (how !== undefined || goesTo(bench) ? claimParts(message, bench, meant) : undefined);
};
