import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { type How, howIn } from './batch-gone-verbs.ts';
import { type BenchReading, lotsWithin } from './bench-reading.ts';
import { nameAfter, noPlace } from './bench-text.ts';
import { type Clause, clausesAt } from './clauses.ts';
import type { Item } from './item.ts';
import type { LotSaid } from './lots.ts';

/** Containers of one batch that went one way to one place, as the topic's request has them. */
export interface Part {
  readonly count?: number;
  readonly all?: true;
  readonly to?: string;
  readonly how?: How;
  readonly lot?: string;
  readonly on?: string;
}

/** A stretch of the message with one number of containers in it. */
interface Counted extends Clause {
  readonly count?: number;
  readonly all?: true;
}

interface Mark {
  readonly from: number;
  readonly count?: number;
  readonly all?: true;
}

/** "Half of them, that's 7 tins": a share is no count. */
export const isCount = ({ letter, value, fraction }: Item): boolean =>
  letter === 'n' && value !== undefined && !fraction;

const allSaid =
  /\b(?:all(?! (?:right|good|ok|fine|in all))(?: of| the)?|the rest|everything|the remaining|remaining|what(?:'s| is| was) left|(?:the |our |my |very |^\W*)+last(?: few| ones| of| (?=tins|jars|pots|tubes|sticks)))\b/gi;

/** "One" stands alone too: "kept one back", "gave the school one". */
const oneSaid =
  /\b(?<!\b(?:another|the|this|that|last|latest|each|every|no|which) )(?:one|an? (?:tin|jar|pot|tube|stick|sample)|another one)\b(?! of (?:the|our|my|us|them)\b)/gi;

/** Numbers of containers, and "all", "the rest"; "all 12" is twelve. */
const marksIn = ({ rest }: BenchReading): readonly Mark[] => {
  const said = rest.items.filter(isCount);
  const ones = [...rest.text.matchAll(oneSaid)]
    .filter(({ index }) => !said.some((item) => item.from <= index && item.to > index))
    .map(({ index }) => ({ from: index, count: 1 }));
  const counts = [...said.map(({ from, value }) => ({ from, count: value ?? 0 })), ...ones];
  const alls = [...rest.text.matchAll(allSaid)]
    .filter(({ index }) => !counts.some(({ from }) => from > index && from - index <= 14))
    .map(({ index }) => ({ from: index, all: true as const }));
  return [...counts, ...alls].toSorted((a, b) => a.from - b.from);
};

/** What tells that another number counts containers, and is no part of a name: "to room 12". */
const tells =
  /\b(?:to|at|for|from|as|back|tins?|jars?|pots?|tubes?|sticks?|of|kept|keep|sold|gave|went|more|another|sent|it)\b|_/i;

const clausesOf = (bench: BenchReading): readonly Counted[] => {
  const marks = marksIn(bench);
  return clausesAt(
    bench.rest.text,
    marks.map(({ from }) => from),
    (stretch) => tells.test(stretch),
  ).map((clause) => {
    const said = marks.find(({ from }) => from === clause.mark);
    return { ...clause, ...defined({ count: said?.count, all: said?.all }) };
  });
};

const small =
  '(?=\\d|_|(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|half|all|both|some|the (?:last|rest|other|first)|another|our|my|us|tins?|jars?|pots?|tubes?|sticks?)\\b)';
const adverbs = '(?:(?:has|have|had|also|just|then|already|kindly|wants|wanted|been)\\s+)*';
const taking =
  '(?:took|taken|bought|buys|takes|got|has|have|had|received|purchased|collected|ordered|grabbed|wanted|snapped up|picked up|walked off with|went home with|went off with|accepted)';
const lead =
  '^(?:\\W|_|\\b(?:and|also|then|so|today|yesterday|this morning|this afternoon|later|ok|oh|hi|hey|hello|pipkin|please|note|noted|that)\\b)*';
const place = "((?:the\\s+|my\\s+|our\\s+|a\\s+|an\\s+)?\\p{L}[\\p{L}\\p{N}'’.& -]{0,60}?)";
const taker = new RegExp(`${lead}${place}\\s+${adverbs}${taking}\\s+(?:another\\s+|home\\s+)?${small}`, 'iu');
const returner = new RegExp(
  `${lead}${place}\\s+${adverbs}(?:returned|(?:brought|gave|given|handed|sent|took|taken|posted|passed)(?=.{0,60}\\bback\\b))`,
  'iu',
);
const receiver = new RegExp(
  `\\b(?:gave|given|sold|sent|lent|handed|posted|brought|passed|dropped|left|send|give)\\s+(?:out\\s+|off\\s+)?${place}\\s+${small}`,
  'iu',
);
const toPlace = /\b(?:to|at|with)\s+/i;
const fromPlace = /\bfrom\s+/i;
const forPlace = /\bfor\s+(?=(?:the|our|my|a)\b|\p{Lu})/u;

const named = (text: string, pattern: RegExp): string | undefined => {
  const name = pattern.exec(text)?.[1]?.trim();
  return name === undefined || noPlace.test(name) ? undefined : name;
};

/** "The tea room took 6", "gave the library 3 tins", "6 to the fair", "2 came back from the shop". */
const placeIn = (text: string, how: How): string | undefined => {
  if (how === 'back') return nameAfter(text, fromPlace)?.name ?? named(text, returner);
  const after = nameAfter(text, toPlace)?.name;
  if (after !== undefined) return after;
  if (how === 'kept' || how === 'wasted') return undefined;
  return named(text, taker) ?? named(text, receiver) ?? nameAfter(text, forPlace)?.name;
};

export const isTaking = (text: string): boolean => named(text, taker) !== undefined;

/** Each clause's own way, else that of the clause before it, else of the one after. */
const waysOf = (clauses: readonly Counted[], whole: string): readonly How[] => {
  const own = clauses.map(({ text }) => howIn(text, isTaking(text)));
  const any = howIn(whole, false) ?? 'given';
  return own.map(
    (how, at) =>
      how ?? own.slice(0, at).findLast((each) => each) ?? own.slice(at).find((each) => each) ?? any,
  );
};

const batchesOf = ({ lots }: BenchReading): readonly LotSaid[] => lots.filter(({ kind }) => kind !== 'lot');

interface Told {
  readonly lots: readonly (string | undefined)[];
  readonly places: readonly (string | undefined)[];
}

/** "3 tins of A and 4 sticks of B to the shop": what stands with one of them holds for both. */
const toldIn = (
  bench: BenchReading,
  clauses: readonly Counted[],
  ways: readonly How[],
  first: string,
): Told => {
  const own = clauses.map((clause) => lotsWithin(batchesOf(bench), clause)[0]?.code);
  const lots = own.map(
    (lot, at) => lot ?? own.slice(0, at).findLast((each) => each) ?? own.find((each) => each) ?? first,
  );
  const said = clauses.map(({ text }, at) => placeIn(text, ways[at] ?? 'given'));
  const places = said.map((to, at) => {
    if (to !== undefined) return to;
    const near = [at + 1, at - 1].find(
      (other) => said[other] !== undefined && ways[other] === ways[at] && lots[other] !== lots[at],
    );
    return near === undefined ? undefined : said[near];
  });
  return { lots, places };
};

const dayWithin = ({ days }: BenchReading, { from, to }: Clause): string | undefined =>
  days.find((day) => day.role === 'on' && day.from >= from && day.from < to)?.past;

/** What the message tells of one batch after another: how many, which way, where to. */
export const partsOf = (
  bench: BenchReading,
  first: string,
): readonly (Part & { readonly how: How; readonly lot: string })[] => {
  const clauses = clausesOf(bench);
  const ways = waysOf(clauses, bench.rest.text);
  const { lots, places } = toldIn(bench, clauses, ways, first);
  const several = bench.days.filter(({ role }) => role === 'on').length > 1;
  return clauses.map((clause, at) => {
    const how = ways[at] ?? 'given';
    const alone = how === 'kept' && clause.count === undefined && !clause.all ? 1 : undefined;
    return {
      how,
      lot: lots[at] ?? first,
      ...defined({
        count: clause.count ?? alone,
        all: clause.all,
        to: places[at],
        on: several ? dayWithin(bench, clause) : undefined,
      }),
    };
  });
};

export const sameLot = (one: string, other: string): boolean => lotKey(one) === lotKey(other);
