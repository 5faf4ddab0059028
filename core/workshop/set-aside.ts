import { ingredientById, isSmallDose } from '../ingredients.ts';
import type { TooSmall } from '../scale.ts';
import type { ScaleStep } from '../settings.ts';
import { gramsOfSteps, stepsAtLeast, stepsNearest } from '../steps.ts';
import { leastWeighableG } from '../weighing.ts';
import type { Kit, KitLine } from './kit.ts';

/** What is set aside of one ingredient of one recipe. Grams in whole steps: `grams` is exactly `kitsG + spareG`. */
export interface SetAside {
  readonly ingredient: string;
  readonly infusedWith?: string;
  readonly percent: number;
  /** In one person's kit; 0 for a dose that is weighed together. */
  readonly perPersonG: number;
  /** For everybody: exactly people × perPersonG, or the dose for all of them. */
  readonly kitsG: number;
  readonly spareG: number;
  readonly grams: number;
  readonly together: boolean;
}

/** Sums in whole steps, so that no floating-point noise is carried along. */
const inSteps = (grams: number, stepG: ScaleStep): number => stepsNearest(grams, stepG);

const kitShare = (line: KitLine, people: number, sparePercent: number, stepG: ScaleStep): SetAside => {
  const kits = inSteps(line.grams, stepG) * people;
  const spare = stepsAtLeast((gramsOfSteps(kits, stepG) * sparePercent) / 100, stepG);
  const { grams: perPersonG, ...rest } = line;
  return {
    ...rest,
    perPersonG,
    kitsG: gramsOfSteps(kits, stepG),
    spareG: gramsOfSteps(spare, stepG),
    grams: gramsOfSteps(kits + spare, stepG),
    together: false,
  };
};

/** A spare dose is rounded to the nearest step, not up: rounded up it could be many times what the spare needs. */
const together = (kit: Kit, people: number, sparePercent: number, stepG: ScaleStep): SetAside[] =>
  kit.together.map(({ gramsEach, ...line }) => {
    const kits = Math.max(1, stepsNearest(gramsEach * people, stepG));
    const spare = stepsNearest((gramsEach * people * sparePercent) / 100, stepG);
    return {
      ...line,
      perPersonG: 0,
      kitsG: gramsOfSteps(kits, stepG),
      spareG: gramsOfSteps(spare, stepG),
      grams: gramsOfSteps(kits + spare, stepG),
      together: true,
    };
  });

/** Everything to set aside for one recipe: so many kits, the doses weighed together, and at least the spare asked for. */
export const setAside = (
  kit: Kit,
  people: number,
  sparePercent: number,
  stepG: ScaleStep,
): readonly SetAside[] => [
  ...kit.lines.map((line) => kitShare(line, people, sparePercent, stepG)),
  ...together(kit, people, sparePercent, stepG),
];

const keyOf = ({ ingredient, infusedWith }: SetAside): string => `${ingredient} ${infusedWith ?? ''}`;

const added = (a: SetAside, b: SetAside, stepG: ScaleStep): SetAside => {
  const sum = (of: (each: SetAside) => number): number =>
    gramsOfSteps(inSteps(of(a), stepG) + inSteps(of(b), stepG), stepG);
  return {
    ...a,
    perPersonG: sum(({ perPersonG }) => perPersonG),
    kitsG: sum(({ kitsG }) => kitsG),
    spareG: sum(({ spareG }) => spareG),
    grams: sum(({ grams }) => grams),
    together: a.together && b.together,
  };
};

/** One line an ingredient over all recipes. With one recipe the shares are the recipe's own, else those of the whole. */
export const allSetAside = (
  each: readonly (readonly SetAside[])[],
  stepG: ScaleStep,
): readonly SetAside[] => {
  const byKey = new Map<string, SetAside>();
  for (const line of each.flat()) {
    const before = byKey.get(keyOf(line));
    byKey.set(keyOf(line), before ? added(before, line, stepG) : line);
  }
  const lines = [...byKey.values()];
  if (each.length < 2) return lines;
  const total = totalOf(lines, 'grams', stepG);
  return lines.map((line) => ({ ...line, percent: Number(((100 * line.grams) / total).toFixed(4)) }));
};

/** Sum of a column, to the step. */
export const totalOf = (
  lines: readonly SetAside[],
  column: 'perPersonG' | 'kitsG' | 'spareG' | 'grams',
  stepG: ScaleStep,
): number =>
  gramsOfSteps(
    lines.reduce((sum, line) => sum + inSteps(line[column], stepG), 0),
    stepG,
  );

/** Doses that even for everybody together are too little for the scale. */
export const tooSmallTogether = (kit: Kit, people: number, stepG: ScaleStep): readonly TooSmall[] =>
  kit.together.flatMap(({ ingredient, gramsEach }) => {
    const found = ingredientById(ingredient);
    const leastG = leastWeighableG(stepG, found && isSmallDose(found) ? 'small' : 'bulk');
    const wantedG = gramsEach * people;
    const raised = stepsNearest(wantedG, stepG) < 1;
    return wantedG < leastG ? [{ ingredient, wantedG, leastG, raised }] : [];
  });
