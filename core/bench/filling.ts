import { fail, ok, type Result } from '../result.ts';
import type { Region } from '../settings.ts';

/**
 * Filling by declared quantity, in grams (or millilitres alike). Great Britain and the EU: gov.uk "Weights and
 * measures: the law, packaged goods" (read); Australia: measurement.gov.au (read); US: NIST Handbook 133, table 2-5
 * (from memory); Canada: no figure found.
 */
interface Band {
  readonly upTo: number;
  /** Percent of the declared quantity, or a flat amount. */
  readonly percent?: number;
  readonly flat?: number;
}

const bands: readonly Band[] = [
  { upTo: 50, percent: 9 },
  { upTo: 100, flat: 4.5 },
  { upTo: 200, percent: 4.5 },
  { upTo: 300, flat: 9 },
  { upTo: 500, percent: 3 },
  { upTo: 1000, flat: 15 },
  { upTo: 10_000, percent: 1.5 },
  { upTo: 15_000, flat: 150 },
  { upTo: 25_000, percent: 1 },
];

/** The average system covers packs of 5 g to 25 kg; smaller ones have to hold what they say, every one. */
export const averageFrom = 5;
const averageTo = 25_000;

/** A tenth of a gram, rounded up; a percentage that comes out even stays. */
const upToTenth = (grams: number): number => Math.ceil(Number((grams * 10).toFixed(6))) / 10;

/** Tolerable negative error of a declared quantity, grams; undefined outside the average system. */
export const tolerableError = (declaredG: number): number | undefined => {
  if (!(declaredG >= averageFrom) || declaredG > averageTo) return undefined;
  const band = bands.find(({ upTo }) => declaredG <= upTo);
  return (
    band?.flat ?? (band?.percent === undefined ? undefined : upToTenth((declaredG * band.percent) / 100))
  );
};

const tidy = (grams: number): number => Number(grams.toFixed(4));

/** `every`: each pack holds what it says. `average`: the mean does, and single ones stay within a tolerance. */
export type FillRule = 'every' | 'average';

export interface FillReport {
  readonly rule: FillRule;
  readonly region: Region;
  readonly declaredG: number;
  /** How far a single pack may fall short, grams; and the least it may hold: under `t1` it counts as short, under `t2` it may not go out. */
  readonly toleranceG?: number;
  readonly t1G?: number;
  readonly t2G?: number;
  readonly status: 'read' | 'memory' | 'none-found';
  readonly meanG?: number;
  readonly weighed: readonly number[];
  /** Packs under T1 (or under what they declare where every pack counts), and those that may not go out at all. */
  readonly short: readonly number[];
  readonly inadequate: readonly number[];
  /** What was weighed is all right by this rule; undefined when nothing was weighed. */
  readonly ok?: boolean;
}

export type FillProblem = { readonly code: 'not-a-fill' };

interface Tolerance {
  readonly rule: FillRule;
  readonly toleranceG?: number;
  readonly t2G?: number;
  readonly status: FillReport['status'];
}

/** Share a single pack may be short of. */
const auShort = 0.05;
/** Up to 36 g, NIST Handbook 133 table 2-5 (from memory); heavier packs have figures that were not seen. */
const usShort = { upTo: 36, share: 0.1 } as const;

const toleranceOf = (declaredG: number, region: Region): Tolerance => {
  if (region === 'au')
    return {
      rule: 'average',
      toleranceG: tidy(declaredG * auShort),
      t2G: tidy(declaredG * (1 - auShort)),
      status: 'read',
    };
  if (region === 'us' && declaredG <= usShort.upTo)
    return {
      rule: 'average',
      toleranceG: tidy(declaredG * usShort.share),
      t2G: tidy(declaredG * (1 - usShort.share)),
      status: 'memory',
    };
  const error = region === 'eu' || region === 'uk' ? tolerableError(declaredG) : undefined;
  if (error !== undefined)
    return { rule: 'average', toleranceG: error, t2G: tidy(declaredG - 2 * error), status: 'read' };
  const found = (region === 'eu' || region === 'uk') && declaredG < averageFrom;
  return { rule: 'every', status: found ? 'read' : 'none-found' };
};

/** At most one in forty may be under T1 (older official guidance on the packers' rules, read). */
const fewShort = 1 / 40;

const isMostlyFull = (report: FillReport): boolean => {
  const { weighed, short, inadequate, declaredG, meanG = 0, rule } = report;
  if (rule === 'every') return short.length === 0;
  // A single pack says nothing of the mean: it only has to be no short one.
  const full = weighed.length === 1 || meanG >= declaredG;
  return full && inadequate.length === 0 && short.length <= weighed.length * fewShort;
};

const meanOf = (weights: readonly number[]): number =>
  tidy(weights.reduce((sum, each) => sum + each, 0) / weights.length);

/** Compares what was weighed with what is declared, by the region's rule; without weights only the tolerance. */
export const judgeFill = (
  declaredG: number,
  weighed: readonly number[],
  region: Region,
): Result<FillReport, FillProblem> => {
  const isWeight = (grams: number): boolean => Number.isFinite(grams) && grams > 0 && grams <= averageTo;
  if (![declaredG, ...weighed].every(isWeight)) return fail({ code: 'not-a-fill' });
  const { rule, toleranceG, t2G, status } = toleranceOf(declaredG, region);
  const t1G = toleranceG === undefined ? undefined : tidy(declaredG - toleranceG);
  const least = rule === 'every' ? declaredG : (t1G ?? declaredG);
  const report: FillReport = {
    rule,
    region,
    declaredG,
    ...(toleranceG === undefined ? {} : { toleranceG }),
    ...(t1G === undefined ? {} : { t1G }),
    ...(t2G === undefined ? {} : { t2G }),
    status,
    ...(weighed.length > 0 ? { meanG: meanOf(weighed) } : {}),
    weighed,
    short: weighed.filter((grams) => grams < least),
    inadequate: t2G === undefined ? [] : weighed.filter((grams) => grams < t2G),
  };
  return ok(weighed.length > 0 ? { ...report, ok: isMostlyFull(report) } : report);
};
