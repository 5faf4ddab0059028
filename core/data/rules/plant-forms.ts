/**
 * Words that say in which form a plant is bought or picked, by their keys (one spelling, singular). What each form brings is
 * the rules' own: fresh plants, teas, juices, floral waters, gels and tinctures bring water (cautions, common practice).
 */
const words = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/));

/** Picked and not dried. */
export const freshWords = words(
  'fresh freshly picked wet raw undried gathered harvested damp moist juicy plucked wilted foraged grated mashed squeezed ripe peeled cooked',
);
/** Only beside one of those above: "just picked", "hand picked", "this morning's" says nothing by itself. */
export const freshAside = words('just hand newly still');
export const dryWords = words('dried dry freeze airdried crisp crumbled');
/** Made with hot water. */
export const brewWords = words('brewed boiled steeped simmered stewed cooled chilled iced');
/** Of a plant that is drunk as tea, these say that it was brewed. */
export const servedWords = words('strong weak cold hot warm leftover cup mug pot sweet');
/** "Calendula in vodka": what a plant was steeped in, and which thing that makes. */
export const solvents: Readonly<Record<string, string>> = {
  vodka: 'tincture',
  brandy: 'tincture',
  gin: 'tincture',
  rum: 'tincture',
  whisky: 'tincture',
  alcohol: 'tincture',
  ethanol: 'tincture',
  spirit: 'tincture',
  wine: 'tincture',
  vinegar: 'tincture',
  water: 'tea-infusion',
  milk: 'milk',
  honey: 'honey',
  glycerin: 'glycerin',
  glycerine: 'glycerin',
  glycerol: 'glycerin',
};
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
  wood tip cone resin gum sap floret flowering powder powdered ground whole tuber`,
);
/** Pieces of a fruit as it grew; of a root they say nothing of water. */
export const pieceWords = words('piece slice wedge segment half');
export const peelWords = words('peel zest rind');
export const oilWords = words('oil');
export const essentialWords = words('essential eo volatile');
export const absoluteWords = words('absolute concrete enfleurage');
export const extractWords = words('extract co2 oleoresin resinoid supercritical distillate fluid');
export const infusedWords = words('infused infusion macerate macerated maceration steeped');
