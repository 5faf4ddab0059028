/**
 * Words that are written in more than one way, in the form they are compared in: lower case, one word or the words
 * a compound falls into, so that "grapeseed" and "grape seed" meet. Only words that occur in ingredient names.
 */
export const spellings: Readonly<Record<string, string>> = {
  // one thing, two spellings
  colour: 'color',
  colouring: 'coloring',
  flavour: 'flavor',
  flavouring: 'flavoring',
  flavoured: 'flavored',
  cacao: 'cocoa',
  maize: 'corn',
  soya: 'soy',
  soja: 'soy',
  camomile: 'chamomile',
  camomille: 'chamomile',
  leaves: 'leaf',
  leafs: 'leaf',
  bee: 'bees',
  bees: 'bees',
  hops: 'hop',
  tocopherols: 'tocopherol',
  johnswort: 'john wort',
  saint: 'st',
  // short forms
  eo: 'essential oil',
  ess: 'essential',
  evoo: 'extra virgin olive oil',
  ho: 'high oleic',
  vit: 'vitamin',
  vite: 'vitamin e',
  vitamine: 'vitamin e',
  // compounds
  beeswax: 'bees wax',
  beewax: 'bees wax',
  grapeseed: 'grape seed',
  rosehip: 'rose hip',
  rosebud: 'rose bud',
  wheatgerm: 'wheat germ',
  ricebran: 'rice bran',
  hempseed: 'hemp seed',
  flaxseed: 'flax seed',
  linseed: 'lin seed',
  rapeseed: 'rape seed',
  cottonseed: 'cotton seed',
  pumpkinseed: 'pumpkin seed',
  blackseed: 'black seed',
  sunflower: 'sun flower',
  safflower: 'saf flower',
  starflower: 'star flower',
  elderflower: 'elder flower',
  meadowfoam: 'meadow foam',
  meadowsweet: 'meadow sweet',
  marshmallow: 'marsh mallow',
  chickweed: 'chick weed',
  pineappleweed: 'pineapple weed',
  lemongrass: 'lemon grass',
  lemonbalm: 'lemon balm',
  wintergreen: 'winter green',
  peppermint: 'pepper mint',
  spearmint: 'spear mint',
  cornmint: 'corn mint',
  coconut: 'coco nut',
  groundnut: 'ground nut',
  hazelnut: 'hazel nut',
  walnut: 'wal nut',
  peanut: 'pea nut',
  sheanut: 'shea nut',
  soybean: 'soy bean',
  soyabean: 'soy bean',
  buckthorn: 'buck thorn',
  seabuckthorn: 'sea buck thorn',
  teatree: 'tea tree',
  beetroot: 'beet root',
  gotukola: 'gotu kola',
  selfheal: 'self heal',
  cornstarch: 'corn starch',
  cornflour: 'corn starch',
  cedarwood: 'cedar wood',
  ylangylang: 'ylang ylang',
  murumuru: 'muru muru',
};

/** Words that say how good or how pure something is, or what shape it is bought in; they do not make a name. */
export const purityWords: ReadonlySet<string> = new Set(
  (
    'pure organic bio natural raw filtered unfiltered deodorized cosmetic food grade quality fine good whole real ' +
    'crushed chopped cut rubbed grated shaved pellet pastille bead granule flake chip block bar shaving wafer button ' +
    'chunk pearl melted softened soft liquid local homemade home made homegrown plain ordinary regular normal ' +
    'standard certified wildcrafted wild vegan kosher fairtrade fair trade ethical sustainable'
  ).split(' '),
);

/** Words that may make a name of their own ("virgin coconut oil"), so they are left out only when that fails. */
export const processWords: ReadonlySet<string> = new Set(
  (
    'refined unrefined virgin extra cold pressed coldpressed expeller expressed steam distilled bleached dried dry ' +
    'fresh freshly powdered ground powder anhydrous'
  ).split(' '),
);

/** Words that many names share. They may be off by a slip at most, and alone they never make a match. */
export const sharedWords: ReadonlySet<string> = new Set(
  'oil butter wax essential seed kernel extract powder root leaf petal crystal peel bean'.split(' '),
);
