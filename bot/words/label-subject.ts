import { lotKey } from '../../core/bench/codes.ts';
import type { Batch } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import { type Shares, sharesOfLines } from '../../core/check/shares.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import { scaleRecipe } from '../../core/scale.ts';
import type { Region } from '../../core/settings.ts';
import type { Trouble } from '../answer.ts';
import { echo } from '../readers/ask-back.ts';
import { labelOfPart, labelOfWhat } from '../readers/label-words.ts';
import type { Tools } from '../topic.ts';
import type { LabelWish } from '../topics/label.ts';
import { findRecipe } from './find-recipe.ts';
import { troubleOf } from './problems.ts';

/** What is labelled: a saved recipe, one written out, or a batch with what is on record about it. */
export interface LabelSubject {
  readonly name?: string;
  readonly lines: readonly RecipeLine[];
  readonly batch?: Batch;
}

const batchLines = ({ lines }: Batch): readonly RecipeLine[] =>
  lines.map(({ ingredient, grams, infusedWith, strained }) => ({
    ingredient,
    amount: grams,
    unit: 'g',
    ...(infusedWith ? { infusedWith } : {}),
    ...(strained ? { strained } : {}),
  }));

const batchSubject = (lot: string, tools: Tools): LabelSubject | Trouble => {
  const batch = benchOf(tools.book.state).batches.get(lotKey(lot));
  if (batch) return { name: batch.name, lines: batchLines(batch), batch };
  return {
    code: 'not-found',
    text: `There is no batch with the lot "${echo(lot)}" in this book. Ask "list batches", or name the recipe: "label for Fernlea mint lip balm, lot ${echo(lot)}".`,
  };
};

export const labelSubject = (wish: LabelWish, tools: Tools): LabelSubject | Trouble => {
  if (wish.recipe !== undefined) {
    const found = findRecipe(wish.recipe, tools.book);
    return 'code' in found ? found : { name: found.name, lines: found.lines };
  }
  if (wish.batch !== undefined) return batchSubject(wish.batch, tools);
  return wish.lines && wish.lines.length > 0 ? { lines: wish.lines } : labelOfWhat;
};

/** Shares of everything in the tin; a label needs the whole recipe. */
export const labelShares = ({ lines }: LabelSubject, region: Region): Shares | Trouble => {
  const shares = sharesOfLines(lines, region);
  if (!shares.ok)
    return shares.problem.code === 'no-batch-for-drops' ? labelOfPart : troubleOf(shares.problem);
  return shares.value.partial ? labelOfPart : shares.value;
};

export interface NetSaid {
  readonly net?: { readonly grams: number } | { readonly ounces: number };
  readonly assumed: readonly string[];
  /** True when grams were reckoned from millilitres. */
  readonly rough: boolean;
}

/** Whole grams from 10 g on, tenths below: a figure reckoned from a volume may not look finer than it is. */
const roundedDown = (grams: number): number =>
  grams >= 10 ? Math.floor(grams) : Math.floor(grams * 10 + 1e-9) / 10;

const fromMl = (ml: number, lines: readonly RecipeLine[], region: Region): NetSaid => {
  const scaled = scaleRecipe({
    lines,
    target: { kind: 'containers', count: 1, fill: { ml } },
    lossPercent: 0,
    stepG: 0.001,
    region,
  });
  const each = scaled.ok ? scaled.value.fillGEach : undefined;
  if (each === undefined) return { assumed: [], rough: false };
  const grams = roundedDown(each);
  return {
    net: { grams },
    rough: true,
    assumed: [
      `${ml} ml of it weighs about ${grams} g set: weigh filled tins and declare what the lightest holds.`,
    ],
  };
};

/** What one tin holds, as it was said or as the batch has it. */
export const netSaid = (wish: LabelWish, { lines, batch }: LabelSubject, region: Region): NetSaid => {
  const said = wish.net ?? batch?.size;
  if (!said) return { assumed: [], rough: false };
  if (said.unit === 'ml') return fromMl(said.amount, lines, region);
  return {
    net: said.unit === 'oz' ? { ounces: said.amount } : { grams: said.amount },
    assumed: [],
    rough: false,
  };
};
