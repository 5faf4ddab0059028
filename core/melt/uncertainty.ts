import { meltComponents } from '../data/melt/components.ts';
import { type StrengthId, strengths } from '../data/melt/strengths.ts';
import { firmnessPower } from '../data/melt/yardsticks.ts';
import type { Blend } from './blend.ts';
import { type Mixture, type MixturePart, middleStrength, mixtureOf } from './composition.ts';
import { indexOfStructure, structureAt } from './firmness.ts';
import { type Freezing, freezingOf, lastToMelt, type Tweak } from './freezing.ts';
import { softeningC } from './temperatures.ts';

/** Low and high end of a figure. */
export type Interval = readonly [number, number];

export interface Uncertainty {
  readonly fullyMeltedC?: Interval;
  readonly softensC?: Interval;
  /** Firmness index at the temperature asked for. */
  readonly firmness: Interval;
}

/** Standard spread of a component's melting point in °C: doubled where the figure itself is a guess. */
const meltSpreadC = { high: 1.2, medium: 1.2, low: 2.4 } as const;
/** Standard spreads of heats of fusion and of the amount of a component. */
const heatSpread = 0.08;
const amountSpread = 0.12;
/** Figures are moved by two standard spreads either way. */
const spreads = 2;

/**
 * What measurements say about the model itself: fully melted was within 3 °C for balms with wax (5 with carnauba, 2 for
 * butters alone), softening within 4 °C, firmness within a factor of 1.5. An interval is never narrower.
 */
const leastHalfWidthC = { wax: 3, carnauba: 5, butter: 2, softening: 4 } as const;
const leastFirmnessFactor = 1.5;

interface Figures {
  readonly clearC: number | undefined;
  readonly softC: number | undefined;
  readonly structure: number;
}

const figuresOf = (freezing: Freezing, celsius: number): Figures => ({
  clearC: lastToMelt(freezing)?.celsius,
  softC: softeningC(freezing),
  structure: structureAt(freezing, celsius),
});

/** More or less of one component in the same gram: the others make room in proportion. */
const withAmount = (mixture: Mixture, index: number, factor: number): Mixture => {
  const total = 1 + (factor - 1) * (mixture.mass[index] ?? 0);
  const change = (grams: number, place: number): number => (grams * (place === index ? factor : 1)) / total;
  return { mass: mixture.mass.map(change), strengthMass: mixture.strengthMass.map(change) };
};

const tweaksOf = (index: number): readonly Tweak[] => {
  const meltShiftC = spreads * meltSpreadC[meltComponents[index]?.confidence ?? 'low'];
  return [
    { index, meltShiftC, heatFactor: 1 },
    { index, meltShiftC: -meltShiftC, heatFactor: 1 },
    { index, meltShiftC: 0, heatFactor: 1 + spreads * heatSpread },
    { index, meltShiftC: 0, heatFactor: 1 - spreads * heatSpread },
  ];
};

/** The blend with one figure changed at a time: melting point, heat and amount of each component, down and up. */
const variations = (blend: Blend): readonly Freezing[] =>
  blend.freezing.aged.freezers.flatMap(({ index }) => [
    ...tweaksOf(index).map((tweak) => freezingOf(blend.mixture, 'aged', tweak)),
    freezingOf(withAmount(blend.mixture, index, 1 + spreads * amountSpread), 'aged'),
    freezingOf(withAmount(blend.mixture, index, 1 - spreads * amountSpread), 'aged'),
  ]);

/** The blend with one kind of crystal at the low and the high end of its strength. */
const strengthVariations = (blend: Blend): readonly Freezing[] =>
  [...new Set(blend.parts.map(({ composition }) => composition.strength))].flatMap((id) =>
    (['low', 'high'] as const).map((end) => {
      const strengthOf = (part: MixturePart): number =>
        part.composition.strength === id ? strengths[id][end] : middleStrength(part);
      return freezingOf(mixtureOf(blend.parts, strengthOf), 'aged');
    }),
  );

interface Width {
  readonly down: number;
  readonly up: number;
}

/** Root of the sum of squares, downward and upward moves apart: the law of propagation for independent figures. */
const combined = (moves: readonly number[]): Width => ({
  down: Math.hypot(...moves.map((move) => Math.min(0, move))),
  up: Math.hypot(...moves.map((move) => Math.max(0, move))),
});

const interval = (middle: number, width: Width, least: number): Interval => [
  middle - Math.max(least, width.down),
  middle + Math.max(least, width.up),
];

const movesOf = (
  middle: number | undefined,
  varied: readonly Figures[],
  read: (figures: Figures) => number | undefined,
): readonly number[] =>
  middle === undefined ? [] : varied.map((figures) => (read(figures) ?? middle) - middle);

const clearLeast = (blend: Blend): number => {
  const kinds: readonly StrengthId[] = blend.parts.map(({ composition }) => composition.strength);
  if (kinds.includes('carnauba')) return leastHalfWidthC.carnauba;
  const wax = blend.freezing.aged.freezers.some((freezer) => freezer.wax);
  return wax ? leastHalfWidthC.wax : leastHalfWidthC.butter;
};

const firmnessInterval = (
  structure: number,
  varied: readonly Figures[],
  strengthened: readonly number[],
): Interval => {
  if (structure <= 0) return [0, 0];
  // A variation that leaves no crystals at all would be minus infinity: it is held at a hundredth.
  const log = (other: number): number =>
    firmnessPower.value * Math.log(Math.max(other, structure / 100) / structure);
  const width = combined([...varied.map((figures) => log(figures.structure)), ...strengthened.map(log)]);
  const [low, high] = interval(0, width, Math.log(leastFirmnessFactor));
  const index = indexOfStructure(structure);
  return [index * Math.exp(low), index * Math.exp(high)];
};

/**
 * How far the figures may be off. A fixed set of variations, no chance in it: every freezing component's melting point,
 * heat of fusion and amount is moved alone by two standard spreads down and up (spreads 1.2 °C, or 2.4 where it is a
 * guess; 8 %; 12 %), every kind of crystal's strength to both ends of its evidence. The moves are added as root of the
 * sum of squares, firmness as logarithms. No interval is narrower than what measurements say about the model itself.
 * `celsius` (above −200) is where firmness is looked at.
 */
export const uncertaintyOf = (blend: Blend, celsius: number): Uncertainty => {
  const middle = figuresOf(blend.freezing.aged, celsius);
  const varied = variations(blend).map((freezing) => figuresOf(freezing, celsius));
  const strengthened = strengthVariations(blend).map((freezing) => structureAt(freezing, celsius));
  const clear = combined(movesOf(middle.clearC, varied, ({ clearC }) => clearC));
  const soft = combined(movesOf(middle.softC, varied, ({ softC }) => softC));
  return {
    ...(middle.clearC === undefined
      ? {}
      : { fullyMeltedC: interval(middle.clearC, clear, clearLeast(blend)) }),
    ...(middle.softC === undefined
      ? {}
      : { softensC: interval(middle.softC, soft, leastHalfWidthC.softening) }),
    firmness: firmnessInterval(middle.structure, varied, strengthened),
  };
};
