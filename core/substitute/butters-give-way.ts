import { type BlendLine, blendOf } from '../melt/blend.ts';
import type { Exchange, ExchangedLine, SlidingLine } from '../melt/exchange.ts';
import { linesAt } from '../melt/exchange.ts';
import { structureAt } from '../melt/firmness.ts';
import { percentFor, sliding } from '../melt/slide.ts';
import { percentOrNone } from '../melt/swap-parts.ts';
import { roleOfId } from './role.ts';

const holdC = 25;

interface Weighed extends BlendLine {
  readonly line: number;
}

const sum = (lines: readonly Weighed[]): number => lines.reduce((all, { weight }) => all + weight, 0);

/** What stays of a line of which `share` goes. */
const left = ({ ingredient, weight, line }: Weighed, share: number) =>
  share < 1 ? [{ ingredient, line, start: weight * (1 - share), slope: 0 }] : [];

/** A line that stays: a butter gives way to what comes in and takes up what went, anything else stands. */
const givingWay = (
  { ingredient, weight, line }: Weighed,
  gives: boolean,
  most: number,
  factor: number,
): SlidingLine =>
  gives
    ? { ingredient, line, start: weight * factor, slope: -weight / most }
    : { ingredient, line, start: weight, slope: 0 };

/** Takes `share` of `from` out and slides `to` in against the butters; weights are percent. */
const exchangeOf = (
  recipe: readonly BlendLine[],
  from: string,
  to: string,
  share: number,
): Exchange | undefined => {
  const lines = recipe.map((line, place) => ({ ...line, line: place }));
  const taken = lines.filter(({ ingredient }) => ingredient === from);
  const giving = lines.filter(
    ({ ingredient }) => ingredient !== from && ingredient !== to && roleOfId(ingredient) === 'butter',
  );
  const [first] = taken;
  const most = sum(giving);
  if (!first || most <= 0) return undefined;
  const own = lines.find(({ ingredient }) => ingredient === to);
  const gone = sum(taken) * share;
  const factor = (most + gone) / most;
  const comesIn = { ingredient: to, start: own?.weight ?? 0, slope: 1 };
  const place = own ?? first;
  const slid = lines.flatMap((line): readonly SlidingLine[] => {
    const comes = line === place ? [{ ...comesIn, ...(own === undefined ? {} : { line: own.line }) }] : [];
    if (taken.includes(line)) return [...left(line, share), ...comes];
    return line === own ? comes : [givingWay(line, giving.includes(line), most, factor)];
  });
  return { lines: slid, most: most + gone };
};

/**
 * The same swap for a recipe without liquid oil: the butters give way instead, and firmness at 25 °C holds. Weights
 * are percent. Nothing when there is no butter either, or when even all of it is not enough.
 */
export const swapAgainstButters = (
  recipe: readonly BlendLine[],
  from: string,
  to: string,
  share = 1,
): { readonly percent: number; readonly lines: readonly ExchangedLine[] } | undefined => {
  const before = blendOf(recipe);
  const exchange = exchangeOf(recipe, from, to, share);
  if (!before.ok || !exchange) return undefined;
  const wanted = structureAt(before.value.freezing.aged, holdC);
  const percent = percentOrNone(percentFor(sliding(exchange), exchange.most, holdC, wanted));
  return percent === undefined ? undefined : { percent, lines: linesAt(exchange, percent) };
};
