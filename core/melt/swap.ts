import { fail, ok, type Result } from '../result.ts';
import type { BlendLine } from './blend.ts';
import { type Exchange, isLiquid, linesAt, replacing } from './exchange.ts';
import { structureAt } from './firmness.ts';
import { percentFor, percentForBoth, type StrengthEnd, sliding } from './slide.ts';
import { solidsAt } from './solve.ts';
import { swapGramForGram } from './swap-gram-for-gram.ts';
import {
  asked,
  blendOfLines,
  figuresOf,
  type Held,
  meltsIn,
  notEnough,
  notesOf,
  percentOrNone,
} from './swap-parts.ts';
import type { SwapOptions, SwapProblem, Swapped } from './swapped.ts';
import { fullyMeltedC } from './temperatures.ts';

interface Sliding extends Held {
  readonly original: Exchange;
}

/** The recipe as it stands, in the form that lets a strength be varied. */
const standing = (lines: readonly BlendLine[]): Exchange => ({
  lines: lines.map(({ ingredient, weight }) => ({ ingredient, start: weight, slope: 0 })),
  most: 0,
});

/** Percent of the new ingredient that holds the structure, with its strength taken from one end of its evidence. */
const held = ({ exchange, ask, original }: Sliding, end: StrengthEnd): ReturnType<typeof percentFor> => {
  const strengthOf = (id: string): StrengthEnd => (id === ask.to ? end : 'value');
  const wanted = structureAt(sliding(original, strengthOf)(0), ask.celsius);
  return percentFor(sliding(exchange, strengthOf), exchange.most, ask.celsius, wanted);
};

const withFullMelt = ({ exchange, ask }: Sliding): Swapped['withFullMelt'] => {
  const clearC = fullyMeltedC(ask.before);
  const structure = structureAt(ask.before.freezing.aged, ask.celsius);
  if (clearC === undefined || structure <= 0) return undefined;
  const percent = percentForBoth(sliding(exchange), exchange.most, ask.celsius, { structure, clearC });
  if (percent === undefined) return undefined;
  const lines = linesAt(exchange, percent);
  const blend = blendOfLines(lines);
  return blend.ok ? { percent, lines, after: figuresOf(blend.value, ask.celsius) } : undefined;
};

const swapped = (work: Sliding, percent: number): Result<Swapped, SwapProblem> => {
  const { exchange, ask } = work;
  const lines = linesAt(exchange, percent);
  const after = blendOfLines(lines);
  if (!after.ok) return after;
  const before = figuresOf(ask.before, ask.celsius);
  const figures = figuresOf(after.value, ask.celsius);
  const both = withFullMelt(work);
  return ok({
    takenPercent: exchange.takenPercent,
    percent,
    ratioByWeight: percent / exchange.takenPercent,
    range: [percentOrNone(held(work, 'high')) ?? percent, percentOrNone(held(work, 'low'))],
    lines,
    celsius: ask.celsius,
    before,
    after: figures,
    blendBefore: ask.before,
    blendAfter: after.value,
    ...(both === undefined ? {} : { withFullMelt: both }),
    notes: [
      ...(percent === 0 ? (['already-firm'] as const) : []),
      ...notesOf(ask.from, ask.to, before, figures),
    ],
  });
};

/**
 * Swaps all of one ingredient for another so that firmness at `celsius` holds: the new one slides in against the liquid
 * oil until the structure is the old one. Two liquids are swapped gram for gram. A liquid cannot carry firmness and a
 * wax cannot stand in for an oil: both are problems, as is a recipe without liquid oil to give way.
 */
export const swap = (
  lines: readonly BlendLine[],
  fromId: string,
  toId: string,
  options: SwapOptions = {},
): Result<Swapped, SwapProblem> => {
  const ask = asked(lines, fromId, toId, options);
  if (!ask.ok) return ask;
  const { from, to, celsius } = ask.value;
  if (isLiquid(from)) return swapGramForGram(lines, from, to, options);
  const alone = meltsIn(to);
  if (!alone.ok) return alone;
  if (solidsAt(alone.value.freezing.aged, celsius).structure <= 0)
    return fail({ code: 'liquid-cannot-carry', ingredient: to, celsius });
  const exchange = replacing(lines, from, to, options.share);
  if (!exchange.ok) return exchange;
  const work: Sliding = { exchange: exchange.value, ask: ask.value, original: standing(lines) };
  const percent = percentOrNone(held(work, 'value'));
  return percent === undefined ? fail(notEnough(work)) : swapped(work, percent);
};
