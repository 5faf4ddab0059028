import { defined } from '../defined.ts';
import type { Result } from '../result.ts';
import { lotKey } from './codes.ts';
import type { Draw } from './event-fields.ts';
import { plusG } from './exact.ts';
import { type Pour, type PourProblem, pourFrom, type WeighedLine } from './pour.ts';
import type { Batch, Bench } from './state.ts';

/** The bench with what a batch drew put back into its lots. */
const givenBack = (bench: Bench, draws: readonly Draw[]): Bench => {
  let { lots } = bench;
  for (const { lot, grams } of draws) {
    const key = lotKey(lot);
    const before = lots.get(key);
    if (before) lots = lots.set(key, { ...before, leftG: plusG(before.leftG, grams) });
  }
  return { ...bench, lots };
};

/** What a batch weighed out, without the lots. */
export const linesOf = ({ lines }: Pick<Batch, 'lines'>): readonly WeighedLine[] =>
  lines.map(({ ingredient, grams, infusedWith, strained }) => ({
    ingredient,
    grams,
    ...defined({ infusedWith, strained }),
  }));

/**
 * The pour of a batch reckoned again after a correction: with other lines, another day, or other lots. What it drew goes
 * back first; then the lots named now come first and those it drew from before next, so that nothing else moves. Where
 * neither lines nor lots are named it keeps what it drew to the milligram, whatever has been bought or used since.
 */
export const pouredAgain = (
  bench: Bench,
  batch: Batch,
  changed: {
    readonly madeOn?: string | undefined;
    readonly lines?: readonly WeighedLine[] | undefined;
    readonly from?: readonly string[] | undefined;
    readonly capMonths?: number | undefined;
    readonly expiredToo?: boolean | undefined;
  },
): Result<Pour, PourProblem> => {
  const draws = batch.lines.flatMap((line) => line.draws);
  const named = changed.from ?? [];
  const before = [...new Set(draws.map(({ lot }) => lot))];
  const keys = new Set(named.map(lotKey));
  const wasPast = batch.because.kind === 'lot' && batch.bestBefore <= batch.madeOn;
  return pourFrom(givenBack(bench, draws), {
    madeOn: changed.madeOn ?? batch.madeOn,
    lines: changed.lines ?? linesOf(batch),
    from: [...named, ...before.filter((lot) => !keys.has(lotKey(lot)))],
    capMonths: changed.capMonths,
    expiredToo: changed.expiredToo ?? (wasPast || undefined),
    kept: changed.lines === undefined && named.length === 0 ? batch.lines : undefined,
  });
};
