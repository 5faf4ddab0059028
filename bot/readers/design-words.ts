/** Group words a maker may want to leave out, by what they mean to core. */
const groupWords: Readonly<Record<string, string>> = {
  nuts: 'nut nuts treenut treenuts',
  peanut: 'peanut peanuts groundnut groundnuts',
  soy: 'soy soya soybean soybeans',
  sesame: 'sesame',
  wheat: 'wheat gluten',
  bee: 'bee bees honeybee apiary hive',
  wool: 'wool sheep',
  'daisy-family': 'daisy daisies ragweed asteraceae compositae',
  animal: 'animal animals',
  palm: 'palm',
  coconut: 'coconut coconuts',
  mineral: 'mineral petroleum petrolatum petrochemical petrochemicals synthetic',
  scent:
    'scent scents fragrance fragrances perfume perfumes aroma aromas smell smells flavour flavours flavor flavors parfum scented',
  mint: 'mint menthol mints',
  citrus: 'citrus',
  herbs: 'herb herbs',
  colour: 'colour colours color colors colourant colorant dye dyes pigment pigments',
  antioxidant: 'antioxidant antioxidants',
  wax: 'wax waxes',
  butter: 'butter butters',
  'never-in':
    'water dairy milk lactose egg eggs alcohol preservative preservatives paraben parabens silicone silicones plastic sulphates sulfates phthalates fish shellfish emulsifier emulsifiers chemicals',
};

const groupByWord = new Map(
  Object.entries(groupWords).flatMap(([group, words]) =>
    words.split(' ').map((word) => [word, group] as const),
  ),
);

export const groupOf = (word: string): string | undefined => groupByWord.get(word);

/** Words after a group that add nothing: "bee products", "nut oils", "palm derivatives". */
export const groupTail = new Set(
  'product products oil oils derivative derivatives ingredient ingredients allergen allergens stuff based kind kinds type types wax waxes free at all'.split(
    ' ',
  ),
);

/** Words before a group that add nothing: "tree nuts", "added scent", "any animal products". */
export const groupLead = new Set(
  'tree any added artificial of from containing contain contains using use used the a all kind sort whatsoever to'.split(
    ' ',
  ),
);

/** Words that exclude what follows, besides "no" and "without". */
export const excludingWords = new Set(
  `not nothing don't dont never avoid avoiding exclude excluding except minus skip omit leave hold hate hates dislike allergic allergy allergies
  intolerant lacking free nor neither doesn't can't cannot isn't mustn't shouldn't drop remove lose ditch`.split(
    /\s+/,
  ),
);

/** Words that ask for a recipe to be made up. */
export const inventingWords =
  `design designing designed invent inventing formulate formulating devise concoct conceive develop brainstorm compose composing`.split(
    /\s+/,
  );

/** Words that ask for one when it is said that it is a balm, or what it should be like. */
export const suggestingWords =
  `propose proposing suggest suggesting suggestion suggestions recommend recommending recommendation idea ideas`.split(
    /\s+/,
  );

/** Words that ask for one only beside the word recipe or the name of what is to be made. */
export const wantingWords =
  `want wants wanted need needs like looking after think wish would recipe formula formulation create make making find give what which should come help new spend love fancy prefer`.split(
    /\s+/,
  );

/** "No wait", "no idea": nothing that is left out. */
export const notThings = new Set(
  'wait idea matter worries worry problem rush clue hurry more need chance luck way doubt'.split(' '),
);

/** What is to be made; a tin or a tube alone is only a container. */
export const bodyWords = 'balm balms salve salves ointment stick sticks lip lipstick unguent'.split(' ');

/** Requests of other kinds: a message with one of these is never a design. */
export const otherRequests =
  `scale scaling rescale convert weigh show list save store delete rename settings undo export import label cost-of trace stock poured
  infuse swap swapped replace replacement substitute check heal heals density versions history remind translate`.split(
    /\s+/,
  );

export const softWords = [
  'squeeze',
  'squeezy',
  'squeezable',
  'squeezed',
  'ointment',
  'unguent',
  'spreadable',
];
export const stickWords = ['twist', 'twist-up', 'push-up', 'lipstick', 'bullet', 'deodorant'];
export const veganWords = ['vegan', 'vegans', 'plant-based', 'plantbased', 'plant'];
export const unscentedWords = [
  'unscented',
  'scentless',
  'unperfumed',
  'fragrance-free',
  'unflavoured',
  'unflavored',
  'odourless',
];
export const priceWords =
  `price prices priced cost costs cheap cheaper cheapest budget affordable inexpensive expensive money euro euros dollar dollars quid pence cents € £ $`.split(
    /\s+/,
  );

/** Kinds of heat without a figure, in °C: a pocket is 37 °C, the others are what such days reach (house's choice). */
export const heatWords: readonly (readonly [readonly string[], number])[] = [
  [['car', 'dashboard'], 50],
  [['heatwave', 'heatwaves', 'desert', 'tropical', 'tropics', 'scorching', 'sahara'], 40],
  [['pocket', 'pockets', 'trouser', 'handbag', 'purse'], 37],
  [['hot', 'hotter', 'summer', 'summers', 'heat', 'beach', 'sunny', 'sun'], 35],
];

/** Words around wishes that ask for nothing more. */
export const designWords = new Set([
  ...inventingWords,
  ...suggestingWords,
  ...wantingWords,
  ...bodyWords,
  'tin',
  'tube',
  ...softWords,
  ...stickWords,
  ...veganWords,
  ...unscentedWords,
  ...priceWords,
  ...heatWords.flatMap(([words]) => words),
  ...excludingWords,
  ...groupLead,
  ...`new own up with for that which it its must has have be is are stays stay staying survive survives surviving withstand withstands stand stands
  standing holds holding hold keep keeps keeping lasts last lasting shelf life month months year years week weeks degree degrees celsius temperature
  temperatures temp temps hottest hot warm cold weather climate climates day days firm firmly hard solid soft softer softish firmer melt melts melting melted won't wont
  wouldn't would will up to at in over under above below least most max maximum minimum or and but also too very quite really rather please
  based wish wishes kind type style vegetarian organic natural gentle moisturising moisturizing nourishing protective protecting simple easy nice good great best
  suitable suited use using used include includes including contain contains containing featuring feature add added adding has scented flavoured
  flavored flavour flavor scent smelling smells taste tastes tasting infused made hint touch drop little lots plenty some something anything
  version option options one two three several few choose pick work works working out through outdoors days's summer's hands hand body face lips skin dry chapped winter
  couple different homemade home-made diy put goes into go people friend everyone who user per each only just
  solve able could can may might glide glides glossy gloss smooth creamy rich light shine shiny try trying
  slump slumps soften softens go goes runny which cope copes coping fine ok lasts club class lesson group weatherproof heatproof heat-proof heat-resistant resistant proof resists resist because so if when even during while
  free friendly safe sell selling sold gift gifts present presents fair market stall stable anhydrous water-free waterless doesnt doesn't wouldnt stays-firm recipe scratch`.split(
    /\s+/,
  ),
]);

/** Words of a follow-up that change a wish. */
export const followWords = new Set([
  ...designWords,
  ...`instead what about how now change again same then please swap it this make go and also drop more less much bit another but rather actually still
  remove only needed enough take away turn into hotter warmer colder cooler swap out off third needn't necessarily strictly longer stiffer harder creamier`.split(
    /\s+/,
  ),
]);

/** "Nothing with nuts", "nothing that comes from animals". */
export const nothingLead = new Set('with that has have comes in of from containing contains made'.split(' '));
