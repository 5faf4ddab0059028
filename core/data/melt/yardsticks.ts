import type { MeltBasis } from './sources.ts';

interface Yardstick extends MeltBasis {
  readonly value: number;
}

/** Grams of crystals (weighed by strength) in one gram of balm from which on it sets. */
export const settingStructure = {
  value: 0.02,
  source: ['S-BWGMS'],
  how: 'fitted',
  confidence: 'medium',
  note: 'read: 3 % beeswax just sets olive and peanut oil',
} as const satisfies Yardstick;

/** Power with which firmness grows with the share of crystals. */
export const firmnessPower = {
  value: 2,
  source: ['S-OLEOMEM'],
  how: 'memory',
  confidence: 'low',
  note: 'wax gels in oil were remembered with 1.5 to 2.5',
} as const satisfies Yardstick;

/** Lower ends of the firmness bands, by index; placed with beeswax-to-oil ratios. */
export const bandsFrom = {
  value: { ointment: 1.4, tin: 20, stick: 80, hard: 300 },
  source: ['CP'],
  how: 'common-practice',
  confidence: 'low',
} as const satisfies MeltBasis & { readonly value: Readonly<Record<string, number>> };

/** Firmness index at 37 °C from which on a stick stays one in a pocket, and below which it slumps. */
export const pocketIndex = {
  value: { staysFirm: 100, slumpsBelow: 30 },
  source: ['S-POCKET', 'S-TEXAS'],
  how: 'fitted',
  confidence: 'low',
  note: 'a 31.5 % beeswax stick reported as safe has 149, a recipe reported as failing easily 37',
} as const satisfies MeltBasis & { readonly value: Readonly<Record<string, number>> };
