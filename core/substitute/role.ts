import type { Ingredient } from '../data/ingredient.ts';
import { ingredientById, isAdditive, isAroma } from '../ingredients.ts';

/** The job an ingredient does in a balm; only things with the same job are offered for one another. */
export type Role = 'oil' | 'butter' | 'wax' | 'aroma' | 'herb' | 'additive';

export const roleOf = (ingredient: Ingredient): Role => {
  if (isAroma(ingredient)) return 'aroma';
  if (isAdditive(ingredient)) {
    // Squalane is an oil and stearic acid firms, whatever shelf they are sold from.
    if (ingredient.additive.group === 'emollient') return 'oil';
    return ingredient.additive.group === 'structurant' ? 'wax' : 'additive';
  }
  if (ingredient.kind === 'liquid-oil') return 'oil';
  if (ingredient.kind === 'wax' || ingredient.kind === 'herb') return ingredient.kind;
  return 'butter';
};

export const roleOfId = (id: string): Role | undefined => {
  const found = ingredientById(id);
  return found && roleOf(found);
};
