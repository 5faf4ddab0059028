import { type BlendLine, blendOf } from '../melt/blend.ts';
import type { Exchange, ExchangedLine } from '../melt/exchange.ts';
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

/** Takes all of `from` out and slides `to` in against the butters; weights are percent. */
const exchangeOf = (recipe: readonly BlendLine[], from: string, to: string): Exchange | undefined => {
  const lines = recipe.map((line, place) => ({ ...line, line: place }));
  const taken = lines.filter(({ ingredient }) => ingredient === from);
  const giving = lines.filter(
    ({ ingredient }) => ingredient !== from && ingredient !== to && roleOfId(ingredient) === 'butter',
  );
  const [first] = taken;
  const most = sum(giving);
  if (!first || most <= 0) return undefined;
  const own = lines.find(({ ingredient }) => ingredient === to);
  const factor = (most + sum(taken)) / most;
  const comesIn = { ingredient: to, start: own?.weight ?? 0, slope: 1 };
  const slid = lines.flatMap((line) => {
    if (line === (own ?? first)) return [{ ...comesIn, ...(own === undefined ? {} : { line: own.line }) }];
    if (taken.includes(line)) return [];
    const gives = giving.includes(line);
    const { ingredient, weight } = line;
    return [
      {
        ingredient,
        line: line.line,
        start: gives ? weight * factor : weight,
        slope: gives ? -weight / most : 0,
      },
    ];
  });
  return { lines: slid, most: most + sum(taken) };
};

/**
 * The same swap for a recipe without liquid oil: the butters give way instead, and firmness at 25 °C holds. Weights
 * are percent. Nothing when there is no butter either, or when even all of it is not enough.
 */
export const swapAgainstButters = (
  recipe: readonly BlendLine[],
  from: string,
  to: string,
): { readonly percent: number; readonly lines: readonly ExchangedLine[] } | undefined => {
  const before = blendOf(recipe);
  const exchange = exchangeOf(recipe, from, to);
  if (!before.ok || !exchange) return undefined;
  const wanted = structureAt(before.value.freezing.aged, holdC);
  const percent = percentOrNone(percentFor(sliding(exchange), exchange.most, holdC, wanted));
  return percent === undefined ? undefined : { percent, lines: linesAt(exchange, percent) };
};
