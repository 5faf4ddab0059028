import type { MeltBasis } from './sources.ts';

interface Volume extends MeltBasis {
  readonly value: number;
}

const dens = { source: ['S-DENS'], how: 'memory' } as const;

/** Density of the melt in g/ml, as if it were liquid at 20 °C. Good to about 1.5 %. */
export const liquidDensities = {
  'vegetable-oil': { value: 0.915, ...dens, confidence: 'high' },
  'fractionated-coconut': { value: 0.945, ...dens, confidence: 'high' },
  castor: { value: 0.96, ...dens, confidence: 'high' },
  'c18-butter': {
    value: 0.908,
    ...dens,
    confidence: 'medium',
    note: 'cocoa and the other C18 butters',
  },
  lauric: {
    value: 0.925,
    ...dens,
    confidence: 'medium',
    note: 'coconut comes out 3 % too dense when solid',
  },
  beeswax: { value: 0.865, ...dens, confidence: 'medium' },
  candelilla: { value: 0.89, ...dens, confidence: 'low' },
  carnauba: { value: 0.9, ...dens, confidence: 'low' },
  'long-ester-wax': {
    value: 0.89,
    source: ['OWN'],
    how: 'estimate',
    confidence: 'low',
    note: 'rice bran and sunflower wax, taken as candelilla',
  },
  'stearic-acid': {
    value: 0.88,
    source: ['S-HANDB'],
    how: 'memory',
    confidence: 'medium',
    note: '0.847 at 70 °C',
  },
  'cetyl-alcohol': {
    value: 0.84,
    source: ['S-HANDB'],
    how: 'memory',
    confidence: 'medium',
    note: '0.818 at 49.5 °C',
  },
  lanolin: { value: 0.93, source: ['OWN'], how: 'estimate', confidence: 'low' },
  tocopherol: {
    value: 0.95,
    source: ['S-HANDB'],
    how: 'memory',
    confidence: 'high',
  },
} as const satisfies Record<string, Volume>;

export type LiquidDensityId = keyof typeof liquidDensities;

/** Growth of any molten fat or wax, as a share of its volume at 20 °C, per kelvin. */
export const growthPerK = {
  value: 0.00075,
  ...dens,
  confidence: 'medium',
} as const satisfies Volume;

/** Volume lost when one gram freezes, in ml/g. Fats: melting dilation 0.08-0.10. Solid beeswax is 0.958-0.970 g/ml. */
export const freezingLossMlPerG = {
  fat: { value: 0.09, ...dens, confidence: 'medium' },
  wax: { value: 0.13, ...dens, confidence: 'low' },
} as const satisfies Record<'fat' | 'wax', Volume>;
