import type { PouredLine } from '../../core/bench/batch-events.ts';
import type { Draw } from '../../core/bench/event-fields.ts';
import { plusG } from '../../core/bench/exact.ts';
import { type Batch, tinsLeft, tinsOut } from '../../core/bench/state.ts';
import type { BookState } from '../../core/book.ts';
import type { Answer } from '../answer.ts';
import type { FigureValue } from '../figures.ts';

interface Used extends Draw {
  readonly ingredient: string;
}

/** Every lot a batch drew from, with the grams of all its lines together. */
export const lotsUsed = (lines: readonly PouredLine[]): readonly Used[] => {
  const used = new Map<string, Used>();
  for (const { ingredient, draws } of lines)
    for (const { lot, grams } of draws)
      used.set(lot, { lot, ingredient, grams: plusG(used.get(lot)?.grams ?? 0, grams) });
  return [...used.values()];
};

/** Which version of its recipe a batch was made by, counted from 1; undefined for a written-out one. */
export const versionOf = ({ recipe }: Batch, state: BookState): number | undefined => {
  const saved = recipe && Object.hasOwn(state.recipes, recipe.id) ? state.recipes[recipe.id] : undefined;
  const at = recipe && saved ? saved.versions.indexOf(recipe.version) : -1;
  return at < 0 ? undefined : at + 1;
};

/** Share of the weigh-out that did not reach the containers, in percent to one decimal. */
export const lossOf = ({ weighedG, filledG }: Pick<Batch, 'weighedG' | 'filledG'>): number | undefined =>
  filledG === undefined || filledG > weighedG
    ? undefined
    : Number(((100 * (weighedG - filledG)) / weighedG).toFixed(1));

const gone = (batch: Batch): FigureValue =>
  batch.gone.map(({ count, how, to, on }) => ({ count, how, to: to ?? null, on }));

const lineFigures = (lines: readonly PouredLine[]): FigureValue =>
  lines.map(({ ingredient, grams, percent, infusedWith, strained, draws, shortG }) => ({
    ingredient,
    percent: percent ?? null,
    grams,
    ...(infusedWith ? { infused_with: infusedWith } : {}),
    ...(strained ? { strained } : {}),
    lots: draws.map(({ lot, grams: each }) => ({ lot, grams: each })),
    short_g: shortG ?? 0,
  }));

/** The figures of one batch, as the contract names them. */
export const batchFigures = (batch: Batch, state: BookState): Answer['figures'] => ({
  lot: batch.lot,
  recipe: batch.name,
  recipe_version: versionOf(batch, state) ?? null,
  made_on: batch.madeOn,
  best_before: batch.bestBefore,
  best_before_because: batch.because.kind,
  containers: batch.count,
  container: batch.container,
  size: batch.size ? { amount: batch.size.amount, unit: batch.size.unit } : null,
  left: tinsLeft(batch),
  out: tinsOut(batch),
  kept: batch.gone.filter(({ how }) => how === 'kept').reduce((all, { count }) => all + count, 0),
  lots_used: [
    ...lotsUsed(batch.lines).map(({ lot, ingredient, grams }) => ({ lot, ingredient, grams })),
    ...(batch.unknownLots ?? []).map((lot) => ({ lot, ingredient: null, grams: null })),
  ],
  lines: lineFigures(batch.lines),
  short: batch.lines
    .filter(({ shortG = 0 }) => shortG > 0)
    .map(({ ingredient, shortG = 0 }) => ({ ingredient, grams: shortG })),
  weighed_g: batch.weighedG,
  filled_g: batch.filledG ?? null,
  loss_percent: lossOf(batch) ?? null,
  bath_c: batch.bathC ?? null,
  pour_c: batch.pourC ?? null,
  by: batch.by ?? null,
  gone: gone(batch),
  back: batch.back.map(({ count, from, on }) => ({ count, from: from ?? null, on })),
  notes: batch.notes.map(({ on, text, picture }) => ({ on, text: text ?? null, picture: picture ?? null })),
  looks: batch.looks.map(({ on, fine, text }) => ({ on, fine, text: text ?? null })),
  corrections: [...batch.corrected],
});
