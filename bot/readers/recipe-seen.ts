import { nameKey } from '../../core/names.ts';
import type { Reading } from '../reading.ts';

/**
 * How many versions of a recipe this member has seen: when it was last shown to them or saved by them in this conversation,
 * else now. Nothing for a recipe that is not there.
 */
export const versionsSeen = ({ last, recipes }: Reading, name: string): number | undefined => {
  const { action, name: before, seen } = last?.topic === 'recipe' ? last.request : {};
  const recipe = recipes.exact(name);
  const same = typeof before === 'string' && nameKey(before) === nameKey(recipe?.name ?? name);
  if (same && typeof seen === 'number' && action === 'show') return seen;
  // Their own save made one more.
  if (same && typeof seen === 'number' && action === 'save') return seen + 1;
  return recipe?.versions.length;
};
