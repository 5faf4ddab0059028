import type { Ingredient } from '../data/ingredient.ts';
import { usualAromaPercent } from '../hazards.ts';
import { isAromaRow } from '../ingredients.ts';
import { stepPercent } from './sketch.ts';

const toHalf = (percent: number): number => Math.floor(percent * 2 + 1e-9) / 2;
const toTenth = (percent: number): number => Math.floor(percent * 10 + 1e-9) / 10;
const toHundredth = (percent: number): number => Math.floor(percent * 100 + 1e-9) / 100;

/** Half percents where that leaves something; tenths, then hundredths for scents that are only allowed in less. */
export const neat = (percent: number): number => toHalf(percent) || toTenth(percent) || toHundredth(percent);

/** Most of a scent in percent: its usual most on lips, its limit in leave-on products, and never over 1 %. */
export const mostAromaPercent = (ingredient: Ingredient): number => {
  const limits = isAromaRow(ingredient)
    ? [ingredient.limits.leaveOnMaxPercent, ingredient.limits.dermalMaxPercent]
    : [];
  const all = [ingredient.usePercent?.high, ...limits, usualAromaPercent];
  return Math.min(...all.filter((percent) => percent !== undefined));
};

/** Share in percent for a scent that may have `room` at most: the middle of its usual range. */
export const aromaPercent = (ingredient: Ingredient, room: number): number => {
  const { low = 0, high = 0, typical } = ingredient.usePercent ?? {};
  const middle = typical ?? (low + high) / 2;
  const most = Math.min(mostAromaPercent(ingredient), room);
  return neat(Math.min(most, Math.max(middle, Math.min(stepPercent, most))));
};

/** Share in percent of an additive that was asked for. */
export const additivePercent = (ingredient: Ingredient): number => {
  const { low = 0, high = 0, typical } = ingredient.usePercent ?? {};
  const wanted = typical ?? (low + high) / 2;
  return wanted < stepPercent && high >= stepPercent ? stepPercent : neat(wanted);
};
