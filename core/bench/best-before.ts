import type { FattyAcidName } from '../data/ingredient.ts';
import { ingredientById } from '../ingredients.ts';
import { fail, ok, type Result } from '../result.ts';
import { shelfLifeDays } from '../shelf-life.ts';
import { typicalAcids } from '../substitute/oxidation.ts';
import { plusDays, plusMonths } from './days.ts';
import type { DateLimit } from './event-fields.ts';

/**
 * House ceiling in months (common practice, no source), and the lower one for what tires sooner: anything fresh, honey,
 * herbs dried at home, or a fifth and more of oils rich in linolenic acid (common practice, no source).
 */
export const usualCapMonths = 12;
export const shortCapMonths = 6;
/** Alpha- and gamma-linolenic acid from which an oil counts as rich in it, in percent of its fatty acids (house choice). */
const richPercent = 10;
const fragileShare = 20;
/** A line below this share does not set the date of the whole tin by its usual shelf life (house choice). */
const datedPercent = 1;

export interface DatedLine {
  readonly ingredient: string;
  /** Percent by weight of the blend. */
  readonly percent: number;
  readonly fresh?: boolean | undefined;
  readonly infusedWith?: string | undefined;
  /** Herb dried by the maker, not bought dried. */
  readonly homeDried?: boolean | undefined;
  /** True when lots covered the line: then their dates count and not the usual shelf life. */
  readonly fromLots?: boolean;
}

export interface DatedLot {
  readonly lot: string;
  readonly ingredient: string;
  readonly bestBefore?: string | undefined;
  /** The day it was bought or made. */
  readonly on: string;
}

export interface BestBefore {
  /** ISO day. */
  readonly bestBefore: string;
  readonly because: DateLimit;
  /** True when the deciding date was reckoned from a usual shelf life and not read off a lot. */
  readonly rough: boolean;
}

export type BestBeforeProblem = {
  readonly code: 'lot-expired';
  readonly lot: string;
  readonly ingredient: string;
  readonly bestBefore: string;
};

const linolenic: readonly FattyAcidName[] = ['18:3', '18:3n6'];

/** True for an oil of which a tenth or more of the fatty acids are linolenic: flaxseed, hemp, rosehip, walnut. */
export const isFragileOil = (id: string): boolean => {
  const found = ingredientById(id);
  const acids = found && typicalAcids(found);
  return linolenic.reduce((sum, acid) => sum + (acids?.get(acid) ?? 0), 0) >= richPercent;
};

type ShortCap = Extract<DateLimit, { readonly kind: 'house' }>['why'];

const shortCapOf = (lines: readonly DatedLine[]): ShortCap | undefined => {
  if (lines.some(({ fresh }) => fresh)) return 'fresh';
  if (lines.some(({ ingredient }) => ingredient === 'honey')) return 'honey';
  if (lines.some(({ homeDried }) => homeDried)) return 'home-dried';
  const fragile = lines
    .filter(({ ingredient }) => isFragileOil(ingredient))
    .reduce((sum, { percent }) => sum + percent, 0);
  return fragile >= fragileShare ? 'fragile-oil' : undefined;
};

const houseCap = (
  lines: readonly DatedLine[],
  capMonths: number | undefined,
): DateLimit & { months: number } => {
  const short = shortCapOf(lines);
  const own = capMonths ?? usualCapMonths;
  if (short !== undefined && shortCapMonths < own)
    return { kind: 'house', months: shortCapMonths, why: short };
  return { kind: 'house', months: own, why: capMonths === undefined ? 'usual' : 'own' };
};

const lotCaps = (lots: readonly DatedLot[]): BestBefore[] =>
  lots.flatMap(({ lot, ingredient, bestBefore, on }): BestBefore[] => {
    if (bestBefore !== undefined)
      return [{ bestBefore, because: { kind: 'lot', lot, ingredient }, rough: false }];
    const months = ingredientById(ingredient)?.shelfLifeMonths?.low;
    if (months === undefined) return [];
    return [
      {
        bestBefore: plusDays(on, shelfLifeDays(months)),
        because: { kind: 'undated-lot', lot, ingredient, months },
        rough: true,
      },
    ];
  });

const lineCaps = (lines: readonly DatedLine[], madeOn: string): BestBefore[] =>
  lines.flatMap(({ ingredient, percent, fromLots }): BestBefore[] => {
    const months = ingredientById(ingredient)?.shelfLifeMonths?.low;
    if (fromLots || months === undefined || percent < datedPercent) return [];
    return [
      {
        bestBefore: plusDays(madeOn, shelfLifeDays(months)),
        because: { kind: 'ingredient', ingredient, months },
        rough: true,
      },
    ];
  });

/**
 * Best before of a water-free balm poured on `madeOn` (ISO day): the earliest of every lot used, the usual shelf life of
 * every line that no lot covered, and the house ceiling; with the reason. What a lot or the ceiling decides is stated
 * before what is reckoned, where two fall on one day. The ceiling's months are calendar months, a shelf life is
 * counted in days (`shelfLifeDays`). No standard gives such a number: a
 * maker must be able to prove the date (Regulation (EC) 1223/2009, Article 19(1)(c)); the ceilings are common practice.
 *
 * An antioxidant is left out on purpose: it slows the start of going off and rescues nothing.
 * Problem `lot-expired`: a lot ended on or before the day of making.
 */
export const bestBeforeOf = (request: {
  readonly madeOn: string;
  readonly lines: readonly DatedLine[];
  readonly lots: readonly DatedLot[];
  /** The group's own ceiling in months. */
  readonly capMonths?: number | undefined;
}): Result<BestBefore, BestBeforeProblem> => {
  const { madeOn, lines, lots } = request;
  const house = houseCap(lines, request.capMonths);
  const fromLots = lotCaps(lots);
  const expired = fromLots.find(({ bestBefore, rough }) => !rough && bestBefore <= madeOn);
  if (expired && expired.because.kind === 'lot')
    return fail({ code: 'lot-expired', ...expired.because, bestBefore: expired.bestBefore });
  const all: BestBefore[] = [
    ...fromLots,
    { bestBefore: plusMonths(madeOn, house.months), because: house, rough: false },
    ...lineCaps(lines, madeOn),
  ];
  const [first, ...rest] = all as [BestBefore, ...BestBefore[]];
  return ok(rest.reduce((least, each) => (each.bestBefore < least.bestBefore ? each : least), first));
};
