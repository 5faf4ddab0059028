import { makeUps } from '../data/melt/make-ups.ts';
import type { Blend } from './blend.ts';
import { type CrystalState, compositionOf, mixtureOf } from './composition.ts';
import { type Freezing, freezingOf } from './freezing.ts';
import { solidsAt } from './solve.ts';
import { roomC } from './temperatures.ts';

/** Structure of 20 % beeswax in liquid oil at 20 °C, aged: the yardstick that has firmness 100. */
const referenceStructure = solidsAt(
  freezingOf(
    mixtureOf([
      { composition: compositionOf(makeUps.beeswax), share: 0.2 },
      { composition: compositionOf(makeUps['liquid-oil']), share: 0.8 },
    ]),
    'aged',
  ),
  roomC,
).structure;

/** Structure from which on a balm sets: 3 % beeswax in oil just does (S-BWGMS, read). */
export const settingStructure = 0.02;

/** Firmness index of a structure: 100 for 20 % beeswax in oil at 20 °C; it grows with the square (S-OLEOMEM: 1.5-2.5, memory). */
export const indexOfStructure = (structure: number): number => 100 * (structure / referenceStructure) ** 2;

/** Grams of crystals in one gram of blend at `celsius` (above −200), weighed by their strength. */
export const structureAt = (freezing: Freezing, celsius: number): number =>
  solidsAt(freezing, celsius).structure;

/**
 * Firmness index at `celsius` (above −200): 100 is 20 % beeswax in oil at 20 °C. Good to a factor of 1.5 while the wax
 * stays the same; between waxes it is only as good as their strengths.
 */
export const firmness = (blend: Blend, celsius: number, state: CrystalState = 'aged'): number =>
  indexOfStructure(structureAt(blend.freezing[state], celsius));

/** Whether it sets at all at 20 °C. */
export const setsAtRoom = (blend: Blend, state: CrystalState = 'aged'): boolean =>
  structureAt(blend.freezing[state], roomC) >= settingStructure;

export type FirmnessBand = 'does-not-set' | 'ointment' | 'tin' | 'stick' | 'hard';

/** Lower ends of the bands, placed with beeswax-to-oil ratios (common practice, no source). */
const bandsFrom: readonly (readonly [number, FirmnessBand])[] = [
  [300, 'hard'],
  [80, 'stick'],
  [20, 'tin'],
  [1.4, 'ointment'],
];

/** What a firmness index at 20-25 °C is good for. */
export const bandOf = (index: number): FirmnessBand =>
  bandsFrom.find(([from]) => index >= from)?.[1] ?? 'does-not-set';

export type Holding = 'stays-firm' | 'soft' | 'slumps';

/** A stick that makers report as safe in a pocket has 149 at 37 °C, one reported as failing 37. */
const staysFirmIndex = 100;
const slumpsBelowIndex = 30;

/** How a balm holds out at `celsius` by its firmness there; at 37 °C this is the pocket test. */
export const holdsAt = (blend: Blend, celsius: number): Holding => {
  const index = firmness(blend, celsius);
  if (index >= staysFirmIndex) return 'stays-firm';
  return index >= slumpsBelowIndex ? 'soft' : 'slumps';
};
