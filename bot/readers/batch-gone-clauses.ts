import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { type How, howIn } from './batch-gone-verbs.ts';
import { type BenchReading, lotsWithin } from './bench-reading.ts';
import { nameAfter, noPlace } from './bench-text.ts';
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
  /\b(?:(?<!\b(?:at|after|above|in) )all(?! (?:right|good|ok|fine|in all))(?: of| the)?|the rest|everything|the remaining|remaining|what(?:'s| is| was) left|(?:the |our |my |very |^\W*)+last(?: few| ones| of| (?=tins|jars|pots|tubes|sticks)))\b/gi;

/** "One" stands alone too: "kept one back", "gave the school one". */
const oneSaid =
  /\b(?<!\b(?:another|the|this|that|last|latest|each|every|no|which|wee|little|young|small|old|other|any|some) )(?:one|an? (?:tin|jar|pot|tube|stick|sample)|another one)\b(?! of (?:the|our|my|us|them)\b(?! (?:_+ )?(?:tins|jars|pots|sticks|tubes)| _))/gi;

const eachSaid = /\b(?:each|every|apiece|everyone|everybody|all of (?:us|them|the))\b/i;
const totalAfter =
  /^\s*(?:(?:tins?|jars?|pots?|tubes?|sticks?)\s+)?(?:in all|altogether|all told|in total|all together)\b/i;
const totalBefore = /\b(?:that'?s|that is|that makes|makes|so)\s*$/i;

const eachOfThem =
  /\beach of (?:the |our |my )?[\w-]+ .{0,40}\b(?:an?|one|a single) (?:tin|jar|pot|stick|tube|of)\b|\beach of (?:the |our |my )?[\w-]+ .{0,30}\b(?:got|took|had|received) one\b/i;
const followedByTins = (text: string, { to }: Item): boolean =>
  /^\s*(?:more |new |full |little )?(?:tins?|jars?|pots?|sticks?|tubes?)\b/i.test(text.slice(to, to + 16));

/** "Each leader got one, that's 4", "every pupil took a tin, 16 in all". */
const totalOf = (said: readonly Item[], text: string): Mark | undefined => {
  // "Each of the 4 leaders got one": as many as there are of them.
  const [people, second] = said.filter((item) => !followedByTins(text, item));
  if (people && !second && eachOfThem.test(text)) return { from: people.from, count: people.value ?? 0 };
  const item = eachSaid.test(text)
    ? said.find(
        ({ from, to }) =>
          totalAfter.test(text.slice(to, to + 30)) ||
          totalBefore.test(text.slice(Math.max(0, from - 14), from)),
      )
    : undefined;
  return item && { from: item.from, count: item.value ?? 0 };
};

/** Numbers of containers, and "all", "the rest"; "all 12" is twelve. */
const marksIn = ({ rest }: BenchReading): readonly Mark[] => {
  const said = rest.items.filter((item) => isCount(item) && !isGroupNumber(item, rest.text));
  const total = totalOf(said, rest.text);
  if (total) return [total];
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
    (stretch) => tells.test(stretch) || nameThenCount.test(stretch),
  );
  return withEachCount(clauses, bench, marks).map((clause) => {
    const said = marks.find(({ from }) => from === clause.mark);
    return { ...clause, ...defined({ count: said?.count, all: said?.all }) };
  });
};

const small =
  '(?=\\d|_|(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|half|all|both|some|the (?:last|rest|other|first)|another|our|my|us|tins?|jars?|pots?|tubes?|sticks?)\\b)';
const adverbs = '(?:(?:has|have|had|also|just|then|already|kindly|wants|wanted|been)\\s+)*';
const taking =
  '(?:took|taken|is taking|are taking|bought|buys|takes|got|has|have|had|received|purchased|collected|ordered|grabbed|wanted|snapped up|picked up|(?:were|was|are|been) (?:given|handed|sent|sold|promised)|walked off with|went home with|went off with|left with|came away with|went away with|drove off with|accepted|become|became)';
const lead =
  '^(?:\\W|_|\\b(?:and|also|then|so|today|yesterday|this morning|this afternoon|later|ok|oh|sorry|right|actually|no|well|hang on|hi|hey|hello|pipkin|please|note|noted|that|as (?:a|an) (?:thank you|thanks|gift|present|prize|treat|sample))\\b)*';
const place = "((?:the\\s+|my\\s+|our\\s+|a\\s+|an\\s+)?\\p{L}[\\p{L}\\p{N}'’.& -]{0,60}?)";
const taker = new RegExp(
  `${lead}${place}(?:,_+)?\\s+${adverbs}${taking}\\s+(?:another\\s+|home\\s+)?${small}`,
  'iu',
);
const returner = new RegExp(
  `${lead}${place}\\s+${adverbs}(?:returned|(?:brought|brings|gave|gives|given|hands|handed|sends|sent|is sending|mailed|shipped|took|taken|posted|passed)(?=.{0,60}\\bback\\b))`,
  'iu',
);
const bareReturner = new RegExp(`${lead}${place}\\s+${small}.{0,60}\\bback\\W*$`, 'iu');
const bareTaker = new RegExp(
  `${lead}${place}\\s+(?:\\d{1,3}|one|two|three|four|five|six)\\s*[,;.!]*\\s*(?:and\\s*)?$`,
  'iu',
);
const receiver = new RegExp(
  `\\b(?:gave|given|sold|sent|mailed|lent|handed|posted|brought|passed|dropped|left|send|give)\\s+(?:out\\s+|off\\s+)?${place}\\s+${small}`,
  'iu',
);
const toPlace =
  /(?:\s[-=]*>|(?<=\b(?:bought|taken|collected|ordered|picked up|snapped up) )by |\b(?:to (?!(?:be|throw|bin|give|sell|send|keep|use|test|take|make|get|say|go|come|have|pour|open|melt|chuck|toss|hand|put|return|write|note|tell|try|show|display|see|look|check|demonstrate|let|finish|help|celebrate|thank|eat|burn|teach|decorate|clean)\b)|at (?!\d|_)|with (?!\d|_|(?:an?|one|two|three|four|five|six|some) (?:tins?|jars?|pots?|sticks?|tubes?|of)\b)|on (?=(?:the|our|a) (?:[\w'’-]+ ){0,2}(?:market|bazaar|fair|f[eê]te|stall|festival|show|sale)\b)|in(?:to)? (?=(?:the|our|a|my) (?:[\w'’-]+ ){0,2}(?:shop|store|cafe|café|salon|deli|library|office|school|tea ?room|hall|raffle|hamper)\b)))\s*/i;
const fromPlace = /\bfrom\s+/i;
const forPlace = /\bfor\s+(?=(?:the|our|my|a|(?:her|his|their)(?= \p{L}))\b|\p{Lu})/u;

/** "My aunt came by on Sunday, she left with 2 tins": who it was is said before. */
const visitor = new RegExp(
  `${lead}(?:(?:i|we) had\\s+)?${place}\\s+(?:had |has |have |just )?(?:came|called|rang|popped|visited|phoned|dropped|stopped|wrote|looked in|was here|were here|texted|emailed|over\\b)`,
  'iu',
);
const ofSomebody =
  /\b(?:he|she|they)\b.{0,20}\b(?:took|left|got|bought|went|had|has)\b|\b(?:gave|brought|sold|sent|handed|took) (?:him|her|them)\b/i;

const named = (text: string, pattern: RegExp): string | undefined => {
  const name = pattern.exec(text)?.[1]?.trim();
  return name === undefined || noPlace.test(name) ? undefined : name;
};

const goVerb =
  /\b(?:gave|given|give|sold|sent|took|taken|went|gone|handed|left|brought|donated|posted|delivered|lent|swapped|flogged|shifted)\b/i;

/** "She was so kind to water my plants, so I gave her two": where to is said after the verb, or first of all. */
const fromVerb = (text: string): string =>
  /^(?:\W|_|\band\b|\balso\b)*to\b/i.test(text) ? text : text.slice(goVerb.exec(text)?.index ?? 0);

const pronoun = /^(?:her|him|them|us|me|it|you|(?:her|him|my|them|our)sel(?:f|ves))$/i;

/** "The tea room took 6", "gave the library 3 tins", "6 to the fair", "2 came back from the shop". */
const placeIn = (text: string, how: How): string | undefined => {
  if (how === 'back')
    return nameAfter(text, fromPlace)?.name ?? named(text, returner) ?? named(text, bareReturner);
  const after = nameAfter(fromVerb(text), toPlace)?.name;
  if (after !== undefined && !pronoun.test(after)) return after;
  if (how === 'kept' || how === 'wasted') return undefined;
  return (
    named(text, taker) ?? named(text, receiver) ?? nameAfter(text, forPlace)?.name ?? named(text, bareTaker)
  );
};

const visitorIn = (whole: string, clause: string, how: How | undefined): string | undefined =>
  (how === 'given' || how === 'sold') && ofSomebody.test(clause) ? named(whole, visitor) : undefined;

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
  const said = clauses.map(
    ({ text }, at) => placeIn(text, ways[at] ?? 'given') ?? visitorIn(bench.rest.text, text, ways[at]),
  );
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
