import { type Freezer, type Freezing, zeroCelsiusK } from './freezing.ts';

/** What of one gram of blend is solid at one temperature, in g/g. `structure` weighs crystals by their strength. */
export interface Solids {
  readonly solid: number;
  readonly structure: number;
  readonly waxSolid: number;
  readonly fatSolid: number;
}

/** Freezers that the solver may reorder; kept between temperatures because the order hardly changes. */
export type Working = Freezer[];

export const working = (freezing: Freezing): Working => [...freezing.freezers];

const keyAt = (freezer: Freezer, perK: number): number => freezer.keyBase + freezer.heatK * perK;

/** Falling ln(moles/K), by insertion: nearly sorted lists cost next to nothing. */
const sortByKey = (order: Working, perK: number): void => {
  for (let place = 1; place < order.length; place += 1) {
    const moving = order[place];
    if (!moving) return;
    const key = keyAt(moving, perK);
    let free = place;
    for (let before = order[free - 1]; before && keyAt(before, perK) < key; before = order[free - 1]) {
      order[free] = before;
      free -= 1;
    }
    order[free] = moving;
  }
};

interface Split {
  /** How many of the sorted freezers are (partly) solid. */
  readonly count: number;
  /** Moles of liquid in one gram of blend. */
  readonly liquidMoles: number;
}

const saturation = (freezer: Freezer, perK: number): number =>
  Math.exp(freezer.atMelting - freezer.heatK * perK);

/**
 * Marks solids in falling order of moles/K until the next component fits into the liquid. Exact without iteration:
 * each step lowers the moles of liquid, so nothing marked solid ever turns liquid again, and moles > K · liquid with
 * moles ≤ what is left keeps `room` positive. If everything freezes the liquid comes to 0 and is held there.
 */
const split = (order: Working, totalMoles: number, perK: number): Split => {
  sortByKey(order, perK);
  let left = totalMoles;
  let room = 1;
  let liquidMoles = totalMoles;
  let count = 0;
  for (const freezer of order) {
    const fits = saturation(freezer, perK);
    if (freezer.moles <= fits * liquidMoles) break;
    left -= freezer.moles;
    room -= fits;
    liquidMoles = Math.max(0, left) / room;
    count += 1;
  }
  return { count, liquidMoles };
};

const perKelvin = (celsius: number): number => 1 / (celsius + zeroCelsiusK);

/** Solids at `celsius` (above −273.15). `order` is reordered in place. */
export const solidsIn = (order: Working, totalMoles: number, celsius: number): Solids => {
  const perK = perKelvin(celsius);
  const { count, liquidMoles } = split(order, totalMoles, perK);
  let structure = 0;
  let waxSolid = 0;
  let fatSolid = 0;
  for (let place = 0; place < count; place += 1) {
    const freezer = order[place];
    if (!freezer) break;
    const solidMoles = Math.max(0, freezer.moles - saturation(freezer, perK) * liquidMoles);
    const grams = solidMoles * freezer.molarMassGMol;
    structure += grams * freezer.strength;
    if (freezer.wax) waxSolid += grams;
    else fatSolid += grams;
  }
  return { solid: waxSolid + fatSolid, structure, waxSolid, fatSolid };
};

/** Solids of one gram of blend at one temperature in °C (above −273.15). */
export const solidsAt = (freezing: Freezing, celsius: number): Solids =>
  solidsIn(working(freezing), freezing.totalMoles, celsius);

/** Whether this component has any crystals at `celsius`. `order` is reordered in place. */
const hasCrystals = (order: Working, totalMoles: number, index: number, celsius: number): boolean => {
  const { count } = split(order, totalMoles, perKelvin(celsius));
  return order.findIndex((freezer) => freezer.index === index) < count;
};

/** Halvings of a 130-degree span: far below a thousandth of a degree. */
const halvings = 40;

/** Highest temperature in [coldC, hotC] at which a falling condition still holds; it holds at `coldC`. */
export const lastC = (coldC: number, hotC: number, holds: (celsius: number) => boolean): number => {
  let low = coldC;
  let high = hotC;
  for (let halving = 0; halving < halvings; halving += 1) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/**
 * Temperature in °C above which a component has no crystals left in this blend, looked for between `coldC` and `hotC`;
 * nothing when it has none at `coldC`.
 */
export const lastCrystalC = (
  freezing: Freezing,
  index: number,
  coldC: number,
  hotC: number,
): number | undefined => {
  const order = working(freezing);
  const { totalMoles } = freezing;
  if (!hasCrystals(order, totalMoles, index, coldC)) return undefined;
  return lastC(coldC, hotC, (celsius) => hasCrystals(order, totalMoles, index, celsius));
};
