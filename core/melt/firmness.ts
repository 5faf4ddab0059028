import { makeUps } from '../data/melt/make-ups.ts';
import { bandsFrom, firmnessPower, pocketIndex, settingStructure } from '../data/melt/yardsticks.ts';
import type { Result } from '../result.ts';
import type { Blend } from './blend.ts';
import { type CrystalState, compositionOf, mixtureOf } from './composition.ts';
import { type Freezing, freezingOf } from './freezing.ts';
import { solidsAt } from './solve.ts';
import { atCelsius, roomC, type TemperatureProblem } from './temperatures.ts';

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

/** Firmness index of a structure: 100 for 20 % beeswax in oil at 20 °C; it grows with the square (memory, low). */
export const indexOfStructure = (structure: number): number =>
  100 * (structure / referenceStructure) ** firmnessPower.value;

/** Grams of crystals in one gram of blend at `celsius` (above −200), weighed by their strength. */
export const structureAt = (freezing: Freezing, celsius: number): number =>
  solidsAt(freezing, celsius).structure;

/** Firmness index at `celsius` (above −200), unchecked; see {@link firmness}. */
export const indexAt = (blend: Blend, celsius: number, state: CrystalState = 'aged'): number =>
  indexOfStructure(structureAt(blend.freezing[state], celsius));

/**
 * Firmness index at a temperature in °C: 100 is 20 % beeswax in oil at 20 °C. Good to a factor of 1.5 while the wax
 * stays the same; between waxes it is only as good as their strengths.
 */
export const firmness = (
  blend: Blend,
  celsius: number,
  state: CrystalState = 'aged',
): Result<number, TemperatureProblem> => atCelsius(celsius, (at) => indexAt(blend, at, state));

/** Whether it sets at all at 20 °C. */
export const setsAtRoom = (blend: Blend, state: CrystalState = 'aged'): boolean =>
  structureAt(blend.freezing[state], roomC) >= settingStructure.value;

export type FirmnessBand = 'does-not-set' | 'ointment' | 'tin' | 'stick' | 'hard';

/** What a firmness index at 20-25 °C is good for (common practice, no source). */
export const bandOf = (index: number): FirmnessBand => {
  const { ointment, tin, stick, hard } = bandsFrom.value;
  if (index < ointment) return 'does-not-set';
  if (index < tin) return 'ointment';
  if (index < stick) return 'tin';
  return index < hard ? 'stick' : 'hard';
};

export type Holding = 'stays-firm' | 'soft' | 'slumps';

/** What a firmness index means for a balm that must hold its shape: at 37 °C this is the pocket test. */
export const holdingOf = (index: number): Holding => {
  if (index >= pocketIndex.value.staysFirm) return 'stays-firm';
  return index >= pocketIndex.value.slumpsBelow ? 'soft' : 'slumps';
};

/** How a balm holds out at a temperature in °C. */
export const holdsAt = (blend: Blend, celsius: number): Result<Holding, TemperatureProblem> =>
  atCelsius(celsius, (at) => holdingOf(indexAt(blend, at)));
