import { ingredientById } from '../../core/ingredients.ts';

/**
 * What may not be in a balm without nuts, animal things, palm, coconut or scent: judged by Latin and label names, apart from
 * the library's own flags and rules.
 *
 * Nuts: the plants that Regulation (EU) No 1169/2011 lists in Annex II, point 8 (almond, hazelnut, walnut, cashew, pecan,
 * Brazil nut, pistachio, macadamia) and point 5 (peanut). Latin names from memory, with the names that have taken the
 * place of older ones. Palm and coconut: the two palms by their Latin names; caprylic/capric triglyceride is made from
 * either and counts as coconut. Animal and scent: common knowledge of the trade, no source.
 */
const plants = {
  nuts: [
    /\b(?:amygdalus communis|prunus amygdalus|prunus dulcis)\b/,
    /\bcorylus\b/,
    /\bjuglans\b/,
    /\banacardium\b/,
    /\bcarya\b/,
    /\bbertholletia\b/,
    /\bpistacia\b/,
    /\bmacadamia\b/,
    /\barachis\b/,
  ],
  palm: [/\belaeis\b/],
  coconut: [/\bcocos nucifera\b/, /\bcaprylic\/capric triglyceride\b/],
  animal: [
    /\bcera (?:flava|alba)\b/,
    /\bapis\b/,
    /\bmel\b/,
    /\bpropolis\b/,
    /\blanolin\b/,
    /\bovis\b/,
    /\badeps\b/,
    /\b(?:bos taurus|sus scrofa)\b/,
    /\bcarmine\b|\bci 75470\b/,
    /\b(?:lac|collagen|keratin|shellac)\b/,
  ],
  scent: [
    /essential oil\b/,
    /\b(?:aroma|parfum)\b/,
    /\bflavou?r\b/,
    /\bmenthol\b/,
    /\bcamphor\b/,
    /\bbenzoin\b/,
    /\boleoresin\b/,
  ],
} as const satisfies Readonly<Record<string, readonly RegExp[]>>;

export type Excluded = keyof typeof plants;
export const excludedKinds = Object.keys(plants) as readonly Excluded[];

/** Whether an ingredient of the library is what is to be left out. */
export const isExcluded = (id: string, kind: Excluded): boolean => {
  const found = ingredientById(id);
  if (!found) throw new Error(`not in the library: ${id}`);
  const names = [found.name, found.inci, found.origin ?? ''].join(' | ').toLowerCase();
  // "a palm-kernel oil or coconut" in a note on the origin says palm by its English name.
  return plants[kind].some((pattern) => pattern.test(names));
};

/**
 * Shea, argan and coconut: kernels and a palm fruit that no list of tree nuts names, and that people with a nut allergy
 * ask about (the US list dropped coconut and shea in its guidance of 2025: read second-hand).
 */
export const isQuestion = (id: string): boolean =>
  /^(?:shea-butter|argan-oil|coconut-oil|virgin-coconut-oil|fractionated-coconut-oil)$/.test(id);
