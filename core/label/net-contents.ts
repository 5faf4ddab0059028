import { fail, ok, type Result } from '../result.ts';
import type { Region } from '../settings.ts';

/** One avoirdupois ounce is 28.349523125 g exactly; here in nanograms, so that nothing is lost to binary fractions. */
const ounceNg = 28_349_523_125n;
const ngPerMicrogram = 1000n;

const nanograms = (grams: number): bigint => BigInt(Math.round(grams * 1e6)) * ngPerMicrogram;

/** Hundredths of an ounce in so many grams, rounded down: a label must not overstate (21 CFR 701.13; NIST Handbook 130). */
const centiOunces = (grams: number): number => Number((nanograms(grams) * 100n) / ounceNg);

export const ouncesUnder = (grams: number): number => centiOunces(grams) / 100;

/** Exact grams of so many hundredths of an ounce, rounded up to 0.01 g: what the tin has to hold. */
const gramsToHold = (ounces: number): number => {
  const exact = BigInt(Math.round(ounces * 100)) * ounceNg;
  const step = 1_000_000_000n;
  return Number((exact + step - 1n) / step) / 100;
};

/** Packs of less than this need no declared contents in the EU and Great Britain (Article 19(1)(b)); 5 g itself does. */
const freeBelowG = 5;
/** A quarter ounce: US packs below it are freed on a labelled card or in a labelled box (21 CFR 1.24). */
const smallUsOunces = 0.25;

export interface NetContents {
  /** Grams as declared, rounded down to what is printed. */
  readonly grams: number;
  /** Ounces rounded down to two decimals. */
  readonly ounces: number;
  readonly printed: string;
  /** False where the law asks for no figure; a figure that is printed has to be true all the same. */
  readonly required: boolean;
  /** Freed only on a labelled card or in a labelled box. */
  readonly freedOnCard: boolean;
  /** Least a tin has to hold so that neither figure overstates, in grams. */
  readonly holdG: number;
}

export type NetProblem = { readonly code: 'net-too-small' | 'net-too-large'; readonly grams: number };

const least = 0.3;
const most = 1000;

const floorTo = (grams: number, decimals: number): number => {
  const scale = 10 ** decimals;
  return Math.floor(Number((grams * scale).toFixed(6))) / scale;
};

/** Canada prints at most three figures (from memory, low confidence); elsewhere two decimals at most. */
const printedGrams = (grams: number, region: Region): number => {
  if (region !== 'ca') return floorTo(grams, 2);
  if (grams >= 100) return floorTo(grams, 0);
  return floorTo(grams, grams >= 10 ? 1 : 2);
};

/**
 * The net line: grams in the EU, Great Britain, Canada and Australia; ounces and grams in the US. `declared` is what one
 * tin holds, in grams or in ounces as the maker says it. Problems: under 0.3 g or over 1000 g.
 */
export const netContents = (
  declared: { readonly grams: number } | { readonly ounces: number },
  region: Region,
): Result<NetContents, NetProblem> => {
  const said = 'ounces' in declared ? floorTo(declared.ounces, 2) : undefined;
  const exact = 'grams' in declared ? declared.grams : Number(ounceNg) * (said ?? 0) * 1e-9;
  if (exact < least) return fail({ code: 'net-too-small', grams: exact });
  if (exact > most) return fail({ code: 'net-too-large', grams: exact });
  const grams = printedGrams(exact, region);
  const ounces = said ?? ouncesUnder(exact);
  return ok({
    grams,
    ounces,
    printed: region === 'us' ? `Net Wt. ${ounces} oz (${grams} g)` : `${grams} g`,
    required: !(region === 'eu' || region === 'uk') || exact >= freeBelowG,
    freedOnCard: region === 'us' && nanograms(exact) * 100n < BigInt(smallUsOunces * 100) * ounceNg,
    holdG: region === 'us' ? Math.max(grams, gramsToHold(ounces)) : grams,
  });
};
