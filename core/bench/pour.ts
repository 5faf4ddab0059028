import { ingredientById } from '../ingredients.ts';
import { fail, ok, type Result } from '../result.ts';
import type { PouredLine } from './batch-events.ts';
import { type BestBefore, bestBeforeOf, type DatedLine, type DatedLot } from './best-before.ts';
import { lotKey } from './codes.ts';
import { plusDays } from './days.ts';
import { drawFor, isLotOf, lessDrawn } from './draw.ts';
import type { DateLimit, Draw } from './event-fields.ts';
import { plusG, sumG } from './exact.ts';
import type { Bench, Lot } from './state.ts';

/** One line as it was weighed out, in grams. */
export interface WeighedLine {
  readonly ingredient: string;
  readonly grams: number;
  readonly infusedWith?: string | undefined;
  readonly fresh?: boolean | undefined;
  readonly strained?: boolean | undefined;
}

export interface PourAsked {
  /** ISO day. */
  readonly madeOn: string;
  readonly lines: readonly WeighedLine[];
  /** Lots named by the maker: drawn first, in this order. */
  readonly from: readonly string[];
  /** The group's own ceiling for best before, in months. */
  readonly capMonths?: number | undefined;
  /** True when the maker used a lot past its date and knows it. */
  readonly expiredToo?: boolean | undefined;
  /** Lines with what was drawn for them before, where nothing is drawn anew. */
  readonly kept?: readonly PouredLine[] | undefined;
}

export interface Pour extends BestBefore {
  readonly lines: readonly PouredLine[];
  /** What no lot covered. */
  readonly short: readonly { readonly ingredient: string; readonly grams: number }[];
  /** Lots that would have covered it and are past their date, or end on that very day. */
  readonly leftAlone: readonly string[];
  /** Lots past their date that were drawn because the maker named them. */
  readonly pastDate: readonly string[];
  /** Named lots that nothing was drawn from: of something else, or empty. */
  readonly unused: readonly string[];
  /** Named lots that are not in the book. */
  readonly unknown: readonly string[];
}

export type PourProblem = {
  readonly code: 'lot-expired';
  readonly lot: string;
  readonly ingredient: string;
  readonly bestBefore: string;
};

interface Drawing {
  readonly line: WeighedLine;
  readonly draws: readonly Draw[];
  readonly shortG: number;
}

/** A lot that ends on the day of the pour is no longer drawn by itself: its date would be over at once. */
const dayAfter = (madeOn: string): string => plusDays(madeOn, 1);

/** What else may stand for an infused oil: the plain one, steeped for this very batch. */
const plainOf = ({ ingredient, infusedWith }: WeighedLine): string | undefined =>
  infusedWith !== undefined && ingredientById(ingredient)?.kind !== undefined && ingredient !== 'infused-oil'
    ? ingredient
    : undefined;

/** The named lots that may go into one line: none that is just what another line wants, and not what this one does. */
const namedForLine = (bench: Bench, { from, lines }: PourAsked, line: WeighedLine): readonly string[] =>
  from.filter((code) => {
    const lot = bench.lots.get(lotKey(code));
    return !lot || isLotOf(lot, line) || !lines.some((other) => isLotOf(lot, other));
  });

const drawLines = (bench: Bench, asked: PourAsked): { drawings: Drawing[]; leftAlone: Set<string> } => {
  const leftAlone = new Set<string>();
  const on = dayAfter(asked.madeOn);
  let now = bench;
  const take = (
    need: Parameters<typeof drawFor>[1],
    line: WeighedLine,
  ): { draws: readonly Draw[]; shortG: number } => {
    const drawn = drawFor(now, { ...need, from: namedForLine(bench, asked, line) }, on);
    now = lessDrawn(now, drawn.draws);
    for (const lot of drawn.expired) if (!drawn.draws.some((each) => each.lot === lot)) leftAlone.add(lot);
    return drawn;
  };
  const steeped = new Set<string>();
  const drawings = [...asked.lines]
    .sort((a, b) => Number(a.strained ?? false) - Number(b.strained ?? false))
    .map((line): Drawing => {
      // The herb of an oil that was infused before is in that oil's own lot.
      if (line.strained && steeped.has(line.ingredient)) return { line, draws: [], shortG: 0 };
      const { ingredient, infusedWith, grams } = line;
      const first = take({ ingredient, grams, infusedWith }, line);
      const plain = plainOf(line);
      if (infusedWith !== undefined && first.shortG === 0) steeped.add(infusedWith);
      if (plain === undefined || first.shortG === 0) return { line, ...first };
      const more = take({ ingredient: plain, grams: first.shortG }, line);
      return { line, draws: [...first.draws, ...more.draws], shortG: more.shortG };
    });
  return { drawings, leftAlone };
};

const keptDrawings = (kept: readonly PouredLine[]): { drawings: Drawing[]; leftAlone: Set<string> } => ({
  drawings: kept.map((line) => ({ line, draws: line.draws, shortG: line.shortG ?? 0 })),
  leftAlone: new Set(),
});

const lotsOf = (bench: Bench, drawings: readonly Drawing[]): readonly Lot[] => {
  const codes = new Set(drawings.flatMap(({ draws }) => draws.map(({ lot }) => lotKey(lot))));
  return [...codes].flatMap((key) => bench.lots.get(key) ?? []);
};

const datedLines = (drawings: readonly Drawing[]): DatedLine[] => {
  const total = sumG(drawings.filter(({ line }) => !line.strained).map(({ line }) => line.grams));
  return drawings
    .filter(({ line }) => !line.strained || line.fresh)
    .map(({ line, shortG, draws }) => ({
      ingredient: line.ingredient,
      percent: line.strained ? 0 : (100 * line.grams) / total,
      fresh: line.fresh,
      infusedWith: line.infusedWith,
      fromLots: shortG === 0 && draws.length > 0,
    }));
};

const isOver = ({ bestBefore }: DatedLot, madeOn: string): boolean =>
  bestBefore !== undefined && bestBefore <= madeOn;

/** The date with lots past theirs in it: the oldest of them decides. */
const withPast = (usual: BestBefore, past: readonly DatedLot[]): BestBefore => {
  const [oldest] = [...past].sort((a, b) => ((a.bestBefore ?? '') < (b.bestBefore ?? '') ? -1 : 1));
  if (oldest?.bestBefore === undefined) return usual;
  const because: DateLimit = { kind: 'lot', lot: oldest.lot, ingredient: oldest.ingredient };
  return { bestBefore: oldest.bestBefore, because, rough: false };
};

const pouredLine = ({ line, draws, shortG }: Drawing, total: number, keepShort: boolean): PouredLine => ({
  ingredient: line.ingredient,
  ...(line.infusedWith ? { infusedWith: line.infusedWith } : {}),
  ...(line.strained
    ? { strained: true }
    : { percent: Number(Math.min(100, (100 * line.grams) / total).toFixed(4)) }),
  grams: line.grams,
  draws: [...draws],
  ...(keepShort && shortG > 0 ? { shortG } : {}),
});

const shortOf = (drawings: readonly Drawing[]): Pour['short'] => {
  const sums = new Map<string, number>();
  for (const { line, shortG } of drawings)
    if (shortG > 0) sums.set(line.ingredient, plusG(sums.get(line.ingredient) ?? 0, shortG));
  return [...sums].map(([ingredient, grams]) => ({ ingredient, grams }));
};

/** Named lots by what became of them. */
const namedLots = (bench: Bench, asked: PourAsked, drawings: readonly Drawing[]) => {
  const drawn = new Set(drawings.flatMap(({ draws }) => draws.map(({ lot }) => lotKey(lot))));
  const unknown = asked.from.filter((code) => !bench.lots.has(lotKey(code)));
  const unused = asked.from.filter((code) => bench.lots.has(lotKey(code)) && !drawn.has(lotKey(code)));
  return { unknown, unused };
};

/**
 * What a pour draws and how long it keeps: each line from the named lots first, then by oldest best before, split over
 * lots; the rest is short and said so. An infused line takes the house's infused oil and, where there is none, the plain
 * one. A group that keeps no stock at all has no shortfall.
 * Problem `lot-expired`: a named lot ended on or before the day, and `expiredToo` is not set.
 */
export const pourFrom = (bench: Bench, asked: PourAsked): Result<Pour, PourProblem> => {
  const { drawings, leftAlone } = asked.kept ? keptDrawings(asked.kept) : drawLines(bench, asked);
  const { madeOn, capMonths } = asked;
  const used = lotsOf(bench, drawings);
  const past = used.filter((lot) => isOver(lot, madeOn));
  const lots = asked.expiredToo ? used.filter((lot) => !past.includes(lot)) : used;
  const dated = bestBeforeOf({ madeOn, lines: datedLines(drawings), lots, capMonths });
  if (!dated.ok) return fail(dated.problem);
  const keepsStock = bench.lots.size > 0;
  const total = sumG(asked.lines.filter(({ strained }) => !strained).map(({ grams }) => grams));
  return ok({
    ...withPast(dated.value, past),
    lines: drawings.map((drawing) => pouredLine(drawing, total, keepsStock)),
    short: keepsStock ? shortOf(drawings) : [],
    leftAlone: [...leftAlone],
    pastDate: past.map(({ lot }) => lot),
    ...namedLots(bench, asked, drawings),
  });
};
