import type { Fat } from './ingredient.ts';

/** Ingredients of our own making, for lines that do not say enough. */
export const houseIngredients: readonly Fat[] = [
  {
    kind: 'liquid-oil',
    id: 'infused-oil',
    alsoIds: [],
    name: 'herb-infused oil',
    names: [
      'infused oil',
      'herb oil',
      'herbal oil',
      'macerated oil',
      'herb infused oil',
      'herbal infused oil',
      'infused herb oil',
      'infused herbal oil',
      'herbal infusion oil',
      'oil infusion',
      'oil macerate',
    ],
    inci: 'depends on the base oil and the herb',
    form: 'liquid-oil',
    origin: 'herb-infused oil (base oil not named)',
    vegan: 'varies',
    allergen: {
      flag: 'unknown',
      note: 'depends on the base oil and the herb: ask',
    },
    lips: 'caution',
    lipNote: 'depends on the herb: name it to check',
    purpose: 'carrier oil infused with a herb; the base oil is not named',
    densityGMl: { value: 0.915, source: ['HB-M'], how: 'memory' },
    triglyceride: true,
    feel: 'as its base oil',
    substitutes: 'the plain base oil',
  },
];
