import { ingredientById, isWax } from '../ingredients.ts';
import { fail, ok, type Result } from '../result.ts';
import { type Blend, type BlendLine, type BlendProblem, blendOf } from './blend.ts';
import { type Exchange, type ExchangedLine, linesAt } from './exchange.ts';
import { indexOfStructure, structureAt } from './firmness.ts';
import type { percentFor } from './slide.ts';
import type { SwapFigures, SwapNote, SwapOptions, SwapProblem } from './swapped.ts';
import { fullyMeltedC, softensC } from './temperatures.ts';

const holdC = 25;
const pocketC = 37;
const coldestHoldC = -30;
const hottestHoldC = 100;

export const figuresOf = (blend: Blend, celsius: number): SwapFigures => {
  const clear = fullyMeltedC(blend);
  const soft = softensC(blend);
  return {
    firmness: indexOfStructure(structureAt(blend.freezing.aged, celsius)),
    firmnessAt37: indexOfStructure(structureAt(blend.freezing.aged, pocketC)),
    ...(clear === undefined ? {} : { fullyMeltedC: clear }),
    ...(soft === undefined ? {} : { softensC: soft }),
  };
};

export const blendOfLines = (lines: readonly ExchangedLine[]): Result<Blend, BlendProblem> =>
  blendOf(lines.map(({ ingredient, percent }) => ({ ingredient, weight: percent })));

export interface Asked {
  readonly before: Blend;
  readonly from: string;
  readonly to: string;
  readonly celsius: number;
}

/** The new ingredient on its own: an unknown one, or one that does not melt in, is named. */
export const meltsIn = (id: string): Result<Blend, SwapProblem> => {
  const alone = blendOf([{ ingredient: id, weight: 1 }]);
  if (alone.ok || alone.problem.code !== 'nothing-melts') return alone;
  return fail({ code: 'does-not-melt-in', ingredient: id });
};

export const asked = (
  lines: readonly BlendLine[],
  fromId: string,
  toId: string,
  options: SwapOptions,
): Result<Asked, SwapProblem> => {
  const celsius = options.celsius ?? holdC;
  if (!(celsius >= coldestHoldC && celsius <= hottestHoldC))
    return fail({ code: 'bad-temperature', celsius });
  const before = blendOf(lines);
  if (!before.ok) return before;
  const from = ingredientById(fromId)?.id ?? fromId;
  const to = ingredientById(toId)?.id ?? toId;
  for (const id of [from, to]) {
    const alone = meltsIn(id);
    if (!alone.ok) return alone;
  }
  return ok({ before: before.value, from, to, celsius });
};

const clearMoveC = 3;

export const notesOf = (
  from: string,
  to: string,
  before: SwapFigures,
  after: SwapFigures,
): readonly SwapNote[] => {
  const wax = (id: string): boolean => {
    const ingredient = ingredientById(id);
    return ingredient !== undefined && isWax(ingredient);
  };
  const move = Math.abs((after.fullyMeltedC ?? 0) - (before.fullyMeltedC ?? 0));
  const found: readonly (readonly [SwapNote, boolean])[] = [
    ['make-a-trial-tin', from !== to && (wax(from) || wax(to))],
    ['carnauba-evidence-conflicts', from !== to && (from === 'carnauba-wax' || to === 'carnauba-wax')],
    ['not-as-only-wax', to === 'carnauba-wax'],
    ['weak-alone-in-sticks', to === 'rice-bran-wax'],
    ['full-melt-moves', move > clearMoveC],
  ];
  return found.filter(([, applies]) => applies).map(([note]) => note);
};

export interface Held {
  readonly exchange: Exchange & { readonly takenPercent: number };
  readonly ask: Asked;
}

export const percentOrNone = (found: ReturnType<typeof percentFor>): number | undefined =>
  found.kind === 'found' ? found.percent : found.kind === 'enough-at-none' ? 0 : undefined;

export const notEnough = ({ exchange, ask }: Held): SwapProblem => {
  const lines = linesAt(exchange, exchange.most);
  const most = blendOfLines(lines);
  if (!most.ok) return most.problem;
  return {
    code: 'not-enough-oil',
    mostPercent: exchange.most,
    lines,
    before: figuresOf(ask.before, ask.celsius),
    after: figuresOf(most.value, ask.celsius),
  };
};
