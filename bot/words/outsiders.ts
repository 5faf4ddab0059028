import { nameKey } from '../../core/name-key.ts';

interface Outsiders {
  readonly names: readonly string[];
  readonly why: string;
}

/** Things makers name that are not in the library, and why they are not (common practice, no source). */
const all: readonly Outsiders[] = [
  {
    names: [
      'water',
      'distilled water',
      'boiled water',
      'rose water',
      'rosewater',
      'lavender water',
      'peppermint water',
      'hydrosol',
      'lavender hydrosol',
      'rose hydrosol',
      'aloe',
      'aloe vera',
      'aloe gel',
      'aloe vera gel',
      'aloe juice',
      'aloe vera juice',
      'milk',
      'lemon juice',
      'lime juice',
      'orange juice',
      'cucumber juice',
      'peppermint tea',
      'chamomile tea',
      'calendula tea',
      'calendula tincture',
      'tincture',
      'witch hazel',
    ],
    why: 'Water and what is made with it do not mix with oil and wax: it weeps out, and what is wet goes mouldy. Leave it out; a dried herb gives what it has to the oil.',
  },
  {
    names: ['glycerin', 'glycerine', 'glycerol', 'vegetable glycerin', 'vegetable glycerine', 'agave syrup'],
    why: 'It does not dissolve in oil or wax and weeps out of a balm again. Leave it out.',
  },
  {
    names: ['emulsifying wax', 'emulsifier', 'lecithin', 'soy lecithin', 'sunflower lecithin', 'borax'],
    why: 'It is there to bind water, for creams. A balm without water sets with beeswax or a plant wax.',
  },
  {
    names: [
      'petrolatum',
      'petroleum jelly',
      'mineral oil',
      'liquid paraffin',
      'paraffin oil',
      'white oil',
      'baby oil',
    ],
    why: 'I have no figures for oils and jellies from petroleum. One part of beeswax in nine of oil makes a soft salve.',
  },
  {
    names: [
      'aloe butter',
      'avocado butter',
      'almond butter',
      'olive butter',
      'hemp butter',
      'jojoba butter',
      'coffee butter',
      'coconut butter',
    ],
    why: 'What is sold under that name is a mixture of hardened fats, another one at each maker, so nobody can tell how it melts. Ask the supplier what is in it.',
  },
  {
    names: ['rosin', 'colophony', 'pine resin', 'spruce resin', 'pine rosin'],
    why: 'It is a known skin allergen, and I have no figures for it.',
  },
];

const byKey: ReadonlyMap<string, string> = new Map(
  all.flatMap(({ names, why }) => names.map((name) => [nameKey(name), why] as const)),
);

/** Why something is not in the library, where makers often ask for it. */
export const outsiderText = (said: string): string | undefined => byKey.get(nameKey(said));
