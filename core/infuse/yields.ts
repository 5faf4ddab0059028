import { z } from 'zod';
import { fail, ok, type Result } from '../result.ts';

/** Heaviest amount one infusion may have, in grams: a tonne is no small batch. */
export const mostInfusionG = 1_000_000;

const grams = z.number().positive().max(mostInfusionG);

/** A weighed yield: what went into the jar and what was left of the oil after straining. */
export const yieldNoted = z.strictObject({
  kind: z.literal('yield-noted'),
  herb: z.string().min(1).max(60),
  herbG: grams,
  oilInG: grams,
  oilOutG: grams,
});
export type YieldNoted = z.output<typeof yieldNoted>;

/** The group's own figure of a herb is forgotten; common practice counts again. */
export const yieldRemoved = z.strictObject({
  kind: z.literal('yield-removed'),
  herb: z.string().min(1).max(60),
});
export type YieldRemoved = z.output<typeof yieldRemoved>;

/** One weighing as the book keeps it: `keptG` of oil stayed in `herbG` of herb and in the cloth. */
export const weighedYield = z.strictObject({ herbG: grams, keptG: z.number().nonnegative() });
export type WeighedYield = z.output<typeof weighedYield>;

/** The last weighings by herb, oldest first. */
export const yieldsSchema = z.record(z.string(), z.array(weighedYield).readonly());
export type Yields = Readonly<Record<string, readonly WeighedYield[]>>;

/** Weighings that count: an old or mistaken one drops out after five newer ones. */
const mostWeighings = 5;

export type YieldProblem =
  /** More oil came out than went in: one of the figures is wrong. */
  | { readonly code: 'more-out-than-in'; readonly oilInG: number; readonly oilOutG: number }
  /** No herb holds that much: oil was spilt, or one of the figures is wrong. */
  | { readonly code: 'too-much-kept'; readonly uptakeGPerG: number; readonly mostGPerG: number };

/** More than three times what the thirstiest flowers are said to keep: a slip, not a yield (house choice). */
export const mostUptakeGPerG = 6;

/** Grams of oil that one gram of herb kept, from a weighed yield. */
export const weighedUptake = (noted: Omit<YieldNoted, 'kind' | 'herb'>): Result<number, YieldProblem> => {
  const { herbG, oilInG, oilOutG } = noted;
  if (oilOutG > oilInG) return fail({ code: 'more-out-than-in', oilInG, oilOutG });
  const uptakeGPerG = (oilInG - oilOutG) / herbG;
  return uptakeGPerG > mostUptakeGPerG
    ? fail({ code: 'too-much-kept', uptakeGPerG, mostGPerG: mostUptakeGPerG })
    : ok(uptakeGPerG);
};

/** The weighings after one more, or without those of a herb; `yields` stays as it was. */
export const afterYield = (yields: Yields, event: YieldNoted | YieldRemoved): Yields => {
  if (event.kind === 'yield-removed') {
    return Object.fromEntries(Object.entries(yields).filter(([herb]) => herb !== event.herb));
  }
  const before = Object.hasOwn(yields, event.herb) ? (yields[event.herb] ?? []) : [];
  const keptG = Number(Math.max(0, event.oilInG - event.oilOutG).toFixed(6));
  return { ...yields, [event.herb]: [...before, { herbG: event.herbG, keptG }].slice(-mostWeighings) };
};
