import { bandsFrom, pocketIndex } from '../data/melt/yardsticks.ts';
import type { Form } from './wishes.ts';

/** What a form asks of the firmness index: band at 25 °C, where to aim in it, and the least index on the hottest day. */
export interface FormRule {
  readonly least: number;
  readonly most: number;
  readonly aim: number;
  readonly holds: number;
  /** True when it has to stay below its softening point besides. */
  readonly untilSoft: boolean;
}

const { ointment, tin, stick, hard } = bandsFrom.value;

/**
 * When a balm survives a temperature T, by the thresholds of the melting model: a stick when it stays firm at T (index
 * 100 or more), a tin when it is at least soft and does not slump (30 or more), a soft balm for a tube while it is still a
 * paste and does not run (1.4 or more, the lower end of the ointment band, and no hotter than where it softens). At 25 °C each form has to lie in its own
 * firmness band, so that a stick does not drag and a tube can be squeezed. Panels chose sticks at 99 to 115; where to
 * aim in the other bands is the house's own choice.
 */
export const formRules: Readonly<Record<Form, FormRule>> = {
  stick: { least: stick, most: hard, aim: 110, holds: pocketIndex.value.staysFirm, untilSoft: false },
  tin: { least: tin, most: stick, aim: 45, holds: pocketIndex.value.slumpsBelow, untilSoft: false },
  tube: { least: ointment, most: tin, aim: 12, holds: ointment, untilSoft: true },
};

/** Temperature in °C at which the firmness bands are looked at. */
export const bandC = 25;

/** Hottest day in °C that is ever promised: from 50 °C on is a parked car, and no balm survives that. */
export const hottestPromiseC = 49;
/** Coldest temperature in °C at which survival is looked at. */
export const coldestPromiseC = 20;
