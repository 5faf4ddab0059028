/**
 * Words for things that are mostly water, or bring it, by the watched thing they count as. Fresh plants, honey, zest, aloe,
 * floral water, milk and juices are the rules' own (cautions); the rest is food and drink that is bought wet (common practice).
 * They count where they stand as the last word of a line that has an amount: "6 g fresh buttermilk", "5 % rose water".
 */
const words = (id: string, text: string): readonly (readonly [string, string])[] =>
  text
    .trim()
    .split(/\s+/)
    .map((word) => [word, id] as const);

/** By the word's key: one spelling, singular. */
export const wetHeads: Readonly<Record<string, string>> = Object.fromEntries([
  ...words('tea-infusion', 'tea tisane decoction brew coffee espresso broth chai rooibos mate'),
  ...words('juice', 'juice sap squash nectar smoothie lemonade cola cordial'),
  ...words('floral-water', 'hydrosol hydrosole hydrolat hydrolate hydroflorate rosewater'),
  ...words('floral-water', 'water'),
  ...words('plain-water', 'rainwater seawater ice snow aqua'),
  ...words('plant-gel', 'gel'),
  ...words(
    'tincture',
    'tincture vinegar wine vodka whisky whiskey tequila beer cider champagne prosecco sherry ouzo',
  ),
  ...words(
    'tincture',
    'schnapp schnapps liqueur ethanol isopropanol sake limoncello everclear cognac absinthe moonshine',
  ),
  ...words('glycerin', 'glycerite propanediol sorbitol panthenol glycol hyaluronate'),
  ...words('syrup', 'syrup jelly treacle molasse molasses grenadine jam marmalade curd agave mead ketchup'),
  ...words(
    'fresh-fruit',
    'puree pulp mash paste cherry pomegranate papaya pineapple kiwi melon watermelon honeydew fig tomato',
  ),
  ...words(
    'fresh-fruit',
    'apple pear peach plum grape carrot potato onion garlic egg yolk albumen rhubarb gooseberry mulberry',
  ),
  ...words(
    'fresh-fruit',
    'blackcurrant redcurrant currant elderberry bilberry nectarine passionfruit lychee celery spinach',
  ),
  ...words('milk', 'milk buttermilk kefir cream whey custard quark skyr yoghurt yogurt froth colostrum'),
  ...words('lotion', 'lotion serum shampoo toothpaste conditioner mucin slime'),
  ...words('food-colouring', 'ink'),
  ...words('honey', 'honey honeycomb'),
  ...words('kitchen-extract', 'essence'),
]);

/** "Water bath", "water-free", "tea tree", "milk thistle", "coffee butter": no water at all. */
export const dryAfter: ReadonlySet<string> = new Set(
  `bath free based proof resistant less content soluble tree thistle chocolate lily melon cress powder powdered wax bag oil butter
  seed kernel stone ground bean flavour flavor flavouring flavoring flavored dust flour crystal color colour leaf root stem stalk skin husk`.split(
    /\s+/,
  ),
);
/** "Dried cherries", "petroleum jelly", "cold cream of tartar": said before, they make it dry, or another thing. */
export const dryBefore: ReadonlySet<string> = new Set(
  'dried dry freeze dehydrated powdered petroleum paraffin mineral instant anhydrous'.split(' '),
);
