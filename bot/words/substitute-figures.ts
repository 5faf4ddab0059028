import type { Comparison } from '../../core/substitute/compare.ts';
import type { DoneWithout } from '../../core/substitute/do-without.ts';
import type { Mix } from '../../core/substitute/mix.ts';
import type { Replaced } from '../../core/substitute/replaced.ts';
import type { Answer } from '../answer.ts';
import type { FigureValue } from '../figures.ts';
import type { SubstituteWish } from '../topics/substitute.ts';
import { changeFigures } from './substitute-changes.ts';

/** What was changed, step by step. */
export interface Changed {
  readonly before: Mix;
  readonly after: Mix;
  /** The swap that was asked for, with those before it in the conversation. */
  readonly swaps: readonly Replaced[];
  readonly done?: DoneWithout;
}

/** Every replacement, those that were asked for and those that doing without needed. */
export const replacedIn = ({ swaps, done }: Changed): readonly Replaced[] => [
  ...swaps,
  ...(done?.steps ?? []).flatMap((step) => (step.kind === 'replaced' ? [step.replaced] : [])),
];

const lineFigures = ({ portions }: Mix): FigureValue =>
  portions.map(({ ingredient, percent, infusedWith }) => ({
    ingredient,
    percent: Number(percent.toFixed(4)),
    ...(infusedWith ? { infused_with: infusedWith } : {}),
  }));

const swapFigures = ({ from, to, percent, takenPercent, range, withFullMeltPercent }: Replaced) => ({
  from,
  to,
  from_percent: Number(takenPercent.toFixed(4)),
  to_percent: Number(percent.toFixed(4)),
  ratio_by_weight: takenPercent > 0 ? Number((percent / takenPercent).toFixed(4)) : null,
  range_percent: range ? range.map((end) => (end === undefined ? null : Number(end.toFixed(2)))) : null,
  with_full_melt_percent: withFullMeltPercent === undefined ? null : Number(withFullMeltPercent.toFixed(4)),
});

const withoutFigures = (wish: SubstituteWish, { done }: Changed): Answer['figures'] =>
  done
    ? {
        without: [...(wish.without ?? [])],
        replaced: done.steps.map((step) =>
          step.kind === 'replaced'
            ? swapFigures(step.replaced)
            : { from: step.from, to: null, from_percent: Number(step.percent.toFixed(4)) },
        ),
        ask: [...new Set(done.ask.map(({ ingredient }) => ingredient))],
      }
    : {};

export const figuresOf = (
  wish: SubstituteWish,
  changed: Changed,
  comparison: Comparison,
): Answer['figures'] => {
  const last = changed.swaps.at(-1);
  return {
    ...(last ? swapFigures(last) : {}),
    lines: lineFigures(changed.after),
    lines_before: lineFigures(changed.before),
    ...changeFigures(comparison),
    ...withoutFigures(wish, changed),
  };
};
