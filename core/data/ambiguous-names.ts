/**
 * Names that mean two things, so that a maker is asked which one is meant. `because` says what the difference is, in
 * a few words for the question. `alone` marks words that only count when nothing else stands beside them. One id
 * means: taken as that, with `because` as a note.
 */
export interface AmbiguousName {
  readonly names: readonly string[];
  readonly ids: readonly string[];
  readonly because: string;
  readonly alone?: true;
}

const herbOrOil = (herb: string, oil: string, names: readonly string[]): AmbiguousName => ({
  names,
  ids: [herb, oil],
  because: 'it can be the dried herb or the essential oil',
});

export const ambiguousNames: readonly AmbiguousName[] = [
  {
    names: ['marigold', 'marigold flower', 'marigold petal'],
    ids: ['calendula'],
    because:
      'it can be pot marigold (Calendula officinalis) or French and African marigold (Tagetes), which sensitises to light: check the Latin name on the bag',
  },
  herbOrOil('lavender', 'lavender-essential-oil', [
    'lavender',
    'lavandula angustifolia',
    'english lavender',
    'true lavender',
  ]),
  herbOrOil('peppermint', 'peppermint-essential-oil', ['peppermint', 'mentha piperita', 'mentha x piperita']),
  herbOrOil('spearmint', 'spearmint-essential-oil', ['spearmint', 'mentha spicata']),
  herbOrOil('rosemary', 'rosemary-essential-oil', [
    'rosemary',
    'salvia rosmarinus',
    'rosmarinus officinalis',
  ]),
  herbOrOil('thyme', 'thyme-essential-oil', ['thyme', 'thymus vulgaris']),
  herbOrOil('ginger', 'ginger-essential-oil', ['ginger', 'zingiber officinale']),
  herbOrOil('lemon-balm', 'lemon-balm-essential-oil', ['lemon balm', 'melissa', 'melissa officinalis']),
  herbOrOil('roman-chamomile', 'roman-chamomile-essential-oil', [
    'roman chamomile',
    'chamomile roman',
    'chamaemelum nobile',
    'english chamomile',
  ]),
  herbOrOil('chamomile', 'german-chamomile-essential-oil', [
    'german chamomile',
    'chamomile german',
    'blue chamomile',
    'matricaria',
    'matricaria chamomilla',
  ]),
  {
    names: ['rose'],
    ids: ['rose-petal', 'rose-otto-essential-oil', 'rose-geranium-essential-oil'],
    because: 'it can be the petals, rose oil or rose geranium oil',
  },
  {
    names: ['cinnamon', 'cinnamomum verum', 'cinnamon bark'],
    ids: ['cinnamon-stick', 'cinnamon-bark-essential-oil', 'cinnamon-leaf-essential-oil'],
    because: 'it can be the bark itself or one of two essential oils',
  },
  {
    names: [
      'cinnamon oil',
      'cinnamon essential oil',
      'essential oil of cinnamon',
      'oil of cinnamon',
      'cinnamomum verum oil',
      'cinnamomum verum essential oil',
      'cinnamomum zeylanicum oil',
      'cinnamomum zeylanicum essential oil',
      'ceylon cinnamon oil',
      'ceylon cinnamon essential oil',
    ],
    ids: ['cinnamon-bark-essential-oil', 'cinnamon-leaf-essential-oil'],
    because: 'bark oil and leaf oil are different, and neither is for lips',
  },
  {
    names: ['mint'],
    ids: [
      'peppermint',
      'spearmint',
      'peppermint-essential-oil',
      'spearmint-essential-oil',
      'corn-mint-essential-oil',
    ],
    because: 'there are several mints, as herb and as essential oil',
  },
  {
    names: ['mint leaf', 'mint herb', 'dried mint'],
    ids: ['peppermint', 'spearmint'],
    because: 'it can be peppermint or spearmint',
  },
  {
    names: ['mint oil', 'mint essential oil', 'oil of mint', 'essential oil of mint'],
    ids: ['peppermint-essential-oil', 'spearmint-essential-oil', 'corn-mint-essential-oil'],
    because: 'peppermint, spearmint and corn mint oil differ in strength',
  },
  {
    names: ['chamomile oil', 'chamomile essential oil', 'oil of chamomile', 'essential oil of chamomile'],
    ids: ['roman-chamomile-essential-oil', 'german-chamomile-essential-oil'],
    because: 'Roman and German chamomile oil are different oils',
  },
  {
    names: [
      'orange',
      'orange oil',
      'orange essential oil',
      'orange peel oil',
      'oil of orange',
      'essential oil of orange',
    ],
    ids: ['sweet-orange-essential-oil', 'bitter-orange-essential-oil'],
    because: 'bitter orange oil sensitises to light, sweet orange oil does not',
  },
  {
    names: [
      'lemon',
      'lemon oil',
      'lemon essential oil',
      'lemon peel oil',
      'oil of lemon',
      'essential oil of lemon',
      'citrus limon peel oil',
      'citrus limon lemon peel oil',
      'citrus limon oil',
      'citrus limon essential oil',
    ],
    ids: ['cold-pressed-lemon-essential-oil', 'distilled-lemon-essential-oil'],
    because: 'the cold-pressed oil sensitises to light, the distilled one does not',
  },
  {
    names: [
      'lime',
      'lime oil',
      'lime essential oil',
      'lime peel oil',
      'oil of lime',
      'essential oil of lime',
      'key lime oil',
      'key lime essential oil',
      'citrus aurantiifolia oil',
      'citrus aurantiifolia essential oil',
      'citrus latifolia oil',
    ],
    ids: ['cold-pressed-lime-essential-oil', 'distilled-lime-essential-oil'],
    because: 'the cold-pressed oil strongly sensitises to light, the distilled one does not',
  },
  {
    names: [
      'bergamot',
      'bergamot oil',
      'bergamot essential oil',
      'bergamot peel oil',
      'oil of bergamot',
      'essential oil of bergamot',
      'citrus aurantium bergamia peel oil',
      'citrus aurantium bergamia bergamot peel oil',
      'citrus bergamia oil',
      'citrus bergamia essential oil',
      'citrus bergamia peel oil',
    ],
    ids: ['cold-pressed-bergamot-essential-oil', 'bergamot-fcf-essential-oil'],
    because: 'the cold-pressed oil strongly sensitises to light, the furocoumarin-free (FCF) one does not',
  },
  {
    names: ['coconut', 'cocos nucifera'],
    ids: ['coconut-oil', 'virgin-coconut-oil', 'fractionated-coconut-oil'],
    because: 'refined, virgin and fractionated coconut oil behave differently',
  },
  {
    names: ['sea buckthorn', 'sea buckthorn oil', 'oil of sea buckthorn', 'hippophae rhamnoides oil'],
    ids: ['sea-buckthorn-fruit-oil', 'sea-buckthorn-seed-oil'],
    because: 'the fruit oil stains orange and is thick, the seed oil is light and goes off sooner',
  },
  {
    names: ['jojoba wax'],
    ids: ['jojoba-oil', 'hydrogenated-jojoba'],
    because: 'jojoba oil is a liquid wax; the hard wax is hydrogenated jojoba',
  },
  {
    names: ['soy'],
    ids: ['soybean-oil', 'soy-wax'],
    because: 'it can be the oil or the wax',
  },
  {
    names: ['rice bran'],
    ids: ['rice-bran-oil', 'rice-bran-wax'],
    because: 'it can be the oil or the wax',
  },
  {
    names: ['vanilla', 'vanilla oil', 'vanilla planifolia fruit extract'],
    ids: ['vanilla-flavour-oil', 'vanilla-oleoresin', 'vanilla-bean'],
    because: 'it can be a flavour oil, the oleoresin or the bean',
  },
  {
    names: ['rosmarinus officinalis leaf extract', 'rosmarinus officinalis rosemary leaf extract'],
    ids: ['rosemary-antioxidant', 'rosemary'],
    because: 'it can be the antioxidant extract or the herb',
  },
  {
    names: ['wax', 'plant wax', 'vegetable wax', 'vegan wax'],
    ids: ['beeswax', 'candelilla-wax', 'carnauba-wax', 'rice-bran-wax'],
    because: 'waxes differ a lot in strength',
    alone: true,
  },
  {
    names: ['butter', 'body butter', 'plant butter', 'vegetable butter', 'nut butter'],
    ids: ['shea-butter', 'cocoa-butter', 'mango-butter'],
    because: 'butters differ in hardness',
    alone: true,
  },
  {
    names: ['oil', 'carrier oil', 'base oil', 'liquid oil', 'nut oil', 'seed oil'],
    ids: ['sunflower-oil', 'olive-oil', 'sweet-almond-oil', 'jojoba-oil'],
    because: 'oils differ in how long they keep and in allergens',
    alone: true,
  },
  {
    names: ['vegetable oil', 'cooking oil', 'veg oil', 'salad oil'],
    ids: ['sunflower-oil', 'canola-oil', 'soybean-oil'],
    because: 'the bottle says which oil it is',
    alone: true,
  },
  {
    names: ['essential oil'],
    ids: ['lavender-essential-oil', 'peppermint-essential-oil', 'sweet-orange-essential-oil'],
    because: 'the name of the plant is missing',
    alone: true,
  },
];

/** Names that several rows carry and that mean the ordinary one of them. */
export const ordinaryNames: Readonly<Record<string, string>> = {
  E901: 'beeswax',
  beeswax: 'beeswax',
  'helianthus annuus seed oil': 'sunflower-oil',
  'helianthus annuus sunflower seed oil': 'sunflower-oil',
  'carthamus tinctorius seed oil': 'safflower-oil',
  'carthamus tinctorius safflower seed oil': 'safflower-oil',
  'cocos nucifera oil': 'coconut-oil',
  'cocos nucifera coconut oil': 'coconut-oil',
  aroma: 'flavour-oil',
};
