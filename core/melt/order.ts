import { type ComponentId, meltComponents } from '../data/melt/components.ts';
import type { Blend } from './blend.ts';
import { lastToMelt } from './freezing.ts';
import { lastCrystalC, solidsAt } from './solve.ts';
import { roomC } from './temperatures.ts';

/** One kind of crystal that melts away, with the ingredients that bring it, the largest bringer first. */
export interface MeltingStep {
  readonly component: ComponentId;
  readonly meaning: string;
  /** Temperature in °C above which none of its crystals are left in this blend. */
  readonly goneAboveC: number;
  /** Percent of the blend that it makes up, solid or dissolved. */
  readonly percent: number;
  readonly carriedBy: readonly string[];
}

const carriers = (blend: Blend, index: number): readonly string[] => {
  const grams = new Map<string, number>();
  for (const { ingredient, share, composition } of blend.parts) {
    const own = composition.shares.find((component) => component.index === index);
    if (own) grams.set(ingredient.id, (grams.get(ingredient.id) ?? 0) + share * own.share);
  }
  return [...grams].sort(([, a], [, b]) => b - a).map(([id]) => id);
};

/** What melts in which order above 20 °C, first to last; only components that have crystals at 20 °C. */
export const meltingOrder = (blend: Blend): readonly MeltingStep[] => {
  const freezing = blend.freezing.aged;
  const clear = lastToMelt(freezing);
  if (!clear || clear.celsius <= roomC || solidsAt(freezing, roomC).solid <= 0) return [];
  const steps: MeltingStep[] = [];
  for (const { index, moles, molarMassGMol } of freezing.freezers) {
    const goneAboveC = lastCrystalC(freezing, index, roomC, clear.celsius);
    const row = meltComponents[index];
    if (goneAboveC === undefined || !row) continue;
    steps.push({
      component: row.id,
      meaning: row.meaning,
      goneAboveC,
      percent: 100 * moles * molarMassGMol,
      carriedBy: carriers(blend, index),
    });
  }
  return steps.sort((a, b) => a.goneAboveC - b.goneAboveC);
};
