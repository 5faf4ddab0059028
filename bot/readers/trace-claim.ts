import { lotKey } from '../../core/bench/codes.ts';
import type { Trouble } from '../answer.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readingWithout } from '../understand.ts';
import { asksPage, madeOfAsked, madeOfWeight } from './batch-made-of.ts';
import { batchMeant, type Meant } from './batch-meant.ts';
import { type BenchReading, readBench } from './bench-reading.ts';
import { leftover } from './leftover.ts';
import { lotsIn } from './lots.ts';
import { isOnlyAsking } from './of-spoken-lot.ts';
import { boardOf } from './target.ts';
import { aside } from './trace-aside.ts';
import { asksSheet, asksWay, elsewhere, ofPurchase, ofVessel } from './trace-cues.ts';
import { claimAtPlace } from './trace-place.ts';
import { traceCues, traceWeakCues, traceWords } from './trace-words.ts';

const ofWhat: Trouble = {
  code: 'missing',
  text: 'Trace which lot or batch? Say its code: "which batches used lot K12", "where did 26-BAFO go". "list batches" and "stock" show the codes.',
};

const meant = (reading: Reading, bench: BenchReading): Meant => {
  const [said] = bench.lots;
  if (said && !said.others) return { lot: said.code, said, assumed: [] };
  return batchMeant(reading, bench, true);
};

/** The lot or batch traced before: "and the recall sheet", "print it". */
const tracedBefore = ({ last }: Reading): string | undefined =>
  last?.topic === 'trace' && typeof last.request.lot === 'string' ? last.request.lot : undefined;

/** "batch 26-BAFO": with that word before its code, a batch alone asks for its sheet. */
const saysBatch = ({ text }: Reading, { lots: [said] }: BenchReading): boolean =>
  said !== undefined && /^batch\b/i.test(text.slice(said.from, said.to));

/** A lot code that stands alone, right after a trace; "lot K12" alone is a look at the shelf. */
const isNext = (reading: Reading, bench: BenchReading): boolean =>
  reading.last?.topic === 'trace' &&
  bench.lots.length === 1 &&
  !saysBatch(reading, bench) &&
  (bench.lots[0]?.cued === false || /\p{L}/u.test(bench.rest.text)) &&
  /^[\W_]*(?:(?:and|or|what about|how about|(?:and )?what of|same for|same with|the same|same|which (?:ones? )?(?:used?|have|has|had|took|drew|got|contains?)|who has|where(?:'s| is| did)|go|for|with|from|of|in|the|now|then|please|too|lot|also|ok|but)[\W_]*)*$/i.test(
    bench.rest.text,
  );

const nextCode = (reading: Reading, bench: BenchReading): Claim | undefined =>
  isNext(reading, bench) ? claim({ lot: bench.lots[0]?.code ?? '' }, 3.1) : undefined;

/** "Where is it", "who has it": of the batch spoken of before these are enough. */
const asksOfIt = /\b(?:where|whom?)\b|\bmade (?:from|of|with)\b/i;

/** Where no code is named: of a recipe, or of the batch spoken of before, where nothing else is spoken of. */
const asksOf = (reading: Reading, byRecipe: boolean): boolean =>
  asksOfIt.test(reading.text) && (byRecipe || isOnlyAsking(reading));

const ofMeant = (found: Meant, reading: Reading, strong: boolean): Claim | undefined => {
  const named = found.said !== undefined;
  const byRecipe = reading.items.some(({ recipe }) => recipe !== undefined);
  if (found.trouble) return strong || named ? refuse(found.trouble, 2.4) : undefined;
  if (found.lot === undefined) return strong ? refuse(ofWhat, 2) : undefined;
  if (!named && !strong && !asksOf(reading, byRecipe)) return undefined;
  return claim({ lot: found.lot }, named || byRecipe ? 3 : 2.5, found.assumed);
};

const withSheet = (made: Claim | undefined): Claim | undefined =>
  made?.kind === 'request'
    ? { ...made, weight: made.weight >= 3 ? 3.2 : made.weight, request: { ...made.request, sheet: true } }
    : made;

const settle = (reading: Reading, bench: BenchReading, strong: boolean): Claim | undefined => {
  const sheet = asksSheet.test(bench.rest.text);
  const before = bench.lots.length === 0 && sheet ? tracedBefore(reading) : undefined;
  if (before !== undefined) return claim({ lot: before, sheet: true }, 3);
  const made = ofMeant(meant(reading, bench), reading, strong);
  return sheet ? withSheet(made) : made;
};

/** "What is out of the house", "which tins are out there", "who has our tins": of everything. */
const asksAll =
  /^\W*(?:so |and |ok )?(?:what|which)(?:'s| is| are|s)? (?:still |currently )?out(?: (?:at the moment|now|there|right now|please))*\W*$|\b(?:what|whats|which|who|who's|how many|everything|all)\b.{0,30}\b(?:(?:out (?:of (?:the|our) (?:house|door|kitchen|hands)|there|in the world|with people)|left (?:the|our) (?:house|kitchen|bench|shelf|hands|place|building))|(?:has|have|got|received|\bwho's) (?:got )?(?:our (?:tins|jars|pots|sticks|tubes|balms?|salves?)|(?:\w+ ){1,2}(?:from us|of ours|of our))|(?:have|did) we (?:given|gave|give|sold|sell|sent|send)(?: .{0,20})? (?:out|away|to))\b|\bwhere (?:did|have|has|are|is|do) (?:all |everything |every )?(?:of )?(?:our|my|the|all|we)\b.{0,20}\b(?:go|gone|went|tins|end|ended|balms?)\b/i;

const everything = (reading: Reading, bench: BenchReading): Claim | undefined => {
  if (bench.lots.length > 0 || !asksAll.test(reading.text)) return undefined;
  if (batchMeant(reading, bench).lot !== undefined) return undefined;
  return leftover(boardOf(bench.rest.items), traceWords, true).blocking.length > 0
    ? undefined
    : claim({}, 2.95);
};

/** "Is K12 in 26-KIVO?", "did we use K12 for 26-KIVO?" */
const namesTwo = (reading: Reading): boolean =>
  anyWord(reading, ['in', 'for', 'with', 'from']) &&
  reading.text.length <= 60 &&
  lotsIn(reading).length === 2 &&
  /^\W*(?:is|was|were|are|did|have|has|do|does)\b|\?/i.test(reading.text);

/** "Does the lifeboat shop have any of it": places its containers went to are names, and nothing else is asked. */
const withoutPlaces = ({ bench: book }: Reading, { rest, lots }: BenchReading): Reading => {
  const text = rest.text.toLowerCase();
  const gone = book.batches.get(lotKey(lots[0]?.code ?? ''))?.gone ?? [];
  const names = [...new Set(gone.flatMap(({ to }) => to?.toLowerCase() ?? []))].map((name) =>
    name.replace(/^(?:the|my|our|a) /, ''),
  );
  const places = names.flatMap((name) => {
    const from = text.indexOf(name);
    return name.length > 2 && from >= 0 ? [{ from, to: from + name.length }] : [];
  });
  return readingWithout(rest, places.slice(0, 4));
};

const isElsewhere = ({ lots: [said], rest }: BenchReading): boolean =>
  elsewhere.test(rest.text) ||
  (said?.kind === 'lot' && (ofPurchase.test(rest.text) || ofVessel.test(rest.text)));

/** What a message would mean as a question where a lot went, what a batch was made from, or what a place has. */
export const claimTrace = (reading: Reading): Claim | undefined =>
  claimMadeOf(reading) ?? claimAtPlace(reading) ?? claimWay(reading);

/** "Which lots went into 26-KIVO": the way back from a batch. */
const claimMadeOf = (reading: Reading): Claim | undefined => {
  if (reading.bench.batches.size === 0 || asksPage(reading.text)) return undefined;
  const code = madeOfAsked(reading, readBench(reading));
  return code === undefined ? undefined : claim({ lot: code }, madeOfWeight);
};

/** Where the book has nothing, and the message speaks of no batch or lot. */
const isOfNoBook = (reading: Reading): boolean =>
  reading.bench.batches.size === 0 &&
  reading.bench.lots.size === 0 &&
  !/\bbatch|\blot\b|\bout\b|\bour\b/i.test(reading.text) &&
  lotsIn(reading).length === 0;

const claimWay = (reading: Reading): Claim | undefined => {
  const strong = anyWord(reading, traceCues);
  const follows = reading.last?.topic === 'trace';
  if (!strong && !follows && !anyWord(reading, traceWeakCues) && !namesTwo(reading)) return undefined;
  if (!strong && isOfNoBook(reading)) return undefined;
  const bench = readBench(reading);
  const early = nextCode(reading, bench) ?? aside(reading, bench) ?? everything(reading, bench);
  if (early) return early;
  if (!asksWay.test(bench.rest.text) && !(follows && asksSheet.test(reading.text))) return undefined;
  if (isElsewhere(bench)) return undefined;
  // Which ingredient a lot is of may be said with it: "beeswax lot K12".
  const { items: left } = withoutPlaces(reading, bench);
  const items = left.filter(({ letter }) => letter !== 'i' && letter !== 'R' && letter !== 'h');
  if (leftover(boardOf(items), traceWords, strong).blocking.length > 0) return undefined;
  return settle(reading, bench, strong);
};
