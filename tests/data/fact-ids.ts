/** The ids of the five fact tables the library was typed from, so that no row goes missing unnoticed. */
export const factIds = {
  oils: (
    'almond-oil-sweet sunflower-oil sunflower-oil-high-oleic olive-oil grapeseed-oil ' +
    'rice-bran-oil jojoba-oil castor-oil avocado-oil apricot-kernel-oil ' +
    'coconut-oil coconut-oil-virgin coconut-oil-fractionated hemp-seed-oil rosehip-seed-oil ' +
    'argan-oil meadowfoam-seed-oil macadamia-oil sesame-oil canola-oil ' +
    'soybean-oil safflower-oil safflower-oil-high-oleic corn-oil cottonseed-oil ' +
    'palm-oil palm-kernel-oil babassu-oil camellia-seed-oil evening-primrose-oil ' +
    'borage-oil flaxseed-oil walnut-oil hazelnut-oil pumpkin-seed-oil ' +
    'wheat-germ-oil black-cumin-seed-oil sea-buckthorn-fruit-oil sea-buckthorn-seed-oil tamanu-oil ' +
    'neem-oil peanut-oil baobab-oil moringa-oil marula-oil ' +
    'raspberry-seed-oil cocoa-butter shea-butter mango-butter kokum-butter ' +
    'illipe-butter sal-butter murumuru-butter cupuacu-butter beef-tallow ' +
    'lard lanolin'
  ).split(' '),
  waxes: (
    'beeswax-yellow beeswax-white candelilla-wax carnauba-wax rice-bran-wax ' +
    'sunflower-wax berry-wax japan-wax soy-wax bayberry-wax ' +
    'castor-wax hydrogenated-jojoba microcrystalline-wax ozokerite paraffin'
  ).split(' '),
  botanicals: (
    'calendula chamomile-german chamomile-roman lavender plantain ' +
    'comfrey rose-petal lemon-balm marshmallow-root mallow ' +
    'st-johns-wort yarrow peppermint spearmint rosemary ' +
    'sage thyme arnica chickweed self-heal ' +
    'elderflower violet-leaf dandelion-flower nettle helichrysum ' +
    'echinacea mullein-flower red-clover meadowsweet chamomile-wild-pineappleweed ' +
    'hops gotu-kola green-tea ginger vanilla-bean ' +
    'cinnamon-stick turmeric annatto alkanet horse-chestnut ' +
    'poke-root'
  ).split(' '),
  essentials: (
    'peppermint spearmint cornmint orange-sweet orange-bitter ' +
    'lemon-cold-pressed lemon-distilled lime-cold-pressed lime-distilled bergamot ' +
    'bergamot-fcf grapefruit mandarin lavender lavandin ' +
    'chamomile-roman chamomile-german rosemary tea-tree eucalyptus ' +
    'clove-bud cinnamon-bark cinnamon-leaf rose-geranium rose-otto ' +
    'ylang-ylang lemongrass lemon-balm-melissa ginger cardamom ' +
    'sweet-fennel star-anise frankincense patchouli cedarwood-atlas ' +
    'thyme wintergreen benzoin vanilla-flavour-oil berry-flavour-oil'
  ).split(' '),
  additives: (
    'vitamin-e-mixed-tocopherols tocopheryl-acetate rosemary-antioxidant ascorbyl-palmitate honey ' +
    'propolis-extract mica iron-oxides titanium-dioxide zinc-oxide ' +
    'ultramarine-chromium-green carmine alkanet-root beet-powder cocoa-powder ' +
    'stevia oil-soluble-sweetener flavour-oil vanilla-oleoresin menthol-crystals ' +
    'camphor lanolin bisabolol allantoin arrowroot-starch ' +
    'squalane stearic-acid cetyl-alcohol'
  ).split(' '),
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type FactTable = keyof typeof factIds;
