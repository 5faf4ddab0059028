import type { Making } from '../../../core/workshop/kit.ts';
import { planWorkshop, type WorkshopRequest } from '../../../core/workshop/workshop.ts';
import { grams, percent, worked } from '../../helpers/lines.ts';

/** Two tins of 15 ml of a plain balm. */
export const tins: Making = {
  name: 'Fernlea hand balm',
  lines: [percent('beeswax', 20), percent('shea-butter', 30), percent('olive-oil', 50)],
  each: 2,
  fill: { ml: 15 },
  container: 'tin',
};

/** A stick with scent, far too little of it for one person's kit. */
export const stick: Making = {
  name: 'Fernlea mint lip balm',
  lines: [
    grams('beeswax', 20),
    grams('cocoa-butter', 15),
    grams('shea-butter', 15),
    grams('sweet-almond-oil', 49.5),
    grams('peppermint-essential-oil', 0.5),
  ],
  each: 1,
  fill: { grams: 5 },
  container: 'stick',
};

export const twelve: WorkshopRequest = {
  people: 12,
  makings: [tins],
  sparePercent: 10,
  lossPercent: 3,
  stepG: 0.1,
  region: 'eu',
};

export const planned = (change: Partial<WorkshopRequest> = {}) =>
  worked(planWorkshop({ ...twelve, ...change }));
