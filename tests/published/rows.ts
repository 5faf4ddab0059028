import type { Aroma, Fat, Ingredient, Wax } from '../../core/data/ingredient.ts';
import { ingredientById, isAromaRow, isFat, isWax } from '../../core/ingredients.ts';

export const found = (id: string): Ingredient => {
  const ingredient = ingredientById(id);
  if (!ingredient) throw new Error(`no ingredient ${id}`);
  return ingredient;
};

export const fatOf = (id: string): Fat => {
  const ingredient = found(id);
  if (!isFat(ingredient)) throw new Error(`${id} is no fat`);
  return ingredient;
};

export const waxOf = (id: string): Wax => {
  const ingredient = found(id);
  if (!isWax(ingredient)) throw new Error(`${id} is no wax`);
  return ingredient;
};

export const aromaOf = (id: string): Aroma => {
  const ingredient = found(id);
  if (!isAromaRow(ingredient)) throw new Error(`${id} is no aroma`);
  return ingredient;
};
