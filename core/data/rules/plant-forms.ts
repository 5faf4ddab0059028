/**
 * Words that say in which form a plant is bought or picked, by their keys (one spelling, singular). What each form brings is
 * the rules' own: fresh plants, teas, juices, floral waters, gels and tinctures bring water (cautions, common practice).
 */
const words = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/));

/** Picked and not dried. */
export const freshWords = words(
  'fresh freshly picked wet raw undried gathered harvested damp moist juicy plucked wilted foraged',
);
/** Only beside one of those above: "just picked", "hand picked", "this morning's" says nothing by itself. */
export const freshAside = words('just hand newly still');
export const dryWords = words('dried dry freeze airdried crisp crumbled');
/** Made with hot water. */
export const brewWords = words('brewed boiled steeped simmered stewed cooled chilled iced');
/** Kitchen extracts are alcohol and water. */
export const kitchenWords = words(
  'kitchen baking cooking culinary supermarket alcohol alcoholic bakers cake vodka brandy rum gin whisky ethanol based',
);
/** Say how it was grown, bought or cut; they change no form. */
export const plainWords = words(
  `finely coarsely roughly lightly strong weak cold leftover warm squeezed crude pure floral shredded minced sliced diced cubed torn
  french english greek spanish italian turkish bulgarian egyptian indian moroccan german garden own my our the some a an`,
);
export const partWords = words(
  `leaf flower petal blossom head bud top herb root rhizome seed bark stick berry fruit pod bean stem stalk sprig twig needle
  wood tip cone resin gum sap floret flowering piece slice powder powdered ground whole tuber`,
);
export const peelWords = words('peel zest rind');
export const oilWords = words('oil');
export const essentialWords = words('essential eo volatile');
export const absoluteWords = words('absolute concrete enfleurage');
export const extractWords = words('extract co2 oleoresin resinoid supercritical distillate fluid');
export const infusedWords = words('infused infusion macerate macerated maceration steeped');
/** The last word of a thing that is mostly water, and which watched thing that is. */
export const wetHeads: Readonly<Record<string, string>> = {
  tea: 'tea-infusion',
  tisane: 'tea-infusion',
  decoction: 'tea-infusion',
  brew: 'tea-infusion',
  juice: 'juice',
  water: 'floral-water',
  hydrosol: 'floral-water',
  hydrosole: 'floral-water',
  hydrolat: 'floral-water',
  hydrolate: 'floral-water',
  hydroflorate: 'floral-water',
  gel: 'plant-gel',
  tincture: 'tincture',
  glycerite: 'glycerin',
  syrup: 'syrup',
  cordial: 'syrup',
  puree: 'fresh-fruit',
  pulp: 'fresh-fruit',
  mash: 'fresh-fruit',
  paste: 'fresh-fruit',
  milk: 'milk',
  vinegar: 'tincture',
  wine: 'tincture',
};
/** "Water bath", "water-free", "tea tree", "milk thistle": no water at all. */
export const dryAfter = words(
  'bath free based proof resistant less content soluble tree thistle chocolate lily melon cress powder powdered wax bag',
);
