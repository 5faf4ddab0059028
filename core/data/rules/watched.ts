import type { RuleSourceId, RuleStatus } from './sources.ts';

/**
 * Things the rules speak of that are no ingredients of the library: nobody should put most of them in a balm, so there
 * is nothing to weigh or melt, but a recipe that names one has to be told. `share` says what it mostly is (percent).
 */
export interface Watched {
  readonly id: string;
  readonly name: string;
  /** As makers write it, lower case; plurals and "essential oil" for "oil" are tried as well. */
  readonly names: readonly string[];
  /** `extract`: nobody can tell from its name what it is made with. */
  readonly kind: 'aroma' | 'substance' | 'water' | 'plant' | 'colour' | 'extract';
  readonly shares?: readonly { readonly name: string; readonly low: number; readonly high: number }[];
  /** Its own name among the allergens. */
  readonly labelName?: string;
  /** An ingredient of the library it is made of: its cautions count too. */
  readonly holds?: string;
  readonly source: readonly RuleSourceId[];
  readonly status: RuleStatus;
}

type Share = readonly [name: string, low: number, high: number];

const scent = (
  id: string,
  name: string,
  names: readonly string[],
  shares: readonly Share[] = [],
  labelName?: string,
): Watched => ({
  id,
  name,
  names,
  kind: 'aroma',
  shares: shares.map(([of, low, high]) => ({ name: of, low, high })),
  ...(labelName ? { labelName } : {}),
  source: ['COMPOSITION-M'],
  status: 'memory',
});

/** A pure substance: 100 % of itself. */
const substance = (name: string, names: readonly string[]): Watched => ({
  id: name.toLowerCase().replace(/[^a-z0-9]+/g, '-'),
  name: name.toLowerCase(),
  names: [name.toLowerCase(), ...names],
  kind: 'substance',
  shares: [{ name, low: 100, high: 100 }],
  source: ['GENERAL-M'],
  status: 'read',
});

const of =
  (kind: Watched['kind']) =>
  (id: string, names: readonly string[], more: Partial<Pick<Watched, 'name' | 'holds'>> = {}): Watched => ({
    id,
    name: names[0] ?? id,
    names,
    kind,
    ...more,
    source: ['PRACTICE'],
    status: 'practice',
  });
const water = of('water');
const plant = of('plant');
const colour = of('colour');

export const watchedThings: readonly Watched[] = [
  scent('verbena-essential-oil', 'lemon verbena oil', ['lemon verbena oil', 'verbena oil']),
  scent(
    'verbena-absolute',
    'verbena absolute',
    ['verbena absolute', 'lemon verbena absolute'],
    [],
    'Lippia citriodora absolute',
  ),
  scent('tagetes-essential-oil', 'Tagetes (marigold) oil', [
    'tagetes oil',
    'tagetes',
    'marigold oil',
    'marigold essential oil',
    'french marigold',
    'french marigold oil',
    'tagetes infused oil',
    'tagetes oil infusion',
    'tagetes minuta oil',
    'tagetes patula oil',
  ]),
  scent('tagetes-erecta', 'African marigold (Tagetes erecta)', [
    'tagetes erecta',
    'tagetes erecta oil',
    'african marigold',
    'african marigold oil',
  ]),
  scent('peru-balsam', 'Peru balsam', [
    'peru balsam',
    'balsam of peru',
    'balsam peru',
    'peruvian balsam',
    'crude peru balsam',
    'peru balsam crude',
    'crude balsam of peru',
    'raw peru balsam',
  ]),
  scent('peru-balsam-extract', 'Peru balsam extract', [
    'peru balsam oil',
    'peru balsam extract',
    'peru balsam distillate',
    'balsam of peru oil',
    'balsam of peru extract',
  ]),
  scent('other-essential-oil', 'essential oil', []),
  {
    id: 'plant-extract',
    name: 'plant extract',
    names: [],
    kind: 'extract',
    source: ['PRACTICE'],
    status: 'practice',
  },
  {
    id: 'dried-plant',
    name: 'dried plant',
    names: [],
    kind: 'extract',
    source: ['PRACTICE'],
    status: 'practice',
  },
  scent('laurel-seed-oil', 'laurel seed oil', [
    'laurel seed oil',
    'laurel berry oil',
    'laurel berry',
    'bay laurel seed oil',
  ]),
  scent(
    'laurel-leaf-essential-oil',
    'laurel leaf oil',
    ['laurel leaf oil', 'bay laurel oil', 'laurel oil', 'bay leaf oil', 'bay laurel leaf oil'],
    [
      ['Methyl eugenol', 1, 4],
      ['Linalool', 1, 10],
      ['Eugenol', 0, 3],
    ],
    'Laurus Nobilis Leaf Oil',
  ),
  scent(
    'basil-essential-oil',
    'basil oil',
    ['basil oil', 'sweet basil oil', 'basil essential oil', 'basil', 'sweet basil'],
    [
      ['Estragole', 5, 80],
      ['Linalool', 10, 60],
      ['Methyl eugenol', 0, 3],
      ['Eugenol', 0, 10],
    ],
  ),
  scent(
    'tarragon-essential-oil',
    'tarragon oil',
    ['tarragon oil', 'tarragon'],
    [
      ['Estragole', 70, 87],
      ['Methyl eugenol', 0, 1.5],
    ],
  ),
  scent(
    'nutmeg-essential-oil',
    'nutmeg oil',
    ['nutmeg oil'],
    [
      ['Safrole', 0.2, 2.5],
      ['Methyl eugenol', 0, 1],
      ['Pinene', 20, 40],
    ],
  ),
  scent(
    'anise-essential-oil',
    'anise oil',
    ['anise oil', 'aniseed oil', 'aniseed', 'anise'],
    [['Estragole', 0.5, 5]],
  ),
  scent('neroli-essential-oil', 'neroli oil', ['neroli oil', 'neroli', 'orange blossom oil']),
  scent(
    'clary-sage-essential-oil',
    'clary sage oil',
    ['clary sage oil', 'clary sage', 'clary oil'],
    [
      ['Linalyl Acetate', 50, 80],
      ['Linalool', 6.5, 24],
    ],
  ),
  scent(
    'petitgrain-essential-oil',
    'petitgrain oil',
    ['petitgrain oil', 'petitgrain'],
    [
      ['Linalyl Acetate', 40, 60],
      ['Linalool', 15, 30],
      ['Geraniol', 1, 5],
      ['Limonene', 0.5, 8],
    ],
  ),
  scent(
    'citronella-essential-oil',
    'citronella oil',
    ['citronella oil', 'citronella'],
    [
      ['Geraniol', 15, 25],
      ['Citronellol', 8, 15],
      ['Limonene', 1, 12],
    ],
  ),
  scent(
    'coriander-seed-essential-oil',
    'coriander seed oil',
    ['coriander seed oil', 'coriander oil', 'coriander essential oil'],
    [
      ['Linalool', 60, 80],
      ['Limonene', 0.5, 5],
      ['Geraniol', 0.5, 3],
    ],
  ),
  scent(
    'black-pepper-essential-oil',
    'black pepper oil',
    ['black pepper oil', 'black pepper'],
    [
      ['Beta-Caryophyllene', 10, 35],
      ['Limonene', 10, 30],
    ],
  ),
  scent(
    'juniper-berry-essential-oil',
    'juniper berry oil',
    ['juniper berry oil', 'juniper oil', 'juniper'],
    [['Limonene', 2, 12]],
  ),
  scent('cypress-essential-oil', 'cypress oil', ['cypress oil', 'cypress'], [['Limonene', 1, 5]]),
  scent(
    'pine-needle-essential-oil',
    'pine needle oil',
    ['pine needle oil', 'pine oil', 'scots pine oil'],
    [['Limonene', 1, 12]],
  ),
  scent('myrrh-essential-oil', 'myrrh oil', ['myrrh oil', 'myrrh']),
  scent('vetiver-essential-oil', 'vetiver oil', ['vetiver oil', 'vetiver']),
  scent(
    'marjoram-essential-oil',
    'sweet marjoram oil',
    ['sweet marjoram oil', 'marjoram oil', 'marjoram'],
    [['Linalool', 2, 25]],
  ),
  scent('sandalwood-essential-oil', 'sandalwood oil', ['sandalwood oil', 'sandalwood']),
  scent(
    'jasmine-absolute',
    'jasmine absolute',
    ['jasmine absolute', 'jasmine oil', 'jasmine'],
    [],
    'Jasmine Oil/Extract',
  ),
  scent(
    'rose-absolute',
    'rose absolute',
    ['rose absolute'],
    [
      ['Methyl eugenol', 0.1, 3],
      ['Citronellol', 15, 35],
      ['Geraniol', 5, 20],
      ['Eugenol', 0, 3],
    ],
    'Rose Flower Oil/Extract',
  ),
  scent(
    'sweet-birch-essential-oil',
    'sweet birch oil',
    ['sweet birch oil', 'birch oil', 'birch sweet oil'],
    [['Methyl Salicylate', 96, 99.5]],
  ),
  scent('cumin-essential-oil', 'cumin oil', ['cumin oil', 'cumin']),
  scent('angelica-root-essential-oil', 'angelica root oil', [
    'angelica root oil',
    'angelica oil',
    'angelica root',
  ]),
  scent(
    'litsea-essential-oil',
    'may chang oil',
    [
      'may chang oil',
      'may chang',
      'litsea oil',
      'litsea cubeba oil',
      'litsea cubeba',
      'may chang litsea cubeba',
    ],
    [['Citral', 60, 80]],
  ),
  scent(
    'lemon-myrtle-essential-oil',
    'lemon myrtle oil',
    ['lemon myrtle oil', 'lemon myrtle'],
    [['Citral', 85, 95]],
  ),
  scent(
    'palmarosa-essential-oil',
    'palmarosa oil',
    ['palmarosa oil', 'palmarosa'],
    [
      ['Geraniol', 70, 85],
      ['Linalool', 2, 4],
      ['Citral', 0, 1],
    ],
  ),
  scent(
    'cassia-essential-oil',
    'cassia oil',
    ['cassia oil', 'cassia', 'chinese cinnamon oil', 'cinnamon cassia oil'],
    [
      ['Cinnamal', 70, 90],
      ['Coumarin', 1.5, 7],
    ],
    'Cinnamomum Cassia Leaf Oil',
  ),
  scent(
    'virginian-cedarwood-essential-oil',
    'Virginian cedarwood oil',
    [
      'virginian cedarwood oil',
      'virginia cedarwood oil',
      'cedarwood virginia',
      'red cedar oil',
      'virginian cedarwood',
    ],
    [],
    'Juniperus Virginiana Oil',
  ),
  scent('pennyroyal-essential-oil', 'pennyroyal oil', ['pennyroyal oil', 'pennyroyal']),
  scent('sassafras-essential-oil', 'sassafras oil', ['sassafras oil', 'sassafras'], [['Safrole', 70, 95]]),
  scent('wormwood-essential-oil', 'wormwood oil', ['wormwood oil', 'wormwood', 'mugwort oil']),
  scent('thuja-essential-oil', 'thuja oil', ['thuja oil', 'thuja', 'cedar leaf oil']),
  scent('rue-essential-oil', 'rue oil', ['rue oil']),
  scent('mustard-essential-oil', 'mustard oil', ['mustard oil', 'mustard seed oil', 'mustard']),
  scent('bitter-almond-essential-oil', 'bitter almond oil', [
    'bitter almond oil',
    'bitter almond essential oil',
    'bitter almond',
    'almond bitter oil',
  ]),
  scent('horseradish-essential-oil', 'horseradish oil', ['horseradish oil', 'horseradish']),
  scent('vanilla-extract', 'vanilla extract', ['vanilla extract', 'vanilla essence', 'vanilla tincture']),
  scent('fragrance-oil', 'fragrance oil', [
    'fragrance oil',
    'perfume oil',
    'candle fragrance',
    'soap fragrance',
  ]),
  substance('Citral', ['neral', 'geranial']),
  substance('Limonene', ['d-limonene']),
  substance('Linalool', []),
  substance('Linalyl Acetate', []),
  substance('Eugenol', []),
  substance('Isoeugenol', []),
  substance('Geraniol', []),
  substance('Citronellol', []),
  substance('Farnesol', []),
  substance('Cinnamal', ['cinnamaldehyde']),
  substance('Cinnamyl Alcohol', []),
  substance('Coumarin', []),
  substance('Vanillin', []),
  substance('Methyl Salicylate', []),
  substance('Benzyl Salicylate', []),
  substance('Benzyl Benzoate', []),
  substance('Benzyl Alcohol', []),
  substance('Carvone', []),
  substance('Anethole', []),
  substance('Methyl eugenol', ['methyleugenol']),
  substance('Estragole', ['methyl chavicol']),
  substance('Safrole', []),
  substance('Hydroxycitronellal', []),
  substance('Rose Ketones', ['damascone', 'damascenone']),
  substance('Methyl 2-Octynoate', []),
  substance('3-Propylidenephthalide', []),
  substance('Methyl N-methylanthranilate', []),
  substance('Retinol', ['retinyl palmitate', 'vitamin a', 'retinyl acetate', 'vitamin a palmitate']),
  water('aloe-vera', ['aloe vera gel', 'aloe vera juice', 'aloe vera', 'aloe gel', 'aloe juice', 'aloe']),
  water('floral-water', [
    'floral water',
    'rose water',
    'rosewater',
    'lavender water',
    'orange flower water',
    'orange blossom water',
    'neroli water',
    'chamomile water',
    'cucumber water',
    'peppermint water',
    'hydrosol',
    'rose hydrosol',
    'lavender hydrosol',
    'hydrolat',
  ]),
  water('plain-water', ['water', 'distilled water', 'tap water', 'spring water', 'honey water']),
  water(
    'juice',
    [
      'lemon juice',
      'lime juice',
      'orange juice',
      'beetroot juice',
      'beet juice',
      'cucumber juice',
      'mango juice',
      'fruit juice',
      'juice',
    ],
    { name: 'juice' },
  ),
  water('zest', ['lemon zest', 'orange zest', 'lime zest', 'lemon peel', 'orange peel', 'zest'], {
    name: 'fresh zest or peel',
  }),
  water(
    'fresh-fruit',
    [
      'mashed strawberry',
      'strawberry puree',
      'fresh strawberry',
      'raspberry puree',
      'fruit puree',
      'cucumber',
    ],
    { name: 'fresh fruit' },
  ),
  water('milk', [
    'milk',
    'goat milk',
    "goat's milk",
    'coconut milk',
    'oat milk',
    'coconut cream',
    'coconut water',
    'yoghurt',
    'yogurt',
  ]),
  water(
    'tea-infusion',
    ['chamomile tea', 'peppermint tea', 'green tea infusion', 'brewed tea', 'calendula tea', 'herbal tea'],
    { name: 'herb tea' },
  ),
  water('glycerin', [
    'glycerin',
    'glycerine',
    'vegetable glycerin',
    'vegetable glycerine',
    'glycerol',
    'propylene glycol',
    'sodium lactate',
  ]),
  water('syrup', ['maple syrup', 'agave syrup', 'sugar syrup', 'corn syrup', 'golden syrup'], {
    name: 'syrup',
  }),
  water('tincture', [
    'tincture',
    'calendula tincture',
    'benzoin tincture',
    'witch hazel',
    'vodka',
    'brandy',
    'whisky',
    'gin',
    'rum',
    'alcohol',
  ]),
  water('plant-gel', [
    'plant gel',
    'flaxseed gel',
    'flax gel',
    'linseed gel',
    'cucumber gel',
    'marshmallow gel',
  ]),
  water('fresh-plant', ['fresh plant', 'fresh herbs', 'fresh flowers', 'fresh leaves', 'fresh garden herbs']),
  water('kitchen-extract', [
    'kitchen extract',
    'almond extract',
    'lemon extract',
    'orange extract',
    'baking extract',
    'baking flavouring',
  ]),
  water('almond-milk', ['almond milk'], { holds: 'sweet-almond-oil' }),
  water(
    'hydrous-lanolin',
    ['hydrous lanolin', 'lanolin hydrous', 'hydrous wool fat', 'hydrous wool wax', 'lanolin cream'],
    { holds: 'lanolin' },
  ),
  water('propolis-tincture', ['propolis tincture', 'propolis in alcohol', 'propolis in water'], {
    holds: 'propolis-extract',
  }),
  water('food-colouring', ['food colouring', 'food coloring', 'liquid food colouring']),
  plant('verbena', ['verbena', 'lemon verbena', 'lemon verbena leaf']),
  plant('bay', ['bay', 'bay leaf']),
  plant('borage-leaf', ['borage leaf', 'borage']),
  plant('coltsfoot', ['coltsfoot', 'coltsfoot leaf']),
  colour('henna', ['henna powder', 'henna']),
  colour('charcoal', ['activated charcoal', 'charcoal powder', 'charcoal']),
  colour('hibiscus-powder', ['hibiscus powder', 'hibiscus']),
  colour('manganese-violet', ['manganese violet']),
  colour('bismuth-oxychloride', ['bismuth oxychloride']),
  colour('bronze-powder', ['bronze powder']),
  colour('copper-powder', ['copper powder']),
  colour('aluminium-powder', ['aluminium powder', 'aluminum powder']),
  colour('caramel', ['caramel colour', 'caramel color', 'caramel']),
  colour('beta-carotene', ['beta-carotene', 'beta carotene']),
  colour('chromium-hydroxide-green', ['chromium hydroxide green', 'viridian']),
  colour('ferric-ferrocyanide', ['ferric ferrocyanide', 'prussian blue', 'iron blue']),
  colour('ferric-ammonium-ferrocyanide', ['ferric ammonium ferrocyanide']),
  colour('guaiazulene', ['guaiazulene']),
];
