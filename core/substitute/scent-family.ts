/** Families of scent, the plainest likeness there is between aromas (common knowledge of the trade). */
const families: Readonly<Record<string, readonly string[]>> = {
  mint: [
    'peppermint-essential-oil',
    'spearmint-essential-oil',
    'corn-mint-essential-oil',
    'menthol-crystals',
    'camphor',
    'eucalyptus-essential-oil',
  ],
  citrus: [
    'sweet-orange-essential-oil',
    'bitter-orange-essential-oil',
    'cold-pressed-lemon-essential-oil',
    'distilled-lemon-essential-oil',
    'cold-pressed-lime-essential-oil',
    'distilled-lime-essential-oil',
    'cold-pressed-bergamot-essential-oil',
    'bergamot-fcf-essential-oil',
    'grapefruit-essential-oil',
    'mandarin-essential-oil',
    'lemongrass-essential-oil',
    'lemon-balm-essential-oil',
  ],
  flower: [
    'lavender-essential-oil',
    'lavandin-essential-oil',
    'roman-chamomile-essential-oil',
    'german-chamomile-essential-oil',
    'rose-geranium-essential-oil',
    'rose-otto-essential-oil',
    'ylang-ylang-essential-oil',
  ],
  herb: [
    'rosemary-essential-oil',
    'tea-tree-essential-oil',
    'thyme-essential-oil',
    'wintergreen-essential-oil',
  ],
  spice: [
    'clove-bud-essential-oil',
    'cinnamon-bark-essential-oil',
    'cinnamon-leaf-essential-oil',
    'ginger-essential-oil',
    'cardamom-essential-oil',
    'sweet-fennel-essential-oil',
    'star-anise-essential-oil',
  ],
  wood: ['frankincense-essential-oil', 'patchouli-essential-oil', 'atlas-cedarwood-essential-oil'],
  sweet: ['benzoin', 'vanilla-flavour-oil', 'berry-flavour-oil', 'vanilla-oleoresin', 'flavour-oil'],
};

const familyById = new Map(
  Object.entries(families).flatMap(([family, ids]) => ids.map((id) => [id, family] as const)),
);

/** The family of a scent; a scent nobody has placed is a family of its own. */
export const scentFamilyOf = (id: string): string => familyById.get(id) ?? id;
