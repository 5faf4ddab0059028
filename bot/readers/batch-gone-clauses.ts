import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { isCount, type Mark, marksIn } from './batch-gone-counts.ts';
import { isTaking, leadingPlace, placeIn, trailingPlace, visitorIn } from './batch-gone-places.ts';
import { type How, howIn } from './batch-gone-verbs.ts';
import { type BenchReading, lotsWithin } from './bench-reading.ts';
import { type Clause, clausesAt } from './clauses.ts';
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
