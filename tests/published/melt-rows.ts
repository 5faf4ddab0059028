import { type MakeUpId, makeUps } from '../../core/data/melt/make-ups.ts';
import { type CrystalState, compositionOf, mixtureOf } from '../../core/melt/composition.ts';
import { indexOfStructure, structureAt } from '../../core/melt/firmness.ts';
import { dissolvesAtC, type Freezing, freezingOf, lastToMelt } from '../../core/melt/freezing.ts';
import { solidsAt } from '../../core/melt/solve.ts';
import { softeningC } from '../../core/melt/temperatures.ts';

/** Grams of each make-up of the model. */
export type Grams = Readonly<Partial<Record<MakeUpId, number>>>;

/** Whether a measurement was seen in print or recalled; a recalled one is no proof. */
export type Mark = 'read' | 'memory';

/** `set-with-it`: the model's figures or rules were chosen with this row in view, so that it proves little. */
export type Use = 'held-out' | 'set-with-it';

export interface Row {
  readonly claim: string;
  /** What the model says. */
  readonly model: () => number;
  /** What was measured: one figure with a tolerance, or a range with the tolerance outside it. */
  readonly low: number;
  readonly high: number;
  readonly tolerance: number;
  readonly source: string;
  readonly mark: Mark;
  readonly use: Use;
}

export const freezing = (grams: Grams, state: CrystalState = 'aged'): Freezing => {
  const entries = Object.entries(grams) as [MakeUpId, number][];
  const sum = entries.reduce((all, [, weight]) => all + weight, 0);
  const parts = entries.map(([id, weight]) => ({
    composition: compositionOf(makeUps[id]),
    share: weight / sum,
  }));
  return freezingOf(mixtureOf(parts), state);
};

const none = Number.NaN;

export const solidsOf =
  (grams: Grams, celsius: number, state: CrystalState = 'aged') =>
  (): number =>
    100 * solidsAt(freezing(grams, state), celsius).solid;
export const endOf = (grams: Grams) => (): number => lastToMelt(freezing(grams))?.celsius ?? none;
export const softeningOf = (grams: Grams) => (): number => softeningC(freezing(grams)) ?? none;
export const structureOf = (grams: Grams, celsius: number) => (): number =>
  structureAt(freezing(grams), celsius);
export const firmnessOf = (grams: Grams, celsius: number) => (): number =>
  indexOfStructure(structureAt(freezing(grams), celsius));

/** A pair of substances: `percent` by weight of one (g/mol, °C, kJ/mol) in an oil of `oilMass` g/mol. */
export const pairOf =
  (pure: { mass: number; meltC: number; heat: number }, oilMass: number, percent: number) => (): number => {
    const moles = percent / pure.mass;
    return dissolvesAtC(pure.meltC, pure.heat, moles / (moles + (100 - percent) / oilMass));
  };

/** Whether the model lies in what was measured, tolerance included. */
export const holds = ({ model, low, high, tolerance }: Row): boolean => {
  const value = model();
  return value >= low - tolerance && value <= high + tolerance;
};

/** One measured figure. */
export const at = (figure: number, tolerance: number): Pick<Row, 'low' | 'high' | 'tolerance'> => ({
  low: figure,
  high: figure,
  tolerance,
});

/** A measured range that the model must lie in. */
export const within = (low: number, high: number): Pick<Row, 'low' | 'high' | 'tolerance'> => ({
  low,
  high,
  tolerance: 0,
});
