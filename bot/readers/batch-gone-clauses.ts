import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { isTaking, leadingPlace, placeIn, trailingPlace, visitorIn } from './batch-gone-places.ts';
import { type How, howIn } from './batch-gone-verbs.ts';
import { type BenchReading, lotsWithin } from './bench-reading.ts';
import { type Clause, clausesAt } from './clauses.ts';
import { isGroupNumber } from './group-number.ts';
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
  /\b(?:(?<!\b(?:at|after|above|in|us|you|were|are) )all(?! (?:right|good|ok|fine|in all))(?: of| the)?|the rest|(?<=\b(?:sold|gave|gave away|binned|threw out|threw away|took|bought) )the (?:whole )?lot(?! \S*\d)|everything|the remaining|remaining|what(?:'s| is| was) left|(?:the |our |my |very |^\W*)+last(?: few| ones| of| (?=tins|jars|pots|tubes|sticks)))\b/gi;

/** "One" stands alone too: "kept one back", "gave the school one". */
const oneSaid =
  /\b(?<!\b(?:another|the|this|that|last|latest|each|every|no|which|wee|little|young|small|old|other|any|some|for) )(?:one|an? (?:tin|jar|pot|tube|stick|sample)|another one)\b(?! of (?:the|our|my|us|them)\b(?! (?:_+ |(?:remaining|last|other|unsold) )?(?:tins|jars|pots|sticks|tubes)| _))/gi;

const ordinalSaid =
  /\bthe (?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|other|odd|single) (?:tin|jar|pot|tube|stick)\b/gi;

const eachSaid = /\b(?:each|every|apiece|everyone|everybody|all of (?:us|them|the))\b/i;
const totalAfter =
  /^\s*(?:(?:tins?|jars?|pots?|tubes?|sticks?)\s+)?(?:in all|altogether|all told|in total|all together)\b/i;
const totalBefore = /\b(?:that'?s|that is|that makes|makes|so)\s*$/i;

const eachOfThem =
  /\beach of (?:the |our |my )?[\w-]+ .{0,40}\b(?:an?|one|a single) (?:tin|jar|pot|stick|tube|of)\b|\beach of (?:the |our |my )?[\w-]+ .{0,30}\b(?:got|took|had|received) one\b/i;
/** "Each child took one home, so 24 sticks …". */
const oneEach =
  /\b(?:(?:each|every) (?!of\b)\p{L}+(?: \p{L}+)?|each of the (?:\d{1,3} )?\p{L}+) (?:took|got|had|has|received) (?:one|two|three|an? \p{L}+)\b/iu;
const followedByTins = (text: string, { to }: Pick<Item, 'to'>): boolean =>
  /^\s*(?:more |new |full |little )?(?:tins?|jars?|pots?|sticks?|tubes?)\b/i.test(text.slice(to, to + 16));

/** "Each leader got one, that's 4", "every pupil took a tin, 16 in all". */
const totalOf = (said: readonly Item[], text: string): Mark | undefined => {
  // "Each of the 4 leaders got one": as many as there are of them.
  const [people, second] = said.filter((item) => !followedByTins(text, item));
  if (people && !second && eachOfThem.test(text)) return { from: people.from, count: people.value ?? 0 };
  const item = eachSaid.test(text)
    ? said.find(
        ({ from, to }) =>
          (oneEach.test(text.slice(0, from)) && followedByTins(text, { to })) ||
          totalAfter.test(text.slice(to, to + 30)) ||
          totalBefore.test(text.slice(Math.max(0, from - 14), from)),
      )
    : undefined;
  return item && { from: item.from, count: item.value ?? 0 };
};

/** "A customer returned a tin: 1 tin of 27-KUFE came back": told again after the colon. */
const isHeading = (text: string): boolean => /^an? \w+\s*:\s*(?:\d|an?\b|one\b|two\b)/i.test(text);

/** "Swapped 2 for a jar of honey": what came in for them. */
const isInReturn = ({ from, to }: Item, text: string): boolean =>
  /\bfor $/i.test(text.slice(0, from)) &&
  /^ (?:\w+ )?(?:tins?|jars?|pots?|bottles?|bags?|boxe?s?) of (?!_|the\b|our\b|my\b)/i.test(
    text.slice(to, to + 40),
  );

/** "That jar of it is scrapped", "left tin of it on the dashboard": one, where nothing else is counted. */
const oneOfIt =
  /(?<!\b(?:each|every|per|no|which|another|any) )\b(?:tin|jar|pot|tube|stick)(?= (?:of|from) (?:the |batch )*_)/i;
const theOne = (text: string): readonly Mark[] => {
  const match = oneOfIt.exec(text);
  return match ? [{ from: match.index, count: 1 }] : [];
};

/** "Two of those were soft, so book 2 tins as waste": the same two. */
const toldAgain = ([first, second, third]: readonly Item[], text: string): Item | undefined =>
  first &&
  second?.value === first.value &&
  third === undefined &&
  /^ (?:tins |jars |pots |tubes |sticks )?of (?:those|these|them|the ones)\b/i.test(
    text.slice(first.to, first.to + 30),
  )
    ? first
    : undefined;

/** "Five stand by the till, three of them were sold": three. */
const onlyHere = ([first, second, third]: readonly Item[], text: string): Item | undefined => {
  if (
    !first ||
    !second ||
    third ||
    !/^ of (?:them|those|these)\b/i.test(text.slice(second.to, second.to + 12))
  )
    return undefined;
  const said = text.slice(0, second.from);
  return howIn(said, isTaking(said)) === undefined ? first : undefined;
};

const someOf =
  /\b(?:\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|twelve|half)(?: of(?: the| our| my| those)?)? $/i;

/** Numbers of containers, and "all", "the rest"; "all 12" is twelve. */
const marksIn = ({ rest }: BenchReading): readonly Mark[] => {
  const said = rest.items.filter(
    (item) => isCount(item) && !isGroupNumber(item, rest.text) && !isInReturn(item, rest.text),
  );
  const total = totalOf(said, rest.text);
  if (total) return [total];
  const ones = [...rest.text.matchAll(oneSaid), ...rest.text.matchAll(ordinalSaid)]
    .filter(({ index }) => !said.some((item) => item.from <= index && item.to > index))
    .filter(({ index }) => !isHeading(rest.text.slice(index)))
    .map(({ index }) => ({ from: index, count: 1 }));
  const again = toldAgain(said, rest.text) ?? onlyHere(said, rest.text);
  const told = [
    ...said.filter((item) => item !== again).map(({ from, value }) => ({ from, count: value ?? 0 })),
    ...ones,
  ];
  const counts = told.length > 0 ? told : theOne(rest.text);
  const alls = [...rest.text.matchAll(allSaid)]
    .filter(({ index }) => !counts.some(({ from }) => from > index && from - index <= 14))
    // "One of the remaining tins".
    .filter(({ index }) => !someOf.test(rest.text.slice(0, index)))
    // "Took 6 to the group, gave them all away": the six again.
    .filter(
      ({ index, 0: said }) =>
        counts.length === 0 ||
        (!/\b(?:them|they) $/i.test(rest.text.slice(0, index)) &&
          // "Took the other 11 off the shelf, binned the lot".
          !(/\blot$/i.test(said) && counts.some(({ from }) => from < index))),
    )
    .map(({ index }) => ({ from: index, all: true as const }));
  return [...counts, ...alls].toSorted((a, b) => a.from - b.from);
};

/** What tells that another number counts containers, and is no part of a name: "to room 12". */
const tells =
  /\b(?:to|at|for|from|as|back|tins?|jars?|pots?|tubes?|sticks?|of|kept|keep|sold|gave|went|more|another|sent|it|dropped|broken?|squashed|lost|cracked|returned|sold|given|used|melted|leaked|dented|stolen|missing|bent|tested|binned|spoilt|ruined|eaten|swapped)\b|_/i;
/** "… and dad 1", but no "and hall 3". */
const nameThenCount =
  /^\s*(?!.*\b(?:room|hall|class|group|table|year|unit|flat|number|house|street|form|team|stall|grade)\b)(?:the |my |our )?\p{L}[\p{L}'’.-]{1,20}(?: \p{L}[\p{L}'’.-]{1,20}){0,2} (?:\d{1,3}|one|two|three|four|five|six)\s*(?:[,;.!]|and\b|$)/iu;

/** "Three tins A two jars B": a number with its containers begins a part of its own, whatever stands before it. */
const withEachCount = (
  clauses: readonly (Clause & { readonly mark: number })[],
  { rest }: BenchReading,
  marks: readonly Mark[],
) =>
  clauses.flatMap((clause) => {
    const more = rest.items
      .filter((item, at) => isCount(item) && rest.items[at + 1]?.letter === 'c')
      .map(({ from }) => from)
      .filter((from) => from > clause.mark && from < clause.to && marks.some((mark) => mark.from === from));
    const starts = [clause.from, ...more];
    return starts.map((from, at) => {
      const to = starts[at + 1] ?? clause.to;
      return { from, to, text: rest.text.slice(from, to), mark: at === 0 ? clause.mark : from };
    });
  });

const clausesOf = (bench: BenchReading): readonly Counted[] => {
  const marks = marksIn(bench);
  const clauses = clausesAt(
    bench.rest.text,
    marks.map(({ from }) => from),
    (stretch) => tells.test(stretch) || nameThenCount.test(stretch) || howIn(stretch, false) !== undefined,
  );
  return withEachCount(clauses, bench, marks).map((clause) => {
    const said = marks.find(({ from }) => from === clause.mark);
    return { ...clause, ...defined({ count: said?.count, all: said?.all }) };
  });
};

/** "3 to Anna, 2 to Ben, 1 kept": what has somebody it went to is not kept, whatever is said after it. */
const toSomebody = (clauses: readonly Counted[], at: number): How | undefined => {
  const text = clauses[at]?.text ?? '';
  const others = clauses.map((clause) => howIn(clause.text, isTaking(clause.text)));
  const isOut = others.some((how) => how === 'given' || how === 'sold' || how === 'back');
  return !isOut && /\b(?:to|for) (?=\p{L})/iu.test(text) && placeIn(text, 'given') !== undefined
    ? 'given'
    : undefined;
};

/** Each clause's own way, else that of the clause before it, else of the one after. */
const waysOf = (clauses: readonly Counted[], whole: string): readonly How[] => {
  const own = clauses.map(({ text }, at) => howIn(text, isTaking(text)) ?? toSomebody(clauses, at));
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
  const said = clauses.map(
    ({ text }, at) =>
      placeIn(text, ways[at] ?? 'given') ??
      visitorIn(bench.rest.text, text, ways[at]) ??
      trailingPlace(text, ways[at]),
  );
  const places = said.map((to, at) => {
    if (to !== undefined) return to;
    const near = [at + 1, at - 1].find(
      (other) => said[other] !== undefined && ways[other] === ways[at] && lots[other] !== lots[at],
    );
    return near === undefined ? leadingPlace(bench.rest.text, ways[at]) : said[near];
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
