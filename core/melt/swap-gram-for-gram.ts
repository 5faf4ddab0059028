import { ingredientById, isWax } from '../ingredients.ts';
import { fail, ok, type Result } from '../result.ts';
import type { BlendLine } from './blend.ts';
import { type ExchangedLine, firming, gramForGram, isLiquid, linesAt } from './exchange.ts';
import { structureAt } from './firmness.ts';
import { percentFor, sliding } from './slide.ts';
import {
  asked,
  blendOfLines,
  figuresOf,
  type Held,
  notEnough,
  notesOf,
  percentOrNone,
} from './swap-parts.ts';
import type { SwapOptions, SwapProblem, Swapped } from './swapped.ts';

/** What a wax adds to a gram-for-gram swap to bring the firmness back. */
export interface GramForGramOptions extends SwapOptions {
  /** A wax that makes good what firmness is lost, against the liquid oil. */
  readonly firmWith?: string;
}

export interface SwappedGramForGram extends Swapped {
  /** Percent of the wax added; missing when none was asked for. */
  readonly addedPercent?: number;
}

const swapLiquidly = (work: Held, lines: readonly ExchangedLine[]): Result<Swapped, SwapProblem> => {
  const { ask, exchange } = work;
  const after = blendOfLines(lines);
  if (!after.ok) return after;
  const before = figuresOf(ask.before, ask.celsius);
  const figures = figuresOf(after.value, ask.celsius);
  return ok({
    takenPercent: exchange.takenPercent,
    percent: exchange.takenPercent,
    ratioByWeight: 1,
    range: [exchange.takenPercent, exchange.takenPercent],
    lines,
    celsius: ask.celsius,
    before,
    after: figures,
    blendBefore: ask.before,
    blendAfter: after.value,
    notes: notesOf(ask.from, ask.to, before, figures),
  });
};

/**
 * Swaps gram for gram and, with `firmWith`, adds as much of that wax from the liquid oil as brings the firmness at
 * `celsius` back (none when it is firm enough already).
 */
export const swapGramForGram = (
  lines: readonly BlendLine[],
  fromId: string,
  toId: string,
  options: GramForGramOptions = {},
): Result<SwappedGramForGram, SwapProblem> => {
  const ask = asked(lines, fromId, toId, options);
  if (!ask.ok) return ask;
  const { from, to, celsius, before } = ask.value;
  const wax = ingredientById(to);
  if (isLiquid(from) && wax && isWax(wax)) return fail({ code: 'wax-cannot-be-oil', ingredient: to });
  const exchange = gramForGram(lines, from, to, options.share);
  if (!exchange.ok) return exchange;
  const work: Held = { exchange: exchange.value, ask: ask.value };
  const plain = linesAt(exchange.value, 0);
  if (options.firmWith === undefined) return swapLiquidly(work, plain);
  const wanted = structureAt(before.freezing.aged, celsius);
  const more = firming(plain, ingredientById(options.firmWith)?.id ?? options.firmWith, [to]);
  if (!more.ok) return more;
  const added = percentOrNone(percentFor(sliding(more.value), more.value.most, celsius, wanted));
  if (added === undefined) return fail(notEnough({ ...work, exchange: { ...more.value, takenPercent: 0 } }));
  const done = swapLiquidly(work, linesAt(more.value, added));
  return done.ok ? ok({ ...done.value, addedPercent: added }) : done;
};
