import { isTaking } from './batch-gone-places.ts';
import { howIn } from './batch-gone-verbs.ts';
import type { BenchReading } from './bench-reading.ts';
import { isGroupNumber } from './group-number.ts';
import type { Item } from './item.ts';

// How many containers a message tells of, and where: "12 tins", "one", "all", "each of the 4 leaders got one".

/** Where a number of containers stands, or "all" of them. */
export interface Mark {
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
export const marksIn = ({ rest }: BenchReading): readonly Mark[] => {
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
