/** What makers type, line by line: the phrase, then the one ingredient it must be. */
export const exact: readonly (readonly [string, string])[] = `
beeswax = beeswax
Bees-wax = beeswax
bees wax = beeswax
BEESWAX PELLETS = beeswax
beeswax pastilles = beeswax
yellow beeswax beads = beeswax
organic beeswax = beeswax
Cera Flava = beeswax
white beeswax = beeswax-white
Cera Alba = beeswax-white
candelilla = candelilla-wax
Euphorbia Cerifera Cera = candelilla-wax
carnauba wax flakes = carnauba-wax
rice bran wax = rice-bran-wax
shea = shea-butter
sheabutter = shea-butter
unrefined shea butter = shea-butter
organic raw shea butter = shea-butter
karité = shea-butter
Karite butter = shea-butter
Butyrospermum Parkii (Shea) Butter = shea-butter
Butyrospermum parkii butter = shea-butter
cocoa = cocoa-butter
cacao butter = cocoa-butter
cocoa butter wafers = cocoa-butter
Theobroma Cacao Seed Butter = cocoa-butter
mango = mango-butter
illipé butter = illipe-butter
cupuaçu butter = cupuacu-butter
coconut oil = coconut-oil
coco nut oil = coconut-oil
Cocos Nucifera Oil = coconut-oil
VCO = virgin-coconut-oil
organic virgin coconut oil = virgin-coconut-oil
extra virgin coconut oil = virgin-coconut-oil
FCO = fractionated-coconut-oil
MCT oil = fractionated-coconut-oil
liquid coconut oil = fractionated-coconut-oil
Caprylic/Capric Triglyceride = fractionated-coconut-oil
EVOO = olive-oil
extra-virgin olive oil = olive-oil
olive = olive-oil
almond oil = sweet-almond-oil
sweet almond oil = sweet-almond-oil
Prunus Amygdalus Dulcis (Sweet Almond) Oil = sweet-almond-oil
sunflower oil = sunflower-oil
Helianthus Annuus Seed Oil = sunflower-oil
HO sunflower = high-oleic-sunflower-oil
high-oleic sunflower oil = high-oleic-sunflower-oil
sunflower oil high oleic = high-oleic-sunflower-oil
grape seed oil = grapeseed-oil
grapeseed = grapeseed-oil
rose hip seed oil = rosehip-oil
rosehip = rosehip-oil
linseed oil = flaxseed-oil
flax oil = flaxseed-oil
groundnut oil = peanut-oil
rapeseed oil = canola-oil
cold-pressed rapeseed oil = canola-oil
maize oil = corn-oil
wheatgerm oil = wheat-germ-oil
hempseed oil = hemp-seed-oil
jojoba = jojoba-oil
golden jojoba oil = jojoba-oil
Simmondsia Chinensis (Jojoba) Seed Oil = jojoba-oil
castor = castor-oil
EPO = evening-primrose-oil
starflower oil = borage-oil
soya oil = soybean-oil
tallow = beef-tallow
wool fat = lanolin
anhydrous lanolin = lanolin
Vit E = vitamin-e
vitamin E oil = vitamin-e
Tocopherols = vitamin-e
rosemary extract = rosemary-antioxidant
calendula = calendula
dried calendula petals = calendula
pot marigold = calendula
chamomile = chamomile
camomile flowers = chamomile
roman chamomile flowers = roman-chamomile
lavender flowers = lavender
lavender buds = lavender
peppermint leaves = peppermint
rose petals = rose-petal
St. John's Wort = st-johns-wort
St John’s wort = st-johns-wort
comfrey leaf = comfrey
plantain leaves = plantain
alkanet root powder = alkanet
lavender oil = lavender-essential-oil
lavender EO = lavender-essential-oil
Lavender e.o. = lavender-essential-oil
essential oil of lavender = lavender-essential-oil
oil of cloves = clove-bud-essential-oil
peppermint oil = peppermint-essential-oil
pure peppermint essential oil = peppermint-essential-oil
Mentha Piperita (Peppermint) Oil = peppermint-essential-oil
sweet orange = sweet-orange-essential-oil
tea-tree oil = tea-tree-essential-oil
ylang-ylang = ylang-ylang-essential-oil
geranium oil = rose-geranium-essential-oil
cedarwood = atlas-cedarwood-essential-oil
roman chamomile oil = roman-chamomile-essential-oil
distilled lime oil = distilled-lime-essential-oil
cold pressed lemon oil = cold-pressed-lemon-essential-oil
menthol = menthol-crystals
flavor oil = flavour-oil
strawberry flavouring oil = berry-flavour-oil
vanilla flavour oil = vanilla-flavour-oil
cocoa powder = cocoa-powder
cornstarch = arrowroot-starch
infused oil = infused-oil
herbal oil = infused-oil
almond-oil-sweet = sweet-almond-oil
beeswax-yellow = beeswax
`
  .trim()
  .split('\n')
  .map((line) => line.split(' = ') as [string, string]);

/** Slips and misspellings, and the one ingredient they must be read as. */
export const misspelt: readonly (readonly [string, string])[] = `
bees wacks = beeswax
beezwax = beeswax
sheea buter = shea-butter
shee butter = shea-butter
sheabuter = shea-butter
cocao = cocoa-butter
cocao butter = cocoa-butter
coco butter = cocoa-butter
calandula = calendula
karnauba = carnauba-wax
karnauba wax = carnauba-wax
candellila = candelilla-wax
candelila wax = candelilla-wax
jojobba = jojoba-oil
jojobba oil = jojoba-oil
lavendar oil = lavender-essential-oil
rosmary oil = rosemary-essential-oil
mcadamia = macadamia-oil
mcadamia oil = macadamia-oil
sweetalmond oil = sweet-almond-oil
almand oil = sweet-almond-oil
oilve oil = olive-oil
olive oli = olive-oil
caster oil = castor-oil
sunflour oil = sunflower-oil
pepermint oil = peppermint-essential-oil
peppermint essental oil = peppermint-essential-oil
avacado oil = avocado-oil
grapseed oil = grapeseed-oil
cocunut oil = coconut-oil
kokam butter = kokum-butter
mango buter = mango-butter
fractionatd coconut oil = fractionated-coconut-oil
lanolen = lanolin
tocoferol = vitamin-e
comfry = comfrey
echinacia = echinacea
helicrysum = helichrysum
eucaliptus oil = eucalyptus-essential-oil
frankinsense = frankincense-essential-oil
patchuli oil = patchouli-essential-oil
tea tre oil = tea-tree-essential-oil
high oelic sunflower oil = high-oleic-sunflower-oil
chamomille = chamomile
tumeric = turmeric
`
  .trim()
  .split('\n')
  .map((line) => line.split(' = ') as [string, string]);

/** Phrases that are no ingredient of ours and near to none. */
export const nothing: readonly string[] = (
  'motor oil|paraffin oil|fish oil|engine oil|snake oil|baby oil|mineral oil|lamp oil|peanut butter|almond milk|' +
  'almond butter|apple butter|dairy butter|avocado butter|salted butter|hair wax|car wax|candle wax|ear wax|best wax|' +
  'sugar|water|flour|bananas|cheese|salt|tin|balm|lip balm|hand balm|lemonade|fernlea|Fernlea hand balm|winter|' +
  'winter salve|hand|batch|oz|line|save|time|close|theme|clover|money|like|double|twelve|tins|dozen|please|thanks|' +
  'recipe|melon|candle|match|stage|narrow|fingers|bitter almond oil|bitter almond|camelina oil|clary sage oil|tagetes|' +
  'french marigold|plum oil|peach kernel oil|carrot seed oil|pistachio oil|sandalwood oil|neroli|myrrh|basil oil|' +
  'black pepper oil|aniseed oil|glycerine|shellac|aloe vera|petroleum jelly|rose water|lavender water|vanilla extract|' +
  'coconut milk|lemon juice|orange peel|peppermint tea|soy milk|virginian cedarwood|xylitol'
).split('|');

/** A bare name that means two things, and what it may mean. */
export const twoThings: readonly (readonly [string, readonly string[]])[] = [
  ['lavender', ['lavender', 'lavender-essential-oil']],
  ['peppermint', ['peppermint', 'peppermint-essential-oil']],
  ['rosemary', ['rosemary', 'rosemary-essential-oil']],
  ['thyme', ['thyme', 'thyme-essential-oil']],
  ['ginger', ['ginger', 'ginger-essential-oil']],
  ['roman chamomile', ['roman-chamomile', 'roman-chamomile-essential-oil']],
  ['chamomile oil', ['roman-chamomile-essential-oil', 'german-chamomile-essential-oil']],
  ['mint oil', ['peppermint-essential-oil', 'spearmint-essential-oil', 'corn-mint-essential-oil']],
  ['coconut', ['coconut-oil', 'virgin-coconut-oil', 'fractionated-coconut-oil']],
  ['orange oil', ['sweet-orange-essential-oil', 'bitter-orange-essential-oil']],
  ['lemon essential oil', ['cold-pressed-lemon-essential-oil', 'distilled-lemon-essential-oil']],
  ['Citrus Limon (Lemon) Peel Oil', ['cold-pressed-lemon-essential-oil', 'distilled-lemon-essential-oil']],
  ['lime', ['cold-pressed-lime-essential-oil', 'distilled-lime-essential-oil']],
  ['bergamot', ['cold-pressed-bergamot-essential-oil', 'bergamot-fcf-essential-oil']],
  ['cinnamon oil', ['cinnamon-bark-essential-oil', 'cinnamon-leaf-essential-oil']],
  ['sea buckthorn oil', ['sea-buckthorn-fruit-oil', 'sea-buckthorn-seed-oil']],
  ['jojoba wax', ['jojoba-oil', 'hydrogenated-jojoba']],
  ['vegetable oil', ['sunflower-oil', 'canola-oil', 'soybean-oil']],
];
