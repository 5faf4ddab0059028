import type { BenchEventOf } from '../../core/bench/events.ts';
import type { Pour } from '../../core/bench/pour.ts';
import { defined } from '../../core/defined.ts';
import type { Scaled } from '../../core/scale.ts';
import { type Basis, batchName, type Size } from './batch-weigh.ts';

export interface Made {
  readonly lot: string;
  readonly madeOn: string;
  readonly pour: Pour;
  readonly scaled: Scaled;
  readonly size?: Size;
}

/** The maker's own date, where it is not later than what lots and oils allow. */
export const earlier = (said: string | undefined, { bestBefore }: Pour): string | undefined =>
  said !== undefined && said <= bestBefore ? said : undefined;

const told = ({ wish, tools }: Basis) =>
  defined({
    by: tools.member.name.trim().slice(0, 80) || undefined,
    bathC: wish.bathC,
    pourC: wish.pourC,
    filledG: wish.filledG,
    note: wish.note,
    pictures: wish.pictures,
  });

const recipeOf = ({ recipe }: Basis) => {
  const version = recipe?.versions.at(-1);
  return recipe && version !== undefined ? { recipe: { id: recipe.id, version } } : {};
};

/** A pour as the event that is written. */
export const pouredEvent = (
  basis: Basis,
  { lot, madeOn, pour, scaled, size }: Made,
): BenchEventOf<'batch-poured'> => {
  const { wish } = basis;
  const early = earlier(wish.bestBefore, pour);
  return {
    kind: 'batch-poured',
    lot,
    name: batchName(basis),
    lines: [...pour.lines],
    count: wish.count ?? 1,
    container: wish.container ?? 'tin',
    madeOn,
    bestBefore: early ?? pour.bestBefore,
    because: early === undefined ? pour.because : { kind: 'said' },
    weighedG: wish.weighedG ?? scaled.totalG,
    ...recipeOf(basis),
    ...told(basis),
    ...defined({
      size,
      rough: (early === undefined && pour.rough) || undefined,
      unknownLots: pour.unknown.length > 0 ? [...pour.unknown] : undefined,
    }),
  };
};
