import type { WeighedLine } from '../../core/bench/pour.ts';
import type { Batch, Bench } from '../../core/bench/state.ts';
import type { SavedRecipe } from '../../core/book.ts';
import { defined } from '../../core/defined.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import { resolveRecipe } from '../../core/resolve.ts';
import { type Scaled, scaleRecipe } from '../../core/scale.ts';
import type { Settings } from '../../core/settings.ts';
import type { Target } from '../../core/target.ts';
import type { Tools } from '../topic.ts';
import type { BatchWish } from '../topics/batch.ts';

export type Size = NonNullable<Batch['size']>;

/** What a container holds where nobody says: 15 ml for tins, pots and jars, 5 g for sticks and tubes (common practice). */
const usualSize = (container: string): Size =>
  /^(?:stick|tube)/.test(container) ? { amount: 5, unit: 'g' } : { amount: 15, unit: 'ml' };

/** The last batch of the same recipe and container tells what one holds. */
const sizeBefore = (bench: Bench, name: string, container: string): Size | undefined => {
  let last: Batch | undefined;
  for (const batch of bench.batches.values())
    if (batch.name === name && batch.container === container && batch.size && (last?.seq ?? 0) < batch.seq)
      last = batch;
  return last?.size;
};

export interface SizeTaken {
  readonly size?: Size;
  readonly assumed?: string;
}

/** What one container holds: said, as the last time, or the usual; nothing where the weigh-out is known otherwise. */
const sizeFor = (bench: Bench, wish: BatchWish, name: string, container: string): SizeTaken => {
  if (wish.size) return { size: wish.size };
  if (wish.weighedG !== undefined || wish.totalG !== undefined) return {};
  const before = sizeBefore(bench, name, container);
  const size = before ?? usualSize(container);
  const why = before ? 'as the last time' : 'as nothing else was said';
  return {
    size,
    assumed: `I took ${container}s of ${size.amount} ${size.unit}, ${why}; "correct" it if they were others.`,
  };
};

const targetOf = (wish: BatchWish, size: Size | undefined): Target => {
  const grams = wish.weighedG ?? wish.totalG;
  if (grams !== undefined || !size) return { kind: 'mass', grams: grams ?? 0 };
  const fill = size.unit === 'g' ? { grams: size.amount } : { ml: size.amount };
  return { kind: 'containers', count: wish.count ?? 1, fill };
};

/** A written-out recipe in amounts is what was weighed out, where nothing else says how much. */
const asWritten = (wish: BatchWish, lines: readonly RecipeLine[], settings: Settings): number | undefined => {
  if (wish.recipe !== undefined || wish.size || wish.weighedG !== undefined || wish.totalG !== undefined)
    return undefined;
  const resolved = resolveRecipe(lines, settings.region);
  return resolved.ok ? resolved.value.batchG : undefined;
};

export const weighedLines = (scaled: Scaled): WeighedLine[] => [
  ...scaled.lines.map(({ ingredient, grams, infusedWith, fresh }) => ({
    ingredient,
    grams,
    ...defined({ infusedWith, fresh }),
  })),
  ...scaled.strained.map(({ ingredient, grams, fresh }) => ({
    ingredient,
    grams,
    strained: true,
    ...defined({ fresh }),
  })),
];

/** A pour as it was told, with the recipe it is of. */
export interface Basis {
  readonly wish: BatchWish;
  readonly recipe?: SavedRecipe;
  readonly tools: Tools;
}

/** What one container holds, and the weigh-out. */
export const sizedAndScaled = (
  bench: Bench,
  { wish, recipe, tools }: Basis,
  name: string,
  container: string,
) => {
  const { settings } = tools;
  const lines = recipe?.lines ?? wish.lines ?? [];
  const totalG = wish.totalG ?? asWritten(wish, lines, settings);
  const asked = { ...wish, ...defined({ totalG }) };
  const taken = sizeFor(bench, asked, name, container);
  const scaled = scaleRecipe({
    lines,
    target: targetOf(asked, taken.size),
    lossPercent: wish.lossPercent ?? settings.lossPercent,
    stepG: wish.stepG ?? settings.stepG,
    region: settings.region,
  });
  return { taken, scaled };
};

export const batchName = ({ wish, recipe }: Basis): string =>
  recipe?.name ?? (wish.lines && wish.lines.length > 0 ? 'written-out recipe' : 'balm');
