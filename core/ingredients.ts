import { additives } from './data/additives.ts';
import { animalFats } from './data/animal-fats.ts';
import { butters } from './data/butters.ts';
import { aromas } from './data/essential-oils.ts';
import { herbs } from './data/herbs.ts';
import { houseIngredients } from './data/house.ts';
import type { Additive, Aroma, Fat, Herb, Ingredient, Wax } from './data/ingredient.ts';
import { oils } from './data/oils.ts';
import { waxes } from './data/waxes.ts';

/** Every ingredient of the library, kind by kind. The rows are checked against their schema by the tests. */
export const ingredients: readonly Ingredient[] = [
  ...oils,
  ...butters,
  ...animalFats,
  ...waxes,
  ...herbs,
  ...aromas,
  ...additives,
  ...houseIngredients,
];

let byId: Map<string, Ingredient> | undefined;

const index = (): Map<string, Ingredient> => {
  const map = new Map<string, Ingredient>();
  for (const ingredient of ingredients) for (const id of ingredient.alsoIds) map.set(id, ingredient);
  for (const ingredient of ingredients) map.set(ingredient.id, ingredient);
  return map;
};

/** The ingredient with this id, or with this as one of its older ids. Names are looked up in names.ts. */
export const ingredientById = (id: string): Ingredient | undefined => {
  byId ??= index();
  return byId.get(id);
};

/** Liquid oils, butters and animal fats: everything with a fat's figures, jojoba and lanolin included. */
export const isFat = (ingredient: Ingredient): ingredient is Fat =>
  ingredient.kind === 'liquid-oil' || ingredient.kind === 'butter' || ingredient.kind === 'animal-fat';

export const isWax = (ingredient: Ingredient): ingredient is Wax => ingredient.kind === 'wax';

export const isHerb = (ingredient: Ingredient): ingredient is Herb => ingredient.kind === 'herb';

/** Rows with constituents and limits: essential oils, the resinoid and the flavour oils. */
export const isAromaRow = (ingredient: Ingredient): ingredient is Aroma =>
  ingredient.kind === 'essential-oil' || ingredient.kind === 'resinoid' || ingredient.kind === 'flavour';

export const isAdditive = (ingredient: Ingredient): ingredient is Additive => ingredient.kind === 'additive';

/** Scent, taste and cooling: the rows above, and the additives menthol, camphor, vanilla oleoresin, flavour oil. */
export const isAroma = (ingredient: Ingredient): boolean =>
  isAromaRow(ingredient) ||
  (isAdditive(ingredient) &&
    (ingredient.additive.group === 'flavour' || ingredient.additive.group === 'cooling'));

/** Largest usual share in percent of an additive that counts as a small dose. */
const smallDosePercent = 1;

/** Dosed in drops or fractions of a percent, so that weighing needs care: aroma, antioxidants, other small doses. */
export const isSmallDose = (ingredient: Ingredient): boolean =>
  isAroma(ingredient) ||
  (isAdditive(ingredient) &&
    ingredient.usePercent?.typical !== undefined &&
    ingredient.usePercent.typical <= smallDosePercent);
