import { z } from 'zod';

export const regions = ['eu', 'uk', 'us', 'ca', 'au'] as const;
export type Region = (typeof regions)[number];

/** Steps a kitchen or jeweller's scale reads in, in grams. */
export const scaleSteps = [1, 0.1, 0.01, 0.001] as const;
export type ScaleStep = (typeof scaleSteps)[number];

/** What a group has set for itself. `lossPercent` is the share left in jug and spoon (3 %: common practice, no source). */
export const settingsSchema = z.strictObject({
  region: z.enum(regions),
  /** True once the group chose its region itself: the one it starts with is only the strictest. */
  regionChosen: z.literal(true).optional(),
  units: z.enum(['g', 'oz']),
  currency: z.string().regex(/^[A-Z]{3}$/),
  stepG: z.union([z.literal(1), z.literal(0.1), z.literal(0.01), z.literal(0.001)]),
  lossPercent: z.number().min(0).max(50),
  writerRole: z.string().max(100).nullable(),
  /** IANA time zone in which the group's days begin; UTC until it is set. */
  zone: z.string().min(1).max(60).optional(),
  /** The group's own ceiling for best before, in months after the pour; twelve (common practice) until it is set. */
  capMonths: z.int().min(1).max(60).optional(),
  /** How the group writes numbers, 12.5 or 12,5; with a point until it is set. */
  decimal: z.enum(['point', 'comma']).optional(),
});
export type Settings = z.output<typeof settingsSchema>;

export const defaultSettings: Settings = {
  region: 'eu',
  units: 'g',
  currency: 'EUR',
  stepG: 0.1,
  lossPercent: 3,
  writerRole: null,
};
