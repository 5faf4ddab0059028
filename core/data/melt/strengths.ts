import type { MeltBasis } from './sources.ts';

interface Strength extends MeltBasis {
  /** How firm one gram of crystals makes a balm, beeswax being 1. */
  readonly value: number;
  /** What the evidence would still allow. */
  readonly low: number;
  readonly high: number;
}

/** Firmness of crystals, kind by kind. Ingredients of one kind share one figure because they share its evidence. */
export const strengths = {
  liquid: {
    value: 0,
    low: 0,
    high: 0,
    source: ['MOLAR'],
    how: 'definition',
    confidence: 'high',
  },
  fat: {
    value: 0.3,
    low: 0.2,
    high: 0.45,
    source: ['S-HARDFAT'],
    how: 'estimate',
    confidence: 'low',
    note: 'read: about 10 % fat crystals are needed where 1.5 % candelilla will do',
  },
  hydrogenatedFat: {
    value: 0.35,
    low: 0.2,
    high: 0.6,
    source: ['S-HARDFAT'],
    how: 'estimate',
    confidence: 'low',
  },
  stearicAcid: {
    value: 0.5,
    low: 0.3,
    high: 0.8,
    source: ['S-HARDFAT'],
    how: 'estimate',
    confidence: 'low',
  },
  cetylAlcohol: {
    value: 0.4,
    low: 0.2,
    high: 0.8,
    source: ['S-HARDFAT'],
    how: 'estimate',
    confidence: 'low',
  },
  lanolin: {
    value: 0.2,
    low: 0.1,
    high: 0.4,
    source: ['OWN'],
    how: 'estimate',
    confidence: 'low',
  },
  beeswax: {
    value: 1,
    low: 1,
    high: 1,
    source: ['OWN'],
    how: 'definition',
    confidence: 'high',
  },
  candelilla: {
    value: 1.8,
    low: 1.4,
    high: 2.4,
    source: ['S-FORUM', 'S-WAXQ', 'S-HARDFAT'],
    how: 'estimate',
    confidence: 'medium',
    note: 'one practice says half, another about 80 % of the beeswax weight (both read)',
  },
  carnauba: {
    value: 1.2,
    low: 0.6,
    high: 2.2,
    source: ['S-RBW', 'S-CGC', 'S-DOAN', 'CP'],
    how: 'estimate',
    confidence: 'low',
    note: 'the evidence conflicts: laboratories find gels weaker than candelilla, makers find it the hardest',
  },
  riceBran: {
    value: 1.2,
    low: 0.6,
    high: 1.8,
    source: ['S-RBW', 'S-CGC', 'S-RBWSTICK'],
    how: 'estimate',
    confidence: 'low',
    note: 'sets oil at 1 % and is yet too weak alone in sticks (both read)',
  },
  sunflowerWax: {
    value: 2,
    low: 1.4,
    high: 2.8,
    source: ['S-SFW'],
    how: 'estimate',
    confidence: 'medium',
    note: 'read: 1-6 % matches 18-30 % fully hydrogenated soybean oil',
  },
} as const satisfies Record<string, Strength>;

export type StrengthId = keyof typeof strengths;
