import { ingredientById } from '../ingredients.ts';
import { type MixturePart, mixtureOf } from '../melt/composition.ts';
import { indexOfStructure } from '../melt/firmness.ts';
import { type Freezing, freezingOf } from '../melt/freezing.ts';
import { lastC, solidsAt } from '../melt/solve.ts';
import { softeningC } from '../melt/temperatures.ts';
import { treatmentOf } from '../melt/treatment.ts';
import { coldestPromiseC, type FormRule, hottestPromiseC } from './rules.ts';
import type { DesignLine } from './sketch.ts';

/** Only what the search needs of the melting model: no fresh crystals, no intervals, no heat plan. */
export type Pan = (lines: readonly DesignLine[]) => Freezing;

/** Looks each ingredient's make-up up once; for one search. */
export const pan = (): Pan => {
  const known = new Map<string, MixturePart['composition'] | undefined>();
  const compositionFor = (id: string): MixturePart['composition'] | undefined => {
    if (known.has(id)) return known.get(id);
    const ingredient = ingredientById(id);
    const treatment = ingredient && treatmentOf(ingredient);
    const composition = treatment?.kind === 'melts' ? treatment.composition : undefined;
    known.set(id, composition);
    return composition;
  };
  return (lines) => {
    const parts = lines.flatMap(({ ingredient, percent }) => {
      const composition = compositionFor(ingredient);
      return composition ? [{ composition, share: percent }] : [];
    });
    const whole = parts.reduce((all, { share }) => all + share, 0);
    return freezingOf(mixtureOf(parts.map((part) => ({ ...part, share: part.share / whole }))), 'aged');
  };
};

/** Firmness index at a temperature in °C. */
export const indexIn = (freezing: Freezing, celsius: number): number =>
  indexOfStructure(solidsAt(freezing, celsius).structure);

/** Whether a balm survives a temperature in °C by the rule of its form. */
export const standsAt = (freezing: Freezing, celsius: number, rule: FormRule): boolean =>
  indexIn(freezing, celsius) >= rule.holds &&
  (!rule.untilSoft || (softeningC(freezing) ?? coldestPromiseC) >= celsius);

/** Hottest temperature in °C, whole and at most 49, that it survives; nothing below 20 °C. */
export const hottestC = (freezing: Freezing, rule: FormRule): number | undefined => {
  const stands = (celsius: number): boolean => standsAt(freezing, celsius, rule);
  if (!stands(coldestPromiseC)) return undefined;
  return stands(hottestPromiseC)
    ? hottestPromiseC
    : Math.floor(lastC(coldestPromiseC, hottestPromiseC, stands));
};
