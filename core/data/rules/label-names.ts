import type { RuleSourceId, RuleStatus } from './sources.ts';

/**
 * Names for the ingredient list where the library's own would not do, by ingredient id. From memory: the safety assessor
 * and the supplier's papers have the last word.
 */
export interface LabelName {
  readonly id: string;
  /** EU, UK, Canada and Australia. */
  readonly name?: string;
  /** As the US writes it, with the English name. */
  readonly us?: string;
  /** Colours stand after everything else, one entry for each number. */
  readonly colours?: readonly string[];
  /** How the US names the colour additive, its numbers in brackets. */
  readonly usColours?: readonly string[];
  readonly source: RuleSourceId;
  readonly status: RuleStatus;
}

const glossary = { source: 'EU-GLOSSARY', status: 'memory' } as const;
const colour = (id: string, colours: readonly string[], usColours: readonly string[]): LabelName => ({
  id,
  colours,
  usColours,
  source: 'CFR701',
  status: 'memory',
});

export const labelNames: readonly LabelName[] = [
  { id: 'beeswax', name: 'Cera Alba', us: 'Beeswax', ...glossary },
  { id: 'candelilla-wax', us: 'Euphorbia Cerifera (Candelilla) Wax', ...glossary },
  { id: 'honey', name: 'Mel', us: 'Honey', ...glossary },
  { id: 'microcrystalline-wax', us: 'Microcrystalline Wax', ...glossary },
  { id: 'flavour-oil', name: 'Aroma', us: 'Flavor', ...glossary },
  { id: 'vanilla-flavour-oil', name: 'Aroma', us: 'Flavor', ...glossary },
  { id: 'berry-flavour-oil', name: 'Aroma', us: 'Flavor', ...glossary },
  { id: 'fragrance-oil', name: 'Parfum', us: 'Fragrance', ...glossary },
  colour('mica', ['CI 77019'], ['Mica (CI 77019)']),
  colour('iron-oxides', ['CI 77491', 'CI 77492', 'CI 77499'], ['Iron Oxides (CI 77491, CI 77492, CI 77499)']),
  colour('titanium-dioxide', ['CI 77891'], ['Titanium Dioxide (CI 77891)']),
  colour('zinc-oxide', ['CI 77947'], ['Zinc Oxide (CI 77947)']),
  colour(
    'ultramarine-chromium-green',
    ['CI 77007', 'CI 77288'],
    ['Ultramarines (CI 77007)', 'Chromium Oxide Greens (CI 77288)'],
  ),
  colour('carmine', ['CI 75470'], ['Carmine (CI 75470)']),
];

/** Ingredients that stand for several things or for none that has a label name: the supplier's papers name them. */
export const askSupplier: ReadonlySet<string> = new Set([
  'iron-oxides',
  'ultramarine-chromium-green',
  'oil-soluble-sweetener',
  'propolis-extract',
  'rosemary-antioxidant',
]);
